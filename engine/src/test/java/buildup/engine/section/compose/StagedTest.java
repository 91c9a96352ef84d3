package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A stack that is composed only as far as it is asked about has the figures of one that is composed as a whole. */
class StagedTest {
    private static final String LOW = "name: low, profile: board 3/4 x 4, back: wall, bottom: 0";
    private static final String CAP = "name: cap, profile: board 3/4 x 3, lay: flat, back: wall, bottom: low.top";
    private static final String BED = "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: low.face, top: low.top";

    private static Optional<Composer.Staged> staged(Bench bench, Composer.Known known) {
        return Composer.staged(bench.stack(), bench.placed(), known);
    }

    private static void assertAlike(Bench bench, Composer.Known known) {
        Composer.Staged staged = staged(bench, known).orElseThrow();
        Section whole = bench.section();
        assertThat(staged.bodies().stream().map(Body::name))
                .containsExactlyElementsOf(
                        whole.bodies().stream().map(Body::name).toList());
        assertThat(staged.totals().area()).isEqualTo(whole.totals().area(), within(1e-9));
        assertThat(staged.totals().projection()).isEqualTo(whole.totals().projection(), within(1e-9));
        assertThat(staged.totals().weightPerFoot()).isEqualTo(whole.totals().weightPerFoot(), within(1e-9));
        assertThat(staged.standing()).isEqualTo(whole.standing());
        Section section = staged.section().orElseThrow();
        assertThat(section.contacts()).isEqualTo(whole.contacts());
        assertThat(section.members()).isEqualTo(whole.members());
        assertThat(staged.section().orElseThrow()).as("made once").isSameAs(section);
    }

    @Test
    void it_has_the_figures_of_the_whole_in_whatever_room() {
        // what is remembered of one room is not taken for another's
        Composer.Known known = new Composer.Known();
        for (String space : List.of(
                "{ floor: -84, ceiling: 12 }",
                "{ floor: -84, ceiling: 12 }",
                "{ floor: -84, ceiling: 9 }",
                "{ wall: { solid: no } }",
                "{ ceiling: { height: 12, slope: 1 in 12 } }")) {
            assertAlike(Bench.in(space, LOW, CAP, BED), known);
            assertAlike(Bench.in(space, LOW, CAP), known);
        }
        assertAlike(Bench.in("{ floor: -84 }", LOW.replace("board 3/4 x 4", "board 3/4 x 300"), CAP), known);
    }

    @Test
    void where_pieces_lie_in_each_other_or_nearly_touch_only_a_union_can_say_what_they_make() {
        Composer.Known known = new Composer.Known();
        for (String bottom : List.of("low.top - 1/8", "low.top - 0.002", "low.top + 0.002")) {
            Bench bench = Bench.onWall(LOW, CAP.replace("low.top", bottom));
            assertThat(staged(bench, known)).as(bottom).isEmpty();
        }
        assertThat(staged(Bench.onWall(CAP.replace("low.top", "3-7/8"), LOW), known))
                .as("the later one below")
                .isEmpty();
        assertThat(staged(Bench.onWall(LOW, CAP.replace("low.top", "low.top + 1/8")), known))
                .isPresent();
    }
}
