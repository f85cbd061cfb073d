package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Keeps motifs clear of places on the panel, such as holes, hinges and lettering.
 *
 * <p><em>Guarantees:</em> the convex hull of each motif that is left keeps the space from each
 * place, or it is an error; motifs that were clear stay where they were; a shifted motif stays in
 * the band, moves by at most {@code mostMm}, and keeps at least half of its distance to each other
 * motif. Numbers stay, so that one that is left out is missed by its number.
 *
 * @param spaceMm the least distance between a motif and a place
 * @param mostMm the most by which a motif is shifted; 0 to leave it out instead
 */
public record Avoidance(double spaceMm, double mostMm) {
  private static final int STEPS = 24;
  private static final int WAYS = 16;
  private static final int SIDES = 48;
  private static final double ROUNDING_MM = 1e-9;

  public Avoidance {
    if (!(spaceMm >= 0 && mostMm >= 0)) {
      throw new IllegalArgumentException(
          "spaceMm and mostMm must be >= 0 but were " + spaceMm + ", " + mostMm + " mm");
    }
  }

  /** A round place; its hull is nowhere inside the circle. */
  public static Hull round(Point centre, double radiusMm) {
    List<Point> points = new ArrayList<>();
    double reach = radiusMm / Math.cos(Math.PI / SIDES);
    for (int i = 0; i < SIDES; i++) {
      points.add(Point.polar(centre, reach, 2 * Math.PI * i / SIDES));
    }
    return Hull.of(points);
  }

  /** An upright rectangle. */
  public static Hull rectangle(Bounds b) {
    return Hull.of(b.corners());
  }

  /** What is left out at the edges of a panel. */
  public static List<Hull> notches(Panel panel) {
    return panel.notches().stream()
        .map(n -> Hull.of(n.segments().stream().map(Segment::start).toList()))
        .toList();
  }

  /**
   * Shifts motifs, or leaves them out.
   *
   * @param ground what a shifted motif must not leave
   * @param placed the motifs of one pattern
   * @param motif the hull of the drawing
   * @param places what they keep clear of
   * @param where the place in the job, for the diagnostics
   * @throws BadInputException if a motif can't be shifted far enough, or none is left
   */
  public List<Placement> within(
      Ground ground, List<Placement> placed, Hull motif, List<Hull> places, SourceSpan where) {
    Band band = Band.of(ground);
    List<Hull> now = new ArrayList<>(placed.stream().map(p -> p.hull(motif)).toList());
    List<Placement> result = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      Placement p = placed.get(i);
      if (isClear(now.get(i), places)) {
        result.add(p);
      } else if (mostMm > 0) {
        Affine shift = shift(i, now, places, band).orElseThrow(() -> noPlace(p, where));
        now.set(i, now.get(i).transformed(shift));
        result.add(p.at(p.map().affine().then(shift)));
      }
    }
    if (result.isEmpty() && !placed.isEmpty()) {
      throw new BadInputException(
          Diagnostic.error(
              LayoutCode.NOTHING_PLACED,
              where,
              "all " + placed.size() + " motifs are left out: none is clear of what they avoid",
              "make the motif or the space smaller"));
    }
    return result;
  }

  /**
   * Tells which motifs are left out, where they would lie, and what is in their way.
   *
   * @param placed the motifs before
   * @param kept those that are left of them
   * @return one note for all of them; empty if none is left out
   */
  public Optional<Diagnostic> leftOut(
      List<Placement> placed,
      List<Placement> kept,
      Hull motif,
      List<Hull> places,
      SourceSpan where) {
    Set<Integer> numbers = kept.stream().map(Placement::number).collect(Collectors.toSet());
    List<String> gone =
        placed.stream()
            .filter(p -> !numbers.contains(p.number()))
            .map(p -> p.number() + inTheWay(p.hull(motif), places))
            .toList();
    return gone.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Diagnostic.note(
                LayoutCode.LEFT_OUT,
                where,
                gone.size()
                    + " of "
                    + placed.size()
                    + " "
                    + placed.get(0).motif()
                    + (gone.size() == 1 ? " is left out" : " are left out")
                    + ", to keep "
                    + Amounts.length(spaceMm)
                    + " clear of holes, notches and what is kept free: "
                    + String.join("; ", gone)));
  }

  private static String inTheWay(Hull motif, List<Hull> places) {
    Hull nearest = places.stream().min(Comparator.comparingDouble(motif::distance)).orElse(motif);
    double distanceMm = motif.distance(nearest);
    return " at "
        + place(motif)
        + (distanceMm == 0 ? ", on" : ", " + Amounts.length(distanceMm) + " from")
        + " the one at "
        + place(nearest);
  }

  private static String place(Hull hull) {
    Point middle = hull.bounds().centre();
    return Amounts.place(middle.x(), middle.y());
  }

  private boolean isClear(Hull hull, List<Hull> places) {
    return places.stream()
        .noneMatch(
            place -> {
              double distance = hull.distance(place);
              return distance == 0 || distance < spaceMm - ROUNDING_MM;
            });
  }

  /** The least shift that helps, along the band before across it. */
  private Optional<Affine> shift(int i, List<Hull> now, List<Hull> places, Band band) {
    Hull own = now.get(i);
    for (int step = 1; step <= STEPS; step++) {
      for (int way = 0; way < WAYS; way++) {
        double angle = Math.PI * (way % 2 == 0 ? way / 2 : way / 2 + WAYS / 2) * 2 / WAYS;
        Point to = Point.polar(Point.ORIGIN, mostMm * step / STEPS, angle);
        Affine shift = Affine.translation(to.x(), to.y());
        Hull tried = own.transformed(shift);
        if (isClear(tried, places) && band.keeps(own, tried) && keepsApart(i, tried, now)) {
          return Optional.of(shift);
        }
      }
    }
    return Optional.empty();
  }

  private static boolean keepsApart(int i, Hull tried, List<Hull> now) {
    for (int k = 0; k < now.size(); k++) {
      if (k != i && tried.distance(now.get(k)) < now.get(i).distance(now.get(k)) / 2) {
        return false;
      }
    }
    return true;
  }

  private BadInputException noPlace(Placement p, SourceSpan where) {
    return new BadInputException(
        Diagnostic.error(
            LayoutCode.NO_WAY_AROUND,
            where,
            "motif "
                + p.motif()
                + " "
                + p.number()
                + " finds no place "
                + Amounts.length(spaceMm)
                + " clear of what it avoids within "
                + Amounts.length(mostMm),
            "let it be shifted farther, make the space smaller, or leave it out"));
  }
}
