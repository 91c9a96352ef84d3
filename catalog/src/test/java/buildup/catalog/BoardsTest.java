package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.wood.BoardList;
import buildup.profiles.Profile;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoardsTest {

    private final Asked asked = Asked.builtIn();

    /** PS 20, minimum dressed sizes; reference/ps20-dressed-sizes.csv. */
    @Test
    void softwood_lists_are_those_of_the_standard() {
        for (String[] row : Reference.rows("ps20-dressed-sizes.csv")) {
            for (int list = 0; list < 2; list++) {
                boolean thickness = row[0].equals("thickness");
                String call = thickness ? row[1] + " x 4" : "1 x " + row[1];
                Profile board = asked.maybe(call, list == 0 ? "softwood" : "softwood-green")
                        .orElseThrow();
                double dressed = thickness ? board.thickness() : board.width();
                assertThat(dressed)
                        .as(call + " " + list)
                        .isEqualTo(Asked.inches(row[2 + list]).toInches());
            }
        }
    }

    /** Rule of PS 20: dry width = nominal less 1/2 up to 7, less 3/4 from 8 up. */
    @Test
    void a_dry_board_loses_half_an_inch_of_width_and_from_eight_up_three_quarters() {
        for (String nominal : List.of("2", "3", "4", "5", "6", "7", "8", "10", "12")) {
            double width = Double.parseDouble(nominal);
            assertThat(asked.profile("1x" + nominal).width()).isEqualTo(width - (width < 8 ? 0.5 : 0.75));
        }
    }

    /** Seen values of hardwood quarters; reference/hardwood-s2s.csv. */
    @Test
    void hardwood_comes_in_rough_quarters_and_random_widths() {
        for (String[] row : Reference.rows("hardwood-s2s.csv")) {
            Profile board = asked.maybe(row[0] + "x5-3/8", "hardwood").orElseThrow();
            assertThat(board.thickness()).isEqualTo(Asked.inches(row[1]).toInches());
            assertThat(board.width()).isEqualTo(5.375);
        }
    }

    @Test
    void a_nominal_size_may_be_written_with_or_without_blanks_and_in_quarters() {
        assertThat(asked.profile("1x4").outline().box().width()).isEqualTo(0.75);
        assertThat(asked.profile("2 x 4").outline().box().width()).isEqualTo(1.5);
        assertThat(asked.profile("5/4x6").outline().box().width()).isEqualTo(1);
        assertThat(asked.profile("\u00BE x 6").outline().box().width()).isEqualTo(0.625);
        assertThat(asked.profile("1-1/4 X 6").outline().box().height()).isEqualTo(5.5);
        assertThat(asked.notices()).isEmpty();
    }

    @Test
    void a_nominal_board_is_named_with_its_list() {
        assertThat(asked.profile("1x4").name()).isEqualTo("1x4 (softwood)");
        assertThat(asked.maybe("1x4", "softwood-green").orElseThrow().name()).isEqualTo("1x4 (softwood-green)");
    }

    /** Sizes of the list itself, which has no source: what is held is that bare numbers are millimeters there. */
    @Test
    void a_metric_list_reads_nominal_sizes_in_millimeters_and_still_knows_inches() {
        Profile board = asked.maybe("25x100", "metric-softwood").orElseThrow();
        assertThat(board.thickness()).isCloseTo(21 / 25.4, within(1e-12));
        assertThat(board.width()).isCloseTo(95 / 25.4, within(1e-12));
        assertThat(board.name()).isEqualTo("25x100 (metric-softwood)");
        assertThat(asked.maybe("25 mm x 100 mm", "metric-softwood")
                        .orElseThrow()
                        .width())
                .isEqualTo(board.width());
        assertThat(asked.maybe("27 x 140 mm", "metric-hardwood").orElseThrow().width())
                .isCloseTo(140 / 25.4, within(1e-12));
        assertThat(asked.notices()).isEmpty();
        assertThat(asked.maybe("1x4", "metric-softwood")).isEmpty();
    }

    @Test
    void the_unit_of_nominal_sizes_is_one_that_is_known() {
        Asked own = Asked.with("""
                boards:
                  - { name: odd, nominal: cubits, thickness: { 1: 3/4 } }
                """);
        assertThat(own.said()).singleElement().asString().contains("cubits");
    }

    @Test
    void a_true_size_is_taken_as_it_is() {
        Profile board = asked.profile("board 3/4 x 5-1/2");
        assertThat(board.name()).isEqualTo("board 3/4 x 5-1/2");
        assertThat(board.stick()).isEqualTo(new Profile.Board(0.75, 5.5));
        assertThat(asked.profile("board lip x tall - lip").outline().box().height())
                .isEqualTo(5.25);
        assertThat(asked.profile("board 19 mm x 90mm").thickness()).isCloseTo(19 / 25.4, within(1e-12));
    }

    @Test
    void a_size_that_is_not_listed_is_refused_with_its_neighbors() {
        assertThat(asked.maybe("1x9", "softwood")).isEmpty();
        assertThat(asked.maybe("7/4x6", "softwood")).isEmpty();
        assertThat(asked.maybe("9/4x6", "hardwood")).isEmpty();
        assertThat(asked.said())
                .containsExactly(
                        "REFUSAL unknown-name stack.yaml:7:3 The softwood list has no 1x9."
                                + " | Take 1x8 (3/4 x 7-1/4) or 1x10 (3/4 x 9-1/4), or write board 1 x 9 for a true size.",
                        "REFUSAL unknown-name stack.yaml:7:3 The softwood list has no 7/4x6."
                                + " | Take 6/4x6 (1-1/4 x 5-1/2) or 2x6 (1-1/2 x 5-1/2), or write board 1-3/4 x 6 for a"
                                + " true size.",
                        "REFUSAL unknown-name stack.yaml:7:3 The hardwood list has no 9/4x6."
                                + " | Take 8/4 (1-3/4 thick) or 10/4 (2-1/4 thick), or write board 2-1/4 x 6 for a true"
                                + " size.");
    }

    @Test
    void an_unknown_list_and_a_torn_size_are_refused() {
        asked.maybe("1x4", "softwod");
        asked.maybe("1x", "softwood");
        asked.maybe("0x4", "softwood");
        assertThat(asked.said())
                .containsExactly(
                        "REFUSAL unknown-name stack.yaml:7:3 No board list is called 'softwod'. | Did you mean softwood?",
                        "REFUSAL unknown-name stack.yaml:7:3 '1x' is not a board size."
                                + " | Write it as 1x4, or as board 3/4 x 3-1/2 for a true size.",
                        "REFUSAL unknown-name stack.yaml:7:3 '0x4' is not a board size."
                                + " | Write it as 1x4, or as board 3/4 x 3-1/2 for a true size.");
    }

    @Test
    void no_board_is_nothing_thick() {
        asked.maybe("board 0 x 4", "softwood");
        asked.maybe("board 3/4 x -2", "softwood");
        asked.maybe("board 3/4", "softwood");
        assertThat(asked.said())
                .containsExactly(
                        "REFUSAL thickness-zero-or-negative stack.yaml:7:3 The thickness of 'board 0 x 4' is 0."
                                + " | Give it more than 0.",
                        "REFUSAL thickness-zero-or-negative stack.yaml:7:3 The width of 'board 3/4 x -2' is -2."
                                + " | Give it more than 0.",
                        "REFUSAL missing-size stack.yaml:7:3 A board needs thickness x width."
                                + " | Write it as board 3/4 x 5-1/2.");
    }

    @Test
    void stock_is_the_narrowest_board_that_the_piece_can_be_ripped_from() {
        assertThat(stock("3/4", "6-5/8", "softwood")).contains("1x8 (3/4 x 7-1/4)");
        assertThat(stock("3/4", "3-1/2", "softwood")).contains("1x4 (3/4 x 3-1/2)");
        assertThat(stock("49/64", "2", "softwood")).contains("1x3 (3/4 x 2-1/2)");
        assertThat(stock("25/32", "3-9/16", "softwood-green")).contains("1x4 (25/32 x 3-9/16)");
        assertThat(stock("13/16", "6", "hardwood")).contains("4/4 (13/16 thick)");
    }

    @Test
    void a_width_that_yards_seldom_hold_is_no_stock() {
        assertThat(stock("3/4", "4-1/4", "softwood")).contains("1x6 (3/4 x 5-1/2)");
    }

    @Test
    void there_is_no_stock_too_wide_or_of_no_listed_thickness() {
        assertThat(stock("3/4", "11-1/2", "softwood")).isEmpty();
        assertThat(stock("11/16", "3", "softwood")).isEmpty();
        assertThat(stock("3/4", "3", "no such list")).isEmpty();
    }

    @Test
    void a_board_is_told_in_the_unit_of_whoever_reads() {
        Phrase board = asked.catalog()
                .stockFor(Asked.inches("3/4"), Asked.inches("6-5/8"), "softwood")
                .orElseThrow()
                .phrase();
        assertThat(FigurePrinter.INCHES.print(board)).isEqualTo("1x8 (3/4 x 7-1/4)");
        assertThat(new FigurePrinter(LengthUnit.MILLIMETER).print(board)).isEqualTo("1x8 (19.1- mm x 184.2- mm)");
    }

    private Optional<String> stock(String thickness, String width, String list) {
        return asked.catalog()
                .stockFor(Asked.inches(thickness), Asked.inches(width), list)
                .map(BoardList.Board::call);
    }
}
