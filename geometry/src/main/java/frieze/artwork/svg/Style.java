package frieze.artwork.svg;

import frieze.artwork.Colours;
import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.region.FillRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The computed style of an element, as far as it matters to cutting.
 *
 * @param fill as written; "none" if not filled
 * @param stroke as written; "none" if not stroked
 * @param strokeWidth in user units
 * @param pen caps, joins and dashes of its line
 * @param fixedStroke whether the width is in px of the screen, whatever the transforms
 * @param hidden whether {@code visibility} hides it; something inside may show again
 * @param clipRule how its outlines enclose an area when they are a clip
 * @param font how letters are set
 * @param colour what {@code currentColor} is
 */
record Style(
    String fill,
    FillRule fillRule,
    String stroke,
    double strokeWidth,
    boolean fixedStroke,
    PenStyle pen,
    boolean hidden,
    double fontSizePx,
    FontStyle font,
    double fillOpacity,
    double strokeOpacity,
    FillRule clipRule,
    String colour) {

  /** What a drawing starts with. Source: SVG 1.1, property index. */
  static final Style INITIAL =
      new Style(
          "black",
          FillRule.NONZERO,
          "none",
          1,
          false,
          PenStyle.INITIAL,
          false,
          16,
          FontStyle.INITIAL,
          1,
          1,
          FillRule.NONZERO,
          "black");

  /** The properties that may also be written as attributes. */
  static final List<String> PROPERTIES =
      List.of(
          "fill",
          "fill-rule",
          "fill-opacity",
          "stroke",
          "stroke-width",
          "stroke-opacity",
          "stroke-dasharray",
          "stroke-dashoffset",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-miterlimit",
          "opacity",
          "display",
          "visibility",
          "font-family",
          "font-size",
          "font-style",
          "font-weight",
          "text-anchor",
          "letter-spacing",
          "word-spacing",
          "dominant-baseline",
          "white-space",
          "xml:space",
          "clip-path",
          "clip-rule",
          "color",
          "overflow",
          "mask",
          "filter",
          "vector-effect",
          "transform",
          "transform-origin",
          "transform-box",
          "marker-start",
          "marker-mid",
          "marker-end");

  /** Hears of values that are none. */
  interface Complaint {
    void unreadable(String property, String value, SyntaxException why);
  }

  boolean isFilled() {
    return isPaint(resolved(fill)) && fillOpacity > 0;
  }

  boolean isStroked() {
    return isPaint(resolved(stroke)) && strokeOpacity > 0 && strokeWidth > 0;
  }

  /** The colours of its area and its line that are plain colours. */
  List<String> colours() {
    List<String> colours = new ArrayList<>();
    if (isFilled()) {
      Colours.hex(resolved(fill)).ifPresent(colours::add);
    }
    if (isStroked()) {
      Colours.hex(resolved(stroke)).filter(c -> !colours.contains(c)).ifPresent(colours::add);
    }
    return colours;
  }

  boolean isWhite() {
    String paint = resolved(fill).toLowerCase(Locale.ROOT).replace(" ", "");
    return switch (paint) {
      case "white", "#fff", "#ffffff", "rgb(255,255,255)", "rgb(100%,100%,100%)" -> true;
      default -> false;
    };
  }

  private static boolean isPaint(String paint) {
    return !paint.equals("none") && !paint.equals("transparent");
  }

  /**
   * The style of an element inside one that has this style.
   *
   * @param declared what is declared for it
   * @param hundredPercent what a width of 100 % is, in user units
   */
  Style inside(Map<String, String> declared, double hundredPercent, Complaint complaint) {
    Values values = new Values(declared, complaint);
    double font = values.fontSize(fontSizePx);
    Length.Basis basis = new Length.Basis(font, hundredPercent);
    String visibility = values.word("visibility", hidden ? "hidden" : "visible");
    return new Style(
        values.word("fill", fill),
        fillRule(values.word("fill-rule", ""), fillRule),
        values.word("stroke", stroke),
        values.length("stroke-width", strokeWidth, basis),
        values.word("vector-effect", "none").equals("non-scaling-stroke"),
        pen.inside(values, basis),
        !visibility.equals("visible"),
        font,
        this.font.inside(values, basis),
        values.share("fill-opacity", fillOpacity),
        values.share("stroke-opacity", strokeOpacity),
        fillRule(values.word("clip-rule", ""), clipRule),
        colour(values.word("color", colour)));
  }

  private String colour(String word) {
    return isCurrentColour(word) ? colour : word;
  }

  private static boolean isCurrentColour(String paint) {
    return paint.equalsIgnoreCase("currentColor");
  }

  /** The colour that a paint is. */
  private String resolved(String paint) {
    return isCurrentColour(paint) ? colour : paint;
  }

  /** Whether an element is not there, with all that is in it: not displayed, or transparent. */
  static boolean isGone(Map<String, String> declared, Complaint complaint) {
    Values values = new Values(declared, complaint);
    return !isDisplayed(declared) || values.share("opacity", 1) <= 0;
  }

  /** Whether an element is there where nothing is painted, as in a clip. */
  static boolean isDisplayed(Map<String, String> declared) {
    return !declared.getOrDefault("display", "inline").equals("none");
  }

  private static FillRule fillRule(String word, FillRule otherwise) {
    return switch (word) {
      case "evenodd" -> FillRule.EVEN_ODD;
      case "nonzero" -> FillRule.NONZERO;
      default -> otherwise;
    };
  }

  /** Reads declared values; what is absent, inherited or unreadable has another one. */
  record Values(Map<String, String> declared, Complaint complaint) {
    String word(String property, String otherwise) {
      String value = declared.get(property);
      return value == null || isInherited(value) ? otherwise : value;
    }

    private static boolean isInherited(String value) {
      return value.isEmpty() || value.equals("inherit") || value.equals("unset");
    }

    double fontSize(double around) {
      double named = FontStyle.size(word("font-size", ""), around);
      return Double.isNaN(named)
          ? length("font-size", around, new Length.Basis(around, around))
          : named;
    }

    double length(String property, double otherwise, Length.Basis basis) {
      String value = word(property, "");
      if (value.isEmpty()) {
        return otherwise;
      }
      try {
        return Length.parse(value).px(basis);
      } catch (SyntaxException e) {
        complaint.unreadable(property, value, e);
        return otherwise;
      }
    }

    double share(String property, double otherwise) {
      String value = word(property, "");
      if (value.isEmpty()) {
        return otherwise;
      }
      try {
        return Length.parse(value).px(new Length.Basis(0, 1));
      } catch (SyntaxException e) {
        complaint.unreadable(property, value, e);
        return otherwise;
      }
    }
  }
}
