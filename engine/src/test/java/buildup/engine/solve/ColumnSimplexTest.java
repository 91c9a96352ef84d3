package buildup.engine.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.solve.ColumnSimplex.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ColumnSimplexTest {
    private static final double LACK = 1000;

    private static Column column(double cost, double... factors) {
        int[] rows = IntStream.range(0, factors.length)
                .filter(row -> factors[row] != 0)
                .toArray();
        return new Column(
                rows, IntStream.of(rows).mapToDouble(row -> factors[row]).toArray(), cost);
    }

    /** Every stick holds two pieces, whichever: eight pieces take four, and each is worth half a stick. */
    @Test
    void parts_of_loads_come_to_what_is_worked_by_hand() {
        ColumnSimplex simplex = new ColumnSimplex(new double[] {3, 5}, new double[] {LACK, LACK});
        int both = simplex.add(column(1, 1, 1));
        int second = simplex.add(column(1, 0, 2));
        int first = simplex.add(column(1, 2, 0));
        simplex.solve(100);
        double[] amounts = simplex.amounts();
        assertThat(amounts[both] + amounts[second] + amounts[first]).isEqualTo(4, within(1e-9));
        assertThat(simplex.price(0)).isEqualTo(0.5, within(1e-9));
        assertThat(simplex.price(1)).isEqualTo(0.5, within(1e-9));
    }

    @Test
    void what_no_column_holds_is_left_out_at_its_price() {
        ColumnSimplex simplex = new ColumnSimplex(new double[] {2, 1}, new double[] {LACK, LACK});
        simplex.add(column(3, 1, 0));
        simplex.solve(100);
        assertThat(simplex.amounts()[1]).isEqualTo(1, within(1e-9));
        assertThat(simplex.price(1)).isEqualTo(LACK, within(1e-9));
    }

    /** Against the table that solves the other programs, with columns that come one by one. */
    @Test
    void random_programs_cost_what_the_table_says() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            int rows = 3 + random.nextInt(12);
            double[] sums = random.doubles(rows, 1, 9).toArray();
            List<Column> columns = new ArrayList<>();
            for (int i = 0; i < 4 * rows; i++) {
                double[] factors = new double[rows];
                factors[i % rows] = 1 + random.nextInt(3);
                factors[random.nextInt(rows)] += random.nextInt(3);
                columns.add(column(1 + random.nextInt(20), factors));
            }
            ColumnSimplex simplex =
                    new ColumnSimplex(sums, random.doubles(rows, LACK, LACK + 1).toArray());
            List<Integer> numbers = new ArrayList<>();
            for (Column column : columns) {
                numbers.add(simplex.add(column));
                simplex.solve(10_000);
            }
            double[] amounts = simplex.amounts();
            double cost = 0;
            double worth = 0;
            for (int i = 0; i < columns.size(); i++) {
                cost += amounts[numbers.get(i)] * columns.get(i).cost();
            }
            for (int row = 0; row < rows; row++) {
                assertThat(amounts[row])
                        .as("seed %d: nothing is left out", seed)
                        .isEqualTo(0, within(1e-6));
                worth += simplex.price(row) * sums[row];
            }
            assertThat(cost).as("seed %d", seed).isEqualTo(table(sums, columns), within(1e-5));
            assertThat(worth).as("seed %d: the prices are worth it", seed).isEqualTo(cost, within(1e-5));
        }
    }

    private static double table(double[] sums, List<Column> columns) {
        LinearProgram program = new LinearProgram();
        columns.forEach(column -> program.atLeastZero(Double.POSITIVE_INFINITY));
        for (int row = 0; row < sums.length; row++) {
            LinearProgram.Sum terms = new LinearProgram.Sum();
            for (int i = 0; i < columns.size(); i++) {
                for (int at = 0; at < columns.get(i).rows().length; at++) {
                    if (columns.get(i).rows()[at] == row) {
                        terms.add(i, columns.get(i).factors()[at]);
                    }
                }
            }
            program.equation(terms, sums[row]);
        }
        LinearProgram.Sum cost = new LinearProgram.Sum();
        for (int i = 0; i < columns.size(); i++) {
            cost.add(i, -columns.get(i).cost());
        }
        LinearProgram.Solution solution = program.greatest(cost).orElseThrow();
        return IntStream.range(0, columns.size())
                .mapToDouble(i -> solution.value(i) * columns.get(i).cost())
                .sum();
    }
}
