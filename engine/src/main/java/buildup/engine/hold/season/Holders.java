package buildup.engine.hold.season;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.season.Held.Hold;
import buildup.engine.hold.season.Held.How;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Scalar;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Finds from where each piece moves: its nails, else what it is said to be fixed to, else grooves, else framing or solid wall flat
 * behind it, else what it lies against; grooves hold it square to themselves alone.
 */
final class Holders {
    /** Two faces stand against each other when their normals are opposite within this, as a cosine. */
    private static final double OPPOSITE = -0.99;

    private final Section section;
    private final List<Fixed> fixed;

    Holders(Section section, List<Fixed> fixed) {
        this.section = section;
        this.fixed = fixed;
    }

    /** One for each piece of the stack, framing left out. */
    List<Held> all() {
        return IntStream.range(0, section.bodies().size())
                .filter(body -> section.body(body).inStack())
                .mapToObj(this::held)
                .toList();
    }

    private Held held(int body) {
        List<Hold> nails = nails(body);
        if (!nails.isEmpty()) {
            return new Held(body, How.NAILED, nails, nails);
        }
        Optional<Hold> said = said(body);
        if (said.isPresent()) {
            return new Held(body, How.SAID, List.of(said.get()), List.of(said.get()));
        }
        Optional<Held> floating = floating(body);
        if (floating.isPresent()) {
            return floating.get();
        }
        Optional<Hold> flat = longest(
                body,
                contact -> section.standing(body).counted()
                        && contact.facing()
                                .filter(facing -> facing == Contact.Facing.BACKS)
                                .isPresent()
                        && contact.b() == body
                        && section.body(contact.a()).standing());
        return flat.map(hold -> new Held(body, How.COUNTED, List.of(hold), List.of(hold)))
                .orElseGet(() -> resting(body));
    }

    /** Where each of its rows of nails goes into what holds it. */
    private List<Hold> nails(int body) {
        List<Hold> holds = new ArrayList<>();
        for (Fixed nail : fixed) {
            if (nail.piece() == body && !nail.beyond().isEmpty()) {
                holds.add(hold(nail));
            }
        }
        return holds;
    }

    /** The place at which a nail enters the first body beyond its piece. */
    static Hold hold(Fixed nail) {
        return new Hold(nail.beyond().get(0).body(), nail.drive().at(nail.spent()));
    }

    private Optional<Hold> said(int body) {
        Optional<String> name = section.body(body)
                .placed()
                .flatMap(placed -> placed.piece().fixed())
                .map(Scalar::text);
        if (name.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt to = section.number(name.get());
        return to.isEmpty()
                ? Optional.empty()
                : longest(body, contact -> contact.of(to.getAsInt()))
                        .or(() -> Optional.of(new Hold(to.getAsInt(), middle(body))));
    }

    private Point middle(int body) {
        return section.body(body).outline().centroid();
    }

    private Optional<Hold> longest(int body, Predicate<Contact> which) {
        return section.contacts().stream()
                .filter(contact -> contact.of(body) && which.test(contact))
                .max(Comparator.comparingDouble(Contact::length))
                .map(contact -> new Hold(contact.other(body), contact.at()));
    }

    /** In grooves a piece stays in their middle, and lies on whatever is below it along them. */
    private Optional<Held> floating(int body) {
        List<Contact> own = before(body);
        List<Contact> grooves =
                own.stream().filter(contact -> inGroove(contact, own)).toList();
        if (grooves.isEmpty()) {
            return Optional.empty();
        }
        List<Hold> out = all(body, grooves, true);
        List<Hold> up = all(body, grooves, false);
        return Optional.of(new Held(body, How.FLOATS, out, up.isEmpty() ? carried(body, own) : up));
    }

    /** Faces of a piece against what stood before it. */
    private List<Contact> before(int body) {
        return section.contacts().stream()
                .filter(contact -> contact.of(body) && contact.facing().isPresent())
                .filter(contact -> section.body(contact.other(body)).standing() || contact.other(body) < body)
                .toList();
    }

    /** Held by nothing but what it lies against: what stood before it keeps it square to the face that they share. */
    private Held resting(int body) {
        List<Contact> own = before(body);
        if (own.isEmpty()) {
            return new Held(body, How.FREE, List.of(), List.of());
        }
        List<Hold> out = holds(body, own, true);
        List<Hold> up = holds(body, own, false);
        // glued or nailed somewhere on the face that it lies against: what holds it one way holds it the other way too
        return new Held(body, How.RESTS, out.isEmpty() ? up : out, up.isEmpty() ? out : up);
    }

    /** The longest of the contacts across a direction. */
    private static List<Hold> holds(int body, List<Contact> contacts, boolean out) {
        return contacts.stream()
                .filter(contact -> across(contact, out))
                .max(Comparator.comparingDouble(Contact::length))
                .map(contact -> List.of(new Hold(contact.other(body), contact.at())))
                .orElse(List.of());
    }

    /** All of the contacts across a direction: between them the piece stays in the middle. */
    private static List<Hold> all(int body, List<Contact> contacts, boolean out) {
        return contacts.stream()
                .filter(contact -> across(contact, out))
                .map(contact -> new Hold(contact.other(body), contact.at()))
                .toList();
    }

    private static boolean across(Contact contact, boolean out) {
        return out == Math.abs(normal(contact).x()) > Math.abs(normal(contact).y());
    }

    private static List<Hold> carried(int body, List<Contact> contacts) {
        return contacts.stream()
                .filter(contact -> contact.b() == body && contact.facing().orElseThrow() == Contact.Facing.CARRIES)
                .max(Comparator.comparingDouble(Contact::length))
                .map(contact -> List.of(new Hold(contact.a(), contact.at())))
                .orElse(List.of());
    }

    /** Whether the same body lies against the other side of the piece too, across from this contact. */
    private static boolean inGroove(Contact contact, List<Contact> all) {
        Point normal = normal(contact);
        return all.stream()
                .anyMatch(other -> !other.equals(contact)
                        && same(contact, other)
                        && areOpposite(outward(contact), outward(other))
                        && Math.abs(other.at().minus(contact.at()).dot(normal.left()))
                                < (contact.length() + other.length()) / 2 - Tolerance.TOUCHING);
    }

    private static boolean same(Contact one, Contact two) {
        return one.between(two.a(), two.b());
    }

    /** From the body of lesser number into the other. */
    private static Point outward(Contact contact) {
        return contact.a() < contact.b() ? normal(contact) : normal(contact).times(-1);
    }

    /** Whether two faces stand against each other, by their normals. */
    static boolean areOpposite(Point one, Point two) {
        return one.dot(two) < OPPOSITE;
    }

    /** From a into b, square to the stretch in its middle. */
    static Point normal(Contact contact) {
        return contact.stretch().map(stretch -> stretch.direction(0.5).right()).orElse(new Point(1, 0));
    }
}
