package buildup.engine.room.sticks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.room.stock.EndJoint;
import buildup.engine.room.stock.LengthSteps;
import buildup.engine.room.stock.Shop.Aim;
import buildup.engine.room.stock.Stick;
import buildup.engine.room.stock.Stick.Origin;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;

class CutListTest {
    /** Worked example G: a case 96 wide and 14 deep; returns die on the wall. */
    private static final String CASE = """
            plan:
              - name: case
                left: die
                right: die
                grain: cap
                stretches:
                  - { name: left side, length: 14, corner: outside 90 }
                  - { name: front, length: 96, corner: outside 90 }
                  - { name: right side, length: 14 }
            """;

    private static final String CAP = Cutlist.WALL.replace("yes", "no")
            + Bench.list("name: cap, profile: board 3/4 x 6.6259, lay: flat, back: wall, bottom: datum");

    private static String stock(String keys, String... sticks) {
        StringBuilder text = new StringBuilder("stock:\n" + (keys.isEmpty() ? "" : "  " + keys + "\n") + "  sticks:\n");
        for (String stick : sticks) {
            text.append("    - { ").append(stick).append(" }\n");
        }
        return text.toString();
    }

    private static List<Integer> lengths(CutList list) {
        return list.sticks().stream()
                .map(stick -> stick.length() / LengthSteps.PER_INCH)
                .toList();
    }

    @Test
    void three_pieces_of_63_and_seven_eighths_come_from_one_stick_of_sixteen_feet() {
        CutList list = Cutlist.boards(
                        "3/4 x 3-1/2", List.of("63-7/8", "63-7/8", "63-7/8"), stock("", "of: 1x4, buy: 16'"))
                .clean()
                .cutList();
        assertThat(lengths(list)).containsExactly(192);
        Stick.Strip strip = list.sticks().get(0).strips().get(0);
        assertThat(strip.pieces())
                .extracting(Stick.LaidPiece::from)
                .containsExactly(0, 64 * LengthSteps.PER_INCH, 128 * LengthSteps.PER_INCH);
        assertThat(strip.rest()).as("191-7/8 used, and a kerf takes the rest").isZero();
        assertThat(strip.ripped()).isFalse();
    }

    @Test
    void what_fits_in_millimeters_exactly_fits() {
        String stack = "units: mm\n"
                + Cutlist.WALL
                + Bench.list("name: rail, profile: board 18 x 120, back: wall, bottom: datum");
        String plan = """
                plan:
                  - { name: a, left: square, right: square, stretches: [{ length: 2400 }] }
                  - { name: b, left: square, right: square, stretches: [{ length: 1199 }] }
                  - { name: c, left: square, right: square, stretches: [{ length: 1199 }] }
                """;
        CutList list = Cutlist.of(stack, plan + stock("kerf: 2", "of: board 18 x 120, buy: 2400"))
                .clean()
                .cutList();
        assertThat(list.sticks()).hasSize(2);
        assertThat(list.pieces())
                .extracting(piece -> LengthSteps.inches(piece.length()) * 25.4)
                .containsExactly(2400.0, 1199.0, 1199.0);
    }

    @Test
    void grain_goes_on_round_the_corner_from_the_last_part_of_a_splice_and_pieces_it_parts_stay_apart() {
        String plan = """
                plan:
                  - name: case
                    left: die
                    right: die
                    grain: cap
                    stretches:
                      - { name: left side, length: 14, corner: outside 90 }
                      - { name: front, length: 200, corner: outside 90 }
                      - { name: right side, length: 14 }
                """;
        Cutlist laid = Cutlist.of(CAP, plan + stock("", "of: board 3/4 x 6.6259, buy: 16'"));
        assertThat(laid.notices()).extracting(Notice::code).contains("longer-than-any-stick", "grain-broken");
        List<List<String>> sticks = laid.cutList().sticks().stream()
                .map(stick -> stick.strips().get(0).pieces().stream()
                        .map(lie -> lie.piece().stretch() + " " + lie.piece().part())
                        .toList())
                .toList();
        assertThat(sticks)
                .anySatisfy(stick -> assertThat(stick).containsSubsequence("front part 2 of 2", "right side "))
                // short pieces are cut first: the left side may lie before the front, and never behind it as if grain
                // went on
                .noneSatisfy(stick -> assertThat(stick).containsSequence("left side ", "right side "))
                .noneSatisfy(stick -> assertThat(stick).containsSubsequence("front part 1 of 2", "right side "));
    }

