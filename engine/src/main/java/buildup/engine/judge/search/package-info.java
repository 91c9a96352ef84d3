/**
 * Solving backwards: which choice of the free sizes meets every line under {@code must:} and comes nearest to what is
 * wished, how little has to change, and what is proved of the stacks that were not tried.
 */
@NullMarked
package buildup.engine.judge.search;

import org.jspecify.annotations.NullMarked;
