package frieze.template;

import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.sheet.Ink;
import java.util.List;
import java.util.stream.Stream;

/**
 * A panel's layout at full size, for paper: lines and words in the panel's frame, in millimetres.
 *
 * @param name of the panel
 * @param job the name of the job
 * @param notes what is listed on the page with the plan, such as holes and lengths
 */
public record PaperTemplate(
    String name, String job, List<Mark> marks, List<Words> words, List<String> notes) {
  private static final double ROOM_MM = 6;

  /** How a line is drawn. */
  enum Pen {
    WIDE(0.5, ""),
    NARROW(0.18, ""),
    CENTRE(0.18, Ink.CENTRE_LINE),
    LIMIT(0.25, Ink.BEFORE_FORMING),
    SEAM(0.18, "1 1");

    private final double widthMm;
    private final String dashesMm;

    Pen(double widthMm, String dashesMm) {
      this.widthMm = widthMm;
      this.dashesMm = dashesMm;
    }

    double widthMm() {
      return widthMm;
    }

    /** Dashes and gaps in turn; none for a whole line. */
    List<Double> dashesMm() {
      return dashesMm.isEmpty()
          ? List.of()
          : Stream.of(dashesMm.split(" ", -1)).map(Double::valueOf).toList();
    }
  }

  /** A line on the paper. */
  record Mark(Path path, Pen pen) {}

  /** Words, from their lower left corner. */
  record Words(Point at, double sizeMm, String text) {}

  public PaperTemplate {
    marks = List.copyOf(marks);
    words = List.copyOf(words);
    notes = List.copyOf(notes);
  }

  /** Everything that is drawn, with some room around it. */
  Bounds bounds() {
    Bounds b = Bounds.EMPTY;
    for (Mark mark : marks) {
      b = b.with(mark.path().bounds());
    }
    return b.grown(ROOM_MM);
  }
}
