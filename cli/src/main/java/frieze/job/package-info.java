/** job. */
@NullMarked
package frieze.job;

import org.jspecify.annotations.NullMarked;
