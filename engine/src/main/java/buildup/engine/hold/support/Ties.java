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
    /** A nail that goes so far aside for each of its length is driven slantwise: about 10 degrees. */
    private static final double SLANT = 1.0 / 6;

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
                        joint.byItsPoint() || !pulls(fixed, joint) ? 0 : joint.withdrawalPerFoot(),
                        pulls(fixed, joint) ? joint.headPerFoot() : 0,
                        joint.lateralPerFoot()));
            }
        }
        return List.copyOf(joints);
    }

    /**
     * Whether what it holds along itself counts. Driven slantwise, it would hold a piece that slides across it by that alone;
     * where nothing is known of what it holds across, as in a panel, it may not be counted on for that (common practice, no
     * source).
     */
    static boolean pulls(Fixed fixed, Joint joint) {
        boolean slantwise =
                Math.min(Math.abs(fixed.way().x()), Math.abs(fixed.way().y())) > SLANT;
        return !slantwise || !joint.unpublishedAcross();
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
     * wall, or in a piece that is held or grounded itself; whether it holds enough is another question. Trim that nothing
     * carries and that has no fastenings of its own is held by those that are driven into it through a piece that is held:
     * they are its fastenings. A nailer is not: it is there before what is nailed to it.
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
                .filter(joint -> joint.pull() > 0 && !joint.byItsPoint())
                .toList();
        Set<Integer> held = joints.stream()
                .filter(joint -> section.body(joint.far()).standing())
                .map(Joint::near)
                .filter(body -> section.body(body).inStack())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Set<Integer> pinned = pinned(section, new Fastened(pieces, held, held), joints);
        Set<Integer> decided = new LinkedHashSet<>(pieces);
        decided.addAll(pinned);
        return new Fastened(decided, held, pinned);
    }

    /** The pieces with fastenings of their own, or held by those that are driven into them. */
    public static Set<Integer> nailed(Section section, List<Fixed> fastenings) {
        Set<Integer> nailed = new LinkedHashSet<>(section.fastened().pinned());
        fastenings.forEach(fixed -> nailed.add(fixed.piece()));
        return nailed;
    }

    private static Set<Integer> pinned(Section section, Fastened fastened, List<Joint> joints) {
        Section decided = section.heldBy(fastened, new Notices());
        Set<Integer> pinned = new LinkedHashSet<>(fastened.held());
        boolean more = true;
        while (more) {
            more = joints.stream()
                    .map(joint ->
                            (carries(section, decided, pinned, joint.near(), joint.far()) && pinned.add(joint.near()))
                                    || (hangs(section, decided, fastened, joint.far())
                                            && carries(section, decided, pinned, joint.far(), joint.near())
                                            && pinned.add(joint.far())))
                    .reduce(false, Boolean::logicalOr);
        }
        return pinned;
    }

    private static boolean carries(Section section, Section decided, Set<Integer> pinned, int body, int by) {
        return section.body(body).inStack() && (decided.standing(by).grounded() || pinned.contains(by));
    }

    private static boolean hangs(Section section, Section decided, Fastened fastened, int body) {
        return section.body(body).trim()
                && !fastened.given().contains(body)
                && !decided.standing(body).grounded();
    }
}
