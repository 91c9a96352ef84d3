package buildup.engine.judge.proportion;

/**
 * The upright face of a cornice that overhangs most what lies below it.
 *
 * @param member number of the row of the room-side walk
 * @param bottom where the bed below it ends, in
 * @param top where the crown above it begins, in
 */
public record Corona(int member, double bottom, double top) {}
