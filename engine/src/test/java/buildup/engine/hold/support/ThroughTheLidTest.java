package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import org.junit.jupiter.api.Test;

/**
 * A fascia with nothing behind it hangs on the lid that is laid on its upper edge, nailed down through the lid: common
 * practice, no source. The lid is 3/4 thick, the fascia 3/4 too and 4-1/4 to 5 out, so that a nail is anywhere between.
 */
class ThroughTheLidTest {
    private static final String FASCIA = """
            wood: check-wood
            space: { floor: -80, ceiling: 20, wall: { solid: no } }
            pieces:
              - { name: case, kind: framing, section: [out 4, up 30], face: wall, top: 0 }
              - { name: block, kind: nailer, profile: board 1-1/2 x 1-1/2, back: wall, top: 0 }
              - { name: fascia, profile: board 3/4 x 3, face: 5, top: 0 }
              - { name: lid, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: 0 }
            fastenings:
              - { name: block screws, piece: block, use: screw 8 x 2-1/2, at: { up: -3/4 } }
              - { name: lid nails, piece: lid, use: 15 ga x 2, at: { out: 1, up: lid.top }, first: 8 }
            """;

    @Test
    void what_no_nail_through_itself_holds_is_nailed_through_what_lies_on_it() {
        assertThat(Answered.because(FASCIA, Topic.STANDS)).contains("fascia falls");
        assertThat(Answered.cure(FASCIA, Topic.STANDS))
                .matches("Drive .* x .* through lid at 4-\\d+/\\d+ out, 3/4 up, every .*\\[tried\\]");
    }

    @Test
    void once_that_row_is_driven_it_stands() {
        String nailed =
                FASCIA + "  - { name: down, piece: lid, use: 18 ga x 1-1/2, at: { out: 4-5/8, up: lid.top } }\n";
        assertThat(Answered.row(nailed, Topic.STANDS).answer()).isEqualTo(Ruling.Reply.YES);
    }
}
