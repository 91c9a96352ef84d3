package buildup.profiles.trace.fit;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * Moves all curves of a ring together to where the squares of the points' distances are least and every bond is kept:
 * Gauss-Newton steps with multipliers for the bonds (A. Bjorck, "Numerical Methods for Least Squares Problems", SIAM,
 * 1996, sections 5.1 and 9.2).
 */
final class Solver {
    private static final int MOST_STEPS = 12;

    /** Points of each curve. */
    private final List<List<Point>> points;

    private final double noise;

    Solver(List<List<Point>> points, double noise) {
        this.points = points;
        this.noise = noise;
    }

    /**
     * Curves as they came out.
     *
     * @param error sum of (distance / noise)^2
     * @param strain by how much the worst bond is not kept, in
     */
    record Solution(List<Curve> curves, double error, double strain) {}

    /** Curves that no bond holds together, even through others, know nothing of each other and are moved apart. */
    Solution solve(List<Curve> start, List<Bond> bonds) {
        List<Curve> curves = new ArrayList<>(start);
        for (List<Integer> group : groups(start.size(), bonds)) {
            int[] own = new int[start.size()];
            Arrays.fill(own, -1);
            for (int k = 0; k < group.size(); k++) {
                own[group.get(k)] = k;
            }
            List<Bond> held = bonds.stream()
                    .filter(bond -> own[bond.curves().get(0)] >= 0)
                    .map(bond -> bond.renumbered(number -> own[number]))
                    .toList();
            List<Curve> moved = together(
                    group.stream().map(start::get).toList(),
                    held,
                    group.stream().map(points::get).toList());
            for (int k = 0; k < group.size(); k++) {
                curves.set(group.get(k), moved.get(k));
            }
        }
        return new Solution(List.copyOf(curves), error(curves), strain(curves, bonds));
    }

