package buildup.engine.section.compose;

import buildup.engine.section.placing.SprungBack;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Part;
import buildup.shared.notice.Notices;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The composed stack; the subject of every question.
 *
 * @param bodies the pieces in the order of putting up, then wall, floor and ceiling where they stand
 * @param skin the union of all bodies: rings of true segments labeled by body ({@code Bound.outline}) and stroke
 * @param members the room-side walk, part by part
 * @param beyond what of its pieces lies open but not on that walk
 * @param standing one for each piece of the bodies, same order
 * @param fastened what fastenings decided of it
 * @param parts the number of separate parts of the stack
 */
public record Section(
        Stack stack,
        List<Body> bodies,
        List<Part> skin,
        Totals totals,
        List<Step> steps,
        List<Member> members,
        List<Beyond> beyond,
        List<Reveal> reveals,
        List<Contact> contacts,
        List<Overlap> overlaps,
        List<ClosedVoid> voids,
        List<Standing> standing,
        Fastened fastened,
        int parts) {
    /**
     * A stretch of a piece that lies open beyond the ends of the room-side walk, as the inner side of a lip, or of a pelmet:
     * no row of the walk, and yet an eye may look at it.
     *
     * @param body the piece
     */
    public record Beyond(int body, Segment segment) {}

    public Section {
        bodies = List.copyOf(bodies);
        skin = List.copyOf(skin);
        steps = List.copyOf(steps);
        members = List.copyOf(members);
        beyond = List.copyOf(beyond);
        reveals = List.copyOf(reveals);
        contacts = List.copyOf(contacts);
        overlaps = List.copyOf(overlaps);
        voids = List.copyOf(voids);
        standing = List.copyOf(standing);
    }

    /**
     * The same section, what stands in it decided by fastenings.
     *
     * @param decisive what the fastenings do
     * @param notices told what counts as fixed, what hangs, what is carried by nothing
     */
    public Section heldBy(Fastened decisive, Notices notices) {
        Section decided = new Section(
                stack,
                bodies,
                skin,
                totals,
                steps,
                members,
                beyond,
                reveals,
                contacts,
                overlaps,
                voids,
                Grounding.of(bodies, contacts, decisive),
                decisive,
                parts);
        Judgment.ofStanding(decided, notices);
        return decided;
    }

    /** What holds one body up; the room itself is grounded. */
    public Standing standing(int number) {
        return number < standing.size()
                ? standing.get(number)
                : new Standing(number, !name(number).equals("ceiling"), false, false, List.of(), List.of());
    }

    /** The body of that number, which is at least 0 and less than the number of bodies. */
    public Body body(int number) {
        return bodies.get(number);
    }

    /** The name of the body of that number. */
    public String name(int number) {
        return bodies.get(number).name();
    }

    /** The number of the body of that name; absent when there is none. */
    public OptionalInt number(String name) {
        return IntStream.range(0, bodies.size())
                .filter(body -> name(body).equals(name))
                .findFirst();
    }

    /** The body at whose corner a reveal ends: its own piece, or the next one that meets that. */
    public int endOf(Reveal reveal) {
        if (hasCorner(reveal.piece(), reveal.to())) {
            return reveal.piece();
        }
        return IntStream.range(0, bodies.size())
                .filter(body -> body != reveal.over() && hasCorner(body, reveal.to()))
                .findFirst()
                .orElse(reveal.piece());
    }

    /** Whether the outline of a body turns at a place, within touching. */
    public boolean hasCorner(int body, Point at) {
        return bodies.get(body).outline().strokes().stream()
                .anyMatch(stroke -> stroke.segment().from().near(at, 2 * Tolerance.TOUCHING));
    }

    /** Whether a body lies with a face against any of some others. */
    public boolean touches(int body, Collection<Integer> others) {
        return contacts.stream()
                .anyMatch(contact -> contact.length() > 0 && contact.of(body) && others.contains(contact.other(body)));
    }

    /** The pieces, framing included, in the order of putting up. */
    public List<Body> pieces() {
        return bodies.stream().filter(Body::piece).toList();
    }

    /** Room left between the top of the stack and the ceiling; negative when it is too tall. */
    public OptionalDouble ceilingLeft() {
        OptionalDouble ceiling = stack.space().ceiling();
        return ceiling.isPresent() ? OptionalDouble.of(ceiling.getAsDouble() - reach()) : OptionalDouble.empty();
    }

    /** How high the ceiling has to be at the wall plane to just clear the stack, in. */
    public double reach() {
        return bodies.stream()
                .filter(Body::inStack)
                .mapToDouble(body -> stack.space().reach(body.outline()))
                .max()
                .orElseThrow();
    }

    /** Whether a body is framing that lies over the ceiling, behind what covers it: a joist that is given as a piece. */
    public boolean overCeiling(int number) {
        Body body = body(number);
        Box box = body.outline().box();
        return body.framing()
                && box.bottom()
                        >= stack.space().ceilingAt(box.middle().x()).orElse(Double.POSITIVE_INFINITY)
                                - Tolerance.TOUCHING;
    }

    /**
     * Whether it is a sprung molding that touches nothing with its foot: with the lower half of its back, or what is below
     * that.
     */
    public boolean footInTheAir(int number) {
        return body(number)
                .placed()
                .flatMap(SprungBack::of)
                .filter(back -> contacts.stream()
                        .filter(contact -> contact.of(number) && contact.length() > 0)
                        .noneMatch(contact -> contact.at().minus(back.at(0.5)).dot(back.direction(0)) < 0))
                .isPresent();
    }

    /** The room, as the stack lies in it. */
    Room room() {
        return Room.of(stack, bodies);
    }

    /** What is left of the projection allowed; negative when it stands out too far. */
    public OptionalDouble projectionLeft() {
        OptionalDouble allowed = stack.space().projection();
        return allowed.isPresent()
                ? OptionalDouble.of(allowed.getAsDouble() - totals.projection())
                : OptionalDouble.empty();
    }

    /** The letter of a piece, A..Z, AA..; the number is its place among the bodies. */
    public static String letter(int number) {
        String letters = "";
        for (int n = number; n >= 0; n = n / 26 - 1) {
            letters = (char) ('A' + n % 26) + letters;
        }
        return letters;
    }
}
