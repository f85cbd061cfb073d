package frieze.job;

import frieze.design.TorchWay;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Suggestion;
import frieze.keys.Values;
import frieze.shop.CutChart;
import frieze.shop.Stock;
import frieze.shop.Torch;
import frieze.torch.TorchCode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Turns a {@code torchcut} of a job into work. */
final class TorchReader {
  private final Shop shop;
  private final Stock stock;
  private final Diagnostics found;

  TorchReader(Shop shop, Stock stock, Diagnostics found) {
    this.shop = shop;
    this.stock = stock;
    this.found = found;
  }

  /**
   * Reads it; empty after an error.
   *
   * @param on the drawings that are openings
   */
  Optional<Work> read(Values v, List<Work.Target> on) {
    Optional<Torch> torch = torch(v);
    Values rows = v.get(TorchKeys.ROWS);
    TorchWay way =
        new TorchWay(
            v.get(TorchKeys.RIGHT),
            optional(v, TorchKeys.LEAD),
            v.get(TorchKeys.ARCS),
            v.get(TorchKeys.SMALL_HOLES),
            v.get(TorchKeys.OUTLINE),
            new TorchWay.Rows(
                rows.get(TorchKeys.Rows.ALONG),
                rows.get(TorchKeys.Rows.ACROSS),
                rows.get(TorchKeys.Rows.GAP)),
            bridges(v.get(TorchKeys.BRIDGES)),
            new TorchWay.Limits(v.get(TorchKeys.STRICT), optional(v, TorchKeys.LEAST_WEB)),
            v.find(TorchKeys.JOINTS).map(TorchReader::joints));
    return torch.map(t -> new Work.TorchCut(on, t, way, v.where()));
  }

  private static OptionalDouble optional(Values v, Key<Double> key) {
    return v.find(key).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private static TorchWay.Bridging bridges(Values v) {
    return new TorchWay.Bridging(
        v.get(TorchKeys.Ties.TIE),
        optional(v, TorchKeys.Ties.WIDTH),
        OptionalDouble.of(v.get(TorchKeys.Ties.LOAD)));
  }

  private static TorchWay.Joints joints(Values v) {
    return new TorchWay.Joints(
        v.get(TorchKeys.Joints.BELOW),
        v.get(TorchKeys.Joints.COUNT),
        v.get(TorchKeys.Joints.WIDTH));
  }

  private Optional<Torch> torch(Values v) {
    String name = v.get(TorchKeys.CHART);
    Optional<CutChart> chart = shop.chart(name);
    if (chart.isEmpty()) {
      found.error(
          JobCode.NO_SUCH_CHART,
          v.where(TorchKeys.CHART),
          "no cut chart named \"" + name + "\" in the shop",
          Suggestion.hint(name, shop.chartNames()));
      return Optional.empty();
    }
    Optional<Torch> torch = chart.get().at(stock.thickestMm());
    if (torch.isEmpty()) {
      found.error(
          JobCode.BEYOND_CHART,
          v.where(TorchKeys.CHART),
          "the sheet is "
              + Amounts.length(stock.thickestMm())
              + " thick, and the cut chart \""
              + name
              + "\" goes from "
              + Amounts.length(chart.get().thinnestMm())
              + " to "
              + Amounts.length(chart.get().thickestMm()),
          "use another chart, or add the row of your power supply's chart; nothing is guessed");
    }
    if (!chart.get().material().equals(stock.material().name())) {
      found.error(
          TorchCode.WRONG_CHART,
          v.where(TorchKeys.CHART),
          "the cut chart \""
              + name
              + "\" is for "
              + chart.get().material()
              + ", and the sheet is "
              + stock.material().name(),
          "use a chart of that metal");
      return Optional.empty();
    }
    return torch.map(t -> v.find(TorchKeys.KERF).map(t::withKerf).orElse(t));
  }
}
