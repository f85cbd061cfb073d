/**
 * Motifs on a panel.
 *
 * <p>In: an {@link frieze.layout.Opening} and a motif's size. Out: the {@link frieze.layout.Panel}
 * that fits it, and the {@link frieze.layout.Placement}s of motifs by a {@link
 * frieze.layout.FriezeGroup}. Read {@link frieze.layout.Opening}, {@link
 * frieze.layout.FriezeGroup}, {@link frieze.layout.Arrangement}, then the other {@link
 * frieze.layout.Pattern}s and {@link frieze.layout.Variation}.
 */
@NullMarked
package frieze.layout;

import org.jspecify.annotations.NullMarked;