    /** The numbers of the curves that hang together, in order. */
    private static List<List<Integer>> groups(int count, List<Bond> bonds) {
        int[] leader = new int[count];
        for (int i = 0; i < count; i++) {
            leader[i] = i;
        }
        for (Bond bond : bonds) {
            int first = leader[bond.curves().get(0)];
            for (int curve : bond.curves()) {
                int other = leader[curve];
                for (int i = 0; i < count; i++) {
                    leader[i] = leader[i] == other ? first : leader[i];
                }
            }
        }
        Map<Integer, List<Integer>> groups = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            groups.computeIfAbsent(leader[i], any -> new ArrayList<>()).add(i);
        }
        return List.copyOf(groups.values());
    }

    private static List<Curve> together(List<Curve> start, List<Bond> bonds, List<List<Point>> points) {
        List<Curve> curves = start;
        double[] pull = new double[bonds.size()];
        for (int step = 0; step < MOST_STEPS; step++) {
            Equations equations = new Equations(curves, bonds, points);
            for (int b = 0; b < pull.length; b++) {
                // with the pull of the step before, the little give comes to nothing in the end
                equations.right[equations.size + b] -= Tolerance.BOND_GIVES * pull[b];
            }
            double[] move = equations.solved();
            System.arraycopy(move, equations.size, pull, 0, pull.length);
            curves = equations.moved(move);
            double most = 0;
            for (int i = 0; i < equations.size; i++) {
                most = Math.max(most, Math.abs(move[i]));
            }
            if (most < Tolerance.LAST_STEP || !Double.isFinite(most)) {
                break;
            }
        }
        return curves;
    }

    /**
     * The variance of a figure of the curves: that of least squares with linear constraints, by the equations of one step
     * with the figure's slopes on the right (Bjorck, section 5.1).
     *
     * @param slopes how the figure changes with every number of the curves, in their order
     */
    double variance(List<Curve> curves, List<Bond> bonds, double[] slopes) {
        Equations equations = new Equations(curves, bonds, points);
        Arrays.fill(equations.right, 0);
        System.arraycopy(slopes, 0, equations.right, 0, slopes.length);
        double[] move = equations.solved();
        double sum = 0;
        for (int k = 0; k < slopes.length; k++) {
            sum += slopes[k] * move[k];
        }
        return sum * noise * noise;
    }

    /** How a figure changes with every number of the curves, in their order; by differences. */
    static double[] slopes(List<Curve> curves, ToDoubleFunction<List<Curve>> figure) {
        Equations equations = new Equations(curves, List.of(), List.of());
        double[] slopes = new double[equations.size];
        for (int k = 0; k < slopes.length; k++) {
            double[] step = new double[slopes.length];
            step[k] = Tolerance.SLOPE_STEP;
            double more = figure.applyAsDouble(equations.moved(step));
            step[k] = -Tolerance.SLOPE_STEP;
            slopes[k] = (more - figure.applyAsDouble(equations.moved(step))) / 2 / Tolerance.SLOPE_STEP;
        }
        return slopes;
    }

    private double error(List<Curve> curves) {
        double sum = 0;
        for (int i = 0; i < curves.size(); i++) {
            for (Point p : points.get(i)) {
                double off = curves.get(i).off(p) / noise;
                sum += off * off;
            }
        }
        return sum;
    }

    private static double strain(List<Curve> curves, List<Bond> bonds) {
        double worst = 0;
        Equations equations = new Equations(curves, List.of(), List.of());
        for (Bond bond : bonds) {
            worst = Math.max(worst, Math.abs(equations.bond(bond, new double[equations.size])));
        }
        return Double.isNaN(worst) ? Double.POSITIVE_INFINITY : worst;
    }

    /** The linear equations of one step. */
    private static final class Equations {
        private final List<Curve> curves;
        private final int[] at;
        private final int size;
        private final double[][] matrix;
        private final double[] right;

        Equations(List<Curve> curves, List<Bond> bonds, List<List<Point>> points) {
            this.curves = curves;
            this.at = new int[curves.size() + 1];
            for (int i = 0; i < curves.size(); i++) {
                at[i + 1] = at[i] + (curves.get(i) instanceof Curve.Round ? 3 : 2);
            }
            this.size = at[curves.size()];
            this.matrix = new double[size + bonds.size()][size + bonds.size()];
            this.right = new double[size + bonds.size()];
            for (int i = 0; i < points.size(); i++) {
                squares(i, points.get(i));
            }
            for (int b = 0; b < bonds.size(); b++) {
                double[] slope = new double[size];
                double value = bond(bonds.get(b), slope);
                for (int k = 0; k < size; k++) {
                    matrix[size + b][k] = slope[k];
                    matrix[k][size + b] = slope[k];
                }
                matrix[size + b][size + b] = -Tolerance.BOND_GIVES;
                right[size + b] = -value;
            }
        }

        private void squares(int i, List<Point> on) {
            boolean round = curves.get(i) instanceof Curve.Round;
            int width = round ? 3 : 2;
            double[] slope = new double[3];
            for (Point p : on) {
                double off = slopes(curves.get(i), p, slope);
                for (int r = 0; r < width; r++) {
                    right[at[i] + r] -= slope[r] * off;
                    for (int c = 0; c < width; c++) {
                        matrix[at[i] + r][at[i] + c] += slope[r] * slope[c];
                    }
                }
            }
        }

        /** Distance of a point from a curve, and how it changes with the curve's numbers. */
        private static double slopes(Curve curve, Point p, double[] slope) {
            if (curve instanceof Curve.Round round) {
                // in plain numbers: this is where the time of a fit goes
                double x = p.x() - round.center().x();
                double y = p.y() - round.center().y();
                double away = Math.sqrt(x * x + y * y);
                double sign = Math.signum(round.bend());
                slope[0] = -sign * x / away;
                slope[1] = -sign * y / away;
                slope[2] = -1;
                return sign * away - round.bend();
            } else if (curve instanceof Curve.Straight straight) {
                slope[0] = straight.normal().x() * p.y() - straight.normal().y() * p.x();
                slope[1] = -1;
            }
            return curve.off(p);
        }

        /** By how much a bond is not kept, and how that changes with every number. */
        double bond(Bond bond, double[] slope) {
            if (bond instanceof Bond.Tangent tangent) {
                return tangent(tangent, slope);
            } else if (bond instanceof Bond.Angle angle) {
                slope[at[angle.line()]] = 1;
                return Math.IEEEremainder(
                        ((Curve.Straight) curves.get(angle.line())).angle() - angle.angle(), 2 * Math.PI);
            } else if (bond instanceof Bond.Offset offset) {
                slope[at[offset.line()] + 1] = 1;
                return ((Curve.Straight) curves.get(offset.line())).offset() - offset.offset();
            } else if (bond instanceof Bond.Flush flush) {
                slope[at[flush.first()] + 1] = 1;
                slope[at[flush.second()] + 1] = -1;
                return ((Curve.Straight) curves.get(flush.first())).offset()
                        - ((Curve.Straight) curves.get(flush.second())).offset();
            } else if (bond instanceof Bond.Radius radius) {
                Curve.Round round = (Curve.Round) curves.get(radius.round());
                slope[at[radius.round()] + 2] = Math.signum(round.bend());
                return round.radius() - radius.radius();
            } else if (bond instanceof Bond.Square square) {
                Curve.Straight line = (Curve.Straight) curves.get(square.line());
                Point center = ((Curve.Round) curves.get(square.round())).center();
                slope[at[square.line()]] = line.normal().left().dot(center);
                slope[at[square.line()] + 1] = -1;
                slope[at[square.round()]] = line.normal().x();
                slope[at[square.round()] + 1] = line.normal().y();
                return line.off(center);
            } else if (bond instanceof Bond.Alike alike) {
                slope[at[alike.first()] + 2] = 1;
                slope[at[alike.second()] + 2] = 1;
                return ((Curve.Round) curves.get(alike.first())).bend()
                        + ((Curve.Round) curves.get(alike.second())).bend();
            }
            Bond.Through through = (Bond.Through) bond;
            double[] own = new double[3];
            Curve curve = curves.get(through.curve());
            double off = slopes(curve, through.point(), own);
            System.arraycopy(own, 0, slope, at[through.curve()], curve instanceof Curve.Round ? 3 : 2);
            return off;
        }

        private double tangent(Bond.Tangent bond, double[] slope) {
            Curve a = curves.get(bond.first());
            Curve b = curves.get(bond.second());
            double turned = bond.back() ? -1 : 1;
            if (a instanceof Curve.Round one && b instanceof Curve.Round other) {
                int f = at[bond.first()];
                int s = at[bond.second()];
                // both centers lie on the common normal, each its own bend from the place where they meet
                Point between = one.center().minus(other.center());
                Point way = between.unit();
                double apart = one.bend() - turned * other.bend();
                double sense = Math.signum(apart);
                slope[f] += way.x();
                slope[f + 1] += way.y();
                slope[f + 2] -= sense;
                slope[s] -= way.x();
                slope[s + 1] -= way.y();
                slope[s + 2] += turned * sense;
                return between.length() - Math.abs(apart);
            }
            boolean lineFirst = a instanceof Curve.Straight;
            Curve.Straight line = (Curve.Straight) (lineFirst ? a : b);
            Curve.Round round = (Curve.Round) (lineFirst ? b : a);
            int l = at[lineFirst ? bond.first() : bond.second()];
            int r = at[lineFirst ? bond.second() : bond.first()];
            Point normal = line.normal();
            slope[l] += normal.left().dot(round.center());
            slope[l + 1] -= 1;
            slope[r] += normal.x();
            slope[r + 1] += normal.y();
            slope[r + 2] += turned;
            return normal.dot(round.center()) - line.offset() + turned * round.bend();
        }

        List<Curve> moved(double[] move) {
            List<Curve> moved = new ArrayList<>();
            for (int i = 0; i < curves.size(); i++) {
                int k = at[i];
                if (curves.get(i) instanceof Curve.Round round) {
                    // a bend must not change its side in one step: halve its way to nothing instead
                    double bend = round.bend() + move[k + 2];
                    bend = bend * round.bend() > 0 ? bend : round.bend() / 2;
                    moved.add(new Curve.Round(round.center().plus(new Point(move[k], move[k + 1])), bend));
                } else if (curves.get(i) instanceof Curve.Straight straight) {
                    moved.add(new Curve.Straight(
                            Point.towards(straight.angle() + move[k]), straight.offset() + move[k + 1]));
                }
            }
            return moved;
        }

        /** Elimination with the largest pivot of each column. */
        double[] solved() {
            int n = right.length;
            for (int c = 0; c < n; c++) {
                int pivot = c;
                for (int r = c + 1; r < n; r++) {
                    pivot = Math.abs(matrix[r][c]) > Math.abs(matrix[pivot][c]) ? r : pivot;
                }
                double[] row = matrix[pivot];
                matrix[pivot] = matrix[c];
                matrix[c] = row;
                double value = right[pivot];
                right[pivot] = right[c];
                right[c] = value;
                for (int r = c + 1; r < n; r++) {
                    double factor = matrix[r][c] / row[c];
                    if (factor != 0) {
                        for (int k = c; k < n; k++) {
                            matrix[r][k] -= factor * row[k];
                        }
                        right[r] -= factor * value;
                    }
                }
            }
            for (int r = n - 1; r >= 0; r--) {
                for (int k = r + 1; k < n; k++) {
                    right[r] -= matrix[r][k] * right[k];
                }
                right[r] /= matrix[r][r];
            }
            return right;
        }
    }
}
