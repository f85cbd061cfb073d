package frieze.dryrun.torch;

import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.TorchFacts;
import frieze.region.Region;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Finds the pieces that the cuts leave, for the stated kerf and for a wider and a narrower one. */
final class TorchPieces {
  /** Smaller pieces are dross. */
  private static final double DROSS_MM2 = 2;

  private static final double VARIES = 0.15;

  /** The outermost corner of the field is sheet. */
  private static final int SHEET = 1;

  private final TorchFacts facts;
  private final List<TorchRun> runs;
  private final TorchSheet sheet;
  private final FindingLog log;

  TorchPieces(TorchFacts facts, List<TorchRun> runs, FindingLog log) {
    this.log = log;
    this.facts = facts;
    this.runs = runs;
    this.sheet = new TorchSheet(facts.parts(), runs, facts.kerfMm());
  }

  void check() {
    double kerf = facts.kerfMm();
    int[] stated = sheet.pieces(kerf);
    int[] wide = sheet.pieces(kerf * (1 + VARIES));
    int[] narrow = sheet.pieces(kerf * (1 - VARIES));
    int number = 0;
    for (Region part : facts.parts()) {
      number++;
      int[] squares = sheet.squares(part);
      Map<Integer, Integer> now = large(squares, stated);
      String name = facts.parts().size() == 1 ? "the part" : "part " + number;
      if (now.size() != 1) {
        tell(
            FindingCode.PART_APART,
            name + " comes out in " + now.size() + " pieces" + smallest(squares, stated, now));
      }
      if (now.containsKey(SHEET) && !isKept(part)) {
        tell(FindingCode.NOT_FREE, name + " is not cut free of the sheet");
      }
      vary("wider", name, now, squares, wide);
      vary("narrower", name, now, squares, narrow);
    }
    joints(stated, wide);
  }

  /** Whether a micro-joint is to hold a part in the sheet. */
  private boolean isKept(Region part) {
    Region.Locator inside = part.locator();
    return facts.joints().stream().anyMatch(j -> inside.contains(j.inside()));
  }

  private void joints(int[] stated, int[] wide) {
    for (TorchFacts.Joint joint : facts.joints()) {
      int in = sheet.square(joint.inside());
      int out = sheet.square(joint.outside());
      String at = " at X" + Amount.text(joint.at().x()) + " Y" + Amount.text(joint.at().y());
      if (stated[in] == 0 || stated[in] != stated[out]) {
        tell(FindingCode.JOINT_BURNT, "the piece that a micro-joint should keep is loose" + at);
      } else if (wide[in] == 0 || wide[in] != wide[out]) {
        tell(
            FindingCode.KERF_MATTERS,
            "with a kerf 15 % wider the piece that a micro-joint keeps comes loose" + at);
      }
    }
  }

  private void vary(
      String how, String name, Map<Integer, Integer> now, int[] squares, int[] pieces) {
    Map<Integer, Integer> then = large(squares, pieces);
    boolean hangs = then.containsKey(SHEET) && !now.containsKey(SHEET);
    if (then.size() != now.size() || hangs) {
      tell(
          FindingCode.KERF_MATTERS,
          "with a kerf 15 % "
              + how
              + " "
              + name
              + (hangs ? " hangs on the sheet" : " comes out in " + then.size() + " pieces")
              + smallest(squares, pieces, then));
    }
  }

  private void tell(FindingCode code, String message) {
    log.addAt(runs.get(0).program, code, SourceSpan.NONE, Amount.NONE, message);
  }

  /** How many squares of each piece lie in a part; dross is left out. */
  private Map<Integer, Integer> large(int[] squares, int[] pieces) {
    int most = 0;
    for (int piece : pieces) {
      most = Math.max(most, piece);
    }
    int[] squaresOf = new int[most + 1];
    for (int square : squares) {
      squaresOf[pieces[square]]++;
    }
    Map<Integer, Integer> count = new TreeMap<>();
    for (int piece = 1; piece <= most; piece++) {
      count.put(piece, squaresOf[piece]);
    }
    double least = DROSS_MM2 / sheet.squareMm() / sheet.squareMm();
    count.values().removeIf(n -> n == 0 || n < least);
    return count;
  }

  /** The place of the smallest piece, if there are several. */
  private String smallest(int[] squares, int[] pieces, Map<Integer, Integer> count) {
    if (count.size() < 2) {
      return "";
    }
    int least =
        count.entrySet().stream()
            .min(Map.Entry.comparingByValue())
            .map(Map.Entry::getKey)
            .orElseThrow();
    double x = 0;
    double y = 0;
    int n = 0;
    for (int square : squares) {
      if (pieces[square] == least) {
        Point at = sheet.place(square);
        x += at.x();
        y += at.y();
        n++;
      }
    }
    double area = Math.rint(n * sheet.squareMm() * sheet.squareMm());
    return ", the smallest of "
        + Amount.text(area)
        + " mm2 around X"
        + Amount.text(Math.rint(x / n))
        + " Y"
        + Amount.text(Math.rint(y / n));
  }
}
