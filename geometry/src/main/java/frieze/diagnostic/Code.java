package frieze.diagnostic;

/**
 * The stable name of one kind of diagnostic or finding, such as {@code JOB-012}.
 *
 * <p>Each package that speaks to people has one enum that implements this. An id is never used
 * again for something else; {@code docs/reference/messages.md} explains each of them.
 */
public interface Code {
  /** The stable id: capital letters, a hyphen, three digits. */
  String id();

  /** What the code stands for, in a few words, without the numbers of the one case. */
  String title();
}
