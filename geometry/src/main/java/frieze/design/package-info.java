/** What is wanted. */
@NullMarked
package frieze.design;

import org.jspecify.annotations.NullMarked;
