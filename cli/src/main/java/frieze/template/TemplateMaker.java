package frieze.template;

import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.layout.Placement;
import frieze.opening.Notch;
import frieze.opening.Sitting;
import frieze.screw.Movement;
import frieze.screw.Screws;
import frieze.sheet.Measures;
import frieze.template.PaperTemplate.Mark;
import frieze.template.PaperTemplate.Pen;
import frieze.template.PaperTemplate.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Draws a design at full size: its outline, its drawings, its holes, the lines that rod can be bent
 * over, and two outlines to try in the frame.
 */
public final class TemplateMaker {
  private static final double LENGTH_TOLERANCE_MM = 1e-3;
  private static final double LETTERS_MM = 2.8;
  private static final double CROSS_MM = 5;
  private static final double WORDS_GAP_MM = 1.2;

  private final Design design;
  private final Measures measures;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Words> words = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private TemplateMaker(Design design, boolean inches) {
    this.design = design;
    this.measures = new Measures(inches);
  }

  /**
   * Draws a template.
   *
   * @param inches whether inches come first
   */
  public static PaperTemplate of(String job, Design design, InFrame frame, boolean inches) {
    TemplateMaker maker = new TemplateMaker(design, inches);
    maker.outlines(frame.sitting(), frame.beyond());
    maker.drawings();
    maker.holes(frame.screws());
    if (frame.screws().isPresent()) {
      maker.screws(frame.screws().get(), frame.sitting());
    } else {
      frame.sitting().filter(Sitting::wood).ifPresent(maker::slots);
    }
    maker.rods();
    return new PaperTemplate(design.panel().name(), job, maker.marks, maker.words, maker.notes);
  }

  private void outlines(Optional<Sitting> sitting, Optional<Path> beyond) {
    Path panel = design.panel().outline();
    Bounds b = panel.bounds();
    marks.add(new Mark(panel, Pen.WIDE));
    notes.add(
        "Panel, wide line: " + measures.both(b.width()) + " by " + measures.both(b.height()) + ".");
    sitting.ifPresent(s -> s.notches().forEach(this::notch));
    sitting.ifPresent(this::goOutline);
    if (sitting.isEmpty()) {
      notes.add("Go: the panel's own outline, cut out, must go into the opening.");
    }
    boolean drawn = sitting.flatMap(Sitting::drawn).isPresent();
    beyond.ifPresent(path -> noGoOutline(path, drawn));
  }

  /** Names the lug in its notch. */
  private void notch(Notch notch) {
    Point in = notch.box().get(1).minus(notch.box().get(0));
    Point floor = notch.box().get(2).towards(notch.box().get(1), 0.5);
    Point at = floor.minus(in.times((LETTERS_MM + WORDS_GAP_MM) / in.norm()));
    double left = Math.min(notch.box().get(1).x(), notch.box().get(2).x()) + WORDS_GAP_MM;
    words.add(new Words(new Point(left, at.y()), LETTERS_MM, notch.lug().name()));
    notes.add(
        notch.lug().name()
            + ", notch at the "
            + notch.lug().side()
            + ": "
            + measures.both(notch.fromMm())
            + " from the panel's corner, "
            + measures.both(notch.widthMm())
            + " wide, "
            + measures.both(notch.depthMm())
            + " deep.");
  }

  private void goOutline(Sitting sitting) {
    Path go = sitting.largest();
    Bounds b = go.bounds();
    marks.add(new Mark(go, Pen.NARROW));
    words.add(new Words(LabelPlace.inside(go, "GO", LETTERS_MM), LETTERS_MM, "GO"));
    notes.add(
        "Go, narrow line: the panel"
            + (sitting.wood() ? " at its wettest" : "")
            + (sitting.wood() && sitting.drawn().isPresent() ? " and its driest" : "")
            + ", with the frame's coating: "
            + measures.both(b.width())
            + " by "
            + measures.both(b.height())
            + ". Cut out, it must go into the bare opening.");
  }

  private void noGoOutline(Path beyond, boolean drawn) {
    Point middle = design.panel().outline().bounds().centre();
    Point own = beyond.bounds().centre();
    Path placed =
        beyond.transformed(Affine.translation(middle.x() - own.x(), middle.y() - own.y()));
    Bounds b = placed.bounds();
    marks.add(new Mark(placed, Pen.LIMIT));
    words.add(new Words(LabelPlace.above(placed, WORDS_GAP_MM), LETTERS_MM, "NO-GO"));
    notes.add(
        "No-go, long dashes and two dots: "
            + measures.both(b.width())
            + " by "
            + measures.both(b.height())
            + ". If this goes in, the opening is larger than "
            + (drawn ? "its outline as given" : "the tape said")
            + ": measure again.");
  }

  private void drawings() {
    for (Placement placement : design.placements()) {
      Motif motif = design.motifAt(placement);
      for (Piece piece : motif.artwork().pieces()) {
        for (Path path : piece.paths()) {
          marks.add(new Mark(placement.map().apply(path), Pen.NARROW));
        }
      }
    }
  }

  private void screws(Screws screws, Optional<Sitting> sitting) {
    Optional<Movement> movement = Movement.of(sitting, screws, design.panel());
    ScrewMarks drawn = new ScrewMarks(screws, screws.steelHoles(movement), measures);
    marks.addAll(drawn.marks());
    words.addAll(drawn.words(LETTERS_MM));
    notes.addAll(drawn.notes());
  }

