package frieze.artwork;

import frieze.diagnostic.Code;

/** What can be wrong with, or worth knowing about, a drawing. */
public enum ArtworkCode implements Code {
  NOT_XML("ART-001", "the file is not well-formed XML"),
  NOT_SVG("ART-002", "the file is not an SVG drawing"),
  ENTITY_DECLARED("ART-003", "the file declares entities"),
  EXTERNAL_REFERENCE("ART-004", "the drawing needs another file"),
  LEFT_UNREAD("ART-005", "a script or an outside style sheet is not read"),
  TOO_BIG("ART-006", "the drawing is too big"),
  USED_IN_ITSELF("ART-007", "an element uses itself"),
  NOTHING_REFERENCED("ART-008", "a reference leads nowhere"),
  BROKEN_PATH("ART-009", "the path data break off"),
  UNREADABLE_VALUE("ART-010", "a value can't be read"),
  NUMBER_OUT_OF_RANGE("ART-011", "a number is not a size that can be cut"),
  NOTHING_TO_CUT("ART-012", "there is nothing to cut"),
  NOT_AN_OUTLINE("ART-013", "something that has no outline is left out"),
  EFFECT_LEFT_OUT("ART-014", "an effect is left out"),
  INVISIBLE_LEFT_OUT("ART-015", "things that can't be seen are left out"),
  DRAWN_WHITE("ART-016", "an area is filled with white"),
  STYLE_LEFT_OUT("ART-017", "a part of a style sheet is left out"),
  SIZE_ASSUMED("ART-018", "the drawing has no real size"),
  NOT_DXF("ART-019", "the file is not a DXF drawing that can be read"),
  ENTITIES_LEFT_OUT("ART-020", "kinds of entities are left out"),
  CURVE_INTERPOLATED("ART-021", "a curve is drawn through its points"),
  MENDED("ART-022", "the drawing is mended"),
  NOTHING_PICKED("ART-023", "nothing in the drawing is called so"),
  TEXT_SET("ART-024", "text is set in a font that is at hand"),
  GLYPH_MISSING("ART-025", "a character is not in the font"),
  NOT_A_FONT("ART-026", "a file is not a font that can be read"),
  CROSSES("ART-027", "outlines cross themselves or each other"),
  DOUBLED_POINTS("ART-028", "points stand twice"),
  NO_AREA("ART-029", "an outline encloses nothing"),
  HAIRLINE("ART-030", "an area is as thin as a hair");

  private final String id;
  private final String title;

  ArtworkCode(String id, String title) {
    this.id = id;
    this.title = title;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title() {
    return title;
  }
}
