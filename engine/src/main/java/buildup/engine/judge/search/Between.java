package buildup.engine.judge.search;

import buildup.engine.judge.along.Turning;

/**
 * A size between two choices at which every rule is met.
 *
 * @param turning where one of the rules turns, there or next to there
 * @param only whether that rule is met only there
 * @param typed what is typed in its place, the shortest that meets them all
 */
public record Between(Turning turning, boolean only, String typed) {}
