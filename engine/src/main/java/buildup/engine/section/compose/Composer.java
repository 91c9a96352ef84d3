package buildup.engine.section.compose;

import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.Surroundings;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import buildup.profiles.region.Cavity;
import buildup.profiles.region.Covered;
import buildup.profiles.region.Lap;
import buildup.profiles.region.OutlineLaps;
import buildup.profiles.region.Part;
import buildup.profiles.region.Ring;
import buildup.profiles.region.WeldedOutlines;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Composes placed pieces into a section. */
public final class Composer {
    private final Stack stack;
    private final List<Body> bodies;
    private final int pieces;
    private final WeldedOutlines joining;

    private Composer(Stack stack, List<Placed> placed) {
        this.stack = stack;
        this.pieces = placed.size();
        this.bodies = bodies(stack, placed);
        // the room stands before any piece: where they nearly touch, the piece gives way
        this.joining = WeldedOutlines.of(IntStream.range(0, bodies.size())
                .mapToObj(i -> bodies.get(bodyOf(i)).outline())
                .toList());
    }

    /** The pieces in the order of the stack, then wall, floor and ceiling where they stand. */
    static List<Body> bodies(Stack stack, List<Placed> placed) {
        List<Body> all = new ArrayList<>();
        placed.forEach(one -> all.add(new Body(one.name(), one.outline(), Optional.of(one))));
        Surroundings room = Surroundings.of(Room.of(stack, all).around(), reach(stack, placed));
        room.wall().ifPresent(wall -> all.add(new Body("wall", wall, Optional.empty())));
        room.floor().ifPresent(floor -> all.add(new Body("floor", floor, Optional.empty())));
        room.ceiling().ifPresent(ceiling -> all.add(new Body("ceiling", ceiling, Optional.empty())));
        return List.copyOf(all);
    }

    /** Body number of the i-th outline joined: the room first, then the pieces. */
    private int bodyOf(int joined) {
        int room = bodies.size() - pieces;
        return joined < room ? pieces + joined : joined - room;
    }

    /** How far the room must run on to be without end for this stack, in: a power of two, so that it adds exactly. */
    private static double reach(Stack stack, List<Placed> placed) {
        double most = 16;
        for (Placed one : placed) {
            most = Math.max(most, farthest(one.outline().box()));
        }
        most = Math.max(most, Math.abs(stack.space().floor().orElse(0)));
        most = Math.max(most, Math.abs(stack.space().ceiling().orElse(0)));
        most = Math.max(most, Math.abs(stack.space().wall().from().orElse(0)));
        most = Math.max(most, Math.abs(stack.space().wall().to().orElse(0)));
        return Math.pow(2, Math.ceil(Math.log(most) / Math.log(2)) + 2);
    }

    private static double farthest(Box box) {
        return Math.max(
                Math.max(Math.abs(box.back()), Math.abs(box.face())),
                Math.max(Math.abs(box.bottom()), Math.abs(box.top())));
    }

    /**
     * The section of the placed pieces, with notices for what is wrong with it as it stands; no fastenings are given.
     *
     * @param placed at least one piece that is not framing
     */
    public static Section compose(Stack stack, List<Placed> placed, Notices notices) {
        return composeFastened(stack, placed, notices).heldBy(Fastened.NOTHING, notices);
    }

    /**
     * The same of a stack whose fastenings are still to be looked at: what stands is judged when it is known what they
     * hold ({@link Section#heldBy}).
     */
    public static Section composeFastened(Stack stack, List<Placed> placed, Notices notices) {
        Section section = new Composer(stack, placed).section();
        Judgment.ofShape(section, notices);
        return section;
    }

    /** The section of the placed pieces, nothing said of it. */
    public static Section unjudged(Stack stack, List<Placed> placed) {
        return new Composer(stack, placed).section();
    }

