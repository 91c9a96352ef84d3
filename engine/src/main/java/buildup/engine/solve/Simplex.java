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
 * What it writes on is kept from one program to the next.
 */
final class Simplex {
    /** No program of a stack or of an order for sticks comes near it: those take about as many steps as they have rows. */
    private static final int MOST_STEPS = 50_000;

    /** Steps without gain after which no step is chosen for its promise any more. */
    private static final int PATIENCE = 200;

    private static final int NOWHERE = -1;

    private int variables;

    /** How far each variable may go; what stands in for a missing start follows the variables. */
    private double[] most = new double[0];

    private int count;

    /**
     * A row for each equation: the factors of the variables outside the basis, by column, then the value of the variable in
     * the basis. Columns of variables in the basis are all zeros but for a one, and are not written down.
     */
    private double[][] rows = new double[0][];

    /** The variable of each column. */
    private int[] column = new int[0];

    private int columns;

    /** The variable in the basis of each row; not less than {@link #variables} where none is yet. */
    private int[] basis = new int[0];

    /** Which variables are written as what they lack to their greatest value. */
    private boolean[] turned = new boolean[0];

    /** What one more of the variable of each column gains, then, with its sign turned, what has been gained. */
    private double[] gains = new double[0];

    private int steps;

    /** For each row, how far the variable that grows may go until that of the row reaches a bound: scratch of a step. */
    private double[] rooms = new double[0];

    /** For each variable the column that it has at the start, {@link #NOWHERE} for one in the basis: scratch of a start. */
    private int[] places = new int[0];

    /** For each equation the factor of the variable that is its start, and the greatest factor: scratch of a start. */
    private double[] starts = new double[0];

    private double[] greatest = new double[0];

    /** Writes the table of a program down, in the place of the one before. */
    private void write(LinearProgram program) {
        variables = program.unknowns();
        count = program.count();
        steps = 0;
        makeRoom();
        for (int j = 0; j < variables; j++) {
            most[j] = program.most(j);
            turned[j] = false;
        }
        Arrays.fill(most, variables, variables + count, Double.POSITIVE_INFINITY);
        begin(program);
        columns = 0;
        for (int j = 0; j < variables; j++) {
            if (places[j] != NOWHERE) {
                places[j] = columns;
                column[columns++] = j;
            }
        }
        for (int i = 0; i < count; i++) {
            double times = basis[i] < variables ? 1 / starts[i] : scale(greatest[i], program.sum(i));
            double[] row = emptyRow(i);
            for (int k = program.first(i); k < program.first(i + 1); k++) {
                int place = places[program.variable(k)];
                if (place != NOWHERE) {
                    row[place] += times * program.factor(k);
                }
            }
            row[columns] = Math.abs(times * program.sum(i));
        }
    }

    private void makeRoom() {
        if (most.length < variables + count) {
            int room = 2 * (variables + count);
            most = new double[room];
            column = new int[room];
            turned = new boolean[room];
            gains = new double[room + 1];
            places = new int[room];
        }
        if (rows.length < count) {
            rows = Arrays.copyOf(rows, 2 * count);
            basis = new int[rows.length];
            rooms = new double[rows.length];
            starts = new double[rows.length];
            greatest = new double[rows.length];
        }
    }

    /** A row that has room for all columns and the value of its variable. */
    private double[] emptyRow(int i) {
        if (rows[i] == null || rows[i].length <= columns) {
            rows[i] = new double[columns + 1 + columns / 4];
        } else {
            Arrays.fill(rows[i], 0, columns + 1, 0);
        }
        return rows[i];
    }

    /** By what an equation is multiplied, that its sum is not negative and its greatest factor between 1/2 and 1. */
    private static double scale(double greatest, double sum) {
        double scale = greatest > 0 ? Math.scalb(1, -Math.getExponent(greatest) - 1) : 1;
        return sum < 0 ? -scale : scale;
    }

    /**
     * A variable without a limit that stands in one equation alone is that one's start, where it may take up its sum. Notes
     * the greatest factor of each equation, its sign left out.
     */
    private void begin(LinearProgram program) {
        // until places are given: in how many equations a variable stands
        Arrays.fill(places, 0, variables, 0);
        for (int i = 0; i < count; i++) {
            greatest[i] = 0;
            for (int k = program.first(i); k < program.first(i + 1); k++) {
                places[program.variable(k)]++;
                greatest[i] = Math.max(greatest[i], Math.abs(program.factor(k)));
            }
        }
        for (int i = 0; i < count; i++) {
            basis[i] = variables + i;
            double firm = Tolerance.SIMPLEX_FIRM * greatest[i];
            for (int k = program.first(i); k < program.first(i + 1) && basis[i] >= variables; k++) {
                int j = program.variable(k);
                double factor = program.factor(k);
                boolean takesUp = Math.abs(factor) > firm && factor * program.sum(i) >= 0;
                if (places[j] == 1 && Double.isInfinite(most[j]) && takesUp) {
                    basis[i] = j;
                    starts[i] = factor;
                    places[j] = NOWHERE;
                }
            }
        }
    }

    /**
     * The values of all variables where a sum of them is greatest; empty when the equations contradict each other, or when
     * nothing bounds the sum.
     *
     * @param aim the factor of each variable in that sum
     */
    double[] greatest(LinearProgram program, double[] aim) {
        write(program);
        return start() && climb(aim) ? values() : new double[0];
    }

    /** Finds values that keep all equations: what they still lack is made as small as can be. */
    private boolean start() {
        Arrays.fill(gains, 0, columns + 1, 0);
        double all = 0;
        boolean lacking = false;
        for (int i = 0; i < count; i++) {
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
        for (int i = 0; i < count; i++) {
            lacks += basis[i] < variables ? 0 : rows[i][columns];
        }
        if (lacks > Tolerance.COINCIDENT * all) {
            return false;
        }
        for (int i = 0; i < count; i++) {
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
            Arrays.fill(rows[i], 0, columns + 1, 0);
        }
    }

    private boolean climb(double[] aim) {
        gains[columns] = 0;
        for (int c = 0; c < columns; c++) {
            gains[c] = gain(aim, column[c]);
        }
        for (int i = 0; i < count; i++) {
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
        for (int i = 0; i < count; i++) {
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
        for (int i = 0; i < count; i++) {
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
        for (int i = 0; i < count; i++) {
            turn(rows[i], c, most[j]);
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
        for (int other = 0; other < count; other++) {
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
        for (int i = 0; i < count; i++) {
            double[] row = rows[i];
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
        for (int i = 0; i < count; i++) {
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
