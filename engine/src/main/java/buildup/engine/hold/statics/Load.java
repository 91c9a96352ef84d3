package buildup.engine.hold.statics;

import buildup.shared.notice.Mark;

/**
 * A load that the user puts on a piece: pounds per foot of run, straight down, at a distance {@code out} from x = 0.
 *
 * @param body number of the piece in the section
 */
public record Load(String name, int body, double out, double poundsPerFoot, Mark mark) {}
