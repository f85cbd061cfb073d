package frieze.artwork.text;

import frieze.curve.Point;

/** What the outline of a glyph is drawn with, in parts of the letter size, Y up. */
public interface GlyphPen {
  void moveTo(Point to);

  void lineTo(Point to);

  void quadraticTo(Point control, Point to);

  void cubicTo(Point control1, Point control2, Point to);

  void close();
}
