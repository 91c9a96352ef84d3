/**
 * A traced profile: points as they were drawn become an outline of true lines and arcs.
 *
 * <p>A {@link buildup.profiles.trace.ring.Trail} is what came in, in whatever unit it was drawn. {@link
 * buildup.profiles.trace.Tracer} scales and joins the trails, cuts the ring into straight and round stretches, binds
 * neighbors that go over into each other, brings the back upright and draws sizes to shop fractions; a
 * {@link buildup.profiles.trace.Traced} is the outline with how far the points lie off.
 */
@NullMarked
package buildup.profiles.trace;

import org.jspecify.annotations.NullMarked;
