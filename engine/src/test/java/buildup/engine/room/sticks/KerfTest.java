package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Stick;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a slanted cut takes, and what is left to clamp. Every plan is cut by {@link SimulatedSaw} as it is made. */
class KerfTest {
    private static final int JOBS = Integer.getInteger("buildup.saw.jobs", 20);

    private static Cutlist box(String piece, String length, String stock) {
        String wall = "{ name: %s, length: " + length + ", corner: outside 90 }";
        return Cutlist.of(
                Cutlist.WALL + Bench.list(piece),
                "plan:\n  - name: box\n    stretches: [" + wall.formatted("n") + ", " + wall.formatted("e") + ", "
                        + wall.formatted("s") + ", " + wall.formatted("w") + "]\n" + stock);
    }

    private static List<Integer> counts(Cutlist laid) {
        return laid.cutList().sticks().stream()
                .map(stick -> stick.strips().get(0).pieces().size())
                .toList();
    }

    @Test
    void facing_miters_of_a_molding_cost_the_kerf_along_the_stick() {
        // 2 x 47-15/16 and 1/8 over the cosine of 45 degrees are 96.052
        Cutlist laid = box(
                "name: bed, profile: cove-bed 1-1/4 x 1-3/8, back: wall, bottom: datum",
                "45-7/16",
                "stock: { kerf: 1/8, trim: 0, sticks: [{ of: cove-bed 1-1/4 x 1-3/8, buy: 8', price: 2 }] }\n");
        assertThat(counts(laid)).containsExactly(1, 1, 1, 1);
    }

    @Test
    void a_plain_board_is_turned_face_for_back_and_its_miters_nest() {
        // 47-15/16 and 0.177 and 47-3/16 are 95.302
        Cutlist laid = box(
                "name: fascia, profile: board 3/4 x 5-1/2, back: wall, bottom: datum",
                "46-7/16",
                "stock: { kerf: 1/8, trim: 0, sticks: [{ of: board 3/4 x 5-1/2, buy: 8', price: 2 }] }\n");
        assertThat(counts(laid)).containsExactly(2, 2);
        List<Stick.LaidPiece> first =
                laid.cutList().sticks().get(0).strips().get(0).pieces();
        assertThat(first.get(0).turned()).isFalse();
        assertThat(first.get(1).turned()).isTrue();
        double end = LengthSteps.inches(first.get(1).to());
        // the kerf is rounded up to a 64th
        assertThat(end).isBetween(95.302, 95.302 + 1.0 / 64);
    }

    /** Plies of 42 and 60 are square until they are glued: 102-1/2 less both and two kerfs of 1/8 leave 1/4. */
    @Test
    void plies_are_square_on_their_stick_and_do_not_nest() {
        String stack =
                Cutlist.WALL + Bench.list("name: cap, profile: board 1-1/2 x 2, lay: flat, back: wall, bottom: datum");
        String plan =
                "plan: [{ name: r, left: die, right: die, stretches: [{ length: 40, corner: outside 90 }, { length: 58 }] }]\n";
        String stock =
                "stock: { kerf: 1/8, trim: 0, sticks: [{ of: board 3/4 x 2-1/4, on-hand: [2 x %s], buy: 12', price: 3 }] }\n";
        CutList fits = Cutlist.of(stack, plan + stock.formatted("102-1/2")).cutList();
        assertThat(fits.sticks()).hasSize(2).allSatisfy(stick -> {
            Stick.Strip strip = stick.strips().get(0);
            assertThat(strip.pieces())
                    .extracting(lie -> LengthSteps.inches(lie.from()), Stick.LaidPiece::turned)
                    .containsExactly(tuple(0.0, false), tuple(42.125, false));
            assertThat(LengthSteps.inches(strip.rest())).isEqualTo(0.25);
        });
        // nested they would go into 101 as well
        assertThat(Cutlist.of(stack, plan + stock.formatted("101")).cutList().sticks())
                .allSatisfy(stick -> assertThat(stick.strips().get(0).pieces().stream()
                                .mapToDouble(
                                        lie -> LengthSteps.inches(lie.piece().length()))
                                .sum())
                        .isLessThan(LengthSteps.inches(stick.length())));
    }

