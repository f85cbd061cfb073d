package frieze.cli;

import frieze.trace.RealSize;
import frieze.trace.TraceSettings;
import java.util.ArrayList;
import java.util.List;
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
      names = "--smallest",
      paramLabel = "LENGTH",
      description = "leaves out what is smaller than this in both directions (0.5 mm)")
  private @Nullable String smallest;

  @Option(
      names = "--tolerance",
      paramLabel = "LENGTH",
      description = "how far lines and arcs may leave the outline that was found")
  private @Nullable String tolerance;

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
    if (smallest != null) {
      settings = settings.withSmallest(options().heightMm("--smallest", smallest));
    }
    if (tolerance != null) {
      settings = settings.withTolerance(options().heightMm("--tolerance", tolerance));
    }
    return settings;
  }

  private RealSize size() {
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
          command.commandLine(), "give one of --height, --width and --dpi: the real size");
    }
    return given.get(0);
  }

  private OptionReader options() {
    return new OptionReader(command, units);
  }
}
