package buildup.cli.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PageFlowTest {
    /** However many rows there are, each is there once, and none of them have a page nearly to themselves. */
    @Test
    void a_few_rows_that_would_have_a_page_of_their_own_are_drawn_in() {
        for (int rows = 20; rows < 170; rows++) {
            List<List<TableCell>> cells = IntStream.range(0, rows)
                    .mapToObj(i -> List.of(TableCell.of("piece " + i), TableCell.of("left")))
                    .toList();
            Table table = new Table("SAW", Table.columns("pieces", "end"), cells);
            List<List<String>> pages = PageFlow.written(Drawn.FONT, 7.5, 9, flow -> flow.table(table)).pages().stream()
                    .map(page -> Scene.leaves(page).stream()
                            .filter(Label.class::isInstance)
                            .map(item -> ((Label) item).text())
                            .filter(text -> text.startsWith("piece "))
                            .toList())
                    .toList();
            assertThat(pages.stream().flatMap(List::stream))
                    .doesNotHaveDuplicates()
                    .hasSize(rows);
            assertThat(pages.get(pages.size() - 1)).as("of %d rows", rows).hasSizeGreaterThan(5);
        }
    }

    /** However far down the page it begins, and however many lines its first row takes. */
    @ParameterizedTest
    @CsvSource({"0, 1", "5, 1", "7.5, 1", "8, 1", "3, 120", "5, 120", "6, 300", "7, 300"})
    void the_title_and_the_heading_of_a_table_are_on_the_page_of_its_first_row(double down, int words) {
        PageFlow flow = new PageFlow(Drawn.FONT, 7.5, 9);
        flow.lines("What stands before.", 0.12);
        flow.gap(down);
        List<TableCell> row = List.of(TableCell.of("FIRST " + "word ".repeat(words)), TableCell.of("left"));
        flow.table(new Table("SAW", Table.columns("pieces", "end"), List.of(row, row)));
        List<List<String>> pages = flow.pages().stream()
                .map(page -> Scene.leaves(page).stream()
                        .filter(Label.class::isInstance)
                        .map(item -> ((Label) item).text())
                        .toList())
                .toList();
        List<String> page = pages.stream()
                .filter(texts -> texts.contains("SAW"))
                .findFirst()
                .orElseThrow();
        assertThat(page).contains("pieces", "end").anyMatch(text -> text.startsWith("FIRST"));
    }
}
