/** Cuts. */
@NullMarked
package frieze.plan;

import org.jspecify.annotations.NullMarked;
