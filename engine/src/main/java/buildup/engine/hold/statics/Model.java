package buildup.engine.hold.statics;

import buildup.engine.hold.statics.FirstToGive.Mode;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Overlap;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A stack as statics sees it, for a foot of run: every piece of the stack a rigid body, contacts that push square to
 * themselves and never pull, fasteners that pull along their axis and hold across it up to their allowable values, and
 * welds for what is taken to be one. Contacts rub only where the document gives a coefficient.
 */
public final class Model {
    private final Section section;
    private final double friction;
    private final List<Force> forces;

    private Model(Section section, double friction, List<Force> forces) {
        this.section = section;
        this.friction = friction;
        this.forces = List.copyOf(forces);
    }

    /** Contacts, the given fasteners, and what the document says outright is fixed; nothing is taken on trust. */
    public static Model plain(Section section, List<Tie> ties, double friction) {
        Model model = new Model(section, friction, List.of());
        List<Force> forces = new ArrayList<>();
        section.contacts().forEach(contact -> model.pushes(contact, 0, forces));
        ties.forEach(tie -> forces.addAll(forces(tie)));
        model.pieces()
                .filter(piece -> saidToBeFixed(section, piece))
                .forEach(piece ->
                        model.weld(piece, LoadPath.fixedTo(section, piece).orElse(Force.EARTH), forces));
        return new Model(section, friction, forces);
    }

    /**
     * The stack with the fastenings that are given. What none are given for is taken on trust as it is told: fixed where
     * its back lies flat on what stands, hung on what is behind it; such a hung piece carries nothing.
     */
    public static Model whole(Section section, LoadPath path, List<Tie> ties, double friction) {
        return plain(section, ties, friction)
                .trusting(path, piece -> !section.fastened().given().contains(piece));
    }

    /**
     * The stack as it would be without the fastenings that are given, but for those of pieces that hang by them: these are
     * held where they are and carry nothing. What leans here needs its fastenings.
     */
    public static Model bare(Section section, LoadPath path, double friction) {
        return plain(section, List.of(), friction).trusting(path, piece -> true);
    }

    private Model trusting(LoadPath path, Predicate<Integer> trusted) {
        List<Force> more = new ArrayList<>(forces);
        Set<Integer> hung = new LinkedHashSet<>();
        pieces().filter(trusted).filter(piece -> !saidToBeFixed(section, piece)).forEach(piece -> {
            Standing standing = section.standing(piece);
            boolean rests = !standing.bearing().isEmpty();
            if (standing.counted() || (standing.fixed() && !rests)) {
                weld(piece, Force.EARTH, more);
            } else if (!standing.grounded() && hangs(standing, path, trusted)) {
                weld(piece, path.hungOn(piece).orElse(Force.EARTH), more);
                hung.add(piece);
            }
        });
        for (Overlap overlap : section.overlaps()) {
            // how the two meet is not known until that is mended
            weld(
                    section.body(overlap.a()).inStack() ? overlap.a() : overlap.b(),
                    section.body(overlap.a()).inStack() ? overlap.b() : overlap.a(),
                    more);
        }
        more.removeIf(force -> force.kind() == Force.Kind.PUSH && hung.contains(force.against()) && carries(force));
        return new Model(section, friction, more);
    }

    /** Whether a piece that nothing carries is one of those that hang: it does not float, nor rest on what is given. */
    private static boolean hangs(Standing standing, LoadPath path, Predicate<Integer> trusted) {
        return path.reachesGround(standing.body())
                && standing.hanging().stream().allMatch(trusted);
    }

    /** Whether a piece for which no fastenings are given is taken to be held by what it touches. */
    public static boolean hangsOnTrust(Section section, LoadPath path, int piece) {
        Standing standing = section.standing(piece);
        Set<Integer> given = section.fastened().given();
        return !given.contains(piece)
                && !saidToBeFixed(section, piece)
                && !standing.grounded()
                && hangs(standing, path, one -> !given.contains(one));
    }

    private static boolean carries(Force push) {
        return push.way().y() > Math.abs(push.way().x());
    }

    private IntStream allPieces() {
        return IntStream.range(0, section.bodies().size())
                .filter(body -> section.body(body).inStack());
    }

    private Stream<Integer> pieces() {
        return allPieces().boxed();
    }

    /** Whether the document says that a piece is fixed. */
    public static boolean saidToBeFixed(Section section, int piece) {
        return section.body(piece)
                .placed()
                .flatMap(placed -> placed.piece().fixed())
                .isPresent();
    }

