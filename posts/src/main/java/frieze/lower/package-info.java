/** lower. */
@NullMarked
package frieze.lower;

import org.jspecify.annotations.NullMarked;
