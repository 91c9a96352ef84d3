package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.document.edit.Editor;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Crown blocks are ripped to a bevel that lies along the back of the crown (common practice, no source). */
class SmallBlockTest {
    private static String crown(String more) {
        return "wood: check-wood\nspace: { floor: -90, ceiling: 0, wall: { solid: yes } }\npieces:\n"
                + "  - { name: crown, profile: check-crown-edged 9/16 x 3-5/8, back: wall, top: ceiling }\n" + more;
    }

    private static String block(String section) {
        return crown("  - { name: klotz, kind: nailer, section: [" + section + "], back: wall, top: ceiling }\n");
    }

    private static List<Notice> upper(String yaml) {
        return Answered.of(yaml).notices().stream()
                .filter(notice ->
                        notice.level() == Level.PROBLEM && notice.code().equals("upper-edge-not-held"))
                .toList();
    }

    private static double figure(Notice notice, String name) {
        return notice.figures().stream()
                .filter(named -> named.name().equals(name))
                .map(named -> ((Figure) named.value()).amount())
                .findFirst()
                .orElseThrow();
    }

    /**
     * Its face is as steep as the back, 38 off plumb: so far as it stands off that, an eighth less, over the sine of 38 it has to
     * grow in height, and over the cosine in width.
     */
    @Test
    void a_block_that_is_too_small_is_named_with_the_size_it_needs() {
        Notice small = upper(block("chamfer 1 x 25/32")).get(0);
        assertThat(Answered.because(block("chamfer 1 x 25/32"), Topic.HELD))
                .startsWith("Nothing is behind the upper edge of 'crown' to nail into: 'klotz' stands ");
        double more = small.amount().orElseThrow().amount() - 1.0 / 8;
        assertThat(figure(small, "height")).isCloseTo(1 + more / Math.sin(Math.toRadians(38)), within(1.0 / 64));
        assertThat(figure(small, "width")).isCloseTo(25.0 / 32 + more / Math.cos(Math.toRadians(38)), within(1.0 / 64));
    }

    @Test
    void made_so_large_it_holds() {
        String yaml = block("chamfer 1 x 25/32");
        String edited = Editor.edit(
                        "stack.yaml",
                        yaml,
                        NoticeWords.in(Answered.of(yaml).unit())
                                .edits(upper(yaml).get(0)),
                        new Notices())
                .orElseThrow();
        assertThat(edited).contains("klotz").doesNotContain("25/32");
        assertThat(upper(edited)).isEmpty();
    }

    @Test
    void a_board_that_stands_there_for_something_else_is_not_named() {
        String far = crown("  - { name: ground, kind: nailer, profile: board 3/4 x 1, back: wall, top: -8 }\n");
        assertThat(Answered.because(far, Topic.HELD)).isEqualTo("Nothing is behind the upper edge of 'crown'.");
    }
}
