package frieze.curve;

/**
 * A map from one frame to another.
 *
 * @param <F> the frame that is mapped from
 * @param <T> the frame that is mapped to
 */
public record FrameMap<F extends Frame, T extends Frame>(Affine affine) {
  public Point apply(Point p) {
    return affine.apply(p);
  }

  public Path apply(Path path) {
    return path.transformed(affine);
  }

  public <N extends Frame> FrameMap<F, N> then(FrameMap<T, N> next) {
    return new FrameMap<>(affine.then(next.affine()));
  }

  public FrameMap<T, F> inverse() {
    return new FrameMap<>(affine.inverse());
  }

  public boolean isMirroring() {
    return affine.isMirroring();
  }
}
