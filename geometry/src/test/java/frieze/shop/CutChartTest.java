package frieze.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class CutChartTest {
  private static final CutChart CHART =
      new CutChart(
          "air",
          "mild steel",
          45,
          "45 A",
          0.5,
          List.of(
              new CutChart.Row(5, 1.6, 1800, 3.8, 1.5, 0.5, 7.5),
              new CutChart.Row(3, 1.5, 3000, 3.8, 1.5, 0.3, 6)));

  @Test
  void a_listed_thickness_gives_its_row() {
    assertThat(CHART.at(3).orElseThrow().kerfMm()).isEqualTo(1.5);
    assertThat(CHART.at(5).orElseThrow().row().feedMmPerMin()).isEqualTo(1800);
  }

  @Test
  void between_two_rows_it_goes_straight() {
    CutChart.Row row = CHART.at(3.5).orElseThrow().row();
    assertThat(row.kerfMm()).isCloseTo(1.525, within(1e-12));
    assertThat(row.feedMmPerMin()).isCloseTo(2700, within(1e-9));
    assertThat(row.pierceSeconds()).isCloseTo(0.35, within(1e-12));
    assertThat(row.smallestHoleMm()).isCloseTo(6.375, within(1e-12));
  }

  @Test
  void beyond_the_chart_nothing_is_guessed() {
    assertThat(CHART.at(2.99)).isEmpty();
    assertThat(CHART.at(5.01)).isEmpty();
  }

  @Test
  void steel_weighs_7850_kg_a_cubic_metre() {
    Material steel = new Material("mild steel", Material.Kind.STEEL);
    assertThat(steel.steelKg(1000 * 1000, 3)).isCloseTo(23.55, within(1e-9));
  }
}
