/**
 * Unions of outlines: the only package that imports the overlay library.
 *
 * <p>The library decides topology only, on chords: which stretches face the air, what is enclosed, what overlaps. Each
 * stretch of a resulting ring is then traced back to the true segment that it came from, so that areas, lengths and
 * corners are those of the outlines as given.
 *
 * <p>Outlines nearer than touching are welded before the union, the corners of the later outline moving. The union is
 * tried in one shot with a snapping noder, which is right when nothing overlaps and is checked against the sum of the
 * areas; else it is a cascade with the same noder. Both leave no slit where the library's defaults do: see the tests.
 */
@NullMarked
package buildup.profiles.region;

import org.jspecify.annotations.NullMarked;
