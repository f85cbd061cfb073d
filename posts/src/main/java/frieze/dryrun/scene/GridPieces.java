package frieze.dryrun.scene;

/**
 * Numbers the pieces of a grid that hang together along the sides of their squares.
 *
 * <p><em>Cost:</em> each square is looked at a few times; runs of a row are filled together.
 */
public final class GridPieces {
  private final boolean[] stands;
  private final int columns;
  private final int rows;
  private final int[] piece;

  /** A square of each run that is still to be filled. */
  private final IntList waiting = new IntList();

  private GridPieces(boolean[] stands, int columns, int rows) {
    this.stands = stands;
    this.columns = columns;
    this.rows = rows;
    this.piece = new int[stands.length];
  }

  /**
   * Numbers the pieces from 1, in the order of their first squares.
   *
   * @param stands the squares, row by row
   * @return the number of each square's piece; 0 where nothing stands
   */
  public static int[] of(boolean[] stands, int columns, int rows) {
    GridPieces pieces = new GridPieces(stands, columns, rows);
    int next = 0;
    for (int at = 0; at < stands.length; at++) {
      if (pieces.isOpen(at)) {
        pieces.fill(at, ++next);
      }
    }
    return pieces.piece;
  }

  private boolean isOpen(int at) {
    return stands[at] && piece[at] == 0;
  }

  private void fill(int start, int number) {
    waiting.add(start);
    while (!waiting.isEmpty()) {
      int at = waiting.removeLast();
      if (piece[at] == 0) {
        fillRun(at, number);
      }
    }
  }

  /** Fills a run of a row and remembers where the rows above and below go on. */
  private void fillRun(int at, int number) {
    int row = at / columns;
    int left = at;
    while (left > row * columns && isOpen(left - 1)) {
      left--;
    }
    int right = left;
    while (right < (row + 1) * columns && isOpen(right)) {
      piece[right] = number;
      right++;
    }
    if (row > 0) {
      seed(left - columns, right - columns);
    }
    if (row + 1 < rows) {
      seed(left + columns, right + columns);
    }
  }

  private void seed(int from, int to) {
    boolean seeded = false;
    for (int at = from; at < to; at++) {
      boolean open = isOpen(at);
      if (open && !seeded) {
        waiting.add(at);
      }
      seeded = open;
    }
  }
}
