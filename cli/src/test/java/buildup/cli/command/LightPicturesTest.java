package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The front view and the picture of rays, as files. */
class LightPicturesTest {
    private static final String CORNICE = Ran.demo("reading-room-cornice.yaml").toString();

    @TempDir
    Path folder;

    private String drawn(String... options) {
        Path out = folder.resolve("a.svg");
        String[] words = new String[options.length + 4];
        System.arraycopy(new String[] {"draw", CORNICE, "-o", out.toString()}, 0, words, 0, 4);
        System.arraycopy(options, 0, words, 4, options.length);
        Ran ran = Ran.of(words);
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        return Ran.read(out);
    }

    @Test
    void the_front_names_each_shadow_with_its_size_and_caster() {
        assertThat(drawn("--view", "elevation"))
                .contains("frieze face: 3-1/8- of 4-1/8 dark, by fascia")
                .contains("drafting, 35.3\u00b0 up, 45\u00b0 off square from the left; 45\u00b0 in section.");
    }

    /** Closed form: radius 2, 3/4 of the quarter circle dark, a third of that by the shelf, which stands out by 0.613. */
    @Test
    void a_member_that_is_dark_in_two_ways_is_named_with_all_of_it_and_what_is_cast() throws IOException {
        Path stack = folder.resolve("round.yaml");
        Files.writeString(stack, """
                title: Quarter round under a shelf
                units: in
                wood: yellow-poplar
                space: { floor: -60, wall: { solid: yes } }
                lights: [{ name: high, altitude: 45, azimuth: 0 }]
                pieces:
                  - { name: quarter, section: [ovolo 2], back: wall, bottom: 0 }
                  - { name: shelf, section: [out 2.6131259, up 3/4], back: wall, bottom: quarter.top }
                """);
        for (String view : List.of("elevation", "rays")) {
            Path out = folder.resolve(view + ".svg");
            Ran ran = Ran.of("draw", stack.toString(), "--view", view, "-o", out.toString());
            assertThat(ran.code()).as(ran.err()).isNotEqualTo(ExitCode.REFUSED);
            assertThat(Ran.read(out)).contains("quarter ovolo: 2-3/8- of 3-1/8+ dark, 13/16- of it by shelf");
        }
    }

    @Test
    void another_light_moves_the_shadows_of_the_front() {
        // altitude 40, azimuth 60: section angle 59.21 degrees, the whole frieze dark
        assertThat(drawn("--view", "elevation", "--light", "40,60"))
                .contains("frieze face: 4-1/8 of 4-1/8 dark, by fascia")
                .contains("59.2\u00b0 in section.");
    }

    @Test
    void rays_show_lit_shade_and_cast_outline_in_three_dash_patterns() {
        String svg = drawn("--view", "rays");
        // the outline's heavy lines in the first picture, which is that of the light; a picture for each eye comes
        // below it
        List<String> outline = Pattern.compile("<path [^>]*stroke-width=\"0.045\"[^>]*>")
                .matcher(svg.substring(0, svg.indexOf("Seen by standing")))
                .results()
                .map(MatchResult::group)
                .toList();
        assertThat(outline.stream()
                        .map(path -> path.replaceFirst(".*stroke-dasharray=\"([^\"]+)\".*|.*", "$1"))
                        .distinct())
                .as("lit outline is drawn through, shade and cast shadow in dashes of their own")
                .hasSize(3);
        assertThat(svg).contains("Seen by standing", "Seen by seated");
    }

    @Test
    void a_light_that_cannot_shine_is_said_and_nothing_is_drawn() {
        Path out = folder.resolve("b.svg");
        Ran ran = Ran.of("draw", CORNICE, "--view", "elevation", "--light", "30,120", "-o", out.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("comes from behind the wall and makes no shadow");
        assertThat(out).doesNotExist();
    }

    @Test
    void a_light_that_is_no_two_angles_is_refused() {
        Ran ran = Ran.of(
                "draw",
                CORNICE,
                "--view",
                "rays",
                "--light",
                "noon",
                "-o",
                folder.resolve("c.svg").toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("'noon' is not an altitude and an azimuth. Write two angles in degrees");
    }

    @Test
    void the_same_picture_has_the_same_bytes() {
        assertThat(drawn("--view", "elevation")).isEqualTo(drawn("--view", "elevation"));
        assertThat(drawn("--view", "rays")).isEqualTo(drawn("--view", "rays"));
    }
}
