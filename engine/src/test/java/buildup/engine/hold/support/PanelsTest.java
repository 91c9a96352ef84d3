package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No value is published of what a nail through fiberboard holds across itself, so that a ledge carries a panel and its screws
 * only keep it there: common practice, no source.
 */
class PanelsTest {
    private static String wall(String foot) {
        return """
                wood: soft-maple
                space: { floor: 0, wall: { solid: no } }
                pieces:
                  - { name: frame, kind: framing, section: [out 3, up 23], back: -3, bottom: 0 }
                  - { name: panel, wood: mdf, profile: board 3/4 x 19, back: wall, bottom: 4 }
                  - { name: foot, profile: base-shoe 1/2 x 3/4, flip: over, back: panel.face, bottom: 4 }
                fastenings:
                  - { name: screws, piece: panel, use: screw 8 x 2, at: { up: 12 }, per: 2 }
                """ + "  - { name: pins, piece: foot, " + foot + " }\n";
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "use: 23 ga x 3/4, at: { up: 4-1/4 }",
                "use: 18 ga x 2, at: { out: 1-1/4, up: 4-5/16 }, spacing: 4, first: 2"
            })
    void what_slides_across_its_nails_in_a_panel_is_carried_by_no_nail_driven_slantwise(String foot) {
        assertThat(Answered.because(wall(foot), Topic.STANDS)).contains("panel and foot fall, 4 to floor");
        assertThat(Answered.cure(wall(foot), Topic.STANDS))
                .startsWith("No value is published for their nails there: carry it on a ledge")
                .endsWith("[tried]");
    }

    @Test
    void a_panel_overhead_pulls_its_screws_along_themselves() {
        String ceiling = """
                wood: soft-maple
                space: { floor: 0, wall: { solid: no } }
                pieces:
                  - { name: joist, kind: framing, section: [out 24, up 8], back: 0, bottom: 96 }
                  - { name: panel, wood: mdf, profile: board 3/4 x 12, lay: flat, back: 2, top: joist.bottom }
                fastenings:
                """;
        String screws = "";
        for (String out : List.of("4", "12")) {
            screws += "  - { name: at " + out + ", piece: panel, use: screw 8 x 2, at: { out: " + out
                    + ", up: panel.bottom } }\n";
        }
        assertThat(Answered.row(ceiling + screws, Topic.STANDS).answer()).isNotEqualTo(Ruling.Reply.NO);
    }
}
