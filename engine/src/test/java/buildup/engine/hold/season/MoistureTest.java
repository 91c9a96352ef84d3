package buildup.engine.hold.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Mark;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Air, moisture, movement and miters against the Wood Handbook and worked figures; sources in {@code moisture.csv}. */
class MoistureTest {
    /** The table prints a tenth, and rounds it in ways of its own. */
    private static final double PRINTED = 0.06;

    /** The two sets of constants, each rounded on its own, give figures so far apart. */
    private static final double APART = 0.015;

    static Season season(double moisture) {
        return new Season(String.valueOf(moisture), moisture, Optional.empty(), new Mark("test", 1, 1));
    }

    private static List<String[]> rows(String kind) {
        List<String[]> rows = Stream.of(
                        Bench.resource("/reference/moisture.csv").split("\n"))
                .filter(line -> line.startsWith(kind + ","))
                .map(line -> line.split(","))
                .toList();
        assertThat(rows).isNotEmpty();
        return rows;
    }

    private static double number(String[] row, int at) {
        return Double.parseDouble(row[at]);
    }

    @Test
    void wood_comes_to_the_moisture_of_the_handbooks_table() {
        for (String[] row : rows("table")) {
            double fahrenheit = number(row, 1);
            double humidity = number(row, 2) / 100;
            assertThat(hundredths(MoistureContent.fahrenheit(fahrenheit, humidity)))
                    .as(String.join(",", row))
                    .isEqualTo(number(row, 3), within(PRINTED + 1e-9));
            assertThat(hundredths(MoistureContent.celsius((fahrenheit - 32) / 1.8, humidity)))
                    .as(String.join(",", row))
                    .isEqualTo(number(row, 3), within(PRINTED + 1e-9));
        }
    }

    /** The table's worst row, 70 °F and 85 %, is 17.9 in print and 17.9606 by its own equation. */
    private static double hundredths(double moisture) {
        return Math.rint(moisture * 100) / 100;
    }

    @Test
    void both_sets_of_constants_give_what_the_equation_gives_by_hand() {
        for (String[] row : rows("equation")) {
            boolean celsius = row[1].equals("C");
            Air air = new Air(number(row, 2), celsius, number(row, 3) / 100);
            assertThat(air.moisture())
                    .as(String.join(",", row))
                    .isEqualTo(number(row, 4), within(celsius ? 0.0006 : 0.006));
        }
    }

    @Test
    void the_two_sets_differ_by_no_more_than_the_handbook_rounds() {
        for (int fahrenheit = 30; fahrenheit <= 100; fahrenheit += 10) {
            for (int percent = 5; percent <= 95; percent += 5) {
                assertThat(MoistureContent.celsius((fahrenheit - 32) / 1.8, percent / 100.0))
                        .isEqualTo(MoistureContent.fahrenheit(fahrenheit, percent / 100.0), within(APART));
            }
        }
    }

    @Test
    void a_board_moves_as_in_the_handbooks_example() {
        for (String[] row : rows("movement")) {
            double grown =
                    number(row, 1) * Growth.share(number(row, 2), season(number(row, 3)), season(number(row, 4)));
            assertThat(grown).as(String.join(",", row)).isEqualTo(number(row, 5), within(0.00001));
        }
    }

    /** From shrinkage to coefficient by C = S / (30 (100/1) - S (30 - 10)), the handbook's own Table 13-5 from its 4-3. */
    @Test
    void beyond_the_coefficients_a_board_moves_by_the_other_equation() {
        for (String[] row : rows("beyond")) {
            double shrinkage = number(row, 2);
            double coefficient = shrinkage / (100 * 30 - shrinkage * (30 - 10));
            double from = number(row, 3);
            double to = number(row, 4);
            double byHand = number(row, 1) * (to - from) / (3000 / shrinkage - 30 + from);
            assertThat(byHand).isEqualTo(number(row, 5), within(0.00001));
            // the same line, drawn on beyond 14 %
            for (double wet : new double[] {15, 20, 29}) {
                assertThat(number(row, 1) * Growth.share(coefficient, season(from), season(wet)))
                        .isEqualTo(number(row, 1) * (wet - from) / (3000 / shrinkage - 30 + from), within(1e-9));
            }
        }
    }

    @Test
    void a_miter_opens_as_much_as_two_boards_whose_corners_are_moved() {
        for (String[] row : rows("miter")) {
            double width = number(row, 1);
            double growth = number(row, 2);
            double miter = number(row, 3);
            double opening = Miters.opening(width * growth, miter);
            assertThat(opening).as(String.join(",", row)).isEqualTo(number(row, 4), within(0.0001));
            assertThat(opening).isEqualTo(moved(width, -growth, miter), within(1e-12));
            assertThat(opening).isEqualTo(moved(width, growth, miter), within(1e-12));
        }
    }

    /**
     * Two boards that meet along the line x = 0, as points: the long point at the origin, the short point a width further
     * in. Each board grows across its own edge and keeps its length. They are pushed together until they meet at the
     * point that comes first; the gap is what is left at the other.
     */
    private static double moved(double width, double growth, double degrees) {
        double miter = Math.toRadians(degrees);
        // along the board, from the joint away, and across it, from the long point's edge to the short point's
        Point along = new Point(Math.cos(miter), Math.sin(miter));
        Point across = new Point(along.y(), -along.x());
        // on the joint line the short point lies width / cos m from the long point
        Point built = across.times(width).plus(along.times(-width * Math.tan(miter)));
        assertThat(built.x()).isEqualTo(0, within(1e-12));
        Point grown = across.times(width * (1 + growth)).plus(along.times(-width * Math.tan(miter)));
        // the other board is its mirror image: each side of the gap is how far this board's corner is from x = 0
        return 2 * Math.abs(grown.x());
    }
}
