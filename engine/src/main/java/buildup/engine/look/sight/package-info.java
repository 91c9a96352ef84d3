/**
 * What an eye sees of a section, how high each member looks, and which raw wood shows; with the smallest change that
 * hides it. Sight lines are straight and lie in the section plane: the eye stands square to the run.
 */
@NullMarked
package buildup.engine.look.sight;

import org.jspecify.annotations.NullMarked;
