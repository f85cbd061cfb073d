package frieze.job;

import frieze.artwork.source.DrawingFile;
import frieze.artwork.source.DrawingRequest;
import frieze.artwork.source.FontFile;
import frieze.artwork.text.FontFamilies;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.image.ImageFile;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Located;
import frieze.keys.Values;
import frieze.trace.RealSize;
import frieze.trace.TraceSettings;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the drawings that a job names. */
final class DrawingReader {
  private static final double MM_PER_INCH = 25.4;

  private final String source;
  private final SourceFiles files;
  private final Diagnostics found;

  DrawingReader(String source, SourceFiles files, Diagnostics found) {
    this.source = source;
    this.files = files;
    this.found = found;
  }

  List<Job.Drawing> read(Map<String, Located<Values>> sections) {
    List<Job.Drawing> drawings = new ArrayList<>();
    sections.forEach((name, section) -> drawings.add(drawing(name, section.value())));
    return drawings;
  }

  /** Reads what is asked of one drawing. */
  Job.Drawing drawing(String name, Values v) {
    String written = v.get(JobKeys.Drawing.FILE);
    SourceSpan where = v.where(JobKeys.Drawing.FILE);
    String file = JobReader.beside(source, written);
    checkFile(written, file, where);
    if (v.has(JobKeys.Drawing.HEIGHT) && v.has(JobKeys.Drawing.WIDTH)) {
      excluded(
          v.where(JobKeys.Drawing.WIDTH),
          "the drawing \"" + name + "\" has a height and a width",
          "give one of them; the other follows from the drawing");
    }
    checkFont(written, v);
    return new Job.Drawing(name, file, trace(written, v), request(v).withFonts(fonts(v)), where);
  }

  private static DrawingRequest request(Values v) {
    return new DrawingRequest(
        optional(v, JobKeys.Drawing.UNIT),
        v.find(JobKeys.Drawing.PICK),
        optional(v, JobKeys.Drawing.HEIGHT),
        optional(v, JobKeys.Drawing.WIDTH),
        v.get(JobKeys.Drawing.GAP),
        v.get(JobKeys.Drawing.SMALLEST),
        v.get(JobKeys.Drawing.LINES));
  }

  /** Only the text of SVG is set. */
  private void checkFont(String written, Values v) {
    if (v.has(JobKeys.Drawing.FONT) && ImageFile.isNamedLikeOne(written)) {
      excluded(v.where(JobKeys.Drawing.FONT), "a picture has no text to set", "leave out `font`");
    } else if (v.has(JobKeys.Drawing.FONT) && DrawingFile.isWithoutText(written)) {
      excluded(
          v.where(JobKeys.Drawing.FONT),
          "the text of a DXF drawing is left out, so that it needs no font",
          "leave out `font`; turn text that shall be cut into outlines in the drawing program");
    }
  }

  private FontFamilies fonts(Values v) {
    Optional<String> written = v.find(JobKeys.Drawing.FONT);
    if (written.isEmpty()) {
      return FontFamilies.BUNDLED;
    }
    String file = JobReader.beside(source, written.get());
    try {
      return FontFile.read(file, files.read(file));
    } catch (IOException e) {
      found.error(
          JobCode.FILE_NOT_READ,
          v.where(JobKeys.Drawing.FONT),
          "can't read the font " + file,
          "the name is taken from the folder of the job file");
    } catch (BadInputException e) {
      SourceSpan where = v.where(JobKeys.Drawing.FONT);
      e.diagnostics().forEach(d -> found.add(inJob(d, file, where)));
    }
    return FontFamilies.BUNDLED;
  }

  /** The same, told of the line of the job that names the file. */
  private static Diagnostic inJob(Diagnostic told, String file, SourceSpan where) {
    return new Diagnostic(
        told.severity(), told.code(), where, file + ": " + told.message(), told.hint());
  }

