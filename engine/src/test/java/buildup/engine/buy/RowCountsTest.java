package buildup.engine.buy;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answers;
import buildup.engine.hold.framing.Landing;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How many fasteners a row takes; counted by hand, the places beside each. */
class RowCountsTest {
    private static final String DIES = "left: die, right: die";

    private static RowCount row(String stack, String row, String plan) {
        String yaml =
                stack + "fastenings:\n  - { name: row, use: 15 ga x 2-1/2, " + row + " }\n" + plan + "supplies: {}\n";
        return BoughtJob.purchases(yaml).rows().get(0);
    }

    private static RowCount frieze(String row, String plan) {
        return row(BoughtJob.FRIEZE, "piece: frieze, at: { up: 2 }, " + row, plan);
    }

    /**
     * From 1 to 119 there are 118 in: in spaces of 16 that is 7.4, so 8 spaces and 9 nails; in spaces of 24 4.9, so 5 and 6.
     * A stick of 18 has exactly one space of 16 between its ends, one of 18-1/8 needs two. A stick of 2 has room for one.
     */
    @ParameterizedTest
    @CsvSource({"120, 16, 9", "120, 24, 6", "96, 16, 7", "18, 16, 2", "18-1/8, 16, 3", "2, 16, 1"})
    void a_row_has_a_nail_near_either_end_and_none_farther_apart_than_its_spacing(
            String length, String spacing, int count) {
        RowCount row = frieze("spacing: " + spacing, BoughtJob.wall(DIES, length));
        assertThat(row.count()).isEqualTo(count);
        assertThat(row.sticks()).isEqualTo(1);
    }

    /** 12, 28, 44, 60, 76, 92, 108: the next would be at 124. */
    @Test
    void a_row_that_says_where_it_begins_is_counted_from_there() {
        assertThat(frieze("spacing: 16, first: 12", BoughtJob.wall(DIES, "120")).count())
                .isEqualTo(7);
        // 4, 20, 36, ... 116
        assertThat(frieze("spacing: 16, first: 4", BoughtJob.wall(DIES, "120")).count())
                .isEqualTo(8);
    }

    @Test
    void each_place_takes_as_many_as_the_row_says() {
        assertThat(frieze("spacing: 16, per: 2", BoughtJob.wall(DIES, "120")).count())
                .isEqualTo(18);
    }

    /** Studs at 10, 26, 42, ... 106 along 120 in: 7 of them, whatever a row without studs would take. */
    @Test
    void on_studs_there_is_a_nail_in_each() {
        String plan = "plan:\n  - { name: run, left: die, right: die, studs: { every: 16, first: 10 },"
                + " stretches: [{ name: wall, length: 120 }] }\n";
        assertThat(frieze("spacing: 16", plan).count()).isEqualTo(7);
    }

    /**
     * Studs every 24 from 12 on: a row of 16 from 12 on has 7 places, to 108. Studs every 16 from 15-1/4 on: a row of 32 has 4,
     * to 111-1/4. A stick of 3 has no stud, and a nail near either end all the same.
     */
    @ParameterizedTest
    @CsvSource({"24, 12, 120, 16, 7", "16, 15-1/4, 120, 32, 4", "16, 15-1/4, 3, 16, 2"})
    void a_row_that_goes_past_some_studs_is_counted_as_it_is_set_out(
            String every, String first, String length, String spacing, int count) {
        String plan = "plan: [{ left: die, right: die, studs: { every: " + every + ", first: " + first
                + " }, stretches: [{ name: wall, length: " + length + " }] }]\n";
        assertThat(frieze("spacing: " + spacing, plan).count()).isEqualTo(count);
    }

    /** Round an outside corner the face is 3/4 longer, so that 105-1/2 takes 15, as on a wall of which nothing is known. */
    @ParameterizedTest
    @ValueSource(strings = {"masonry", "{ every: 16, first: 12, bottom-plate: 90 }"})
    void a_report_tells_as_many_on_the_wall_as_it_counts(String studs) {
        String plan = "plan: [{ left: die, right: die, studs: " + studs + ", stretches:"
                + " [{ name: a, length: 105-1/2, corner: outside 90 }, { name: b, length: 3 }] }]\n";
        String yaml = BoughtJob.FRIEZE
                + "fastenings: [{ name: row, use: 15 ga x 2-1/2, piece: frieze, at: { up: 2 }, spacing: 8 }]\n" + plan
                + "supplies: {}\n";
        List<Landing> landings = BoughtJob.answer(yaml)
                .known()
                .map(Answers::framing)
                .orElseThrow()
                .landings();
        assertThat(landings).extracting(landing -> landing.places().size()).containsExactly(15, 2);
        assertThat(frieze("spacing: 8", plan).count()).isEqualTo(15 + 2);
    }

    /** Masonry takes a nail anywhere, and so is counted as a wall of which nothing is known. */
    @Test
    void masonry_takes_as_many_as_a_wall_of_which_nothing_is_known() {
        String plan = "plan:\n  - { name: run, left: die, right: die, studs: masonry,"
                + " stretches: [{ name: wall, length: 120 }] }\n";
        assertThat(frieze("spacing: 16", plan).count()).isEqualTo(9);
    }

    /**
     * The window from 40 to 76 leaves sticks of 40 and 44. Between their ends are 38 and 42 in: 3 spaces of 16 each, 4 nails
     * each.
     */
    @Test
    void an_opening_makes_two_sticks_of_a_wall_and_each_has_its_own_row() {
        String plan = "plan:\n  - { name: run, left: die, right: die, stretches: [{ name: wall, length: 120,"
                + " openings: [{ name: window, from: 40, to: 76 }] }] }\n";
        RowCount row = frieze("spacing: 16", plan);
        assertThat(row.sticks()).isEqualTo(2);
        assertThat(row.count()).isEqualTo(8);
    }

    /** Round an outside corner the face is 3/4 longer: 96-3/4 has 94-3/4 between its ends, 12 spaces of 8, where 96 has 94. */
    @Test
    void a_row_is_as_long_as_its_stick_where_its_heads_are() {
        String plan = "plan:\n  - { name: run, left: die, right: die, stretches:"
                + " [{ name: a, length: 105, corner: outside 90 }, { name: b, length: 105 }] }\n";
        // 105 alone: 103 in, 12.9 spaces of 8: 14 nails; 105-3/4: 103-3/4, 12.97 spaces: 14; 106-3/4 would take 15
        assertThat(frieze("spacing: 8", plan).count()).isEqualTo(2 * 14);
        assertThat(frieze("spacing: 8", plan.replace("105", "105-1/2")).count()).isEqualTo(2 * 15);
    }

    /** Each returned end is a piece of its own, 3/4 long, that is glued. */
    @Test
    void returns_are_not_nailed() {
        RowCount row = frieze("spacing: 16", BoughtJob.wall("left: return, right: return", "120"));
        // along the face it is 121-1/2: 119-1/2 between the ends, 8 spaces
        assertThat(row.count()).isEqualTo(9);
        assertThat(row.sticks()).isEqualTo(1);
    }

    /** The frieze's heads show; those that the cap covers are behind it. */
    @Test
    void only_holes_that_are_not_covered_are_filled() {
        RowCount shows = frieze("spacing: 16", BoughtJob.wall(DIES, "120"));
        assertThat(shows.shown()).isEqualTo(9);
        RowCount covered = row(
                BoughtJob.SHELF,
                "piece: frieze, at: { out: 3/8, up: frieze.top }, spacing: 16",
                BoughtJob.wall(DIES, "120"));
        assertThat(covered.count()).isEqualTo(9);
        assertThat(covered.shown()).isZero();
    }
}
