package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import buildup.cli.Schemas;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ProfileCommandTest {
    @Test
    void without_a_name_it_tells_what_the_catalog_holds() {
        Ran ran = Ran.of("profile");
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains(
                        "PROFILES",
                        "cove-bed",
                        "BOARDS",
                        "softwood",
                        "WOODS",
                        "yellow-poplar",
                        "CUTTERS",
                        "core box",
                        "HEADS",
                        "molder head");
        assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void boards_that_are_sold_by_the_millimeter_are_listed_in_millimeters() {
        assertThat(Ran.of("profile").out().replace('\u00A0', ' '))
                .contains("25 is 21 mm", "150 is 145 mm", "8/4 is 1-3/4");
    }

    @Test
    void what_the_catalog_holds_is_told_to_programs_too() {
        JsonNode json =
                new JsonMapper().readTree(Ran.of("profile", "--format", "json").out());
        assertThat(json.propertyNames())
                .containsExactly("title", "units", "profiles", "boards", "woods", "cutters", "heads", "notices");
        JsonNode crown = json.get("profiles")
                .valueStream()
                .filter(one -> one.get("name").stringValue().equals("plain-crown"))
                .findFirst()
                .orElseThrow();
        assertThat(crown.at("/spring/angle").doubleValue()).isEqualTo(38);
        assertThat(crown.at("/usual/0/width").doubleValue()).isEqualTo(2.25);
    }

    @Test
    void a_profile_is_told_member_by_member() {
        Ran ran = Ran.of("profile", "cove-bed 1-1/4 x 1-3/8");
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).startsWith("""
                cove-bed 1-1/4 x 1-3/8
                kind                    bed
                thickness of the stick  1-1/4
                width of the stick      1-3/8
                height as fixed         1-3/8
                projection as fixed     1-1/4
                """).contains("cove    arc         1  1-9/16+");
    }

    /** Drop w cos S + b sin S and projection w sin S + a cos S: plane trigonometry, done apart with a = b = 1/4. */
    @Test
    void a_sprung_profile_is_told_with_its_drop_and_projection() {
        JsonNode json = new JsonMapper()
                .readTree(Ran.of("profile", "plain-crown 3-1/4", "--format", "json")
                        .out());
        assertThat(json.at("/spring/drop").doubleValue()).isCloseTo(2.7150, within(5e-5));
        assertThat(json.at("/spring/projection").doubleValue()).isCloseTo(2.1979, within(5e-5));
        assertThat(json.propertyNames())
                .containsExactly(
                        "title",
                        "units",
                        "name",
                        "kind",
                        "thickness",
                        "width",
                        "height",
                        "projection",
                        "area",
                        "spring",
                        "members",
                        "milling",
                        "notices");
    }

    @Test
    void a_mistyped_profile_is_answered_with_the_nearest() {
        assertThat(Ran.of("profile", "plain-crwn 3-1/4"))
                .isEqualTo(new Ran(
                        ExitCode.REFUSED,
                        "",
                        "refusal  plain-crwn 3-1/4  No profile is called 'plain-crwn'. Did you mean"
                                + " plain-crown?\n"));
        assertThat(Ran.of("profile", "plain-crwn", "--format", "json").out()).contains("\"unknown-name\"");
    }

    @Test
    void the_shops_own_profiles_are_told_too(@TempDir Path folder) throws IOException {
        Path own = Files.writeString(folder.resolve("own.yaml"), """
                profiles:
                  - name: stub
                    kind: bed
                    about: A stub
                    sizes: [projection, height]
                    words: [out projection, up height]
                """);
        Ran ran = Ran.of("profile", "stub 1 x 2", "--catalog", own.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).contains("area, sq in             2.000");
    }

    @Test
    void a_profile_is_told_in_the_unit_of_its_sizes_or_of_the_catalog(@TempDir Path folder) throws IOException {
        String inches = Ran.of("profile", "corona 2-1/2 x 2").out();
        String metric = Ran.of("profile", "corona 63.5 mm x 50.8 mm").out();
        assertThat(inches).contains("Sizes in inches");
        assertThat(metric).contains("Sizes in millimeters", "height as fixed").doesNotContainPattern("\\d/\\d");
        Path own = Files.writeString(folder.resolve("own.yaml"), "units: mm\n");
        Ran listed = Ran.of("profile", "corona 63.5 x 50.8", "--catalog", own.toString());
        assertThat(listed.out().replace("63.5 x 50.8", "63.5 mm x 50.8 mm")).isEqualTo(metric);
        assertThat(Ran.of("profile", "corona 2-1/2 x 2", "--catalog", own.toString())
                        .err())
                .contains("2-1/2 in or mm?");
        for (String view : List.of("milling", "knife", "outline")) {
            String[] words = {"profile", "corona 63.5 mm x 50.8 mm", "--view", view};
            assertThat(String.join("\n", Ran.of(words).out().split("<[^>]*>")))
                    .as(view)
                    .doesNotContainPattern("\\d/\\d|\\binch");
        }
        assertThat(Ran.of("profile", "cove 19.05 mm x 19.05 mm", "--nearest").out())
                .contains("cove-bed 19.05 mm x 19.05 mm", "sq cm")
                .doesNotContainPattern("\\d/\\d");
    }

    @Test
    void what_comes_nearest_is_told_with_what_the_bench_can_do() {
        Ran ran = Ran.of("profile", "cove 3/4 x 3/4", "--nearest");
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out())
                .startsWith("cove 3/4 x 3/4\ncove-bed 3/4 x 3/4: Run it from this one")
                .contains("NEAREST to cove 3/4 x 3/4", "cove 11/16 x 11/16", "what to do")
                .doesNotContain("\ncove 3/4 x 3/4");
        assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
    }

    @Test
    void a_profile_of_ones_own_is_compared_with_the_catalog(@TempDir Path folder) throws IOException {
        Path own = folder.resolve("own.yaml");
        Files.writeString(own, """
                profiles:
                  - name: shop-cove
                    usual: [47/64 x 3/4]
                    sizes: [projection, height]
                    words: [out 1/8 as bottom, cove height - 1/8 x projection - 7/64, up to height as fillet]
                """);
        Ran ran = Ran.of("profile", "shop-cove", "--nearest", "--catalog", own.toString(), "--format", "json");
        JsonNode json = new JsonMapper().readTree(ran.out());
        assertThat(json.propertyNames())
                .containsExactly("title", "units", "name", "answer", "use", "nearest", "notices");
        assertThat(json.get("nearest")).hasSize(5);
        assertThat(json.at("/nearest/0/profile").stringValue()).isEqualTo("cove 3/4 x 3/4");
        assertThat(json.at("/nearest/0/gap").doubleValue()).isLessThan(0.02);
        assertThat(json.at("/use").stringValue()).isEqualTo("cove 3/4 x 3/4");
    }

    @Test
    void the_nearest_is_drawn_over_the_profile() {
        Ran ran = Ran.of("profile", "cove 3/4 x 3/4", "--nearest", "--format", "svg");
        assertThat(ran.out())
                .startsWith("<?xml")
                .contains("id=\"wanted\"", "id=\"nearest\"", "Drawn 5 times full size.");
    }

    @Test
    void the_nearest_of_nothing_is_refused() {
        assertThat(Ran.of("profile", "--nearest"))
                .isEqualTo(new Ran(
                        ExitCode.REFUSED,
                        "",
                        "refusal  profile  What comes nearest is asked of one profile. Name it, with its sizes.\n"));
    }

    @Test
    void a_picture_is_drawn_of_one_profile() {
        Ran ran = Ran.of("profile", "cyma-crown 3-5/8", "--format", "svg");
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out()).startsWith("<?xml").contains("title>cyma-crown 3-5/8</");
        Ran dxf = Ran.of("profile", "cyma-crown 3-5/8", "--format", "dxf");
        assertThat(dxf.code()).as(dxf.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(dxf.out())
                .startsWith("  0\r\nSECTION")
                .contains("cyma-crown 3-5/8")
                .endsWith("EOF\r\n");
        assertThat(Ran.of("profile", "--format", "dxf").err()).contains("A picture is drawn of one profile.");
        assertThat(Ran.of("profile", "--format", "svg"))
                .isEqualTo(new Ran(
                        ExitCode.REFUSED,
                        "",
                        "refusal  profile  A picture is drawn of one profile. Name it, with its sizes.\n"));
    }

    @Test
    void how_it_is_milled_is_told_with_the_caution_and_no_line_is_too_wide() {
        Ran ran = Ran.of("profile", "corona 2-1/2 x 2");
        assertThat(ran.code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(ran.err())
                .isEqualTo("problem  corona 2-1/2 x 2  The slot 1/4 wide and 1/4 deep at (1.625, 0.250) is not open"
                        + " to the outside head; it needs the bottom head. Run it from that side, or leave it out.\n"
                        + "problem  corona 2-1/2 x 2  Inside corner at (2.375, 1.875) is square; the cutter leaves"
                        + " a 1/16 radius (0.0006 sq in). Draw it 1/16 or accept.\n");
        assertThat(ran.out())
                .contains(
                        "reached by the bottom head",
                        "straight bit, diameter 1/4",
                        "Listed bits and blades do not make ogee; 0.037 sq",
                        "HEADS that it takes, the fewest",
                        "bottom   drip                      straight bit, diameter 1/4",
                        "outside        1    6000    9425      25   20.0     0.00010",
                        "the\nmaker's marking governs",
                        "Trained operators only. Follow the machine and cutter makers' instructions and");
        assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(Ran.of("profile", "board 3/4 x 3").out()).contains("S4S; no profile to cut.");
    }

    @Test
    void how_it_is_milled_is_told_to_programs_too() {
        JsonNode milling = new JsonMapper()
                .readTree(Ran.of("profile", "corona 2-1/2 x 2", "--format", "json", "--tilt", "-90")
                        .out())
                .get("milling");
        assertThat(milling.propertyNames())
                .containsExactly(
                        "width",
                        "height",
                        "reach",
                        "undercuts",
                        "corners",
                        "hollows",
                        "grooves",
                        "passes",
                        "bits",
                        "runs",
                        "fewest",
                        "unmade",
                        "left",
                        "heads",
                        "knives");
        assertThat(milling.at("/undercuts/0/area").doubleValue()).isCloseTo(0.0625, within(1e-6));
        assertThat(milling.at("/undercuts/0/passes/0").stringValue()).isEqualTo("bottom");
        assertThat(milling.get("reach").toString()).contains("outside, tilted down 90");
        assertThat(milling.at("/knives/0/depth").doubleValue()).isCloseTo(0.403, within(5e-4));
    }

    @Test
    void passes_and_the_knife_are_drawn() {
        Ran passes = Ran.of("profile", "corona 2-1/2 x 2", "--view", "milling");
        assertThat(passes.out())
                .startsWith("<?xml")
                .contains(
                        "how it is milled",
                        "id=\"left\"",
                        "undercut: not reached by the outside head",
                        "Trained operators only");
        Ran knife = Ran.of("profile", "cove 3/4 x 3/4", "--view", "knife");
        assertThat(knife.code()).as(knife.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(knife.out()).contains("Knife template, full size", "This line is 4 in", "0.677");
        assertThat(Ran.of("profile", "cove 3/4 x 3/4", "--view", "outline").out())
                .contains("<title>cove 3/4 x 3/4</");
        assertThat(Ran.of("profile", "board 3/4 x 3", "--view", "knife"))
                .isEqualTo(new Ran(
                        ExitCode.REFUSED,
                        "",
                        "refusal  board 3/4 x 3  A board is planed: there is no knife to draw. Take --view"
                                + " milling.\n"));
    }

    @Test
    void a_kerf_as_deep_as_the_board_is_refused(@TempDir Path folder) throws IOException {
        Path own = Files.writeString(folder.resolve("own.yaml"), """
                profiles:
                  - name: kerfed
                    kind: board
                    about: A kerf through
                    sizes: [projection, height]
                    words: [out projection, up 1, quirk 1/8 x 3/4, up height]
                """);
        assertThat(Ran.of("profile", "kerfed 3/4 x 3", "--catalog", own.toString())
                        .err())
                .contains("refusal  kerfed 3/4 x 3  kerfed: Kerf is 3/4 deep in a 3/4 board. Cut it less deep.");
    }

    @Test
    void what_programs_get_is_as_the_schema_says() {
        for (String[] words : new String[][] {
            {"profile"},
            {"profile", "plain-crown 3-1/4"},
            {"profile", "corona 2-1/2 x 2", "--tilt", "-90"},
            {"profile", "board 3/4 x 3"},
            {"profile", "cove 3/4 x 3/4", "--nearest"},
            {"profile", "cove 3/4 x 3/4", "--rotate", "--scale"},
            {"profile", "plain-crwn"}
        }) {
            String json = Ran.of(with(words, "--format", "json")).out();
            assertThat(Schemas.faults("profile", json)).as(json).isEmpty();
        }
        String crown =
                Ran.of("profile", "plain-crown 3-1/4", "--format", "json").out();
        assertThat(Schemas.faults("profile", crown.replace("\"wallEdge\"", "\"walledge\"")))
                .isNotEmpty();
        assertThat(Schemas.faults("profile", crown.replace("\"fewest\": true", "\"fewest\": 1")))
                .isNotEmpty();
    }

    private static String[] with(String[] words, String... more) {
        return Stream.concat(Stream.of(words), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void a_spreadsheet_gets_the_members_and_a_page_all_of_it(@TempDir Path folder) throws IOException {
        assertThat(Ran.of("profile", "plain-crown 3-1/4", "--format", "csv").out())
                .startsWith("member,shape,radius in,length in,out in,up in,to out in,to up in\r\nface,line,,3.25,");
        assertThat(Ran.of("profile", "--format", "csv").out()).startsWith("name,kind,about,usual sizes\r\n");
        Path page = folder.resolve("crown.html");
        Ran ran = Ran.of("profile", "plain-crown 3-1/4", "--format", "html", "-o", page.toString());
        assertThat(ran).isEqualTo(new Ran(ExitCode.CLEAN, "", ""));
        assertThat(Files.readString(page))
                .startsWith("<!DOCTYPE html>")
                .contains(">plain-crown 3-1/4<", "reached by the top head", ">3-1/4<", "Trained operators only");
    }
}
