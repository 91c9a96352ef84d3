package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.Schemas;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CutsCommandTest {
    private static final String DEMO = Ran.demo("reading-room-case.yaml").toString();

    private static final String RAIL = """
            title: Rail
            wood: yellow-poplar
            space: { wall: { solid: yes } }
            plan:
              - { name: hall, left: square, right: square, stretches: [{ name: "long, wall", length: 200 }] }
              - { name: room, left: return, right: square, stretches: [{ name: short, length: 40 }] }
            pieces: [{ name: rail, profile: board 3/4 x 3-1/2, back: wall, bottom: datum }]
            """;

    private static final String STOCK = """
            stock: { sticks: [{ of: 1x4, buy: [8', 12'], price: 1.25 }], joints: { return: 6 } }
            """;

    private static Ran cuts(String document, String... options) {
        List<String> words = new ArrayList<>(List.of("cuts", "-"));
        words.addAll(List.of(options));
        return Ran.with(document.getBytes(UTF_8), words.toArray(String[]::new));
    }

    @Test
    void the_demo_is_told_from_lengths_to_cost() {
        Ran ran = Ran.of("cuts", DEMO);
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out())
                .contains("LENGTHS along the stick", "SAW, blade tilted", "BUY LIST", "STICK BY STICK")
                .contains("WOOD: ", "CUTTING PLAN CHECK", "COST\n", "least price, proved", "of the lower bound")
                .contains("Cut short pieces from a long stick");
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void the_same_stack_gives_the_same_bytes() {
        for (String format : List.of("text", "json", "csv", "html")) {
            assertThat(Ran.of("cuts", DEMO, "--format", format).out())
                    .isNotEmpty()
                    .isEqualTo(Ran.of("cuts", DEMO, "--format", format).out());
        }
    }

    @Test
    void a_piece_that_is_too_long_a_return_and_a_rest_are_told() {
        Ran ran = cuts(RAIL + STOCK);
        assertThat(ran.code()).as("the joint is placed: it is no problem").isEqualTo(ExitCode.CLEAN);
        assertThat(ran.err()).contains("note  stdin  rail: on hall: long, wall is 200 long", "scarf it");
        assertThat(ran.out()).contains("A1a", "A1b", "scarf", "return", "6.00");
    }

    @Test
    void a_spreadsheet_gets_a_row_for_each_piece_with_as_many_cells_as_headings() {
        String csv = cuts(RAIL + STOCK, "--format", "csv").out();
        List<List<String>> rows = parsed(csv);
        assertThat(csv).endsWith("\r\n");
        assertThat(rows).hasSize(1 + 4);
        assertThat(rows).allSatisfy(row -> assertThat(row).hasSize(rows.get(0).size()));
        assertThat(rows.get(0)).startsWith("stack", "label", "piece", "stretch", "part", "length in");
        assertThat(rows).anySatisfy(row -> assertThat(row).contains("hall: long, wall", "scarf", "1x4 (softwood)"));
    }

    @Test
    void the_shopping_list_is_a_second_table_for_a_spreadsheet() {
        String csv = cuts(RAIL + STOCK + "supplies: { glue: { packs: { 8 oz: 4.20 } } }\n", "--format", "csv")
                .out();
        int second = csv.indexOf("\r\n\r\nSHOPPING LIST\r\n");
        assertThat(second).isPositive();
        List<List<String>> rows = parsed(csv.substring(second + "\r\n\r\nSHOPPING LIST\r\n".length()));
        assertThat(rows.get(0)).startsWith("what", "size", "for", "count");
        assertThat(rows).anySatisfy(row -> assertThat(row).startsWith("wood glue", "8 oz"));
        assertThat(rows).anySatisfy(row -> assertThat(row.get(0)).startsWith("1x4 (softwood)"));
    }

    /** A reader of RFC 4180 of its own: cells between commas, quoted ones with their quotes doubled. */
    private static List<List<String>> parsed(String csv) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < csv.length(); i++) {
            char letter = csv.charAt(i);
            if (letter == '"' && quoted && i + 1 < csv.length() && csv.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (letter == '"') {
                quoted = !quoted;
            } else if (!quoted && (letter == ',' || letter == '\r')) {
                row.add(cell.toString());
                cell.setLength(0);
                if (letter == '\r') {
                    assertThat(csv.charAt(++i)).isEqualTo('\n');
                    rows.add(row);
                    row = new ArrayList<>();
                }
            } else {
                cell.append(letter);
            }
        }
        return rows;
    }

    @Test
    void programs_get_what_the_schema_says() {
        for (String json : List.of(
                Ran.of("cuts", DEMO, "--format", "json").out(),
                cuts(RAIL + STOCK, "--format", "json").out(),
                cuts(RAIL, "--format", "json").out(),
                cuts(RAIL + "stock: { sticks: [{ of: 1x6, on-hand: 60 }] }\n", "--format", "json")
                        .out(),
                cuts("title: x\n", "--format", "json").out())) {
            assertThat(Schemas.faults("cuts", json)).as(json).isEmpty();
        }
        assertThat(Schemas.faults("cuts", "{ \"title\": 1 }")).isNotEmpty();
        String demo = Ran.of("cuts", DEMO, "--format", "json").out();
        assertThat(Schemas.faults("cuts", demo.replace("\"longPoint\"", "\"longpoint\"")))
                .isNotEmpty();
        assertThat(Schemas.faults("cuts", demo.replace("\"proved\": true", "\"proved\": 1")))
                .isNotEmpty();
    }

    @Test
    void two_stacks_are_set_beside_each_other() {
        Ran ran = cuts(RAIL + STOCK, DEMO);
        assertThat(ran.out())
                .contains(
                        "A: Rail", "B: Reading-room", "LENGTHS AND LUMBER IN ALL", "B - A", "JOINTS to make", "total");
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(cuts(RAIL, DEMO).err()).contains("A  problem", "A  note");
        assertThat(Ran.with(RAIL.getBytes(UTF_8), "cuts", DEMO, "-").err()).contains("B  problem", "B  note");
        Ran json = cuts(RAIL + STOCK, DEMO, "--format", "json");
        assertThat(json.out()).contains("\"a\": {", "\"b\": {", "\"differing\": ");
        assertThat(Schemas.faults("cuts", json.out())).isEmpty();
        assertThat(Schemas.faults("cuts", json.out().replace("\"differing\": ", "\"differing\": 0.5")))
                .isNotEmpty();
        assertThat(cuts(RAIL + STOCK, DEMO, "--format", "html").out())
                .contains("What differs", "B - A", "id=\"a\"", "id=\"b\"");
        assertThat(parsed(cuts(RAIL + STOCK, DEMO, "--format", "csv").out()))
                .hasSizeGreaterThan(20)
                .anySatisfy(row -> assertThat(row).contains("Rail"));
    }

    @Test
    void a_text_in_a_file_holds_what_was_said_too(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("cuts.txt");
        Ran ran = cuts(RAIL + STOCK, "-o", file.toString());
        assertThat(ran.out()).isEmpty();
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(Files.readString(file)).startsWith(cuts(RAIL + STOCK).out()).contains("\nNOTICES\n", "is 200 long");
        Ran nowhere = cuts(RAIL + STOCK, "-o", folder.resolve("none/cuts.txt").toString(), "--format", "json");
        assertThat(nowhere.code()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(nowhere.out()).contains("output-folder-absent").doesNotContain("\"lengths\"");
    }

    @Test
    void standard_input_cannot_be_both() {
        Ran ran = cuts(RAIL + STOCK, "-");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("Standard input cannot be both");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void a_stack_without_a_plan_has_nothing_to_cut() {
        Ran ran = cuts(RAIL.replaceAll("(?m)^(plan:|  - \\{ name: (hall|room)).*\\n", ""));
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("The stack holds no plan");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void a_stack_without_stock_has_lengths_and_no_sticks() {
        Ran ran = cuts(RAIL);
        assertThat(ran.code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(ran.err()).contains("No stock is given: lengths are known, sticks are not.");
        assertThat(ran.out()).contains("LENGTHS").doesNotContain("BUY LIST");
        assertThat(parsed(cuts(RAIL, "--format", "csv").out()))
                .as("pieces with their lengths and cuts, and no sticks")
                .hasSize(4)
                .anySatisfy(row -> assertThat(row).contains("A1", "200", "square"));
        assertThat(cuts(RAIL, DEMO).out()).contains("A: Rail").doesNotContain("LENGTHS AND LUMBER IN ALL");
    }

    @Test
    void a_stack_that_is_refused_gives_no_cuts() {
        Ran ran = cuts(RAIL + "stock: { kerf: -1/8 }\n");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("refusal", "The kerf is -1/8. It cannot be negative.");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void sticks_are_missing_and_pieces_without_a_stick_are_told() {
        Ran few = cuts(RAIL + "stock: { sticks: [{ of: 1x6, on-hand: 60 }] }\n");
        assertThat(few.err()).contains("do not hold all pieces");
        assertThat(few.out()).contains("missing", "sticks are missing");
        Ran none = cuts(RAIL + "stock: { kerf: 1/8 }\n");
        assertThat(none.out()).contains("NO STICK FOR", "all of the wood has a price  no");
        assertThat(parsed(
                        cuts(RAIL + "stock: { kerf: 1/8 }\n", "--format", "csv").out()))
                .hasSize(4);
    }

    @Test
    void a_limit_of_time_says_that_another_run_may_differ() {
        StringBuilder walls = new StringBuilder();
        for (int i = 0; i < 40; i++) {
            walls.append("  - { name: w")
                    .append(i)
                    .append(", left: square, right: square, stretches: [{ length: ")
                    .append(7 + (i * 7919 % 1301) / 16.0)
                    .append(" }] }\n");
        }
        String document =
                RAIL.replaceAll("(?m)^  - \\{ name: (hall|room).*\\n", "").replace("plan:\n", "plan:\n" + walls);
        String stock = "stock: { sticks: [{ of: 1x4, buy: [8', 10', 12', 14', 16'], price: 1.25 }] }\n";
        Ran ran = cuts(document + stock, "--seconds", "0");
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.err()).contains("The search was ended after 0 s: another run may give other sticks.");
        assertThat(ran.out()).contains("BUY LIST");
        assertThat(cuts(document + stock, "--steps", "1").err()).doesNotContain("another run");
    }

    private static final String METRIC = """
            title: Millimeters
            units: mm
            wood: yellow-poplar
            space: { wall: { solid: yes } }
            plan:
              - { name: hall, inside: cope, left: square, right: square, stretches: [{ name: a, length: 2400, corner: inside 91.5 }, { name: b, length: 900, corner: outside 135 }, { name: c, length: 900 }] }
            pieces:
              - { name: rail, profile: board 18 x 120, back: wall, bottom: datum }
              - { name: crown, profile: plain-crown 3-1/4", back: rail.face, bottom: rail.top }
            stock: { sticks: [{ of: board 18 x 120, buy: [2400, 3000] }, { of: plain-crown 3-1/4", buy: 3000 }] }
            """;

    @Test
    void a_job_in_millimeters_is_told_in_millimeters() {
        assertThat(cuts(METRIC).out())
                .contains("Sizes in millimeters;", "board 18 x 120", "    3000  ", "    2400  ", "lumber, cubic meters")
                .doesNotContain("11/16", "94-1/2", " ft\n");
    }

    @Test
    void an_old_key_is_refused_with_the_new_one_named() {
        assertThat(cuts(METRIC + "coving: [{ name: big, width: 90, depth: 16 }]\n")
                        .err())
                .contains("The key 'coving' is now called 'table-saw-cove'. Write 'table-saw-cove:' in its place.");
    }

    @Test
    void passes_of_a_cove_are_told_in_the_unit_of_the_job() {
        String cove = "table-saw-cove: [{ name: big, width: 90, depth: 16 }]\n";
        assertThat(cuts(METRIC + cove).out().replace('\n', ' '))
                .contains("passes of 1.6 mm", "about 1.6 mm a pass")
                .doesNotContain("1/16");
    }

    @Test
    void plies_are_said_to_be_glued_before_they_are_mitered() {
        String said = "plies are cut square, long point to long point, glued up, and mitered then";
        String wide = METRIC.replace("board 18 x 120, back", "board 18 x 200, back");
        assertThat(cuts(wide).out().replace('\n', ' ')).contains(said);
        assertThat(cuts(METRIC).out().replace('\n', ' ')).doesNotContain(said);
    }

    @Test
    void what_stands_at_the_fence_says_for_which_stretch_it_is() {
        String text = cuts(METRIC).out();
        assertThat(text.substring(text.indexOf("SAW, against the fence"))
                        .lines()
                        .skip(1)
                        .findFirst()
                        .orElseThrow())
                .startsWith("piece  end    on  ");
    }

    @Test
    void one_angle_is_one_figure_wherever_it_stands() {
        // 90 less half of 91.5, which in doubles is a hair less than 44.25
        assertThat(cuts(METRIC.replace("inside: cope", "inside: miter")).out())
                .contains("44.3")
                .doesNotContain("44.2");
    }

    @Test
    void the_pictures_of_a_job_in_millimeters_are_in_millimeters_and_only_inside_corners_are_coped(@TempDir Path folder)
            throws IOException {
        for (String view : List.of("plan", "sticks")) {
            Path drawn = folder.resolve(view + ".svg");
            Ran ran = Ran.with(METRIC.getBytes(UTF_8), "draw", "-", "--view", view, "-o", drawn.toString());
            assertThat(ran.code()).as(ran.err()).isNotEqualTo(ExitCode.REFUSED);
            assertThat(Files.readString(drawn))
                    .contains("in millimeters", "2400")
                    .doesNotContain("94-1/2");
            if (view.equals("plan")) {
                assertThat(Files.readString(drawn))
                        .contains("inside 91.5° corner, coped", "outside 135° corner")
                        .doesNotContain("outside 135° corner, coped");
            }
        }
    }

    @Test
    void a_limit_that_is_none_is_refused() {
        Ran steps = cuts(RAIL + STOCK, "--steps", "0");
        assertThat(steps.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(steps.err()).contains("A search of 0 steps finds nothing. Give --steps 1 or more");
        assertThat(Schemas.faults(
                        "cuts",
                        cuts(RAIL + STOCK, "--steps", "0", "--format", "json").out()))
                .as("a program is told in its own form")
                .isEmpty();
        assertThat(cuts(RAIL + STOCK, "--seconds", "-1").err()).contains("A search cannot end after -1 s.");
        assertThat(cuts(RAIL + STOCK, "--seconds", "0.5").code()).isEqualTo(ExitCode.CLEAN);
    }

    @Test
    void an_opening_that_takes_a_whole_wall_is_told() {
        String open = RAIL.replace("{ name: short, length: 40 }", "{ length: 40, openings: [{ from: 0, to: 40 }] }");
        assertThat(cuts(open + STOCK).err())
                .contains("Opening 'opening 1' takes all of 'stretch 1': no wall is left for trim.");
    }

    @Test
    void a_run_of_too_many_walls_is_refused_once_and_none_of_their_keys_is_called_unknown() {
        String walls = "{ name: short, length: 40 }"
                + IntStream.range(0, 300)
                        .mapToObj(i -> ", { name: w" + i + ", length: 9, corner: outside 90 }")
                        .collect(Collectors.joining());
        Ran ran = cuts(RAIL.replace("{ name: short, length: 40 }", walls) + STOCK);
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("holds 301 stretches").doesNotContain("No key is called");
    }

    /** A corner of next to nothing asks for pieces of miles; the answer is a sentence. */
    @Test
    void a_corner_of_a_thousandth_of_a_degree_ends_in_a_sentence() {
        String sharp =
                RAIL.replace("{ name: short, length: 40 }", "{ length: 40, corner: outside 0.001 }, { length: 40 }");
        Ran ran = cuts(sharp + STOCK);
        assertThat(ran.code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(ran.err()).contains("Look at the plan again").hasSizeLessThan(4000);
    }

    @Test
    void a_file_that_is_not_there_is_refused() {
        assertThat(Ran.of("cuts", "no-such.yaml").code()).isEqualTo(ExitCode.REFUSED);
        assertThat(Ran.of("cuts", DEMO, "--format", "xml").err()).contains("text, json, csv, html");
    }
}
