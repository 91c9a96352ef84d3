package buildup.engine.look.joint;

import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.shared.sheet.NoRow;
import buildup.shared.sheet.Sheet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
                .either()
                .fine("gap", "gap", OpenJoint::width)
                .noneWithoutRow(closed(section))
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

    /** Between what touches there is no gap; what is farther apart than a slot is not closed either. */
    private static NoRow closed(Section section) {
        Set<Set<String>> none = new HashSet<>(Set.of(Set.of()));
        for (Contact contact : section.contacts()) {
            none.add(Set.of(section.name(contact.a())));
            none.add(Set.of(section.name(contact.b())));
            none.add(Stream.of(contact.a(), contact.b()).map(section::name).collect(Collectors.toUnmodifiableSet()));
        }
        return new NoRow(List.of("piece", "over"), none);
    }
}
