package buildup.engine.hold.support;

import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Contact.Facing;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.shared.document.Scalar;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * How weight goes to the ground. A piece rests on what it bears on and is grounded, else on what the document fixes it to,
 * else on what it hangs on: the pieces it is fastened to, or that back it, or that are fastened to it, or that it lies on
 * though they hang themselves. Pieces that hang on one another in a circle hang on nothing.
 */
public final class LoadPath {
    private final Section section;
    private final List<Set<Integer>> rests = new ArrayList<>();
    private final List<Set<Integer>> through = new ArrayList<>();

    private LoadPath(Section section) {
        this.section = section;
    }

    /** @param joints fasteners, empty while none are given */
    static LoadPath of(Section section, List<Tie> joints) {
        LoadPath path = new LoadPath(section);
        for (int i = 0; i < section.bodies().size(); i++) {
            path.rests.add(path.restsOn(i, joints));
        }
        path.settle();
        return path;
    }

    private Set<Integer> restsOn(int number, List<Tie> joints) {
        Set<Integer> on = new LinkedHashSet<>();
        if (section.body(number).standing()) {
            return on;
        }
        Standing standing = standing(number);
        standing.bearing().forEach(bearing -> on.add(bearing.on()));
        if (on.isEmpty()) {
            fixedTo(section, number).ifPresent(on::add);
        }
        if (on.isEmpty()) {
            joints.stream().filter(joint -> joint.outer() == number).forEach(joint -> on.add(joint.inner()));
        }
        if (on.isEmpty()) {
            section.contacts().stream()
                    .filter(contact -> contact.b() == number
                            && contact.length() > 0
                            && contact.facing().filter(Facing.BACKS::equals).isPresent())
                    .forEach(contact -> on.add(contact.a()));
        }
        if (on.isEmpty()) {
            joints.stream().filter(joint -> joint.inner() == number).forEach(joint -> on.add(joint.outer()));
        }
        if (on.isEmpty()) {
            on.addAll(standing.hanging());
        }
        if (on.isEmpty()) {
            section.contacts().stream()
                    .filter(contact -> contact.of(number) && contact.length() > 0)
                    .map((Contact contact) -> contact.other(number))
                    .filter(other -> other < number || section.body(other).standing())
                    .forEach(on::add);
        }
        return on;
    }

    /** The body that the document fixes a piece to; nothing when it is a part of the room that does not stand. */
    static Optional<Integer> fixedTo(Section section, int piece) {
        Optional<String> name = section.body(piece)
                .placed()
                .flatMap(placed -> placed.piece().fixed())
                .map(Scalar::text);
        return IntStream.range(0, section.bodies().size())
                .boxed()
                .filter(other -> name.filter(section.name(other)::equals).isPresent())
                .findFirst();
    }

    private Standing standing(int number) {
        return section.standing().stream()
                .filter(one -> one.body() == number)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Through which bodies all weight of each goes: itself and, of what it rests on, those common to all. Settled from the
     * ground up until nothing changes (the dominators of the graph).
     */
    private void settle() {
        int n = rests.size();
        Set<Integer> all = new LinkedHashSet<>();
        for (int i = 0; i < n; i++) {
            all.add(i);
        }
        for (int i = 0; i < n; i++) {
            through.add(rests.get(i).isEmpty() ? new LinkedHashSet<>(Set.of(i)) : new LinkedHashSet<>(all));
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < n; i++) {
                if (!rests.get(i).isEmpty()) {
                    Set<Integer> common = new LinkedHashSet<>(all);
                    rests.get(i).forEach(on -> common.retainAll(through.get(on)));
                    common.add(i);
                    if (!common.equals(through.get(i))) {
                        through.set(i, common);
                        changed = true;
                    }
                }
            }
        }
        for (int i = 0; i < n; i++) {
            if (!reaches(i, body -> rests.get(body).isEmpty())) {
                through.set(i, Set.of(i));
            }
        }
    }

    /** What a body rests on, directly. */
    public List<Integer> restsOn(int body) {
        return List.copyOf(rests.get(body));
    }

    /** The body and all pieces whose whole weight goes through it. */
    public List<Integer> through(int body) {
        List<Integer> own = new ArrayList<>();
        for (int i = 0; i < through.size(); i++) {
            if (section.body(i).inStack() && through.get(i).contains(body)) {
                own.add(i);
            }
        }
        return own;
    }

    /** Whether the path from a body reaches something that stands. */
    public boolean reachesGround(int body) {
        return reaches(
                body,
                next -> section.body(next).standing() && !section.name(next).equals("ceiling"));
    }

    private boolean reaches(int body, IntPredicate end) {
        Set<Integer> seen = new LinkedHashSet<>();
        List<Integer> open = new ArrayList<>(List.of(body));
        while (!open.isEmpty()) {
            int next = open.remove(0);
            if (end.test(next)) {
                return true;
            }
            if (seen.add(next)) {
                open.addAll(rests.get(next));
            }
        }
        return false;
    }
}
