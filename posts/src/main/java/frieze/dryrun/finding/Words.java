package frieze.dryrun.finding;

import frieze.motion.Executed;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Motion;
import frieze.motion.Position;

/** Says in words what a move does. */
public final class Words {
  private Words() {}

  /** Such as {@code feed to X12 Y3 Z-2}, in millimetres of the program's frame. */
  public static String of(Executed.Move move) {
    String kind =
        switch (move.kind()) {
          case RAPID -> "rapid";
          case FEED -> "feed";
          case PROBE -> "probe";
        };
    String shape =
        move.path()
            .accept(
                new Motion.Visitor<String>() {
                  @Override
                  public String straight(Motion.Straight straight) {
                    return "";
                  }

                  @Override
                  public String turn(Motion.Turn turn) {
                    return " along an arc of radius " + Amount.text(turn.radiusMm());
                  }
                });
    return kind + shape + " to" + position(move.path().to(), move.toKnown());
  }

  private static String position(Position to, KnownAxes known) {
    StringBuilder text = new StringBuilder();
    for (int axis = 0; axis < 3; axis++) {
      if (known.get(axis)) {
        text.append(' ').append(axisName(axis)).append(Amount.text(to.get(axis)));
      }
    }
    return text.isEmpty() ? " an unknown place" : text.toString();
  }

  public static String axisName(int axis) {
    return axis == 0 ? "X" : axis == 1 ? "Y" : "Z";
  }

  public static String mm(double value) {
    return Amount.text(value) + " mm";
  }
}
