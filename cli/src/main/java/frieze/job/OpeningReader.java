package frieze.job;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Values;
import frieze.layout.Panel;
import frieze.opening.Bead;
import frieze.opening.DrawnFitter;
import frieze.opening.FittedOpening;
import frieze.opening.InsertFitter;
import frieze.opening.InsertRequest;
import frieze.opening.Lug;
import frieze.opening.Measured;
import frieze.opening.OpeningFitter;
import frieze.opening.Sitting;
import frieze.wood.Allowances;
import frieze.wood.Moisture;
import frieze.wood.Species;
import frieze.wood.WoodCode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads an opening as it was measured, and fits a panel into it. */
final class OpeningReader {
  private static final double PER_CENT = 100;

  private final Diagnostics found;

  OpeningReader(Diagnostics found) {
    this.found = found;
  }

  /** The gap on each side to cut with, where the job gives it: bottom, right, top, left. */
  static Optional<List<Double>> gaps(Values fit) {
    Optional<List<Double>> given = fit.find(FitKeys.Fit.GAP);
    if (given.isEmpty() && !fit.has(FitKeys.Fit.SPECIES)) {
      given = Optional.of(List.of(0.0));
    }
    return given.map(g -> g.size() == 1 ? Collections.nCopies(4, g.get(0)) : g);
  }

  /** Whether a rectangle and one gap say all there is. */
  static boolean isPlain(Values opening, Values fit) {
    return opening.get(FitKeys.Opening.WIDTH).size() == 1
        && opening.get(FitKeys.Opening.HEIGHT).size() == 1
        && opening.get(FitKeys.Opening.WELD) == Bead.Shape.ROUND
        && !opening.has(FitKeys.Opening.DIAGONALS)
        && !opening.has(FitKeys.Opening.HEIGHTS)
        && !opening.has(FitKeys.Opening.LUGS)
        && isOneGap(fit);
  }

  /** Whether nothing but one gap on all sides is asked for. */
  static boolean isOneGap(Values fit) {
    return !fit.has(FitKeys.Fit.SPECIES)
        && fit.get(FitKeys.Fit.COATING) == 0
        && fit.get(FitKeys.Fit.SANDED) == 0
        && gaps(fit).filter(g -> g.stream().distinct().count() == 1).isPresent();
  }

