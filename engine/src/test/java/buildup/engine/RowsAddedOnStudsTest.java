package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.judge.verdict.Topic;
import buildup.shared.document.edit.Editor;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import org.junit.jupiter.api.Test;

/** A row that is offered is set out on the studs that the plan gives: a carpenter drives it there (common practice, no source). */
class RowsAddedOnStudsTest {
    private static String rail(String studs) {
        return "wood: check-wood\nspace: { floor: -90, ceiling: 14, wall: { covering: 7/8 } }\npieces:\n"
                + "  - { name: rail, profile: board 3/4 x 2, back: wall, bottom: datum }\n"
                + "fastenings:\n"
                + "  - { name: r, piece: rail, use: 15 ga x 2-1/2, at: { up: 1/2 }, spacing: 24, first: 12 }\n"
                + "loads: [{ name: pictures, on: rail, out: 1/2, load: 8 lb/ft }]\n"
                + "plan: [{ left: die, right: die, studs: { " + studs
                + " }, stretches: [{ name: wall, length: 150 }] }]\n";
    }

    private static Notice first(String yaml, Topic topic) {
        return Answered.of(yaml).notices().stream()
                .filter(notice -> notice.level() == Level.PROBLEM && Topic.of(notice.code()) == topic)
                .findFirst()
                .orElseThrow();
    }

    /** Both rows want the studs, so that they meet wherever they begin: their heights part them. */
    @Test
    void two_rows_into_the_same_studs_are_set_apart_in_height() {
        String base = """
                wood: check-wood
                space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
                pieces:
                  - { name: ground, kind: nailer, profile: board 1/2 x 3, back: wall, bottom: floor }
                  - { name: base, profile: board 5/8 x 5-1/4, back: ground.face, bottom: floor }
                fastenings:
                  - { name: g, piece: ground, use: 15 ga x 2, at: { up: 1-1/2 } }
                  - { name: b, piece: base, use: 16 ga x 2-1/2, at: { up: 1-1/2 } }
                """;
        String studs =
                "plan: [{ left: die, right: die, studs: { every: 16, first: 12 }, stretches: [{ name: a, length: 100 }] }]\n";
        for (String yaml : new String[] {base, base + studs}) {
            assertThat(Answered.because(yaml, Topic.HELD)).contains("'g'", "'b'", "cross");
            assertThat(Answered.cure(yaml, Topic.HELD)).matches("Move 'b' to \\S+ up\\. \\[tried\\]");
        }
    }

    /** Studs every 24 from 12 on: a row every 16 would meet one of three. One that says no beginning is set out on them. */
    @Test
    void a_row_that_is_offered_stands_as_far_apart_as_the_studs_and_lands_on_them() {
        String yaml = rail("every: 24, first: 12");
        assertThat(Answered.because(yaml, Topic.STANDS)).contains("takes only").contains("times the loads");
        assertThat(Answered.cure(yaml, Topic.STANDS))
                .matches("Drive .* through rail at .*, every 24 \\(holds .*\\. \\[tried\\]");
        String edited = Editor.edit(
                        "stack.yaml",
                        yaml,
                        NoticeWords.in(Answered.of(yaml).unit()).edits(first(yaml, Topic.STANDS)),
                        new Notices())
                .orElseThrow();
        assertThat(Answered.messages(Answered.of(edited), Level.PROBLEM)).isEmpty();
        // studs at 12, 36, 60, 84, 108 and 132 of 150
        assertThat(Answered.sound(edited).framing().landings())
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.landed())
                        .isEqualTo(6)
                        .isEqualTo(row.places().size()));
    }
}
