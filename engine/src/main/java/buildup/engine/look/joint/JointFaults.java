package buildup.engine.look.joint;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Says which open joints an eye sees that nobody meant, and which trim no eye sees. */
public final class JointFaults {
    private JointFaults() {}

    /**
     * The open joints that are wrong: seen, and meant by no rule.
     *
     * @param meant names of piece and other, as the sheet has them, of gaps that the document speaks of elsewhere
     */
    public static List<OpenJoint> of(Section section, Joints joints, Set<List<String>> meant, Notices notices) {
        List<OpenJoint> wrong = joints.open().stream()
                .filter(joint -> joint.seen() && !joint.meant())
                .filter(joint -> !meant.contains(List.of(section.name(joint.piece()), section.name(joint.other()))))
                .toList();
        wrong.forEach(joint -> add(section, open(section, joint), joint.piece(), notices));
        joints.unseen().forEach(piece -> add(section, JointNotices.UNSEEN.notice(), piece, notices));
        return wrong;
    }

    private static Notice open(Section section, OpenJoint joint) {
        Body other = section.body(joint.other());
        return JointNotices.OPEN
                .with(
                        "other",
                        (other.piece() ? JointNotices.QUOTED : JointNotices.OF_THE_ROOM).with("name", other.name()))
                .with("eyes", Listing.names(joint.eyes()))
                .amount(Figure.length(joint.width()))
                .cure(cure(section, joint));
    }

    private static Phrase cure(Section section, OpenJoint joint) {
        OpenJoint.Closing closing = joint.closing();
        String name = section.name(closing.body());
        if (closing.size().isPresent()) {
            return JointNotices.WIDER
                    .with("board", name)
                    .with("size", Figure.contact(closing.size().getAsDouble()));
        }
        Figure by = Figure.contact(joint.width());
        return way(closing.move())
                .map(way -> JointNotices.MOVE.with("way", way))
                .orElse(JointNotices.SLANTED)
                .with("mover", name)
                .with("by", by);
    }

    /** The word for a step straight along an axis. */
    private static Optional<String> way(Point step) {
        Point way = step.unit();
        if (Math.abs(way.x()) <= Tolerance.SAME_DIRECTION) {
            return Optional.of(way.y() > 0 ? "up" : "down");
        }
        return Math.abs(way.y()) <= Tolerance.SAME_DIRECTION
                ? Optional.of(way.x() > 0 ? "out" : "back")
                : Optional.empty();
    }

    private static void add(Section section, Notice notice, int piece, Notices notices) {
        Optional<Placed> placed = section.body(piece).placed();
        notices.add(placed.map(found -> notice.of(found.name()).at(found.piece().mark()))
                .orElse(notice));
    }
}