    /**
     * A frieze on edge is mitered through its thickness, a cap that lies flat through its width: 41-1/2, the kerf of 1/8
     * over the cosine of 45 degrees and 47 are 88.677, and leave less than 7-3/8 of 96.
     */
    @Test
    void a_miter_through_the_thickness_does_not_nest_with_one_through_the_width() {
        String stack = Cutlist.WALL
                + Bench.list(
                        "name: frieze, profile: board 3/4 x 3-1/2, back: wall, bottom: datum",
                        "name: cap, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: frieze.top");
        String plan =
                "plan: [{ name: pier, left: die, right: die, stretches: [{ length: 60, corner: outside 90 }, { length: 40,"
                        + " corner: outside 90 }, { length: 60 }] }]\n";
        for (String lengths : List.of("8'", "9'", "10'", "12'", "16'", "[8', 12', 16']")) {
            Cutlist laid = Cutlist.of(
                    stack,
                    plan + "stock: { kerf: 1/8, trim: 0, sticks: [{ of: 1x4, buy: " + lengths + ", price: 2 }] }\n");
            for (Stick stick : laid.cutList().sticks()) {
                double wood = 0;
                List<Stick.LaidPiece> pieces = stick.strips().get(0).pieces();
                for (int i = 0; i < pieces.size(); i++) {
                    wood += LengthSteps.inches(pieces.get(i).piece().length());
                    boolean alike = i > 0
                            && pieces.get(i).piece().body()
                                    == pieces.get(i - 1).piece().body();
                    // what is cut alike may lie over its neighbor by all of its slant
                    wood += i == 0 ? 0 : alike ? -3.5 : 0.125 / Math.cos(Math.PI / 4) - 0.06;
                }
                assertThat(LengthSteps.inches(
                                stick.length() - stick.strips().get(0).rest()))
                        .as(lengths + " " + pieces)
                        .isGreaterThanOrEqualTo(wood - 1.0 / 64);
            }
        }
    }

    /** Two of 47-15/16 with 3/4 off either end, on their mean 47-3/16 each: 94-3/8 of 96, though they nest end over end. */
    @Test
    void what_is_used_of_a_stick_is_the_wood_in_its_pieces() {
        Cutlist laid = box(
                "name: fascia, profile: board 3/4 x 5-1/2, back: wall, bottom: datum",
                "46-7/16",
                "stock: { kerf: 1/8, trim: 0, sticks: [{ of: board 3/4 x 5-1/2, buy: 8', price: 2 }] }\n");
        BuyLine bill = laid.cutList().bills().get(0);
        assertThat(bill.used()).isCloseTo(2 * 47.1875 / 96, within(1e-4));
        assertThat(bill.wasted()).isPositive();
    }

