/** Motifs on a panel. */
@NullMarked
package frieze.layout;

import org.jspecify.annotations.NullMarked;
