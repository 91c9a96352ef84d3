package buildup.cli.drawing.room;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.command.files.ExitCode;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.engine.Cuts;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.sticks.Limit;
import buildup.profiles.outline.Box;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SticksDrawingTest {
    private static final Cuts.Known CUTS = Cuts.of(
                    Typed.of(Ran.read(Ran.demo("reading-room-case.yaml"))), Limit.usual())
            .known()
            .orElseThrow();
    private static final CutList LIST = CUTS.list().orElseThrow();
    private static final Scene SCENE = SticksDrawing.of(CUTS.job(), LIST, Drawn.FONT);

    private static List<String> texts(SceneItem item) {
        return new Scene("", "", 0, 0, List.of(item))
                .leaves().stream()
                        .filter(Label.class::isInstance)
                        .map(leaf -> ((Label) leaf).text())
                        .toList();
    }

    private static List<Group> groups(String start) {
        return SCENE.items().stream()
                .filter(Group.class::isInstance)
                .map(Group.class::cast)
                .filter(group -> group.id().startsWith(start))
                .toList();
    }

    @Test
    void every_stick_is_drawn_with_its_pieces_named() {
        assertThat(groups("stick-")).hasSameSizeAs(LIST.sticks());
        for (int i = 0; i < LIST.sticks().size(); i++) {
            String all = String.join(" ", texts(groups("stick-").get(i)));
            LIST.sticks().get(i).strips().stream()
                    .flatMap(strip -> strip.pieces().stream())
                    .forEach(lie -> assertThat(all).contains(lie.piece().id()));
            assertThat(all).contains(LIST.sticks().get(i).supply().name());
        }
    }

    /** Returns of 3/4 on sticks of 8 ft, drawn 1 : 10: none of them holds a letter. */
    @Test
    void a_piece_too_short_for_its_letters_is_named_under_its_stick() {
        Cuts.Known cuts = Cuts.of(Typed.of("""
                        wood: yellow-poplar
                        pieces:
                          - { name: frieze, profile: board 3/4 x 3-1/2, back: wall, bottom: datum }
                        plan:
                          - { name: stub, left: return, right: return, stretches: [{ length: 5 }] }
                        stock: { sticks: [{ of: 1x4, buy: [8'] }] }
                        """), Limit.usual()).known().orElseThrow();
        List<SceneItem> sticks = SticksDrawing.of(cuts.job(), cuts.list().orElseThrow(), Drawn.FONT).items().stream()
                .filter(item -> item instanceof Group group && group.id().startsWith("stick-"))
                .toList();
        assertThat(sticks).hasSize(1);
        assertThat(texts(sticks.get(0)))
                .contains("too short for their letters, from the left: A1, A3")
                .contains("A2");
    }

    @Test
    void every_piece_has_one_label_with_its_length_and_both_its_cuts() {
        assertThat(groups("label-")).hasSameSizeAs(LIST.pieces());
        for (int i = 0; i < LIST.pieces().size(); i++) {
            List<String> texts = texts(groups("label-").get(i));
            assertThat(texts).contains(LIST.pieces().get(i).id());
            assertThat(texts)
                    .contains(shop(LIST.pieces().get(i).inches()))
                    .contains(LIST.pieces().get(i).left().joint().word());
        }
    }

    @Test
    void a_length_stands_on_its_label_as_it_stands_in_the_table() {
        for (int i = 0; i < LIST.pieces().size(); i++) {
            assertThat(texts(groups("label-").get(i)))
                    .contains(shop(CUTS.job().fits().get(i).longPoint()));
        }
    }

    @Test
    void a_miter_is_drawn_at_its_angle_and_a_square_end_square() {
        // B2, the front of the bead: mitred at both ends, longer on the room side
        Group front = groups("label-").get(1);
        Path shape = front.items().stream()
                .filter(Path.class::isInstance)
                .map(Path.class::cast)
                .skip(1)
                .findFirst()
                .orElseThrow();
        Box box = shape.box();
        double top = shape.segments().get(2).length();
        assertThat(box.width() - top).as("two of 45 degrees").isCloseTo(2 * box.height(), within());
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.api.Assertions.within(1e-9);
    }

    @Test
    void nothing_lies_beside_the_sheet_and_no_two_texts_of_a_stick_over_each_other() {
        Box sheet = new Box(0, 0, SCENE.width(), SCENE.height());
        assertThat(SCENE.leaves())
                .allMatch(leaf -> leaf.box().back() >= sheet.back()
                        && leaf.box().bottom() >= sheet.bottom()
                        && leaf.box().face() <= sheet.face()
                        && leaf.box().top() <= sheet.top());
        List<Box> texts = SCENE.leaves().stream()
                .filter(Label.class::isInstance)
                .map(SceneItem::box)
                .toList();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                assertThat(overlap(texts.get(i), texts.get(j))).isFalse();
            }
        }
    }

    private static boolean overlap(Box a, Box b) {
        return a.back() < b.face() && b.back() < a.face() && a.bottom() < b.top() && b.bottom() < a.top();
    }

    @Test
    void sticks_are_drawn_from_the_command_line(@TempDir java.nio.file.Path folder) {
        java.nio.file.Path file = folder.resolve("sticks.svg");
        Ran ran = Ran.of(
                "draw", Ran.demo("reading-room-case.yaml").toString(), "--view", "sticks", "-o", file.toString());
        assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.CLEAN);
        assertThat(Ran.read(file)).contains("id=\"stick-1\"", "id=\"label-1\"");
    }

    @Test
    void without_stock_there_is_nothing_to_draw(@TempDir java.nio.file.Path folder) {
        java.nio.file.Path file = folder.resolve("sticks.svg");
        Ran ran = Ran.of(
                "draw", Ran.demo("reading-room-cornice.yaml").toString(), "--view", "sticks", "-o", file.toString());
        assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(ran.err()).contains("holds no plan");
        assertThat(file).doesNotExist();
    }

    private static final String GLUED = """
            title: Shelf
            units: in
            wood: black-cherry
            plan:
              - { name: a room with a long name, left: die, right: square, stretches: [{ name: a wall with a long name, length: 70, corner: outside 90 }, { name: end, length: 12 }] }
            pieces: [{ name: shelf, profile: board 3/4 x 9, lay: flat, back: wall, bottom: datum }]
            stock: { sticks: [{ of: 1x6, buy: 8' }] }
            """;

    @Test
    void every_ply_says_on_its_label_that_it_is_glued_before_it_is_cut() {
        Cuts.Known cuts = Cuts.of(Typed.of(GLUED), Limit.usual()).known().orElseThrow();
        List<SceneItem> labels = SticksDrawing.of(cuts.job(), cuts.list().orElseThrow(), Drawn.FONT).items().stream()
                .filter(item -> item instanceof Group group && group.id().startsWith("label-"))
                .toList();
        assertThat(labels)
                .hasSize(4)
                .allSatisfy(label -> assertThat(texts(label)).contains("glue first"));
        assertThat(SCENE.leaves())
                .noneMatch(leaf -> leaf instanceof Label label && label.text().contains("glue first"));
    }

    private static String shop(double inches) {
        return FigurePrinter.INCHES.bare(Figure.length(inches));
    }
}
