package buildup.engine.solve;

import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How much of each column to take, none of it negative, so that every row comes to its sum at the least cost: the revised
 * simplex method with the inverse of the basis kept (G. B. Dantzig, Linear Programming and Extensions, 1963, chapter 9;
 * from memory). Columns may come while it works, and it goes on from where it is; {@link Simplex}, which has all columns
 * in a table, would begin anew with each.
 */
final class ColumnSimplex {
    /**
     * A column.
     *
     * @param rows in which it stands, each once
     * @param factors in those rows
     */
    // arrays, as all sums run over them; nobody asks whether two columns are equal
    @SuppressWarnings("ArrayRecordComponent")
    record Column(int[] rows, double[] factors, double cost) {}

    /** Pivots after which the inverse is made anew, so that rounding does not gather. */
    private static final int BETWEEN_INVERSIONS = 150;

    private static final int SPREAD = 101;

    private final double[] sums;
    /** The sums moved apart a little, each by another bit, so that no two rows come to their end at once. */
    private final double[] moved;

    private final List<Column> columns = new ArrayList<>();
    private final int[] basis;
    private final double[][] inverse;
    private final double[] taken;
    private final double[] prices;
    private int pivots;
    private int sinceInversion;

    /**
     * @param sums of the rows, not negative
     * @param lack what it costs to leave one of a row's sum out
     */
    ColumnSimplex(double[] sums, double[] lack) {
        this.sums = sums.clone();
        this.moved = new double[sums.length];
        this.basis = new int[sums.length];
        this.inverse = new double[sums.length][sums.length];
        this.taken = new double[sums.length];
        this.prices = new double[sums.length];
        for (int row = 0; row < sums.length; row++) {
            moved[row] =
                    sums[row] + Tolerance.SIMPLEX_APART * (1 + (double) (row * (SPREAD / 2 + 1L) % SPREAD) / SPREAD);
            columns.add(new Column(new int[] {row}, new double[] {1}, lack[row]));
            basis[row] = row;
            inverse[row][row] = 1;
            taken[row] = moved[row];
        }
    }

    /** Adds a column and gives its number; the first rows.length of them are what is left out of each row. */
    int add(Column column) {
        columns.add(column);
        return columns.size() - 1;
    }

    /** Pivots taken so far. */
    int pivots() {
        return pivots;
    }

    /** Takes the columns at the least cost, or as far as so many pivots lead. */
    void solve(int mostPivots) {
        for (int i = 0; i < mostPivots; i++) {
            price();
            int entering = entering();
            if (entering < 0 || !pivot(entering)) {
                return;
            }
        }
        price();
    }

    /** What one more of a row's sum would cost. */
    double price(int row) {
        return prices[row];
    }

    /** How much is taken of every column. */
    double[] amounts() {
        double[] amounts = new double[columns.size()];
        for (int row = 0; row < basis.length; row++) {
            amounts[basis[row]] = taken(row, sums);
        }
        return amounts;
    }

    /** How much is taken of the column of a row of the basis where the rows come to these sums. */
    private double taken(int row, double[] of) {
        double amount = 0;
        for (int i = 0; i < of.length; i++) {
            amount += inverse[row][i] * of[i];
        }
        return Math.max(0, amount);
    }

    private void price() {
        Arrays.fill(prices, 0);
        for (int row = 0; row < basis.length; row++) {
            double cost = columns.get(basis[row]).cost;
            if (cost != 0) {
                double[] own = inverse[row];
                for (int i = 0; i < prices.length; i++) {
                    prices[i] += cost * own[i];
                }
            }
        }
    }

    /** The column that saves most for each that is taken; -1 when none saves anything. */
    private int entering() {
        int best = -1;
        double most = 0;
        for (int number = 0; number < columns.size(); number++) {
            Column column = columns.get(number);
            double worth = 0;
            double size = Math.abs(column.cost);
            for (int i = 0; i < column.rows.length; i++) {
                double part = prices[column.rows[i]] * column.factors[i];
                worth += part;
                size = Math.max(size, Math.abs(part));
            }
            double saves = worth - column.cost;
            if (saves > size * Tolerance.COINCIDENT && saves > most) {
                most = saves;
                best = number;
            }
        }
        return best;
    }

    /** What one of a column changes in each row of the basis. */
    private double[] direction(Column column) {
        double[] direction = new double[basis.length];
        for (int row = 0; row < direction.length; row++) {
            for (int i = 0; i < column.rows.length; i++) {
                direction[row] += inverse[row][column.rows[i]] * column.factors[i];
            }
        }
        return direction;
    }

    private boolean pivot(int entering) {
        double[] direction = direction(columns.get(entering));
        int leaving = leaving(direction);
        if (leaving < 0) {
            return false;
        }
        double amount = taken[leaving] / direction[leaving];
        for (int row = 0; row < direction.length; row++) {
            taken[row] = row == leaving ? amount : Math.max(0, taken[row] - amount * direction[row]);
        }
        eliminate(inverse, direction, leaving);
        basis[leaving] = entering;
        pivots++;
        if (++sinceInversion == BETWEEN_INVERSIONS) {
            invert();
        }
        return true;
    }

    /** The row whose column goes first as the new one comes; of equals the one with the largest factor. */
    private int leaving(double[] direction) {
        int best = -1;
        for (int row = 0; row < direction.length; row++) {
            if (direction[row] > Tolerance.COINCIDENT) {
                double less = best < 0 ? 1 : taken[best] * direction[row] - taken[row] * direction[best];
                if (less > 0 || (less == 0 && direction[row] > direction[best])) {
                    best = row;
                }
            }
        }
        return best;
    }

    private static void eliminate(double[][] rows, double[] direction, int pivot) {
        double[] own = rows[pivot];
        for (int i = 0; i < own.length; i++) {
            own[i] /= direction[pivot];
        }
        for (int row = 0; row < rows.length; row++) {
            double factor = direction[row];
            if (row != pivot && factor != 0) {
                double[] other = rows[row];
                for (int i = 0; i < own.length; i++) {
                    other[i] -= factor * own[i];
                }
            }
        }
    }

    /** The inverse anew, column by column, each in the row where it stands out most. */
    private void invert() {
        sinceInversion = 0;
        int[] old = basis.clone();
        boolean[] used = new boolean[basis.length];
        for (int row = 0; row < basis.length; row++) {
            Arrays.fill(inverse[row], 0);
            inverse[row][row] = 1;
        }
        for (int number : old) {
            double[] direction = direction(columns.get(number));
            int pivot = -1;
            for (int row = 0; row < direction.length; row++) {
                if (!used[row] && (pivot < 0 || Math.abs(direction[row]) > Math.abs(direction[pivot]))) {
                    pivot = row;
                }
            }
            used[pivot] = true;
            eliminate(inverse, direction, pivot);
            basis[pivot] = number;
        }
        for (int row = 0; row < basis.length; row++) {
            taken[row] = taken(row, moved);
        }
    }
}
