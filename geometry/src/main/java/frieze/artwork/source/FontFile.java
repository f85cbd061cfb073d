package frieze.artwork.source;

import frieze.artwork.ArtworkCode;
import frieze.artwork.text.FontFace;
import frieze.artwork.text.FontFamilies;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.io.IOException;

/** Reads the font file that is named for the text of a drawing. */
public final class FontFile {
  private static final int MAX_BYTES = 64 << 20;

  private FontFile() {}

  /**
   * Reads a font for all text.
   *
   * @throws BadInputException if it is none
   */
  public static FontFamilies read(String name, byte[] content) {
    if (content.length > MAX_BYTES) {
      throw bad(name, "it has " + content.length + " bytes, more than " + MAX_BYTES);
    }
    try {
      return FontFamilies.only(FontFace.read(content));
    } catch (IOException e) {
      throw bad(name, String.valueOf(e.getMessage()));
    }
  }

  private static BadInputException bad(String name, String why) {
    return new BadInputException(
        Diagnostic.error(
            ArtworkCode.NOT_A_FONT,
            SourceSpan.file(name),
            "this is not a font that can be read: " + why,
            "name a single TrueType or OpenType font (.ttf, .otf)"));
  }
}