    @Test
    void a_long_stick_on_hand_serves_one_long_piece_and_the_next_is_spliced_from_what_is_bought() {
        Cutlist laid = Cutlist.boards(
                "3/4 x 3-1/2", List.of("190", "190"), stock("", "of: 1x4, on-hand: [200], buy: 8', price: 1"));
        assertThat(laid.said().code()).isEqualTo("longer-than-any-stick");
        assertThat(NoticeWords.INCHES.message(laid.said()))
                .contains("on wall 2: w is 190 long; the longest stick gives 96");
        assertThat(laid.cutList().priced()).isTrue();
        assertThat(laid.cutList().sticks())
                .extracting(Stick::origin)
                .containsExactlyInAnyOrder(Origin.ON_HAND, Origin.BOUGHT, Origin.BOUGHT);
        assertThat(laid.cutList().joints()).containsEntry(EndJoint.SCARF, 1);
    }

    @Test
    void a_cost_is_not_whole_while_a_stick_is_to_be_found() {
        Cutlist laid = Cutlist.boards(
                "3/4 x 3-1/2", List.of("60", "60", "60"), stock("", "of: 1x4, on-hand: [61, 61], price: 1"));
        assertThat(laid.said().code()).isEqualTo("too-little-stock");
        assertThat(laid.cutList().priced()).isFalse();
    }

    @Test
    void a_wall_of_miles_is_a_slip_and_not_a_hundred_splices() {
        Cutlist laid = Cutlist.boards("3/4 x 3-1/2", List.of("100000"), stock("", "of: 1x4, buy: 16'"));
        assertThat(laid.notices())
                .extracting(Notice::code)
                .containsExactly("mm-read-as-inches", "longer-than-any-stick");
        assertThat(NoticeWords.INCHES.cure(laid.notices().get(1)))
                .isEqualTo("Look at the plan again: is that a wall's length, and in its unit?");
        assertThat(laid.cutList().without()).hasSize(1);
        assertThat(Cutlist.boards("3/4 x 3-1/2", List.of("250 ft"), stock("", "of: 1x4, buy: 16'"))
                        .notices())
                .as("written as a wall of 250 ft")
                .extracting(Notice::code)
                .doesNotContain("mm-read-as-inches");
    }

    @Test
    void trimming_comes_off_both_ends() {
        String stock = stock("trim: 1/2", "of: 1x4, buy: [8', 10']");
        assertThat(lengths(Cutlist.boards("3/4 x 3-1/2", List.of("95"), stock).cutList()))
                .containsExactly(96);
        CutList longer =
                Cutlist.boards("3/4 x 3-1/2", List.of("95-1/16"), stock).cutList();
        assertThat(lengths(longer)).containsExactly(120);
        assertThat(longer.sticks().get(0).strips().get(0).pieces().get(0).from())
                .isEqualTo(LengthSteps.PER_INCH / 2);
    }

    @Test
    void the_cheapest_lengths_are_bought_when_they_have_prices() {
        CutList list = Cutlist.boards(
                        "3/4 x 3-1/2",
                        List.of("95", "95", "70"),
                        stock("", "of: 1x4, buy: [8', 12', 16'], price: 1.20, per: foot"))
                .clean()
                .cutList();
        // 8 + 8 + 8 ft would do for 28.80, 16 + 8 for the same with a stick less
        assertThat(list.price()).isEqualTo(2880);
        assertThat(list.sticks()).hasSize(2);
        assertThat(list.priced()).isTrue();
        LotPlan lot = list.lots().get(0);
        assertThat(lot.aim()).isEqualTo(Aim.CHEAPEST);
        assertThat(lot.proved()).isTrue();
        assertThat(lot.missing()).isFalse();
    }

    @Test
    void a_price_may_be_for_a_foot_a_board_foot_or_a_stick() {
        assertThat(price("of: 1x6, buy: 10', price: 2.345, per: foot")).isEqualTo(2345);
        assertThat(price("of: 1x6, buy: 10', price: 4, per: board-foot"))
                .as("1 x 6 x 10 / 12 = 5 board feet")
                .isEqualTo(2000);
        assertThat(price("of: 1x6, buy: 10', price: 19.99, per: stick")).isEqualTo(1999);
    }

    private static long price(String stick) {
        return Cutlist.boards("3/4 x 5-1/2", List.of("100"), stock("", stick))
                .clean()
                .cutList()
                .price();
    }

