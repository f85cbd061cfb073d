/**
 * How long programs take on machines whose axes have limits.
 *
 * <p>In: moves as executed, waits and stops, the machine. Out: seconds, by tool and by what they
 * are spent on. Knows nothing of stock, designs or findings.
 *
 * <p>Read {@link frieze.clock.MotionClock}, {@code Leg}, {@code Corner}, {@code Ramp}.
 */
@NullMarked
package frieze.clock;

import org.jspecify.annotations.NullMarked;
