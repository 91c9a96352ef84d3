/**
 * Nails and screws in the section: what each crosses, where it bites, what it holds, whether it comes out, whether its
 * head is hidden and whether the tool gets there; and the other way round, where one could go.
 *
 * <p>A fastening sits on a face of one piece and is looked at in the step in which it is driven: only what stands by then
 * is wood to it, later pieces may cover its head. Wood of pieces holds, and the wall behind its covering; plaster, floor
 * and ceiling are crossed and hold nothing. {@link buildup.engine.hold.nail.Strength} names formula, edition and safety
 * factor of every figure and what was not checked: this is a bench check for trim, not engineering.
 */
@NullMarked
package buildup.engine.hold.fixing;

import org.jspecify.annotations.NullMarked;
