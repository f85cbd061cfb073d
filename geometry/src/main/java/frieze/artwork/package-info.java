/** Drawings. */
@NullMarked
package frieze.artwork;

import org.jspecify.annotations.NullMarked;
