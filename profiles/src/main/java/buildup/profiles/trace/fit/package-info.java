/**
 * Points become curves: how far they stray is weighed, the ring of points is cut into straight and round stretches, and
 * the curves of neighbors that go over into each other are bound and moved together to where they fit best.
 *
 * <p>All lengths are inches in the frame of the points. A ring is walked counterclockwise, the wood on the left. {@link
 * buildup.profiles.trace.fit.Weighing} tells the noise, {@link buildup.profiles.trace.fit.Fitting} holds the ring of
 * curves on its way to an outline.
 */
@NullMarked
package buildup.profiles.trace.fit;

import org.jspecify.annotations.NullMarked;
