package frieze.torch;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.TorchWay;
import frieze.design.Work;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Panel;
import frieze.layout.Placement;
import frieze.region.FillRule;
import frieze.shop.CutChart;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Torch;
import frieze.shop.Zero;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A plasma table, a sheet of 3 mm, a kerf of 1.5 mm. */
final class TorchBench {
  static final SourceSpan WHERE = SourceSpan.file("job.yaml");

  static final Torch TORCH =
      new Torch("air", new CutChart.Row(3, 1.5, 3000, 3.8, 1.5, 0.3, 6), 0.5);

  private TorchBench() {}

  static Setup setup(double length, double width) {
    return setup(length, width, 0);
  }

  static Setup setup(double length, double width, double touchTravelMm) {
    Machine.Axis plane = new Machine.Axis(10_000, 8_000, 1_000);
    Machine machine =
        new Machine(
            "table",
            "plasma-touch",
            1250,
            1250,
            120,
            plane,
            plane,
            plane,
            Machine.Spindle.NONE,
            false,
            false,
            touchTravelMm);
    Stock stock =
        new Stock(
            new Material("mild steel", Material.Kind.STEEL), length, width, List.of(3.0), false);
    return new Setup(
        machine, stock, Zero.LEFT_FRONT_TOP, 20, 20, 20, 0.5, List.of(), List.of(TORCH.asTool()));
  }

  static Path rectangle(double x, double y, double width, double height) {
    return Path.polyline(
        List.of(
            new Point(x, y),
            new Point(x + width, y),
            new Point(x + width, y + height),
            new Point(x, y + height)),
        true);
  }

  static Design design(Path outline, TorchWay way, Torch torch, Path... openings) {
    Panel panel = new Panel("end", outline);
    if (openings.length == 0) {
      return new Design(
          panel, List.of(), List.of(), List.of(new Work.TorchCut(List.of(), torch, way, WHERE)));
    }
    Piece piece =
        new Piece(
            "",
            List.of(),
            List.of(openings),
            Optional.of(FillRule.EVEN_ODD),
            OptionalDouble.empty());
    return design(outline, way, torch, List.of(piece));
  }

  /** A panel with one drawing of some pieces, placed as it is. */
  static Design design(Path outline, TorchWay way, Torch torch, List<Piece> pieces) {
    Panel panel = new Panel("end", outline);
    Motif motif = new Motif("fern", new Artwork("own.svg", pieces, "millimetres", List.of()));
    return new Design(
        panel,
        List.of(motif),
        List.of(new Placement("fern", 1, new FrameMap<>(Affine.IDENTITY))),
        List.of(
            new Work.TorchCut(
                List.of(new Work.Target("fern", Optional.empty())), torch, way, WHERE)));
  }

  static TorchPlan plan(Path outline, TorchWay way, Path... openings) {
    return plan(outline, way, TORCH, openings);
  }

  static TorchPlan plan(Path outline, TorchWay way, Torch torch, Path... openings) {
    return TorchPlanner.plan(
        design(outline, way, torch, openings), setup(600, 400), Tolerances.DEFAULT);
  }
}
