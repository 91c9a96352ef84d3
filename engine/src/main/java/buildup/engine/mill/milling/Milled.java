package buildup.engine.mill.milling;

import java.util.List;
import java.util.Optional;

/**
 * What the mill knows of a profile. Places are on the stick as it is run.
 *
 * @param reached the outline in walking order with the sides from which it is reached
 * @param passes how listed cutters make it; absent where they were not looked for
 * @param knife the ground knife that makes the front in one go; absent where none is needed or the machine cannot hold it
 */
public record Milled(
        MillStick stick,
        List<Reached> reached,
        List<Undercut> undercuts,
        List<SharpCorner> corners,
        List<Hollow> hollows,
        List<Groove> grooves,
        Optional<Passes> passes,
        Optional<Knife> knife) {
    /** Goes with every figure about cutters. */
    public static final String CAUTION =
            "Trained operators only. Follow the machine and cutter makers' instructions and guards; the maker's label"
                    + " says how fast a cutter may turn and how far a knife may stand out.";

    public Milled {
        reached = List.copyOf(reached);
        undercuts = List.copyOf(undercuts);
        corners = List.copyOf(corners);
        hollows = List.copyOf(hollows);
        grooves = List.copyOf(grooves);
    }

    /** Whether planed sides are all there is to it. */
    public boolean isPlain() {
        return stick.outline().strokes().stream().allMatch(stroke -> stick.isPlaned(stroke.segment()));
    }
}
