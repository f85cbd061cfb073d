package frieze.cli;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Bounds;
import frieze.diagnostic.Amounts;
import frieze.image.ImageFile;
import frieze.sheet.TracedDrawing;
import frieze.trace.GreyImage;
import frieze.trace.TraceSettings;
import frieze.trace.Traced;
import frieze.trace.Tracer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Turns a picture into outlines. */
@Command(
    name = "trace",
    description = {
      "Traces the outlines of a picture (PNG, JPEG, BMP, GIF, TIFF) and writes them as an SVG"
          + " drawing that you can edit.",
      "Say how large the outlines are in reality: by their height or width, by the scanner's dots to"
          + " the inch, or by the corners of the sheet."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class TraceCommand implements Callable<Integer> {
  private final Console console;
  private final DiskFiles files;

  @Parameters(paramLabel = "IMAGE", description = "the picture")
  private String image = "";

  @Mixin private TraceOptions options = new TraceOptions();

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "the drawing to write (IMAGE with the ending .svg)")
  private @Nullable String to;

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "also writes a PNG with the outlines over the picture")
  private @Nullable String picture;

  @Spec private CommandSpec spec = CommandSpec.create();

  TraceCommand(Console console, DiskFiles files) {
    this.console = console;
    this.files = files;
  }

  @Override
  public Integer call() throws IOException {
    TraceSettings settings = options.settings();
    GreyImage grey = ImageFile.read(image, files.named(image));
    Traced traced = Tracer.trace(image, grey, settings);
    new Messages(console.err(), files).print(traced.artwork().notes());
    Artwork art = options.sized(traced.artwork());
    String target = to == null ? OutputFile.beside(image, ".svg") : to;
    output(target).write(TracedDrawing.svg(art).getBytes(StandardCharsets.UTF_8));
    String shown = picture;
    if (shown != null) {
      output(shown).write(TracedDrawing.over(grey, traced));
    }
    report(target, art, traced);
    return ExitCode.FINE.number();
  }

  private OutputFile output(String name) {
    return new OutputFile(console, spec, name, image, "picture");
  }

  private void report(String target, Artwork art, Traced traced) {
    Bounds b = art.bounds();
    List<Piece> areas = art.pieces().stream().filter(p -> p.fill().isPresent()).toList();
    long holes = areas.stream().mapToLong(p -> p.paths().size() - 1).sum();
    Table table = new Table("traced", target);
    Stream.of(
            new String[] {"size", Amounts.length(b.width()) + " x " + Amounts.length(b.height())},
            new String[] {"size from", art.sizeAssumed()},
            new String[] {"outlines", areas.size() + ", with " + holes + " holes"},
            new String[] {"pen lines", String.valueOf(art.strokes().size())},
            new String[] {"corners", String.valueOf(traced.corners().size())},
            new String[] {"lines and arcs", String.valueOf(traced.segments())},
            new String[] {"lens bend", traced.bend().words()},
            new String[] {"within", Amounts.length(traced.toleranceMm()) + " of the outline found"})
        .forEach(row -> table.row(List.of(row)));
    console.out().print(table);
  }
}
