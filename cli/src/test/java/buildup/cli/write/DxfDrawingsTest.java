package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.OutsideTool;
import buildup.cli.Ran;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Drawings in DXF as another program finds them: ezdxf (Debian package python3-ezdxf), which shares no code with this one. */
@Tag("long")
class DxfDrawingsTest {
    @TempDir
    private Path folder;

    private List<String[]> read(Path file) throws Exception {
        OutsideTool.Run run = OutsideTool.python(folder, "ezdxf", "dxf_blocks.py", file);
        assertThat(run.code()).as(run.output()).isZero();
        return run.output().lines().map(line -> line.split("\t", -1)).toList();
    }

    private static List<String[]> of(List<String[]> rows, String kind) {
        return rows.stream().filter(row -> row[0].equals(kind)).toList();
    }

    private Path drawn(String stack, String view) throws Exception {
        Path file = folder.resolve(stack + "-" + view + ".dxf");
        Ran.of("draw", Ran.demo(stack).toString(), "--view", view, "-o", file.toString());
        assertThat(file).exists();
        return file;
    }

    @ParameterizedTest
    @CsvSource({
        "reading-room-case.yaml, section, TRIM NAILER FRAMING WALL BREAK HATCH DIMENSIONS LETTERS NOTES SHEET GRID",
        "reading-room-case.yaml, elevation, TRIM HATCH LIGHTS NOTES SHEET",
        "reading-room-case.yaml, rays, TRIM NAILER FRAMING HATCH BREAK LIGHTS EYES NOTES SHEET",
        "reading-room-case.yaml, holds, TRIM NAILER FRAMING HATCH BREAK BEARING WEIGHTS FASTENINGS NOTES SHEET",
        "reading-room-case.yaml, steps, TRIM NAILER FRAMING FASTENINGS SEQUENCE NOTES",
        "reading-room-case.yaml, season, TRIM NAILER FRAMING HATCH BREAK SEASONS NOTES SHEET",
        "reading-room-case.yaml, plan, TRIM NAILER WALL HATCH DIMENSIONS LETTERS NOTES",
        "reading-room-case.yaml, sticks, TRIM HATCH DIMENSIONS NOTES",
        "reading-room-mantel.yaml, proportion, TRIM NAILER HATCH PROPORTION NOTES",
        "reading-room-mantel.yaml, clearance, TRIM NAILER FRAMING WALL HATCH BREAK CLEARANCE NOTES SHEET",
    })
    void every_view_is_sound_and_its_layers_are_what_it_is_about(String stack, String view, String layers)
            throws Exception {
        List<String[]> rows = read(drawn(stack, view));
        assertThat(of(rows, "file")).allSatisfy(row -> assertThat(row).containsExactly("file", "0", "0"));
        assertThat(of(rows, "layers").get(0)[1].split(",")).containsExactlyInAnyOrder(layers.split(" "));
        assertThat(of(rows, "words"))
                .noneMatch(row -> row[2].contains("\\U+"))
                .anyMatch(row -> row[2].startsWith("Reading-room "));
    }

    private static final String ROOM = """
            title: Reading-room frieze
            wood: red-oak
            space: { ceiling: 5-3/4 }
            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }
              - { name: bed, section: [out 1/4, cove 1, up 1/4], back: frieze.face, bottom: 2 }
            plan:
              - inside: cope
                left: return
                right: return
                stretches:
                  - { length: 48, corner: inside 90, ceiling: [[0, 5-3/4], [24, 5-5/8], [48, 5-3/4]] }
                  - { length: 36 }
            """;

    @ParameterizedTest
    @CsvSource({"walls, TRIM WALL HATCH DIMENSIONS NOTES", "copes, TRIM WALL HATCH NOTES SHEET"})
    void so_are_the_views_of_a_room(String view, String layers) throws Exception {
        Path stack = Files.writeString(folder.resolve("room.yaml"), ROOM);
        Path file = folder.resolve("room.dxf");
        Ran.of("draw", stack.toString(), "--view", view, "-o", file.toString());
        List<String[]> rows = read(file);
        assertThat(of(rows, "file")).allSatisfy(row -> assertThat(row).containsExactly("file", "0", "0"));
        assertThat(of(rows, "layers").get(0)[1].split(",")).containsExactlyInAnyOrder(layers.split(" "));
    }

