package buildup.shared.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A sheet holds what its columns take from each row. */
class ColumnsTest {
    private record Board(String name, double width, List<Double> knots) {}

    private static final List<Board> BOARDS =
            List.of(new Board("frieze", 5.5, List.of(1.0, 2.0)), new Board("", Double.POSITIVE_INFINITY, List.of()));

    private static Sheet sheet() {
        return Sheet.of("boards", "BOARDS", BOARDS)
                .name("piece", "piece", Board::name)
                .words("wood", "wood", board -> "oak")
                .wordsIf("note", "note", board -> Optional.of("x").filter(x -> board.width() < 6))
                .length("width", "width", Board::width)
                .lengthIf("gap", "gap", board -> OptionalDouble.empty())
                .measure("area", "area", Quantity.AREA, board -> 2)
                .measureIf("share", "share", Quantity.SHARE, Rounding.NEAREST, board -> OptionalDouble.of(0.5))
                .noneWithoutRow()
                .count("knots", "knots", board -> board.knots().size())
                .flag("sound", "sound", board -> board.knots().isEmpty())
                .place("at", "at", board -> 1, board -> 2)
                .names("ends", "ends", board -> List.of("left", "right"))
                .lengths("knotsAt", "knots at", Rounding.NEAREST, Board::knots)
                .saying("told", "told", board -> Phrase.of("a board"))
                .sayingIf("more", "more", board -> Optional.empty())
                .figureIf("heaviest", "heaviest", board -> Optional.of(Figure.of(Quantity.FORCE, 3)))
                .amountIf("amount", "amount", board -> Quantity.FORCE, board -> OptionalDouble.of(2))
                .many("cuts", "cuts", Columns.<Double>inner().length("place", "place", at -> at), Board::knots)
                .one(
                        "first",
                        "first",
                        " x ",
                        Columns.<Double>inner().length("place", "place", at -> at),
                        board -> board.knots().stream().findFirst())
                .json()
                .sheet();
    }

    @Test
    void every_row_has_a_cell_for_every_column() {
        assertThat(sheet().rows())
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.cells()).hasSameSizeAs(sheet().columns()));
    }

    @Test
    void what_is_not_there_leaves_its_cell_empty() {
        Row second = sheet().rows().get(1);
        assertThat(sheet().cell(second, "piece")).isEqualTo(Cell.NONE);
        assertThat(Cell.isNone(sheet().cell(second, "width"))).isTrue();
        assertThat(sheet().cell(second, "note")).isEqualTo(Cell.NONE);
        assertThat(sheet().cell(second, "gap")).isEqualTo(Cell.NONE);
        assertThat(sheet().cell(second, "first")).isEqualTo(Cell.NONE);
        assertThat(sheet().cell(second, "no such column")).isEqualTo(Cell.NONE);
    }

    @Test
    void what_is_there_stands_under_its_key() {
        Row first = sheet().rows().get(0);
        assertThat(sheet().cell(first, "wood")).isEqualTo(new Cell.Words("oak"));
        assertThat(sheet().cell(first, "ends")).isEqualTo(new Cell.Names(List.of("left", "right")));
        assertThat(sheet().cell(first, "sound")).isEqualTo(new Cell.Flag(false));
        assertThat(sheet().cell(first, "at")).isEqualTo(new Cell.Place(1, 2));
        assertThat(sheet().cell(first, "knotsAt")).isEqualTo(new Cell.Numbers(List.of(1.0, 2.0)));
        assertThat(sheet().cell(first, "cuts")).isInstanceOf(Cell.Rows.class);
        assertThat(sheet().names(first)).containsExactly("frieze");
        assertThat(sheet().at("wood")).hasValue(1);
    }

    @Test
    void a_sheet_that_nobody_asked_for_keeps_its_columns() {
        Sheet silent = Sheet.of("boards", "BOARDS", List.<Board>of())
                .name("piece", "piece", Board::name)
                .text()
                .silent()
                .sheet()
                .askedIf(false);
        assertThat(silent.asked()).isFalse();
        assertThat(silent.columns()).hasSize(1);
        assertThat(silent.tables()).isEmpty();
    }

    @Test
    void one_object_may_be_absent() {
        Sheet none = Sheet.single("whole", "WHOLE", Optional.<Board>empty())
                .length("width", "width", Board::width)
                .table("WIDTH", "width")
                .sheet();
        assertThat(none.single()).isTrue();
        assertThat(none.rows()).isEmpty();
        assertThat(none.tables()).hasSize(1);
    }
}