    private Section section() {
        List<Part> skin = joining.union().parts().stream().map(this::byBody).toList();
        List<Overlap> overlaps = overlaps(bodies);
        List<Contact> contacts = Contacts.of(bodies, overlaps);
        List<List<Integer>> parts = Parts.of(bodies, contacts, overlaps);
        List<Member> members = new RoomSide(bodies, skin, parts).walk();
        return new Section(
                stack,
                bodies,
                skin,
                totals(),
                steps(),
                members,
                Reveals.of(bodies, members, contacts),
                contacts,
                overlaps,
                voids(),
                Grounding.of(bodies, contacts, Fastened.NOTHING),
                Fastened.NOTHING,
                parts.size());
    }

    private Part byBody(Part part) {
        return new Part(
                byBody(part.outer()), part.holes().stream().map(this::byBody).toList());
    }

    private Ring byBody(Ring ring) {
        return new Ring(
                ring.bounds().stream()
                        .map(bound -> new Bound(bodyOf(bound.outline()), bound.stroke(), bound.segment()))
                        .toList(),
                ring.inside());
    }

    /** Where bodies fill the same place, a piece of the stack among them. */
    static List<Overlap> overlaps(List<Body> bodies) {
        List<Overlap> overlaps = new ArrayList<>();
        for (Lap lap : OutlineLaps.of(bodies.stream().map(Body::outline).toList())) {
            if (bodies.get(lap.first()).inStack() || bodies.get(lap.second()).inStack()) {
                overlaps.add(new Overlap(lap.first(), lap.second(), lap.area(), lap.depth(), lap.at()));
            }
        }
        return overlaps;
    }

    private List<ClosedVoid> voids() {
        List<ClosedVoid> hollows = new ArrayList<>();
        for (Cavity cavity : joining.cavities()) {
            if (cavity.wide() && cavity.area() > Tolerance.LEAST_VOID_AREA) {
                Ring ring = byBody(cavity.ring());
                hollows.add(new ClosedVoid(cavity.area(), ring.inside(), closedBy(ring), ring, corners(cavity, ring)));
            }
        }
        return hollows;
    }

    private List<String> closedBy(Ring ring) {
        return Stream.of("wall", "floor", "ceiling")
                .filter(name -> ring.bounds().stream()
                        .map(bound -> bodies.get(bound.outline()))
                        .anyMatch(body -> !body.piece() && body.name().equals(name)))
                .toList();
    }

    /** The points that close a void, each with the bodies that meet there. */
    private static List<ClosedVoid.Corner> corners(Cavity cavity, Ring ring) {
        return cavity.corners().stream()
                .map(at -> new ClosedVoid.Corner(
                        at,
                        ring.bounds().stream()
                                .filter(bound -> bound.segment().distance(at) <= 2 * Tolerance.TOUCHING)
                                .map(Bound::outline)
                                .distinct()
                                .sorted()
                                .toList()))
                .toList();
    }

    private Totals totals() {
        Box all = box(Body::inStack).orElseThrow();
        Box trim = box(Body::trim).orElse(new Box(0, all.bottom(), 0, all.bottom()));
        double weight = bodies.stream()
                .filter(Body::inStack)
                .mapToDouble(Composer::weightPerFoot)
                .sum();
        double area = Covered.area(
                bodies.stream().filter(Body::inStack).map(Body::outline).toList());
        return new Totals(all.height(), all.face(), all.bottom(), all.top(), trim.height(), trim.face(), area, weight);
    }

    /** Pounds per foot of run: square inches times pounds per cubic foot, over 144 square inches in a square foot. */
    public static double weightPerFoot(Body body) {
        double density = body.placed()
                .map(placed -> placed.piece().wood().densityPerCubicFoot())
                .orElse(0.0);
        return body.outline().area() * density / 144;
    }

    private Optional<Box> box(Predicate<Body> which) {
        return bodies.stream().filter(which).map(body -> body.outline().box()).reduce(Box::with);
    }

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        Optional<Box> running = Optional.empty();
        for (int i = 0; i < bodies.size(); i++) {
            Body body = bodies.get(i);
            if (body.inStack()) {
                Box own = body.outline().box();
                Box box = running.map(own::with).orElse(own);
                running = Optional.of(box);
                steps.add(new Step(i, box.height(), box.face(), box.top()));
            }
        }
        return steps;
    }
}
