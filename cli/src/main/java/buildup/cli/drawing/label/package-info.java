/**
 * Where words and figures stand on a picture. {@link buildup.cli.drawing.label.Clearances} keeps what lies on it
 * already, so that no text ever meets another text or a line: a dimension tries places from near to far and takes the
 * best that is free.
 */
@NullMarked
package buildup.cli.drawing.label;

import org.jspecify.annotations.NullMarked;
