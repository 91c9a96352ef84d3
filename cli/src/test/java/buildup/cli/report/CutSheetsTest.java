package buildup.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.drawing.section.Drawn;
import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.cli.table.TextTable;
import buildup.cli.tell.Json;
import buildup.cli.tell.SheetJson;
import buildup.cli.tell.SheetTables;
import buildup.cli.tell.TellText;
import buildup.engine.room.run.CutSheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Lengths and settings as text and JSON; the figures themselves are checked in the engine. */
class CutSheetsTest {
    private static final String PLAN = """
            plan:
              - name: case
                left: die
                right: return
                grain: cap
                stretches:
                  - { name: left side, length: 14, corner: outside 89 }
                  - { name: front, length: 96, plumb: { out: 3/8, over: 96 } }
            table-saw-cove: [{ name: hollow, width: 3, depth: 3/4 }]
            """;

    private static final Fitted CASE = Fitted.of(Drawn.CORNICE + PLAN);
    private static final List<Table> TABLES = tables(CASE);

    private static List<Table> tables(Fitted fitted) {
        SheetTables tables = new SheetTables(FigurePrinter.INCHES);
        return CutSheets.of(Optional.of(fitted.job()), fitted.covings()).stream()
                .flatMap(sheet -> tables.of(sheet).stream())
                .toList();
    }

    private static Table table(String start) {
        return table(TABLES, start);
    }

    private static Table table(List<Table> tables, String start) {
        return tables.stream()
                .filter(table -> table.title().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    private static List<List<String>> rows(String start, String course) {
        return table(start).rows().stream()
                .map(row -> row.stream().map(TableCell::text).toList())
                .filter(row -> row.contains(course))
                .toList();
    }

    @Test
    void every_stick_has_its_lengths() {
        assertThat(table("LENGTHS").rows()).hasSize(CASE.job().fits().size());
        // the front's lean adds a trifle at the height of the bead
        assertThat(rows("LENGTHS", "bead"))
                .containsExactly(
                        List.of("bead", "left side", "15+", "14+", "14+", "0", "1+"),
                        List.of("bead", "front", "98+", "96+", "96+", "1+", "1"),
                        List.of("bead", "front, right return", "1", "0", "0", "1", "0"));
    }

    @Test
    void cuts_that_are_alike_share_a_row() {
        assertThat(table("SAW").rows().get(0).stream().map(TableCell::text).toList())
                .containsExactly(
                        "bead, frieze, bed, soffit, fascia, block A, block B, wedge, crown, cap",
                        "left",
                        "left side",
                        "0.0",
                        "0.0",
                        "butt: square, against the wall");
        Fitted room = Fitted.of(Drawn.CORNICE + "plan: [{ stretches: ["
                + "{ length: 90, corner: inside 90 }, ".repeat(3) + "{ length: 90, corner: inside 90 }] }]\n");
        Table saw = table(tables(room), "SAW");
        // standing, lying, sprung; left and right
        assertThat(saw.rows()).hasSize(6);
    }

    @Test
    void a_sprung_stick_may_also_be_held_against_the_fence() {
        assertThat(rows("SAW, against", "crown")).hasSize(4);
        assertThat(table("SAW, against").rows()).hasSize(4);
    }

    @Test
    void what_is_out_of_true_is_told_and_what_is_true_is_not() {
        assertThat(rows("OUT OF SQUARE", "cap")).hasSize(2);
        // 6.626 more at the outside is 0.119 at 89 degrees: p (1/tan 44.5 - 1)
        assertThat(rows("OUT OF SQUARE", "cap").get(1)).startsWith("cap", "front", "0.120");
        assertThat(rows("OUT OF PLUMB", "cap")).isNotEmpty();
        assertThat(table("REVEALS").rows()).isNotEmpty();
        assertThat(rows("ENDS AT A WALL", "frieze").get(0)).containsExactly("frieze", "1/16+");
        Fitted true_ = Fitted.of(
                Drawn.CORNICE + "plan: [{ left: square, right: square, stretches: [{ name: front, length: 96 }] }]\n");
        assertThat(tables(true_)).filteredOn(table -> table.rows().isEmpty()).hasSize(7);
    }

    @Test
    void a_cove_over_the_blade_comes_with_its_caution() {
        assertThat(rows("COVES", "hollow"))
                .containsExactly(List.of("hollow", "3", "3/4", "10", "1/8", "33.3", "34.7", "12", "1-7/8"));
        assertThat(CutSheets.cautions(CASE.covings()))
                .hasSize(2)
                .anyMatch(caution -> FigurePrinter.INCHES.print(caution).contains("1/16 a pass"))
                .anyMatch(caution ->
                        new FigurePrinter(LengthUnit.MILLIMETER).print(caution).contains("about 1.6 mm a pass"));
        assertThat(CutSheets.cautions(List.of())).hasSize(1);
    }

    @Test
    void several_runs_are_told_apart() {
        Fitted two = Fitted.of(Drawn.CORNICE
                + PLAN.replace(
                        "table-saw-cove",
                        "  - { name: head, left: square, right: square,"
                                + " stretches: [{ name: front, length: 30 }] }\ntable-saw-cove"));
        Table lengths = table(tables(two), "LENGTHS");
        assertThat(lengths.rows().stream().map(row -> row.get(1).text())).contains("case: front", "head: front");
    }

    @Test
    void all_tables_keep_within_eighty_columns() {
        for (Table table : TABLES) {
            assertThat(TextTable.write(table, TellText.WIDTH).lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(TellText.WIDTH));
        }
    }

    @Test
    void json_holds_every_stick_with_both_its_cuts() {
        Json json = new Json();
        new SheetJson(FigurePrinter.INCHES).put(json, CutSheets.of(Optional.of(CASE.job()), CASE.covings()));
        assertThat(json.written())
                .contains("\"lengths\": [", "\"leans\": [", "\"revealShifts\": [", "\"coves\": [")
                .contains("\"grainGroup\": \"case cap\"", "\"cut\": \"miter\"", "\"fenceMiter\": 45")
                .contains("\"fenceAngle\": 33.344", "\"passes\": 12")
                .doesNotContain("null", "NaN");
    }
}