    /** Trade rule: nominal thickness x nominal width x length / 12; 5/4 x 6 in x 10 ft is 6.25 (DOC PS 20 sizes). */
    @Test
    void board_feet_are_counted_by_nominal_sizes_and_nothing_is_thinner_than_one() {
        assertThat(boardFeet("1 x 5-1/2", "5/4x6")).isCloseTo(6.25, within(1e-9));
        assertThat(boardFeet("3/4 x 5-1/2", "1x6")).isCloseTo(5, within(1e-9));
        assertThat(boardFeet("3/8 x 5-1/2", "board 3/8 x 5-1/2")).isCloseTo(5, within(1e-9));
        assertThat(boardFeet("1.1 x 5", "board 1.1 x 5")).as("1-1/4 rough").isCloseTo(1.25 * 5 * 10 / 12, within(1e-9));
    }

    private static double boardFeet(String size, String of) {
        return Cutlist.boards(size, List.of("100"), stock("", "of: " + of + ", buy: 10'"))
                .clean()
                .cutList()
                .sticks()
                .get(0)
                .boardFeet();
    }

    @Test
    void without_prices_the_fewest_sticks_are_taken_and_none_longer_than_needed() {
        CutList list = Cutlist.boards(
                        "3/4 x 3-1/2", List.of("95", "95", "70"), stock("", "of: 1x4, buy: [8', 12', 16']"))
                .clean()
                .cutList();
        assertThat(list.lots().get(0).aim()).isEqualTo(Aim.FEWEST);
        assertThat(list.lots().get(0).proved()).isTrue();
        assertThat(lengths(list)).containsExactlyInAnyOrder(192, 96);
        assertThat(list.priced()).isFalse();
    }

    @Test
    void random_lengths_on_hand_go_before_anything_is_bought() {
        CutList list = Cutlist.boards(
                        "3/4 x 3-1/2",
                        List.of("40", "52-1/2", "60", "90"),
                        stock("", "of: 1x4, on-hand: [93, 2 x 61, 30], buy: 12', price: 1"))
                .clean()
                .cutList();
        assertThat(list.sticks()).extracting(Stick::origin).contains(Origin.ON_HAND);
        assertThat(list.price())
                .as("93 holds 90 or 40 + 52-1/2, a 61 the 60: 12 ft for the rest")
                .isEqualTo(1200);
        assertThat(list.bills()).singleElement().satisfies(bill -> {
            assertThat(bill.priced()).isTrue();
            assertThat(bill.used() + bill.kept() + bill.wasted()).isCloseTo(1, within(1e-12));
        });
    }

    @Test
    void too_few_sticks_on_hand_are_said_with_what_is_missing() {
        Cutlist laid =
                Cutlist.boards("3/4 x 3-1/2", List.of("60", "60", "60"), stock("", "of: 1x4, on-hand: [61, 61]"));
        assertThat(laid.said().code()).isEqualTo("too-little-stock");
        assertThat(NoticeWords.INCHES.message(laid.said())).contains("1 more of 61 is needed");
        assertThat(laid.cutList().sticks()).extracting(Stick::origin).containsOnlyOnce(Origin.MISSING);
        assertThat(laid.cutList().lots().get(0).missing()).isTrue();
    }

    @Test
    void narrow_pieces_are_ripped_from_wider_boards_and_then_cut_to_length() {
        CutList list = Cutlist.boards(
                        "3/4 x 1-3/4", List.of("90", "90", "90", "90"), stock("rip-kerf: 1/8", "of: 1x6, buy: 8'"))
                .clean()
                .cutList();
        // 3 x 1-3/4 + 2 x 1/8 = 5-1/2: three strips from a board, exactly
        assertThat(list.sticks()).hasSize(2);
        assertThat(list.sticks().stream().map(stick -> stick.strips().size())).containsExactlyInAnyOrder(3, 1);
        assertThat(list.sticks().get(0).strips()).allMatch(Stick.Strip::ripped);
        assertThat(list.lots().get(0).ripped()).isTrue();
        assertThat(list.lots().get(0).sticks()).as("strips").isEqualTo(4);
    }

