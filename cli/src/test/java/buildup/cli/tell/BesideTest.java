package buildup.cli.tell;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.table.TextTable;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What counts as a difference between two answers, for each kind of cell. */
class BesideTest {
    /** A row of every kind of cell. */
    private record All(
            String name,
            double length,
            double share,
            double force,
            boolean yes,
            double x,
            List<String> names,
            List<Double> numbers,
            Optional<Figure> any,
            List<Double> below,
            OptionalDouble maybe) {}

    private static final All ONE = new All(
            "a",
            4,
            0.5,
            20,
            true,
            1,
            List.of("p", "q"),
            List.of(1.0, 2.0),
            Optional.of(Figure.length(3)),
            List.of(1.0),
            OptionalDouble.empty());

    private static Sheet sheet(All... rows) {
        return Sheet.of("all", "ALL", List.of(rows))
                .name("name", "name", All::name)
                .length("length", "length", All::length)
                .measure("share", "share", Quantity.SHARE, All::share)
                .measure("force", "force", Quantity.FORCE, All::force)
                .flag("yes", "yes", All::yes)
                .place("at", "at", All::x, All::x)
                .names("names", "names", All::names)
                .lengths("numbers", "numbers", Rounding.NEAREST, All::numbers)
                .figureIf("any", "any", All::any)
                .many("below", "below", below(), All::below)
                .saying("words", "words", row -> Phrase.of("{l} long").with("l", Figure.length(row.length())))
                .lengthIf("maybe", "maybe", All::maybe)
                .words("order", "order", row -> "only here " + row.hashCode())
                .alone()
                .sheet();
    }

    private static Columns<Double> below() {
        return Columns.<Double>inner().name("what", "what", width -> "w").length("width", "width", width -> width);
    }

    private static All with(double length, double share, double force, double x, double below) {
        return new All(
                "a",
                length,
                share,
                force,
                true,
                x,
                ONE.names(),
                ONE.numbers(),
                ONE.any(),
                List.of(below),
                OptionalDouble.empty());
    }

    private static long differing(All a, All b) {
        return Beside.flat(List.of(sheet(a)), List.of(sheet(b))).stream()
                .mapToLong(Beside::differing)
                .sum();
    }

    @Test
    void nothing_differs_from_itself_though_it_stands_elsewhere_in_its_document() {
        assertThat(differing(ONE, with(4, 0.5, 20, 1, 1))).isZero();
    }

    @Test
    void a_size_differs_from_where_a_saw_can_cut_it() {
        assertThat(Tolerance.SAW_CUT).isEqualTo(1.0 / 64);
        assertThat(differing(ONE, with(4 + 1.0 / 65, 0.5, 20, 1, 1))).isZero();
        assertThat(differing(ONE, with(4 + 1.0 / 64, 0.5, 20, 1, 1))).isEqualTo(1);
        assertThat(differing(ONE, with(4 - 1.0 / 64, 0.5, 20, 1, 1))).isEqualTo(1);
    }

    @Test
    void other_figures_differ_from_where_they_are_printed_apart() {
        assertThat(differing(ONE, with(4, 0.504, 20.004, 1, 1))).isZero();
        assertThat(differing(ONE, with(4, 0.505, 20, 1, 1))).isEqualTo(1);
        assertThat(differing(ONE, with(4, 0.5, 20.005, 1, 1))).isEqualTo(1);
    }

    @Test
    void a_point_differs_by_either_of_its_two_ways() {
        assertThat(differing(ONE, with(4, 0.5, 20, 1.5, 1))).isEqualTo(2);
    }

    @Test
    void rows_below_a_row_are_compared_by_the_names_of_both() {
        List<Beside> flat = Beside.flat(List.of(sheet(ONE)), List.of(sheet(with(4, 0.5, 20, 1, 2))));
        assertThat(flat).extracting(one -> one.sheet().key()).containsExactly("all", "all.below");
        Beside.Pair pair = flat.get(1).pairs().get(0);
        assertThat(pair.names()).containsExactly("a", "w");
        assertThat(pair.more(pair.at("width"))).hasValue(1);
        assertThat(flat.get(1).differing()).isEqualTo(1);
    }

    @Test
    void tables_tell_the_same_as_the_figures() {
        String same = text(ONE, with(4.01, 0.5, 20, 1, 1));
        assertThat(same).contains("a     both").doesNotContain("B - A", "only here");
        assertThat(text(ONE, with(4.5, 0.5, 20, 1, 2))).contains("B - A", "+1/2", "differs");
    }

    private static String text(All a, All b) {
        return new BesideTables(FigurePrinter.INCHES)
                .of(Beside.of(List.of(sheet(a)), List.of(sheet(b)))).stream()
                        .map(table -> TextTable.write(table, 200))
                        .reduce("", String::concat);
    }

    @Test
    void a_sheet_that_one_answer_alone_was_asked_for_is_there_with_its_rows() {
        List<Beside> flat = Beside.flat(List.of(sheet(ONE).askedIf(false)), List.of(sheet(ONE)));
        assertThat(flat.get(0).pairs()).singleElement().satisfies(pair -> {
            assertThat(pair.a()).isEmpty();
            assertThat(pair.both()).isFalse();
        });
        assertThat(flat.get(0).differing()).isPositive();
    }
}
