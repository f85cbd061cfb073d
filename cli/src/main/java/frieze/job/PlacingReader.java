package frieze.job;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Suggestion;
import frieze.keys.Values;
import frieze.layout.Arrangement;
import frieze.layout.Avoidance;
import frieze.layout.Pattern;
import frieze.layout.Ring;
import frieze.layout.Scatter;
import frieze.layout.Tiling;
import frieze.layout.Variation;
import frieze.layout.WallpaperGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads where drawings go on a panel. */
final class PlacingReader {
  private static final List<Key<Values>> WAYS =
      List.of(
          PatternKeys.Design.ALONG,
          PatternKeys.Design.FOLLOW,
          PatternKeys.Design.BORDER,
          PatternKeys.Design.OVER,
          PatternKeys.Design.RING,
          PatternKeys.Design.SCATTER);

  private final List<String> drawn;
  private final int seed;
  private final Diagnostics found;
  private final CurvedPlacingReader curves;

  /**
   * Prepares to read.
   *
   * @param drawn the names of the job's drawings
   * @param seed of the job
   */
  PlacingReader(List<String> drawn, int seed, Diagnostics found) {
    this.drawn = List.copyOf(drawn);
    this.seed = seed;
    this.found = found;
    this.curves = new CurvedPlacingReader(this.drawn, found);
  }

  List<String> drawn() {
    return drawn;
  }

  /**
   * Reads the design of a panel.
   *
   * @param lengthMm of the panel, along X
   */
  List<Job.Placing> read(String panelName, Values panel, double lengthMm) {
    boolean mirrored = panel.get(JobKeys.Panel.MIRROR);
    List<Bounds> keptFree =
        panel.find(JobKeys.Panel.KEEP_FREE).orElse(List.of()).stream()
            .map(v -> keptFree(v, mirrored, lengthMm))
            .toList();
    List<Values> design = panel.find(JobKeys.Panel.DESIGN).orElse(List.of());
    return read(panelName, design, mirrored, keptFree);
  }

  /**
   * Reads a list of drawings.
   *
   * @param keptFree what they keep clear of
   */
  List<Job.Placing> read(
      String panelName, List<Values> design, boolean mirrored, List<Bounds> keptFree) {
    List<Job.Placing> placings = new ArrayList<>();
    for (Values v : design) {
      int before = placings.size();
      List<String> names = v.get(PatternKeys.Design.PLACE);
      names.stream().filter(name -> !drawn.contains(name)).forEach(name -> unknown(name, v));
      way(v)
          .flatMap(way -> pattern(way, v).map(p -> placing(names, p, v, v.where(way))))
          .filter(p -> isClippedWell(p, v))
          .map(p -> p.on(mirrored, keptFree, seedOf(panelName, before)))
          .ifPresent(placings::add);
      v.find(PatternKeys.Design.BORDER)
          .flatMap(border -> curves.corners(border, v.where(PatternKeys.Design.BORDER)))
          .map(p -> p.on(mirrored, keptFree, seedOf(panelName, placings.size())))
          .ifPresent(placings::add);
    }
    return placings;
  }

  private boolean isClippedWell(Job.Placing placing, Values design) {
    if (placing.clipMm().isEmpty() || placing.pattern().mayReachOver()) {
      return true;
    }
    found.error(
        JobCode.KEYS_EXCLUDE,
        design.where(PatternKeys.Design.CLIP),
        "\"clip\" is for motifs that go on beyond the border",
        "use it with `along`, `follow`, `over` or `ring`");
    return false;
  }

  private void unknown(String name, Values design) {
    found.error(
        JobCode.NO_SUCH_ARTWORK,
        design.where(PatternKeys.Design.PLACE),
        "no drawing named \"" + name + "\" in this job",
        Suggestion.hint(name, drawn));
  }

  private static Bounds keptFree(Values v, boolean mirrored, double lengthMm) {
    double width = v.get(PatternKeys.KeepFree.WIDTH);
    double x = v.get(PatternKeys.KeepFree.X);
    double left = mirrored ? lengthMm - x - width : x;
    double y = v.get(PatternKeys.KeepFree.Y);
    return new Bounds(left, y, left + width, y + v.get(PatternKeys.KeepFree.HEIGHT));
  }

  /** The one way in which a drawing is repeated. */
  private Optional<Key<Values>> way(Values design) {
    List<Key<Values>> given = WAYS.stream().filter(design::has).toList();
    if (given.size() == 1) {
      return Optional.of(given.get(0));
    }
    found.error(
        given.isEmpty() ? JobCode.MISSING_KEY : JobCode.KEYS_EXCLUDE,
        given.isEmpty() ? design.where() : design.where(given.get(1)),
        "\"design\" needs one of " + String.join(", ", WAYS.stream().map(Key::name).toList()),
        "along: {count: 5}");
    return Optional.empty();
  }

