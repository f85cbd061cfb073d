package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reports what a drawing holds that is not cut. */
final class LeftOut {
  private static final Set<String> NEVER_DRAWN =
      Set.of(
          "",
          "defs",
          "symbol",
          "clipPath",
          "mask",
          "marker",
          "pattern",
          "linearGradient",
          "radialGradient",
          "filter",
          "metadata",
          "title",
          "desc",
          "style",
          "script",
          "view",
          "cursor",
          "font",
          "font-face",
          "glyph",
          "color-profile",
          "animate",
          "animateTransform",
          "animateMotion",
          "animateColor",
          "set",
          "mpath",
          "hatch",
          "meshgradient",
          "solidcolor");

  private static final List<String> EFFECTS =
      List.of("clip-path", "mask", "filter", "marker-start", "marker-mid", "marker-end");

  private final Report report;
  private final Set<SvgElement> told = new HashSet<>();
  private final Set<SvgElement> flat = new HashSet<>();
  private final Set<SvgElement> doubledIn = new HashSet<>();
  private final List<Point> doubled = new ArrayList<>();
  private int invisible;

  LeftOut(Report report) {
    this.report = report;
  }

  boolean isNeverDrawn(SvgElement element) {
    return NEVER_DRAWN.contains(element.name());
  }

  void countInvisible() {
    invisible++;
  }

  /** How many things are counted. */
  int invisible() {
    return invisible;
  }

  /** Goes on from an earlier count, as if what came after it had not been drawn. */
  void countInvisibleFrom(int counted) {
    invisible = counted;
  }

  /** Counts an element of which nothing shows, if that was not told yet. */
  void countInvisible(SvgElement shape) {
    invisible += flat.contains(shape) ? 0 : 1;
  }

  /** Counts points that stand twice in a row, once for each element however often it is drawn. */
  void countDoubled(SvgElement shape, List<Point> points) {
    if (!points.isEmpty() && doubledIn.add(shape)) {
      doubled.addAll(points);
    }
  }

  /** Tells of an area that encloses nothing: it runs there and back along one direction. */
  void tellFlat(SvgElement shape, Bounds bounds) {
    if (!flat.add(shape)) {
      return; // told once for each element
    }
    report
        .found()
        .note(
            ArtworkCode.NO_AREA,
            report.span(shape),
            String.format(
                Locale.ROOT,
                "an outline that encloses nothing, %.4f mm long about (mm) %.3f, %.3f, is left out",
                Math.max(bounds.width(), bounds.height()),
                bounds.centre().x(),
                bounds.centre().y()));
  }

  private void reportDoubled(SvgElement root) {
    if (!doubled.isEmpty()) {
      report
          .found()
          .note(
              ArtworkCode.DOUBLED_POINTS,
              SourceSpan.file(report.span(root).source()),
              String.format(
                  Locale.ROOT,
                  "doubled points removed: %d, the first at (mm) %.3f, %.3f",
                  doubled.size(),
                  doubled.get(0).x(),
                  doubled.get(0).y()));
    }
  }

  /** Adds a note with the number of things that don't show, if there are any. */
  void reportInvisible(SvgElement root) {
    reportDoubled(root);
    if (invisible > 0) {
      report
          .found()
          .note(
              ArtworkCode.INVISIBLE_LEFT_OUT,
              SourceSpan.file(report.span(root).source()),
              invisible
                  + (invisible == 1 ? " thing is" : " things are")
                  + " hidden, without fill and line, or of no size, and left out");
    }
  }

  /** Says that a script is not run. */
  void checkScript(SvgElement element) {
    if (element.name().equals("script")) {
      report.warning(ArtworkCode.LEFT_UNREAD, element, "the script is not run", "");
    }
  }

  /** Says what of the outermost element is not followed. */
  void checkRoot(SvgElement root, Map<String, String> declared) {
    if (!declared.getOrDefault("transform", "none").equals("none")) {
      report.error(
          ArtworkCode.UNREADABLE_VALUE,
          root,
          "a transform of the outermost svg is not known here: the place of everything would be"
              + " wrong",
          "put everything into one group and move the transform to it");
    }
  }

  /** Says what is not followed when this element is drawn. */
  void checkEffects(SvgElement element, Map<String, String> declared) {
    for (String effect : EFFECTS) {
      String value = declared.getOrDefault(effect, "none");
      boolean followed = effect.equals("clip-path") && ClipPaths.isReference(value);
      boolean asked = !value.equals("none") && !value.equals("inherit") && !followed;
      if (asked && told.add(element)) {
        report.warning(
            ArtworkCode.EFFECT_LEFT_OUT,
            element,
            effect + " is not followed: the element is drawn whole and as it is",
            "cut the outlines in the drawing program");
      }
    }
    String box = declared.getOrDefault("transform-box", "view-box");
    if (!box.equals("view-box")
        && !TransformOrigin.isOwnBox(box)
        && declared.containsKey("transform")) {
      report.error(
          ArtworkCode.UNREADABLE_VALUE,
          element,
          "transform-box=\""
              + box
              + "\" is not known here: the place of the element would be wrong",
          "apply the transform in the drawing program, or use rotate(a, x, y)");
    }
    if (!declared.getOrDefault("stroke-dasharray", "none").equals("none")) {
      report
          .found()
          .note(
              ArtworkCode.EFFECT_LEFT_OUT,
              report.span(element),
              "the line is dashed: its dashes are kept where lines become areas; followed along"
                  + " its centre, it is a whole line");
    }
  }

  /** Says that white is cut like any other paint. */
  void checkPaint(SvgElement element, Style style) {
    if (style.isWhite() && told.add(element)) {
      report.warning(
          ArtworkCode.DRAWN_WHITE,
          element,
          "this area is white; it is cut like any other colour and hides nothing",
          "make it a hole of the area behind it, or remove it");
    }
  }

  /** Reports an element that can't be drawn. */
  void report(SvgElement element) {
    if (!told.add(element)) {
      return;
    }
    String href = element.attribute("href", element.attribute("xlink:href", "")).trim();
    switch (element.name()) {
      case "image", "feImage" -> {
        if (href.startsWith("data:")) {
          report.warning(
              ArtworkCode.NOT_AN_OUTLINE,
              element,
              "the picture has no outline and is left out",
              "trace it first");
        } else {
          reportExternal(element, href);
        }
      }
      case "textPath" ->
          report.warning(
              ArtworkCode.NOT_AN_OUTLINE,
              element,
              "text along a path is not set and is left out",
              "turn it into outlines in the drawing program");
      default ->
          report.warning(
              ArtworkCode.NOT_AN_OUTLINE, element, "<" + element.name() + "> is left out", "");
    }
  }

  /** Reports a reference to another file as an error. */
  void reportExternal(SvgElement element, String href) {
    String target = href.isEmpty() ? "nothing" : "\"" + Report.shortened(href) + "\"";
    report.error(
        ArtworkCode.EXTERNAL_REFERENCE,
        element,
        "<" + element.name() + "> refers to " + target + "; other files are never opened",
        "put the outlines into the drawing itself, or remove the element");
  }
}
