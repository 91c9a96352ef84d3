package buildup.cli.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class HtmlTableTest {
    private static final List<Table.TextColumn> COLUMNS = Table.columns("", "piece", "member", ">length");

    @Test
    void a_row_says_which_piece_it_is_about() {
        String html = written(List.of("A", "cap", "face", "3/4"), List.of("A", "cap", "face", "19 mm"));
        assertThat(html)
                .contains("<tr role=\"row\" data-piece=\"7\">")
                .contains("<th role=\"rowheader\" scope=\"row\" data-head=\"piece\"><bdi>cap</bdi></th>")
                .contains("<span class=\"in\">3/4</span><span class=\"mm\">19 mm</span>");
    }

    @Test
    void a_member_that_is_called_as_a_piece_is_still_a_member() {
        String html = written(List.of("", "wall", "cap", "1"), List.of("", "wall", "cap", "25.4 mm"));
        assertThat(html).doesNotContain("data-piece").contains("<td role=\"cell\" data-head=\"member\">cap</td>");
    }

    @Test
    void every_cell_knows_its_heading_for_a_page_too_narrow_for_columns() {
        assertThat(written(List.of("A", "cap", "face", "1"), List.of("A", "cap", "face", "1")))
                .contains("class=\"right\" data-head=\"length\"")
                .contains("<td role=\"cell\">A</td>")
                .contains("<th role=\"columnheader\" scope=\"col\">member</th>");
    }

    @Test
    void a_heading_names_the_unit_that_the_page_shows() {
        Table inches = new Table(
                "t", Table.columns("piece", ">lb"), List.of(List.of(TableCell.of("cap"), TableCell.of("1.00"))));
        Table metric = new Table(
                "t", Table.columns("piece", ">kg"), List.of(List.of(TableCell.of("cap"), TableCell.of("0.45"))));
        assertThat(HtmlTable.write(inches, metric, "id", Map.of()))
                .contains("<span class=\"in\">lb</span><span class=\"mm\">kg</span></th>")
                .contains("data-head=\"lb\" data-metric=\"kg\"");
    }

    @Test
    void headings_and_cells_are_escaped() {
        Table table = new Table("t", Table.columns("<i>"), List.of(List.of(TableCell.of("<b>"))));
        assertThat(HtmlTable.write(table, table, "\"id", Map.of()))
                .contains("&lt;i&gt;", "&lt;b&gt;", "aria-labelledby=\"&quot;id\"")
                .doesNotContain("<i>", "<b>");
    }

    private static String written(List<String> inches, List<String> millimeters) {
        return HtmlTable.write(table(inches), table(millimeters), "a-table-1", Map.of("cap", 7));
    }

    private static Table table(List<String> cells) {
        return new Table(
                "t",
                COLUMNS,
                List.of(Arrays.asList(cells.stream().map(TableCell::of).toArray(TableCell[]::new))));
    }
}
