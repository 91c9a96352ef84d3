/**
 * Figures: a number, what it counts and how it is rounded for people. The engine holds figures in its own units (inches,
 * pounds, degrees); they become words only at the edge of the program, by one {@link
 * buildup.shared.figure.FigurePrinter} that knows the unit of the document. Tables, sentences and drawings share it, so
 * one size prints one way everywhere.
 */
@NullMarked
package buildup.shared.figure;

import org.jspecify.annotations.NullMarked;
