package frieze.plan.cut;

import frieze.shop.Material;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The usual advance of a router bit for each flute and turn.
 *
 * <p>Source: common practice, without a publication behind it; the table is {@code chip-loads.csv}.
 */
public final class ChipLoads {
  private static final List<Row> ROWS = read();

  private ChipLoads() {}

  /** A usual range, in millimetres. */
  public record Range(double lowMm, double highMm) {}

  private record Row(String material, double diameterMm, Range range) {}

  /**
   * The range for a diameter: between two rows in proportion; below the smallest bit of the table
   * in proportion to the diameter; above the largest as for the largest.
   *
   * @throws IllegalArgumentException for a material that is not routed
   */
  public static Range range(Material.Kind kind, double diameterMm) {
    String material = kind.name().toLowerCase(Locale.ROOT);
    List<Row> rows = ROWS.stream().filter(r -> r.material().equals(material)).toList();
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("no chip loads for " + material);
    }
    Row below = new Row(material, 0, new Range(0, 0));
    for (Row row : rows) {
      if (diameterMm <= row.diameterMm()) {
        double f = (diameterMm - below.diameterMm()) / (row.diameterMm() - below.diameterMm());
        return new Range(
            mix(below.range().lowMm(), row.range().lowMm(), f),
            mix(below.range().highMm(), row.range().highMm(), f));
      }
      below = row;
    }
    return below.range();
  }

  private static double mix(double a, double b, double fraction) {
    return a + (b - a) * fraction;
  }

  private static List<Row> read() {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();
    try (InputStream in =
            Objects.requireNonNull(ChipLoads.class.getResourceAsStream("chip-loads.csv"));
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      List<Row> rows = new ArrayList<>();
      for (CSVRecord r : format.parse(reader)) {
        Range range =
            new Range(
                Double.parseDouble(r.get("low_mm_per_tooth")),
                Double.parseDouble(r.get("high_mm_per_tooth")));
        rows.add(new Row(r.get("material"), Double.parseDouble(r.get("diameter_mm")), range));
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
