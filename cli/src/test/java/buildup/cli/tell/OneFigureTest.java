package buildup.cli.tell;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Sheeted;
import buildup.cli.table.HtmlTable;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A figure that a sheet names is told in every format: nothing else has to know of it. */
class OneFigureTest {
    private static final FigurePrinter INCHES = FigurePrinter.INCHES;

    private static final FigurePrinter MILLIMETERS = new FigurePrinter(LengthUnit.MILLIMETER);

    /** A shelf and how far it sags: a figure that nobody asked for. */
    private record Shelf(String name, double span, double sag) {}

    private static final List<Shelf> HERE = List.of(new Shelf("upper", 36, 1.0 / 16), new Shelf("lower", 30, 0));

    private static final List<Shelf> THERE = List.of(new Shelf("upper", 36, 3.0 / 16), new Shelf("lower", 30, 0.01));

    private static Columns<Shelf> shelves(List<Shelf> shelves) {
        return Sheet.of("shelves", "SHELVES", shelves)
                .name("name", "shelf", Shelf::name)
                .length("span", "span", Shelf::span);
    }

    private static Sheet before(List<Shelf> shelves) {
        return shelves(shelves).sheet();
    }

    /** The one edit. */
    private static Sheet after(List<Shelf> shelves) {
        return shelves(shelves)
                .length("sag", "sag", Shelf::sag)
                .measure("strain", "strain", Quantity.LINE_FORCE, Shelf::span)
                .sheet();
    }

    private static String text(Sheet sheet, FigurePrinter printer) {
        return TextTable.write(new SheetTables(printer).of(sheet).get(0), 80);
    }

    @Test
    void text_has_it_in_either_unit() {
        assertThat(text(before(HERE), INCHES)).doesNotContain("sag");
        assertThat(text(after(HERE), INCHES).lines())
                .containsSubsequence("shelf  span   sag  strain, lb a foot", "upper    36  1/16              36.00");
        assertThat(text(after(HERE), MILLIMETERS)).contains("upper  914.4  1.6-", "strain, N a meter");
    }

    @Test
    void a_page_has_it_in_both_units() {
        Table inches = new SheetTables(INCHES).of(after(HERE)).get(0);
        Table metric = new SheetTables(MILLIMETERS).of(after(HERE)).get(0);
        assertThat(HtmlTable.write(inches, metric, "shelves", Map.of()))
                .contains(">sag</th>", "<span class=\"in\">1/16</span><span class=\"mm\">1.6-</span>");
    }

    @Test
    void a_spreadsheet_has_it_under_its_unit_and_unrounded() {
        assertThat(Sheeted.block(new SheetCsv(INCHES).write(List.of(after(HERE))), "SHELVES")
                        .cell(0, "sag in"))
                .isEqualTo("0.0625");
        assertThat(Sheeted.block(new SheetCsv(MILLIMETERS).write(List.of(after(HERE))), "SHELVES")
                        .cell(0, "sag mm"))
                .isEqualTo("1.5875");
    }

    @Test
    void programs_have_it_in_inches_and_the_schema_says_what_it_is() {
        Sheet notices = NoticeSheet.of(List.of(), Optional.empty());
        Json json = new Json().put("title", "Shelves").put("units", "mm");
        new SheetJson(MILLIMETERS).put(json, List.of(after(HERE), notices));
        assertThat(json.written()).contains("\"sag\": 0.0625");
        String schema = FileSchema.of("shelves", "Shelves", List.of(after(List.of())), notices)
                .written();
        assertThat(schema)
                .contains("\"sag\"", "\"description\": \"sag; inches\"", "\"description\": \"strain; lb a foot\"");
        assertThat(faults(schema, json.written())).isEmpty();
        String old = FileSchema.of("shelves", "Shelves", List.of(before(List.of())), notices)
                .written();
        assertThat(faults(old, json.written())).as("the schema of before").isNotEmpty();
        assertThat(faults(schema, json.written().replace("\"sag\"", "\"sags\"")))
                .as("a key that no column has")
                .isNotEmpty();
    }

    private static List<String> faults(String schema, String json) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema)
                .validate(json, InputFormat.JSON)
                .stream()
                .map(Object::toString)
                .toList();
    }

    @Test
    void two_answers_are_compared_by_it() {
        List<Beside> sheets = Beside.of(List.of(after(HERE)), List.of(after(THERE)));
        String text = TextTable.write(new BesideTables(INCHES).of(sheets).get(0), 80);
        assertThat(text.lines())
                .containsSubsequence(
                        "upper  A        36  1/16              36.00",
                        "       B        36  3/16              36.00",
                        "       B - A        +1/8",
                        "lower  both     30     0              30.00");
        List<Beside> flat = Beside.flat(List.of(after(HERE)), List.of(after(THERE)));
        Json json = new Json();
        BesideJson.put(json, flat, INCHES);
        assertThat(json.written().replaceAll("\\s+", " "))
                .contains(
                        "\"row\": { \"name\": \"upper\" }, \"figure\": \"sag\", \"a\": 0.0625, \"b\": 0.1875, \"difference\": 0.125")
                .contains("\"differing\": 1");
        assertThat(new BesideCsv(INCHES).write(flat)).contains("upper,B - A,,0.125,");
    }
}
