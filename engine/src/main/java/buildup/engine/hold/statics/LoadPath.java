package buildup.engine.hold.statics;

import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Contact.Facing;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.shared.document.Scalar;
import java.util.ArrayList;
import java.util.Comparator;
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
    /** What each rests on, and for what is fixed the body that it is fixed to. */
    private final List<Set<Integer>> ways = new ArrayList<>();

    private final List<Set<Integer>> through = new ArrayList<>();

    private LoadPath(Section section) {
        this.section = section;
    }

    /**
     * What each piece of a section rests on.
     *
     * @param joints fasteners, empty while none are given
     */
    public static LoadPath of(Section section, List<Tie> joints) {
        LoadPath path = new LoadPath(section);
        for (int i = 0; i < section.bodies().size(); i++) {
            path.rests.add(path.restsOn(i, joints));
            path.ways.add(path.ways(i));
        }
        path.settle();
        return path;
    }

    private Set<Integer> restsOn(int number, List<Tie> joints) {
        Set<Integer> on = new LinkedHashSet<>();
        if (section.body(number).standing()) {
            return on;
        }
        Standing standing = section.standing(number);
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
    public static Optional<Integer> fixedTo(Section section, int piece) {
        Optional<String> name = section.body(piece)
                .placed()
                .flatMap(placed -> placed.piece().fixed())
                .map(Scalar::text);
        return IntStream.range(0, section.bodies().size())
                .boxed()
                .filter(other -> name.filter(section.name(other)::equals).isPresent())
                .findFirst();
    }

    /** Where the weight of a body goes next: of one that is fixed to what it is fixed to, else to what it rests on. */
    private Set<Integer> ways(int number) {
        Set<Integer> ways = new LinkedHashSet<>(rests.get(number));
        if (Model.saidToBeFixed(section, number)) {
            return fixedTo(section, number).map(Set::of).orElse(Set.of());
        }
        fixedOn(number).ifPresent(ways::add);
        return ways;
    }

    /** The body on which the back of a piece lies that counts as fixed there. */
    public Optional<Integer> fixedOn(int number) {
        return section.contacts().stream()
                .filter(contact -> section.standing(number).counted())
                .filter(contact -> contact.b() == number && contact.length() > 0)
                .filter(contact -> contact.facing().filter(Facing.BACKS::equals).isPresent())
                .map(Contact::a)
                .filter(other -> section.body(other).standing())
                .findFirst();
    }

    /**
     * Through which bodies all weight of each goes: itself and, of what it rests on, those common to all. Settled from the
     * ground up until nothing changes (the dominators of the graph).
     */
    private void settle() {
        int n = ways.size();
        Set<Integer> all = new LinkedHashSet<>();
        for (int i = 0; i < n; i++) {
            all.add(i);
        }
        for (int i = 0; i < n; i++) {
            through.add(ways.get(i).isEmpty() ? new LinkedHashSet<>(Set.of(i)) : new LinkedHashSet<>(all));
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < n; i++) {
                if (!ways.get(i).isEmpty()) {
                    Set<Integer> common = new LinkedHashSet<>(all);
                    ways.get(i).forEach(on -> common.retainAll(through.get(on)));
                    common.add(i);
                    if (!common.equals(through.get(i))) {
                        through.set(i, common);
                        changed = true;
                    }
                }
            }
        }
        for (int i = 0; i < n; i++) {
            if (!reaches(i, body -> ways.get(body).isEmpty())) {
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

    /** The body next to it through which all its weight goes; nothing when that is no one body. */
    public Optional<Integer> hungOn(int body) {
        return through.get(body).stream()
                .filter(other -> other != body)
                .max(Comparator.comparingInt(other -> through.get(other).size()));
    }

    /** Whether the path from a body reaches something that stands. */
    public boolean reachesGround(int body) {
        return reaches(
                body,
                next -> (section.body(next).standing() && !section.name(next).equals("ceiling"))
                        || (Model.saidToBeFixed(section, next) && ways.get(next).isEmpty()));
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
                open.addAll(ways.get(next));
            }
        }
        return false;
    }
}
