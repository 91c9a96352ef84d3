package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A box beam with a crown on either side is the same seen from either side: what holds the one holds the other. */
class TurnedCrownTest {
    private static final String BEAM = """
            wood: check-wood
            space: { floor: -100, ceiling: 0 }
            pieces:
              - { name: beam, kind: framing, section: [out 6, up 8], back: 47, top: ceiling }
            """;

    private static final String CROWNS = """
              - { name: right, profile: check-crown-edged 9/16 x 3-5/8, back: beam.face, top: ceiling }
              - { name: left, profile: check-crown-edged 9/16 x 3-5/8, flip: ends, face: beam.back, top: ceiling }
            """;

    private static String blocks(String section) {
        return "  - { name: block r, kind: nailer, section: [" + section + "], back: beam.face, top: ceiling }\n"
                + "  - { name: block l, kind: nailer, section: [" + section
                + "], flip: ends, face: beam.back, top: ceiling }\n";
    }

    private static List<Notice> upper(String yaml) {
        return Answered.of(yaml).notices().stream()
                .filter(notice ->
                        notice.level() == Level.PROBLEM && notice.code().equals("upper-edge-not-held"))
                .toList();
    }

    private static String cure(Notice notice) {
        return NoticeWords.INCHES.cure(notice);
    }

    @Test
    void a_block_behind_it_is_found_on_either_side() {
        assertThat(upper(BEAM + blocks("chamfer 2-1/16 x 1-5/8") + CROWNS)).isEmpty();
    }

    @Test
    void without_a_block_the_same_one_is_told_for_either_side() {
        List<Notice> both = upper(BEAM + CROWNS);
        assertThat(both).hasSize(2);
        assertThat(cure(both.get(0))).contains(" high x ").isEqualTo(cure(both.get(1)));
    }

    @Test
    void a_block_that_is_too_small_is_told_the_same_size_on_either_side() {
        List<Notice> both = upper(BEAM + blocks("chamfer 1 x 25/32") + CROWNS);
        assertThat(both).hasSize(2);
        assertThat(cure(both.get(0))).isEqualTo(cure(both.get(1)).replace("block l", "block r"));
    }

    @Test
    void typed_in_the_block_of_the_turned_one_holds_it() {
        String yaml = BEAM + CROWNS.lines().skip(1).findFirst().orElseThrow() + "\n";
        Notice told = upper(yaml).get(0);
        Notices unable = new Notices();
        String edited = Editor.edit(
                        "stack.yaml",
                        yaml,
                        NoticeWords.in(Answered.of(yaml).unit()).edits(told),
                        unable)
                .orElseThrow();
        assertThat(unable.sorted()).isEmpty();
        assertThat(edited).contains("flip: ends, face: beam.back, top: ceiling");
        assertThat(upper(edited)).isEmpty();
        assertThat(Answered.of(edited).notices())
                .noneMatch(notice ->
                        notice.code().equals("overlap") || notice.code().equals("cannot-go-in"));
    }

    /** 2-1/2 less 3/4 of cheek: a height alone finds the face that is open as the cheek goes up, not the one on the core. */
    @Test
    void a_row_given_by_its_height_is_driven_from_the_open_side_of_either_cheek() {
        Driven beam = Driven.in(
                "{ floor: -100, ceiling: 0 }",
                List.of(
                        "name: core, kind: framing, section: [out 5-1/2, up 6], back: 47, top: -1",
                        "name: left, profile: board 3/4 x 6, face: core.back, top: core.top",
                        "name: right, profile: board 3/4 x 6, back: core.face, top: core.top"),
                "piece: left, use: 15 ga x 2-1/2, at: { up: -4 }",
                "piece: right, use: 15 ga x 2-1/2, at: { up: -4 }");
        assertThat(beam.nail(1).head().x()).isCloseTo(46.25, within(1e-9));
        assertThat(beam.nail(2).head().x()).isCloseTo(53.25, within(1e-9));
        assertThat(beam.nail(1).bite())
                .isCloseTo(1.75, within(1e-9))
                .isEqualTo(beam.nail(2).bite());
        assertThat(beam.said()).isEmpty();
    }
}
