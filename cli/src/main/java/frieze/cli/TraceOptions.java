package frieze.cli;

import frieze.artwork.Artwork;
import frieze.artwork.mend.Repair;
import frieze.artwork.source.DrawingRequest;
import frieze.curve.Point;
import frieze.keys.OptionText;
import frieze.trace.RealSize;
import frieze.trace.TraceSettings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What the command line tells of a picture. */
final class TraceOptions {
  private static final double MM_PER_INCH = 25.4;

  @Option(
      names = "--height",
      paramLabel = "LENGTH",
      description = "the height of the outlines together")
  private @Nullable String height;

  @Option(
      names = "--width",
      paramLabel = "LENGTH",
      description = "the width of the outlines together")
  private @Nullable String width;

  @Option(names = "--dpi", paramLabel = "NUMBER", description = "dots to the inch of a scan")
  private @Nullable Double dpi;

  @Option(
      names = "--sheet",
      paramLabel = "LENGTHS",
      description = {
        "width and height of the sheet in a photo, or of any rectangle in it, to square the photo"
            + " up: \"210 x 297 mm\""
      })
  private @Nullable String sheet;

  @Option(
      names = "--corners",
      paramLabel = "PIXELS",
      description = {
        "where its corners are in the photo: upper left, upper right, lower right, lower left;"
            + " each as pixels from the left and from the top:"
            + " \"310,250 2710,210 2790,3380 240,3390\""
      })
  private @Nullable String corners;

  @Option(
      names = "--lens-bend",
      paramLabel = "SHARE",
      description = "by how much the lens moves the corners of the picture outwards (0%%)")
  private @Nullable String lensBend;

  @Option(
      names = "--threshold",
      paramLabel = "SHARE",
      description = "where the outline lies between the ground and the figure (50%%)")
  private @Nullable String threshold;

  @Option(
      names = "--smallest",
      paramLabel = "LENGTH",
      description = "leaves out what is smaller than this in both directions (0.5 mm)")
  private @Nullable String smallest;

  @Option(
      names = "--tolerance",
      paramLabel = "LENGTH",
      description = "how far lines and arcs may leave the outline that was found")
  private @Nullable String tolerance;

  @Option(
      names = "--lines-up-to",
      paramLabel = "LENGTH",
      description = {
        "strokes of a pen no wider than this become lines along their middle, for grooves, and not"
            + " outlines"
      })
  private @Nullable String linesUpTo;

  @Option(names = "--light-on-dark", description = "the figure is light and the ground is dark")
  private boolean lightOnDark;

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      description = "what a bare number in these options means: mm or in (mm)")
  private String units = "mm";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command = CommandSpec.create();

  TraceSettings settings() {
    TraceSettings settings = TraceSettings.of(size()).withPaperOnInk(lightOnDark);
    if (threshold != null) {
      settings = settings.withThreshold(share("--threshold", threshold, 0.05, 0.95));
    }
    if (lensBend != null) {
      settings = settings.withLensBend(share("--lens-bend", lensBend, -0.2, 0.2));
    }
    if (smallest != null) {
      settings = settings.withSmallest(options().heightMm("--smallest", smallest));
    }
    if (linesUpTo != null) {
      settings = settings.withLinesUpTo(options().heightMm("--lines-up-to", linesUpTo));
    }
    if (tolerance != null) {
      settings = settings.withTolerance(options().heightMm("--tolerance", tolerance));
    }
    return settings;
  }

  private double share(String option, String text, double least, double most) {
    double share = options().read(option, text, OptionText::share);
    if (!(share >= least && share <= most)) {
      throw options()
          .wrong(option, Math.round(100 * least) + "% to " + Math.round(100 * most) + "%");
    }
    return share;
  }

  /** Gives outlines that a sheet has squared up the height or the width asked for. */
  Artwork sized(Artwork traced) {
    if (sheet == null) {
      return traced;
    }
    if (height != null) {
      return traced.withHeight(options().heightMm("--height", height));
    }
    return width == null ? traced : traced.withWidth(options().heightMm("--width", width));
  }

  private RealSize size() {
    if ((sheet == null) != (corners == null)) {
      throw new ParameterException(
          command.commandLine(), "--sheet and --corners belong together: give both");
    }
    if (sheet != null && corners != null) {
      if (dpi != null || (height != null && width != null)) {
        throw new ParameterException(
            command.commandLine(), "beside --sheet give one of --height and --width, or neither");
      }
      List<Double> mm = options().lengthsMm("--sheet", sheet, 2);
      if (!(mm.get(0) > 0 && mm.get(1) > 0)) {
        throw options().wrong("--sheet", "both lengths must be more than 0");
      }
      List<Point> at = options().read("--corners", corners, TraceOptions::points);
      return new RealSize.Sheet(at, mm.get(0), mm.get(1));
    }
    return plainSize();
  }

  private static List<Point> points(String text) {
    String[] numbers = text.strip().split("[\\s,]+", -1);
    if (numbers.length != 8) {
      throw new IllegalArgumentException(
          "four corners are eight numbers, but these are " + numbers.length);
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < numbers.length; i += 2) {
      points.add(new Point(Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])));
    }
    return points;
  }

  private RealSize plainSize() {
    List<RealSize> given = new ArrayList<>();
    if (height != null) {
      given.add(new RealSize.Height(options().heightMm("--height", height)));
    }
    if (width != null) {
      given.add(new RealSize.Width(options().heightMm("--width", width)));
    }
    if (dpi != null) {
      if (!(dpi > 0) || !Double.isFinite(dpi)) {
        throw options().wrong("--dpi", "must be more than 0");
      }
      given.add(new RealSize.Pixel(MM_PER_INCH / dpi));
    }
    if (given.size() != 1) {
      throw new ParameterException(
          command.commandLine(), "give one of --height, --width, --dpi and --sheet: the real size");
    }
    return given.get(0);
  }

  /** Refuses what only a picture takes: a drawing has outlines already. */
  void refuseForDrawing() {
    Map<String, Boolean> given = new LinkedHashMap<>();
    given.put("--dpi", dpi != null);
    given.put("--sheet", sheet != null);
    given.put("--corners", corners != null);
    given.put("--lens-bend", lensBend != null);
    given.put("--threshold", threshold != null);
    given.put("--tolerance", tolerance != null);
    given.put("--lines-up-to", linesUpTo != null);
    given.put("--light-on-dark", lightOnDark);
    given.forEach(
        (name, is) -> {
          if (is) {
            throw options().wrong(name, "is for pictures; this is a drawing");
          }
        });
    if (height != null && width != null) {
      throw new ParameterException(
          command.commandLine(), "give one of --height and --width: the other follows");
    }
  }

  /** What is asked of a drawing, or of the outlines of a picture. */
  DrawingRequest drawing(OptionalDouble unitMm, @Nullable String pick, boolean outline) {
    return new DrawingRequest(
        unitMm,
        Optional.ofNullable(pick),
        optional("--height", height),
        optional("--width", width),
        Repair.USUAL_GAP_MM,
        optional("--smallest", smallest).orElse(0),
        outline);
  }

  private OptionalDouble optional(String name, @Nullable String text) {
    return text == null ? OptionalDouble.empty() : OptionalDouble.of(lengthMm(name, text));
  }

  double lengthMm(String option, String text) {
    return options().heightMm(option, text);
  }

  private OptionReader options() {
    return new OptionReader(command, units);
  }
}