  private static Job.Placing placing(
      List<String> drawings, Pattern pattern, Values design, SourceSpan where) {
    return new Job.Placing(
        drawings,
        pattern,
        false,
        optional(design, PatternKeys.Design.CLIP),
        design.find(PatternKeys.Design.VARY).map(PlacingReader::variation),
        design.find(PatternKeys.Design.AVOID).map(PlacingReader::avoidance),
        List.of(),
        0,
        where);
  }

  private static Avoidance avoidance(Values v) {
    return new Avoidance(v.get(PatternKeys.Avoid.SPACE), v.get(PatternKeys.Avoid.SHIFT));
  }

  private Optional<Pattern> pattern(Key<Values> way, Values design) {
    Values v = design.get(way);
    if (way.equals(PatternKeys.Design.FOLLOW)) {
      return curves.follow(v);
    }
    if (way.equals(PatternKeys.Design.BORDER)) {
      return curves.border(v);
    }
    if (way.equals(PatternKeys.Design.OVER)) {
      return over(v);
    }
    if (way.equals(PatternKeys.Design.RING)) {
      return ring(v);
    }
    if (way.equals(PatternKeys.Design.SCATTER)) {
      return Optional.of(
          new Scatter(
              v.get(PatternKeys.Scatter.COUNT),
              v.get(PatternKeys.Scatter.SPACE),
              v.get(PatternKeys.Along.INSET),
              v.get(PatternKeys.Scatter.TURN)));
    }
    return along(v);
  }

  private Optional<Pattern> along(Values v) {
    if (!v.has(PatternKeys.Along.COUNT) && !v.has(PatternKeys.Along.PITCH)) {
      found.error(
          JobCode.MISSING_KEY,
          v.where(),
          "\"along\" needs \"count\" or \"pitch\"",
          "{count: 5} fills the band; {pitch: 3} takes as many as fit");
      return Optional.empty();
    }
    return Optional.of(
        new Arrangement(
            v.get(PatternKeys.Along.GROUP),
            v.find(PatternKeys.Along.COUNT).orElse(0),
            v.get(PatternKeys.Along.INSET),
            optional(v, PatternKeys.Along.RISE),
            optional(v, PatternKeys.Along.PITCH)));
  }

  private Optional<Pattern> over(Values v) {
    WallpaperGroup group = v.get(PatternKeys.Over.GROUP);
    boolean free =
        group.cell() != WallpaperGroup.Cell.SQUARE && group.cell() != WallpaperGroup.Cell.HEXAGON;
    if (!free && v.has(PatternKeys.Over.ROWS)) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          v.where(PatternKeys.Over.ROWS),
          "the cells of " + group.symbol() + " are as high as their width makes them",
          "leave out \"rows\"");
      return Optional.empty();
    }
    return Optional.of(
        new Tiling(
            group,
            v.get(PatternKeys.Over.COLUMNS),
            v.find(PatternKeys.Over.ROWS).map(OptionalInt::of).orElse(OptionalInt.empty()),
            v.get(PatternKeys.Over.INSET),
            v.find(PatternKeys.Over.AT).map(at -> new Point(at.get(0), at.get(1))),
            v.get(PatternKeys.Over.TURN)));
  }

  private Optional<Pattern> ring(Values v) {
    Optional<Double> x = v.find(PatternKeys.Ring.X);
    Optional<Double> y = v.find(PatternKeys.Ring.Y);
    if (x.isPresent() != y.isPresent()) {
      found.error(
          JobCode.MISSING_KEY, v.where(), "the middle of the ring needs both \"x\" and \"y\"", "");
      return Optional.empty();
    }
    return Optional.of(
        new Ring(
            v.get(PatternKeys.Ring.COUNT),
            v.get(PatternKeys.Ring.RADIUS),
            x.map(value -> new Point(value, y.orElseThrow())),
            v.get(PatternKeys.Ring.START),
            v.get(PatternKeys.Ring.MIRROR)));
  }

  /** Each panel and each drawing on it differs in its own way. */
  private long seedOf(String panel, int item) {
    return (seed * 31L + panel.hashCode()) * 31L + item;
  }

  private static Variation variation(Values v) {
    return new Variation(
        v.get(VaryKeys.TURN),
        v.get(VaryKeys.SIZE),
        v.get(VaryKeys.PLACE),
        v.get(VaryKeys.BEND),
        optional(v, VaryKeys.SPACE));
  }

  private static OptionalDouble optional(Values v, Key<Double> key) {
    Optional<Double> value = v.find(key);
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
