package buildup.engine.judge.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Answered;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What lies flat on the wall counts as fixed until its nails are given; where it would fall without, that is told. */
class HeldOnTrustTest {
    /**
     * A shelf 1 by 9 lies on a cleat, its back edge at the wall. The weight of the shelf alone falls 4-1/2 out, with 4
     * pounds at 7 beside its own 2.9 farther than 5.
     */
    @ParameterizedTest
    @CsvSource({
        "1-1/2, no, no, TRUST", // it reaches 9 out by a flat of 1
        "1-1/2, yes, no, TRUST",
        "1-1/2, no, yes, TRUST",
        "1-1/2, yes, yes, TRUST",
        "9, yes, yes, YES",
        "5, yes, no, YES",
        "5, yes, yes, TRUST"
    })
    void a_shelf_that_would_roll_off_its_cleat_is_not_said_to_stand_while_no_nail_of_its_own_is_given(
            String cleat, String nailed, String loaded, Reply reply) {
        String yaml = """
                wood: white-oak
                pieces:
                  - { name: cleat, kind: nailer, profile: board %s x 2-1/2, back: wall, top: 0 }
                  - { name: shelf, profile: board 1 x 9, lay: flat, back: wall, bottom: 0 }
                """.formatted(cleat)
                + (nailed.equals("yes")
                        ? "fastenings: [{ name: s, piece: cleat, use: screw 10 x 12, at: { up: -1-1/4 } }]\n"
                        : "")
                + (loaded.equals("yes") ? "loads: [{ name: jar, on: shelf, out: 7, load: 4 lb/ft }]\n" : "");
        assertThat(Answered.row(yaml, Topic.STANDS).answer()).isEqualTo(reply);
        if (reply == Reply.TRUST) {
            assertThat(Answered.because(yaml, Topic.STANDS))
                    .isEqualTo("all but shelf, which hangs on nails that are not given");
        }
    }

    /** 7 high and 3/4 thick, flat on the wall: any nail holds it, and while none is spoken of it is listed alone. */
    @ParameterizedTest
    @CsvSource({"no, YES", "yes, TRUST"})
    void an_upright_board_on_the_wall_is_trusted_in_its_row_once_others_are_nailed(String nailed, Reply reply) {
        String yaml = """
                wood: white-oak
                pieces:
                  - { name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: -20 }
                  - { name: frieze, profile: board 3/4 x 7, back: wall, bottom: 0 }
                """
                + (nailed.equals("yes")
                        ? "fastenings: [{ name: s, piece: base, use: 15 ga x 2-1/2, at: { up: -18 } }]\n"
                        : "");
        assertThat(Answered.row(yaml, Topic.STANDS).answer()).isEqualTo(reply);
    }

    @Test
    void that_a_stud_stands_at_each_nail_is_trusted_until_the_plan_says_where_they_are() {
        String stack = """
                wood: yellow-poplar
                pieces: [{ name: frieze, profile: board 3/4 x 7, back: wall, bottom: 0 }]
                fastenings: [{ name: n, piece: frieze, use: 15 ga x 2-1/2, at: { up: 3 }, first: 8 }]
                plan: [{ left: square, right: square, STUDS stretches: [{ name: north, length: 96 }] }]
                """;
        String trusted = "a stud at each nail into the wall, since none are given";
        assertThat(trusted(stack.replace("STUDS", ""))).contains(trusted);
        assertThat(trusted(stack.replace("STUDS", "studs: { every: 16, first: 8 },")))
                .doesNotContain(trusted);
        assertThat(trusted(stack.replace("STUDS", "studs: masonry,"))).doesNotContain(trusted);
    }

    private static List<String> trusted(String yaml) {
        return Answered.sound(yaml).verdict().trusted().stream()
                .map(new FigurePrinter(LengthUnit.INCH)::print)
                .toList();
    }
}
