package buildup.engine.hold.support;

import buildup.engine.hold.statics.Load;
import buildup.engine.hold.statics.Tie;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Contact;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/**
 * The same question set down a second time: moments about the origin instead of the centroids, pressure at many places of
 * a contact instead of its ends, and the simplex method of Apache Commons Math 3.6.1 as solver.
 */
final class SimplexStatics {
    private static final double MOST = 1e4;

    private final Section section;
    private final List<Load> loads;
    /** Column of a force: 0 is the factor. Rows: three for each body. */
    private final List<double[]> columns = new ArrayList<>();

    private final List<Double> limits = new ArrayList<>();

    /** First of the three columns of each fastener. */
    private final List<Integer> ties = new ArrayList<>();

    private SimplexStatics(Section section, List<Load> loads) {
        this.section = section;
        this.loads = loads;
    }

    static double factor(Held held) {
        return factor(held, false);
    }

    /** @param closed whether gaps up to 1/8 between the boxes of a stack have closed */
    static double factor(Held held, boolean closed) {
        SimplexStatics statics = new SimplexStatics(held.section(), held.loads());
        if (Double.isInfinite(statics.within(held, 0, closed))) {
            return Double.NEGATIVE_INFINITY;
        }
        return new SimplexStatics(held.section(), held.loads()).within(held, MOST, closed);
    }

    private double within(Held held, double most, boolean closed) {
        loads(most);
        held.section().contacts().forEach(this::contact);
        held.joints().forEach(this::joint);
        if (closed) {
            gaps();
        }
        return solve();
    }

    /** Every piece is a box here: two that face each other over little air push at both ends of what they share. */
    private void gaps() {
        for (int i = 0; i < section.bodies().size(); i++) {
            for (int j = 0; j < section.bodies().size(); j++) {
                Box a = section.body(i).outline().box();
                Box b = section.body(j).outline().box();
                double left = Math.max(a.back(), b.back());
                double right = Math.min(a.face(), b.face());
                double low = Math.max(a.bottom(), b.bottom());
                double high = Math.min(a.top(), b.top());
                if (gap(b.bottom() - a.top()) && right - left >= 1.0 / 16) {
                    force(j, i, new Point(left, a.top()), new Point(0, 1), Double.POSITIVE_INFINITY);
                    force(j, i, new Point(right, a.top()), new Point(0, 1), Double.POSITIVE_INFINITY);
                }
                if (gap(b.back() - a.face()) && high - low >= 1.0 / 16) {
                    force(j, i, new Point(a.face(), low), new Point(1, 0), Double.POSITIVE_INFINITY);
                    force(j, i, new Point(a.face(), high), new Point(1, 0), Double.POSITIVE_INFINITY);
                }
            }
        }
    }

    private static boolean gap(double air) {
        return air > 1.0 / 256 && air <= 1.0 / 8;
    }

    private void loads(double most) {
        double[] column = new double[3 * section.bodies().size()];
        for (Load load : loads) {
            column[3 * load.body() + 1] -= load.poundsPerFoot();
            column[3 * load.body() + 2] -= load.poundsPerFoot() * load.out();
        }
        columns.add(column);
        limits.add(most);
    }

    private void contact(Contact contact) {
        if (contact.stretch().isEmpty()) {
            return;
        }
        Segment stretch = contact.stretch().get();
        for (int i = 0; i <= 6; i++) {
            double t = i / 6.0;
            Point at = stretch.at(t);
            Point square;
            if (stretch instanceof Arc arc) {
                Point out = at.minus(arc.center()).unit();
                square = arc.counterclockwise() ? out : out.times(-1);
            } else {
                Point along = stretch.to().minus(stretch.from()).unit();
                square = new Point(along.y(), -along.x());
            }
            force(contact.b(), contact.a(), at, square, Double.POSITIVE_INFINITY);
        }
    }

    private void joint(Tie joint) {
        Point across = new Point(joint.axis().y(), -joint.axis().x());
        force(joint.outer(), joint.inner(), joint.at(), joint.axis(), Math.min(joint.withdrawal(), joint.head()));
        force(joint.outer(), joint.inner(), joint.at(), across, joint.lateral());
        force(joint.inner(), joint.outer(), joint.at(), across, joint.lateral());
        ties.add(columns.size() - 3);
    }

    private void force(int on, int against, Point at, Point way, double most) {
        double moment = at.x() * way.y() - at.y() * way.x();
        double[] column = new double[3 * section.bodies().size()];
        column[3 * on] += way.x();
        column[3 * on + 1] += way.y();
        column[3 * on + 2] += moment;
        column[3 * against] -= way.x();
        column[3 * against + 1] -= way.y();
        column[3 * against + 2] -= moment;
        columns.add(column);
        limits.add(most);
    }

    private double solve() {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int number = 0; number < section.bodies().size(); number++) {
            Body body = section.body(number);
            if (!body.standing()) {
                double weight = body.outline().area()
                        * body.placed().orElseThrow().piece().wood().densityPerCubicFoot()
                        / 144;
                double[] sums = {0, weight, weight * body.outline().centroid().x()};
                for (int row = 0; row < 3; row++) {
                    constraints.add(new LinearConstraint(row(3 * number + row), Relationship.EQ, sums[row]));
                }
            }
        }
        for (int i = 0; i < columns.size(); i++) {
            if (Double.isFinite(limits.get(i))) {
                double[] unit = new double[columns.size()];
                unit[i] = 1;
                constraints.add(new LinearConstraint(unit, Relationship.LEQ, limits.get(i)));
            }
        }
        for (int tie : ties) {
            double[] shares = new double[columns.size()];
            for (int i = tie; i < tie + 3; i++) {
                shares[i] = limits.get(i) > 0 ? 1 / limits.get(i) : 0;
            }
            constraints.add(new LinearConstraint(shares, Relationship.LEQ, 1));
        }
        double[] factor = new double[columns.size()];
        factor[0] = 1;
        try {
            double found = new SimplexSolver(1e-8)
                    .optimize(
                            new MaxIter(20_000),
                            new LinearObjectiveFunction(factor, 0),
                            new LinearConstraintSet(constraints),
                            GoalType.MAXIMIZE,
                            new NonNegativeConstraint(true))
                    .getValue();
            return found < MOST * (1 - 1e-6) ? found : Double.POSITIVE_INFINITY;
        } catch (NoFeasibleSolutionException e) {
            return Double.NEGATIVE_INFINITY;
        }
    }

    private double[] row(int row) {
        return columns.stream().mapToDouble(column -> column[row]).toArray();
    }
}
