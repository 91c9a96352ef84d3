/**
 * Writers of pictures. Each takes a {@link buildup.cli.scene.Scene} and gives bytes: SVG and DXF with true arcs, PDF at
 * exactly 1:1, PNG. Only here are the libraries for these formats known. All text is set in, and measured with, one font that
 * comes with the program; the same scene gives the same bytes on every machine.
 */
@NullMarked
package buildup.cli.write;

import org.jspecify.annotations.NullMarked;
