package frieze.cli;

import frieze.artwork.Artwork;
import frieze.artwork.look.Fineness;
import frieze.artwork.look.Narrow;
import frieze.artwork.mend.Repair;
import frieze.artwork.source.DrawingFile;
import frieze.artwork.source.FontFile;
import frieze.artwork.text.FontFamilies;
import frieze.curve.Bounds;
import frieze.diagnostic.Amounts;
import frieze.image.ImageFile;
import frieze.sheet.LookPicture;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.trace.Tracer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks at a drawing before it is cut. */
@Command(
    name = "look",
    description = {
      "Tells how fine a drawing is at its real size: its pieces, the narrowest web and the"
          + " narrowest gap, and the largest bit of the shop that reaches everywhere; and draws a"
          + " picture of it.",
      "FILE is an SVG or DXF drawing, or a picture to trace, which takes the options of `trace`."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class LookCommand implements Callable<Integer> {
  private final Console console;
  private final DiskFiles files;

  @Parameters(paramLabel = "FILE", description = "the drawing or the picture")
  private String file = "";

  @Mixin private TraceOptions options = new TraceOptions();

  @Option(
      names = "--pick",
      paramLabel = "NAME",
      description = "an id, class, colour, group or layer of some pieces (all of them)")
  private @Nullable String pick;

  @Option(
      names = "--font",
      paramLabel = "FILE",
      description = "a font file for all text of an SVG (the fonts that come with Frieze)")
  private @Nullable String font;

  @Option(
      names = "--lines",
      paramLabel = "centre|outline",
      description = "what a drawn line is: its centre, or the area that its width covers (centre)")
  private String lines = "centre";

  @Option(
      names = "--one-unit",
      paramLabel = "LENGTH",
      description = "what one unit of the drawing measures (as the file says)")
  private @Nullable String unit;

  @Option(
      names = "--shop",
      paramLabel = "FILE",
      description = "the shop file whose bits are tried (shop.yaml in this folder, if it is there)")
  private @Nullable String shop;

  @Option(
      names = "--to",
      paramLabel = "PNG",
      description = "the picture to write (FILE with the ending -look.png)")
  private @Nullable String to;

  @Spec private CommandSpec spec = CommandSpec.create();

  LookCommand(Console console, DiskFiles files) {
    this.console = console;
    this.files = files;
  }

  @Override
  public Integer call() throws IOException {
    String target = to == null ? OutputFile.beside(file, "-look.png") : to;
    OutputFile output = new OutputFile(console, spec, target, file, "drawing");
    Repair mended = read(files.named(file));
    new Messages(console.err(), files).print(mended.artwork().notes());
    Fineness fine = Fineness.of(mended.artwork());
    List<BitReach> bits = BitReach.of(fine, flatBits());
    List<List<String>> facts = facts(mended.artwork(), fine, bits);
    byte[] png =
        LookPicture.png(
            mended.artwork(),
            fine,
            BitReach.inside(bits, fine).or(() -> BitReach.smallest(bits)).map(BitReach::within),
            BitReach.around(bits, fine).or(() -> BitReach.smallest(bits)).map(BitReach::outside),
            facts);
    output.write(png);
    Table table = new Table("drawing", file);
    facts.forEach(table::row);
    console.out().println(table);
    if (!fine.area().isEmpty()) {
      console.out().println(BitReach.table(bits, fine));
    }
    console.out().println("picture: " + target);
    return ExitCode.FINE.number();
  }

  private FontFamilies fonts() throws IOException {
    if (font != null && (ImageFile.isNamedLikeOne(file) || DrawingFile.isWithoutText(file))) {
      throw new ParameterException(
          spec.commandLine(), "--font is for the text of SVG drawings; this has none that is read");
    }
    return font == null ? FontFamilies.BUNDLED : FontFile.read(font, files.named(font));
  }

  private Repair read(byte[] content) throws IOException {
    boolean outline = lines.equals("outline");
    if (!outline && !lines.equals("centre")) {
      throw new ParameterException(
          spec.commandLine(), "--lines must be centre or outline but is " + lines);
    }
    FontFamilies fonts = fonts();
    if (ImageFile.isNamedLikeOne(file)) {
      if (unit != null) {
        throw new ParameterException(
            spec.commandLine(), "--one-unit is for drawings; say how fine a scan is with --dpi");
      }
      Artwork traced =
          options.sized(
              Tracer.trace(file, ImageFile.read(file, content), options.settings()).artwork());
      return DrawingFile.shaped(traced, options.drawing(OptionalDouble.empty(), pick, outline));
    }
    options.refuseForDrawing();
    OptionalDouble unitMm =
        unit == null
            ? OptionalDouble.empty()
            : OptionalDouble.of(options.lengthMm("--one-unit", unit));
    return DrawingFile.read(file, content, options.drawing(unitMm, pick, outline).withFonts(fonts));
  }

  private List<Tool> flatBits() throws IOException {
    return ShopCommand.load(files, Optional.ofNullable(shop)).tools().stream()
        .filter(t -> t.shape() instanceof ToolShape.Flat)
        .sorted(Comparator.comparingDouble(Tool::diameterMm))
        .toList();
  }

  private static List<List<String>> facts(Artwork art, Fineness fine, List<BitReach> bits) {
    List<List<String>> table = new ArrayList<>();
    Bounds b = fine.bounds();
    row(table, "size", Amounts.length(b.width()) + " x " + Amounts.length(b.height()));
    row(table, "size from", art.sizeAssumed());
    row(table, "pieces", counted(fine.parts(), "area") + " with " + counted(fine.holes(), "hole"));
    if (fine.lines().count() > 0) {
      row(table, "lines", lines(fine.lines()));
    }
    if (fine.area().isEmpty()) {
      boolean wide = fine.lines().widestMm() > 0;
      String hint = wide ? "; see --lines outline" : ", and its lines have no width";
      row(table, "narrowest", "not measured: the drawing has no area" + hint);
      return table;
    }
    row(table, "narrowest web", narrow(fine.web(), "none"));
    row(
        table,
        "narrowest gap",
        narrow(fine.gap(), "none: no two walls of the ground face each other"));
    row(table, "bit for inside", BitReach.said(BitReach.inside(bits, fine), BitReach::within));
    row(table, "bit for around", BitReach.said(BitReach.around(bits, fine), BitReach::outside));
    return table;
  }

  private static void row(List<List<String>> rows, String name, String value) {
    rows.add(List.of(name, value));
  }

  private static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  private static String lines(Fineness.Lines l) {
    List<String> widths = new ArrayList<>();
    widths.add(Amounts.length(l.narrowestMm()));
    if (l.widestMm() > l.narrowestMm()) {
      widths.add(Amounts.length(l.widestMm()));
    }
    String wide = l.widestMm() == 0 ? "without width" : String.join(" to ", widths) + " wide";
    return l.count() + ", " + wide + ", together " + Amounts.length(l.lengthMm()) + " long";
  }

  private static String narrow(Optional<Narrow> found, String none) {
    return found
        .map(
            n ->
                Amounts.length(n.widthMm())
                    + " at "
                    + Amounts.place(n.middle().x(), n.middle().y()))
        .orElse(none);
  }
}