    @Tag("sampled")
    @Test
    void every_plan_of_random_jobs_comes_out_of_the_saw_as_it_should_be() {
        int turned = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            Random random = new Random(seed);
            String piece = seed % 2 == 0
                    ? "name: bed, profile: cove-bed 1-1/4 x 1-3/8, back: wall, bottom: datum"
                    : "name: fascia, profile: board 3/4 x 5-1/2, back: wall, bottom: datum";
            String of = piece.contains("cove-bed") ? "cove-bed 1-1/4 x 1-3/8" : "board 3/4 x 5-1/2";
            Cutlist laid = Cutlist.of(
                    Cutlist.WALL + Bench.list(piece),
                    plan(random)
                            + String.format(
                                    Locale.ROOT,
                                    "stock: { kerf: %s, trim: %s, sticks: [{ of: %s, buy: [8', 12'], price: 2 }] }%n",
                                    random.nextBoolean() ? "1/8" : "3/32",
                                    random.nextBoolean() ? "0" : "1/2",
                                    of));
            turned += laid.cutList().sticks().stream()
                    .flatMap(stick -> stick.strips().stream())
                    .flatMap(strip -> strip.pieces().stream())
                    .filter(Stick.LaidPiece::turned)
                    .count();
        }
        assertThat(turned).isPositive();
    }

    private static String plan(Random random) {
        StringBuilder plan = new StringBuilder("plan:\n");
        int runs = 1 + random.nextInt(3);
        for (int run = 0; run < runs; run++) {
            boolean closed = random.nextInt(3) == 0;
            plan.append("  - { name: r")
                    .append(run)
                    .append(closed ? ", " : ", left: die, right: return, ")
                    .append("stretches: [");
            double a = 20 + random.nextInt(900) / 16.0;
            double b = 20 + random.nextInt(900) / 16.0;
            if (closed) {
                for (double length : new double[] {a, b, a, b}) {
                    plan.append("{ length: ").append(length).append(", corner: outside 90 }, ");
                }
            } else {
                String corner =
                        random.nextBoolean() ? "outside 90" : random.nextBoolean() ? "inside 135" : "outside 120";
                plan.append("{ length: ")
                        .append(a)
                        .append(", corner: ")
                        .append(corner)
                        .append(" }, { length: ")
                        .append(b)
                        .append(" }");
            }
            plan.append("] }\n");
        }
        return plan.toString();
    }

    @Test
    void short_pieces_are_cut_first_from_the_long_stick() {
        Cutlist laid = Cutlist.boards(
                "3/4 x 3-1/2",
                List.of("60", "3", "20"),
                "stock: { kerf: 1/8, trim: 0, sticks: [{ of: 1x4, buy: 8' }] }\n");
        assertThat(laid.cutList().sticks().get(0).strips().get(0).pieces().stream()
                        .map(lie -> LengthSteps.inches(lie.piece().length()))
                        .toList())
                .containsExactly(3.0, 20.0, 60.0);
        assertThat(laid.notices()).isEmpty();
    }

    @Test
    void a_short_piece_with_too_little_behind_it_to_clamp_is_said() {
        Cutlist laid = Cutlist.boards(
                "3/4 x 3-1/2", List.of("3"), "stock: { kerf: 1/8, trim: 0, sticks: [{ of: 1x4, on-hand: [14] }] }\n");
        assertThat(laid.said().code()).isEqualTo("too-little-left-to-clamp");
        assertThat(NoticeWords.INCHES.cure(laid.said())).isEqualTo("Saw it by hand, in a miter box.");
        assertThat(held(laid)).containsExactly("A1 Saw it by hand, in a miter box");
        Cutlist held = Cutlist.boards(
                "3/4 x 3-1/2",
                List.of("3"),
                "stock: { kerf: 1/8, trim: 0, hold: 8, sticks: [{ of: 1x4, on-hand: [14] }] }\n");
        assertThat(held.notices()).isEmpty();
        // 14 less 3 and a kerf
        assertThat(held(held))
                .containsExactly("A1 Cut its other end first, then clamp the 10-7/8 left of the stick and cut it off");
        assertThat(held(Cutlist.boards("3/4 x 3-1/2", List.of("60"), "stock: { sticks: [{ of: 1x4, buy: 8' }] }\n")))
                .as("long enough to be clamped itself")
                .isEmpty();
    }

    /** Two articles on trim: miter a return on a long piece, and cut it off that; one of them takes 18 in. */
    @Test
    void a_return_whose_stick_is_too_short_comes_off_a_longer_piece() {
        String shelf =
                Cutlist.WALL + Bench.list("name: bed, profile: cove-bed 1-1/4 x 1-3/8, back: wall, bottom: datum");
        String plan = "plan: [{ left: return, right: die, stretches: [{ length: 30 }] }]\n";
        String stock = "stock: { sticks: [{ of: cove-bed 1-1/4 x 1-3/8, on-hand: [%s] }] }\n";
        Cutlist near = Cutlist.of(shelf, plan + stock.formatted("31-1/4, 19"));
        assertThat(near.notices()).extracting(Notice::code).containsExactly("too-little-left-to-clamp");
        assertThat(held(near)).containsExactly("A1 Miter it on a piece 18 long, then cut the return off that by hand");
        assertThat(Cutlist.of(shelf, plan + stock.formatted("31-1/4, 21")).notices())
                .isEmpty();
    }

    /** 9 and 3-1/2 at either end are 16: clamped itself, for no more than 12 are held of what is no return. */
    @Test
    void a_shelf_between_two_returns_is_no_return() {
        Cutlist laid = Cutlist.of(
                Cutlist.WALL
                        + Bench.list("name: cap, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: datum"),
                "plan: [{ name: r, left: return, right: return, stretches: [{ name: one, length: 9 }] }]\n"
                        + "stock: { kerf: 1/8, trim: 0, sticks: [{ of: board 3/4 x 3-1/2, on-hand: [25, 26, 30] }] }\n");
        assertThat(laid.notices()).isEmpty();
        assertThat(held(laid)).hasSize(2).noneMatch(how -> how.startsWith("A2"));
    }

    private static List<String> held(Cutlist laid) {
        return laid.cutList().held().entrySet().stream()
                .map(one -> one.getKey() + " " + FigurePrinter.INCHES.print(one.getValue()))
                .toList();
    }
}
