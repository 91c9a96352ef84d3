package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A crown turned over is the cap of a base: its wide edge stands out below, as that of a cornice does above, and wants wood
 * behind or under it as much (common practice, no source).
 */
class TurnedOverTest {
    private static String base(String plinth, String more) {
        return "wood: check-wood\nspace: { floor: 0, ceiling: 96, wall: { solid: yes } }\npieces:\n"
                + "  - { name: plinth, profile: board " + plinth + " x 3-1/2, back: wall, bottom: floor }\n" + more
                + "  - { name: mold, profile: check-crown-edged 9/16 x 3-5/8, flip: over, back: wall, bottom: plinth.top }\n";
    }

    private static String cornice(String more) {
        return "wood: check-wood\nspace: { floor: 0, ceiling: 96, wall: { solid: yes } }\npieces:\n"
                + "  - { name: rail, profile: board 3/4 x 3-1/2, back: wall, top: 90 }\n" + more
                + "  - { name: mold, profile: check-crown-edged 9/16 x 3-5/8, back: wall, top: rail.bottom }\n";
    }

    private static List<Notice> edges(String yaml) {
        return Answered.of(yaml).notices().stream()
                .filter(notice -> notice.code().equals("upper-edge-not-held"))
                .toList();
    }

    @Test
    void its_wide_edge_below_wants_what_that_of_a_cornice_wants_above() {
        assertThat(Answered.because(base("3/4", ""), Topic.HELD))
                .isEqualTo("Nothing is behind the lower edge of 'mold'.");
        assertThat(cure(base("3/4", ""))).isEqualTo(cure(cornice("")).replace("at the top", "at the foot"));
    }

    private static String cure(String yaml) {
        return NoticeWords.INCHES.cure(edges(yaml).get(0));
    }

    @Test
    void a_block_turned_over_with_it_holds_it() {
        String block = "kind: nailer, section: [chamfer 2 x 1-9/16], back: wall";
        assertThat(edges(cornice("  - { name: klotz, " + block + ", top: rail.bottom }\n")))
                .isEmpty();
        assertThat(edges(base("3/4", "  - { name: klotz, " + block + ", flip: over, bottom: plinth.top }\n")))
                .isEmpty();
    }

    @Test
    void a_block_that_is_too_small_is_named_with_the_size_it_needs() {
        String block = "kind: nailer, section: [chamfer 1 x 25/32], back: wall";
        String above = cornice("  - { name: klotz, " + block + ", top: rail.bottom }\n");
        String below = base("3/4", "  - { name: klotz, " + block + ", flip: over, bottom: plinth.top }\n");
        assertThat(cure(below))
                .startsWith("Make 'klotz' ")
                .isEqualTo(cure(above).replace("at the top", "at the foot"));
    }

    /** Its wide edge sits on the plinth, which carries it. */
    @Test
    void on_a_plinth_that_comes_out_as_far_it_stands() {
        assertThat(edges(base("4", ""))).isEmpty();
    }
}
