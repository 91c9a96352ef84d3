package buildup.engine.hold.order;

import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What goes up in one step: a piece, or pieces joined on the bench.
 *
 * @param bench the name of the bench unit; absent for a single piece
 * @param bodies numbers of the bodies in the section, in the order of the document
 */
public record Unit(Optional<String> bench, List<Integer> bodies) {
    /** Copies the list. */
    public Unit {
        bodies = List.copyOf(bodies);
    }

    static Unit piece(int body) {
        return new Unit(Optional.empty(), List.of(body));
    }

    /** What it is called: its bench unit, or its one piece. */
    public String name(Section section) {
        return bench.orElseGet(() -> section.name(last()));
    }

    /** The bodies beside it that carry or back it, in order. */
    Set<Integer> holders(Section section) {
        Set<Integer> holders = new TreeSet<>();
        for (Contact contact : section.contacts()) {
            if (contact.facing().isPresent() && bodies.contains(contact.b()) && !bodies.contains(contact.a())) {
                holders.add(contact.a());
            }
        }
        return holders;
    }

    /** The place in the document after which it goes up: that of its last piece. */
    public int last() {
        return bodies.stream().mapToInt(body -> body).max().orElseThrow();
    }
}
