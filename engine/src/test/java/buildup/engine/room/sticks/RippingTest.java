package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Stick;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RippingTest {
    private static final String STOCK = """
            stock:
              kerf: 1/8
              trim: 1/2
              sticks:
                - { of: 1x4, buy: [8', 10', 12', 14', 16'], price: 1.80, per: foot }
                - { of: 1x6, buy: [8', 10', 12', 14', 16'], price: 2.75, per: foot }
                - { of: 1x8, buy: [8', 10', 12', 14', 16'], price: 3.60, per: foot }
                - { of: 1x10, buy: [10', 12', 14', 16'], price: 4.90, per: foot }
                - { of: 1x12, buy: [12', 14', 16'], price: 6.10, per: foot }
            """;

    /** Boards of widths of chance, one on the other, round walls of lengths of chance. */
    private static String[] room(int boards, int walls, int seed) {
        Random random = new Random(seed);
        String stack = Cutlist.WALL
                + Bench.list(IntStream.range(0, boards)
                        .mapToObj(i -> "name: p" + i + ", profile: board 3/4 x " + (8 + random.nextInt(37)) / 8.0
                                + ", back: wall, bottom: " + (i == 0 ? "datum" : "p" + (i - 1) + ".top"))
                        .toArray(String[]::new));
        StringBuilder plan =
                new StringBuilder("plan:\n  - name: room\n    left: butt\n    right: butt\n    stretches:\n");
        for (int i = 0; i < walls; i++) {
            String corner = i == walls - 1 ? "" : ", corner: " + (i % 2 == 0 ? "outside" : "inside") + " 90";
            plan.append("      - { name: w")
                    .append(i)
                    .append(", length: ")
                    .append(20 + random.nextInt(140))
                    .append(corner)
                    .append(" }\n");
        }
        return new String[] {stack, plan.toString()};
    }

    private static CutList laid(int boards, int walls, int seed) {
        String[] room = room(boards, walls, seed);
        return Cutlist.of(room[0], room[1] + STOCK).cutList();
    }

    /** The bound is proved for the widths by {@code BoardBoundTest}, and for whole jobs by {@link SmallJobs} below. */
    @Test
    void boards_of_all_widths_are_shared_within_half_a_percent_of_what_no_way_takes_less_than() {
        for (int seed = 0; seed < 3; seed++) {
            CutList list = laid(12, 20, seed);
            assertThat(list.rips().get(0).over() / (double) list.price())
                    .as("seed %d: over the bound, of %d", seed, list.price())
                    .isBetween(0.0, 0.005);
        }
        CutList large = laid(40, 30, 1);
        assertThat(large.rips().get(0).over() / (double) large.price()).isBetween(0.0, 0.0025);
    }

    @Test
    void the_same_room_is_ripped_the_same_way_every_time() {
        assertThat(laid(4, 20, 7)).isEqualTo(laid(4, 20, 7));
    }

    /**
     * A full board of 149 takes 16 ft, at 32. Twelve strips of 2-3/4 x 15-1/2 lie side by side on one board of 8 ft, at 16: two
     * widths and a kerf are 5-5/8 of 7-1/4, six lengths and five kerfs 93-5/8 of 96. In one row they would take 16 ft too.
     */
    @Test
    void short_strips_are_laid_side_by_side_on_a_short_board_beside_long_ones_that_need_another() {
        StringBuilder openings = new StringBuilder();
        for (int i = 1; i <= 12; i++) {
            openings.append(i == 1 ? "" : ", ")
                    .append("{ name: o%d, from: %s, to: %s }".formatted(i, 16 * i - 0.5, 16 * i));
        }
        CutList list = Cutlist.of(
                        Cutlist.WALL
                                + Bench.list(
                                        "name: strip, profile: board 3/4 x 2-3/4, back: wall, bottom: datum",
                                        "name: full, profile: board 3/4 x 7-1/4, back: wall, bottom: strip.top"),
                        """
                        plan:
                          - { name: a, left: butt, right: butt, stretches: [{ length: 192, pieces: [strip], openings: [OPENINGS] }] }
                          - { name: b, left: butt, right: butt, stretches: [{ length: 149, pieces: [full] }] }
                        stock:
                          kerf: 1/8
                          sticks: [{ of: 1x8, buy: [8', 12', 16'], price: 2, per: foot }]
                        """.replace("OPENINGS", openings))
                .cutList();
        assertThat(list.price()).isEqualTo(3200 + 1600);
    }

    /** 30 + 1/8 + 30 of a board of 96, against two of them; the narrower one is ripped once it is cut off. */
    @Test
    void two_widths_are_crosscut_from_one_board_where_each_would_leave_most_of_it() {
        CutList list = Cutlist.of(
                        Cutlist.WALL
                                + Bench.list(
                                        "name: wide, profile: board 3/4 x 5, back: wall, bottom: datum",
                                        "name: slim, profile: board 3/4 x 4, back: wall, bottom: wide.top"),
                        "plan:\n  - { name: r, left: square, right: square, stretches: [{ length: 30 }] }\n"
                                + "stock:\n  sticks:\n    - { of: board 3/4 x 5-1/2, buy: [8'], price: 4, per: foot }\n")
                .cutList();
        assertThat(list.price()).isEqualTo(3200);
        Stick.Strip strip = list.sticks().get(0).strips().get(0);
        assertThat(LengthSteps.inches(strip.width())).isCloseTo(5, within(1e-9));
        assertThat(strip.pieces()).extracting(lie -> lie.piece().id()).containsExactlyInAnyOrder("A1", "B1");
        assertThat(strip.pieces().stream().filter(lie -> lie.ripped().isPresent()))
                .singleElement()
                .satisfies(lie ->
                        assertThat(LengthSteps.inches(lie.ripped().getAsInt())).isCloseTo(4, within(1e-9)));
        assertThat(list.sticks().get(0).area()).isCloseTo(30 * 5 + 30 * 4, within(1e-6));
    }

    @Test
    void a_width_that_needs_a_longer_board_is_not_cut_from_the_shorter_boards_of_another() {
        CutList list = Cutlist.of(
                        Cutlist.WALL
                                + Bench.list(
                                        "name: wide, profile: board 3/4 x 5, back: wall, bottom: datum",
                                        "name: slim, profile: board 3/4 x 3, back: wall, bottom: wide.top"),
                        "plan:\n  - { name: r, left: square, right: square, stretches: [{ length: 30, pieces: [wide] }] }\n"
                                + "  - { name: s, left: square, right: square, stretches: [{ length: 110, pieces: [slim] }] }\n"
                                + "stock:\n  sticks:\n    - { of: board 3/4 x 5-1/2, buy: [8'], price: 4, per: foot }\n"
                                + "    - { of: board 3/4 x 3-1/2, buy: [12'], price: 3, per: foot }\n")
                .cutList();
        assertThat(list.without()).isEmpty();
        assertThat(list.price()).isEqualTo(3200 + 3600);
    }

    /** Every way to cut a few lengths from whole boards, tried one by one over sets of lengths. */
    @Tag("sampled")
    @Test
    void no_way_to_cut_a_small_job_takes_less_than_the_bound_and_few_take_less_than_the_plan() {
        int proved = 0;
        int best = 0;
        int jobs = Integer.getInteger("buildup.rip.jobs", 20);
        for (int seed = 0; seed < jobs; seed++) {
            SmallJobs job = SmallJobs.of(seed);
            CutList list = job.laid();
            long ripped = job.least(false);
            long least = job.least(true);
            RipPlan plan = list.rips().get(0);
            long taken = plan.aim().taken(list.sticks());
            assertThat(taken).as("seed %d", seed).isGreaterThanOrEqualTo(least);
            assertThat(taken - plan.over()).as("seed %d: bound", seed).isLessThanOrEqualTo(ripped);
            proved += plan.over() == 0 ? 1 : 0;
            best += taken == least ? 1 : 0;
        }
        assertThat(best).as("plans that nothing betters").isGreaterThan(jobs * 3 / 4);
        assertThat(proved).as("of these proved").isGreaterThan(jobs / 4);
    }
}
