/** How the stack looks: the front in its light, and the rays of light and sight. */
@NullMarked
package buildup.cli.drawing.look;

import org.jspecify.annotations.NullMarked;
