package buildup.cli.tell;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.table.TextTable;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.LengthUnit;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Tables of sheets whose rows hold more than a line, and sheets for people or programs alone. */
class SheetTablesTest {
    private static final FigurePrinter MILLIMETERS = new FigurePrinter(LengthUnit.MILLIMETER);

    private record Offer(double feet, double foot) {}

    private record Molding(String name, double short_, boolean rare, List<Offer> offers) {}

    private static final List<Molding> MOLDINGS = List.of(
            new Molding("cove", 0, false, List.of(new Offer(100, 2), new Offer(500, 1.5))),
            new Molding("crown", 0.5, true, List.of(new Offer(100, 4))));

    private static Columns<Molding> moldings() {
        return Sheet.of("moldings", "MOLDINGS", MOLDINGS)
                .name("name", "molding", Molding::name)
                .length("short", "short by", Molding::short_)
                .flag("rare", "rare", Molding::rare)
                .many(
                        "offers",
                        "offers",
                        Columns.<Offer>inner()
                                .measure("feet", "quantity", Quantity.RUN, Offer::feet)
                                .measure("foot", "price", Quantity.MONEY_PER_RUN, Offer::foot),
                        Molding::offers);
    }

    private static String text(Sheet sheet, FigurePrinter printer) {
        return new SheetTables(printer)
                .of(List.of(sheet)).stream()
                        .map(table -> TextTable.write(table, 80))
                        .collect(Collectors.joining("\n"));
    }

    private static String json(Sheet sheet, FigurePrinter printer) {
        Json json = new Json();
        new SheetJson(printer).put(json, List.of(sheet));
        return json.written();
    }

    @Test
    void each_row_below_a_row_may_have_a_line_of_its_own() {
        Sheet sheet = moldings()
                .tableOfEach("offers", "OFFERS", "name", "offers.feet", "offers.foot")
                .sheet();
        assertThat(text(sheet, FigurePrinter.INCHES)).isEqualTo("""
                OFFERS
                molding  quantity, ft  price, a foot
                -------  ------------  -------------
                cove            100.0           2.00
                cove            500.0           1.50
                crown           100.0           4.00
                """);
        // 100 ft are 30.48 m, and 2 a foot are 6.5617 a meter
        assertThat(text(sheet, MILLIMETERS)).contains("quantity, m  price, a meter", "30.48            6.56");
    }

    @Test
    void a_table_may_leave_out_the_rows_that_hold_nothing() {
        assertThat(text(
                        moldings()
                                .tableWhere(List.of("short"), "SHORT", "name", "short")
                                .sheet(),
                        FigurePrinter.INCHES))
                .contains("crown")
                .doesNotContain("cove");
        assertThat(text(moldings().tableWhere(List.of("rare"), "RARE", "name").sheet(), FigurePrinter.INCHES))
                .contains("crown")
                .doesNotContain("cove");
    }

    @Test
    void people_and_programs_may_each_have_a_sheet_to_themselves() {
        assertThat(json(moldings().people().sheet(), FigurePrinter.INCHES)).isEqualTo("{}");
        assertThat(text(moldings().people().sheet(), FigurePrinter.INCHES)).contains("crown");
        assertThat(text(moldings().silent().sheet(), FigurePrinter.INCHES)).isEmpty();
        assertThat(json(moldings().silent().sheet(), FigurePrinter.INCHES)).contains("\"feet\": 500");
        Json schema = new Json();
        SheetSchema.put(schema, List.of(moldings().people().sheet()));
        assertThat(schema.written()).isEqualTo("{}");
    }

    @Test
    void figures_of_the_whole_stand_in_no_block_and_are_always_there() {
        Sheet whole = Sheet.single("", "WHOLE", Optional.of(MOLDINGS.get(1)))
                .words("name", "molding", Molding::name)
                .length("short", "short by", Molding::short_)
                .sheet();
        assertThat(json(whole, FigurePrinter.INCHES)).isEqualTo("{\n  \"name\": \"crown\",\n  \"short\": 0.5\n}");
        assertThat(text(whole, FigurePrinter.INCHES)).isEqualTo("WHOLE\nmolding   crown\nshort by  1/2\n");
        assertThat(SheetSchema.always(List.of(whole))).containsExactly("name", "short");
    }

    @Test
    void sentences_are_in_the_unit_of_the_document_for_programs_too() {
        Phrase off = Phrase.of("Take {off} off.").with("off", Figure.fine(0.5));
        Sheet sheet = Sheet.of("advice", "ADVICE", List.of(off))
                .sayings("said", "what to do", said -> List.of(said, said))
                .sheet();
        assertThat(json(sheet, MILLIMETERS)).contains("[\"Take 12.70 mm off.\", \"Take 12.70 mm off.\"]");
        assertThat(text(sheet, FigurePrinter.INCHES)).contains("Take 0.500 off. Take 0.500 off.");
    }

    @Test
    void sizes_are_called_as_their_list_calls_them() {
        Sheet sheet = Sheet.of("families", "FAMILIES", List.of(List.of(0.75, 1.5)))
                .called(
                        "usual",
                        "usual sizes",
                        Rounding.LISTED,
                        sizes -> List.of("thickness", "width"),
                        sizes -> List.of(sizes))
                .sheet();
        assertThat(text(sheet, FigurePrinter.INCHES)).contains("thickness x width: 3/4 x 1-1/2");
        assertThat(json(sheet, FigurePrinter.INCHES)).contains("\"thickness\": 0.75", "\"width\": 1.5");
    }
}
