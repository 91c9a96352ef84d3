/**
 * The stacks that the free sizes of a document make, and how each of them stands to what is asked. What a stack is like is
 * asked of a {@link buildup.engine.judge.choice.StackJudge}; this package knows none of its figures.
 */
@NullMarked
package buildup.engine.judge.choice;

import org.jspecify.annotations.NullMarked;
