/**
 * What is seen of a section: where light falls, what an eye sees, which joints stand open.
 */
@NullMarked
package buildup.engine.look;

import org.jspecify.annotations.NullMarked;
