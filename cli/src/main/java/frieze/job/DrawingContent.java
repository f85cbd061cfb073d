package frieze.job;

import frieze.artwork.mend.Repair;
import frieze.artwork.source.DrawingFile;
import frieze.image.ImageFile;
import frieze.trace.Tracer;

/** Reads what a job's drawing names: a drawing, or a picture that is traced. */
public final class DrawingContent {
  private DrawingContent() {}

  /**
   * Reads, picks, scales and mends.
   *
   * @throws frieze.diagnostic.BadInputException if it can't be read, or nothing is left to cut
   */
  public static Repair read(Job.Drawing drawing, byte[] content) {
    String file = drawing.file();
    return drawing
        .trace()
        .map(
            settings ->
                DrawingFile.shaped(
                    Tracer.trace(file, ImageFile.read(file, content), settings).artwork(),
                    drawing.asked()))
        .orElseGet(() -> DrawingFile.read(file, content, drawing.asked()));
  }
}
