package buildup.cli.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** RFC 4180, Common Format and MIME Type for Comma-Separated Values Files, section 2. */
class CsvTest {
    @Test
    void lines_end_with_cr_lf_and_the_first_holds_the_headings() {
        Table table = new Table(
                "t", Table.columns("a", ">b"), List.of(List.of(TableCell.of("x"), TableCell.of("1-1/2", 1.5))));
        assertThat(Csv.write(table)).isEqualTo("a,b\r\nx,1.5\r\n");
    }

    @Test
    void commas_and_quotes_are_quoted_and_quotes_doubled() {
        Table table = new Table("", Table.columns("a"), List.of(List.of(TableCell.of("one, \"two\""))));
        assertThat(Csv.write(table)).isEqualTo("a\r\n\"one, \"\"two\"\"\"\r\n");
    }

    @Test
    void a_line_break_in_a_name_does_not_break_the_row() {
        Table table = new Table("", Table.columns("a"), List.of(List.of(TableCell.of("one\ntwo"))));
        assertThat(Csv.write(table)).isEqualTo("a\r\none two\r\n");
    }

    @Test
    void a_name_that_a_spreadsheet_would_run_as_a_formula_is_text() {
        Table table = new Table(
                "",
                Table.columns("a", "b"),
                List.of(
                        List.of(TableCell.of("=1+1"), TableCell.of("", -2)),
                        List.of(TableCell.of("-x"), TableCell.of("a-b"))));
        assertThat(Csv.write(table)).isEqualTo("a,b\r\n'=1+1,-2\r\n'-x,a-b\r\n");
    }

    @Test
    void blanks_tabs_and_wide_signs_before_a_formula_hide_nothing() {
        Table table = new Table(
                "",
                Table.columns("a"),
                List.of(
                        List.of(TableCell.of("\t=1")),
                        List.of(TableCell.of("\r@x")),
                        List.of(TableCell.of("  +1")),
                        List.of(TableCell.of("\uFF1D1")),
                        List.of(TableCell.of(" "))));
        assertThat(Csv.write(table)).isEqualTo("a\r\n' =1\r\n' @x\r\n'  +1\r\n'\uFF1D1\r\n \r\n");
    }

    @Test
    void figures_stand_with_a_point_and_without_zeros_behind() {
        Table table = new Table(
                "",
                Table.columns("a", "b", "c", "d"),
                List.of(List.of(
                        TableCell.of("", 0),
                        TableCell.of("", 120),
                        TableCell.of("", 1.0 / 64),
                        TableCell.of("", -0.0))));
        assertThat(Csv.write(table)).isEqualTo("a,b,c,d\r\n0,120,0.015625,0\r\n");
    }
}
