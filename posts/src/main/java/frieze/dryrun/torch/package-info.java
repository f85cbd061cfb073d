/**
 * What a torch leaves of a sheet: how it is lit and moved, its kerf, the part and what falls out.
 *
 * <p>In: {@link frieze.dryrun.scene.Passage}s, and the part and kerf that are wanted ({@link
 * frieze.dryrun.scene.TorchFacts}). Out: findings.
 *
 * <p>Read {@link frieze.dryrun.torch.TorchCheck} (lit and unlit moves), {@link
 * frieze.dryrun.torch.TorchPartCheck} (the sheet afterwards), {@link
 * frieze.dryrun.torch.TorchSheet}.
 */
@NullMarked
package frieze.dryrun.torch;

import org.jspecify.annotations.NullMarked;
