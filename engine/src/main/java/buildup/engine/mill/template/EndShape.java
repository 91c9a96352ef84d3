package buildup.engine.mill.template;

import buildup.profiles.outline.Outline;

/**
 * The shape to which an end is cut, as a scroll.
 *
 * @param outline back at x = 0, lowest point at y = 0
 */
public record EndShape(String name, Outline outline) {}
