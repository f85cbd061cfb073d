package frieze.design;

import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds what of a motif an operation works on. */
public final class Selection {
  private Selection() {}

  /** Whether a target means a piece: by one of its names, or because it means all. */
  public static boolean isPicked(Piece piece, Work.Target target) {
    return target.pick().isEmpty() || piece.label().answersTo(target.pick().get());
  }

  /** The filled area of the picked pieces, under a map. */
  public static Region area(Motif motif, Work.Target target, Affine map, double flattenMm) {
    Region all = Region.EMPTY;
    for (Piece piece : motif.artwork().pieces()) {
      if (isPicked(piece, target) && piece.fill().isPresent()) {
        List<Path> paths = piece.paths().stream().map(p -> p.transformed(map)).toList();
        all = all.union(Region.of(paths, piece.fill().get(), flattenMm));
      }
    }
    return all;
  }

  /** The strokes of the picked pieces; if there are none, the outlines of the filled ones. */
  public static List<Path> lines(Motif motif, Work.Target target) {
    List<Piece> picked =
        motif.artwork().pieces().stream().filter(p -> isPicked(p, target)).toList();
    boolean stroked = picked.stream().anyMatch(p -> p.strokeWidthMm().isPresent());
    return picked.stream()
        .filter(p -> stroked ? p.strokeWidthMm().isPresent() : p.fill().isPresent())
        .flatMap(p -> p.paths().stream())
        .toList();
  }

  /** How wide each of these lines is drawn; 0 for a bare line or an outline. */
  public static Map<Path, Double> widthsMm(Motif motif, Work.Target target) {
    Map<Path, Double> widths = new LinkedHashMap<>();
    lines(motif, target).forEach(line -> widths.put(line, 0.0));
    for (Piece piece : motif.artwork().pieces()) {
      double width = piece.strokeWidthMm().orElse(0);
      if (isPicked(piece, target)) {
        piece.paths().forEach(p -> widths.computeIfPresent(p, (line, w) -> Math.max(w, width)));
      }
    }
    return widths;
  }

  /**
   * The lines that are drawn thick and thin: how wide they are at even steps along them.
   *
   * @param scale by which the motif is placed
   */
  public static Map<Path, List<Double>> varyingMm(Motif motif, Work.Target target, double scale) {
    Map<Path, List<Double>> varying = new LinkedHashMap<>();
    for (Piece piece : motif.artwork().pieces()) {
      List<Double> parts = piece.stroke().map(Stroke::parts).orElse(List.of());
      if (isPicked(piece, target) && !parts.isEmpty() && piece.paths().size() == 1) {
        double width = piece.stroke().orElseThrow().widthMm() * scale;
        varying.put(piece.paths().get(0), parts.stream().map(p -> p * width).toList());
      }
    }
    return varying;
  }

  /** The insets of the picked lines that the panel makes; empty for other motifs. */
  public static List<Double> insetsMm(Motif motif, Work.Target target) {
    List<Double> picked = new ArrayList<>();
    for (int i = 0; i < motif.insetsMm().size(); i++) {
      String number = String.valueOf(i + 1);
      if (target.pick().isEmpty() || target.pick().get().equals(number)) {
        picked.add(motif.insetsMm().get(i));
      }
    }
    return picked;
  }
}
