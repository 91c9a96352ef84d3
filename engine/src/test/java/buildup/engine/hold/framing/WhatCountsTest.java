package buildup.engine.hold.framing;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows beside the joists, and rows for which studs of a plan do not count. */
class WhatCountsTest {
    /**
     * The board runs from the wall to 3-1/2 out, the nail is at 1-3/4. It takes one in the middle of a joist at 3, or at 1-1/8;
     * of one whose middle is 3-1/2 out, 1-1/2 wide, the outer half is past the board, and the farthest in that a nail keeps
     * 1/4 of its wood and a step of the rule besides is 3-1/2 - 1/2 + 1/16. One at 12 is out of its reach.
     */
    @Test
    void a_nail_beside_the_joists_is_moved_only_as_far_as_its_piece_goes() {
        assertThat(told("first: 12")).isEqualTo("Add blocking between the joists, or nail into the wall.");
        assertThat(told("first: 3")).isEqualTo("Nail it 1-1/4 farther out, at 3.");
        assertThat(told("first: 3-1/2")).isEqualTo("Nail it 1-5/16 farther out, at 3-1/16.");
        assertThat(told("first: 1-1/8", "screw 8 x 2-1/2")).isEqualTo("Nail it 5/8 nearer to the wall, at 1-1/8.");
    }

    /** A stud given as a piece runs along the whole run, as all of a section does; studs of a plan stand where it says. */
    @Test
    void studs_of_a_plan_beside_a_stud_that_is_given_as_a_piece_are_told_not_to_count() {
        String base = """
                wood: yellow-poplar
                space: { floor: 0, wall: { solid: SOLID } }
                pieces:
                PIECE  - { name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: floor }
                fastenings:
                  - { name: low, piece: base, use: 15 ga x 2, at: { up: 1 } }
                  - { name: high, piece: base, use: 15 ga x 2, at: { up: 4-1/2 } }
                plan: [{ left: die, right: die, studs: { every: 16, first: 12 }, stretches: [{ name: north, length: 144 }] }]
                """;
        String stud = "  - { name: stud, kind: framing, section: [out 3-1/2, up 96], face: wall, bottom: floor }\n";
        assertThat(twice(base.replace("SOLID", "no").replace("PIECE", stud)))
                .containsExactly(
                        "'low' and 'high' go into 'stud', which is given as a piece and counts all along the run:"
                                + " 'studs:' of the plan does not count for them.");
        assertThat(twice(base.replace("SOLID", "yes").replace("PIECE", ""))).isEmpty();
        assertThat(twice(base.replace("SOLID", "no")
                        .replace("PIECE", stud)
                        .replace("studs: { every: 16, first: 12 }, ", "")))
                .isEmpty();
    }

    /**
     * Through 3/4 of board and 1/2 of plaster 2 in leave 3/4, where 12 diameters of 0.072 are 0.864: 2-1/4 leave 1. Of 18
     * gauge nails, 0.048, none longer than 2 is sold, as the list has it; through 1-1/4 of board they leave 1/4.
     */
    @Test
    void a_nail_that_goes_too_little_into_a_joist_is_told_the_next_length_that_is_sold() {
        assertThat(shallow("3/4", "wall", "15 ga x 2")).isEqualTo("Take 15 ga x 2-1/4, or nail into the wall.");
        assertThat(shallow("3/4", "wall + 4", "15 ga x 2")).isEqualTo("Take 15 ga x 2-1/4.");
        assertThat(shallow("1-1/4", "wall", "18 ga x 2")).isEqualTo("Nail into the wall.");
        assertThat(shallow("1-1/4", "wall + 4", "18 ga x 2"))
                .isEqualTo("Drive it straight into the middle of the joist, or take a fastener that is sold longer.");
    }

    private static String shallow(String thick, String back, String use) {
        String text = """
                wood: yellow-poplar
                space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
                pieces: [{ name: soffit, profile: board %s x 3-1/2, lay: flat, back: %s, top: ceiling }]
                fastenings: [{ name: row, piece: soffit, at: { out: soffit.back + 1-3/4 }, first: 12, use: %s }]
                plan:
                  - { left: die, right: die, joists: { every: 16, first: 12 }, stretches: [{ name: north, length: 144 }] }
                """.formatted(thick, back, use);
        return Answered.of(text).notices().stream()
                .filter(notice -> notice.code().equals("short-bite-in-joist"))
                .map(NoticeWords.INCHES::cure)
                .findFirst()
                .orElse("");
    }

    private static List<String> twice(String text) {
        return Answered.of(text).notices().stream()
                .filter(notice -> notice.code().equals("framing-said-twice"))
                .map(NoticeWords.INCHES::message)
                .toList();
    }

    private static String told(String first) {
        return told(first, "15 ga x 2-1/2");
    }

    private static String told(String first, String use) {
        String text = """
                wood: yellow-poplar
                space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
                pieces: [{ name: soffit, profile: board 3/4 x 3-1/2, lay: flat, back: wall, top: ceiling }]
                fastenings: [{ name: row, piece: soffit, at: { out: 1-3/4 }, first: 12, use: %s }]
                plan:
                  - left: die
                    right: die
                    joists: { every: 16, run: along, %s }
                    stretches: [{ name: north, length: 144 }]
                """.formatted(use, first);
        return Answered.of(text).notices().stream()
                .filter(notice -> notice.code().equals("misses-the-framing"))
                .map(NoticeWords.INCHES::cure)
                .findFirst()
                .orElse("");
    }
}
