package buildup.engine.hold.season;

import buildup.engine.hold.season.Effect.Place;
import buildup.engine.look.joint.OpenJoint;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What movement does in the plane of the section, in one season. */
final class Effects {
    /** A level contact carries: degrees. */
    private static final double LEVEL = 5;

    private final Section section;
    private final int season;
    private final List<Moved> moved;
    private final Map<String, Effect> found = new LinkedHashMap<>();

    private Effects(Section section, int season, List<Moved> moved) {
        this.section = section;
        this.season = season;
        this.moved = moved;
    }

    /** One for each place, named once. */
    static List<Effect> of(Section section, List<OpenJoint> gaps, int season, List<Moved> moved) {
        Effects effects = new Effects(section, season, moved);
        section.reveals().forEach(effects::reveal);
        for (Contact contact : section.contacts()) {
            if (contact.stretch().isPresent()
                    && (section.body(contact.a()).inStack()
                            || section.body(contact.b()).inStack())) {
                effects.joint(contact);
                effects.stretch(contact);
            }
        }
        gaps.forEach(effects::gap);
        effects.room();
        return List.copyOf(effects.found.values());
    }

    private Point step(int body, Point place) {
        return moved.get(body).at(place);
    }

    /** Of several places of one name, that which changes most. */
    private void add(Place place, String name, int piece, int other, double amount, OptionalDouble left, Where where) {
        Effect effect = new Effect(season, place, name, piece, other, amount, left, where.seen, where.at, false);
        found.merge(name, effect, (one, two) -> Math.abs(two.amount()) > Math.abs(one.amount()) ? two : one);
    }

    private record Where(boolean seen, Point at) {}

    private void reveal(Reveal reveal) {
        double more = step(section.endOf(reveal), reveal.to())
                .minus(step(reveal.over(), reveal.at()))
                .dot(reveal.way());
        add(
                Place.REVEAL,
                "reveal of " + section.name(reveal.piece()) + " over " + section.name(reveal.over()),
                reveal.piece(),
                reveal.over(),
                more,
                OptionalDouble.of(reveal.amount() + more),
                new Where(true, reveal.at()));
    }

    /** Air between two faces that touch as built, at the end that is seen, else where it is widest. */
    private void joint(Contact contact) {
        Point normal = Holders.normal(contact);
        double most = 0;
        Point place = contact.at();
        boolean seen = false;
        for (Point end : List.of(contact.from(), contact.to())) {
            double air = step(contact.b(), end).minus(step(contact.a(), end)).dot(normal);
            boolean inSight = onTheWalk(contact, end);
            if (inSight == seen ? Math.abs(air) >= Math.abs(most) : inSight) {
                most = air;
                place = end;
                seen = inSight;
            }
        }
        int piece = later(contact);
        add(
                Place.JOINT,
                "joint of " + section.name(piece) + " with " + section.name(contact.other(piece)),
                piece,
                contact.other(piece),
                most,
                OptionalDouble.empty(),
                new Where(seen, place));
    }

    private int later(Contact contact) {
        boolean first = section.body(contact.a()).inStack()
                && (contact.a() > contact.b() || !section.body(contact.b()).inStack());
        return first ? contact.a() : contact.b();
    }

    private boolean onTheWalk(Contact contact, Point end) {
        List<Member> walk = section.members();
        for (int i = 0; i + 1 < walk.size(); i++) {
            Member one = walk.get(i);
            Member next = walk.get(i + 1);
            if (one.part() == next.part()
                    && contact.between(one.body(), next.body())
                    && one.to().near(end, 2 * Tolerance.TOUCHING)) {
                return true;
            }
        }
        return false;
    }

    /** How far the two still lie on one another: each end of the stretch goes with the body that ends there. */
    private void stretch(Contact contact) {
        Point along = contact.to().minus(contact.from()).unit();
        double longer = end(contact, contact.to(), along) + end(contact, contact.from(), along.times(-1));
        boolean carries = contact.facing().orElseThrow() == Contact.Facing.CARRIES;
        if (carries && contact.slope() > LEVEL) {
            return;
        }
        if (!carries && section.body(contact.a()).standing()) {
            return;
        }
        // a bears b; of a lap the one before the other laps it
        add(
                carries ? Place.BEARING : Place.LAP,
                (carries ? "bearing of " : "lap of ")
                        + section.name(contact.b())
                        + (carries ? " on " : " over ")
                        + section.name(contact.a()),
                contact.b(),
                contact.a(),
                longer,
                OptionalDouble.of(contact.length() + longer),
                new Where(false, contact.at()));
    }

    private double end(Contact contact, Point end, Point outward) {
        double least = Double.POSITIVE_INFINITY;
        for (int body : List.of(contact.a(), contact.b())) {
            if (section.hasCorner(body, end)) {
                least = Math.min(least, step(body, end).dot(outward));
            }
        }
        return Double.isFinite(least) ? least : 0;
    }

    private void gap(OpenJoint gap) {
        Line throat = gap.throats().get(0);
        double more = step(gap.other(), throat.to())
                .minus(step(gap.piece(), throat.from()))
                .dot(throat.direction(0));
        add(
                Place.GAP,
                "gap between " + section.name(gap.piece()) + " and " + section.name(gap.other()),
                gap.piece(),
                gap.other(),
                more,
                OptionalDouble.of(gap.width() + more),
                new Where(gap.seen(), gap.at()));
    }

    /** How high a ceiling of this slope has to be at the wall plane to clear a body that has moved, in. */
    private double reach(int body, Moved how, double slope) {
        return how.outline(section.body(body).outline(), 1).stream()
                .mapToDouble(line -> line.from().y() - slope * line.from().x())
                .max()
                .orElseThrow();
    }

    /** What is left under the ceiling by the piece that comes nearest to it. */
    private void room() {
        Space space = section.stack().space();
        OptionalDouble ceiling = space.ceiling();
        if (ceiling.isEmpty()) {
            return;
        }
        int highest = -1;
        double built = Double.NEGATIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).inStack()) {
                built = Math.max(built, reach(i, Moved.NOT, space.slope()));
                double own = reach(i, moved.get(i), space.slope());
                if (own > top) {
                    top = own;
                    highest = i;
                }
            }
        }
        add(
                Place.ROOM,
                "room under the ceiling",
                highest,
                highest,
                built - top,
                OptionalDouble.of(ceiling.getAsDouble() - top),
                new Where(true, new Point(0, top)));
    }
}
