package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Frame;
import frieze.curve.FrameMap;

/**
 * A motif put somewhere on a panel.
 *
 * @param motif the name of the motif
 * @param number counted from 1, in the order along the band
 * @param bendPerMm how its drawing is bent before it is put there; see {@link Bend}
 * @param variant which shape of the motif it is: 0 for as drawn
 */
public record Placement(
    String motif,
    int number,
    FrameMap<Frame.Artwork, Frame.Panel> map,
    double bendPerMm,
    int variant) {
  /** A motif as it is drawn. */
  public Placement(String motif, int number, FrameMap<Frame.Artwork, Frame.Panel> map) {
    this(motif, number, map, 0, 0);
  }

  /** The same motif elsewhere. */
  public Placement at(Affine place) {
    return new Placement(motif, number, new FrameMap<>(place), bendPerMm, variant);
  }

  /** Another motif in its stead. */
  Placement dealt(String other, Affine place) {
    return new Placement(other, number, new FrameMap<>(place), bendPerMm, variant);
  }

  /** The same, bent. */
  Placement bent(double perMm) {
    return new Placement(motif, number, map, perMm, variant);
  }

  /** The same in another shape. */
  public Placement shaped(int other) {
    return new Placement(motif, number, map, bendPerMm, other);
  }

  /** The hull on the panel of what has this hull as drawn. */
  public Hull hull(Hull drawn) {
    return Bend.of(drawn.bounds(), bendPerMm).apply(drawn).transformed(map.affine());
  }
}
