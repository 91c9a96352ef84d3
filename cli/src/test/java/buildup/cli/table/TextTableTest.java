package buildup.cli.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {
    private static final List<Table.TextColumn> COLUMNS = Table.columns("piece", ">sq in");

    @Test
    void words_line_up_on_the_left_and_figures_on_the_right() {
        Table table = new Table("AREAS", COLUMNS, List.of(row("cap", "5.12"), row("frieze", "14.13")));
        assertThat(TextTable.write(table, 80)).isEqualTo("""
                AREAS
                piece   sq in
                ------  -----
                cap      5.12
                frieze  14.13
                """);
    }

    @Test
    void a_long_name_goes_on_below_itself_and_figures_stay_whole() {
        Table table =
                new Table("AREAS", COLUMNS, List.of(row("the frieze behind the bed", "14.13"), row("cap", "5.12")));
        assertThat(TextTable.write(table, 20)).isEqualTo("""
                AREAS
                piece          sq in
                -------------  -----
                the frieze     14.13
                behind the
                bed
                cap             5.12
                """);
    }

    @Test
    void words_stay_whole_as_long_as_another_column_has_room_between_its_own() {
        Table table = new Table(
                "ROWS", Table.columns("stretch", "row"), List.of(row("left of window", "frieze nails, upper row")));
        assertThat(TextTable.write(table, 16)).isEqualTo("""
                ROWS
                stretch  row
                -------  -------
                left of  frieze
                window   nails,
                         upper
                         row
                """);
    }

    @Test
    void wide_letters_keep_the_columns_straight() {
        Table table = new Table("AREAS", COLUMNS, List.of(row("飾り縁", "14.13"), row("frieze", "5.12")));
        assertThat(TextTable.write(table, 80)).contains("飾り縁  14.13\n").contains("frieze   5.12\n");
    }

    @Test
    void without_headings_there_is_no_rule() {
        Table table = new Table("FACTS", Table.columns("", ""), List.of(row("kind", "bed")));
        assertThat(TextTable.write(table, 80)).isEqualTo("FACTS\nkind  bed\n");
    }

    @Test
    void figures_give_way_too_when_nothing_else_can() {
        Table table = new Table("A", Table.columns(">a", ">b"), List.of(row("1234567890", "1234567890")));
        assertThat(TextTable.write(table, 12).lines())
                .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(12));
    }

    @Test
    void every_row_has_a_cell_for_every_column() {
        assertThatThrownBy(() -> new Table("A", COLUMNS, List.of(List.of(TableCell.of("cap")))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("row of 1 cells in 2 columns");
    }

    private static List<TableCell> row(String... cells) {
        return List.of(cells).stream().map(TableCell::of).toList();
    }
}
