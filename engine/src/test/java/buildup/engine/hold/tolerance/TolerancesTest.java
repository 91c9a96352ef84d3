package buildup.engine.hold.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import buildup.engine.section.stack.Axis;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How errors of sizes add up, against closed forms and worked figures; sources in {@code reference/tolerance.md}. */
class TolerancesTest {
    /** A share counted over so many builds lies within so many of its own standard errors; the draws never change. */
    private static final double ERRORS = 4;

    private static void near(double share, double expected, int builds) {
        assertThat(share).isEqualTo(expected, within(ERRORS * Math.sqrt(expected * (1 - expected) / builds)));
    }

    private static String piece(String name, String width, String on, String spread) {
        return "  - { name: " + name + ", profile: board 3/4 x " + width + ", back: wall, bottom: " + on
                + ", spread: { width: " + spread + ", thickness: 0 } }";
    }

    /** Four members one on another, as worked in the reference. */
    private static Strayed four(String settings, String must) {
        return Strayed.of(
                "tolerance: " + settings,
                "must: [" + must + "]",
                "pieces:",
                piece("a", "3/4", "datum", "1/64"),
                piece("b", "3-1/2", "a.top", "1/32"),
                piece("c", "5/8", "b.top", "1/64"),
                piece("d", "2", "c.top", "1/32"));
    }

    @Tag("long")
    @Test
    void members_one_on_another_stray_as_worked() {
        int builds = 400_000;
        ErrorFigure height =
                four("{ builds: 400000 }", "height = 6.875 within 0.04941").figure("height");
        assertThat(height.drawn()).isEqualTo(6.875, within(1e-12));
        assertThat(height.worst()).isEqualTo(0.09375, within(1e-12));
        assertThat(height.rss()).isEqualTo(0.04941, within(0.000005));
        assertThat(height.deviation()).isEqualTo(0.02853, within(0.02853 * ERRORS / Math.sqrt(2.0 * builds)));
        assertThat(height.chance().orElseThrow()).isEqualTo(0.083, within(0.002));
    }

    @Tag("long")
    @Test
    void normal_errors_lie_beyond_one_and_two_deviations_as_often_as_they_do() {
        double deviation = Math.sqrt(2 * (1.0 / 64 * 1.0 / 64 + 1.0 / 32 * 1.0 / 32)) / 3;
        for (double[] row : new double[][] {{1, 0.31731}, {2, 0.04550}}) {
            String within = String.format(java.util.Locale.ROOT, "%.9f", row[0] * deviation);
            ErrorFigure height = four("{ builds: 100000, shape: normal }", "height = 6.875 within " + within)
                    .figure("height");
            assertThat(height.deviation()).isEqualTo(deviation, within(deviation * ERRORS / Math.sqrt(2e5)));
            near(height.chance().orElseThrow(), row[1], 100_000);
        }
    }

    @Test
    void uniform_errors_reach_the_corner_of_a_square_and_of_a_cube_as_often_as_they_do() {
        ErrorFigure two = Strayed.of(
                        "tolerance: { builds: 100000 }",
                        "must: [height <= 4-1/32]",
                        "pieces:",
                        piece("a", "2", "datum", "1/32"),
                        piece("b", "2", "a.top", "1/32"))
                .figure("height");
        near(two.chance().orElseThrow(), 1.0 / 8, 100_000);
        ErrorFigure three = Strayed.of(
                        "tolerance: { builds: 100000 }",
                        "must: [height <= 6-1/16]",
                        "pieces:",
                        piece("a", "2", "datum", "1/32"),
                        piece("b", "2", "a.top", "1/32"),
                        piece("c", "2", "b.top", "1/32"))
                .figure("height");
        near(three.chance().orElseThrow(), 1.0 / 48, 100_000);
    }

