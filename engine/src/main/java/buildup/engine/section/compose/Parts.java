package buildup.engine.section.compose;

import buildup.profiles.outline.Box;
import buildup.profiles.region.Bound;
import buildup.profiles.region.Groups;
import buildup.profiles.region.Part;
import buildup.profiles.region.WeldedOutlines;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The separate parts of the stack, framing left out: pieces joined by a contact of some length, by an overlap, or where a
 * round lies nearer than touching to what it is tangent to.
 */
final class Parts {
    private Parts() {}

    /**
     * The bodies of each part in order of putting up; the lowest part first.
     *
     * @param welded whether what only comes near each other may have been made to meet
     */
    static List<List<Integer>> of(List<Body> bodies, List<Contact> contacts, List<Overlap> overlaps, boolean welded) {
        Groups joined = new Groups(bodies.size());
        for (Contact contact : contacts) {
            if (contact.stretch().isPresent() && inStack(bodies, contact.a(), contact.b())) {
                joined.join(contact.a(), contact.b());
            }
        }
        for (Overlap lap : overlaps) {
            if (inStack(bodies, lap.a(), lap.b())) {
                joined.join(lap.a(), lap.b());
            }
        }
        boolean near = welded
                && contacts.stream()
                        .anyMatch(contact -> contact.length() <= 0
                                && inStack(bodies, contact.a(), contact.b())
                                && !joined.together(contact.a(), contact.b()));
        if (near) {
            joinWelded(bodies, joined);
        }
        List<List<Integer>> parts = new ArrayList<>();
        for (List<Integer> part : joined.all()) {
            if (bodies.get(part.get(0)).inStack()) {
                parts.add(part);
            }
        }
        if (parts.size() > 1) {
            parts.sort(Comparator.comparingDouble(part -> bottom(part, bodies)));
        }
        return parts;
    }

    private static boolean inStack(List<Body> bodies, int a, int b) {
        return bodies.get(a).inStack() && bodies.get(b).inStack();
    }

    /** Pieces that touch at a corner stay apart; those on one ring of the stack's own union do not. */
    private static void joinWelded(List<Body> bodies, Groups joined) {
        List<Integer> own = IntStream.range(0, bodies.size())
                .filter(body -> bodies.get(body).inStack())
                .boxed()
                .toList();
        WeldedOutlines stack = WeldedOutlines.of(
                own.stream().map(body -> bodies.get(body).outline()).toList());
        for (Part welded : stack.union().parts()) {
            int first = own.get(welded.outer().bounds().get(0).outline());
            for (Bound bound : welded.outer().bounds()) {
                joined.join(first, own.get(bound.outline()));
            }
        }
    }

    private static double bottom(List<Integer> part, List<Body> bodies) {
        return Box.around(part.stream()
                        .map(body -> bodies.get(body).outline().box())
                        .toList())
                .bottom();
    }
}
