package buildup.profiles.region;

import buildup.profiles.outline.Segment;

/**
 * A stretch of a ring: which outline and which of its strokes it belongs to (both counted from 0 as given) and the true
 * segment, in the ring's walking order.
 */
public record Bound(int outline, int stroke, Segment segment) {}
