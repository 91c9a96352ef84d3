package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answer;
import buildup.engine.Answered;
import buildup.engine.hold.nail.Joint;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import org.junit.jupiter.api.Test;

/** A row that pulls a board home: until its foot has come to the wall nothing pushes against the pull. */
class RowsAfterClosingTest {
    /** A board on a ledge, 1/16 off the wall, a shelf fixed to its top, and a load 6 out. */
    private static String stack(double load) {
        return """
                wood: check-wood
                space: { wall: { solid: yes } }
                loads: [ { name: books, on: soffit, out: 6, load: %s lb/ft } ]
                pieces:
                  - { name: ledge, kind: framing, section: [out 1, up 6], back: 0, top: 0 }
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: 1/16, bottom: 0 }
                  - { name: soffit, fixed: frieze, profile: board 3/4 x 6, lay: flat, back: 1/16, bottom: frieze.top }
                """.formatted(load);
    }

    private static final double FACE = 13.0 / 16;

    private static double moment(double load) {
        double frieze = 0.75 * 5.5 * (FACE - 7.0 / 16);
        double soffit = 0.75 * 6 * (1.0 / 16 + 3 - FACE);
        return (soffit - frieze) * Held.WOOD + load * (6 - FACE);
    }

    /**
     * About the face of the frieze, on the ledge: the nail goes straight back into the wall and is pushed across where it
     * enters, at x = 0. It draws only against the foot at the height of the ledge, once that is at the wall.
     */
    private static double eachTakes(LeastRow row, boolean drawn) {
        Joint joint = row.nail().joints().get(0);
        double pull =
                Math.min(joint.withdrawal(), joint.head()) * row.nail().head().y();
        // drawn and pushed across at once it takes shares of either that add up to 1: the greater of the two alone is
        // most
        return Math.max(joint.lateral() * FACE, drawn ? pull : 0);
    }

    /** No row of the list carries the greater load across the joint, nor do two; one draws it home. */
    @Test
    void where_no_row_holds_it_as_it_stands_one_is_told_that_holds_it_once_the_gap_has_closed() {
        Answer light = Answered.of(stack(10));
        LeastRow across = light.known().orElseThrow().support().proposed().get(0);
        assertThat(across.needed()).isCloseTo(moment(10) / eachTakes(across, false), within(1e-6));
        Answer heavy = Answered.of(stack(60));
        Support support = heavy.known().orElseThrow().support();
        assertThat(support.whole().answer()).isEqualTo(Support.Answer.NO);
        assertThat(support.cured()).isTrue();
        assertThat(support.proposed()).hasSize(1);
        LeastRow drawn = support.proposed().get(0);
        assertThat(3 * eachTakes(drawn, false)).as("every 4").isLessThan(moment(60));
        assertThat(drawn.needed()).isCloseTo(moment(60) / eachTakes(drawn, true), within(1e-6));
        Notice notice = heavy.notices().stream()
                .filter(one -> one.code().equals("needs-holding"))
                .findFirst()
                .orElseThrow();
        String nailed = Editor.edit("stack.yaml", stack(60), NoticeWords.INCHES.edits(notice), new Notices())
                .orElseThrow();
        Support.Whole whole = Answered.sound(nailed).support().whole();
        assertThat(whole.answer()).isEqualTo(Support.Answer.TRUST);
        assertThat(whole.closing().orElseThrow().first().stop().orElseThrow().travel())
                .isCloseTo(1.0 / 16, within(1e-9));
    }
}
