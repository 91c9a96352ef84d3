package buildup.engine.section.compose;

import buildup.profiles.outline.Segment;

/**
 * A stretch of a piece that lies open beyond the ends of the room-side walk, as the inner side of a lip, or of a pelmet: no
 * row of the walk, and yet an eye may look at it.
 *
 * @param body the piece
 */
public record Beyond(int body, Segment segment) {}
