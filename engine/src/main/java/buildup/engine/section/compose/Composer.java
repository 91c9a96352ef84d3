package buildup.engine.section.compose;

import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.Surroundings;
import buildup.engine.section.stack.Space;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Abutment;
import buildup.profiles.region.Abutting;
import buildup.profiles.region.Bound;
import buildup.profiles.region.Cavity;
import buildup.profiles.region.Covered;
import buildup.profiles.region.Lap;
import buildup.profiles.region.OutlineLaps;
import buildup.profiles.region.OutlinePairs;
import buildup.profiles.region.Part;
import buildup.profiles.region.Ring;
import buildup.profiles.region.WeldedOutlines;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Composes placed pieces into a section. */
public final class Composer {
    private final Stack stack;
    private final List<Body> bodies;
    private final int pieces;
    private final Known known;

    /** What was found of outlines that lie beside each other, for composing many stacks that share them; one thread asks. */
    public static final class Known {
        private Optional<Around> around = Optional.empty();
        private final OutlinePairs<Optional<Abutment>> meetings = new OutlinePairs<>();
        private final OutlinePairs<Contacts.Numbered> contacts = new OutlinePairs<>();
        private final Abutting.Memory left = new Abutting.Memory();

        private Optional<Abutment> meeting(Outline first, Outline second) {
            return meetings.of(first, second, () -> Abutment.of(first, second));
        }

        private record Around(Space space, double far, Surroundings room) {}

        /** The room round a stack; the same outlines as long as it is the same. */
        private Surroundings room(Space space, double far) {
            if (around.filter(last -> last.far == far && last.space.equals(space))
                    .isEmpty()) {
                around = Optional.of(new Around(space, far, Surroundings.of(space, far)));
            }
            return around.orElseThrow().room;
        }
    }

    /**
     * A stack that is composed as far as it is asked about, for whoever asks of very many: first what its boxes tell, then
     * what lies on what, then the whole. Nothing in it may lie in, or nearly touch, another.
     */
    public static final class Staged {
        private final Composer composer;
        private final List<Abutting.Neighbors> neighbors;
        private Optional<Totals> totals = Optional.empty();
        private Optional<List<Contact>> contacts = Optional.empty();
        private Optional<List<Standing>> standing = Optional.empty();
        private Optional<Section> section = Optional.empty();

        private Staged(Composer composer, List<Abutting.Neighbors> neighbors) {
            this.composer = composer;
            this.neighbors = neighbors;
        }

        /** The pieces in the order of the stack, then the room. */
        public List<Body> bodies() {
            return composer.bodies;
        }

        /** The figures of the whole. */
        public Totals totals() {
            if (totals.isEmpty()) {
                totals = Optional.of(composer.totals(false));
            }
            return totals.get();
        }

        private List<Contact> contacts() {
            if (contacts.isEmpty()) {
                contacts = Optional.of(Contacts.among(composer.bodies, neighbors, composer.known.contacts));
            }
            return contacts.get();
        }

        /** What holds each piece, while no fastenings are given. */
        public List<Standing> standing() {
            if (standing.isEmpty()) {
                standing = Optional.of(Grounding.of(composer.bodies, contacts(), Fastened.NOTHING));
            }
            return standing.get();
        }

        /**
         * The section, but for the air in it and the steps of its pieces, of which nothing is told; absent where only a
         * union can say how its outlines meet.
         */
        public Optional<Section> section() {
            if (section.isEmpty()) {
                section = Abutting.outside(composer.outlines(), neighbors, composer.known.left)
                        .map(this::section);
            }
            return section;
        }

        private Section section(List<Part> skin) {
            List<List<Integer>> parts = Parts.of(composer.bodies, contacts(), List.of(), false);
            RoomSide roomSide = new RoomSide(composer.bodies, skin, parts);
            List<Member> members = roomSide.walk();
            return new Section(
                    composer.stack,
                    composer.bodies,
                    skin,
                    totals(),
                    List.of(),
                    members,
                    roomSide.beyond(),
                    Reveals.of(composer.bodies, members, contacts()),
                    contacts(),
                    List.of(),
                    List.of(),
                    standing(),
                    Fastened.NOTHING,
                    parts.size());
        }
    }

    /**
     * A stack to be composed in stages.
     *
     * @param known what is remembered of outlines beside each other
     * @return absent where pieces lie in each other or nearly touch, and only a union can say what they make
     */
    public static Optional<Staged> staged(Stack stack, List<Placed> placed, Known known) {
        Composer composer = new Composer(stack, placed, known);
        List<Outline> outlines = composer.outlines();
        return Abutting.neighbors(outlines, (i, j) -> known.meeting(outlines.get(i), outlines.get(j)))
                .map(neighbors -> new Staged(composer, neighbors));
    }

    private Composer(Stack stack, List<Placed> placed, Known known) {
        this.stack = stack;
        this.pieces = placed.size();
        this.bodies = bodies(stack, placed, known);
        this.known = known;
    }

    /** The pieces in the order of the stack, then wall, floor and ceiling where they stand. */
    static List<Body> bodies(Stack stack, List<Placed> placed) {
        return bodies(stack, placed, new Known());
    }

