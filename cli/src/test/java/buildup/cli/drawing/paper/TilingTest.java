package buildup.cli.drawing.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.scene.Boxes;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TilingTest {
    @ParameterizedTest
    @CsvSource({"5, 4", "7.4, 8.75", "7.41, 8.75", "14, 12", "360, 3", "30, 100"})
    void windows_lap_and_together_hold_the_whole_and_no_row_or_column_is_too_many(double wide, double high) {
        Box whole = new Box(-1, -2, wide - 1, high - 2);
        Tiling tiling = Tiling.of(whole, 7.4, 8.75, Tiling.Drawn.NOTHING);
        assertThat(Tiling.count(whole, 7.4, 8.75)).as("counted and laid out").isEqualTo(tiling.count());
        Box first = tiling.window(0, 0);
        Box last = tiling.window(tiling.columns().count() - 1, tiling.rows().count() - 1);
        assertThat(first.with(last).grown(1e-9).holds(whole.middle(), 0)).isTrue();
        assertThat(first.back()).isLessThanOrEqualTo(whole.back() + 1e-9);
        assertThat(first.top()).isGreaterThanOrEqualTo(whole.top() - 1e-9);
        assertThat(last.face()).isGreaterThanOrEqualTo(whole.face() - 1e-9);
        assertThat(last.bottom()).isLessThanOrEqualTo(whole.bottom() + 1e-9);
        assertThat((tiling.columns().count() - 1) * (7.4 - Tiling.OVERLAP))
                .as("one column fewer")
                .isLessThan(wide);
        for (int column = 0; column + 1 < tiling.columns().count(); column++) {
            assertThat(tiling.window(column, 0).face()
                            - tiling.window(column + 1, 0).back())
                    .isCloseTo(Tiling.OVERLAP, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 1, 0", "0, 0, 0, 1"})
    void neighbors_share_two_crosses(int column, int row, int other, int below) {
        Tiling tiling = Tiling.of(new Box(0, 0, 14, 16), 7.4, 8.75, Tiling.Drawn.NOTHING);
        Crosses crosses = tiling.crosses();
        assertThat(crosses.of(column, row))
                .hasSize(4)
                .filteredOn(cross -> crosses.of(other, below).stream().anyMatch(same -> same.near(cross, 1e-9)))
                .hasSize(2);
    }

    /** Texts of any length up to a window's at any place, as many as a picture has. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void every_text_is_whole_in_one_window_and_the_windows_still_lap_and_hold_the_whole(long seed) {
        Random random = new Random(seed);
        Box whole = new Box(0, 0, 8 + 20 * random.nextDouble(), 9 + 30 * random.nextDouble());
        List<Box> texts = new ArrayList<>();
        for (int i = 0; i < 3 + random.nextInt(20); i++) {
            boolean upright = random.nextInt(3) == 0;
            double wide = upright ? 0.15 : 0.1 + 2.5 * random.nextDouble();
            double high = upright ? 0.1 + 2.5 * random.nextDouble() : 0.15;
            double back = random.nextDouble() * (whole.width() - wide);
            double bottom = random.nextDouble() * (whole.height() - high);
            texts.add(new Box(back, bottom, back + wide, bottom + high));
        }
        Tiling tiling = Tiling.of(whole, 7.4, 8.75, new Tiling.Drawn(texts, List.of()));
        List<Box> windows = new ArrayList<>();
        for (int row = 0; row < tiling.rows().count(); row++) {
            for (int column = 0; column < tiling.columns().count(); column++) {
                windows.add(tiling.window(column, row));
            }
        }
        assertThat(texts)
                .allSatisfy(text -> assertThat(windows)
                        .anyMatch(window -> window.grown(1e-9).holds(new Point(text.back(), text.bottom()), 0)
                                && window.grown(1e-9).holds(new Point(text.face(), text.top()), 0)));
        for (Seams seams : List.of(tiling.columns(), tiling.rows())) {
            for (int i = 1; i < seams.count(); i++) {
                assertThat(seams.lap(i).to() - seams.lap(i).from()).isGreaterThanOrEqualTo(Tiling.OVERLAP - 1e-9);
            }
        }
        Box all = windows.get(0).with(windows.get(windows.size() - 1)).grown(1e-9);
        assertThat(all.holds(new Point(whole.back(), whole.bottom()), 0)).isTrue();
        assertThat(all.holds(new Point(whole.face(), whole.top()), 0)).isTrue();
    }

    /** Rows of long texts one under another at the head of a picture, as names stand over lines that leave it. */
    @ParameterizedTest
    @CsvSource({"9, 8, 2, 4", "14, 8, 5, 3", "20, 8, 3, 6", "14, 16, 6, 5", "8, 20, 4, 3"})
    void no_cross_lies_on_a_text_of_a_part_that_bears_it(double wide, double high, int rows, double text) {
        List<Box> texts = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (double back = 0.3 * row; back + text < wide; back += text + 0.1) {
                texts.add(new Box(back, high - 0.21 * row - 0.14, back + text, high - 0.21 * row));
            }
        }
        Tiling tiling = Tiling.of(new Box(0, 0, wide, high), 7.4, 8.75, new Tiling.Drawn(texts, List.of()));
        for (int row = 0; row < tiling.rows().count(); row++) {
            for (int column = 0; column < tiling.columns().count(); column++) {
                Box window = tiling.window(column, row);
                List<Box> read = tiling.texts(window);
                assertThat(tiling.crosses().of(column, row)).allSatisfy(cross -> {
                    assertThat(window.grown(-Tiling.ARM + 1e-9).holds(cross, 0)).isTrue();
                    assertThat(read)
                            .noneMatch(one ->
                                    Boxes.overlap(one, Box.of(cross, cross).grown(Tiling.ARM)));
                });
            }
        }
    }

    /** However far they lap: the middles of what each shows alone rise, each in its own window. */
    @Test
    void windows_that_lap_far_are_told_apart_on_a_plan() {
        Seams seams = new Seams(List.of(0.0, 2.0, 4.5, 10.0), 7.4);
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < seams.count(); i++) {
            Seams.Span own = seams.own(i);
            double middle = (own.from() + own.to()) / 2;
            assertThat(middle)
                    .isBetween(seams.starts().get(i), seams.starts().get(i) + seams.window())
                    .isGreaterThan(last + 1);
            last = middle;
        }
    }

    @Test
    void a_cross_keeps_clear_of_a_text_where_it_can() {
        Box text = new Box(7.2, 4, 7.35, 8);
        Tiling tiling = Tiling.of(new Box(0, 0, 14, 8), 7.4, 8.75, new Tiling.Drawn(List.of(text), List.of()));
        for (int column = 0; column < tiling.columns().count(); column++) {
            assertThat(tiling.crosses().of(column, 0))
                    .allSatisfy(cross ->
                            assertThat(text.grown(Tiling.ARM).holds(cross, 0)).isFalse());
        }
    }
}
