package buildup.engine.hold.support;

import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.engine.solve.LinearProgram;
import buildup.engine.solve.LinearProgram.Solution;
import buildup.engine.solve.LinearProgram.Term;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The whole stack at once, for a foot of run: every piece of the stack a rigid body in equilibrium (two forces and one
 * moment), contacts that push square to themselves and never pull or rub, fasteners that pull along their axis and hold
 * across it up to their allowable values. What the document fixes to a body is one with it. The user's loads grow by one
 * factor; weights stay. The greatest factor that still has an equilibrium is the lower-bound theorem's answer: a
 * distribution of forces that keeps all limits proves the load (Drucker, Prager and Greenberg, Extended limit design
 * theorems for continuous media, Quarterly of Applied Mathematics 9, 1952; for rigid blocks Livesley, International
 * Journal for Numerical Methods in Engineering 12, 1978; both from memory).
 */
final class Statics {
    /** A factor beyond which nobody asks: the loads do not matter. */
    private static final double NO_LIMIT = 1e4;

    /** What a piece is fixed to when that is no body of the section. */
    private static final int NOTHING = -1;

    /**
     * A force that acts on two bodies, one way on the first and the other way on the second.
     *
     * @param bend curvature of the face that pushes, 1/in: how its square turns as the force moves to its left
     */
    private record Force(String name, int on, int against, Point at, Point way, double most, double bend) {
        Force(String name, int on, int against, Point at, Point way, double most) {
            this(name, on, against, at, way, most, 0);
        }

        Force raised(double times) {
            return new Force(name, on, against, at, way, most * times, bend);
        }

        /** Moved along the face, and still square to it. */
        Force moved(double left) {
            Point side = way.left().times(left);
            return new Force(
                    name, on, against, at.plus(side), way.plus(side.times(bend)).unit(), most, bend);
        }
    }

    private final Section section;
    private final List<Load> loads;
    private final List<Force> forces;

    private Statics(Section section, List<Load> loads, List<Force> forces) {
        this.section = section;
        this.loads = loads;
        this.forces = forces;
    }

    static Statics of(Section section, List<Load> loads, List<Tie> joints) {
        List<Force> forces = new ArrayList<>();
        for (Contact contact : section.contacts()) {
            contact.stretch().ifPresent(stretch -> pushes(section, contact, stretch, forces));
        }
        for (Tie joint : joints) {
            Point across = joint.axis().left();
            forces.add(new Force(
                    joint.name(), joint.outer(), joint.inner(), joint.at(), joint.axis(), joint.withdrawal()));
            forces.add(new Force(joint.name(), joint.outer(), joint.inner(), joint.at(), across, joint.lateral()));
            forces.add(new Force(
                    joint.name(), joint.outer(), joint.inner(), joint.at(), across.times(-1), joint.lateral()));
        }
        for (int body = 0; body < section.bodies().size(); body++) {
            if (section.body(body)
                    .placed()
                    .filter(placed -> placed.piece().fixed().isPresent())
                    .isPresent()) {
                forces.addAll(weld(section, body));
            }
        }
        return new Statics(section, loads, forces);
    }

    /** Forces both ways without limit in two places: any force and any moment. */
    private static List<Force> weld(Section section, int body) {
        Point out = new Point(1, 0);
        Point up = new Point(0, 1);
        Point at = section.body(body).outline().centroid();
        int to = LoadPath.fixedTo(section, body).orElse(NOTHING);
        String name = section.name(body) + " fixed";
        List<Force> forces = new ArrayList<>();
        for (int sign : List.of(1, -1)) {
            forces.add(new Force(name, body, to, at, out.times(sign), Double.POSITIVE_INFINITY));
            forces.add(new Force(name, body, to, at, up.times(sign), Double.POSITIVE_INFINITY));
            forces.add(new Force(name, body, to, at.plus(out), up.times(sign), Double.POSITIVE_INFINITY));
        }
        return forces;
    }

