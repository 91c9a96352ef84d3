package buildup.engine.judge.proportion;

import buildup.catalog.book.EntablaturePart;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds architrave, frieze and cornice in a stack. Named parts are taken as named. Else the frieze is the piece of trim
 * with the tallest upright face that something above projects beyond, what is seen before it on the way up is the
 * architrave, and what is seen after it is the cornice: a rule of our own. What is planted on the frieze below that face
 * is of the frieze; what hangs before it, as a fascia from its soffit, is not. A part begins where it is first seen on the
 * way up; a bed molding that covers the top of the frieze counts to the cornice.
 */
final class PartFinder {
    /** A face lower than this share of the stack is no frieze. */
    private static final double LEAST_FRIEZE = 0.15;

    private final Section section;
    private final Map<Integer, List<Member>> seen = new LinkedHashMap<>();

    PartFinder(Section section) {
        this.section = section;
        for (Member member : section.members()) {
            if (section.body(member.body()).inStack() && facesTheRoom(member)) {
                seen.computeIfAbsent(member.body(), body -> new ArrayList<>()).add(member);
            }
        }
    }

    /** Whether it has a height on the side of the room: on the walk the room lies on the right, so that it goes up. */
    static boolean facesTheRoom(Member member) {
        return member.to().y() > member.from().y() + Tolerance.TOUCHING;
    }

    /** The parts that there are, from below; none when nothing of the stack is seen. */
    List<PartShare> parts(Map<EntablaturePart, List<String>> named) {
        Map<EntablaturePart, List<Integer>> bodies = named.isEmpty() ? read() : named(named);
        List<PartShare> parts = new ArrayList<>();
        for (Map.Entry<EntablaturePart, List<Integer>> entry : bodies.entrySet()) {
            List<Member> members = members(entry.getValue());
            if (!members.isEmpty()) {
                parts.add(new PartShare(
                        entry.getKey(),
                        entry.getValue(),
                        least(members),
                        members.stream()
                                .mapToDouble(member -> member.box().top())
                                .max()
                                .orElseThrow(),
                        members.stream().mapToDouble(Member::projection).max().orElseThrow(),
                        0));
            }
        }
        return shared(parts);
    }

    /** All of the trim as one part, a cornice; none when nothing of it is seen. */
    List<PartShare> whole() {
        return parts(Map.of(
                EntablaturePart.CORNICE,
                seen.keySet().stream().map(section::name).toList()));
    }

    private static double least(List<Member> members) {
        return members.stream()
                .mapToDouble(member -> member.box().bottom())
                .min()
                .orElseThrow();
    }

    private List<Member> members(List<Integer> bodies) {
        return bodies.stream()
                .flatMap(body -> seen.getOrDefault(body, List.of()).stream())
                .toList();
    }

    /** Each part ends where the next begins. */
    private static List<PartShare> shared(List<PartShare> parts) {
        List<PartShare> ended = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            PartShare part = parts.get(i);
            double top = i + 1 < parts.size() ? parts.get(i + 1).bottom() : part.top();
            ended.add(new PartShare(part.part(), part.bodies(), part.bottom(), top, part.face(), 0));
        }
        double whole = ended.stream().mapToDouble(PartShare::height).sum();
        return ended.stream()
                .map(part -> new PartShare(
                        part.part(),
                        part.bodies(),
                        part.bottom(),
                        part.top(),
                        part.face(),
                        whole > 0 ? part.height() / whole : 0))
                .toList();
    }

    private Map<EntablaturePart, List<Integer>> named(Map<EntablaturePart, List<String>> named) {
        Map<EntablaturePart, List<Integer>> bodies = new EnumMap<>(EntablaturePart.class);
        named.forEach((part, names) -> bodies.put(
                part,
                names.stream()
                        .flatMap(name -> section.number(name).stream().boxed())
                        .toList()));
        return bodies;
    }

    private Map<EntablaturePart, List<Integer>> read() {
        List<Integer> inOrder =
                seen.keySet().stream().filter(body -> section.body(body).trim()).toList();
        Optional<Integer> frieze = inOrder.stream()
                .filter(body -> isOverhung(body, inOrder))
                .filter(body -> face(body) > LEAST_FRIEZE * section.totals().height())
                .max(Comparator.comparingDouble(this::face));
        Map<EntablaturePart, List<Integer>> bodies = new EnumMap<>(EntablaturePart.class);
        int at = frieze.map(inOrder::indexOf).orElse(-1);
        if (at > 0) {
            bodies.put(EntablaturePart.ARCHITRAVE, inOrder.subList(0, at));
        }
        int cornice = at + 1;
        if (frieze.isPresent()) {
            // a neck that is planted on the foot of the frieze does not end it
            double top = tallest(frieze.get()).map(face -> face.box().top()).orElse(0.0);
            while (cornice < inOrder.size()
                    && isPlanted(inOrder.get(cornice), inOrder.subList(at, cornice))
                    && least(members(List.of(inOrder.get(cornice)))) < top - Tolerance.TOUCHING) {
                cornice++;
            }
            bodies.put(EntablaturePart.FRIEZE, inOrder.subList(at, cornice));
        }
        if (cornice < inOrder.size()) {
            bodies.put(EntablaturePart.CORNICE, inOrder.subList(cornice, inOrder.size()));
        }
        return bodies;
    }

    /** Whether it lies against one of some bodies: what hangs before the frieze from a soffit is not planted on it. */
    private boolean isPlanted(int body, List<Integer> on) {
        return section.contacts().stream()
                .anyMatch(contact -> contact.of(body) && contact.length() > 0 && on.contains(contact.other(body)));
    }

    private boolean isOverhung(int body, List<Integer> inOrder) {
        double own = members(List.of(body)).stream()
                .mapToDouble(Member::projection)
                .max()
                .orElse(0);
        return inOrder.subList(inOrder.indexOf(body) + 1, inOrder.size()).stream()
                .flatMap(above -> seen.getOrDefault(above, List.of()).stream())
                .anyMatch(member -> member.projection() > own + Tolerance.TOUCHING);
    }

    /** How high the tallest upright face is that is seen of a piece, in. */
    private double face(int body) {
        return tallest(body).map(face -> face.box().height()).orElse(0.0);
    }

    private Optional<Segment> tallest(int body) {
        return seen.getOrDefault(body, List.of()).stream()
                .<Segment>flatMap(member -> member.segments().stream())
                .filter(segment -> segment instanceof Line line
                        && Math.abs(line.to().x() - line.from().x()) < Tolerance.TOUCHING)
                .max(Comparator.comparingDouble(segment -> segment.box().height()));
    }

    /**
     * A piece of a lower part that is first seen after one of a higher part, if there is one: then the parts overlap.
     *
     * @return its number, and that of the piece that is seen before it
     */
    Optional<int[]> overlap(Map<EntablaturePart, List<String>> named) {
        Map<EntablaturePart, List<Integer>> bodies = named(named);
        List<Integer> inOrder = List.copyOf(seen.keySet());
        for (EntablaturePart lower : bodies.keySet()) {
            for (EntablaturePart upper : bodies.keySet()) {
                for (int low :
                        lower.compareTo(upper) < 0 ? bodies.getOrDefault(lower, List.of()) : List.<Integer>of()) {
                    for (int high : bodies.getOrDefault(upper, List.of())) {
                        if (inOrder.contains(low)
                                && inOrder.contains(high)
                                && inOrder.indexOf(low) > inOrder.indexOf(high)) {
                            return Optional.of(new int[] {low, high});
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }
}
