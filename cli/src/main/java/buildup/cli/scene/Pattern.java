package buildup.cli.scene;

import java.util.List;

/**
 * Parallel lines, perhaps crossed by as many square to them.
 *
 * @param angle of the lines, degrees counterclockwise from level
 * @param spacing between them, in
 * @param width of a line, in
 * @param dash lengths of stroke and gap in turn, in; empty for unbroken lines
 */
public record Pattern(double angle, double spacing, boolean crossed, double width, List<Double> dash) {
    public Pattern {
        dash = List.copyOf(dash);
    }
}
