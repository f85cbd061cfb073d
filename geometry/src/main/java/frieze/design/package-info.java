/**
 * What is wanted, before anybody asks how to cut it.
 *
 * <p>In: a panel, motifs, their placements and the {@link frieze.design.Work} asked for. Out: a
 * {@link frieze.design.Design} and its {@link frieze.design.Intent}s: the depth wanted at every
 * point of the panel, made from the artwork's own boundary and never from a toolpath. Planner and
 * dry run both start here, and neither sees the other. Read {@link frieze.design.Motif}, {@link
 * frieze.design.Work}, {@link frieze.design.Design}, {@link frieze.design.Intent}.
 */
@NullMarked
package frieze.design;

import org.jspecify.annotations.NullMarked;
