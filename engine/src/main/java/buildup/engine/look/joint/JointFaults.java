package buildup.engine.look.joint;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Eye;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
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
     * @param eyes that stand in the room
     * @param meant names of piece and other, as the sheet has them, of gaps that the document speaks of elsewhere
     * @param told whether somebody reads it: else nobody looks for cures, each of which composes the stack
     */
    public static List<OpenJoint> of(
            Section section, Joints joints, List<Eye> eyes, Set<List<String>> meant, boolean told, Notices notices) {
        List<OpenJoint> wrong = joints.open().stream()
                .filter(joint -> joint.seen() && !joint.meant())
                .filter(joint -> !names(section, joint, meant))
                .toList();
        JointCures cures = new JointCures(section, eyes, wrong);
        wrong.forEach(joint -> {
            Notice open = open(section, joint);
            add(section, told ? open.cure(cures.of(joint)) : open, joint.piece(), notices);
        });
        joints.unseen().forEach(piece -> add(section, JointNotices.UNSEEN.notice(), piece, notices));
        return wrong;
    }

    /** Whether a joint is among some pairs of names, whichever of the two is named first. */
    private static boolean names(Section section, OpenJoint joint, Set<List<String>> pairs) {
        String piece = section.name(joint.piece());
        String other = section.name(joint.other());
        return pairs.contains(List.of(piece, other)) || pairs.contains(List.of(other, piece));
    }

    private static Notice open(Section section, OpenJoint joint) {
        Body other = section.body(joint.other());
        return JointNotices.OPEN
                .with(
                        "other",
                        (other.piece() ? JointNotices.QUOTED : JointNotices.OF_THE_ROOM).with("name", other.name()))
                .with("eyes", Listing.names(joint.eyes()))
                .amount(Figure.contact(joint.width()));
    }

    private static void add(Section section, Notice notice, int piece, Notices notices) {
        Optional<Placed> placed = section.body(piece).placed();
        notices.add(placed.map(found -> notice.of(found.name()).at(found.piece().mark()))
                .orElse(notice));
    }
}
