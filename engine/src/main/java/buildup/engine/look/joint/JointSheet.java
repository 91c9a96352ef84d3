package buildup.engine.look.joint;

import buildup.engine.section.compose.Section;
import buildup.shared.sheet.Sheet;
import java.util.List;

/** The open joints as a sheet, seen or not. */
public final class JointSheet {
    /** Its key. */
    public static final String KEY = "joints";

    private JointSheet() {}

    /** One row for each slot between neighbors. */
    public static Sheet of(Section section, List<OpenJoint> open) {
        return Sheet.of(KEY, "OPEN JOINTS", open)
                .name("piece", "piece", joint -> section.name(joint.piece()))
                .name("over", "over", joint -> section.name(joint.other()))
                .fine("gap", "gap", OpenJoint::width)
                .sums()
                .place("at", "", joint -> joint.at().x(), joint -> joint.at().y())
                .json()
                .names("eyes", "seen from", OpenJoint::eyes)
                .flag("meant", "meant", OpenJoint::meant)
                .tableWhere(
                        List.of("eyes"),
                        "OPEN JOINTS: neighbors that nearly meet, and the eyes that see into the gap",
                        "piece",
                        "over",
                        "gap",
                        "eyes",
                        "meant")
                .sheet()
                .askedIf(!open.isEmpty());
    }
}
