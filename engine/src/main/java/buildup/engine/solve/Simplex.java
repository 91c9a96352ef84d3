package buildup.engine.solve;

import buildup.profiles.outline.Tolerance;
import java.util.Arrays;

/**
 * The simplex method on a dense table, for variables with bounds: one that stands at its greatest value is written as
 * what it lacks to that value, so that all variables outside the basis are 0 (Dantzig, Linear Programming and Extensions,
 * 1963, chapter 18; from memory). In a row of steps that gain nothing, the rule of Bland keeps it from going round in
 * circles (New finite pivoting rules for the simplex method, Mathematics of Operations Research 2, 1977; from memory).
 *
 * <p>It is made for some hundred variables. Whole libraries solve thousands, and take longer to load than a stack to answer.
 */
final class Simplex {
    /** No program of a stack or of an order for sticks comes near it: those take about as many steps as they have rows. */
    private static final int MOST_STEPS = 50_000;

    /** Steps without gain after which no step is chosen for its promise any more. */
    private static final int PATIENCE = 200;

    private final int variables;

    /** How far each variable may go; what stands in for a missing start follows the variables. */
    private final double[] most;

    /** A row for each equation: a factor for each variable, then the value of the variable in the basis. */
    private final double[][] rows;

    /** The variable in the basis of each row; not less than {@link #variables} where none is yet. */
    private final int[] basis;

    /** Which variables are written as what they lack to their greatest value. */
    private final boolean[] turned;

    /** What one more of each variable gains, then, with its sign turned, what has been gained. */
    private double[] gains;

    private int steps;

    /**
     * A program.
     *
     * @param most the greatest value of each variable, infinite for none; the least is 0
     * @param factors of each equation, one for each variable
     * @param sums what each equation comes to
     */
    Simplex(double[] most, double[][] factors, double[] sums) {
        this.variables = most.length;
        this.most = Arrays.copyOf(most, variables + sums.length);
        Arrays.fill(this.most, variables, this.most.length, Double.POSITIVE_INFINITY);
        this.rows = new double[sums.length][];
        this.basis = new int[sums.length];
        this.turned = new boolean[variables];
        this.gains = new double[variables + 1];
        for (int i = 0; i < sums.length; i++) {
            rows[i] = row(factors[i], sums[i]);
            basis[i] = variables + i;
        }
    }

    /** An equation whose sum is not negative, its factors made so that the greatest is between 1/2 and 1. */
    private static double[] row(double[] factors, double sum) {
        double greatest = 0;
        for (double factor : factors) {
            greatest = Math.max(greatest, Math.abs(factor));
        }
        double scale = greatest > 0 ? Math.scalb(1, -Math.getExponent(greatest) - 1) : 1;
        double times = sum < 0 ? -scale : scale;
        double[] row = new double[factors.length + 1];
        for (int j = 0; j < factors.length; j++) {
            row[j] = factors[j] * times;
        }
        row[factors.length] = sum * times;
        return row;
    }

    /**
     * The values of all variables where a sum of them is greatest; empty when the equations contradict each other, or when
     * nothing bounds the sum.
     *
     * @param aim the factor of each variable in that sum
     */
    double[] greatest(double[] aim) {
        return start() && climb(aim) ? values() : new double[0];
    }

    /** Finds values that keep all equations: what they still lack is made as small as can be. */
    private boolean start() {
        double all = 0;
        for (double[] row : rows) {
            all = Math.max(all, row[variables]);
            for (int j = 0; j <= variables; j++) {
                gains[j] += row[j];
            }
        }
        climb();
        double lacks = 0;
        for (int i = 0; i < rows.length; i++) {
            lacks += basis[i] < variables ? 0 : rows[i][variables];
        }
        if (lacks > Tolerance.COINCIDENT * all) {
            return false;
        }
        for (int i = 0; i < rows.length; i++) {
            if (basis[i] >= variables) {
                settle(i);
            }
        }
        return true;
    }

    /** Gives a row without a variable one of its own; where it has none, it says nothing that the others do not say. */
    private void settle(int i) {
        int best = 0;
        for (int j = 1; j < variables; j++) {
            best = Math.abs(rows[i][j]) > Math.abs(rows[i][best]) ? j : best;
        }
        rows[i][variables] = 0;
        if (variables > 0 && Math.abs(rows[i][best]) > Tolerance.SIMPLEX_DUST) {
            enter(best, i);
        } else {
            Arrays.fill(rows[i], 0);
        }
    }

    private boolean climb(double[] aim) {
        gains = new double[variables + 1];
        for (int j = 0; j < variables; j++) {
            gains[j] = turned[j] ? -aim[j] : aim[j];
        }
        for (int i = 0; i < rows.length; i++) {
            if (basis[i] < variables) {
                subtract(gains, gains[basis[i]], rows[i]);
            }
        }
        return climb();
    }

