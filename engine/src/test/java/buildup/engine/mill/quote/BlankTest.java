package buildup.engine.mill.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.catalog.mill.Mill;
import buildup.catalog.wood.BoardList;
import buildup.profiles.Profile;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BlankTest {
    private static final Mill MILL = Catalog.builtIn()
            .mill(new Scalar(OrderReader.USUAL_MILL, new Mark("test", 1, 1)), new Notices())
            .orElseThrow();

    /** The same with boards of one width, by which a blank is worked out on paper. */
    private static final Mill TEN = MILL.withWidths(List.of(new Mill.Width(Length.inches(10), BigDecimal.ONE)));

    private static int strips(Blank blank) {
        assertThat(blank.ripped()).hasSize(1);
        return blank.ripped().get(0).strips();
    }

    private static Blank blank(double thickness, double width) {
        return Blank.of(Profile.board("board", thickness, width), TEN);
    }

    /** reference/blanks.md, worked example H. */
    @Test
    void the_oak_nosing_takes_what_its_worked_example_says() {
        Quoted nosing = Ordered.of(Ordered.NOSING + "    board: 10\n").first();
        assertThat(nosing.item().profile().outline().area()).isCloseTo(5.7140, within(5e-5));
        Blank blank = nosing.blank();
        assertThat(blank.thickness()).isCloseTo(1.375, within(1e-9));
        assertThat(blank.width()).isCloseTo(4.5, within(1e-9));
        assertThat(blank.quarter().label()).isEqualTo("8/4");
        assertThat(blank.blank()).isCloseTo(4.75, within(1e-9));
        assertThat(strips(blank)).isEqualTo(2);
        assertThat(blank.inStrips()).isCloseTo(0.95, within(1e-9));
        assertThat(blank.boardFeetInAFoot()).isCloseTo(0.79167, within(5e-6));
        assertThat(nosing.price().orElseThrow().run()).isCloseTo(319, within(1e-9));
        assertThat(nosing.price().orElseThrow().boardFeet()).isCloseTo(332.29, within(5e-3));
    }

    /** Hardwood surfaced two sides, on and just past each row: reference/blanks.md, "Quarters" (seen in two tables). */
    @ParameterizedTest
    @CsvSource({
        "0.5, 4/4",
        "0.8125, 4/4",
        "0.875, 5/4",
        "1.0625, 5/4",
        "1.125, 6/4",
        "1.3125, 6/4",
        "1.375, 8/4",
        "1.75, 8/4"
    })
    void a_finished_thickness_is_planed_from_the_quarter_of_the_table(double finished, String quarter) {
        Blank blank = blank(finished, 3);
        assertThat(blank.quarter().label()).isEqualTo(quarter);
        assertThat(blank.layers()).isEqualTo(1);
    }

    /** The same page: 7/8 in place of 13/16 costs more wood, since it steps up a quarter (seen; "about 35 %" there). */
    @Test
    void a_step_up_by_a_sixteenth_takes_a_quarter_more_wood() {
        assertThat(blank(0.875, 3).boardFeetInAFoot())
                .isCloseTo(1.25 * blank(0.8125, 3).boardFeetInAFoot(), within(1e-9));
    }

    /** reference/blanks.md, "Board feet": 5/4 x 6 x 10 ft is 6.25 (computed). */
    @Test
    void board_feet_are_reckoned_at_the_rough_thickness() {
        Blank blank = blank(1, 5.75);
        assertThat(blank.blank()).isCloseTo(6, within(1e-9));
        assertThat(blank.boardFeetInAFoot() * 10).isCloseTo(6.25, within(1e-9));
    }

    @Test
    void what_no_quarter_yields_is_glued_up_in_layers() {
        Blank blank = blank(2.5, 3);
        assertThat(blank.layers()).isEqualTo(2);
        assertThat(blank.quarter().label()).isEqualTo("6/4");
        // one face joint as wide as the blank
        assertThat(blank.jointInAFoot()).isCloseTo(3.25 / 12, within(1e-9));
        assertThat(blank.boardFeetInAFoot()).isCloseTo(2 * 1.5 * 3.25 / 12, within(1e-9));
    }

    @Test
    void what_no_board_is_wide_enough_for_is_glued_up_edge_to_edge() {
        // 12 finished, blank 12-1/4; two plies share one glue line of 1/8: (12.25 + 0.125) / 2
        Blank blank = blank(0.75, 12);
        assertThat(blank.plies()).isEqualTo(2);
        assertThat(blank.strip()).isCloseTo(6.1875, within(1e-9));
        assertThat(strips(blank)).isEqualTo(1);
    }

    /** Cut by the saw one after the other, the last strip needs no kerf behind it. */
    @ParameterizedTest
    @CsvSource({"9.5, 1", "4.5625, 2", "4.5, 2", "2.9166, 3", "0.5, 11"})
    void as_many_strips_come_from_a_board_as_a_saw_can_cut(double finished, int strips) {
        Blank blank = blank(0.75, finished);
        assertThat(strips(blank)).isEqualTo(strips);
        double left = 10 - 0.25;
        int cut = 0;
        while (left >= blank.strip() - 1e-9) {
            left -= blank.strip() + 0.125;
            cut++;
        }
        assertThat(cut).isEqualTo(strips);
    }

    /** One table: what the mill takes a quarter for and what the yard sells it for. */
    @Test
    void the_mill_and_the_board_list_dress_a_quarter_alike() {
        BoardList hardwood = Catalog.builtIn().boardLists().stream()
                .filter(list -> list.name().equals("hardwood"))
                .findFirst()
                .orElseThrow();
        assertThat(MILL.quarters())
                .allSatisfy(quarter -> assertThat(quarter.finished())
                        .isEqualTo(hardwood.thickness(quarter.rough())
                                .orElseThrow()
                                .dressed()));
    }

    /**
     * Boards of every width cut up one after the other by a saw: what comes out of 1,000 board feet, strip by strip.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.75, 1.5, 2.3125, 3.5, 4.5625, 4.625, 5.5, 6.25, 7})
    void random_widths_give_as_many_feet_of_strip_as_a_saw_gets_out_of_them(double finished) {
        Blank blank = Blank.of(Profile.board("board", 0.75, finished), MILL);
        double wide = MILL.widths().stream()
                .filter(width -> width.width().toInches() - 0.25 >= blank.strip() - 1e-9)
                .mapToDouble(width -> width.share().doubleValue())
                .sum();
        double feet = 0;
        double kept = 0;
        for (Mill.Width width : MILL.widths()) {
            double board = width.width().toInches();
            double length = 1000 * width.share().doubleValue() / wide * 12 / board;
            double left = board - 0.25;
            while (left >= blank.strip() - 1e-9) {
                left -= blank.strip() + 0.125;
                feet += length;
            }
            boolean used = board - 0.25 >= blank.strip() - 1e-9;
            kept += used && left >= 1.5 - 1e-9 ? length * left / 12 : 0;
        }
        assertThat(1000 * blank.stripsInABoardFoot()).isCloseTo(feet, within(1e-6));
        assertThat(1000 * blank.kept()).isCloseTo(kept, within(1e-6));
    }

    @Test
    void where_few_boards_are_wide_enough_the_blank_is_glued_up() {
        // a tenth of the built-in mill's wood is 11 and wider
        assertThat(Blank.of(Profile.board("board", 0.75, 10.5), MILL).plies()).isEqualTo(2);
        assertThat(Blank.of(Profile.board("board", 0.75, 8), MILL).plies()).isEqualTo(1);
    }
}
