/** The wood and the saws of a shop, the sticks and boards that it has or can buy, and the pieces that lie on them. */
@NullMarked
package buildup.engine.room.stock;

import org.jspecify.annotations.NullMarked;
