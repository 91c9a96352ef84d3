package buildup.cli.drawing.judge;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.Typed;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.engine.Answers;
import buildup.profiles.outline.Segment;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What comes too near stands in the picture as the verdict tells it, and each name is joined to what it names. */
class ClearanceDrawingTest {
    private static final String HEAD = """
            wood: soft-maple
            space: { floor: -80 }
            pieces:
              - { name: head, profile: board 3/4 x 6, back: wall, bottom: datum }
              - { name: cap, profile: board 1 x 4, lay: flat, back: wall, bottom: head.top }
            keep-clear:
              - { name: roller, kind: shade, back: 2, bottom: 3, top: 7-1/4, roll: 2-1/2, clear: 1/4 }
              - { name: side, kind: side-wall, away: 3, clear: 1/2 }
              - { name: socket, back: 0, face: 1, bottom: -3, top: -1, clear: 1/2 }
            """;

    private static Scene drawn() {
        Answers known = Typed.of(HEAD).known().orElseThrow();
        return ClearanceDrawing.of(known.section(), known.clearance(), Drawn.FONT)
                .orElseThrow();
    }

    private static List<Label> labels() {
        return drawn().leaves().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    /** By hand: the cap is 6 to 7 up and 4 deep, so 1-1/4 under the roll's top, and 1 past the side wall at 3. */
    @Test
    void every_fault_of_a_piece_is_listed_in_the_words_of_the_verdict() {
        assertThat(labels())
                .extracting(Label::text)
                .contains("cap: reaches 1-1/4 into roller; reaches 1 into side")
                .contains("head: 1/2 to spare beside socket");
    }

    @Test
    void a_name_that_stands_away_from_its_place_is_joined_to_it() {
        List<Segment> leaders = drawn().leaves().stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.EXTENSION)
                .flatMap(item -> ((Path) item).segments().stream())
                .toList();
        for (String name : List.of("roller", "side", "socket")) {
            Label label = labels().stream()
                    .filter(one -> one.text().equals(name))
                    .findFirst()
                    .orElseThrow();
            assertThat(leaders).as(name).anySatisfy(leader -> {
                assertThat(Math.abs(leader.to().y() - label.at().y())).isLessThan(label.size());
                assertThat(label.at().x() - leader.to().x()).isBetween(0.0, 2 * label.size());
            });
        }
    }
}
