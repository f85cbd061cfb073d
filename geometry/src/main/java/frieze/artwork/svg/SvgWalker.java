package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Clip;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.artwork.text.FontFamilies;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.region.FillRule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Walks the elements of a drawing in the order they are painted and collects the pieces. */
final class SvgWalker {
  private final SvgElement root;
  private final Report report;
  private final Viewports viewports;
  private final Cascade cascade;
  private final Map<String, SvgElement> byId = new HashMap<>();
  private final Set<SvgElement> complainedOf = new HashSet<>();
  private final Set<SvgElement> inUse = new HashSet<>();
  private final LeftOut leftOut;
  private final ClipPaths clips = new ClipPaths(new ClipWalk());
  private final TextReport textReport;
  private final TextSetter setter;
  private final Drawn drawn;
  private int visited;

  SvgWalker(SvgElement root, SourceText source, Diagnostics found, FontFamilies fonts) {
    this.root = root;
    this.report = new Report(source, found);
    this.viewports = new Viewports(report);
    this.cascade = new Cascade(root, source, found);
    this.leftOut = new LeftOut(report);
    this.drawn = new Drawn(report, leftOut);
    this.textReport = new TextReport(report);
    this.setter = new TextSetter(fonts, viewports, textReport);
    indexIds(root);
  }

  private void indexIds(SvgElement element) {
    String id = element.attribute("id");
    if (id != null) {
      byId.putIfAbsent(id, element);
    }
    leftOut.checkScript(element);
    element.children().forEach(this::indexIds);
  }

  /** Draws everything on a page. */
  List<Piece> draw(Page page) {
    WalkContext context = WalkContext.of(page);
    Map<String, String> declared = cascade.declared(root);
    leftOut.checkRoot(root, declared);
    if (isGone(root, declared, context)) {
      leftOut.countInvisible();
    } else {
      drawChildren(root, context.into(root, style(root, declared, context)));
    }
    leftOut.reportInvisible(root);
    textReport.finish();
    return drawn.pieces();
  }

  private Style style(SvgElement element, Map<String, String> declared, WalkContext context) {
    return context.style().inside(declared, context.diagonal(), complaint(element));
  }

  private Style.Complaint complaint(SvgElement element) {
    return (property, value, why) -> {
      if (complainedOf.add(element)) {
        report.unreadable(element, property, value, why);
      }
    };
  }

  private boolean isGone(SvgElement element, Map<String, String> declared, WalkContext at) {
    return at.clipping()
        ? !Style.isDisplayed(declared)
        : Style.isGone(declared, complaint(element));
  }

  private void drawChildren(SvgElement parent, WalkContext context) {
    for (SvgElement child : parent.children()) {
      draw(child, context);
    }
  }

  private void draw(SvgElement element, WalkContext outer) {
    countVisit(element, outer);
    if (leftOut.isNeverDrawn(element)) {
      return;
    }
    Map<String, String> declared = cascade.declared(element);
    Style style = style(element, declared, outer);
    leftOut.checkEffects(element, declared);
    WalkContext inside = outer.into(element, style);
    WalkContext context = inside.moved(transform(element, declared, inside));
    if (isGone(element, declared, outer) || !context.isVisibleSize()) {
      leftOut.countInvisible();
      return;
    }
    int before = drawn.size();
    drawContent(element, declared, context);
    boolean isUse = element.name().equals("use");
    WalkContext at = isUse ? context.moved(viewports.offset(element, context)) : context;
    int hidden = clips.apply(element, declared, at, drawn.since(before));
    for (int i = 0; i < hidden; i++) {
      leftOut.countInvisible();
    }
  }

  private void drawContent(SvgElement element, Map<String, String> declared, WalkContext context) {
    switch (element.name()) {
      case "g", "a" -> drawChildren(element, context);
      case "svg" -> drawViewport(element, element, declared, context);
      case "switch" -> drawFirst(element, context);
      case "use" -> drawUse(element, context);
      case "text" -> drawText(element, declared, context);
      default -> {
        if (Shapes.isShape(element.name())) {
          drawShape(element, context);
        } else {
          leftOut.report(element);
        }
      }
    }
  }