    /** A straight contact pushes at its ends (any spread of pressure is a mixture of these), an arc at its middle too. */
    private static void pushes(Section section, Contact contact, Segment stretch, List<Force> out) {
        String name = section.name(contact.a()) + " on " + section.name(contact.b());
        double bend = stretch instanceof Arc arc ? (arc.counterclockwise() ? 1 : -1) / arc.radius() : 0;
        List<Double> places = stretch instanceof Line ? List.of(0.0, 1.0) : List.of(0.0, 0.5, 1.0);
        for (double t : places) {
            // the stretch is walked with a's wood on its left
            Point outward = stretch.direction(t).right();
            out.add(new Force(name, contact.b(), contact.a(), stretch.at(t), outward, Double.POSITIVE_INFINITY, bend));
        }
    }

    /** The factor, infinite when the loads do not matter, and what governs it. */
    record Limit(double factor, String governs) {}

    /** Nothing when there is no equilibrium even without the loads. */
    Optional<Limit> limit() {
        return factor().map(found -> new Limit(found, Double.isFinite(found) ? governing(found) : ""));
    }

    /** The factor alone, without the search for what governs it; loads that serve as ballast do not make a stack stand. */
    Optional<Double> factor() {
        return factor(forces, 0).flatMap(stands -> factor(forces, NO_LIMIT));
    }

    private Optional<Double> factor(List<Force> given, double most) {
        LinearProgram program = new LinearProgram();
        int factor = program.atLeastZero(most);
        List<Integer> numbers = new ArrayList<>();
        given.forEach(force -> numbers.add(program.atLeastZero(force.most)));
        for (int body = 0; body < section.bodies().size(); body++) {
            if (section.body(body).inStack()) {
                equations(program, body, given, numbers, factor);
            }
        }
        Optional<Solution> solution = program.greatest(factor);
        // the solver keeps bounds within its own tolerance
        return solution.map(found -> found.value(factor))
                .map(found -> found < NO_LIMIT * (1 - 1e-6) ? found : Double.POSITIVE_INFINITY);
    }

    private void equations(LinearProgram program, int body, List<Force> given, List<Integer> numbers, int factor) {
        Point centroid = section.body(body).outline().centroid();
        double weight = Composer.weightPerFoot(section.body(body));
        List<Term> across = new ArrayList<>();
        List<Term> up = new ArrayList<>();
        List<Term> turning = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            Force force = given.get(i);
            int sign = force.on == body ? 1 : force.against == body ? -1 : 0;
            if (sign != 0) {
                Point way = force.way.times(sign);
                across.add(new Term(numbers.get(i), way.x()));
                up.add(new Term(numbers.get(i), way.y()));
                turning.add(new Term(numbers.get(i), force.at.minus(centroid).cross(way)));
            }
        }
        for (Load load : loads) {
            if (load.body() == body) {
                up.add(new Term(factor, -load.poundsPerFoot()));
                turning.add(new Term(factor, -(load.out() - centroid.x()) * load.poundsPerFoot()));
            }
        }
        program.equation(across, 0);
        program.equation(up, weight);
        program.equation(turning, 0);
    }

    /** The contact or fastener of which a little more helps most: a limit raised, or an end of contact moved out. */
    private String governing(double factor) {
        String best = "";
        double most = factor * 1e-6;
        for (int i = 0; i < forces.size(); i++) {
            for (Force more : more(forces.get(i))) {
                List<Force> changed = new ArrayList<>(forces);
                changed.set(i, more);
                double gain = factor(changed, NO_LIMIT).orElse(factor) - factor;
                if (gain > most * (1 + 1e-9)) {
                    most = gain;
                    best = more.name;
                }
            }
        }
        return best;
    }

    private static List<Force> more(Force force) {
        if (Double.isFinite(force.most)) {
            return List.of(force.raised(1.01));
        }
        return List.of(force.moved(1.0 / 64), force.moved(-1.0 / 64));
    }
}
