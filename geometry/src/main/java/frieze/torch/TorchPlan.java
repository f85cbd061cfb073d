package frieze.torch;

import frieze.bridge.KerfLimits;
import frieze.curve.Arc;
import frieze.diagnostic.Diagnostic;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.plan.Plan;
import frieze.plan.cut.Cut;
import frieze.region.Region;
import frieze.shop.Torch;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * All that a torch cuts on one sheet, in order.
 *
 * @param parts what stays of each copy, in the panel frame, its holes open; small holes that are
 *     only pierced or marked are not open in it
 * @param joints stubs that keep small pieces where they were cut
 * @param limits what the kerf cannot do, in each copy
 * @param notes what could not be done, and what should be known
 */
public record TorchPlan(
    Torch torch,
    List<TorchPath> paths,
    List<Region> parts,
    List<Joint> joints,
    List<KerfLimits.Trouble> limits,
    List<Diagnostic> notes) {
  public TorchPlan {
    paths = List.copyOf(paths);
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
    limits = List.copyOf(limits);
    notes = List.copyOf(notes);
  }

  /** How many times the arc pierces the sheet; each wears the nozzle. */
  public long pierces() {
    return paths.stream().filter(p -> p.kind() != TorchPath.Kind.MARK).count();
  }

  /** The length that is cut, leads and all. */
  public double cutMm() {
    return asPlan().cuts().stream()
        .flatMap(c -> c.moves().stream())
        .mapToDouble(m -> m.path().lengthMm())
        .sum();
  }

  /** The paths as cuts at the torch's height, for whatever draws or lists cuts. */
  public Plan asPlan() {
    List<Cut> cuts = new ArrayList<>();
    for (TorchPath path : paths) {
      if (!path.pieces().isEmpty()) {
        List<Cut.Move> moves =
            path.pieces().stream()
                .map(p -> new Cut.Move(motion(p), torch.row().feedMmPerMin() * p.feedPart()))
                .toList();
        cuts.add(new Cut(path.origin(), torch.asTool(), 0, moves, OptionalDouble.empty()));
      }
    }
    return new Plan(cuts, List.of(), notes, 1);
  }

  private Motion motion(TorchPath.Piece piece) {
    double z = torch.row().cutHeightMm();
    Position from = new Position(piece.path().start(), z);
    Position to = new Position(piece.path().end(), z);
    if (piece.path() instanceof Arc arc) {
      return new Motion.Turn(
          from, to, Plane.XY, arc.centre().x(), arc.centre().y(), arc.sweepRad());
    }
    return new Motion.Straight(from, to);
  }
}
