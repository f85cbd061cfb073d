package frieze.job;

import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Suggestion;
import frieze.keys.Values;
import frieze.layout.Border;
import frieze.layout.Corners;
import frieze.layout.Follow;
import frieze.layout.Pattern;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Reads the patterns that go along a curved line or around the panel. */
final class CurvedPlacingReader {
  private final List<String> drawn;
  private final Diagnostics found;

  /**
   * Prepares to read.
   *
   * @param drawn the names of the job's drawings
   */
  CurvedPlacingReader(List<String> drawn, Diagnostics found) {
    this.drawn = List.copyOf(drawn);
    this.found = found;
  }

  /** Reads {@code follow}; empty after an error. */
  Optional<Pattern> follow(Values v) {
    Optional<String> drawing = v.find(FollowKeys.DRAWING);
    List<Key<?>> lines =
        Stream.<Key<?>>of(FollowKeys.DRAWING, FollowKeys.ARCH, FollowKeys.BETWEEN)
            .filter(v::has)
            .toList();
    boolean betweenLines = isBetweenLines(v);
    List<Key<?>> needed =
        betweenLines
            ? List.of(FollowKeys.DRAWING, FollowKeys.BETWEEN)
            : lines.subList(0, Math.min(1, lines.size()));
    if (lines.isEmpty() || !lines.equals(needed)) {
      found.error(
          lines.isEmpty() || (drawing.isEmpty() && betweenLines)
              ? JobCode.MISSING_KEY
              : JobCode.KEYS_EXCLUDE,
          v.where(),
          betweenLines
              ? "between lines, \"follow\" needs the \"drawing\" that has them, and no \"arch\""
              : "\"follow\" needs \"drawing\", \"arch\" or \"between\", one of them",
          betweenLines
              ? "{drawing: rails, between: lines, count: 9}"
              : "{arch: 2 in, count: 9}, {drawing: vine, count: 9}, or {between: edges, count: 9}");
      return Optional.empty();
    }
    if (v.get(FollowKeys.SWELL) && !v.has(FollowKeys.BETWEEN)) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          v.where(FollowKeys.SWELL),
          "\"swell\" is for the line \"between\" two edges",
          "follow: {between: edges, count: 9, swell: yes}");
      return Optional.empty();
    }
    if (!v.has(FollowKeys.COUNT) && !v.has(FollowKeys.PITCH)) {
      found.error(
          JobCode.MISSING_KEY,
          v.where(),
          "\"follow\" needs \"count\" or \"pitch\"",
          "{arch: 2 in, count: 9} fills the line; {arch: 2 in, pitch: 3} takes as many as fit");
      return Optional.empty();
    }
    if (drawing.isPresent() && !isDrawn(drawing.get(), v, FollowKeys.DRAWING)) {
      return Optional.empty();
    }
    return Optional.of(
        new Follow(
            course(v),
            v.get(PatternKeys.Along.GROUP),
            v.find(FollowKeys.COUNT).orElse(0),
            v.get(PatternKeys.Along.INSET),
            optional(v, FollowKeys.RISE),
            optional(v, FollowKeys.PITCH),
            v.get(FollowKeys.STRETCH)));
  }

  private static boolean isBetweenLines(Values v) {
    return v.find(FollowKeys.BETWEEN).filter(FollowKeys.Sides.LINES::equals).isPresent();
  }

  private static Follow.Course course(Values v) {
    boolean swelling = v.get(FollowKeys.SWELL);
    Optional<String> pick = v.find(FollowKeys.PICK);
    Optional<String> drawing = v.find(FollowKeys.DRAWING);
    if (drawing.isPresent()) {
      return isBetweenLines(v)
          ? new Follow.BetweenLines(drawing.get(), pick, swelling)
          : new Follow.Drawn(drawing.get(), pick);
    }
    return v.has(FollowKeys.BETWEEN)
        ? new Follow.Between(swelling)
        : new Follow.Arch(v.get(FollowKeys.ARCH));
  }

  /** Reads {@code border}; empty after an error. */
  Optional<Pattern> border(Values v) {
    Optional<List<Integer>> count = v.find(PatternKeys.Border.COUNT);
    if (count.isPresent() == v.has(PatternKeys.Border.PITCH)) {
      found.error(
          count.isPresent() ? JobCode.KEYS_EXCLUDE : JobCode.MISSING_KEY,
          v.where(),
          "\"border\" needs \"count\" or \"pitch\", one of them",
          "{count: [9, 2]} for nine along X and two along Y, or {pitch: 3}");
      return Optional.empty();
    }
    Optional<String> corner = v.find(PatternKeys.Border.CORNER);
    if (corner.isPresent() && !isDrawn(corner.get(), v, PatternKeys.Border.CORNER)) {
      return Optional.empty();
    }
    return Optional.of(
        new Border(
            v.get(PatternKeys.Border.SIDES),
            v.get(PatternKeys.Border.TOP),
            count.map(c -> OptionalInt.of(c.get(0))).orElse(OptionalInt.empty()),
            count.map(c -> OptionalInt.of(c.get(1))).orElse(OptionalInt.empty()),
            optional(v, PatternKeys.Border.PITCH),
            v.get(PatternKeys.Along.INSET),
            corner,
            optional(v, PatternKeys.Border.CORNER_SIZE)));
  }

  /** The drawing in the corners of a border, if there is one. */
  Optional<Job.Placing> corners(Values v, SourceSpan where) {
    boolean turned = v.get(PatternKeys.Border.SIDES) == Border.Meeting.RUNNING;
    return v.find(PatternKeys.Border.CORNER)
        .filter(drawn::contains)
        .map(
            drawing ->
                new Job.Placing(
                    List.of(drawing),
                    new Corners(
                        turned,
                        v.get(PatternKeys.Along.INSET),
                        optional(v, PatternKeys.Border.CORNER_SIZE)),
                    false,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    0,
                    where));
  }

  private boolean isDrawn(String name, Values v, Key<String> key) {
    if (!drawn.contains(name)) {
      found.error(
          JobCode.NO_SUCH_ARTWORK,
          v.where(key),
          "no drawing named \"" + name + "\" in this job",
          Suggestion.hint(name, drawn));
    }
    return drawn.contains(name);
  }

  private static OptionalDouble optional(Values v, Key<Double> key) {
    Optional<Double> value = v.find(key);
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
