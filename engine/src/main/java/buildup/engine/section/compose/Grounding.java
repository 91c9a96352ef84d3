package buildup.engine.section.compose;

import buildup.engine.section.compose.Contact.Facing;
import buildup.engine.section.compose.Standing.Bearing;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Says what is grounded: framing, floor and solid wall; a piece that stands on something grounded; a piece whose back
 * lies flat on framing or solid wall, or that the document says is fixed. Fastenings that are given for a piece decide
 * for that piece in place of its back, and for no other.
 */
final class Grounding {
    /** A straight contact within this of level, in degrees, is a bearing. */
    static final double LEVEL_WITHIN = 5;

    private final List<Body> bodies;
    private final List<Contact> contacts;
    private final Fastened fastened;
    private final boolean[] bearing;
    private final boolean[] grounded;
    private final boolean[] fixed;
    private final boolean[] counted;

    private Grounding(List<Body> bodies, List<Contact> contacts, Fastened fastened) {
        this.bodies = bodies;
        this.contacts = contacts;
        this.fastened = fastened;
        this.bearing = new boolean[contacts.size()];
        for (int i = 0; i < bearing.length; i++) {
            bearing[i] = isBearing(contacts.get(i));
        }
        this.grounded = new boolean[bodies.size()];
        this.fixed = new boolean[bodies.size()];
        this.counted = new boolean[bodies.size()];
    }

    /**
     * One row for each piece, in order.
     *
     * @param fastened decides for the pieces for which fastenings are given; a back that lies flat on what stands counts
     *     for the others
     */
    static List<Standing> of(List<Body> bodies, List<Contact> contacts, Fastened fastened) {
        Grounding grounding = new Grounding(bodies, contacts, fastened);
        grounding.settle();
        List<Standing> standing = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            if (bodies.get(i).piece()) {
                standing.add(grounding.standing(i));
            }
        }
        return standing;
    }

    private void settle() {
        boolean[] flat = flatOnStanding();
        for (int i = 0; i < bodies.size(); i++) {
            Body body = bodies.get(i);
            boolean given = fastened.given().contains(i);
            counted[i] = body.inStack() && !given && !saidToBeFixed(body) && flat[i];
            fixed[i] = counted[i]
                    || (body.inStack()
                            && (saidToBeFixed(body) || (given && fastened.held().contains(i))));
            grounded[i] = (body.standing() && !body.name().equals("ceiling")) || fixed[i];
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < bearing.length; i++) {
                Contact contact = contacts.get(i);
                if (bearing[i] && grounded[contact.a()] && !grounded[contact.b()]) {
                    grounded[contact.b()] = true;
                    changed = true;
                }
            }
        }
    }

    private static boolean saidToBeFixed(Body body) {
        return body.placed().flatMap(placed -> placed.piece().fixed()).isPresent();
    }

    /** The bodies whose back lies flat on something that stands. */
    private boolean[] flatOnStanding() {
        boolean[] flat = new boolean[bodies.size()];
        for (Contact contact : contacts) {
            flat[contact.b()] |=
                    is(contact, Facing.BACKS) && bodies.get(contact.a()).standing();
        }
        return flat;
    }

    private static boolean isBearing(Contact contact) {
        return is(contact, Facing.CARRIES)
                && contact.stretch().isPresent()
                && contact.stretch().get() instanceof Line
                && contact.slope() <= LEVEL_WITHIN;
    }

    private static boolean is(Contact contact, Facing facing) {
        return contact.facing().isPresent() && contact.facing().get() == facing;
    }

    private Standing standing(int piece) {
        List<Bearing> on = new ArrayList<>(2);
        List<Integer> hanging = new ArrayList<>(2);
        for (int i = 0; i < bearing.length; i++) {
            Contact contact = contacts.get(i);
            if (contact.b() == piece && bearing[i]) {
                if (grounded[contact.a()]) {
                    on.add(bearing(contact));
                } else {
                    hanging.add(contact.a());
                }
            }
        }
        return new Standing(piece, grounded[piece], fixed[piece], counted[piece], on, hanging);
    }

    private static Bearing bearing(Contact contact) {
        Point from = contact.from();
        Point to = contact.to();
        return from.x() <= to.x() ? new Bearing(contact.a(), from, to) : new Bearing(contact.a(), to, from);
    }

    /** The name of the standing body that a fixed piece's back lies on, if it does. */
    static Optional<String> fixedTo(int piece, List<Body> bodies, List<Contact> contacts) {
        return contacts.stream()
                .filter(contact -> contact.b() == piece
                        && contact.facing().filter(Facing.BACKS::equals).isPresent()
                        && bodies.get(contact.a()).standing())
                .map(contact -> bodies.get(contact.a()).name())
                .findFirst();
    }
}
