/** sheet. */
@NullMarked
package frieze.sheet;

import org.jspecify.annotations.NullMarked;
