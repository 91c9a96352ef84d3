/** What holds the stack up: fasteners, bearings and nailing. */
@NullMarked
package buildup.cli.drawing.hold;

import org.jspecify.annotations.NullMarked;
