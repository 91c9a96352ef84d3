package buildup.engine.section.compose;

import buildup.engine.section.compose.Contact.Facing;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.NearPoints;
import buildup.profiles.outline.NearPoints.NearPoint;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Abutting;
import buildup.profiles.region.OutlinePairs;
import buildup.profiles.region.Pairs;
import buildup.profiles.region.Pairs.Pair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds where bodies touch, on the outlines as given: line on line within touching over the whole shared stretch, arc in
 * hollow with center and radius each within touching, and any other approach as a contact of length 0.
 */
final class Contacts {
    /** Steeper than this off up, a normal backs instead of carrying; exactly 45 degrees backs. */
    private static final double CARRIES_WITHIN = Math.toRadians(45) - Tolerance.SAME_DIRECTION;

    private Contacts() {}

    /** All contacts with at least one piece of the stack in them, by the order of the bodies, then from low to high. */
    static List<Contact> of(List<Body> bodies, List<Overlap> overlaps) {
        return of(bodies, overlaps, new OutlinePairs<>());
    }

    /** The contacts of two outlines by the numbers that they have in a section. */
    record Numbered(Pair pair, List<Contact> contacts) {}

    /** The same, with what was found before of outlines that do not lie in each other. */
    static List<Contact> of(List<Body> bodies, List<Overlap> overlaps, OutlinePairs<Numbered> known) {
        Set<Pair> lapped = new HashSet<>();
        overlaps.forEach(overlap -> lapped.add(new Pair(overlap.a(), overlap.b())));
        List<Contact> contacts = new ArrayList<>();
        for (Pair pair :
                Pairs.near(bodies.stream().map(body -> body.outline().box()).toList(), Tolerance.TOUCHING)) {
            add(pair, bodies, lapped.contains(pair), known, contacts);
        }
        return contacts;
    }

    /** The same of bodies that do not lie in each other, where it is known which of them are near each other. */
    static List<Contact> among(List<Body> bodies, List<Abutting.Neighbors> neighbors, OutlinePairs<Numbered> known) {
        List<Contact> contacts = new ArrayList<>();
        for (Abutting.Neighbors two : neighbors) {
            Box first = bodies.get(two.first()).outline().box();
            if (first.near(bodies.get(two.second()).outline().box(), Tolerance.TOUCHING)) {
                add(new Pair(two.first(), two.second()), bodies, false, known, contacts);
            }
        }
        return contacts;
    }

    private static void add(
            Pair pair, List<Body> bodies, boolean lapped, OutlinePairs<Numbered> known, List<Contact> out) {
        Body first = bodies.get(pair.first());
        Body second = bodies.get(pair.second());
        if (first.inStack() || second.inStack()) {
            Numbered found = lapped
                    ? numbered(pair, first, second, true)
                    : known.of(first.outline(), second.outline(), () -> numbered(pair, first, second, false));
            // the same two may have other numbers where a piece is left out
            out.addAll((found.pair.equals(pair) ? found : numbered(pair, first, second, false)).contacts);
        }
    }

    private static Numbered numbered(Pair pair, Body first, Body second, boolean overlapping) {
        return new Numbered(pair, pair(pair.first(), first.outline(), pair.second(), second.outline(), overlapping));
    }

    private static List<Contact> pair(int i, Outline a, int j, Outline b, boolean overlapping) {
        List<Stretch> stretches = new ArrayList<>();
        for (Stroke first : a.strokes()) {
            if (!first.segment().box().near(b.box(), Tolerance.TOUCHING)) {
                continue;
            }
            for (Stroke second : b.strokes()) {
                if (first.segment().box().near(second.segment().box(), Tolerance.TOUCHING)) {
                    stretch(first.segment(), second.segment()).ifPresent(stretches::add);
                }
            }
        }
        List<Stretch> merged = merged(stretches);
        List<Contact> contacts = new ArrayList<>();
        merged.forEach(stretch -> contacts.add(contact(i, j, stretch)));
        if (!overlapping) {
            for (NearPoint near : NearPoints.of(a, b)) {
                Point p = near.at();
                if (merged.stream().noneMatch(stretch -> stretch.segment.distance(p) <= 2 * Tolerance.TOUCHING)) {
                    contacts.add(new Contact(i, j, Optional.empty(), Optional.empty(), p, 0));
                }
            }
        }
        contacts.sort(Comparator.comparingDouble(
                        (Contact contact) -> rounded(contact.at().y()))
                .thenComparingDouble(contact -> rounded(contact.at().x())));
        return contacts;
    }

    private static double rounded(double coordinate) {
        return Math.rint(coordinate / Tolerance.SNAP);
    }

    /** A shared stretch on the first outline, in its walking order, and the widest air (or lap, negative) along it. */
    private record Stretch(Segment segment, double gap) {}

    private static Optional<Stretch> stretch(Segment a, Segment b) {
        if (a instanceof Line la && b instanceof Line lb) {
            return lines(la, lb);
        }
        return a instanceof Arc aa && b instanceof Arc ab ? arcs(aa, ab) : Optional.empty();
    }

