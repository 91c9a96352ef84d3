/**
 * Which profile of the catalog comes nearest to one that is wanted: how much wood lies in one of the two alone after the
 * best shift, flip, turn and, if asked, scale; how far their outlines gape; and what the bench can do about it.
 *
 * <p>Asked of a profile and the profiles to compare it with; answered by {@link buildup.engine.mill.nearest.Neighbors}. A
 * sprung molding is compared as it is run: flat on its back.
 */
@NullMarked
package buildup.engine.mill.nearest;

import org.jspecify.annotations.NullMarked;
