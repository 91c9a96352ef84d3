/**
 * Joints that stand open: neighbors that nearly meet leave a slot, and an eye may see into it. And trim that no eye sees,
 * which was bought for nothing.
 */
@NullMarked
package buildup.engine.look.joint;

import org.jspecify.annotations.NullMarked;
