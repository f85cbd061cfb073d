/** cli. */
@NullMarked
package frieze.cli;

import org.jspecify.annotations.NullMarked;