  private void countVisit(SvgElement element, WalkContext context) {
    visited++;
    if (visited > Limits.MAX_ELEMENTS || context.depth() > Limits.MAX_DEPTH) {
      throw new BadInputException(
          Diagnostic.error(
              ArtworkCode.TOO_BIG,
              report.span(element),
              "with all its use elements followed, the drawing has more than "
                  + (visited > Limits.MAX_ELEMENTS
                      ? Limits.MAX_ELEMENTS + " elements"
                      : Limits.MAX_DEPTH + " levels"),
              "simplify the drawing"));
    }
  }

  private Affine transform(SvgElement element, Map<String, String> declared, WalkContext at) {
    String property = "transform";
    String text = declared.getOrDefault(property, "");
    if (text.isEmpty()) {
      return Affine.IDENTITY;
    }
    try {
      Affine transform = TransformList.parse(text);
      property = "transform-origin";
      text = declared.getOrDefault(property, "");
      if (TransformOrigin.isOwnBox(declared.getOrDefault("transform-box", "view-box"))) {
        Bounds box = ownBox(element, at);
        return !box.isEmpty()
            ? TransformOrigin.about(TransformOrigin.parse(text, box, at), transform)
            : transform;
      }
      return text.isEmpty()
          ? transform
          : TransformOrigin.about(TransformOrigin.parse(text, at), transform);
    } catch (SyntaxException e) {
      if (complainedOf.add(element)) {
        report.unreadable(element, property, text, e);
      }
      return Affine.IDENTITY;
    }
  }

  /** The bounds of what an element draws, in its own units, found by drawing it for nobody. */
  private Bounds ownBox(SvgElement element, WalkContext at) {
    List<Piece> before = drawn.exchange(new ArrayList<>());
    int counted = leftOut.invisible();
    if (!element.name().equals("clipPath")) {
      drawContent(element, cascade.declared(element), at);
    }
    leftOut.countInvisibleFrom(counted);
    return ClipPaths.box(drawn.exchange(before), at.toMm().inverse());
  }

  /** Draws the first child that does not ask for a language or an extension. */
  private void drawFirst(SvgElement element, WalkContext context) {
    for (SvgElement child : element.children()) {
      boolean asks =
          child.attribute("requiredExtensions") != null
              || !child.attribute("systemLanguage", "en").startsWith("en");
      if (!asks && !child.name().isEmpty()) {
        draw(child, context);
        return;
      }
    }
  }

  private void drawUse(SvgElement use, WalkContext context) {
    String href = use.attribute("href", use.attribute("xlink:href", "")).trim();
    if (!href.startsWith("#")) {
      if (complainedOf.add(use)) {
        leftOut.reportExternal(use, href);
      }
      return;
    }
    SvgElement used = byId.get(href.substring(1));
    if (used == null) {
      if (complainedOf.add(use)) {
        report.warning(
            ArtworkCode.NOTHING_REFERENCED,
            use,
            "there is no element with the id \"" + Report.shortened(href.substring(1)) + "\"",
            "");
      }
      return;
    }
    if (!inUse.add(used)) {
      report.error(ArtworkCode.USED_IN_ITSELF, use, href + " uses itself", "remove the loop");
      throw new BadInputException(report.found().sorted());
    }
    WalkContext at = context.moved(viewports.offset(use, context));
    if (used.name().equals("symbol") || used.name().equals("svg")) {
      Map<String, String> declared = cascade.declared(used);
      if (!isGone(used, declared, at)) {
        drawViewport(used, use, declared, at.into(used, style(used, declared, at)));
      }
    } else {
      draw(used, at);
    }
    inUse.remove(used);
  }

  private void drawViewport(
      SvgElement element, SvgElement sized, Map<String, String> declared, WalkContext context) {
    String overflow = declared.getOrDefault("overflow", "hidden");
    Optional<Viewports.Inside> entered = viewports.enter(element, sized, overflow, context);
    if (entered.isPresent()) {
      int before = drawn.size();
      drawChildren(element, entered.get().context());
      Optional<Clip> frame = entered.get().frame();
      frame.ifPresent(clip -> drawn.since(before).replaceAll(piece -> piece.clippedBy(clip)));
    }
  }

