/**
 * Where light falls on the room side of a section: lit, in shade (turned away) or in cast shadow, with who casts it.
 *
 * <p>In section only the part of a ray in the section plane counts: a light of altitude h and azimuth z off square
 * stands at the angle a with tan a = tan h / cos z over the level (plane trigonometry; Radford's Cyclopedia of
 * Construction, vol. 1, "Shades and Shadows", has the case h = 35.264, z = 45, a = 45).
 */
@NullMarked
package buildup.engine.look.light;

import org.jspecify.annotations.NullMarked;
