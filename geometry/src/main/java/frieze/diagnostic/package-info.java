/**
 * What Frieze says about bad input.
 *
 * <p>In: a place in somebody's text and what is wrong there. Out: a list of {@link
 * frieze.diagnostic.Diagnostic}s, printed by the command line as {@code file:line:col: error[CODE]:
 * ...} with a hint. Read {@link frieze.diagnostic.SourceSpan}, {@link frieze.diagnostic.Code},
 * {@link frieze.diagnostic.Diagnostic}, {@link frieze.diagnostic.Diagnostics}, {@link
 * frieze.diagnostic.BadInputException}.
 */
@NullMarked
package frieze.diagnostic;

import org.jspecify.annotations.NullMarked;
