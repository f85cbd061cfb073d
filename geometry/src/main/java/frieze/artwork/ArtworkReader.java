package frieze.artwork;

/** Reads one kind of drawing. */
public interface ArtworkReader {
  /**
   * Reads a drawing.
   *
   * @param source the name to use in diagnostics
   * @throws frieze.diagnostic.BadInputException if it can't be read or holds nothing to cut
   */
  Artwork read(String source, byte[] content);
}