    private static List<Body> bodies(Stack stack, List<Placed> placed, Known known) {
        List<Body> all = new ArrayList<>();
        placed.forEach(one -> all.add(new Body(one.name(), one.outline(), Optional.of(one))));
        Surroundings room = known.room(Room.of(stack, all).around(), reach(stack, placed));
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
        Section section = new Composer(stack, placed, new Known()).section();
        Judgment.ofShape(section, notices);
        return section;
    }

    /** The section of the placed pieces, nothing said of it. */
    public static Section unjudged(Stack stack, List<Placed> placed) {
        return new Composer(stack, placed, new Known()).section();
    }

    private Section section() {
        Optional<List<Part>> abutting = abutting();
        if (abutting.isPresent()) {
            List<Part> skin = abutting.get();
            return section(skin, List.of(), Abutting.cavities(skin), false);
        }
        // the room stands before any piece: where they nearly touch, the piece gives way
        WeldedOutlines joining = WeldedOutlines.of(IntStream.range(0, bodies.size())
                .mapToObj(i -> bodies.get(bodyOf(i)).outline())
                .toList());
        List<Part> skin = joining.union().parts().stream().map(this::byBody).toList();
        List<Cavity> cavities = joining.cavities().stream().map(this::byBody).toList();
        return section(skin, overlaps(bodies), cavities, true);
    }

    private Optional<List<Part>> abutting() {
        return skin(outlines(), known);
    }

    private List<Outline> outlines() {
        List<Outline> outlines = new ArrayList<>(bodies.size());
        bodies.forEach(body -> outlines.add(body.outline()));
        return outlines;
    }

    /**
     * The union of some outlines, labeled by their numbers; absent where they do not only lie against each other.
     *
     * @param known what is remembered of them
     */
    public static Optional<List<Part>> skin(List<Outline> outlines, Known known) {
        return Abutting.union(outlines, (i, j) -> known.meeting(outlines.get(i), outlines.get(j)));
    }

    /** @param welded whether outlines were made to meet that only come near each other */
    private Section section(List<Part> skin, List<Overlap> overlaps, List<Cavity> cavities, boolean welded) {
        List<Contact> contacts = Contacts.of(bodies, overlaps, known.contacts);
        List<List<Integer>> parts = Parts.of(bodies, contacts, overlaps, welded);
        RoomSide roomSide = new RoomSide(bodies, skin, parts);
        List<Member> members = roomSide.walk();
        return new Section(
                stack,
                bodies,
                skin,
                totals(welded),
                steps(),
                members,
                roomSide.beyond(),
                Reveals.of(bodies, members, contacts),
                contacts,
                overlaps,
                voids(cavities),
                Grounding.of(bodies, contacts, Fastened.NOTHING),
                Fastened.NOTHING,
                parts.size());
    }

    private Part byBody(Part part) {
        return new Part(
                byBody(part.outer()), part.holes().stream().map(this::byBody).toList());
    }

    private Cavity byBody(Cavity cavity) {
        return new Cavity(
                byBody(cavity.ring()),
                cavity.islands(),
                cavity.wide(),
                cavity.corners().stream()
                        .map(corner -> new Cavity.Corner(
                                corner.at(),
                                corner.outlines().stream()
                                        .map(this::bodyOf)
                                        .sorted()
                                        .toList()))
                        .toList());
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

    private List<ClosedVoid> voids(List<Cavity> cavities) {
        List<ClosedVoid> hollows = new ArrayList<>();
        for (Cavity cavity : cavities) {
            if (cavity.wide() && cavity.area() > Tolerance.LEAST_VOID_AREA) {
                Ring ring = cavity.ring();
                hollows.add(new ClosedVoid(cavity.area(), ring.inside(), closedBy(ring), ring, cavity.corners()));
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

    /** @param welded whether outlines may lie in each other */
    private Totals totals(boolean welded) {
        Optional<Box> around = Optional.empty();
        Optional<Box> visible = Optional.empty();
        List<Outline> own = new ArrayList<>(bodies.size());
        List<Body> inStack = new ArrayList<>(bodies.size());
        for (Body body : bodies) {
            if (body.inStack()) {
                Box box = body.outline().box();
                around = Optional.of(around.map(box::with).orElse(box));
                visible = body.trim() ? Optional.of(visible.map(box::with).orElse(box)) : visible;
                own.add(body.outline());
                inStack.add(body);
            }
        }
        Box all = around.orElseThrow();
        Box trim = visible.orElse(new Box(0, all.bottom(), 0, all.bottom()));
        double weight = inStack.stream().mapToDouble(Composer::weightPerFoot).sum();
        double area = welded
                ? Covered.area(own)
                : own.stream().mapToDouble(Outline::area).sum();
        return new Totals(all.height(), all.face(), all.bottom(), all.top(), trim.height(), trim.face(), area, weight);
    }

    /** Whether a notice says that wood cuts into wall, floor or ceiling, which nobody moves. */
    public static boolean cutsIntoTheRoom(Notice notice) {
        return ComposeNotices.cutsIntoTheRoom(notice);
    }

    /** Pounds per foot of run: square inches times pounds per cubic foot, over 144 square inches in a square foot. */
    public static double weightPerFoot(Body body) {
        double density = body.placed()
                .map(placed -> placed.piece().wood().densityPerCubicFoot())
                .orElse(0.0);
        return body.outline().area() * density / 144;
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
