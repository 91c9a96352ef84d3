package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Millimeters typed without their unit, and sizes of nothing: asked about or refused, and never without end. */
@Timeout(240)
class AbsurdSizesTest {
    private static final String FAR = """
            title: A case
            wood: yellow-poplar
            plan: [{ left: return, right: return, stretches: [{ length: %s }] }]
            stock: { sticks: [{ of: 1x4, buy: [8', 12'], price: 1, per: foot }, { of: 1x6, buy: [8'], price: 2, per: foot }] }
            pieces:
              - { name: rail, profile: board 3/4 x 3-1/2, back: %s, bottom: %s }
              - { name: cap, profile: board 3/4 x 5-1/2, lay: flat, back: wall, face: rail.face, bottom: rail.top }
            """;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"96, 1000, 0", "96, 100000, 0", "96, 19, 2400", "2438, 19, 0", "60000, 1000, 2400"})
    void cuts_end_and_the_size_is_asked_about(String length, String back, String bottom) {
        byte[] stack = FAR.formatted(length, back, bottom).getBytes(UTF_8);
        Ran cuts = Ran.with(stack, "cuts", "-", "--steps", "200000");
        assertThat(cuts.err()).doesNotContain("went wrong inside").contains("mm?");
        Ran sticks = Ran.with(
                stack,
                "draw",
                "-",
                "--view",
                "sticks",
                "-o",
                folder.resolve("x.svg").toString());
        assertThat(sticks.err()).doesNotContain("went wrong inside");
        assertThat(sticks.code()).isLessThanOrEqualTo(ExitCode.REFUSED);
    }

    @Test
    void the_question_says_how_far_that_is() {
        Ran ran = Ran.report(FAR.formatted("96", "1000", "0"));
        assertThat(ran.err()).contains("1000 is 83").contains("mm?");
    }

    @Test
    void honest_places_are_not_asked_about() {
        assertThat(Ran.report(FAR.formatted("480", "1", "96")).err()).doesNotContain("mm?");
        String metric =
                "units: mm\nwood: yellow-poplar\npieces: [{ name: a, profile: board 19 x 89, back: 1000, bottom: 2400 }]";
        assertThat(Ran.report(metric).err()).doesNotContain("mm?");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "board 0.00000001 x 1",
                "board 3/4 x 0.00000001",
                "cove 0.00000001 x 0.00000001",
                "cove-bed 0.00000001 x 0.00000001",
                "plain-crown 0.00000001",
                "board 0.003 x 3"
            })
    void what_is_too_thin_to_be_wood_is_refused_in_words(String name) {
        for (List<String> more : List.of(
                List.<String>of(), List.of("--nearest"), List.of("--scale", "--rotate"), List.of("--format", "svg"))) {
            String[] words =
                    Stream.concat(Stream.of("profile", name), more.stream()).toArray(String[]::new);
            Ran ran = Ran.of(words);
            assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.REFUSED);
            assertThat(ran.err()).startsWith("refusal  " + name).doesNotContain("went wrong inside");
        }
    }

    /** Along a straight edge of 9,000 ft, every 250th of an inch was measured: 27 million places, for each of 200 profiles. */
    @Test
    @Timeout(60)
    void the_nearest_of_thousands_of_feet_is_found_as_coarsely_as_it_is_large() {
        for (String name : List.of("board 9000' x 9000'", "cove 100' x 100'", "plain-crown 9999'")) {
            Ran ran = Ran.of("profile", name, "--nearest", "--scale");
            assertThat(ran.code()).as(ran.err()).isLessThanOrEqualTo(ExitCode.PROBLEM);
            assertThat(ran.out()).contains("NEAREST to " + name);
        }
    }

    /** The pages of what is that large were laid out, 200 million, to be counted. */
    @Tag("long")
    @Test
    @Timeout(60)
    void what_would_take_millions_of_pages_is_refused_and_not_laid_out() {
        String cove = "cove 9000' x 9000'";
        List<Ran> all = new ArrayList<>(Stream.of("outline", "sheet")
                .map(view -> Ran.of("profile", cove, "--format", "svg", "--view", view))
                .toList());
        for (String name : List.of(cove, "board 9000' x 9000'")) {
            byte[] stack = """
                    plan: [{ left: return, right: return, stretches: [{ length: 96 }] }]
                    pieces: [{ name: a, profile: "%s", back: wall, bottom: 0 }]
                    """.formatted(name).getBytes(UTF_8);
            all.add(Ran.with(stack, "draw", "-", "-o", "-"));
            all.add(Ran.with(stack, "sheets", "-", "--only", "section,templates", "-o", "-"));
            if (name.equals(cove)) {
                all.add(Ran.with(stack, "sheets", "-", "--only", "profiles", "-o", "-"));
            }
        }
        for (Ran ran : all) {
            assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.REFUSED);
            assertThat(ran.err()).contains("pages of letter: more than 1000");
        }
    }

    /** A front that is not at full size was laid out without asking for its pages at all. */
    @Test
    @Timeout(60)
    void so_is_a_picture_that_is_not_at_full_size_and_it_is_named() {
        byte[] stack = """
                firebox: { top: -4, left: 12, right: 48 }
                pieces: [{ name: a, profile: "board 9000' x 9000'", back: wall, bottom: 0 }]
                """.getBytes(UTF_8);
        Ran ran = Ran.with(stack, "sheets", "-", "--only", "clearance", "-o", "-");
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).containsPattern("'Fire from the front' takes \\d+ pages of letter: more than 1000");
    }

    @Test
    void so_is_an_outline_of_words() {
        Ran ran = Ran.report("pieces: [{ name: a, section: [out 0.003, up 2], back: wall, bottom: 0 }]");
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("no wood is so thin").doesNotContain("went wrong inside");
    }

    /** A front 80 in high, drawn as wide, takes more than 200 million dots at 150 an inch. */
    @Tag("long")
    @Test
    void a_large_front_of_true_sizes_is_drawn_with_fewer_dots_and_says_so() throws Exception {
        Path png = folder.resolve("front.png");
        Ran ran = Ran.with("""
                lights: [{ name: lamp, altitude: 35, azimuth: 45 }]
                pieces: [{ name: a, profile: board 3/4 x 80, back: wall, bottom: 0 }]
                """.getBytes(UTF_8), "draw", "-", "--view", "elevation", "-o", png.toString());
        assertThat(ran.code()).as(ran.err()).isNotEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("dots an inch, not 150");
        BufferedImage image = ImageIO.read(png.toFile());
        assertThat((long) image.getWidth() * image.getHeight()).isBetween(40_000_000L, 61_000_000L);
    }

    @Test
    void a_picture_of_too_many_dots_is_refused_and_one_of_lines_is_drawn() {
        byte[] stack = """
                lights: [{ name: lamp, altitude: 35, azimuth: 45 }]
                pieces: [{ name: a, profile: board 3/4 x 10000, back: wall, bottom: 0 }]
                """.getBytes(UTF_8);
        for (String view : List.of("elevation", "rays", "holds")) {
            Path png = folder.resolve(view + ".png");
            Ran dots = Ran.with(stack, "draw", "-", "--view", view, "-o", png.toString());
            if (dots.code() == ExitCode.REFUSED) {
                assertThat(dots.err()).contains("million pixels");
                assertThat(png).doesNotExist();
            } else {
                assertThat(png.toFile().length()).isLessThan(60_000_000);
            }
        }
        Ran dots = Ran.with(
                stack,
                "draw",
                "-",
                "--view",
                "elevation",
                "-o",
                folder.resolve("a.svg").toString());
        assertThat(dots.err()).doesNotContain("pixels");
    }
}
