package frieze.sheet;

import frieze.shop.CutChart;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.torch.TorchPlan;

/** Writes what to set on the power supply, and which side is which. */
final class TorchSteps {
  private static final double LIGHT_KG = 10;

  private final Setup setup;
  private final TorchPlan plan;
  private final Measures measures;
  private final Markup out;

  TorchSteps(Setup setup, TorchPlan plan, Measures measures, Markup out) {
    this.setup = setup;
    this.plan = plan;
    this.measures = measures;
    this.out = out;
  }

  void write() {
    Stock stock = setup.stock();
    out.element("h2", "Torch");
    CutChart.Row row = plan.torch().row();
    out.open("ul");
    out.element(
        "li",
        "Cut chart "
            + plan.torch().name()
            + ", kerf "
            + measures.both(row.kerfMm())
            + ". The chart of your power supply comes first; then the kerf of a coupon.");
    out.element(
        "li",
        "Pierce "
            + measures.one(row.pierceHeightMm())
            + " above the sheet for "
            + Measures.decimals(row.pierceSeconds(), 2)
            + " s, cut at "
            + measures.one(row.cutHeightMm())
            + " and "
            + measures.feed(row.feedMmPerMin()));
    out.element(
        "li",
        "If the torch feels for the sheet: its switch is taken to trip "
            + measures.one(setup.machine().touchTravelMm())
            + " late (\"touch travel\" in the shop file). Measure it: an error there is one of the cut"
            + " height.");
    out.element("li", plan.pierces() + " pierces: look at the nozzle before and after.");
    if (!plan.joints().isEmpty()) {
      out.element(
          "li",
          plan.joints().size()
              + " micro-joints of "
              + measures.both(plan.joints().get(0).widthMm())
              + " keep small pieces level: break or saw them when all is cold, and file the stubs.");
    }
    double area = plan.parts().stream().mapToDouble(r -> r.area()).sum();
    double partsKg = stock.material().steelKg(area, stock.thickestMm());
    double sheetKg =
        stock.material().steelKg(stock.lengthMm() * stock.widthMm(), stock.thickestMm());
    out.element(
        "li",
        "The sheet weighs "
            + kilograms(sheetKg)
            + " kg, what is cut out of it "
            + kilograms(partsKg)
            + " kg.");
    out.element(
        "li",
        "Face side: the upper one. Dross hangs on the lower side, and the cut's top edge is a little"
            + " rounded: the drawing is seen from the face side.");
    out.close().line();
  }

  private static String kilograms(double kg) {
    return Measures.decimals(kg, kg < LIGHT_KG ? 2 : 1);
  }

  /** Says first of all that a sheet is coated, if it is. */
  static void coating(Stock stock, Markup out) {
    if (stock.material().zincCoated()) {
      out.element(
          "p",
          "ZINC: its fume makes people ill. Extraction on, respirator for metal fume, local codes.",
          "class",
          "warn not");
    }
  }
}
