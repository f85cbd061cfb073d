/** post. */
@NullMarked
package frieze.post;

import org.jspecify.annotations.NullMarked;
