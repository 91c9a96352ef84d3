/**
 * The members of the trade, drawn one after another on a walk round the section, and the flats of sprung moldings.
 *
 * <p>A walk starts at the origin, the lower end of the back, and keeps the wood on its left. Hollow members have their
 * center on the air side (the walk turns right), round members on the wood side (it turns left).
 */
@NullMarked
package buildup.profiles.member;

import org.jspecify.annotations.NullMarked;
