package buildup.engine.judge.clearance;

import buildup.engine.section.compose.Contact.Facing;
import buildup.engine.section.compose.Section;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What bears on what: a way out that lifts a piece off what carries it is none. */
final class Carried {
    private Carried() {}

    /** Whether every piece still touches what carried it. */
    static boolean asBefore(Section before, Section after) {
        return before.contacts().stream()
                .filter(contact -> contact.length() > 0)
                .filter(contact -> before.body(contact.b()).inStack())
                .filter(contact -> contact.facing().equals(Optional.of(Facing.CARRIES)))
                .allMatch(contact -> touch(after, before.name(contact.a()), before.name(contact.b())));
    }

    private static boolean touch(Section after, String carrier, String carried) {
        OptionalInt under = after.number(carrier);
        OptionalInt over = after.number(carried);
        return under.isPresent() && over.isPresent() && after.touches(over.getAsInt(), List.of(under.getAsInt()));
    }
}
