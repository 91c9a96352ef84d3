package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.hold.framing.BackingBlock;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Behind a crown under a ceiling that slopes the block that is told is the one that is cut: its top is beveled too. */
class BlockUnderSlopeTest {
    private static String crown(int rise) {
        return """
                wood: check-wood
                space: { floor: -100, ceiling: { height: 0, slope: RISE in 12 }, wall: { covering: 1/2 } }
                pieces:
                  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, top: ceiling - 1 }
                  - { name: crown, profile: plain-crown 4-5/8, back: frieze.face, top: touch }
                fastenings: []
                plan: [{ left: die, right: die, stretches: [{ name: a, length: 100 }] }]
                """.replace("RISE", String.valueOf(rise));
    }

    private static List<Notice> upper(String yaml) {
        return Answered.of(yaml).notices().stream()
                .filter(notice ->
                        notice.level() == Level.PROBLEM && notice.code().equals("upper-edge-not-held"))
                .toList();
    }

    private static Outline outline(Answers answers, String name) {
        return answers.section().body(answers.section().number(name).getAsInt()).outline();
    }

    @ParameterizedTest
    @ValueSource(ints = {-4, -3, -1, 2})
    void what_is_told_and_typed_is_the_block_of_the_sheet_an_eighth_off_the_back(int rise) {
        String yaml = crown(rise);
        Notice told = upper(yaml).get(0);
        BackingBlock sheet = Answered.sound(yaml).framing().blocks().get(0);
        String cure = NoticeWords.INCHES.cure(told);
        assertThat(cure)
                .startsWith("Add a block behind it, ")
                .contains(", its top " + String.format("%.1f", Math.abs(sheet.topBevel())) + "°");
        Notices unable = new Notices();
        String edited = Editor.edit("stack.yaml", yaml, NoticeWords.INCHES.edits(told), unable)
                .orElseThrow();
        assertThat(unable.sorted()).isEmpty();
        assertThat(upper(edited)).isEmpty();
        Answers cured = Answered.sound(edited);
        Outline block = outline(cured, "block behind crown");
        // both sizes are told down to a sixteenth, and the sheet cuts the lesser leg to one
        assertThat(block.box().width()).isCloseTo(sheet.width(), within(1.0 / 16));
        assertThat(block.box().height()).isCloseTo(sheet.height() + Math.max(0, sheet.rise()), within(1.0 / 16));
        Line back = outline(cured, "crown").straights("back").stream()
                .max(Comparator.comparingDouble(Line::length))
                .orElseThrow();
        double least = block.strokes().stream()
                .map(stroke -> stroke.segment().from())
                .mapToDouble(corner -> away(corner, back))
                .min()
                .orElseThrow();
        // of its sizes one is told to the nearest sixteenth and two down to one, which takes so much off square to the
        // back
        double s = Math.toRadians(38);
        double off = 3.0 / 32 * Math.sin(s) + 1.0 / 16 * Math.cos(s);
        assertThat(least).isBetween(1.0 / 8 - Math.sin(s) / 32, 1.0 / 8 + off);
        assertThat(cured.section().overlaps()).isEmpty();
    }

    private static double away(Point at, Line line) {
        return Math.abs(line.direction(0).cross(at.minus(line.from())));
    }
}
