/** Plane areas. */
@NullMarked
package frieze.region;

import org.jspecify.annotations.NullMarked;
