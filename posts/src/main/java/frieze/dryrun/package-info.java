/** dryrun. */
@NullMarked
package frieze.dryrun;

import org.jspecify.annotations.NullMarked;
