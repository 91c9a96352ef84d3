package buildup.cli.drawing.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.engine.Answers;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fixed;
import buildup.profiles.outline.Segment;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds a stack is seen in its picture: what leans, whoever carries it, what falls, and how deep nails bite. */
class HoldsDrawingTest {
    private static final String LIP = """
            title: A lip on a hanging fascia
            wood: yellow-poplar
            pieces:
              - { name: case, kind: framing, section: [out 14, up 90], face: wall, top: 0 }
              - { name: soffit, profile: board 3/4 x 6, lay: flat, kind: nailer, back: -3, bottom: 0 }
              - { name: fascia, profile: board 3/4 x 3, back: soffit.face, bottom: soffit.bottom - 1 }
              - { name: lip, profile: board 3/4 x 4, lay: flat, back: fascia.back - 1/4, bottom: fascia.top }
            """;

    /** A board that stands far out over the board that carries it. */
    private static final String TIPS = """
            title: A shelf that tips
            wood: yellow-poplar
            pieces:
              - { name: ground, profile: board 3/4 x 4, back: wall, bottom: 0 }
              - { name: shelf, profile: board 3/4 x 9-1/4, lay: flat, back: wall + 1/4, bottom: ground.top }
            """;

    private static Answers known(String yaml) {
        return Typed.of(yaml).known().orElseThrow();
    }

    private static Scene holds(Answers known) {
        return HoldsDrawing.of(known.section(), known.support(), known.fixed(), known.proposals(), Drawn.FONT);
    }

    private static List<String> texts(Scene scene) {
        return scene.leaves().stream()
                .filter(Label.class::isInstance)
                .map(item -> ((Label) item).text())
                .toList();
    }

    /** The segments of a style in the picture itself, which come before those of its legend. */
    private static List<Segment> drawn(Scene scene, LineStyle style) {
        Scene picture = new Scene(
                "",
                "",
                scene.width(),
                scene.height(),
                scene.items().stream()
                        .filter(item ->
                                !(item instanceof Group group && group.id().equals("legend")))
                        .toList());
        return picture.leaves().stream()
                .filter(item -> item instanceof Path path && path.style() == style)
                .flatMap(item -> ((Path) item).segments().stream())
                .toList();
    }

    @Test
    void what_lies_on_a_piece_that_is_held_by_nails_only_is_seen_to_lean() {
        Scene scene = holds(known(LIP));
        assertThat(texts(scene))
                .anyMatch(text -> text.endsWith("at 4-3/4 in: 1 in past fascia; fascia is held by nails only")
                        || text.endsWith("at 4-3/4: 1 past fascia; fascia is held by nails only"));
        assertThat(drawn(scene, LineStyle.PAST))
                .anySatisfy(line -> assertThat(line.length()).isCloseTo(1, within(1e-9)));
    }

    @Test
    void what_falls_is_hatched_and_told_with_its_motion() {
        Answers known = known(TIPS);
        assertThat(known.support().whole().falls()).isNotEmpty();
        Scene scene = holds(known);
        assertThat(falling(scene)).isEqualTo(2);
        assertThat(texts(scene)).contains("falls: nothing keeps it").anyMatch(text -> text.contains("shelf tips out"));
        assertThat(falling(holds(known(Ran.read(Ran.demo("reading-room-cornice.yaml"))))))
                .as("of a stack that stands")
                .isZero();
    }

    /** Hatches of dashes straight down: the pieces that fall, and the sample of it. */
    private static long falling(Scene scene) {
        return scene.leaves().stream()
                .filter(item -> item instanceof Hatch hatch && hatch.pattern().angle() == 90)
                .count();
    }

    @ParameterizedTest
    @ValueSource(strings = {"reading-room-cornice.yaml", "reading-room-door-head.yaml"})
    void strokes_across_a_nail_run_as_far_as_it_bites_and_its_words_say_into_what(String demo) {
        Answers known = known(Ran.read(Ran.demo(demo)));
        Scene scene = holds(known);
        double bites = 0;
        for (Fixed nail : known.fixed()) {
            for (Crossing crossing : nail.drive().crossings()) {
                if (crossing.holds() && crossing.body().orElseThrow() != nail.piece()) {
                    bites += crossing.length();
                }
            }
            String into = known.section()
                    .name(nail.drive().held().get(nail.drive().held().size() - 1));
            assertThat(texts(scene))
                    .anyMatch(text -> text.startsWith(nail.fastening().name() + ": ") && text.endsWith(into));
        }
        // a stroke each 0.09 in, and at most one more in each crossing
        assertThat(drawn(scene, LineStyle.BITE).size() * 0.09)
                .isBetween(
                        bites - 0.05 * known.fixed().size(),
                        bites + 0.09 * known.fixed().size());
    }
}
