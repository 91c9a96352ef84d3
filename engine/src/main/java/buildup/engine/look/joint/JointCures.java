package buildup.engine.look.joint;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Mending;
import buildup.engine.section.compose.Overlap;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.Stock;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Cure;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Ways to close a slot, each tried on the stack before it is told: a board cut so much wider, else a piece moved. What
 * laps something that it did not lap before, or opens another joint to an eye, is no cure.
 */
final class JointCures {
    private final Section section;
    private final List<Eye> eyes;
    private final Mending asDrawn;
    private final Set<List<String>> open;
    private final Set<List<String>> lapped;

    /** @param wrong the slots that are told */
    JointCures(Section section, List<Eye> eyes, List<OpenJoint> wrong) {
        this.section = section;
        this.eyes = eyes;
        this.asDrawn = Mending.of(section.stack());
        this.open = names(section, wrong);
        this.lapped = laps(section);
    }

    private static Set<List<String>> names(Section section, List<OpenJoint> joints) {
        Set<List<String>> names = new HashSet<>();
        joints.forEach(joint -> names.add(List.of(section.name(joint.piece()), section.name(joint.other()))));
        return names;
    }

    private static Set<List<String>> laps(Section section) {
        Set<List<String>> laps = new HashSet<>();
        for (Overlap lap : section.overlaps()) {
            laps.add(List.of(section.name(lap.a()), section.name(lap.b())));
        }
        return laps;
    }

    /** A way that may be gone, and how it is told. */
    private record Way(Phrase words, Mending mending) {}

    Cure of(OpenJoint joint) {
        List<String> names = List.of(section.name(joint.piece()), section.name(joint.other()));
        return ways(joint).stream()
                .filter(way -> way.mending()
                        .section()
                        .filter(after -> closes(after, names))
                        .isPresent())
                .findFirst()
                .map(way -> new Cure(way.words(), way.mending().changes()))
                .orElse(Cure.of(JointNotices.CLOSE_IT));
    }

    private boolean closes(Section after, List<String> names) {
        List<OpenJoint> seen = Joints.open(after, eyes).stream()
                .filter(joint -> joint.seen() && !joint.meant())
                .toList();
        Set<List<String>> left = names(after, seen);
        return !left.contains(names) && open.containsAll(left) && lapped.containsAll(laps(after));
    }

    private List<Way> ways(OpenJoint joint) {
        Line throat = joint.throats().get(0);
        List<Way> ways = new ArrayList<>();
        for (int number : new int[] {joint.piece(), joint.other()}) {
            wider(section.body(number), throat).ifPresent(ways::add);
        }
        moved(section.body(joint.piece()), throat).ifPresent(ways::add);
        moved(section.body(joint.other()), throat.reversed()).ifPresent(ways::add);
        return ways;
    }

    /** A board whose width lies across the slot. */
    private Optional<Way> wider(Body body, Line throat) {
        return body.placed()
                .filter(placed -> body.inStack() && placed.piece().stock().board())
                .filter(placed -> isAlong(across(placed.piece().stock()), throat))
                .flatMap(placed -> wider(placed, throat.length()));
    }

    private Optional<Way> wider(Placed placed, double by) {
        double width = placed.blankWidth() + by;
        Figure size = Figure.contact(width);
        return asDrawn.wide(placed.name(), width, size)
                .map(mending ->
                        new Way(JointNotices.WIDER.with("board", placed.name()).with("size", size), mending));
    }

    private static Axis across(Stock board) {
        return board.lying() ? Axis.OUT : Axis.UP;
    }

    private static boolean isAlong(Axis axis, Line throat) {
        Point way = throat.direction(0);
        return Math.abs(axis == Axis.OUT ? way.y() : way.x()) <= Tolerance.SAME_DIRECTION;
    }

    /** A piece moved along the slot to contact; a slanted one has no such way. */
    private Optional<Way> moved(Body body, Line throat) {
        if (!body.inStack()) {
            return Optional.empty();
        }
        for (Axis axis : Axis.values()) {
            if (isAlong(axis, throat)) {
                Point step = throat.to().minus(throat.from());
                double by = axis == Axis.OUT ? step.x() : step.y();
                Figure told = Figure.contact(Math.abs(by));
                String way = axis == Axis.UP ? by > 0 ? "up" : "down" : by > 0 ? "out" : "back";
                return asDrawn.moved(body.name(), axis, by, told)
                        .map(mending -> new Way(
                                JointNotices.MOVE
                                        .with("mover", body.name())
                                        .with("way", way)
                                        .with("by", told),
                                mending));
            }
        }
        return Optional.empty();
    }
}
