package buildup.engine.hold.support;

import buildup.engine.hold.fixing.Crossing;
import buildup.engine.hold.fixing.Fixed;
import buildup.engine.hold.fixing.Joint;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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
                        joint.lateralPerFoot()));
            }
        }
        return List.copyOf(joints);
    }

    /** Where the nail first enters a body. */
    private static Point entry(Fixed fixed, int body) {
        double along = fixed.drive().crossings().stream()
                .filter(crossing -> crossing.holds() && crossing.body().orElseThrow() == body)
                .mapToDouble(Crossing::from)
                .min()
                .orElse(0);
        return fixed.head().plus(fixed.way().times(along));
    }

    /**
     * The pieces that a fastening with some bite holds to framing or solid wall; whether it holds enough is another
     * question, and said elsewhere.
     */
    public static Set<Integer> heldToStanding(Section section, List<Fixed> fastenings) {
        Set<Integer> held = new LinkedHashSet<>();
        for (Fixed fixed : fastenings) {
            boolean reaches = fixed.joints().stream()
                    .anyMatch(joint -> section.body(joint.far()).standing() && joint.withdrawal() > 0);
            if (reaches) {
                fixed.joints().stream()
                        .map(Joint::near)
                        .filter(body -> section.body(body).inStack())
                        .forEach(held::add);
            }
        }
        return held;
    }
}