    @Test
    void six_courses_and_a_leaning_wall_come_to_what_was_worked_by_hand() {
        String[] lines = IntStream.range(0, 6)
                .mapToObj(i -> piece("p" + i, "2", i == 0 ? "datum" : "p" + (i - 1) + ".top", "1/64"))
                .toArray(String[]::new);
        ErrorFigure height = Strayed.of("tolerance: { builds: 1 }", "pieces:\n" + String.join("\n", lines))
                .figure("height");
        assertThat(height.worst()).isEqualTo(0.094, within(0.0005));
        assertThat(height.rss()).isEqualTo(0.038, within(0.0005));
        // a wall 3/8 out in 96 takes along what hangs 10.811 up, its middle over the foot of the stack
        Strayed leaning = Strayed.read("wood: yellow-poplar\nspace: { wall: { solid: yes } }\n"
                + "tolerance: { plumb: { out: 3/8, over: 96 } }\npieces:\n"
                + "  - { name: foot, profile: board 1 x 2, back: wall, bottom: 0, spread: 0 }\n"
                + "  - { name: cap, profile: board 2 x 1, back: wall, bottom: 10.311, spread: 0 }\n");
        assertThat(leaning.figure("projection").worst()).isEqualTo(0.042, within(0.0005));
    }

    /** Room over a board hung from the ceiling keeps its size; over one set by a length it strays as the ceiling does. */
    @Test
    void what_hangs_from_the_ceiling_goes_with_it_whatever_sizes_are_called() {
        String stack = "wood: yellow-poplar\nsizes: { %s: 4 }\nspace: { wall: { solid: no }, ceiling: 20 }\n"
                + "tolerance: { ceiling: 1/4 }\npieces:\n"
                + "  - { name: fascia, profile: board 1 x 5, back: 0, %s, spread: 0 }\n";
        for (String size : List.of("drop", "ceilingDrop")) {
            assertThat(Strayed.read(stack.formatted(size, "bottom: " + size))
                            .figure("room under the ceiling")
                            .worst())
                    .as(size)
                    .isEqualTo(0.25, within(1e-12));
            assertThat(Strayed.read(stack.formatted(size, "top: ceiling - " + size))
                            .figure("room under the ceiling")
                            .worst())
                    .as(size)
                    .isZero();
        }
    }

    @Test
    void above_a_piece_that_is_ripped_to_fit_nothing_strays() {
        Strayed fitted = Strayed.of(
                "tolerance: {}",
                "pieces:",
                piece("a", "3/4", "datum", "1/64"),
                "  - { name: b, profile: board 3/4 x 4, back: wall, bottom: a.top, top: 4-1/4, spread: 1/16 }",
                piece("c", "5/8", "b.top", "0"),
                "  - { name: d, profile: board 3/4 x 2, back: c.face, bottom: c.bottom + 1/4, spread: 0 }");
        assertThat(fitted.figure("height").worst()).isZero();
        assertThat(fitted.figure("height").deviation()).isZero();
        assertThat(fitted.order("height")).isEmpty();
    }

    @Test
    void what_matters_is_in_the_order_of_the_exact_derivatives() {
        Strayed strayed = Strayed.of(
                "tolerance: {}",
                "pieces:",
                "  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum, spread: { width: 1/32, thickness: 1/64 } }",
                "  - { name: bed, profile: cove-bed 1-1/4 x 1-3/8, back: frieze.face, top: frieze.top, spread: { thickness: 3/64, width: 1/32 } }",
                "  - { name: cap, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: frieze.top, spread: { width: 1/16, thickness: 1/64 } }");
        // by hand: what shows of the cap is its width less the thicknesses of frieze and bed
        ErrorFigure reveal = strayed.figure("reveal of cap over bed");
        assertThat(strayed.order("reveal of cap over bed"))
                .containsExactly("width of cap", "thickness of bed", "thickness of frieze");
        double all = square(1.0 / 16) + square(3.0 / 64) + square(1.0 / 64);
        assertThat(reveal.rss()).isEqualTo(Math.sqrt(all), within(1e-12));
        assertThat(reveal.worst()).isEqualTo(1.0 / 16 + 3.0 / 64 + 1.0 / 64, within(1e-12));
        int bed = strayed.study().sources().stream()
                .map(ErrorSource::name)
                .toList()
                .indexOf("thickness of bed");
        assertThat(reveal.share(bed)).isEqualTo(square(3.0 / 64) / all, within(1e-9));
        assertThat(reveal.moved().get(bed)).isEqualTo(-3.0 / 64, within(1e-12));
        // up the wall: the reveal of the frieze down to the bed loses what the bed gains
        assertThat(strayed.order("reveal of frieze over bed"))
                .containsExactlyInAnyOrder("width of frieze", "width of bed");
    }