    /** Two strips of 2-1/2 fit a board of 5-1/2 and no three, so that each is worth half a board. */
    @Test
    void what_is_ripped_is_proved_against_any_other_way_to_rip() {
        String price = "of: 1x6, buy: 8', price: 10, per: stick";
        CutList list = Cutlist.boards("3/4 x 2-1/2", List.of("90", "90", "90", "90"), stock("", price))
                .clean()
                .cutList();
        assertThat(list.price()).isEqualTo(2000);
        assertThat(list.rips()).singleElement().satisfies(rip -> {
            assertThat(rip.aim()).isEqualTo(Aim.CHEAPEST);
            assertThat(rip.over()).as("by area alone it could be 1705").isZero();
            assertThat(rip.thickness()).isEqualTo(0.75);
        });
        CutList fewest = Cutlist.boards("3/4 x 2-1/2", List.of("90", "90", "90", "90"), stock("aim: fewest", price))
                .clean()
                .cutList();
        assertThat(fewest.rips())
                .singleElement()
                .satisfies(rip -> assertThat(rip.over()).isZero());
    }

    /**
     * Alone, the rail takes a narrow board for 8, and the cleat half of a wide one for 5.50: two boards for 19. Together
     * they fill the wide one, for 11.
     */
    @Test
    void boards_are_chosen_for_the_strips_of_all_widths_together() {
        String stack = Cutlist.WALL
                + Bench.list(
                        "name: rail, profile: board 3/4 x 3-1/4, back: wall, bottom: datum",
                        "name: cleat, profile: board 3/4 x 2, back: wall, bottom: rail.top");
        String plan = "plan: [{ left: square, right: square, stretches: [{ length: 90 }] }]\n";
        CutList list = Cutlist.of(
                        stack,
                        plan
                                + stock(
                                        "",
                                        "of: 1x4, buy: 8', price: 8, per: stick",
                                        "of: 1x6, buy: 8', price: 11, per: stick"))
                .clean()
                .cutList();
        assertThat(list.price()).isEqualTo(1100);
        assertThat(list.rips())
                .singleElement()
                .satisfies(rip -> assertThat(rip.over()).isZero());
    }

    @Test
    void strips_of_several_widths_share_a_board() {
        String stack = Cutlist.WALL
                + Bench.list(
                        "name: rail, profile: board 3/4 x 3, back: wall, bottom: datum",
                        "name: cleat, profile: board 3/4 x 2-1/4, back: wall, bottom: rail.top");
        String plan = "plan: [{ left: square, right: square, stretches: [{ length: 90 }] }]\n";
        CutList list =
                Cutlist.of(stack, plan + stock("", "of: 1x6, buy: 8'")).clean().cutList();
        assertThat(list.sticks()).hasSize(1);
        assertThat(list.sticks().get(0).strips()).hasSize(2);
        assertThat(list.lots()).hasSize(2);
    }

    @Test
    void a_board_wider_than_any_listed_is_glued_up_from_strips() {
        Cutlist laid = Cutlist.boards("3/4 x 12", List.of("90"), stock("", "of: 1x8, buy: 8'"));
        assertThat(laid.said().code()).isEqualTo("glue-up");
        assertThat(NoticeWords.INCHES.message(laid.said())).contains("2 strips 6-1/16- wide");
        assertThat(laid.cutList().sticks()).hasSize(2);
        assertThat(laid.cutList()
                        .sticks()
                        .get(0)
                        .strips()
                        .get(0)
                        .pieces()
                        .get(0)
                        .piece()
                        .part())
                .isEqualTo("ply 1 of 2");
    }

    @Test
    void a_piece_thicker_than_any_board_is_glued_up_in_layers_and_a_thinner_one_is_planed() {
        Cutlist thick = Cutlist.boards("1-1/2 x 3-1/2", List.of("90"), stock("", "of: 1x4, buy: 8'"));
        assertThat(NoticeWords.INCHES.message(thick.said())).contains("2 layers");
        assertThat(thick.cutList().sticks()).hasSize(2);
        Cutlist thin = Cutlist.boards("1/2 x 3-1/2", List.of("90"), stock("", "of: 1x4, buy: 8'"));
        assertThat(thin.clean().cutList().sticks()).hasSize(1);
    }

    /** Three strips of 1x4, or one thicker board; two layers of 2x4, or one on its edge: nobody sees which. */
    @Test
    void a_hidden_block_is_made_of_as_few_boards_as_can_be() {
        for (String[] block :
                List.of(new String[] {"3/4 x 9", "1x4", "5/4x10"}, new String[] {"2-1/4 x 1-1/2", "2x4", "2x6"})) {
            String plan = "plan: [{ name: r, left: square, right: square, stretches: [{ length: 90 }] }]\n"
                    + stock("", "of: " + block[1] + ", buy: 8'", "of: " + block[2] + ", buy: 8'");
            String drawn = "name: block, profile: board " + block[0] + ", back: wall, bottom: datum";
            Cutlist hidden = Cutlist.of(Cutlist.WALL + Bench.list(drawn + ", kind: nailer"), plan);
            assertThat(hidden.clean().cutList().sticks()).as(block[0]).hasSize(1);
            Cutlist seen = Cutlist.of(Cutlist.WALL + Bench.list(drawn), plan);
            assertThat(seen.said().code()).as("trim is cut as drawn").isEqualTo("glue-up");
        }
    }

