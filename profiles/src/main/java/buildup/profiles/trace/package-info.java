/**
 * A traced profile: points as they were drawn become an outline of true lines and arcs.
 *
 * <p>A {@link buildup.profiles.trace.Trail} is what came in, in whatever unit it was drawn.
 */
@NullMarked
package buildup.profiles.trace;

import org.jspecify.annotations.NullMarked;
