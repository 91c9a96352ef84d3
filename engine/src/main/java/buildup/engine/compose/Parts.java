package buildup.engine.compose;

import buildup.profiles.outline.Box;
import buildup.profiles.region.Joining;
import buildup.profiles.region.Part;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The separate parts of the stack, framing left out: pieces joined by a contact of some length, by an overlap, or where a
 * round lies nearer than touching to what it is tangent to.
 */
final class Parts {
    private Parts() {}

    /** The bodies of each part in order of putting up; the lowest part first. */
    static List<List<Integer>> of(List<Body> bodies, List<Contact> contacts, List<Overlap> overlaps) {
        List<List<Integer>> parts = new ArrayList<>();
        boolean[] seen = new boolean[bodies.size()];
        for (int i = 0; i < bodies.size(); i++) {
            if (bodies.get(i).inStack() && !seen[i]) {
                List<Integer> part = new ArrayList<>();
                Deque<Integer> open = new ArrayDeque<>(List.of(i));
                seen[i] = true;
                while (!open.isEmpty()) {
                    int body = open.pop();
                    part.add(body);
                    for (int other = 0; other < bodies.size(); other++) {
                        if (!seen[other] && bodies.get(other).inStack() && joined(body, other, contacts, overlaps)) {
                            seen[other] = true;
                            open.add(other);
                        }
                    }
                }
                part.sort(Comparator.naturalOrder());
                parts.add(part);
            }
        }
        if (contacts.stream().anyMatch(contact -> contact.length() <= 0 && apart(contact, parts))) {
            mergeWelded(bodies, parts);
        }
        parts.sort(Comparator.comparingDouble(part -> bottom(part, bodies)));
        return parts;
    }

    private static boolean apart(Contact contact, List<List<Integer>> parts) {
        long holding = parts.stream()
                .filter(part -> part.contains(contact.a()) || part.contains(contact.b()))
                .count();
        return holding > 1;
    }

    /** Pieces that touch at a corner stay apart; those on one ring of the stack's own union do not. */
    private static void mergeWelded(List<Body> bodies, List<List<Integer>> parts) {
        List<Integer> own = IntStream.range(0, bodies.size())
                .filter(body -> bodies.get(body).inStack())
                .boxed()
                .toList();
        Joining stack =
                Joining.of(own.stream().map(body -> bodies.get(body).outline()).toList());
        for (Part welded : stack.union().parts()) {
            List<List<Integer>> one = parts.stream()
                    .filter(part ->
                            part.stream().anyMatch(body -> welded.outer().touches(own.indexOf(body))))
                    .toList();
            if (one.size() > 1) {
                parts.removeAll(one);
                parts.add(one.stream().flatMap(List::stream).sorted().toList());
            }
        }
    }

    private static boolean joined(int a, int b, List<Contact> contacts, List<Overlap> overlaps) {
        return contacts.stream().anyMatch(contact -> contact.between(a, b) && contact.length() > 0)
                || overlaps.stream().anyMatch(lap -> lap.a() == Math.min(a, b) && lap.b() == Math.max(a, b));
    }

    private static double bottom(List<Integer> part, List<Body> bodies) {
        return Box.around(part.stream()
                        .map(body -> bodies.get(body).outline().box())
                        .toList())
                .bottom();
    }
}
