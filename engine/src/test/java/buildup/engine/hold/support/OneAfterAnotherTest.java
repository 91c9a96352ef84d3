package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import org.junit.jupiter.api.Test;

/**
 * What no row alone holds is held by a row for each piece, driven as it goes up: a cleat is hung before the board under it, a
 * valance nailed before the cove on it (common practice, no source).
 */
class OneAfterAnotherTest {
    private static String ledge(String kind) {
        return """
                wood: check-wood
                space: { floor: -96, ceiling: 0 }
                pieces:
                  - { name: joist, kind: framing, section: [out 1-1/2, up 7-1/4], back: 20, bottom: ceiling }
                  - { name: cleat, KIND profile: board 1-1/2 x 3-1/2, lay: flat, back: 19, top: ceiling }
                  - { name: board, profile: board 3/4 x 5-1/2, lay: flat, back: 18, top: cleat.bottom }
                fastenings: []
                """.replace("KIND", kind);
    }

    private static final String VALANCE = """
            wood: check-wood
            space: { floor: -54, ceiling: 42 }
            pieces:
              - { name: cabinet, kind: framing, section: [out 12, up 30], back: wall, bottom: 0 }
              - { name: valance, profile: board 3/4 x 2-1/2, face: cabinet.face, top: cabinet.bottom }
              - { name: cove, profile: cove 1/2 x 1/2, flip: over, back: valance.face, bottom: valance.bottom }
            fastenings: []
            """;

    private static String followed(String yaml, Topic topic) {
        Notice first = Answered.of(yaml).notices().stream()
                .filter(notice -> notice.level() == Level.PROBLEM && Topic.of(notice.code()) == topic)
                .findFirst()
                .orElseThrow();
        Notices unable = new Notices();
        String edited = Editor.edit(
                        "stack.yaml",
                        yaml,
                        NoticeWords.in(Answered.of(yaml).unit()).edits(first),
                        unable)
                .orElseThrow();
        assertThat(unable.sorted()).isEmpty();
        return edited;
    }

    @Test
    void a_cleat_is_hung_from_its_joist_before_the_board_under_it() {
        String told = Answered.cure(ledge(""), Topic.STANDS);
        assertThat(told).matches("Drive .* through cleat at .* and .* through board at .*\\[tried\\]");
        String edited = followed(ledge(""), Topic.STANDS);
        assertThat(Answered.row(edited, Topic.STANDS).answer()).isEqualTo(Ruling.Reply.YES);
        assertThat(Answered.row(edited, Topic.HELD).answer()).isEqualTo(Ruling.Reply.YES);
    }

    /** A nailer is screwed where a screw goes in: 3 less the 1-1/2 of the cleat is more than 6 diameters of one. */
    @Test
    void a_nailer_is_hung_by_screws() {
        assertThat(Answered.cure(ledge("kind: nailer,"), Topic.STANDS))
                .matches("Drive [a-z ]*screw .* through cleat at .* and .* through board at .*\\[tried\\]");
    }

    @Test
    void a_cove_is_pinned_to_a_valance_that_is_nailed_with_it() {
        assertThat(Answered.because(VALANCE, Topic.HELD)).startsWith("'cove' has no nailer");
        assertThat(Answered.cure(VALANCE, Topic.HELD))
                .matches("Drive .* through valance at .* and .* through cove at .*\\[tried\\]");
        String edited = followed(VALANCE, Topic.HELD);
        assertThat(Answered.row(edited, Topic.HELD).answer()).isEqualTo(Ruling.Reply.YES);
        assertThat(Answered.messages(Answered.of(edited), Level.PROBLEM)).isEmpty();
    }
}
