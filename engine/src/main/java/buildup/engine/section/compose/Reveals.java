package buildup.engine.section.compose;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the reveals: at each change of piece on the walk, the contact that ends there and the face that runs on. */
final class Reveals {
    private Reveals() {}

    static List<Reveal> of(List<Body> bodies, List<Member> members, List<Contact> contacts) {
        List<Reveal> reveals = new ArrayList<>();
        for (int i = 0; i + 1 < members.size(); i++) {
            Member before = members.get(i);
            Member after = members.get(i + 1);
            if (before.part() == after.part() && before.body() != after.body()) {
                reveal(bodies, members, i, contacts).ifPresent(reveals::add);
            }
        }
        return reveals;
    }

    /** The reveal at the joint of the i-th member with the next. */
    private static Optional<Reveal> reveal(List<Body> bodies, List<Member> members, int i, List<Contact> contacts) {
        Member before = members.get(i);
        Member after = members.get(i + 1);
        Point joint = after.from();
        double step = bodies.get(after.body()).outline().box().face()
                - bodies.get(before.body()).outline().box().face();
        for (Contact contact : contacts) {
            if (!contact.between(before.body(), after.body())
                    || !(contact.stretch().orElse(null) instanceof Line line)
                    || !before.to().near(joint, 2 * Tolerance.TOUCHING)) {
                continue;
            }
            Optional<Point> outward = outward(line, joint);
            if (outward.isEmpty()) {
                continue;
            }
            Point way = outward.get();
            Reveal.Along along = along(way);
            Optional<Line> back = run(walked(members, i, -1), way);
            if (back.isPresent()) {
                Line run = back.get();
                return Optional.of(new Reveal(before.body(), after.body(), run.length(), along, joint, run.to(), step));
            }
            Optional<Line> on = run(walked(members, i + 1, 1), way);
            if (on.isPresent()) {
                Line run = on.get();
                return Optional.of(new Reveal(after.body(), before.body(), run.length(), along, joint, run.to(), step));
            }
            return Optional.of(new Reveal(before.body(), after.body(), 0, along, joint, joint, step));
        }
        return Optional.empty();
    }

    /** The direction of a contact as it comes out at the joint; nothing when the joint is not one of its ends. */
    private static Optional<Point> outward(Line contact, Point joint) {
        if (contact.to().near(joint, 2 * Tolerance.TOUCHING)) {
            return Optional.of(contact.direction(0));
        }
        return contact.from().near(joint, 2 * Tolerance.TOUCHING)
                ? Optional.of(contact.direction(0).times(-1))
                : Optional.empty();
    }

    /** The segments of one piece from a joint on, walked onward (1) or back (-1). */
    private static List<Segment> walked(List<Member> members, int first, int way) {
        List<Segment> segments = new ArrayList<>();
        int body = members.get(first).body();
        for (int i = first; i >= 0 && i < members.size() && members.get(i).body() == body; i += way) {
            List<Segment> own = members.get(i).segments();
            for (int k = 0; k < own.size(); k++) {
                segments.add(way > 0 ? own.get(k) : own.get(own.size() - 1 - k).reversed());
            }
        }
        return segments;
    }

    /** The straight run that begins at the joint in that direction; a vertex on it is no corner. */
    private static Optional<Line> run(List<Segment> segments, Point way) {
        if (!runsOn(segments.get(0), way)) {
            return Optional.empty();
        }
        Line run = (Line) segments.get(0);
        for (Segment next : segments.subList(1, segments.size())) {
            boolean straightOn = next instanceof Line line
                    && run.to().near(line.from(), Tolerance.SNAP)
                    && run.direction(0).dot(line.direction(0)) > 0
                    && Math.abs(run.direction(0).cross(line.direction(0))) <= Tolerance.SAME_DIRECTION;
            if (!straightOn) {
                break;
            }
            run = new Line(run.from(), next.to());
        }
        return Optional.of(run);
    }

    private static boolean runsOn(Segment face, Point way) {
        return face instanceof Line line
                && line.direction(0).dot(way) > 0
                && Math.abs(line.direction(0).cross(way)) <= straightEnough(line);
    }

    /** As for contacts, two lines are one when they part by no more than touching; never more than a degree. */
    private static double straightEnough(Line face) {
        return Math.min(Math.toRadians(1), Math.max(Tolerance.SAME_DIRECTION, Tolerance.TOUCHING / face.length()));
    }

    private static Reveal.Along along(Point way) {
        if (Math.abs(way.y()) <= Tolerance.SAME_DIRECTION) {
            return Reveal.Along.LEVEL;
        }
        return Math.abs(way.x()) <= Tolerance.SAME_DIRECTION ? Reveal.Along.UPRIGHT : Reveal.Along.SLOPED;
    }
}
