package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
    void what_the_catalog_holds_is_told_to_programs_too() {
        JsonNode json =
                new JsonMapper().readTree(Ran.of("profile", "--format", "json").out());
        assertThat(json.propertyNames()).containsExactly("profiles", "boards", "woods", "cutters", "heads", "notices");
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
                        "refusal  NAME  plain-crwn 3-1/4: No profile is called 'plain-crwn'. Did you mean"
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
    void what_comes_nearest_is_told_with_what_the_bench_can_do() {
        Ran ran = Ran.of("profile", "cove 3/4 x 3/4", "--nearest");
        assertThat(ran.code()).isEqualTo(ExitCode.CLEAN);
        assertThat(ran.out())
                .startsWith("cove-bed 3/4 x 3/4: Run it from this one")
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
        assertThat(json.propertyNames()).containsExactly("name", "answer", "use", "nearest", "notices");
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
                        "refusal  NAME  What comes nearest is asked of one profile. Name it, with its sizes.\n"));
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
                        "refusal  NAME  A picture is drawn of one profile. Name it, with its sizes.\n"));
    }

    @Test
    void how_it_is_milled_is_told_with_the_caution_and_no_line_is_too_wide() {
        Ran ran = Ran.of("profile", "corona 2-1/2 x 2");
        assertThat(ran.code()).isEqualTo(ExitCode.PROBLEM);
        assertThat(ran.err())
                .isEqualTo(
                        "problem  NAME  corona 2-1/2 x 2: The line between (1.500, 0.000) and (1.750, 0.000) cannot be"
                                + " cut from the front; it needs a pass from below. Run it once more that way, or draw it open"
                                + " to the front.\n"
                                + "problem  NAME  corona 2-1/2 x 2: Inside corner at (2.375, 1.875) is square; the cutter leaves"
                                + " a 1/16 radius (0.0006 sq in). Draw it 1/16 or accept.\n");
        assertThat(ran.out())
                .contains(
                        "reached from below",
                        "straight bit, diameter 1/4",
                        "Listed bits and blades do not make ogee; 0.037 sq in is left there.",
                        "knife marks to the inch                20.0",
                        "The maker's label says how fast a cutter may turn");
        assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
        assertThat(Ran.of("profile", "board 3/4 x 3").out()).contains("Planed on four sides; nothing else to cut.");
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
                        "runs",
                        "fewest",
                        "unmade",
                        "left",
                        "knife");
        assertThat(milling.at("/undercuts/0/area").doubleValue()).isCloseTo(0.0625, within(1e-6));
        assertThat(milling.at("/undercuts/0/passes/0").stringValue()).isEqualTo("below");
        assertThat(milling.get("reach").toString()).contains("the front, tilted down 90");
        assertThat(milling.at("/knife/depth").doubleValue()).isCloseTo(0.403, within(5e-4));
    }

    @Test
    void passes_and_the_knife_are_drawn() {
        Ran passes = Ran.of("profile", "corona 2-1/2 x 2", "--view", "milling");
        assertThat(passes.out())
                .startsWith("<?xml")
                .contains("how it is milled", "id=\"left\"", "undercut: not reached from the front", "guards stay on");
        Ran knife = Ran.of("profile", "cove 3/4 x 3/4", "--view", "knife");
        assertThat(knife.code()).as(knife.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(knife.out()).contains("Knife template, full size", "Full size only if this line is 4 in", "0.677");
        assertThat(Ran.of("profile", "cove 3/4 x 3/4", "--view", "outline").out())
                .contains("<title>cove 3/4 x 3/4</");
        assertThat(Ran.of("profile", "board 3/4 x 3", "--view", "knife"))
                .isEqualTo(new Ran(
                        ExitCode.REFUSED,
                        "",
                        "refusal  NAME  board 3/4 x 3: A board is planed: there is no knife to draw. Take --view"
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
                .contains("refusal  NAME  kerfed: Kerf is 3/4 deep in a 3/4 board. Cut it less deep.");
    }
}