    /** Forces both ways without limit in two places: any force and any moment. */
    private void weld(int body, int to, List<Force> out) {
        Point right = new Point(1, 0);
        Point up = new Point(0, 1);
        Point at = section.body(body).outline().centroid();
        String name = section.name(body) + " fixed";
        for (int sign : List.of(1, -1)) {
            out.add(Force.weld(name, body, to, at, right.times(sign)));
            out.add(Force.weld(name, body, to, at, up.times(sign)));
            out.add(Force.weld(name, body, to, at.plus(right), up.times(sign)));
        }
    }

    /** A straight contact pushes at its ends (any spread of pressure is a mixture of these), an arc at its middle too. */
    private void pushes(Contact contact, double gap, List<Force> out) {
        if (contact.stretch().isEmpty()) {
            return;
        }
        Segment stretch = contact.stretch().get();
        String name = section.name(contact.a()) + " on " + section.name(contact.b());
        List<Double> places = stretch instanceof Line ? List.of(0.0, 1.0) : List.of(0.0, 0.5, 1.0);
        for (double t : places) {
            // the stretch is walked with a's wood on its left
            Point outward = stretch.direction(t).right();
            out.addAll(push(name, contact.b(), contact.a(), stretch.at(t), outward, gap));
        }
    }

    /** With friction, all pushes between the two sides of the cone that it opens. */
    private List<Force> push(String name, int on, int against, Point at, Point way, double gap) {
        if (friction <= 0) {
            return List.of(Force.push(name, on, against, at, way, gap));
        }
        Point rub = way.left().times(friction);
        return List.of(
                Force.push(name, on, against, at, way.plus(rub), gap),
                Force.push(name, on, against, at, way.minus(rub), gap));
    }

    /** What a fastener holds: along its axis, and across it either way. */
    public static List<Force> forces(Tie tie) {
        Point across = tie.axis().left();
        return List.of(
                Force.tie(tie, tie.pullMode(), tie.axis(), tie.pull()),
                Force.tie(tie, Mode.SHEAR, across, tie.lateral()),
                Force.tie(tie, Mode.SHEAR, across.times(-1), tie.lateral()));
    }

    /** The same with more fasteners. */
    public Model with(List<Tie> ties) {
        List<Force> more = new ArrayList<>(forces);
        ties.forEach(tie -> more.addAll(forces(tie)));
        return new Model(section, friction, more);
    }

    /** The same without one row of fasteners. */
    public Model without(String row) {
        return new Model(
                section,
                friction,
                forces.stream()
                        .filter(force ->
                                force.kind() != Force.Kind.TIE || !force.name().equals(row))
                        .toList());
    }

    /** The same without what holds a piece only as long as no fastenings are given for it. */
    public Model decided(int piece) {
        if (saidToBeFixed(section, piece)) {
            return this;
        }
        return new Model(
                section,
                friction,
                forces.stream()
                        .filter(force -> force.kind() != Force.Kind.WELD || force.on() != piece)
                        .toList());
    }

    /** The same with the contacts that would come about once small gaps have closed. */
    public Model withGaps() {
        List<Force> more = new ArrayList<>(forces);
        for (Gaps.Gap gap : Gaps.of(section)) {
            String name = section.name(gap.from()) + " on " + section.name(gap.to());
            more.addAll(push(name, gap.to(), gap.from(), gap.at(), gap.way(), gap.air()));
        }
        return new Model(section, friction, more);
    }

    /** The same with some pieces made one with another body. */
    public Model welded(List<Integer> some, int to) {
        List<Force> more = new ArrayList<>(forces);
        some.forEach(piece -> weld(piece, to, more));
        return new Model(section, friction, more);
    }

    /** The section that is asked. */
    public Section section() {
        return section;
    }

    /** Every force that a contact, a tie or friction can give. */
    public List<Force> forces() {
        return forces;
    }

    /** The bodies that may move: the pieces of the stack. */
    public List<Integer> free() {
        return pieces().toList();
    }

    /** Where the weight of a body acts. */
    public Point centroid(int body) {
        return section.body(body).outline().centroid();
    }

    /** What the pieces weigh, where it acts. */
    public List<Weight> weights() {
        return free().stream()
                .map(body -> new Weight(body, centroid(body).x(), Composer.weightPerFoot(section.body(body))))
                .toList();
    }

    /** A pull straight down on a body, pounds per foot of run, at a distance {@code out} from x = 0. */
    public record Weight(int body, double out, double pounds) {
        /** Loads as weights, where they stand. */
        public static List<Weight> of(List<Load> loads) {
            return loads.stream()
                    .map(load -> new Weight(load.body(), load.out(), load.poundsPerFoot()))
                    .toList();
        }
    }
}
