/**
 * Whether a stack holds: what carries each piece, where the weight of all that stands on it falls, and how much load the
 * whole can take. Plane statics for a foot of run; contacts only push, and rub only where the document says how much.
 */
@NullMarked
package buildup.engine.hold.support;

import org.jspecify.annotations.NullMarked;
