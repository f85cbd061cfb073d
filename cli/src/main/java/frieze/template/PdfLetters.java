package frieze.template;

import frieze.template.PaperTemplate.Words;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The letters of a template. Where those of western Europe suffice, a font that every reader has is
 * named; else the letters that are used are put into the file, of Liberation Sans (SIL Open Font
 * License 1.1). A letter that this font has not either is shown as a question mark.
 */
final class PdfLetters {
  private static final String OWN_FONT = "/liberation/LiberationSans-Regular.ttf";
  private static final COSName USUAL = COSName.getPDFName("F1");
  private static final COSName OWN = COSName.getPDFName("F2");

  private final Optional<PDType0Font> own;

  private PdfLetters(Optional<PDType0Font> own) {
    this.own = own;
  }

  /** The letters for the texts of a template. */
  static PdfLetters of(PDDocument document, PaperTemplate template) throws IOException {
    List<String> texts = new ArrayList<>(template.notes());
    texts.add(template.name());
    texts.add(template.job());
    template.words().stream().map(Words::text).forEach(texts::add);
    if (texts.stream().allMatch(PdfLetters::isUsual)) {
      return new PdfLetters(Optional.empty());
    }
    try (InputStream font = PdfLetters.class.getResourceAsStream(OWN_FONT)) {
      if (font == null) {
        throw new IOException("the font " + OWN_FONT + " is missing");
      }
      return new PdfLetters(Optional.of(PDType0Font.load(document, font, true)));
    }
  }

  /** Puts the fonts into the resources of a page. */
  void addTo(COSDictionary fonts) {
    COSDictionary usual = new COSDictionary();
    usual.setItem(COSName.TYPE, COSName.FONT);
    usual.setItem(COSName.SUBTYPE, COSName.TYPE1);
    usual.setItem(COSName.BASE_FONT, COSName.getPDFName("Helvetica"));
    usual.setItem(COSName.ENCODING, COSName.WIN_ANSI_ENCODING);
    fonts.setItem(USUAL, usual);
    own.ifPresent(font -> fonts.setItem(OWN, font.getCOSObject()));
  }

  /** The name of the font that shows a text. */
  String font(String text) {
    return (own.isPresent() && !isUsual(text) ? OWN : USUAL).getName();
  }

  /** A text as a string of the page description. */
  String string(String text) {
    return own.isPresent() && !isUsual(text) ? hex(own.get(), text) : "(" + escaped(text) + ")";
  }

  /** Keeps only what was used of the font; before the document is saved. */
  void finish() throws IOException {
    if (own.isPresent()) {
      own.get().subset();
    }
  }

  private static boolean isUsual(String text) {
    return text.chars().allMatch(PdfLetters::isUsual);
  }

  private static boolean isUsual(int c) {
    return (c >= ' ' && c <= '~') || (c >= 0xA1 && c <= 0xFF);
  }

  private static String escaped(String text) {
    StringBuilder result = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '(' || c == ')' || c == '\\') {
        result.append('\\');
      }
      result.append(isUsual(c) ? c : '?');
    }
    return result.toString();
  }

  private static String hex(PDType0Font font, String text) {
    StringBuilder result = new StringBuilder("<");
    text.codePoints()
        .map(c -> code(font, c).isPresent() ? c : '?')
        .forEach(
            c -> {
              font.addToSubset(c);
              for (byte b : code(font, c).orElseThrow()) {
                result.append(String.format(Locale.ROOT, "%02X", b));
              }
            });
    return result.append('>').toString();
  }

  /** The code of a letter; empty if the font has it not. */
  private static Optional<byte[]> code(PDType0Font font, int codePoint) {
    try {
      return Optional.of(font.encode(Character.toString(codePoint)));
    } catch (IllegalArgumentException | IOException e) {
      return Optional.empty();
    }
  }
}