  private void checkFile(String written, String file, SourceSpan where) {
    if (!DrawingFile.isKnown(written) && !ImageFile.isNamedLikeOne(written)) {
      found.error(
          JobCode.UNKNOWN_FILE_KIND,
          where,
          "\"" + written + "\" is not a kind of drawing that Frieze reads",
          "save it as SVG or DXF, or as a picture to trace: PNG, JPEG, BMP, GIF or TIFF");
    } else if (!files.exists(file)) {
      found.error(
          JobCode.FILE_NOT_READ,
          where,
          "there is no file " + file,
          "the name is taken from the folder of the job file");
    }
  }

  /** How it is traced; empty if it is a drawing and not a picture. */
  private Optional<TraceSettings> trace(String written, Values v) {
    if (!ImageFile.isNamedLikeOne(written)) {
      if (v.has(JobKeys.Drawing.TRACE)) {
        excluded(
            v.where(JobKeys.Drawing.TRACE),
            "only a picture can be traced, but this is a drawing",
            "leave out `trace`");
      }
      return Optional.empty();
    }
    if (v.has(JobKeys.Drawing.UNIT)) {
      excluded(
          v.where(JobKeys.Drawing.UNIT),
          "a picture has no unit",
          "leave it out; say how fine a scan is with `trace: {dpi: 300}`");
    }
    Optional<Values> trace = v.find(JobKeys.Drawing.TRACE);
    Optional<RealSize> size = size(v, trace);
    return size.map(s -> settings(s, trace));
  }

  private static TraceSettings settings(RealSize size, Optional<Values> trace) {
    TraceSettings plain = TraceSettings.of(size);
    if (trace.isEmpty()) {
      return plain;
    }
    Values t = trace.get();
    return plain
        .withPaperOnInk(t.get(TraceKeys.FIGURE))
        .withThreshold(t.get(TraceKeys.THRESHOLD))
        .withSmallest(t.get(TraceKeys.SMALLEST))
        .withTolerance(t.find(TraceKeys.TOLERANCE).orElse(0.0))
        .withLensBend(t.get(TraceKeys.BEND))
        .withLinesUpTo(t.find(TraceKeys.LINES).orElse(0.0));
  }

  /** Where its size comes from; empty after an error. */
  private Optional<RealSize> size(Values v, Optional<Values> trace) {
    Optional<RealSize> sheet =
        trace.flatMap(t -> t.find(TraceKeys.SHEET)).map(DrawingReader::sheet);
    Optional<RealSize> dots =
        trace.flatMap(t -> t.find(TraceKeys.DPI)).map(dpi -> new RealSize.Pixel(MM_PER_INCH / dpi));
    Optional<RealSize> given =
        v.find(JobKeys.Drawing.HEIGHT)
            .<RealSize>map(RealSize.Height::new)
            .or(() -> v.find(JobKeys.Drawing.WIDTH).map(RealSize.Width::new));
    if (dots.isPresent() && (given.isPresent() || sheet.isPresent())) {
      excluded(
          trace.get().where(TraceKeys.DPI),
          "the size of the picture is given in two ways",
          "give one of `height`, `width`, `dpi` and `sheet`; only `sheet` may stand beside a height"
              + " or a width");
    }
    Optional<RealSize> size = sheet.or(() -> dots).or(() -> given);
    if (size.isEmpty()) {
      found.error(
          JobCode.NO_REAL_SIZE,
          v.where(JobKeys.Drawing.FILE),
          "a picture has no real size of its own",
          "give a `height` or a `width`, or `trace: {dpi: 300}` for a scan");
    }
    return size;
  }

  private static RealSize sheet(Values sheet) {
    List<Point> corners =
        sheet.get(TraceKeys.Sheet.CORNERS).stream()
            .map(c -> new Point(c.get(0), c.get(1)))
            .toList();
    return new RealSize.Sheet(
        corners, sheet.get(TraceKeys.Sheet.WIDTH), sheet.get(TraceKeys.Sheet.HEIGHT));
  }

  private void excluded(SourceSpan where, String message, String hint) {
    found.error(JobCode.KEYS_EXCLUDE, where, message, hint);
  }

  private static OptionalDouble optional(Values values, Key<Double> key) {
    return values.find(key).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