    @Test
    void what_is_longer_than_any_stick_is_spliced_at_a_place_that_is_said() {
        Cutlist laid = Cutlist.boards("3/4 x 3-1/2", List.of("250"), stock("", "of: 1x4, buy: [12', 16']"));
        assertThat(laid.said().code()).isEqualTo("longer-than-any-stick");
        assertThat(laid.said().level()).as("it is solved").isEqualTo(Level.NOTE);
        assertThat(NoticeWords.INCHES.message(laid.said())).contains("is 250 long; the longest stick gives 192");
        // the stick of 192 ends 3/8 past the middle of a scarf of 3/4
        assertThat(NoticeWords.INCHES.cure(laid.said())).contains("scarf it, the middle 191-5/8 from its left end");
        assertThat(laid.said().amount().orElseThrow().amount()).isCloseTo(58, within(1e-9));
        List<Stick.LaidPiece> parts = laid.cutList().sticks().stream()
                .flatMap(stick -> stick.strips().get(0).pieces().stream())
                .toList();
        assertThat(parts.stream().mapToInt(lie -> lie.piece().length()).sum())
                .as("the parts lap by the thickness")
                .isEqualTo(250 * LengthSteps.PER_INCH + 3 * LengthSteps.PER_INCH / 4);
        assertThat(laid.cutList().joints()).containsEntry(EndJoint.SCARF, 1).containsEntry(EndJoint.SQUARE, 2);
    }

    /** Of 250 in, a stick of 192 leaves 58 to 191-1/4 for the joint: no stud lies there. */
    @Test
    void a_splice_that_no_stud_lies_behind_stays_a_problem() {
        String plan =
                "plan: [{ name: r, left: square, right: square, studs: [20, 230], stretches: [{ length: 250 }] }]\n";
        Cutlist laid = Cutlist.of(
                Cutlist.WALL + Bench.list("name: rail, profile: board 3/4 x 3-1/2, back: wall, bottom: datum"),
                plan + stock("", "of: 1x4, buy: 16'"));
        assertThat(laid.said().level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.cure(laid.said())).contains("over a block");
    }

    @Test
    void no_part_of_a_splice_is_too_short_to_reach_from_stud_to_stud() {
        Cutlist laid = Cutlist.boards("3/4 x 3-1/2", List.of("195"), stock("", "of: 1x4, buy: 16'"));
        assertThat(laid.cutList().sticks().stream()
                        .flatMap(stick -> stick.strips().get(0).pieces().stream())
                        .mapToInt(lie -> lie.piece().length()))
                .allMatch(length -> length >= 16 * LengthSteps.PER_INCH);
    }

    @Test
    void a_stick_that_is_hopelessly_short_is_not_spliced_with() {
        Cutlist laid = Cutlist.boards("3/4 x 3-1/2", List.of("90"), stock("", "of: 1x4, buy: 2"));
        assertThat(laid.said().code()).isEqualTo("longer-than-any-stick");
        assertThat(laid.said().level()).isEqualTo(Level.PROBLEM);
        assertThat(laid.cutList().without()).hasSize(1);
        assertThat(laid.cutList().sticks()).isEmpty();
    }

    /** Worked example G: 150.504 + 2 (0.1768 + 0.0625) + 2 x 1 = 152.98 fits a 14 ft stick. */
    @Test
    void grain_that_runs_round_takes_its_pieces_from_one_stick_in_their_order() {
        CutList list = Cutlist.of(CAP, CASE + stock("trim: 1", "of: board 3/4 x 6.6259, buy: [12', 14']"))
                .clean()
                .cutList();
        assertThat(lengths(list)).containsExactly(168);
        List<Stick.LaidPiece> lies = list.sticks().get(0).strips().get(0).pieces();
        assertThat(lies).extracting(lie -> lie.piece().stretch()).containsExactly("left side", "front", "right side");
        int taken = lies.get(2).to() + LengthSteps.PER_INCH;
        assertThat(LengthSteps.inches(taken))
                .as("three lengths and two gaps, each up to the next 64th")
                .isCloseTo(152.98, within(5.0 / 64));
        assertThat(LengthSteps.inches(lies.get(1).from() - lies.get(0).to()))
                .as("kerf x sqrt 2 + 1/16, up to the next 64th")
                .isCloseTo(0.1768 + 0.0625, within(1.0 / 64));
    }

