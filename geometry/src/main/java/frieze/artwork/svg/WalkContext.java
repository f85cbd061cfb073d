package frieze.artwork.svg;

import frieze.artwork.Label;
import frieze.artwork.Stroke;
import frieze.curve.Affine;
import java.util.ArrayList;
import java.util.List;

/**
 * What is known at one place of the walk.
 *
 * @param toMm from the user units there to millimetres, Y up
 * @param width of the viewport in its user units; NaN if unknown
 * @param height of the viewport in its user units; NaN if unknown
 * @param classes of the element and of those around it, outermost first
 * @param groups ids and labels of the groups it is in, outermost first
 * @param clipping whether the panes of a clip are drawn: all areas, whatever their paint
 */
record WalkContext(
    Affine toMm,
    double width,
    double height,
    double mmPerPx,
    Style style,
    List<String> classes,
    List<String> groups,
    int depth,
    boolean clipping) {

  static WalkContext of(Page page) {
    return new WalkContext(
        page.toMm(),
        page.width(),
        page.height(),
        page.mmPerPx(),
        Style.INITIAL,
        List.of(),
        List.of(),
        0,
        false);
  }

  WalkContext into(SvgElement element, Style inside) {
    List<String> own = element.classes();
    List<String> all = classes;
    if (!own.isEmpty()) {
      all = new ArrayList<>(classes);
      all.addAll(own);
    }
    return new WalkContext(
        toMm, width, height, mmPerPx, inside, all, groupsInside(element), depth + 1, clipping);
  }

  private List<String> groupsInside(SvgElement element) {
    List<String> names = element.groupNames();
    if (names.isEmpty()) {
      return groups;
    }
    List<String> all = new ArrayList<>(groups);
    all.addAll(names);
    return all;
  }

  /** What a piece here can be picked by. */
  Label label(String id) {
    return new Label(id, classes, groups, style.colours());
  }

  /** How a line here is drawn. */
  Stroke stroke() {
    Affine pen = style.fixedStroke() ? Affine.scaling(mmPerPx, mmPerPx) : toMm;
    return style.pen().stroke(style.strokeWidth(), pen);
  }

  /** The place inside a transform. */
  WalkContext moved(Affine transform) {
    return new WalkContext(
        transform.then(toMm), width, height, mmPerPx, style, classes, groups, depth, clipping);
  }

  /** The place inside a viewport with its own units. */
  WalkContext viewport(Affine transform, double newWidth, double newHeight) {
    return new WalkContext(
        transform.then(toMm),
        newWidth,
        newHeight,
        mmPerPx,
        style,
        classes,
        groups,
        depth,
        clipping);
  }

  /** The place inside a clip, whose style does not come from what it clips. */
  WalkContext pane(Style own) {
    return new WalkContext(toMm, width, height, mmPerPx, own, classes, groups, depth + 1, true);
  }

  /** The same place, one level further from the outermost element. */
  WalkContext deeper() {
    return new WalkContext(
        toMm, width, height, mmPerPx, style, classes, groups, depth + 1, clipping);
  }

  /** What 100 % is for a length that has no direction. Source: SVG 1.1, 7.10. */
  double diagonal() {
    return Math.hypot(width, height) / Math.sqrt(2);
  }

  /** Whether the map keeps an area. */
  boolean isVisibleSize() {
    double scale = toMm.scale();
    return scale > 0 && Double.isFinite(scale) && Double.isFinite(toMm.e() + toMm.f());
  }
}
