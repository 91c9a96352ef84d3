package buildup.profiles.region;

import buildup.profiles.outline.Point;

/**
 * One connected stretch in which two outlines overlap.
 *
 * @param first the earlier outline, counted from 0 as given
 * @param area exact area, sq in
 * @param depth least width over all directions, in
 * @param at a point inside it
 */
public record Lap(int first, int second, double area, double depth, Point at) {}
