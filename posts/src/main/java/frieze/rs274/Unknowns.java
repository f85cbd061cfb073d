package frieze.rs274;

/**
 * Names for amounts that nobody has told, such as where an operator has set zero.
 *
 * <p>A coordinate is a known number plus a sum of unknown amounts, each a few times. The sum is
 * kept as one 64-bit number: amounts get well-mixed numbers and sums are added with them, so two
 * sums are equal just when their numbers are, and 0 is "nothing unknown". (Two different sums agree
 * by chance once in 2 to the 64.) The difference of two coordinates is known when their sums are
 * equal.
 */
final class Unknowns {
  /** The kinds of unknown amounts. */
  enum Kind {
    START(1),
    ORIGIN(2),
    HOME_28(3),
    HOME_30(4),
    TOOL(5),
    PROBE(6),
    STRANGE_CODE(7);

    private final long number;

    Kind(long number) {
      this.number = number;
    }
  }

  private static final long GAMMA = 0x9E3779B97F4A7C15L;

  private Unknowns() {}

  /** The number of an amount; never 0. */
  static long of(Kind kind, long index) {
    long z = ((kind.number << 48) + index + 1) * GAMMA;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return (z ^ (z >>> 31)) | 1;
  }
}
