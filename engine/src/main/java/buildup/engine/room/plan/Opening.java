package buildup.engine.room.plan;

import buildup.shared.notice.Mark;

/**
 * A stretch of wall where the run is interrupted: a door, a window, a chimney.
 *
 * @param from, to places on the wall from the stretch's left end, in, outsides of the casing
 * @param ends how the run ends on both its sides: butt, return or square
 */
public record Opening(String name, double from, double to, Ending ends, Mark mark) {}
