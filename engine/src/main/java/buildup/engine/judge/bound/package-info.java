/**
 * What no stack of a box of choices can do better than. A box gives each free size a run of its choices. The place of each
 * edge of each piece is a constant and a function of each free size added up, so that what two edges share falls out when
 * one is taken from the other; a figure over a box then lies between two numbers. A figure of which nothing is known is
 * told as such, and no box is ruled out by it.
 */
@NullMarked
package buildup.engine.judge.bound;

import org.jspecify.annotations.NullMarked;
