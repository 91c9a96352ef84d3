package buildup.engine.hold.support;

import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.statics.Tie;
import buildup.engine.section.compose.Fastened;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What fastenings do for a section, as statics sees it. */
public final class Ties {
    private Ties() {}

    /** Every place where a fastening holds one body to the next, for a foot of run. */
    public static List<Tie> of(List<Fixed> fastenings) {
        List<Tie> joints = new ArrayList<>();
        for (Fixed fixed : fastenings) {
            for (Joint joint : fixed.joints()) {
                joints.add(new Tie(
                        fixed.fastening().name(),
                        joint.near(),
                        joint.far(),
                        entry(fixed, joint.far()),
                        fixed.way(),
                        joint.withdrawalPerFoot(),
                        joint.headPerFoot(),
                        joint.lateralPerFoot()));
            }
        }
        return List.copyOf(joints);
    }

    /** Where the nail first enters a body. */
    static Point entry(Fixed fixed, int body) {
        double along = fixed.drive().crossings().stream()
                .filter(crossing -> crossing.holds() && crossing.body().orElseThrow() == body)
                .mapToDouble(Crossing::from)
                .min()
                .orElse(0);
        return fixed.head().plus(fixed.way().times(along));
    }

    /**
     * What fastenings do for the pieces of a section. A piece is held when some fastening bites from it in framing or solid
     * wall, or in a piece that is held or grounded itself; whether it holds enough is another question.
     *
     * @param given all fastenings of the document, also those that have no place on their piece
     * @param fastenings those that have
     */
    public static Fastened fastened(Section section, List<Fastening> given, List<Fixed> fastenings) {
        Set<String> names = given.stream().map(Fastening::piece).collect(Collectors.toSet());
        Set<Integer> pieces = IntStream.range(0, section.bodies().size())
                .filter(body -> section.body(body).inStack() && names.contains(section.name(body)))
                .boxed()
                .collect(Collectors.toSet());
        List<Joint> joints = fastenings.stream()
                .flatMap(fixed -> fixed.joints().stream())
                .filter(joint -> joint.pull() > 0)
                .toList();
        Set<Integer> held = joints.stream()
                .filter(joint -> section.body(joint.far()).standing())
                .map(Joint::near)
                .filter(body -> section.body(body).inStack())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return new Fastened(pieces, held, pinned(section, new Fastened(pieces, held, held), joints));
    }

    private static Set<Integer> pinned(Section section, Fastened fastened, List<Joint> joints) {
        Section decided = section.heldBy(fastened, new Notices());
        Set<Integer> pinned = new LinkedHashSet<>(fastened.held());
        boolean more = true;
        while (more) {
            more = joints.stream()
                    .filter(joint -> section.body(joint.near()).inStack())
                    .filter(joint -> decided.standing(joint.far()).grounded() || pinned.contains(joint.far()))
                    .map(joint -> pinned.add(joint.near()))
                    .reduce(false, Boolean::logicalOr);
        }
        return pinned;
    }
}
