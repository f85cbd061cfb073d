/**
 * Reads programs in the language RS274/NGC and tells what a machine would do.
 *
 * <p>In: bytes, and {@link frieze.rs274.ReadingRules} (the dialect, and what is known of the
 * machine). Out: {@link frieze.motion.Executed} events, one after the other, and a {@link
 * frieze.rs274.ProgramSummary} with the diagnostics. Nothing here is shared with the code that
 * writes programs.
 *
 * <p>Read {@link frieze.rs274.Interpreter} first; then, in the order of a line's way, {@code
 * LineSource}, {@code BlockReader} with {@code LineScanner} and {@code NumberReader}, {@link
 * frieze.rs274.Block}, {@code LineCodes}, {@code Executor} with {@code Mover}, {@code Arcs}, {@code
 * Cycles}, {@code Probing}, {@code Offsets} and {@code Auxiliaries}; {@code Modes}, {@code Frames}
 * and {@code Parameters} hold what lasts between the lines. {@link frieze.rs274.ProgramCode} lists
 * everything that can be said about a program.
 *
 * <p>Source: T. R. Kramer, F. M. Proctor, E. Messina, <i>The NIST RS274/NGC Interpreter - Version
 * 3</i>, NISTIR 6556, 17 August 2000.
 */
@NullMarked
package frieze.rs274;

import org.jspecify.annotations.NullMarked;
