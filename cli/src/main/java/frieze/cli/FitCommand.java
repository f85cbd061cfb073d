package frieze.cli;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.opening.Bead;
import frieze.opening.FittedOpening;
import frieze.opening.InsertFitter;
import frieze.opening.InsertRequest;
import frieze.opening.Lug;
import frieze.opening.Measured;
import frieze.opening.OpeningFitter;
import frieze.opening.Sitting;
import frieze.wood.Allowances;
import frieze.wood.Moisture;
import frieze.wood.Sawn;
import frieze.wood.SideFit;
import frieze.wood.Species;
import frieze.wood.WoodCode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** From an opening, as measured, to the size of the panel that goes in and stays in. */
@Command(
    name = "fit",
    description = {
      "Finds the outline of an opening from what a tape said, and the size to cut a panel of wood"
          + " so that it neither binds when wet nor is cut too small.",
      "Lengths: 28-5/8 in, 727 mm; one unit behind the last counts for the whole list."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class FitCommand implements Callable<Integer> {
  private static final double HALF_MM = 0.5;

  private final Console console;

  @Option(
      names = "--sides",
      required = true,
      paramLabel = "LENGTHS",
      description = "bottom, right, top, left, from the front")
  private String sides = "";

  @Option(
      names = "--diagonals",
      required = true,
      paramLabel = "LENGTHS",
      description = "from the lower left corner, from the lower right corner")
  private String diagonals = "";

  @Option(
      names = "--height",
      paramLabel = "LENGTHS",
      description = "a place from the left and the height there; three or more tell the bow")
  private List<String> heights = new ArrayList<>();

  @Option(names = "--bead", paramLabel = "RADIUS", description = "the weld's radius in the corners")
  private @Nullable String bead;

  @Option(
      names = "--bevelled",
      description = "the weld is straight from side to side, and --bead is its leg")
  private boolean bevelled;

  @Option(
      names = "--marks",
      paramLabel = "LENGTH",
      description =
          "the diagonals were taken between marks on the bottom and the top rail, this far from the"
              + " corners")
  private @Nullable String marks;

  @Option(
      names = "--into-bead",
      description = "the diagonals were taken into the bead, where a tape stops short")
  private boolean intoBead;

  @Option(
      names = "--lug",
      paramLabel = "LUG",
      description =
          "something welded in: its side, how far its near edge is from the left or lower corner,"
              + " its width and its depth (bottom, 75, 20, 15); may be given again")
  private List<String> lugs = new ArrayList<>();

  @Option(
      names = "--tape",
      paramLabel = "LENGTH",
      description = "how far one measurement is to be trusted (0.5 mm)")
  private @Nullable String tape;

  @Option(
      names = "--species",
      required = true,
      paramLabel = "NAME",
      description = "of the Wood Handbook: white ash, black cherry, ...")
  private String species = "";

  @Option(names = "--sawn", paramLabel = "HOW", description = "flat or quarter (flat)")
  private String sawn = "flat";

  @Option(names = "--grain", paramLabel = "WAY", description = "lengthwise or upright (lengthwise)")
  private String grain = "lengthwise";

  @Option(
      names = "--moisture",
      paramLabel = "PERCENT",
      description = "now, lowest and highest in use (8, 6, 10); now alone with both seasons")
  private String moisture = "8, 6, 10";

  @Option(
      names = "--dry-season",
      paramLabel = "AIR",
      description = "the air of the driest season, instead of the lowest moisture (21 C, 30%%)")
  private @Nullable String drySeason;

  @Option(
      names = "--damp-season",
      paramLabel = "AIR",
      description = "the air of the dampest season, instead of the highest (24 C, 60%%)")
  private @Nullable String dampSeason;

  @Option(
      names = "--play",
      paramLabel = "LENGTH",
      description = "what must be left on each side at the wettest (0.5 mm)")
  private @Nullable String play;

  @Option(
      names = "--gap",
      paramLabel = "LENGTH",
      description = "check this gap on each side, instead of the one that is needed")
  private @Nullable String gap;

  @Option(names = "--coating", paramLabel = "LENGTH", description = "paint on each steel surface")
  private @Nullable String coating;

  @Option(
      names = "--sanded",
      paramLabel = "LENGTH",
      description = "taken off each edge after cutting")
  private @Nullable String sanded;

  @Option(names = "--units", paramLabel = "mm|in", description = "of bare numbers and the report")
  private String units = "mm";

  @Spec private CommandSpec spec = CommandSpec.create();

  FitCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Measured measured = measured();
    Moisture range = moisture();
    Species wood = species();
    double across =
        wood.acrossPerPct(word("--sawn", sawn, "flat", "quarter") ? Sawn.FLAT : Sawn.QUARTER);
    boolean lengthwise = word("--grain", grain, "lengthwise", "upright");
    FittedOpening fitted = OpeningFitter.fit(measured, SourceSpan.NONE);
    SideFit width =
        side(fitted.clearWidthMm(), lengthwise ? Species.ALONG_GRAIN_PER_PCT : across, range);
    SideFit height =
        side(fitted.clearHeightMm(), lengthwise ? across : Species.ALONG_GRAIN_PER_PCT, range);
    FitReport report = new FitReport(console.out(), units.equals("in"));
    report.opening(fitted, measured);
    report.panel(width, height, measured.beadRadiusMm());
    range.beyondRule(SourceSpan.NONE).ifPresent(console.err()::println);
    List<Diagnostic> binding = new ArrayList<>();
    report.binding("width", width, length("--play", play, HALF_MM)).ifPresent(binding::add);
    report.binding("height", height, length("--play", play, HALF_MM)).ifPresent(binding::add);
    if (!binding.isEmpty()) {
      throw new BadInputException(binding);
    }
    report.sitting(sitting(fitted, measured, lengthwise, across, range));
    return ExitCode.FINE.number();
  }

  private Sitting sitting(
      FittedOpening fitted, Measured measured, boolean lengthwise, double across, Moisture range) {
    double along = Species.ALONG_GRAIN_PER_PCT;
    Optional<List<Double>> gaps =
        Optional.ofNullable(gap).map(g -> Collections.nCopies(4, length("--gap", g, 0)));
    InsertRequest asked =
        new InsertRequest(
            gaps,
            length("--play", play, HALF_MM),
            lengthwise ? along : across,
            lengthwise ? across : along,
            range,
            allowances());
    Bead.Shape shape = bevelled ? Bead.Shape.BEVELLED : Bead.Shape.ROUND;
    return InsertFitter.fit(
        "panel",
        new InsertFitter.Welded(
            fitted, new Bead(shape, measured.beadRadiusMm()), welded(), measured.tapeMm()),
        asked,
        SourceSpan.NONE);
  }

  private List<Lug> welded() {
    List<Lug> welded = new ArrayList<>();
    for (String text : lugs) {
      String[] parts = text.strip().split("\\s*,\\s*", 2);
      Optional<Lug.Side> side =
          Arrays.stream(Lug.Side.values()).filter(s -> s.toString().equals(parts[0])).findFirst();
      if (side.isEmpty() || parts.length < 2) {
        throw options()
            .wrong(
                "--lug",
                "\"" + text + "\" must begin with bottom, right, top or left, and a comma");
      }
      List<Double> mm = options().lengthsMm("--lug", parts[1], 3);
      if (mm.get(0) < 0 || mm.get(1) <= 0 || mm.get(2) <= 0) {
        throw options().wrong("--lug", "its width and depth must be more than 0");
      }
      welded.add(
          new Lug(
              "lug " + (welded.size() + 1),
              side.get(),
              mm.get(0),
              mm.get(1),
              mm.get(2),
              OptionalDouble.empty(),
              SourceSpan.NONE));
    }
    return welded;
  }

  private Allowances allowances() {
    return new Allowances(length("--coating", coating, 0), length("--sanded", sanded, 0));
  }

  private SideFit side(double openingMm, double perPct, Moisture range) {
    Allowances allowances = allowances();
    try {
      return gap == null
          ? SideFit.withPlay(openingMm, perPct, range, length("--play", play, HALF_MM), allowances)
          : SideFit.ofCut(
              openingMm, perPct, range, openingMm - 2 * length("--gap", gap, 0), allowances);
    } catch (IllegalArgumentException e) {
      throw options().wrong(gap == null ? "--play" : "--gap", String.valueOf(e.getMessage()));
    }
  }

  private Measured measured() {
    List<Measured.Station> stations = new ArrayList<>();
    for (String text : heights) {
      List<Double> mm = lengths("--height", text, 2);
      stations.add(new Measured.Station(mm.get(0), mm.get(1)));
    }
    if (stations.size() == 1 || stations.size() == 2) {
      throw options().wrong("--height", "give it three times or more, or not at all");
    }
    if (intoBead && (marks != null || bevelled)) {
      throw options().wrong("--into-bead", "is for round welds, and without --marks");
    }
    return new Measured(
        lengths("--sides", sides, 4),
        stations,
        lengths("--diagonals", diagonals, 2),
        length("--bead", bead, 0),
        intoBead,
        length("--marks", marks, 0),
        tape == null ? HALF_MM : options().heightMm("--tape", tape));
  }

  private Species species() {
    return Species.named(species.strip())
        .orElseThrow(
            () ->
                new BadInputException(
                    Diagnostic.error(
                        WoodCode.UNKNOWN_SPECIES,
                        SourceSpan.NONE,
                        "no species named \"" + species + "\"",
                        String.join(", ", Species.all().stream().map(Species::name).toList()))));
  }

  private Moisture moisture() {
    String[] parts = moisture.replace("%", "").strip().split("[,\\s]+", -1);
    if ((drySeason == null) != (dampSeason == null)) {
      String other = drySeason == null ? "--damp-season" : "--dry-season";
      throw options().wrong(other, "give both seasons");
    }
    try {
      if (drySeason != null && dampSeason != null) {
        return new Moisture(
            Double.parseDouble(parts[0]),
            options().read("--dry-season", drySeason, SeasonOption::moisturePct),
            options().read("--damp-season", dampSeason, SeasonOption::moisturePct));
      }
      if (parts.length == 3) {
        return new Moisture(
            Double.parseDouble(parts[0]),
            Double.parseDouble(parts[1]),
            Double.parseDouble(parts[2]));
      }
    } catch (IllegalArgumentException e) {
      throw new BadInputException(
          Diagnostic.error(
              WoodCode.BAD_MOISTURE, SourceSpan.NONE, String.valueOf(e.getMessage()), ""));
    }
    throw options().wrong("--moisture", "must be three numbers: now, lowest, highest");
  }

  private boolean word(String option, String text, String first, String second) {
    if (!text.equals(first) && !text.equals(second)) {
      throw options().wrong(option, "must be " + first + " or " + second);
    }
    return text.equals(first);
  }

  private double length(String option, @Nullable String text, double otherwiseMm) {
    if (text == null) {
      return otherwiseMm;
    }
    double mm = lengths(option, text, 1).get(0);
    if (mm < 0) {
      throw options().wrong(option, "must be 0 or more");
    }
    return mm;
  }

  private List<Double> lengths(String option, String text, int count) {
    List<Double> mm = options().lengthsMm(option, text, count);
    if (count > 1 && mm.stream().anyMatch(v -> v <= 0)) {
      throw options().wrong(option, "all lengths must be more than 0");
    }
    return mm;
  }

  private OptionReader options() {
    return new OptionReader(spec, units);
  }
}