    private static Optional<Stretch> lines(Line a, Line b) {
        Point way = a.direction(0);
        if (way.dot(b.direction(0)) > 0) {
            return Optional.empty();
        }
        double length = a.length();
        double start = Math.max(0, b.to().minus(a.from()).dot(way));
        double end = Math.min(length, b.from().minus(a.from()).dot(way));
        if (end - start <= Tolerance.TOUCHING) {
            return Optional.empty();
        }
        double first = air(a, b, start);
        double last = air(a, b, end);
        if (Math.abs(first) > Tolerance.TOUCHING || Math.abs(last) > Tolerance.TOUCHING) {
            return Optional.empty();
        }
        return Optional.of(
                new Stretch(a.part(start / length, end / length), Math.abs(first) > Math.abs(last) ? first : last));
    }

    /** Signed distance from line a, at {@code along}, to line b, square to a: positive away from a's wood. */
    private static double air(Line a, Line b, double along) {
        Point way = a.direction(0);
        Point at = a.from().plus(way.times(along));
        Point other = b.direction(0);
        double share = at.minus(b.from()).dot(way) / other.dot(way);
        return b.from().plus(other.times(share)).minus(at).dot(way.right());
    }

    private static Optional<Stretch> arcs(Arc a, Arc b) {
        boolean roundInHollow = a.counterclockwise() != b.counterclockwise();
        double off = a.center().distance(b.center());
        double larger = b.radius() - a.radius();
        if (!roundInHollow || off > Tolerance.TOUCHING || Math.abs(larger) > Tolerance.TOUCHING) {
            return Optional.empty();
        }
        // walking order of a: b runs the other way, so its end comes first
        double start = Math.max(0, a.atAngle(b.to().minus(b.center()).angle()));
        double end = Math.min(1, a.atAngle(b.from().minus(b.center()).angle()));
        if (startsBefore(a, b)) {
            start = 0;
        }
        if (endsAfter(a, b)) {
            end = 1;
        }
        if ((end - start) * a.length() <= Tolerance.TOUCHING) {
            return Optional.empty();
        }
        return Optional.of(new Stretch(a.part(start, end), a.counterclockwise() ? larger : -larger));
    }

    private static boolean startsBefore(Arc a, Arc b) {
        double t = b.atAngle(a.from().minus(a.center()).angle());
        return t >= 0 && t <= 1;
    }

    private static boolean endsAfter(Arc a, Arc b) {
        double t = b.atAngle(a.to().minus(a.center()).angle());
        return t >= 0 && t <= 1;
    }

    /** Stretches that go on in one line, or round one center, are one. */
    private static List<Stretch> merged(List<Stretch> stretches) {
        List<Stretch> merged = new ArrayList<>(stretches);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < merged.size() && !changed; i++) {
                for (int j = 0; j < merged.size() && !changed; j++) {
                    Optional<Stretch> joined = i == j ? Optional.empty() : joined(merged.get(i), merged.get(j));
                    if (joined.isPresent()) {
                        merged.set(i, joined.get());
                        merged.remove(j);
                        changed = true;
                    }
                }
            }
        }
        return merged;
    }

    private static Optional<Stretch> joined(Stretch first, Stretch second) {
        if (first.segment instanceof Line a
                && second.segment instanceof Line b
                && a.to().near(b.from(), Tolerance.TOUCHING)
                && Math.abs(a.direction(0).cross(b.direction(0))) <= Tolerance.SAME_DIRECTION) {
            return Optional.of(new Stretch(new Line(a.from(), b.to()), wider(first, second)));
        }
        if (first.segment instanceof Arc a
                && second.segment instanceof Arc b
                && a.to().near(b.from(), Tolerance.TOUCHING)
                && a.counterclockwise() == b.counterclockwise()
                && a.center().near(b.center(), Tolerance.SNAP)
                && Math.abs(a.radius() - b.radius()) <= Tolerance.SNAP) {
            Arc whole = new Arc(a.from(), b.to(), a.center(), a.counterclockwise());
            return Optional.of(new Stretch(whole, wider(first, second)));
        }
        return Optional.empty();
    }

    private static double wider(Stretch first, Stretch second) {
        return Math.abs(first.gap) >= Math.abs(second.gap) ? first.gap : second.gap;
    }

    /** Puts the pair in the order in which the first carries, or else backs, the second. */
    private static Contact contact(int i, int j, Stretch stretch) {
        Segment along = stretch.segment;
        Point chord = along.to().minus(along.from()).unit();
        Point normal = chord.right();
        boolean swap = !carries(normal) && (carries(normal.times(-1)) || !backs(normal));
        Point facing = swap ? normal.times(-1) : normal;
        Segment stored = swap ? along.reversed() : along;
        return new Contact(
                swap ? j : i,
                swap ? i : j,
                Optional.of(carries(facing) ? Facing.CARRIES : Facing.BACKS),
                Optional.of(stored),
                along.at(0.5),
                stretch.gap);
    }

    private static boolean carries(Point normal) {
        return Math.abs(Math.atan2(normal.x(), normal.y())) < CARRIES_WITHIN;
    }

    private static boolean backs(Point normal) {
        return Math.abs(normal.angle()) <= Math.PI / 2 - CARRIES_WITHIN;
    }
}
