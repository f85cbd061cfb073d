/**
 * How a torch cuts a panel with openings out of sheet.
 *
 * <p>In: a {@link frieze.design.Design} whose work is one {@link frieze.design.Work.TorchCut}, and
 * a {@link frieze.shop.Setup}. Out: a {@link frieze.torch.TorchPlan} of {@link
 * frieze.torch.TorchPath}s in the panel frame, and the sequence of instructions that makes them.
 *
 * <p>Read {@link frieze.torch.TorchPlanner}, which tells the story; {@code Material} (what stays);
 * {@code SheetRows} (where the copies lie; nesting would take its place); {@code LeadFinder};
 * {@code TorchFeeds}; {@code TorchOrder}; {@link frieze.torch.TorchSequencer}.
 */
@NullMarked
package frieze.torch;

import org.jspecify.annotations.NullMarked;
