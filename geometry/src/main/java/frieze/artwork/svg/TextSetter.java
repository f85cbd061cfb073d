package frieze.artwork.svg;

import frieze.artwork.svg.TextContent.Letter;
import frieze.artwork.text.FontFace;
import frieze.artwork.text.FontFamilies;
import frieze.curve.Affine;
import frieze.curve.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets letters one behind the other and draws them.
 *
 * <p>Source: SVG 1.1, 10.4 to 10.12. Letters run from left to right; pairs are kerned as the font
 * says; ligatures are not formed.
 */
final class TextSetter {
  /** Letters of one element that follow each other. */
  record Run(TextContent.Level level, List<Path> paths, int segments) {}

  private final FontFamilies fonts;
  private final Viewports viewports;
  private final TextReport report;

  TextSetter(FontFamilies fonts, Viewports viewports, TextReport report) {
    this.fonts = fonts;
    this.viewports = viewports;
    this.report = report;
  }

  /** Draws letters, in millimetres. */
  List<Run> set(List<Letter> letters) {
    List<Run> runs = new ArrayList<>();
    List<Path> paths = new ArrayList<>();
    int segments = 0;
    List<Glyph> glyphs = new Line(letters).glyphs;
    for (int i = 0; i < glyphs.size(); i++) {
      TextContent.Level level = glyphs.get(i).letter.innermost();
      PathBuilder builder = new PathBuilder(glyphs.get(i).toMm());
      if (!level.context().style().hidden()) {
        draw(glyphs.get(i), builder);
      }
      paths.addAll(builder.finish());
      segments += builder.segmentCount();
      boolean last = i + 1 == glyphs.size();
      if (last || glyphs.get(i + 1).letter.innermost().element() != level.element()) {
        runs.add(new Run(level, paths, segments));
        paths = new ArrayList<>();
        segments = 0;
      }
    }
    return runs;
  }

  private void draw(Glyph glyph, PathBuilder builder) {
    boolean missing = glyph.glyph == FontFace.MISSING;
    if (missing || !glyph.face.draw(glyph.glyph, builder)) {
      report.missing(glyph.letter, glyph.face);
    }
  }

  /** A letter with its place. */
  private static final class Glyph {
    private final Letter letter;
    private final FontFace face;
    private final int glyph;
    private double x;
    private double y;
    private double rotateDeg;

    Glyph(Letter letter, FontFace face) {
      this.letter = letter;
      this.face = face;
      this.glyph = face.glyph(letter.codePoint());
    }

    double size() {
      return letter.context().style().fontSizePx();
    }

    /** How much lower than on the line it stands, in parts of its size. */
    double lowered() {
      return switch (letter.font().baseline()) {
        case "middle" -> face.xHeight() / 2;
        case "central" -> face.centre();
        default -> 0;
      };
    }

    double kerningAfter(Glyph before) {
      boolean alike = before.face == face && before.size() == size();
      return alike ? face.kerning(before.glyph, glyph) * size() : 0;
    }

    double advance() {
      FontStyle font = letter.font();
      boolean space = letter.codePoint() == ' ' || letter.codePoint() == 0xA0;
      boolean unseen = glyph == FontFace.MISSING && TextReport.isUnseen(letter.codePoint());
      double own = unseen ? 0 : face.advance(glyph) * size();
      return own + font.letterSpacing() + (space ? font.wordSpacing() : 0);
    }

    Affine toMm() {
      return Affine.scaling(size(), -size())
          .then(Affine.rotation(Math.toRadians(rotateDeg)))
          .then(Affine.translation(x, y))
          .then(letter.context().toMm());
    }
  }

  /** Sets letters from left to right; a line breaks where a letter has a place of its own. */
  private final class Line {
    private final List<Glyph> glyphs = new ArrayList<>();
    private int first;
    private double startX;
    private double x;
    private double y;

    Line(List<Letter> letters) {
      TextPlaces places = TextPlaces.of(letters, viewports);
      for (int i = 0; i < letters.size(); i++) {
        add(letters.get(i), places, i);
      }
      breakLine();
    }

    private void add(Letter letter, TextPlaces places, int i) {
      FontStyle font = letter.font();
      FontFamilies.Choice choice = fonts.choose(font.families(), font.bold(), font.italic());
      Glyph glyph = new Glyph(letter, choice.face());
      report.set(letter, choice);
      boolean ownPlace = !Double.isNaN(places.x(i)) || !Double.isNaN(places.y(i));
      if (ownPlace) {
        breakLine();
        x = Double.isNaN(places.x(i)) ? x : places.x(i);
        y = Double.isNaN(places.y(i)) ? y : places.y(i);
      } else if (first < glyphs.size()) {
        x += glyph.kerningAfter(glyphs.get(glyphs.size() - 1));
      }
      x += places.dx(i);
      y += places.dy(i);
      if (first == glyphs.size()) {
        startX = x;
      }
      glyph.x = x;
      glyph.y = y + glyph.lowered() * glyph.size();
      glyph.rotateDeg = places.rotateDeg(i);
      glyphs.add(glyph);
      x += glyph.advance();
    }

    private void breakLine() {
      if (first < glyphs.size()) {
        double shift = -glyphs.get(first).letter.font().anchor() * (x - startX);
        glyphs.subList(first, glyphs.size()).forEach(g -> g.x += shift);
        x += shift;
      }
      first = glyphs.size();
    }
  }
}