  private void drawShape(SvgElement shape, WalkContext context) {
    if (!drawn.isPainted(context)) {
      return;
    }
    PathBuilder builder = new PathBuilder(context.toMm());
    try {
      new Shapes((name, axis) -> viewports.length(shape, name, axis, context), builder).draw(shape);
    } catch (SyntaxException e) {
      reportBroken(shape, e);
    }
    drawn.add(shape, context, builder);
  }

  private void drawText(SvgElement text, Map<String, String> declared, WalkContext context) {
    textReport.check(text, declared);
    for (TextSetter.Run run : setter.set(TextContent.of(text, context, new TextWalk()))) {
      SvgElement part = run.level().element();
      WalkContext at = run.level().context();
      drawn.count(part, run.segments());
      if (drawn.isPainted(at)) {
        drawn.add(part, at, run.paths(), FillRule.NONZERO);
      }
    }
  }

  private void reportBroken(SvgElement shape, SyntaxException why) {
    String attribute = shape.name().equals("path") ? "d" : "points";
    if (!complainedOf.add(shape)) {
      return;
    }
    if (why.noSize()) {
      report.unreadable(shape, attribute, shape.attribute(attribute, ""), why);
    } else {
      report
          .found()
          .warning(
              ArtworkCode.BROKEN_PATH,
              report.span(shape, attribute, why.position()),
              "the outline breaks off here: " + why.getMessage(),
              "what comes before is drawn; the rest of this outline is missing");
    }
  }

  /** How texts look back at the drawing. */
  private final class TextWalk implements TextContent.Walk {
    @Override
    public Optional<WalkContext> inside(SvgElement part, WalkContext outer) {
      countVisit(part, outer);
      Map<String, String> declared = cascade.declared(part);
      textReport.check(part, declared);
      return Style.isDisplayed(declared)
          ? Optional.of(outer.into(part, style(part, declared, outer)))
          : Optional.empty();
    }

    @Override
    public void count(SvgElement part) {
      drawn.countLetter(part);
    }

    @Override
    public void leftOut(SvgElement element) {
      if (!leftOut.isNeverDrawn(element)) {
        leftOut.report(element);
      }
    }
  }

  /** How clips look back at the drawing. */
  private final class ClipWalk implements ClipPaths.Walk {
    @Override
    public List<Piece> panes(SvgElement clipPath, WalkContext at) {
      countVisit(clipPath, at);
      if (!inUse.add(clipPath)) {
        report.error(
            ArtworkCode.USED_IN_ITSELF, clipPath, "the clip clips itself", "remove the loop");
        throw new BadInputException(report.found().sorted());
      }
      List<Piece> outside = drawn.exchange(new ArrayList<>());
      WalkContext pane = at.pane(styleOf(clipPath));
      for (SvgElement child : clipPath.children()) {
        if (Shapes.isShape(child.name()) || child.isText() || child.name().equals("use")) {
          draw(child, pane);
        }
      }
      List<Piece> panes = drawn.exchange(outside);
      inUse.remove(clipPath);
      return panes;
    }

    private Style styleOf(SvgElement element) {
      SvgElement parent = element.parent();
      Style around = parent == null ? Style.INITIAL : styleOf(parent);
      return around.inside(cascade.declared(element), Double.NaN, (property, value, why) -> {});
    }

    @Override
    public Optional<SvgElement> asked(SvgElement element, String value) {
      String target = value.replaceAll("^url\\(\\s*[\"']?|[\"']?\\s*\\).*$", "").strip();
      if (!target.startsWith("#")) {
        if (complainedOf.add(element)) {
          leftOut.reportExternal(element, target);
        }
        return Optional.empty();
      }
      SvgElement found = byId.get(target.substring(1));
      if (found == null || !found.name().equals("clipPath")) {
        if (complainedOf.add(element)) {
          report.warning(
              ArtworkCode.NOTHING_REFERENCED,
              element,
              "there is no clipPath with the id \""
                  + Report.shortened(target.substring(1))
                  + "\", so nothing is cut off",
              "");
        }
        return Optional.empty();
      }
      return Optional.of(found);
    }

    @Override
    public Map<String, String> declared(SvgElement element) {
      return cascade.declared(element);
    }

    @Override
    public Affine transform(SvgElement element, Map<String, String> declared, WalkContext at) {
      return SvgWalker.this.transform(element, declared, at);
    }
  }
}
