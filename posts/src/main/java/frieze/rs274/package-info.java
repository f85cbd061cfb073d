/** rs274. */
@NullMarked
package frieze.rs274;

import org.jspecify.annotations.NullMarked;
