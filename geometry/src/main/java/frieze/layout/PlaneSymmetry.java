package frieze.layout;

import frieze.curve.Affine;

/**
 * One operation of a wallpaper group, in the coordinates of a cell: {@code x' = xx x + xy y +
 * xHalves / 2}, {@code y' = yx x + yy y + yHalves / 2}. All numbers are whole, so that nothing is
 * rounded.
 */
public record PlaneSymmetry(int xx, int xy, int yx, int yy, int xHalves, int yHalves) {
  /** Reads a coordinate triplet such as {@code -y+1/2,x-y}. */
  static PlaneSymmetry parse(String triplet) {
    String[] parts = triplet.split(",", -1);
    int[] first = row(parts[0]);
    int[] second = row(parts[1]);
    return new PlaneSymmetry(first[0], first[1], second[0], second[1], first[2], second[2]);
  }

  private static int[] row(String text) {
    return new int[] {
      sign(text, 'x'), sign(text, 'y'), text.endsWith("+1/2") ? 1 : 0,
    };
  }

  private static int sign(String text, char letter) {
    int at = text.indexOf(letter);
    if (at < 0) {
      return 0;
    }
    return at > 0 && text.charAt(at - 1) == '-' ? -1 : 1;
  }

  /** The operation that applies this one first and {@code next} after it, modulo whole cells. */
  public PlaneSymmetry then(PlaneSymmetry next) {
    return new PlaneSymmetry(
        next.xx * xx + next.xy * yx,
        next.xx * xy + next.xy * yy,
        next.yx * xx + next.yy * yx,
        next.yx * xy + next.yy * yy,
        Math.floorMod(next.xx * xHalves + next.xy * yHalves + next.xHalves, 2),
        Math.floorMod(next.yx * xHalves + next.yy * yHalves + next.yHalves, 2));
  }

  /** The same, half a cell farther along both sides. */
  PlaneSymmetry centred() {
    return new PlaneSymmetry(
        xx, xy, yx, yy, Math.floorMod(xHalves + 1, 2), Math.floorMod(yHalves + 1, 2));
  }

  /** Negative when it turns a left hand into a right one. */
  public int determinant() {
    return xx * yy - xy * yx;
  }

  /** The operation in cell coordinates. */
  public Affine inCell() {
    return new Affine(xx, yx, xy, yy, xHalves / 2.0, yHalves / 2.0);
  }
}
