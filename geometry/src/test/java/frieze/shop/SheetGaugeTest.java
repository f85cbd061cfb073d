package frieze.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Against the printed gauge charts for sheet steel (Manufacturers' Standard Gauge) and galvanized
 * sheet; the file says which rows are from memory.
 */
class SheetGaugeTest {
  private static final double MM_PER_INCH = 25.4;

  /** Less than half of the last printed digit. */
  private static final double PRINTED = 1e-9;

  @Test
  void thicknesses_and_weights_are_those_of_the_printed_charts() throws IOException {
    int rows = 0;
    for (String[] row : table()) {
      int gauge = Integer.parseInt(row[0]);
      check(SheetGauge.STEEL, gauge, row[1], row[2]);
      check(SheetGauge.GALVANIZED, gauge, row[4], row[5]);
      rows++;
    }
    assertThat(rows).isEqualTo(28);
  }

  private static void check(SheetGauge table, int gauge, String pounds, String inches) {
    if (inches.isEmpty()) {
      assertThat(table.thicknessMm(gauge)).as("%s %d", table, gauge).isEmpty();
      return;
    }
    assertThat(table.thicknessMm(gauge).orElseThrow() / MM_PER_INCH)
        .as("%s %d in", table, gauge)
        .isCloseTo(Double.parseDouble(inches), within(PRINTED));
    assertThat(table.poundsPerFt2(gauge).orElseThrow())
        .as("%s %d lb/ft2", table, gauge)
        .isCloseTo(Double.parseDouble(pounds), within(PRINTED));
  }

  private static List<String[]> table() throws IOException {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(Seeds.class.getResourceAsStream("sheet-gauge.csv")),
                StandardCharsets.UTF_8))) {
      return in.lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", -1))
          .toList();
    }
  }

  @Test
  void numbers_beyond_the_tables_have_no_thickness() {
    assertThat(SheetGauge.STEEL.thicknessMm(2)).isEmpty();
    assertThat(SheetGauge.STEEL.thicknessMm(31)).isEmpty();
    assertThat(SheetGauge.STEEL.thicknessMm(99)).isEmpty();
    assertThat(SheetGauge.GALVANIZED.thicknessMm(7)).isEmpty();
  }
}
