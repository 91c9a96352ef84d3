/**
 * The lines of a tracing become one ring of points: frames, marks and doubled lines are left out, open lines are knitted
 * and joined, what was drawn twice or by a slip is dropped.
 *
 * <p>Points are inches, y up. A {@link buildup.profiles.trace.ring.Trail} is what came in, a {@link
 * buildup.profiles.trace.ring.Joining.Ring} what is fitted.
 */
@NullMarked
package buildup.profiles.trace.ring;

import org.jspecify.annotations.NullMarked;
