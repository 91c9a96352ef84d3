package buildup.engine.hold.statics;

import buildup.engine.hold.statics.FirstToGive.Mode;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Overlap;
import buildup.engine.section.compose.Section;
import buildup.engine.section.compose.Standing;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A stack as statics sees it, for a foot of run: every piece of the stack a rigid body, contacts that push square to
 * themselves and never pull, fasteners that pull along their axis and hold across it up to their allowable values, and
 * welds for what is taken to be one. Contacts rub only where the document gives a coefficient.
 */
public final class Model {
    private final Bodies bodies;
    private final Section section;
    private final double friction;
    private final List<Force> forces;
    private List<Cluster> clusters = List.of();
    private boolean apart;

    private Model(Bodies bodies, double friction, List<Force> forces) {
        this.bodies = bodies;
        this.section = bodies.section();
        this.friction = friction;
        this.forces = List.copyOf(forces);
    }

    /** Contacts, the given fasteners, and what the document says outright is fixed; nothing is taken on trust. */
    public static Model plain(Section section, List<Tie> ties, double friction) {
        Model model = new Model(new Bodies(section), friction, List.of());
        List<Force> forces = new ArrayList<>();
        for (Contact contact : section.contacts()) {
            model.pushes(contact, 0, forces);
        }
        ties.forEach(tie -> forces.addAll(forces(tie)));
        for (int piece : model.free()) {
            if (saidToBeFixed(section, piece)) {
                model.weld(piece, LoadPath.fixedTo(section, piece).orElse(Force.EARTH), forces);
            }
        }
        return model.of(forces);
    }

    private Model of(List<Force> others) {
        return new Model(bodies, friction, others);
    }

    /**
     * A plain model with what no fastenings are given for taken on trust as it is told: fixed where its back lies flat on
     * what stands, hung on what is behind it; such a hung piece carries nothing.
     */
    public Model trusting(LoadPath path) {
        return trusting(path, piece -> !section.fastened().given().contains(piece));
    }

    /**
     * A plain model as it would be without the fastenings that are given, but for those of pieces that hang by them: these
     * are held where they are and carry nothing. What leans here needs its fastenings.
     */
    public Model bare(LoadPath path) {
        return without(force -> force.kind() == Force.Kind.TIE).trusting(path, piece -> true);
    }

    private Model trusting(LoadPath path, Predicate<Integer> trusted) {
        List<Force> more = new ArrayList<>(forces);
        BitSet hung = new BitSet(section.bodies().size());
        for (int piece : free()) {
            if (!trusted.test(piece) || saidToBeFixed(section, piece)) {
                continue;
            }
            Standing standing = section.standing(piece);
            boolean rests = !standing.bearing().isEmpty();
            if (standing.counted() || (standing.fixed() && !rests)) {
                weld(piece, Force.EARTH, more);
            } else if (!standing.grounded() && hangs(standing, path, trusted)) {
                weld(piece, path.hungOn(piece).orElse(Force.EARTH), more);
                hung.set(piece);
            }
        }
        for (Overlap overlap : section.overlaps()) {
            // how the two meet is not known until that is mended
            weld(
                    section.body(overlap.a()).inStack() ? overlap.a() : overlap.b(),
                    section.body(overlap.a()).inStack() ? overlap.b() : overlap.a(),
                    more);
        }
        more.removeIf(force ->
                force.kind() == Force.Kind.PUSH && force.against() >= 0 && hung.get(force.against()) && carries(force));
        return of(more);
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

    /** Whether the document says that a piece is fixed. */
    public static boolean saidToBeFixed(Section section, int piece) {
        return section.body(piece)
                .placed()
                .flatMap(placed -> placed.piece().fixed())
                .isPresent();
    }

    /** Any force and any moment between two bodies: they move as one. */
    private void weld(int body, int to, List<Force> out) {
        out.add(Force.weld(section.name(body), body, to, bodies.centroid(body)));
    }

    /** A straight contact pushes at its ends (any spread of pressure is a mixture of these), an arc at its middle too. */
    private void pushes(Contact contact, double gap, List<Force> out) {
        if (contact.stretch().isEmpty()) {
            return;
        }
        Segment stretch = contact.stretch().get();
        String name = name(contact.a(), contact.b(), stretch.direction(0.5).right());
        double step = stretch instanceof Line ? 1 : 0.5;
        for (double t = 0; t <= 1; t += step) {
            // the stretch is walked with a's wood on its left
            Point outward = stretch.direction(t).right();
            out.addAll(push(name, contact.b(), contact.a(), stretch.at(t), outward, gap));
        }
    }

    /**
     * A contact as a carpenter says it: what lies on what, or what stands against what is nearer to the wall; under a ceiling
     * it is that which is above.
     *
     * @param way from the first of the two into the second
     */
    private String name(int first, int second, Point way) {
        boolean level = Math.abs(way.y()) <= Math.abs(way.x());
        boolean onward = level ? way.x() > 0 : way.y() > 0;
        int carrier = onward ? first : second;
        int carried = onward ? second : first;
        if (!level && !section.body(carried).piece()) {
            return section.name(carrier) + " under " + section.name(carried);
        }
        return section.name(carried) + (level ? " against " : " on ") + section.name(carrier);
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
        return of(more);
    }

    /** The same without one row of fasteners. */
    public Model without(String row) {
        return without(force -> force.kind() == Force.Kind.TIE && force.name().equals(row));
    }

    private Model without(Predicate<Force> dropped) {
        List<Force> left = new ArrayList<>(forces.size());
        for (Force force : forces) {
            if (!dropped.test(force)) {
                left.add(force);
            }
        }
        return of(left);
    }

    /** The same without what holds a piece only as long as no fastenings are given for it. */
    public Model decided(int piece) {
        if (saidToBeFixed(section, piece)) {
            return this;
        }
        return without(force -> force.kind() == Force.Kind.WELD && force.on() == piece);
    }

    /** The same with the contacts that would come about once small gaps have closed. */
    public Model withGaps() {
        List<Force> more = new ArrayList<>(forces);
        for (Gaps.Gap gap : bodies.gaps()) {
            String name = name(gap.from(), gap.to(), gap.way());
            more.addAll(push(name, gap.to(), gap.from(), gap.at(), gap.way(), gap.air()));
        }
        return of(more);
    }

    /** The same with some pieces made one with another body. */
    public Model welded(List<Integer> some, int to) {
        List<Force> more = new ArrayList<>(forces.size() + some.size());
        more.addAll(forces);
        for (int piece : some) {
            weld(piece, to, more);
        }
        return of(more);
    }

    /** The section that is asked. */
    public Section section() {
        return section;
    }

    /** Every force that a contact, a tie or friction can give. */
    public List<Force> forces() {
        return forces;
    }

    /** What of it can be asked by itself, those that stand on the ground first; taken apart when it is first asked. */
    public List<Cluster> clusters() {
        if (!apart) {
            clusters = Clusters.of(bodies, forces);
            apart = true;
        }
        return clusters;
    }

    /** The bodies that may move: the pieces of the stack. */
    public List<Integer> free() {
        return bodies.free();
    }

    /** Where the weight of a body acts. */
    public Point centroid(int body) {
        return bodies.centroid(body);
    }

    /** What the pieces weigh, where it acts. */
    public List<Weight> weights() {
        return bodies.weights();
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
