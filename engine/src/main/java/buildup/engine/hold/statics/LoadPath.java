package buildup.engine.hold.statics;

import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Contact.Facing;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * How weight goes to the ground. A piece rests on what it bears on and is grounded, else on what the document fixes it to,
 * else on what it hangs on: the pieces it is fastened to, or that back it, or that are fastened to it, or that it lies on
 * though they hang themselves. Pieces that hang on one another in a circle hang on nothing.
 */
public final class LoadPath {
    private final Section section;
    private final List<List<Integer>> rests = new ArrayList<>();
    /** What each rests on, and for what is fixed the body that it is fixed to. */
    private final List<List<Integer>> ways = new ArrayList<>();

    /** For each body the bodies through which all its weight goes. */
    private final BitSet[] through;

    private LoadPath(Section section) {
        this.section = section;
        this.through = new BitSet[section.bodies().size()];
    }

    /**
     * What each piece of a section rests on.
     *
     * @param joints fasteners, empty while none are given
     */
    public static LoadPath of(Section section, List<Tie> joints) {
        LoadPath path = new LoadPath(section);
        for (int i = 0; i < path.through.length; i++) {
            path.rests.add(path.restsOn(i, joints));
            path.ways.add(path.ways(i));
        }
        path.settle();
        return path;
    }

    private List<Integer> restsOn(int number, List<Tie> joints) {
        if (section.body(number).standing()) {
            return List.of();
        }
        List<Integer> on = new ArrayList<>(2);
        Standing standing = section.standing(number);
        standing.bearing().forEach(bearing -> add(on, bearing.on()));
        if (on.isEmpty()) {
            fixedTo(section, number).ifPresent(on::add);
        }
        if (on.isEmpty()) {
            for (Tie joint : joints) {
                if (joint.outer() == number) {
                    add(on, joint.inner());
                }
            }
        }
        if (on.isEmpty()) {
            for (Contact contact : section.contacts()) {
                if (backs(contact, number)) {
                    add(on, contact.a());
                }
            }
        }
        if (on.isEmpty()) {
            for (Tie joint : joints) {
                if (joint.inner() == number) {
                    add(on, joint.outer());
                }
            }
        }
        if (on.isEmpty()) {
            standing.hanging().forEach(body -> add(on, body));
        }
        if (on.isEmpty()) {
            touching(number, on);
        }
        return on;
    }

    private static void add(List<Integer> on, int body) {
        if (!on.contains(body)) {
            on.add(body);
        }
    }

    /** Whether a contact is one along which something lies behind a body. */
    private static boolean backs(Contact contact, int body) {
        return contact.b() == body
                && contact.facing().isPresent()
                && contact.facing().get() == Facing.BACKS
                && contact.length() > 0;
    }

    /** What stands, or comes before it, of all that a body touches. */
    private void touching(int number, List<Integer> on) {
        for (Contact contact : section.contacts()) {
            if (contact.of(number) && contact.length() > 0) {
                int other = contact.other(number);
                if (other < number || section.body(other).standing()) {
                    add(on, other);
                }
            }
        }
    }

    /** The body that the document fixes a piece to; nothing when it is a part of the room that does not stand. */
    public static Optional<Integer> fixedTo(Section section, int piece) {
        if (!Model.saidToBeFixed(section, piece)) {
            return Optional.empty();
        }
        String name = section.body(piece)
                .placed()
                .flatMap(placed -> placed.piece().fixed())
                .orElseThrow()
                .text();
        for (int other = 0; other < section.bodies().size(); other++) {
            if (name.equals(section.name(other))) {
                return Optional.of(other);
            }
        }
        return Optional.empty();
    }

    /** Where the weight of a body goes next: of one that is fixed to what it is fixed to, else to what it rests on. */
    private List<Integer> ways(int number) {
        if (Model.saidToBeFixed(section, number)) {
            return fixedTo(section, number).map(List::of).orElse(List.of());
        }
        Optional<Integer> fixed = fixedOn(number);
        if (fixed.isEmpty() || rests.get(number).contains(fixed.get())) {
            return rests.get(number);
        }
        List<Integer> ways = new ArrayList<>(rests.get(number));
        ways.add(fixed.get());
        return ways;
    }

    /** The body on which the back of a piece lies that counts as fixed there. */
    public Optional<Integer> fixedOn(int number) {
        if (section.standing(number).counted()) {
            for (Contact contact : section.contacts()) {
                if (backs(contact, number) && section.body(contact.a()).standing()) {
                    return Optional.of(contact.a());
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Through which bodies all weight of each goes: itself and, of what it rests on, those common to all. Settled from the
     * ground up until nothing changes (the dominators of the graph).
     */
    private void settle() {
        int n = through.length;
        for (int i = 0; i < n; i++) {
            through[i] = new BitSet(n);
            if (ways.get(i).isEmpty()) {
                through[i].set(i);
            } else {
                through[i].set(0, n);
            }
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < n; i++) {
                if (!ways.get(i).isEmpty()) {
                    BitSet common = common(i);
                    changed |= !common.equals(through[i]);
                    through[i] = common;
                }
            }
        }
        for (int i = 0; i < n; i++) {
            if (!reaches(i, body -> ways.get(body).isEmpty())) {
                through[i].clear();
                through[i].set(i);
            }
        }
    }

    /** The body itself and what all that it rests on goes through. */
    private BitSet common(int body) {
        BitSet common = new BitSet(through.length);
        common.set(0, through.length);
        for (int on : ways.get(body)) {
            common.and(through[on]);
        }
        common.set(body);
        return common;
    }

    /** What a body rests on, directly. */
    public List<Integer> restsOn(int body) {
        return List.copyOf(rests.get(body));
    }

    /** The body and all pieces whose whole weight goes through it. */
    public List<Integer> through(int body) {
        List<Integer> own = new ArrayList<>();
        for (int i = 0; i < through.length; i++) {
            if (section.body(i).inStack() && through[i].get(body)) {
                own.add(i);
            }
        }
        return own;
    }

    /** The body next to it through which all its weight goes; nothing when that is no one body. */
    public Optional<Integer> hungOn(int body) {
        int next = -1;
        int most = -1;
        for (int other = through[body].nextSetBit(0); other >= 0; other = through[body].nextSetBit(other + 1)) {
            int deep = through[other].cardinality();
            if (other != body && deep > most) {
                next = other;
                most = deep;
            }
        }
        return next < 0 ? Optional.empty() : Optional.of(next);
    }

    /** Whether the path from a body reaches something that stands. */
    public boolean reachesGround(int body) {
        return reaches(
                body,
                next -> (section.body(next).standing() && !section.name(next).equals("ceiling"))
                        || (Model.saidToBeFixed(section, next) && ways.get(next).isEmpty()));
    }

    private boolean reaches(int body, IntPredicate end) {
        BitSet seen = new BitSet(through.length);
        BitSet open = new BitSet(through.length);
        open.set(body);
        for (int next = body; next >= 0; next = open.nextSetBit(0)) {
            if (end.test(next)) {
                return true;
            }
            open.clear(next);
            seen.set(next);
            for (int way : ways.get(next)) {
                if (!seen.get(way)) {
                    open.set(way);
                }
            }
        }
        return false;
    }
}
