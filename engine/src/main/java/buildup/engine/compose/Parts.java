package buildup.engine.compose;

import buildup.profiles.outline.Box;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/** The separate parts of the stack: pieces joined by a contact of some length or by an overlap, framing left out. */
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
                        if (!seen[other]
                                && bodies.get(other).inStack()
                                && joined(body, other, contacts, overlaps)) {
                            seen[other] = true;
                            open.add(other);
                        }
                    }
                }
                part.sort(Comparator.naturalOrder());
                parts.add(part);
            }
        }
        parts.sort(Comparator.comparingDouble(part -> bottom(part, bodies)));
        return parts;
    }

    private static boolean joined(int a, int b, List<Contact> contacts, List<Overlap> overlaps) {
        return contacts.stream().anyMatch(contact -> contact.between(a, b) && contact.length() > 0)
                || overlaps.stream()
                        .anyMatch(lap -> lap.a() == Math.min(a, b) && lap.b() == Math.max(a, b));
    }

    private static double bottom(List<Integer> part, List<Body> bodies) {
        return Box.around(part.stream()
                        .map(body -> bodies.get(body).outline().box())
                        .toList())
                .bottom();
    }
}
