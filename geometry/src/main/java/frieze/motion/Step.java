package frieze.motion;

/**
 * An instruction and where it comes from.
 *
 * @param origin what a person would call the piece of work, such as {@code recess ginkgo 3, pass
 *     2}; kept through every lowering
 */
public record Step(Instruction instruction, String origin) {}
