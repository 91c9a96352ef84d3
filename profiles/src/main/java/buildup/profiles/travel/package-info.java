/**
 * How far one outline can travel straight toward others before it meets them.
 *
 * <p>Only what faces the other matters: the lower envelope of the outline that comes down (its lowest wood at each x)
 * and the upper envelope of the one that it comes down on. The way left is the least height between the two, found on
 * the true lines and arcs. The other directions are the same with the plane turned by whole quarters, which is exact.
 */
@NullMarked
package buildup.profiles.travel;

import org.jspecify.annotations.NullMarked;
