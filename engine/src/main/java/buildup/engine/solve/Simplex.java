package buildup.engine.solve;

import buildup.engine.solve.LinearProgram.Sum;
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

    /**
     * A row for each equation: the factors of the variables outside the basis, by column, then the value of the variable in
     * the basis. Columns of variables in the basis are all zeros but for a one, and are not written down.
     */
    private final double[][] rows;

    /** The variable of each column. */
    private final int[] column;

    private int columns;

    /** The variable in the basis of each row; not less than {@link #variables} where none is yet. */
    private final int[] basis;

    /** Which variables are written as what they lack to their greatest value. */
    private final boolean[] turned;

    /** What one more of the variable of each column gains, then, with its sign turned, what has been gained. */
    private double[] gains = new double[0];

    private int steps;

    /** For each row, how far the variable that grows may go until that of the row reaches a bound: scratch of a step. */
    private final double[] rooms;

    /**
     * A program.
     *
     * @param most the greatest value of each variable, infinite for none; the least is 0
     * @param equations the sums of variables
     * @param sums what each comes to
     */
    Simplex(double[] most, Sum[] equations, double[] sums) {
        this.variables = most.length;
        this.most = Arrays.copyOf(most, variables + sums.length);
        Arrays.fill(this.most, variables, this.most.length, Double.POSITIVE_INFINITY);
        this.rows = new double[sums.length][];
        this.basis = new int[sums.length];
        this.turned = new boolean[variables];
        this.rooms = new double[sums.length];
        double[] greatest = new double[sums.length];
        double[] starts = begin(equations, sums, greatest);
        this.column = new int[variables];
        int[] at = new int[variables];
        Arrays.fill(at, -1);
        for (int i = 0; i < basis.length; i++) {
            if (basis[i] < variables) {
                at[basis[i]] = -2;
            }
        }
        for (int j = 0; j < variables; j++) {
            if (at[j] == -1) {
                at[j] = columns;
                column[columns++] = j;
            }
        }
        for (int i = 0; i < rows.length; i++) {
            double times = basis[i] < variables ? 1 / starts[i] : scale(greatest[i], sums[i]);
            rows[i] = new double[columns + 1];
            for (int k = 0; k < equations[i].terms(); k++) {
                int place = at[equations[i].variable(k)];
                if (place >= 0) {
                    rows[i][place] += times * equations[i].factor(k);
                }
            }
            rows[i][columns] = Math.abs(times * sums[i]);
        }
    }

    /** By what an equation is multiplied, that its sum is not negative and its greatest factor between 1/2 and 1. */
    private static double scale(double greatest, double sum) {
        double scale = greatest > 0 ? Math.scalb(1, -Math.getExponent(greatest) - 1) : 1;
        return sum < 0 ? -scale : scale;
    }

    /**
     * A variable without a limit that stands in one equation alone is that one's start, where it may take up its sum.
     *
     * @param greatest is filled with the greatest factor of each equation, its sign left out
     * @return the factors of those starts, by equation
     */
    private double[] begin(Sum[] equations, double[] sums, double[] greatest) {
        int[] times = new int[variables];
        for (int i = 0; i < sums.length; i++) {
            Sum equation = equations[i];
            for (int k = 0; k < equation.terms(); k++) {
                times[equation.variable(k)]++;
                greatest[i] = Math.max(greatest[i], Math.abs(equation.factor(k)));
            }
        }
        double[] starts = new double[sums.length];
        for (int i = 0; i < sums.length; i++) {
            basis[i] = variables + i;
            double firm = Tolerance.SIMPLEX_FIRM * greatest[i];
            for (int k = 0; k < equations[i].terms() && basis[i] >= variables; k++) {
                int j = equations[i].variable(k);
                double factor = equations[i].factor(k);
                boolean takesUp = Math.abs(factor) > firm && factor * sums[i] >= 0;
                if (times[j] == 1 && Double.isInfinite(most[j]) && takesUp) {
                    basis[i] = j;
                    starts[i] = factor;
                }
            }
        }
        return starts;
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
        gains = new double[columns + 1];
        double all = 0;
        boolean lacking = false;
        for (int i = 0; i < rows.length; i++) {
            all = Math.max(all, rows[i][columns]);
            if (basis[i] >= variables) {
                lacking = true;
                for (int c = 0; c <= columns; c++) {
                    gains[c] += rows[i][c];
                }
            }
        }
        if (lacking) {
            climb();
        }
        double lacks = 0;
        for (int i = 0; i < rows.length; i++) {
            lacks += basis[i] < variables ? 0 : rows[i][columns];
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
        int best = -1;
        double greatest = Tolerance.SIMPLEX_DUST;
        for (int c = 0; c < columns; c++) {
            double factor = Math.abs(rows[i][c]);
            if (factor > greatest || (best >= 0 && factor >= greatest && column[c] < column[best])) {
                best = c;
                greatest = factor;
            }
        }
        rows[i][columns] = 0;
        if (best >= 0) {
            enter(best, i);
        } else {
            Arrays.fill(rows[i], 0);
        }
    }

    private boolean climb(double[] aim) {
        gains = new double[columns + 1];
        for (int c = 0; c < columns; c++) {
            gains[c] = gain(aim, column[c]);
        }
        for (int i = 0; i < rows.length; i++) {
            if (basis[i] < variables) {
                subtract(gains, gain(aim, basis[i]), rows[i]);
            }
        }
        return climb();
    }

    private double gain(double[] aim, int j) {
        return turned[j] ? -aim[j] : aim[j];
    }

    /** Steps up until no variable promises more; false when one may grow without end. */
    private boolean climb() {
        int idle = 0;
        for (int next = entering(true); next >= 0 && steps < MOST_STEPS; next = entering(idle < PATIENCE)) {
            steps++;
            int leaving = leaving(next);
            double way = leaving < 0 ? most[column[next]] : rooms[leaving];
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

    /** The column that promises most, or the first variable that promises anything; -1 when none does. */
    private int entering(boolean best) {
        int found = -1;
        double promise = Tolerance.SIMPLEX_ROUNDING;
        for (int c = 0; c < columns; c++) {
            double gain = gains[c];
            if (gain > Tolerance.SIMPLEX_ROUNDING && most[column[c]] > 0) {
                boolean first = found < 0 || column[c] < column[found];
                if (best ? gain > promise || (gain >= promise && first) : first) {
                    found = c;
                    promise = gain;
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
        double own = most[column[next]];
        double least = own;
        for (int i = 0; i < rows.length; i++) {
            double factor = rows[i][next];
            double size = Math.abs(factor);
            if (size > Tolerance.SIMPLEX_DUST) {
                double left = toBound(i, factor > 0);
                rooms[i] = left / size;
                least = Math.min(least, (left + Tolerance.SIMPLEX_GIVES) / size);
            } else {
                rooms[i] = Double.POSITIVE_INFINITY;
            }
        }
        int found = -1;
        double greatest = 0;
        for (int i = 0; i < rows.length; i++) {
            if (rooms[i] <= least) {
                double size = Math.abs(rows[i][next]);
                if (found < 0 || size > greatest) {
                    found = i;
                    greatest = size;
                }
            }
        }
        return found >= 0 && own < rooms[found] ? -1 : found;
    }

    /** How far the variable in the basis of a row is from 0 as it falls, or from its greatest value. */
    private double toBound(int i, boolean falls) {
        double value = rows[i][columns];
        return Math.max(0, falls ? value : most[basis[i]] - value);
    }

    /** From here on the variable of a column is counted from its other bound. */
    private void turn(int c) {
        int j = column[c];
        for (double[] row : rows) {
            turn(row, c, most[j]);
        }
        turn(gains, c, most[j]);
        turned[j] = !turned[j];
    }

    private void turn(double[] row, int c, double far) {
        row[columns] -= row[c] * far;
        row[c] = -row[c];
    }

    /** The same for the variable in the basis of a row. */
    private void turnBasis(int i) {
        double[] row = rows[i];
        int own = basis[i];
        for (int c = 0; c < columns; c++) {
            row[c] = -row[c];
        }
        row[columns] = most[own] - row[columns];
        turned[own] = !turned[own];
    }

    /** Puts the variable of a column into the basis of a row, and the one that is there into the column. */
    private void enter(int c, int i) {
        double[] row = rows[i];
        double by = 1 / row[c];
        for (int j = 0; j <= columns; j++) {
            row[j] *= by;
        }
        row[c] = by;
        for (int other = 0; other < rows.length; other++) {
            if (other != i) {
                exchange(rows[other], c, row);
            }
        }
        exchange(gains, c, row);
        int left = basis[i];
        basis[i] = column[c];
        column[c] = left;
        if (left >= variables) {
            drop(c);
        }
    }

    /** What stood in for a missing start is needed no more: the last column takes its place. */
    private void drop(int c) {
        columns--;
        column[c] = column[columns];
        for (double[] row : rows) {
            row[c] = row[columns];
            row[columns] = row[columns + 1];
        }
        gains[c] = gains[columns];
        gains[columns] = gains[columns + 1];
    }

    private void exchange(double[] from, int c, double[] row) {
        double times = from[c];
        if (Math.abs(times) > 0) {
            from[c] = 0;
            subtract(from, times, row);
        }
    }

    private void subtract(double[] from, double times, double[] row) {
        if (Math.abs(times) > 0) {
            for (int j = 0; j <= columns; j++) {
                from[j] -= times * row[j];
            }
        }
    }

    private double[] values() {
        double[] values = new double[variables];
        for (int i = 0; i < rows.length; i++) {
            if (basis[i] < variables) {
                values[basis[i]] = Math.max(0, Math.min(most[basis[i]], rows[i][columns]));
            }
        }
        for (int j = 0; j < variables; j++) {
            values[j] = turned[j] ? most[j] - values[j] : values[j];
        }
        return values;
    }
}
