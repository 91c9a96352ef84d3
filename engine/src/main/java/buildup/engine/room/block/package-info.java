/** Blocks that runs end on and meet at: plinth blocks, rosettes, corner blocks, as pieces that are cut. */
@NullMarked
package buildup.engine.room.block;

import org.jspecify.annotations.NullMarked;