    /** Places and sizes as the report has them, to six places; of framing the picture shows a part. */
    @ParameterizedTest
    @ValueSource(strings = {"reading-room-case.yaml", "reading-room-mantel.yaml", "reading-room-cornice.yaml"})
    void every_piece_is_a_block_that_stands_at_its_size_and_place_from_wall_and_datum(String stack) throws Exception {
        List<String[]> blocks = of(read(drawn(stack, "section")), "block");
        JsonNode pieces = new JsonMapper()
                .readTree(Ran.of("report", Ran.demo(stack).toString(), "--format", "json")
                        .out())
                .get("pieces");
        assertThat(blocks).hasSize(pieces.size());
        for (JsonNode piece : pieces) {
            String name = piece.get("letter").asString() + "-"
                    + piece.get("name").asString().replace(' ', '-').toUpperCase(Locale.ROOT);
            String[] block = blocks.stream()
                    .filter(row -> row[1].equals(name))
                    .findFirst()
                    .orElseThrow();
            List<Double> figures = new ArrayList<>();
            for (int i = 3; i < block.length; i++) {
                figures.add(Double.valueOf(block[i]));
            }
            String kind = piece.get("kind").asString();
            assertThat(block[2]).isEqualTo(kind.toUpperCase(Locale.ROOT));
            near(name, figures, 0, piece, "back");
            near(name, figures, 1, piece, "bottom");
            if (!kind.equals("framing")) {
                near(name, figures, 2, piece, "back");
                near(name, figures, 3, piece, "bottom");
                near(name, figures, 4, piece, "face");
                near(name, figures, 5, piece, "top");
                near(name, figures, 6, piece, "area");
            }
        }
    }

    private static void near(String name, List<Double> figures, int number, JsonNode piece, String key) {
        assertThat(figures.get(number))
                .as(name + " " + key)
                .isCloseTo(piece.get(key).asDouble(), within(1e-6));
    }

    @Test
    void whoever_hides_the_dimensions_hides_every_figure_and_no_letter() throws Exception {
        List<String[]> words = of(read(drawn("reading-room-cornice.yaml", "section")), "words");
        assertThat(words).filteredOn(row -> row[1].equals("LETTERS")).anyMatch(row -> row[2].equals("J"));
        assertThat(words)
                .filteredOn(row -> row[1].equals("DIMENSIONS"))
                .anyMatch(row -> row[2].equals("5-1/2"))
                .hasSizeGreaterThan(15);
        assertThat(words)
                .filteredOn(row -> row[2].startsWith("This line is"))
                .isNotEmpty()
                .allMatch(row -> row[1].equals("SHEET"));
    }

    @Test
    void a_profile_is_one_outline_at_the_origin() throws Exception {
        Path file = folder.resolve("profile.dxf");
        Ran.of("profile", "board 3/4 x 3-1/2", "--format", "dxf", "-o", file.toString());
        List<String[]> rows = read(file);
        assertThat(of(rows, "block")).isEmpty();
        assertThat(Files.readString(file, DxfPairs.LETTERS))
                .contains("VERTEX\r\n  8\r\nTRIM\r\n 10\r\n0.0\r\n 20\r\n0.0\r\n")
                .contains("VERTEX\r\n  8\r\nTRIM\r\n 10\r\n0.75\r\n 20\r\n3.5\r\n");
    }

    @Test
    void the_same_stack_gives_the_same_bytes() throws Exception {
        byte[] first = Files.readAllBytes(drawn("reading-room-case.yaml", "section"));
        assertThat(Files.readAllBytes(drawn("reading-room-case.yaml", "section")))
                .isEqualTo(first);
    }
}