  /** The holes of the work list, but for pilots. */
  private void holes(Optional<Screws> screws) {
    List<Work.Bore> bores =
        design.work().stream()
            .filter(w -> w instanceof Work.Bore)
            .map(w -> (Work.Bore) w)
            .filter(w -> screws.filter(s -> s.bore().equals(w)).isEmpty())
            .toList();
    List<Point> seen = new ArrayList<>();
    for (Work.Bore bore : bores) {
      for (Point c : bore.centres()) {
        marks.add(new Mark(bore.edge(c), Pen.NARROW));
        bore.way()
            .countersink()
            .ifPresent(s -> marks.add(new Mark(Path.circle(c, s.diameterMm() / 2), Pen.NARROW)));
        if (!seen.contains(c)) {
          seen.add(c);
          hole(c, seen.size(), bores);
        }
      }
    }
  }

  private void hole(Point c, int number, List<Work.Bore> bores) {
    double widest = 0;
    StringBuilder sizes = new StringBuilder();
    for (Work.Bore bore : bores) {
      if (bore.centres().contains(c)) {
        widest = Math.max(widest, 2 * bore.reachMm());
        sizes.append(sizes.length() == 0 ? "" : ", then ");
        sizes.append(measures.both(bore.diameterMm())).append(" wide ");
        bore.way()
            .slot()
            .ifPresent(s -> sizes.append(measures.both(s.lengthMm())).append(" long "));
        sizes.append(bore.depthMm().map(d -> measures.both(d) + " deep").orElse("through"));
        bore.way()
            .countersink()
            .ifPresent(
                s -> sizes.append(", countersunk to ").append(measures.both(s.diameterMm())));
      }
    }
    double reach = widest / 2 + CROSS_MM;
    cross(c, reach, Pen.CENTRE);
    words.add(
        new Words(
            new Point(c.x() + widest / 2 + WORDS_GAP_MM, c.y() + WORDS_GAP_MM),
            LETTERS_MM,
            "H" + number));
    notes.add(
        "H"
            + number
            + ": "
            + measures.both(c.x())
            + " from the left, "
            + measures.both(c.y())
            + " from below; "
            + sizes
            + ".");
  }

  /** Says how far each hole moves in the seasons, so that the steel gets slots. */
  private void slots(Sitting sitting) {
    Point middle = design.panel().outline().bounds().centre();
    List<Point> holes =
        design.work().stream()
            .filter(w -> w instanceof Work.Bore)
            .flatMap(w -> ((Work.Bore) w).centres().stream())
            .distinct()
            .toList();
    for (int i = 0; i < holes.size(); i++) {
      Point moves = moves(sitting, holes.get(i).minus(middle));
      notes.add(
          "H"
              + (i + 1)
              + " moves in the seasons by "
              + measures.about(moves.x())
              + " along and "
              + measures.about(moves.y())
              + " across, if the panel is held in its middle: make the screw's hole in the steel a"
              + " slot longer by that.");
    }
    if (!holes.isEmpty()) {
      notes.add(
          "A panel that is screwed tight in round holes can't move, and splits: slots, washers, and"
              + " screws that still let it slide.");
    }
  }

  /** How far a point of the panel travels between the driest and the wettest. */
  static Point moves(Sitting sitting, Point fromMiddle) {
    double range = sitting.asked().moisture().wettestPct() - sitting.asked().moisture().driestPct();
    return new Point(
        Math.abs(fromMiddle.x()) * sitting.asked().alongPerPct() * range,
        Math.abs(fromMiddle.y()) * sitting.asked().acrossPerPct() * range);
  }

  private void cross(Point c, double reach, Pen pen) {
    marks.add(new Mark(line(c.x() - reach, c.y(), c.x() + reach, c.y()), pen));
    marks.add(new Mark(line(c.x(), c.y() - reach, c.x(), c.y() + reach), pen));
  }

  static Path line(double x1, double y1, double x2, double y2) {
    return new Path(List.of(new Line(new Point(x1, y1), new Point(x2, y2))), false);
  }

  /** Lists the lines of the drawings with the length of rod that each needs. */
  private void rods() {
    int number = 0;
    for (Motif drawn : design.motifs()) {
      for (List<Placement> alike : design.shapesOf(drawn.name()).values()) {
        Motif motif = design.motifAt(alike.get(0));
        for (Piece piece : motif.artwork().pieces()) {
          if (piece.strokeWidthMm().isEmpty()) {
            continue;
          }
          for (Path path : piece.paths()) {
            number++;
            rod(number, motif, piece, path, alike);
          }
        }
      }
    }
  }

  private void rod(int number, Motif motif, Piece piece, Path path, List<Placement> placed) {
    Placement first = placed.get(0);
    Path shown = first.map().apply(path);
    Point at = shown.segments().get(shown.segments().size() / 2).at(0.5);
    words.add(new Words(at, LETTERS_MM, "R" + number));
    String label = piece.classes().isEmpty() ? piece.id() : String.join(" ", piece.classes());
    notes.add(
        "R"
            + number
            + ": centre line of "
            + (motif.name() + " " + label).strip()
            + ", "
            + lengths(lengthMm(path), placed)
            + " developed, "
            + (placed.size() == 1 ? "once." : placed.size() + " times."));
  }

  /** One length, or the least and the greatest where motifs differ in size. */
  private String lengths(double drawnMm, List<Placement> placed) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Placement p : placed) {
      double scale = Math.sqrt(Math.abs(p.map().affine().determinant()));
      least = Math.min(least, scale * drawnMm);
      most = Math.max(most, scale * drawnMm);
    }
    return most - least < LENGTH_TOLERANCE_MM
        ? measures.both(most)
        : "from " + measures.both(least) + " to " + measures.both(most);
  }

  /** The developed length of a line. */
  static double lengthMm(Path path) {
    List<Point> points = Flattener.flatten(path, LENGTH_TOLERANCE_MM);
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      sum += points.get(i - 1).distance(points.get(i));
    }
    return path.closed() && !points.isEmpty()
        ? sum + points.get(points.size() - 1).distance(points.get(0))
        : sum;
  }
}
