/**
 * The mill's questions of a profile: from where a cutter reaches what, what it cannot, which listed bits and blades make
 * it and in what order, and the ground knife that makes it in one go. {@link buildup.engine.mill.milling.Milling} is asked; it
 * looks at the stick as it is run ({@link buildup.engine.mill.milling.MillStick}), square to the heads.
 */
@NullMarked
package buildup.engine.mill.milling;

import org.jspecify.annotations.NullMarked;
