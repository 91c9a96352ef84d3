package buildup.engine.hold.framing;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows that hold by what they bite short of wall and ceiling need no stud and no joist. */
class WithoutFramingTest {
    private static List<Notice> said(Answer answer) {
        return answer.notices().stream()
                .filter(notice -> notice.code().equals("misses-the-framing"))
                .toList();
    }

    private static Answer nailedToAStrip(String space, String strip, String board, String row) {
        String yaml = """
                wood: yellow-poplar
                space: { floor: 0, ceiling: 96, wall: { covering: 1/2 } }
                pieces:
                  - { name: strip, kind: nailer, profile: board STRIP }
                  - { name: face, profile: board BOARD }
                fastenings: [{ name: row, piece: face, use: ROW, first: 4 }]
                plan:
                  - { left: die, right: die, FRAMING: { every: 16, first: 12 }, stretches: [{ name: n, length: 144 }] }
                """.replace("STRIP", strip)
                .replace("BOARD", board)
                .replace("ROW", row)
                .replace("FRAMING", space);
        return Answer.of(
                DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
    }

    /**
     * 2-1/2 less 3/4 of board: 1-1/2 in the strip and 1/4 of plaster, or 1/2 in a thin strip, all the plaster and 3/4 past it.
     * 16 gauge, 0.0625 thick, wants 12 times that, 3/4.
     */
    @Test
    void a_nail_that_bites_enough_in_a_strip_needs_no_joist_for_its_point() {
        String board = "3/4 x 3-1/2, lay: flat, back: 2, top: strip.bottom";
        String up = "16 ga x 2-1/2, at: { out: 3-3/4, up: face.bottom }";
        Answer enough = nailedToAStrip("joists", "1-1/2 x 3-1/2, lay: flat, back: 2, top: ceiling", board, up);
        assertThat(said(enough)).isEmpty();
        assertThat(enough.notices())
                .extracting(Notice::code)
                .doesNotContain("short-bite-in-joist", "misses-the-framing");
        assertThat(enough.known().map(Answers::framing).orElseThrow().landings())
                .isEmpty();
        Answer thin = nailedToAStrip("joists", "1/2 x 3-1/2, lay: flat, back: 2, top: ceiling", board, up);
        assertThat(said(thin)).hasSize(1);
    }

    /** 2-1/2 less 3/4 of board, 1 or 3/4 of strip and 1/2 of plaster: 1/4 or 1/2 in the stud; 15 gauge wants 0.864. */
    @Test
    void a_nail_that_bites_enough_in_a_strip_needs_no_stud_for_its_point() {
        String board = "3/4 x 3-1/2, back: strip.face, bottom: 40";
        String in = "15 ga x 2-1/2, at: { up: 41-3/4 }";
        assertThat(said(nailedToAStrip("studs", "1 x 3-1/2, back: wall, bottom: 40", board, in)))
                .isEmpty();
        assertThat(said(nailedToAStrip("studs", "3/4 x 3-1/2, back: wall, bottom: 40", board, in)))
                .hasSize(1);
    }
}
