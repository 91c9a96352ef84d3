package buildup.engine.mill.milling;

import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Optional;

/**
 * What the mill knows of a profile. Places are on the stick as it is run.
 *
 * @param reached the outline in walking order with the sides from which it is reached
 * @param passes how listed cutters make it; absent where they were not looked for
 * @param sides the heads that were asked about, tilted ones last
 * @param heads those that it takes, each with its knife or its cutter; none where planed sides are all there is to it
 * @param obstacles why it cannot be run as it is drawn; none where it can
 */
public record Milled(
        MillStick stick,
        List<Reached> reached,
        List<Undercut> undercuts,
        List<SharpCorner> corners,
        List<Hollow> hollows,
        List<Groove> grooves,
        Optional<Passes> passes,
        List<Side> sides,
        List<HeadWork> heads,
        List<Notice> obstacles) {
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
        sides = List.copyOf(sides);
        heads = List.copyOf(heads);
        obstacles = List.copyOf(obstacles);
    }

    /** Whether planed sides are all there is to it. */
    public boolean isPlain() {
        return stick.outline().strokes().stream().allMatch(stroke -> stick.isPlaned(stroke.segment()));
    }

    /** The knives to be ground for it. */
    public List<Knife> knives() {
        return heads.stream().flatMap(work -> work.knife().stream()).toList();
    }

    /** The cutters of the shop's list that do the work of a head. */
    public List<Pass> cutters() {
        return heads.stream().flatMap(work -> work.cutter().stream()).toList();
    }
}
