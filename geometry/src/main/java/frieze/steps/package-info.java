/**
 * A panel that is longer than its machine, carved in steps.
 *
 * <p>In: the {@link frieze.plan.Plan} of the whole panel, made as if the machine were long enough.
 * Out: {@link frieze.steps.Steps}: how far the stock is pushed between two clampings, where the
 * seams lie, where pins hold the stock in its new place, and which cuts belong to which step.
 *
 * <p>Read {@link frieze.steps.Steps}, {@code SeamChoice} (between the motifs, where it can be),
 * {@code PinPlaces}, {@code CutSplit} (a cut that is longer than a step).
 */
@NullMarked
package frieze.steps;

import org.jspecify.annotations.NullMarked;
