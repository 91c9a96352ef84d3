package buildup.cli.drawing.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Box;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TilingTest {
    @ParameterizedTest
    @CsvSource({"5, 4", "7.4, 8.75", "7.41, 8.75", "14, 12", "360, 3", "30, 100"})
    void windows_lap_and_together_hold_the_whole_and_no_row_or_column_is_too_many(double wide, double high) {
        Box whole = new Box(-1, -2, wide - 1, high - 2);
        Tiling tiling = Tiling.of(whole, 7.4, 8.75);
        Box first = tiling.window(0, 0);
        Box last = tiling.window(tiling.columns() - 1, tiling.rows() - 1);
        assertThat(first.with(last).grown(1e-9).holds(whole.middle(), 0)).isTrue();
        assertThat(first.back()).isLessThanOrEqualTo(whole.back() + 1e-9);
        assertThat(first.top()).isGreaterThanOrEqualTo(whole.top() - 1e-9);
        assertThat(last.face()).isGreaterThanOrEqualTo(whole.face() - 1e-9);
        assertThat(last.bottom()).isLessThanOrEqualTo(whole.bottom() + 1e-9);
        assertThat((tiling.columns() - 1) * (7.4 - Tiling.OVERLAP))
                .as("one column fewer")
                .isLessThan(wide);
        for (int column = 0; column + 1 < tiling.columns(); column++) {
            assertThat(tiling.window(column, 0).face()
                            - tiling.window(column + 1, 0).back())
                    .isCloseTo(Tiling.OVERLAP, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 1, 0", "0, 0, 0, 1"})
    void neighbors_share_two_crosses(int column, int row, int other, int below) {
        Tiling tiling = Tiling.of(new Box(0, 0, 14, 16), 7.4, 8.75);
        assertThat(Tiling.crosses(tiling.window(column, row)))
                .filteredOn(cross ->
                        Tiling.crosses(tiling.window(other, below)).stream().anyMatch(same -> same.near(cross, 1e-9)))
                .hasSize(2);
    }
}
