package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Limits;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The characters of an XML file, and the line and column of each. */
final class SourceText {
  private static final Pattern ENCODING =
      Pattern.compile("^<\\?xml[^>]*?encoding\\s*=\\s*[\"']([A-Za-z0-9._-]+)[\"']");
  private static final int DECLARATION_BYTES = 256;

  private final String name;
  private final String text;
  private final int[] lineStarts;

  private SourceText(String name, String text) {
    this.name = name;
    this.text = text;
    this.lineStarts = lineStarts(text);
  }

  /**
   * Decodes a file as XML 1.0, appendix F says: by its byte order mark, else by its declaration,
   * else as UTF-8.
   *
   * @throws BadInputException if the bytes are not in that encoding
   */
  static SourceText decode(String name, byte[] content) {
    if (content.length > Limits.MAX_BYTES) {
      throw new BadInputException(
          Diagnostic.error(
              ArtworkCode.TOO_BIG,
              SourceSpan.file(name),
              "the file has " + content.length + " bytes, more than " + Limits.MAX_BYTES,
              "simplify the drawing or split it"));
    }
    if (content.length >= 2 && content[0] == 0x1f && content[1] == (byte) 0x8b) {
      throw notXml(name, "the file is compressed (gzip)", "unpack it first");
    }
    Charset charset = charset(name, content);
    try {
      String text =
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(content))
              .toString();
      return new SourceText(name, text.startsWith("\ufeff") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      throw notXml(
          name,
          "the file is not text in " + charset.name(),
          "is it an SVG drawing? save it as plain SVG in UTF-8");
    }
  }

  private static Charset charset(String name, byte[] b) {
    if (startsWith(b, 0xfe, 0xff) || startsWith(b, 0x00, 0x3c)) {
      return StandardCharsets.UTF_16BE;
    }
    if (startsWith(b, 0xff, 0xfe) || startsWith(b, 0x3c, 0x00)) {
      return StandardCharsets.UTF_16LE;
    }
    int length = Math.min(DECLARATION_BYTES, b.length);
    Matcher declared = ENCODING.matcher(new String(b, 0, length, StandardCharsets.ISO_8859_1));
    if (!declared.find()) {
      return StandardCharsets.UTF_8;
    }
    if (!Charset.isSupported(declared.group(1))) {
      throw notXml(
          name, "the encoding " + declared.group(1) + " is not known", "save the file in UTF-8");
    }
    return Charset.forName(declared.group(1));
  }

  private static boolean startsWith(byte[] b, int first, int second) {
    return b.length >= 2 && (b[0] & 0xff) == first && (b[1] & 0xff) == second;
  }

  private static BadInputException notXml(String name, String message, String hint) {
    return new BadInputException(
        Diagnostic.error(ArtworkCode.NOT_XML, SourceSpan.file(name), message, hint));
  }

  /** Lines end at LF, at CR LF and at a lone CR, as an XML parser counts them. */
  private static int[] lineStarts(String text) {
    int[] starts = new int[16];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean ends =
          c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
      if (ends) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, 2 * count);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  String text() {
    return text;
  }

  /** The offset of a line and column, both counted from 1, kept inside the text. */
  int offset(int line, int column) {
    if (line < 1 || line > lineStarts.length) {
      return line < 1 ? 0 : text.length();
    }
    return Math.min(text.length(), lineStarts[line - 1] + Math.max(0, column - 1));
  }

  SourceSpan span(int offset, int length) {
    int found = Arrays.binarySearch(lineStarts, offset);
    int line = found >= 0 ? found : -found - 2;
    return new SourceSpan(name, line + 1, offset - lineStarts[line] + 1, length);
  }

  SourceSpan file() {
    return SourceSpan.file(name);
  }
}
