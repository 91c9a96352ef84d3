package buildup.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Stacks of which nothing, or little, faces the room, and eyes and lamps in the plane of a face: wrong or odd, and yet
 * with every report and picture.
 */
class OddStacksTest {
    private static final String HEAD = """
            wood: yellow-poplar
            eyes: [{ name: standing, distance: 40, height: 60 }]
            lights:
              - { name: noon, altitude: 40, azimuth: 30 }
              - { name: lamp, at: { distance: 30, height: 50 }, width: 6 }
            """;

    private static final Map<String, String> STACKS = new TreeMap<>(Map.of(
            "above the ceiling",
            """
                    space: { floor: 0, ceiling: 8 }
                    pieces:
                      - { name: rail, profile: board 3/4 x 3, back: wall, bottom: 30 }
                    """,
            "below the floor",
            """
                    space: { floor: 70, ceiling: 180 }
                    pieces:
                      - { name: rail, profile: board 3/4 x 3, back: wall, bottom: 30 }
                    """,
            "inside the wall",
            """
                    space: { floor: 0, ceiling: 96 }
                    pieces:
                      - { name: rail, profile: board 3/4 x 3, face: wall - 1, bottom: 30 }
                      - { name: cap, profile: board 3/4 x 3, lay: flat, face: wall - 1, bottom: rail.top }
                    """,
            "inside framing",
            """
                    space: { wall: { solid: no } }
                    pieces:
                      - { name: case, kind: framing, section: [out 14, up 30], back: 0, bottom: 0 }
                      - { name: rail, profile: board 3/4 x 3, back: 3, bottom: 10 }
                    """,
            "let into framing but for its top",
            """
                    space: { wall: { solid: no } }
                    pieces:
                      - { name: low, kind: framing, section: [out 4, up 4], back: 0, bottom: 0 }
                      - { name: high, kind: framing, section: [out 4, up 3], back: 8, bottom: 0 }
                      - { name: mid, kind: framing, section: [out 4, up 2-1/4], back: 4, bottom: 0 }
                      - { name: rail, profile: board 3/4 x 4, lay: flat, back: 4, bottom: 2-1/4 }
                    """));

    private static final String IN_PLANE = """
            wood: yellow-poplar
            space: { floor: -84, wall: { solid: no } }
            eyes:
              - { name: over the rail, distance: 3/4, height: 60 }
              - { name: under the shelf, distance: 5-1/2, height: -60 }
              - { name: level with its top, distance: 60, height: 3-3/4 }
            lights:
              - { name: in line, at: { distance: 5-1/2, height: 40 }, width: 2 }
              - { name: level, at: { distance: 40, height: 3 } }
            pieces:
              - { name: block, kind: nailer, section: [out 1, up 1/2], back: wall, top: 0 }
              - { name: rail, profile: board 3/4 x 3, back: wall, bottom: 0 }
              - { name: shelf, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: rail.top }
            """;

    @TempDir
    private Path folder;

    @Test
    void odd_stacks_are_drawn_and_reported_in_every_view_and_format() throws IOException {
        Map<String, String> stacks = new TreeMap<>();
        STACKS.forEach((what, text) -> stacks.put(what, HEAD + text));
        stacks.put("eye and lamp in the plane of a face", IN_PLANE);
        for (Map.Entry<String, String> stack : stacks.entrySet()) {
            byte[] text = stack.getValue().getBytes(StandardCharsets.UTF_8);
            for (String view : List.of("section", "elevation", "rays", "holds")) {
                Path out = folder.resolve(view + ".svg");
                Ran ran = Ran.with(text, "draw", "-", "--view", view, "-o", out.toString());
                assertThat(ran.code())
                        .as(stack.getKey() + ", " + view + ": " + ran.err())
                        .isLessThan(ExitCode.REFUSED);
                assertThat(Ran.read(out)).contains("</svg>");
            }
            for (String format : List.of("text", "json", "html")) {
                Ran ran = Ran.with(text, "report", "-", "--format", format);
                assertThat(ran.code())
                        .as(stack.getKey() + ", " + format + ": " + ran.err())
                        .isLessThan(ExitCode.REFUSED);
                assertThat(ran.out()).contains("rail");
            }
        }
    }
}
