/**
 * A disc rolled round an outline in the air: which stretches of the outline it touches, and what air it leaves.
 *
 * <p>Exact on lines and arcs: the center of the disc runs on parallels of the lines, on arcs of the same centers and on
 * arcs round the outside corners; where two of these cross it turns, and leaves a fillet.
 */
@NullMarked
package buildup.profiles.rolling;

import org.jspecify.annotations.NullMarked;
