package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Walls out of plumb: what they do to lengths and reveals. */
class PlumbTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final double LEAN = 0.375 / 96;

    private static Planned leaning(String stretches) {
        return Planned.clean(
                Planned.CORNICE,
                "plan:\n  - { name: run, left: square, right: square, stretches: [" + stretches + "] }\n");
    }

    /** Worked example I: a wall 3/8 out in 96 is 0.042 out over the cornice's 10.811. */
    @Test
    void a_wall_three_eighths_out_in_ninety_six_is_a_twenty_fourth_out_over_the_cornice() {
        Job job = leaning("{ name: a, length: 60, plumb: { out: 3/8, over: 96 } }")
                .job();
        double bottom = job.leans().get(0).atBottom();
        double top = job.leans().get(job.leans().size() - 1).atTop();
        assertThat(top - bottom).isCloseTo(0.042, within(0.0005));
        assertThat(job.leans()).hasSize(job.courses().size());
    }

    @Test
    void a_wall_that_comes_forward_lengthens_its_neighbor_outside_and_shortens_it_inside() {
        Planned outside = leaning(
                "{ name: a, length: 60, corner: outside 90 }, { name: b, length: 60, plumb: { out: 3/8, over: 96 } }");
        Planned inside = leaning(
                "{ name: a, length: 60, corner: inside 90 }, { name: b, length: 60, plumb: { out: 3/8, over: 96 } }");
        Fit cap = outside.fit("cap", "a");
        double at = LEAN * cap.course().middle();
        assertThat(cap.fromPlumb()).isCloseTo(at, EXACT);
        assertThat(cap.faceLength()).isCloseTo(60 + cap.course().face() + at, EXACT);
        assertThat(inside.fit("cap", "a").fromPlumb()).isCloseTo(-at, EXACT);
        // square to one another, a wall's own lean does not change its own length
        assertThat(outside.fit("cap", "b").fromPlumb()).isCloseTo(0, EXACT);
    }

    /** Independent of the program: both walls moved out by so much, their lines crossed. */
    @Test
    void two_leaning_walls_meet_where_their_moved_lines_cross() {
        for (String side : new String[] {"outside", "inside"}) {
            Planned planned = leaning("{ name: a, length: 60, corner: " + side
                    + " 110, plumb: { out: 1/2, over: 96 } }, { name: b, length: 60, plumb: { out: -1/4, over: 96 } }");
            Fit a = planned.fit("cap", "a");
            Fit b = planned.fit("cap", "b");
            double da = 0.5 / 96 * a.course().middle();
            double db = -0.25 / 96 * b.course().middle();
            double moved = 60 + a.fromPlumb();
            // distance of that point of a's line from b's unmoved line, through the corner at (60, 0)
            double turn = Math.toRadians(side.equals("outside") ? 70 : -70);
            double outX = Math.sin(turn);
            double outY = -Math.cos(turn);
            double fromB = (moved - 60) * outX + -da * outY;
            assertThat(fromB).as(side).isCloseTo(db, EXACT);
        }
    }

    @Test
    void a_run_is_shorter_by_the_lean_of_the_wall_that_it_dies_on() {
        Planned dying = Planned.clean(
                Planned.CORNICE,
                "plan:\n  - { left: square, right: { end: die, plumb: { out: 3/8, over: 96 } }, stretches: [{ name: a,"
                        + " length: 60 }] }\n");
        Fit cap = dying.fit("cap", "a");
        assertThat(cap.faceLength()).isCloseTo(60 - LEAN * cap.course().middle(), EXACT);
        assertThat(cap.fromPlumb()).isNegative();
    }

    @Test
    void set_to_a_wall_that_comes_forward_a_level_reveal_grows_by_the_rise_and_an_upright_one_stays() {
        Planned planned = leaning("{ name: a, length: 60, plumb: { out: 3/8, over: 96 } }");
        Bench bench = planned.bench();
        RevealShift cap = planned.job().shifts().stream()
                .filter(shift -> bench.name(shift.piece()).equals("cap"))
                .findFirst()
                .orElseThrow();
        double rise = middle(bench, "cap") - middle(bench, "crown");
        assertThat(cap.amount()).isCloseTo(0.375, within(0.001));
        assertThat(cap.change()).isCloseTo(LEAN * rise, EXACT);
        assertThat(planned.job().shifts()).anySatisfy(shift -> {
            assertThat(bench.name(shift.piece())).isEqualTo("frieze");
            assertThat(shift.change()).isZero();
        });
    }

    private static double middle(Bench bench, String name) {
        return (bench.box(name).bottom() + bench.box(name).top()) / 2;
    }

    @Test
    void plumb_walls_say_nothing() {
        Job job = leaning("{ name: a, length: 60 }").job();
        assertThat(job.leans()).isEmpty();
        assertThat(job.shifts()).isEmpty();
    }
}
