package buildup.engine.look.joint;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.List;

/**
 * A slot between two bodies that nearly meet: farther apart than touching, nearer than half an inch, and touching nowhere.
 *
 * @param piece the one that was put up later
 * @param other piece, wall, floor or ceiling
 * @param throats from the one to the other, square to a face of either, where they come nearest; the narrowest first
 * @param eyes names of those that see into it
 * @param meant whether a rule of the document places the piece at this distance
 */
public record OpenJoint(int piece, int other, List<Line> throats, List<String> eyes, boolean meant) {
    public OpenJoint {
        throats = List.copyOf(throats);
        eyes = List.copyOf(eyes);
    }

    /** Of the slot where it is narrowest, in. */
    public double width() {
        return throats.get(0).length();
    }

    /** The middle of the slot where it is narrowest. */
    public Point at() {
        return throats.get(0).at(0.5);
    }

    /** Whether any eye sees into it. */
    public boolean seen() {
        return !eyes.isEmpty();
    }
}