    @Test
    void grain_that_no_stick_is_long_enough_for_breaks_at_a_corner_that_is_said() {
        Cutlist laid = Cutlist.of(CAP, CASE + stock("trim: 1", "of: board 3/4 x 6.6259, buy: [12']"));
        assertThat(laid.said().code()).isEqualTo("grain-broken");
        assertThat(NoticeWords.INCHES.message(laid.said()))
                .contains("from front to right side", "the longest gives 142");
        assertThat(laid.cutList().sticks()).hasSize(2);
    }

    @Test
    void joints_are_counted_and_priced() {
        CutList list = Cutlist.of(
                        CAP, CASE + stock("joints: { miter: 12.50, butt: 3 }", "of: board 3/4 x 6.6259, buy: 14'"))
                .clean()
                .cutList();
        assertThat(list.joints()).containsEntry(EndJoint.MITER, 2).containsEntry(EndJoint.BUTT, 2);
        assertThat(list.labor()).isEqualTo(2 * 1250 + 2 * 300);
        assertThat(list.feetWanted() * 12).isCloseTo(96 + 2 * 6.6259 + 2 * (14 + 6.6259), within(0.1));
    }

    @Test
    void a_molding_comes_from_sticks_of_its_own_profile_only() {
        String stack = Cutlist.WALL + Bench.list("name: crown, profile: plain-crown 3-1/4, back: wall, bottom: datum");
        String plan = "plan: [{ left: square, right: square, stretches: [{ length: 90 }] }]\n";
        Cutlist other = Cutlist.of(stack, plan + stock("", "of: plain-crown 4-1/4, buy: 8'", "of: 1x4, buy: 8'"));
        assertThat(other.said().code()).isEqualTo("no-stock");
        assertThat(NoticeWords.INCHES.cure(other.said())).contains("of: plain-crown 3-1/4");
        assertThat(other.cutList().without()).hasSize(1);
        Cutlist own = Cutlist.of(stack, plan + stock("", "of: plain-crown 3.25, buy: 8'"));
        assertThat(own.clean().cutList().sticks()).hasSize(1);
    }

    @Test
    void a_stick_of_another_wood_is_no_stock() {
        Cutlist laid = Cutlist.boards("3/4 x 3-1/2", List.of("90"), stock("", "of: 1x4, wood: red-oak, buy: 8'"));
        assertThat(NoticeWords.INCHES.message(laid.said()))
                .contains("no stick is listed for board 3/4 x 3-1/2 of yellow-poplar");
    }

    @Test
    void the_cheapest_cannot_be_had_without_prices_and_that_is_said() {
        Cutlist laid = Cutlist.boards("3/4 x 3-1/2", List.of("90"), stock("aim: cheapest", "of: 1x4, buy: 8'"));
        assertThat(laid.said().code()).isEqualTo("price-missing");
        assertThat(laid.cutList().lots().get(0).aim()).isEqualTo(Aim.FEWEST);
    }

    @Test
    void the_fewest_are_taken_against_the_price_when_that_is_asked() {
        CutList list = Cutlist.boards(
                        "3/4 x 3-1/2",
                        List.of("90", "90"),
                        stock("aim: fewest", "of: 1x4, buy: 8', price: 1, per: foot", "of: 1x4, buy: 16', price: 3"))
                .clean()
                .cutList();
        assertThat(list.sticks()).hasSize(1);
        assertThat(list.price()).isEqualTo(4800);
    }

    @Test
    void rests_long_enough_are_kept_and_the_waste_is_what_is_left() {
        CutList list = Cutlist.boards("3/4 x 3-1/2", List.of("60"), stock("offcut: 24", "of: 1x4, buy: 8'"))
                .clean()
                .cutList();
        BuyLine bill = list.bills().get(0);
        assertThat(bill.used()).isCloseTo(60.0 / 96, within(1e-9));
        assertThat(bill.kept()).isCloseTo((96 - 60.125) / 96, within(1e-9));
        assertThat(bill.wasted()).isCloseTo(0.125 / 96, within(1e-9));
    }
}
