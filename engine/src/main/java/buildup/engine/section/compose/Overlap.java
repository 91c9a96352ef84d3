package buildup.engine.section.compose;

import buildup.profiles.outline.Point;

/** One connected part of two bodies' common region; {@code depth} is its least width over all directions, in. */
public record Overlap(int a, int b, double area, double depth, Point at) {}
