package frieze.post;

import frieze.lower.Capabilities;
import frieze.lower.Program;
import frieze.rs274.ReadingRules;

/**
 * Writes programs for one kind of controller.
 *
 * <p>A plug-in has a public class with a public constructor without parameters, named in {@code
 * META-INF/services/frieze.post.Post} of its jar. It only writes: what its controller cannot do has
 * been lowered to what it can, by its {@link #capabilities}, before {@link #write} is called.
 *
 * <p>The same program must always give the same text, in every locale.
 */
public interface Post {
  /** The name that a job gives: lower-case letters, digits and hyphens. */
  String id();

  /** Which controllers it suits, in one plain sentence. */
  String summary();

  Capabilities capabilities();

  /** Writes a program that was lowered for these capabilities. */
  ProgramText write(Program program);

  /**
   * How the controller reads a program; the dry run reads with these rules. As a rule they follow
   * from the capabilities: whatever is not declared there is an error when it is read.
   */
  default ReadingRules reading() {
    return CapabilityRules.of(capabilities());
  }
}