  /** Fits a panel into an opening of any outline; without a fit that is the panel's edge. */
  Optional<Insert> drawn(Panel opening, Values fit) {
    if (isOneGap(fit) && gaps(fit).orElseThrow().get(0) == 0) {
      return Optional.of(Insert.shaped(opening));
    }
    if (gaps(fit).filter(g -> g.stream().distinct().count() > 1).isPresent()) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          fit.where(FitKeys.Fit.GAP),
          "the opening of the panel \""
              + opening.name()
              + "\" is an outline, without four sides for four gaps",
          "give one gap, which is left all round");
      return Optional.empty();
    }
    Optional<Moisture> moisture = moisture(fit.get(FitKeys.Fit.MOISTURE));
    try {
      return moisture.map(
          m ->
              Insert.fitted(
                  DrawnFitter.fit(
                      opening.name(), opening.outline(), request(fit, m), whereGap(fit))));
    } catch (BadInputException e) {
      found.addAll(e.diagnostics());
      return Optional.empty();
    }
  }

  private static SourceSpan whereGap(Values fit) {
    return fit.has(FitKeys.Fit.GAP) ? fit.where(FitKeys.Fit.GAP) : fit.where();
  }

  /** Fits a panel; empty after an error. */
  Optional<Sitting> read(String panel, Values opening, Values fit) {
    Optional<FittedOpening> outline = outline(opening);
    Optional<Moisture> moisture = moisture(fit.get(FitKeys.Fit.MOISTURE));
    if (outline.isEmpty() || moisture.isEmpty()) {
      return Optional.empty();
    }
    boolean told = opening.has(FitKeys.Opening.DIAGONALS);
    Bead bead = new Bead(opening.get(FitKeys.Opening.WELD), opening.get(FitKeys.Opening.CORNER));
    try {
      return Optional.of(
          InsertFitter.fit(
              panel,
              new InsertFitter.Welded(
                  outline.get(), bead, lugs(opening), told ? opening.get(FitKeys.Opening.TAPE) : 0),
              request(fit, moisture.get()),
              whereGap(fit)));
    } catch (BadInputException e) {
      found.addAll(e.diagnostics());
      return Optional.empty();
    }
  }

  private static List<Lug> lugs(Values opening) {
    return opening.find(FitKeys.Opening.LUGS).orElse(List.of()).stream()
        .map(
            v ->
                new Lug(
                    v.get(FitKeys.Welded.NAME),
                    v.get(FitKeys.Welded.SIDE),
                    v.get(FitKeys.Welded.FROM),
                    v.get(FitKeys.Welded.WIDTH),
                    v.get(FitKeys.Welded.DEPTH),
                    v.find(FitKeys.Welded.CLEARANCE)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                    v.where()))
        .toList();
  }

  private static InsertRequest request(Values fit, Moisture moisture) {
    Optional<Species> species = fit.find(FitKeys.Fit.SPECIES);
    double along = species.isPresent() ? Species.ALONG_GRAIN_PER_PCT : 0;
    double across = species.map(s -> s.acrossPerPct(fit.get(FitKeys.Fit.CUT))).orElse(0.0);
    boolean upright = fit.get(FitKeys.Fit.UPRIGHT);
    return new InsertRequest(
        gaps(fit),
        fit.get(FitKeys.Fit.PLAY),
        upright ? across : along,
        upright ? along : across,
        moisture,
        new Allowances(fit.get(FitKeys.Fit.COATING), fit.get(FitKeys.Fit.SANDED)));
  }

  private Optional<FittedOpening> outline(Values v) {
    List<Double> width = v.get(FitKeys.Opening.WIDTH);
    List<Double> height = v.get(FitKeys.Opening.HEIGHT);
    Optional<List<Double>> diagonals = v.find(FitKeys.Opening.DIAGONALS);
    if (diagonals.isEmpty()) {
      return withoutDiagonals(v, width, height);
    }
    if (v.get(FitKeys.Opening.INTO_WELD) && v.get(FitKeys.Opening.MARKS) > 0) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          v.where(FitKeys.Opening.MARKS),
          "the diagonals can't go into the welds and to marks",
          "give \"into weld\" or \"marks\"");
      return Optional.empty();
    }
    Measured measured =
        new Measured(
            List.of(width.get(0), last(height), last(width), height.get(0)),
            stations(v),
            diagonals.get(),
            v.get(FitKeys.Opening.CORNER),
            v.get(FitKeys.Opening.INTO_WELD),
            v.get(FitKeys.Opening.MARKS),
            v.get(FitKeys.Opening.TAPE));
    try {
      return Optional.of(OpeningFitter.fit(measured, v.where(FitKeys.Opening.DIAGONALS)));
    } catch (BadInputException e) {
      found.addAll(e.diagnostics());
      return Optional.empty();
    }
  }

  private static double last(List<Double> values) {
    return values.get(values.size() - 1);
  }

  private static List<Measured.Station> stations(Values v) {
    List<Measured.Station> stations = new ArrayList<>();
    for (Values s : v.find(FitKeys.Opening.HEIGHTS).orElse(List.of())) {
      stations.add(new Measured.Station(s.get(FitKeys.Station.AT), s.get(FitKeys.Station.HEIGHT)));
    }
    return stations;
  }

  private Optional<FittedOpening> withoutDiagonals(
      Values v, List<Double> width, List<Double> height) {
    if (width.size() > 1 || height.size() > 1 || v.has(FitKeys.Opening.HEIGHTS)) {
      found.error(
          JobCode.MISSING_KEY,
          v.where(),
          "the opening needs \"diagonals\": four sides alone do not tell how it leans",
          "diagonals: [from the lower left corner, from the lower right corner]");
      return Optional.empty();
    }
    return Optional.of(FittedOpening.rectangle(width.get(0), height.get(0)));
  }

  private Optional<Moisture> moisture(Values v) {
    Optional<Double> lowest = season(v, FitKeys.Moisture.LOWEST, FitKeys.Moisture.DRY);
    Optional<Double> highest = season(v, FitKeys.Moisture.HIGHEST, FitKeys.Moisture.DAMP);
    if (lowest.isEmpty() || highest.isEmpty()) {
      return Optional.empty();
    }
    double nowPct = PER_CENT * v.get(FitKeys.Moisture.NOW);
    try {
      return Optional.of(new Moisture(nowPct, lowest.get(), highest.get()));
    } catch (IllegalArgumentException e) {
      found.error(
          WoodCode.BAD_MOISTURE,
          v.where(),
          String.format(
              Locale.ROOT,
              "moisture of %.1f %% now, %.1f to %.1f %% in use can't be",
              nowPct,
              lowest.get(),
              highest.get()),
          "from 0 to 30 %, the lowest not above the highest");
      return Optional.empty();
    }
  }

  private Optional<Double> season(Values v, Key<Double> given, Key<Values> air) {
    if (v.has(given) == v.has(air)) {
      found.error(
          v.has(given) ? JobCode.KEYS_EXCLUDE : JobCode.MISSING_KEY,
          v.where(air),
          "\"moisture\" needs either \"" + given.name() + "\" or \"" + air.name() + "\"",
          given.name() + ": 6%, or " + air.name() + ": {celsius: 21, humidity: 30%}");
      return Optional.empty();
    }
    return v.has(given)
        ? v.find(given).map(part -> PER_CENT * part)
        : v.find(air).flatMap(this::inAir);
  }

  private Optional<Double> inAir(Values air) {
    Optional<Integer> celsius = air.find(FitKeys.Air.CELSIUS);
    Optional<Integer> fahrenheit = air.find(FitKeys.Air.FAHRENHEIT);
    double humidity = air.get(FitKeys.Air.HUMIDITY);
    if (celsius.isPresent() == fahrenheit.isPresent() || humidity >= 1) {
      found.error(
          celsius.isPresent() ? JobCode.KEYS_EXCLUDE : JobCode.MISSING_KEY,
          air.where(),
          "the air needs either \"celsius\" or \"fahrenheit\", and a humidity below 100%",
          "{celsius: 21, humidity: 30%}");
      return Optional.empty();
    }
    double degrees = fahrenheit.map(f -> (double) f).orElseGet(() -> celsius.orElse(0) * 1.8 + 32);
    return Optional.of(Moisture.equilibriumPct(degrees, humidity));
  }
}
