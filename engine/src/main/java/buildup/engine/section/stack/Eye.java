package buildup.engine.section.stack;

import buildup.shared.notice.Mark;

/** An eye in the room: {@code distance} from the plane x = 0 and {@code height} over the datum, in. */
public record Eye(String name, double distance, double height, Mark mark) {}
