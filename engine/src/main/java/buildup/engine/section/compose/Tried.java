package buildup.engine.section.compose;

import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How a stack stands after a change, as far as cures ask for it.
 *
 * @param overlaps where bodies fill the same place
 */
record Tried(List<Body> bodies, List<Overlap> overlaps) {
    /** Two bodies that fill the same place, the lower number first. */
    record Lapped(int a, int b) {
        static Lapped of(int one, int other) {
            return new Lapped(Math.min(one, other), Math.max(one, other));
        }
    }

    /** A section as it stands. */
    static Tried of(Section section) {
        return new Tried(section.bodies(), section.overlaps());
    }

    /** After a change; nothing when a piece has no place any more. */
    static Optional<Tried> of(Mending mending) {
        return mending.placed().map(placed -> {
            List<Body> bodies = Composer.bodies(mending.stack(), placed);
            return new Tried(bodies, Composer.overlaps(bodies));
        });
    }

    /** Pairs of bodies that fill the same place. */
    Set<Lapped> laps() {
        return overlaps.stream()
                .map(overlap -> Lapped.of(overlap.a(), overlap.b()))
                .collect(Collectors.toSet());
    }

    /** Pieces of the stack that touch nothing; a figure that takes its time. */
    Set<Integer> loose() {
        return loose(Contacts.of(bodies, overlaps));
    }

    /** The same, where the contacts are known. */
    Set<Integer> loose(List<Contact> contacts) {
        Set<Integer> met = new HashSet<>();
        contacts.forEach(contact -> met.addAll(List.of(contact.a(), contact.b())));
        overlaps.forEach(overlap -> met.addAll(List.of(overlap.a(), overlap.b())));
        return IntStream.range(0, bodies.size())
                .filter(i -> bodies.get(i).inStack() && !met.contains(i))
                .boxed()
                .collect(Collectors.toSet());
    }

    /** How high the ceiling has to be at the wall plane to just clear the stack, in. */
    double reach(Space space) {
        return bodies.stream()
                .filter(Body::inStack)
                .mapToDouble(body -> space.reach(body.outline()))
                .max()
                .orElse(0);
    }

    /** Greatest projection of the stack. */
    double face() {
        return bodies.stream()
                .filter(Body::inStack)
                .mapToDouble(body -> body.outline().box().face())
                .max()
                .orElse(0);
    }

    /** The greatest projection of a piece. */
    double faceOf(String name) {
        return bodies.stream()
                .filter(body -> body.piece() && body.name().equals(name))
                .mapToDouble(body -> body.outline().box().face())
                .max()
                .orElseThrow();
    }

    /** The piece of the stack that projects farthest, if it projects more than so much. */
    Optional<Body> foremost(double most) {
        return bodies.stream()
                .filter(Body::inStack)
                .filter(body -> body.outline().box().face() > most)
                .max(Comparator.comparingDouble(body -> body.outline().box().face()));
    }

    /** Whether the stack keeps within the room where it kept before, and stands out of it no farther where it did not. */
    boolean keepsWithin(Tried before, Space space) {
        return within(reach(space), before.reach(space), space.ceiling())
                && within(face(), before.face(), space.projection());
    }

    private static boolean within(double now, double before, OptionalDouble most) {
        return now <= Math.max(before, most.orElse(Double.POSITIVE_INFINITY)) + Tolerance.TOUCHING;
    }
}
