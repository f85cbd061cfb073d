package frieze.torch;

import frieze.curve.Affine;

/** Moves finished paths. */
final class Shift {
  private Shift() {}

  /**
   * Moves a path.
   *
   * @param name what is added to its origin
   */
  static TorchPath of(TorchPath path, Affine by, String name) {
    return new TorchPath(
        path.origin() + name,
        path.kind(),
        by.apply(path.pierce()),
        path.pieces().stream()
            .map(p -> new TorchPath.Piece(p.path().transformed(by), p.feedPart(), p.frozen()))
            .toList(),
        path.frees().map(r -> r.transformed(by)));
  }
}
