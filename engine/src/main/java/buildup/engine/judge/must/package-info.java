/**
 * What a stack has to meet: the lines under {@code must:}, each a figure of the report's own sheets and what it is held
 * against. The words of a line are the headings of the sheets, so every figure that is told can be asked for.
 */
@NullMarked
package buildup.engine.judge.must;

import org.jspecify.annotations.NullMarked;
