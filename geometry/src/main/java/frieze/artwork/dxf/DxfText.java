package frieze.artwork.dxf;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Limits;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** The groups of a file, one after the other. */
final class DxfText {
  private static final Charset BEFORE_2007 = Charset.forName("windows-1252");
  private static final int HEAD = 64;
  private static final int NO_CODE = Integer.MIN_VALUE;

  private final String source;
  private final String text;
  private int at;
  private int line;

  private DxfText(String source, String text) {
    this.source = source;
    this.text = text;
  }

  /**
   * Decodes a file: UTF-8, as from 2007 on, or else the western code page.
   *
   * @throws BadInputException if it is binary or too big
   */
  static DxfText decode(String source, byte[] content) {
    if (content.length > Limits.MAX_BYTES) {
      throw new BadInputException(
          Diagnostic.error(
              ArtworkCode.TOO_BIG,
              SourceSpan.file(source),
              "the file has " + content.length + " bytes, more than " + Limits.MAX_BYTES,
              "simplify the drawing or split it"));
    }
    for (int i = 0; i < Math.min(HEAD, content.length); i++) {
      if (content[i] == 0) {
        throw notDxf(
            SourceSpan.file(source), "the file is binary", "save the drawing as DXF in text form");
      }
    }
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
    } catch (CharacterCodingException e) {
      text = new String(content, BEFORE_2007);
    }
    return new DxfText(source, text.startsWith("\ufeff") ? text.substring(1) : text);
  }

  static BadInputException notDxf(SourceSpan where, String message, String hint) {
    return new BadInputException(Diagnostic.error(ArtworkCode.NOT_DXF, where, message, hint));
  }

  /** The line that was read last, counted from 1. */
  int line() {
    return line;
  }

  /** The next group, or null at the end of the text. */
  @Nullable DxfTag next() {
    String code = nextLine();
    if (code == null || (code.isBlank() && text.substring(at).isBlank())) {
      return null;
    }
    int codeLine = line;
    int number = groupCode(code.strip());
    if (number == NO_CODE) {
      throw notDxf(
          new SourceSpan(source, codeLine, 1, Math.max(1, Math.min(code.length(), HEAD))),
          "a group code, a whole number, is expected here",
          "is it a DXF file in text form? save the drawing again");
    }
    String value = nextLine();
    if (value == null) {
      throw notDxf(
          new SourceSpan(source, codeLine, 1, 1),
          "the file breaks off after a group code",
          "copy or save it again");
    }
    return new DxfTag(number, value.strip(), codeLine);
  }

  /** A whole number of at most four digits. */
  private static int groupCode(String digits) {
    int from = digits.startsWith("-") ? 1 : 0;
    int value = 0;
    for (int i = from; i < digits.length(); i++) {
      char c = digits.charAt(i);
      if (c < '0' || c > '9') {
        return NO_CODE;
      }
      value = 10 * value + c - '0';
    }
    boolean wrongLength = digits.length() == from || digits.length() > from + 4;
    return wrongLength ? NO_CODE : from == 0 ? value : -value;
  }

  private @Nullable String nextLine() {
    if (at >= text.length()) {
      return null;
    }
    line++;
    int end = at;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    String read = text.substring(at, end);
    boolean both =
        end + 1 < text.length() && text.charAt(end) == '\r' && text.charAt(end + 1) == '\n';
    at = end + (both ? 2 : 1);
    return read;
  }
}
