/**
 * Solving backwards: which choice of the free sizes meets every line under {@code must:} and comes nearest to what is
 * wished, how little has to change, where along a size a rule turns. What a stack is like is asked of a {@link
 * buildup.engine.judge.search.StackJudge}; this package knows none of its figures.
 */
@NullMarked
package buildup.engine.judge.search;

import org.jspecify.annotations.NullMarked;
