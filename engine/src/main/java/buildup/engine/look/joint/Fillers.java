package buildup.engine.look.joint;

import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;

/**
 * Finds what fills the space between two bodies that do not meet: a strip, or several on each other, that lies on the
 * face of the one and on the face of the other. However far it is set back or stands out, it leaves a groove and no gap.
 * A board behind both, which touches their backs, fills nothing.
 */
final class Fillers {
    /** How far off square to a throat a face may lie that is one of its two ends: the cosine of a degree. */
    private static final double SQUARE = Math.cos(Math.toRadians(1));

    private final Section section;

    Fillers(Section section) {
        this.section = section;
    }

    /**
     * Whether pieces in a row bridge the space across which a throat leads.
     *
     * @param throat from a face of the first body to a face of the second
     */
    boolean fill(int from, int to, Line throat) {
        Set<Integer> reached = new HashSet<>();
        Deque<Integer> next = new ArrayDeque<>();
        for (Contact contact : section.contacts()) {
            if (contact.of(from) && across(contact, from, throat) && isAt(contact, throat.from(), throat)) {
                add(contact.other(from), reached, next);
            }
        }
        while (!next.isEmpty()) {
            int filler = next.remove();
            for (Contact contact : section.contacts()) {
                if (contact.of(filler) && across(contact, filler, throat)) {
                    int other = contact.other(filler);
                    if (other == to && isAt(contact, throat.to(), throat)) {
                        return true;
                    }
                    add(other, reached, next);
                }
            }
        }
        return false;
    }

    private void add(int body, Set<Integer> reached, Deque<Integer> next) {
        // the wall, the floor and the ceiling end a room, they fill nothing in it
        if (section.body(body).placed().isPresent() && reached.add(body)) {
            next.add(body);
        }
    }

    /** Whether a face of some length leads out of a body the way that the throat goes. */
    private static boolean across(Contact contact, int body, Line throat) {
        Point along = contact.to().minus(contact.from());
        if (contact.length() <= Tolerance.TOUCHING || along.length() <= Tolerance.TOUCHING) {
            return false;
        }
        Point out = along.unit().right().times(contact.a() == body ? 1 : -1);
        return out.dot(throat.direction(0)) >= SQUARE;
    }

    /** Whether a face lies where the throat has its end. */
    private static boolean isAt(Contact contact, Point end, Line throat) {
        Point way = throat.direction(0);
        return Math.abs(contact.from().minus(end).dot(way)) <= Tolerance.TOUCHING
                && Math.abs(contact.to().minus(end).dot(way)) <= Tolerance.TOUCHING;
    }
}