    /** Steps up until no variable promises more; false when one may grow without end. */
    private boolean climb() {
        int idle = 0;
        for (int next = entering(true); next >= 0 && steps < MOST_STEPS; next = entering(idle < PATIENCE)) {
            steps++;
            int leaving = leaving(next);
            double way = leaving < 0 ? most[next] : room(leaving, next, 0);
            if (Double.isInfinite(way) && gains[next] > Tolerance.SIMPLEX_FIRM) {
                return false;
            }
            if (Double.isInfinite(way)) {
                // nothing in its column is more than dust, and so is what it promises
                gains[next] = 0;
            } else if (leaving < 0) {
                turn(next);
            } else {
                if (rows[leaving][next] < 0) {
                    turnBasis(leaving);
                }
                enter(next, leaving);
            }
            idle = way > Tolerance.SIMPLEX_ROUNDING ? 0 : idle + 1;
        }
        return true;
    }

    /** The variable that promises most, or the first that promises anything; -1 when none does. */
    private int entering(boolean best) {
        int found = -1;
        double most = Tolerance.SIMPLEX_ROUNDING;
        for (int j = 0; j < variables; j++) {
            if (gains[j] > most && this.most[j] > 0) {
                found = j;
                most = gains[j];
                if (!best) {
                    break;
                }
            }
        }
        return found;
    }

    /**
     * The row whose variable is the first to reach a bound as another grows; -1 when that one reaches its own first. Bounds
     * give a little, and of the rows that then come first the one with the greatest factor is taken, since dividing by that
     * blurs least (Harris, Pivot selection methods of the Devex LP code, Mathematical Programming 5, 1973; from memory).
     */
    private int leaving(int next) {
        double least = most[next];
        for (int i = 0; i < rows.length; i++) {
            least = Math.min(least, room(i, next, Tolerance.SIMPLEX_GIVES));
        }
        int found = -1;
        for (int i = 0; i < rows.length; i++) {
            boolean first = room(i, next, 0) <= least;
            if (first && (found < 0 || Math.abs(rows[i][next]) > Math.abs(rows[found][next]))) {
                found = i;
            }
        }
        return found >= 0 && most[next] < room(found, next, 0) ? -1 : found;
    }

    /** How far a variable may grow until the one in the basis of a row reaches a bound that gives so much. */
    private double room(int i, int next, double gives) {
        double factor = rows[i][next];
        if (factor > Tolerance.SIMPLEX_DUST) {
            return (Math.max(0, rows[i][variables]) + gives) / factor;
        }
        if (factor < -Tolerance.SIMPLEX_DUST) {
            return (Math.max(0, most[basis[i]] - rows[i][variables]) + gives) / -factor;
        }
        return Double.POSITIVE_INFINITY;
    }

    /** From here on a variable outside the basis is counted from its other bound. */
    private void turn(int j) {
        for (double[] row : rows) {
            turn(row, j);
        }
        turn(gains, j);
        turned[j] = !turned[j];
    }

    private void turn(double[] row, int j) {
        row[variables] -= row[j] * most[j];
        row[j] = -row[j];
    }

    /** The same for the variable in the basis of a row. */
    private void turnBasis(int i) {
        double[] row = rows[i];
        int own = basis[i];
        for (int j = 0; j < variables; j++) {
            row[j] = -row[j];
        }
        row[own] = 1;
        row[variables] = most[own] - row[variables];
        turned[own] = !turned[own];
    }

    /** Puts a variable into the basis of a row, in place of the one that is there. */
    private void enter(int next, int i) {
        double[] row = rows[i];
        double by = 1 / row[next];
        for (int j = 0; j <= variables; j++) {
            row[j] *= by;
        }
        row[next] = 1;
        for (int other = 0; other < rows.length; other++) {
            if (other != i) {
                subtract(rows[other], rows[other][next], row);
                rows[other][next] = 0;
            }
        }
        subtract(gains, gains[next], row);
        gains[next] = 0;
        basis[i] = next;
    }

    private static void subtract(double[] from, double times, double[] row) {
        if (times != 0) {
            for (int j = 0; j < row.length; j++) {
                from[j] -= times * row[j];
            }
        }
    }

    private double[] values() {
        double[] values = new double[variables];
        for (int i = 0; i < rows.length; i++) {
            if (basis[i] < variables) {
                values[basis[i]] = Math.max(0, Math.min(most[basis[i]], rows[i][variables]));
            }
        }
        for (int j = 0; j < variables; j++) {
            values[j] = turned[j] ? most[j] - values[j] : values[j];
        }
        return values;
    }
}