    private static double square(double size) {
        return size * size;
    }

    @Test
    void the_same_seed_gives_the_same_figures_on_one_thread_and_on_two() throws Exception {
        ErrorStudy one = on(1);
        ErrorStudy two = on(2);
        assertThat(one).isEqualTo(two);
        ErrorStudy other = four("{ builds: 70000, seed: 2 }", "height <= 6.9").study();
        assertThat(other.figures().get(0).chance())
                .isNotEqualTo(one.figures().get(0).chance());
    }

    private static ErrorStudy on(int threads) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> four("{ builds: 70000 }", "height <= 6.9").study())
                    .get();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void sizes_stray_by_what_the_lists_say_of_their_kind() {
        Strayed strayed = Strayed.of(
                "tolerance: {}",
                "pieces:",
                "  - { name: bought, profile: 1x6, back: wall, bottom: datum }",
                "  - { name: sheet, wood: mdf, profile: board 3/4 x 5, back: wall, bottom: bought.top }",
                "  - { name: ply, wood: plywood, profile: board 3/4 x 5, back: wall, bottom: sheet.top }",
                "  - { name: bed, profile: cove-bed 1-1/4 x 1-3/8, back: bought.face, top: bought.top }",
                "  - { name: own, profile: board 3/4 x 2, back: wall, bottom: ply.top, spread: 1/8 }",
                "  - { name: post, kind: framing, section: [out 1, up 1], face: wall, bottom: datum }");
        assertThat(strayed.spread("thickness of bought")).isEqualTo(1.0 / 64);
        assertThat(strayed.spread("thickness of sheet")).isEqualTo(0.010, within(1e-9));
        assertThat(strayed.spread("thickness of ply")).isEqualTo(1.0 / 64);
        assertThat(strayed.spread("thickness of bed")).isEqualTo(1.0 / 32);
        assertThat(strayed.spread("width of own")).isEqualTo(1.0 / 8);
        assertThat(strayed.spread("width of post")).as("it stands already").isZero();
    }

    @Test
    void advice_names_the_size_to_hold_and_the_joint_to_make_adjustable() {
        Strayed strayed = Strayed.read(
                "wood: yellow-poplar\nspace: { ceiling: 12-1/32, wall: { solid: no } }\n"
                        + "tolerance: { ceiling: 0 }\npieces:\n"
                        + "  - { name: frieze, profile: board 3/4 x 9-1/4, back: wall, bottom: datum, spread: { width: 1/16, thickness: 0 } }\n"
                        + "  - { name: bed, profile: board 3/4 x 2-3/4, back: wall, bottom: frieze.top, spread: { width: 1/64, thickness: 0 } }\n");
        ErrorFigure room = strayed.figure("room under the ceiling");
        // over the bed's part, which takes as much as it gives, the frieze is too wide a quarter of the time
        near(room.chance().orElseThrow(), 0.25, 10_000);
        ErrorAdvice held = strayed.study().advice().get(0);
        assertThat(strayed.study().sources().get(held.held().get(0)).name()).isEqualTo("width of frieze");
        assertThat(held.chance()).isLessThanOrEqualTo(0.01);
        ErrorAdvice ripped = strayed.study().advice().get(1);
        assertThat(strayed.section().name(ripped.adjustable().orElseThrow()))
                .as("the last takes up what is below it too")
                .isEqualTo("bed");
        assertThat(ripped.axis()).contains(Axis.UP);
        assertThat(ripped.chance()).isZero();
        assertThat(strayed.said("error-adds-up"))
                .contains("room under the ceiling")
                .contains("25.")
                .contains("Hold the width of frieze to 1/64: then");
        assertThat(ruling(strayed).answer()).isEqualTo(Ruling.Reply.NO);
    }

    private static Ruling ruling(Strayed strayed) {
        return strayed.known().verdict().rulings().stream()
                .filter(one -> one.topic() == Topic.TOLERANCE)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void what_never_fails_is_yes_and_is_not_asked_where_nobody_asks() {
        assertThat(ruling(four("{}", "height <= 8")).answer()).isEqualTo(Ruling.Reply.YES);
        assertThat(Strayed.of("pieces:", "  - { name: a, profile: board 3/4 x 2, back: wall, bottom: datum }")
                        .study()
                        .asked())
                .isFalse();
        assertThat(Strayed.of("pieces:", piece("a", "2", "datum", "1/32"))
                        .study()
                        .asked())
                .as("a piece that says how far it strays asks")
                .isTrue();
    }

    @Test
    void a_nail_bites_less_by_what_the_piece_under_its_head_is_thicker() {
        Strayed strayed = Strayed.read("wood: yellow-poplar\nspace: { wall: { solid: yes } }\n"
                + "tolerance: { plumb: { out: 0, over: 96 } }\npieces:\n"
                + "  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum, spread: { width: 0, thickness: 1/16 } }\n"
                + "fastenings:\n  - { name: nails, piece: frieze, use: 15 ga x 1-1/2, at: { up: 3 } }\n");
        ErrorFigure bite = strayed.figure("bite of nails");
        assertThat(bite.drawn()).isEqualTo(0.75, within(1e-9));
        assertThat(bite.worst()).isEqualTo(1.0 / 16, within(1e-9));
        assertThat(bite.moved().get(0)).isEqualTo(-1.0 / 16, within(1e-9));
    }

    /**
     * A 15 ga nail, 0.072 thick, is to bite 12 diameters, 0.864; 1-3/4 through a board of 7/8 leaves 0.875, and a board thicker by
     * more than 0.011 of its 1/16 too little: the next length sold is 2.
     */
    @Test
    void too_little_bite_is_cured_by_the_next_length_sold() {
        Strayed strayed = Strayed.read("wood: yellow-poplar\nspace: { wall: { solid: yes } }\n"
                + "tolerance: { plumb: { out: 0, over: 96 } }\npieces:\n"
                + "  - { name: frieze, profile: board 7/8 x 5-1/2, back: wall, bottom: datum, spread: { width: 0, thickness: 1/16 } }\n"
                + "fastenings:\n  - { name: nails, piece: frieze, use: 15 ga x 1-3/4, at: { up: 3 } }\n");
        assertThat(strayed.said("error-adds-up")).contains("The bite of nails").contains("Use 15 ga x 2.");
    }

    @Test
    void a_spread_larger_than_its_size_and_settings_that_cannot_be_are_refused() {
        assertThat(Strayed.of("pieces:", piece("a", "2", "datum", "2-1/8")).codes())
                .contains("spread-larger-than-size");
        for (String settings : List.of(
                "{ builds: 0 }",
                "{ builds: many }",
                "{ seed: -1 }",
                "{ shape: square }",
                "{ plumb: { out: 96, over: 1 } }",
                "{ ceiling: -1 }",
                "{ bulids: 3 }")) {
            assertThat(Strayed.of("tolerance: " + settings, "pieces:", piece("a", "2", "datum", "1/32"))
                            .codes())
                    .as(settings)
                    .containsAnyOf("not-a-number", "unknown-name", "not-a-size", "unknown-key");
        }
    }

    /** A piece that is moved until it touches takes a hundred times as long: a report is to end while one looks on. */
    @Test
    void a_stack_in_which_a_piece_is_moved_until_it_touches_is_built_less_often() {
        String shelf = "  - { name: shelf, profile: board 3/4 x 3, lay: flat, back: wall, bottom: touch }";
        Strayed touching = Strayed.of("pieces:", piece("a", "2", "datum", "1/32"), shelf);
        assertThat(touching.study().settings().builds()).isEqualTo(1000);
        assertThat(touching.figure("height").worst()).isGreaterThan(1.0 / 32);
        assertThat(Strayed.of("pieces:", piece("a", "2", "datum", "1/32"))
                        .study()
                        .settings()
                        .builds())
                .isEqualTo(10_000);
        assertThat(Strayed.of("tolerance: { builds: 2000 }", "pieces:", piece("a", "2", "datum", "1/32"), shelf)
                        .study()
                        .settings()
                        .builds())
                .isEqualTo(2000);
        assertThat(Strayed.of("tolerance: { builds: 100001 }", "pieces:", piece("a", "2", "datum", "1/32"), shelf)
                        .notices())
                .filteredOn(notice -> notice.code().equals("not-a-number"))
                .singleElement()
                .satisfies(notice ->
                        assertThat(notice.cure().orElseThrow().toString()).contains("100000"));
    }
}
