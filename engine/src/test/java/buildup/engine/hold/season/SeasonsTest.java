package buildup.engine.hold.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.Sheets;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the seasons do to a stack. Coefficients of yellow-poplar: Wood Handbook Table 13-5, .00289 and .00158. */
class SeasonsTest {
    private static final String FRIEZE =
            "  - { name: frieze, profile: board 3/4 x 9-1/4, cut: flat, back: wall, bottom: datum }";
    private static final String NAIL = "  - { name: NAME, piece: frieze, use: 15 ga x 2-1/2, at: { up: AT } }";

    private static String nail(String name, String at) {
        return NAIL.replace("NAME", name).replace("AT", at);
    }

    @Test
    void a_flatsawn_frieze_moves_across_its_grain_and_by_how_it_is_sawn() {
        Lived flat = Lived.of("{ name: damp, moisture: 10 % }", "pieces:", FRIEZE);
        // 9.25 x .00289 x 3 points
        assertThat(flat.grown("frieze", "damp")).isEqualTo(0.0802, within(0.00005));
        Lived quartered =
                Lived.of("{ name: damp, moisture: 10 % }", "pieces:", FRIEZE.replace("cut: flat", "cut: quartered"));
        assertThat(quartered.grown("frieze", "damp")).isEqualTo(9.25 * 0.00158 * 3, within(1e-9));
        Lived mixed = Lived.of("{ name: damp, moisture: 10 % }", "pieces:", FRIEZE.replace("cut: flat, ", ""));
        assertThat(mixed.grown("frieze", "damp")).isEqualTo(9.25 * (0.00158 + 0.00289) / 2 * 3, within(1e-9));
        Lived along = Lived.of("{ name: damp, moisture: 10 % }", "pieces:", FRIEZE.replace("cut: flat", "grain: up"));
        assertThat(along.grown("frieze", "damp")).isZero();
    }

    @Test
    void a_leaning_stick_grows_along_its_back() {
        Lived lived = Lived.of(
                "{ name: damp, moisture: 10 % }",
                "pieces:", "  - { name: crown, profile: plain-crown 3-1/4, cut: flat, back: wall, bottom: datum }");
        Year year = lived.year();
        double up = lived.grown("crown", "damp");
        double out = year.movements().stream()
                .filter(one -> !one.up())
                .findFirst()
                .orElseThrow()
                .amount();
        double spring = Math.toRadians(38);
        // the strain of the width, turned by the spring, as each corner of the stick feels it; a and b are 1/4
        double width = 3 * 0.00289;
        double thick = 3 * 0.00158;
        double byHandUp = (width * Math.pow(Math.cos(spring), 2) + thick * Math.pow(Math.sin(spring), 2))
                        * (3.25 * Math.cos(spring) + 0.25 * Math.sin(spring))
                + (width - thick)
                        * Math.sin(spring)
                        * Math.cos(spring)
                        * (3.25 * Math.sin(spring) - 0.25 * Math.cos(spring));
        assertThat(up).isEqualTo(byHandUp, within(0.0005));
        assertThat(out).isPositive().isLessThan(up);
    }

    @Test
    void a_piece_moves_from_its_nails_and_takes_along_what_is_nailed_to_it() {
        Lived lived = Lived.of(
                "{ name: damp, moisture: 10 % }",
                "pieces:",
                FRIEZE,
                "  - { name: bed, profile: cove-bed 1-1/4 x 1-3/8, back: frieze.face, top: frieze.top }",
                "fastenings:",
                nail("low", "1"));
        assertThat(lived.how("frieze")).isEqualTo(Held.How.NAILED);
        assertThat(lived.how("bed")).isEqualTo(Held.How.RESTS);
        Year year = lived.year();
        double top = year.moved(1, lived.body("frieze"), new buildup.profiles.outline.Point(0, 9.25))
                .y();
        double foot = year.moved(1, lived.body("frieze"), new buildup.profiles.outline.Point(0, 0))
                .y();
        assertThat(top).isEqualTo(8.25 * 0.00289 * 3, within(1e-9));
        assertThat(foot).isEqualTo(-1 * 0.00289 * 3, within(1e-9));
        // the middle of the bed's back goes with the frieze behind it
        double bed = year.moved(1, lived.body("bed"), new buildup.profiles.outline.Point(0.75, 9.25 - 0.6875))
                .y();
        assertThat(bed).isEqualTo((9.25 - 0.6875 - 1) * 0.00289 * 3, within(1e-9));
    }

    @Test
    void a_reveal_that_is_too_small_closes_in_the_season_that_is_named() {
        // the ground stands still; the frieze, nailed 9 up, swells down over what shows of it
        String[] stack = {
            "pieces:",
            "  - { name: ground, grain: up, profile: board 3/4 x 10, back: wall, bottom: -1/16 }",
            FRIEZE.replace("back: wall", "back: ground.face"),
            "fastenings:",
            nail("high", "9")
        };
        Lived dry = Lived.of("{ name: dry, moisture: 6 % }", stack);
        assertThat(dry.effect("reveal of ground over frieze", "dry").amount()).isEqualTo(9 * 0.00289, within(1e-9));
        assertThat(dry.codes()).doesNotContain("reveal-closes");
        Lived damp = Lived.of("{ name: damp, moisture: 11 % }", stack);
        Effect closing = damp.effect("reveal of ground over frieze", "damp");
        assertThat(closing.amount()).isEqualTo(-4 * 9 * 0.00289, within(1e-9));
        assertThat(closing.left().orElseThrow()).isEqualTo(1.0 / 16 - 4 * 9 * 0.00289, within(1e-9));
        assertThat(damp.said("reveal-closes"))
                .contains("reveal of ground over frieze in damp")
                .contains("3/16 or more");
    }

    @Test
    void two_rows_that_hold_a_wide_board_split_it_and_one_row_lets_it_move() {
        Lived two = Lived.of(
                "{ name: dry, moisture: 4 % }",
                "pieces:", FRIEZE, "fastenings:", nail("low", "1"), nail("high", "8-1/4"));
        Effect between = two.effect("frieze between low and high", "dry");
        assertThat(between.amount())
                .isEqualTo(7.25 * Growth.share(0.00289, MoistureTest.season(7), MoistureTest.season(4)), within(1e-6));
        assertThat(two.said("nails-hold-against-movement"))
                .contains("shrinks")
                .contains("splits")
                .contains("low and high");
        Lived one = Lived.of("{ name: dry, moisture: 4 % }", "pieces:", FRIEZE, "fastenings:", nail("low", "1"));
        assertThat(one.codes()).doesNotContain("nails-hold-against-movement");
    }

    @Test
    void the_rows_that_split_a_board_are_told_by_their_names_whatever_the_board_is_called() {
        String stack = String.join("\n", "pieces:", FRIEZE, "fastenings:", nail("low", "1"), nail("high", "8-1/4"));
        String named = stack.replace("frieze", "board between rails");
        for (String document : List.of(stack, named)) {
            assertThat(Lived.of("{ name: dry, moisture: 4 % }", document).said("nails-hold-against-movement"))
                    .contains("low and high")
                    .doesNotContain("rails and")
                    .doesNotContain("rails between");
        }
    }

    @Test
    void a_panel_in_grooves_floats_and_one_that_fills_them_must_have_room() {
        // a rail as walked from its outer corner: a groove 1/4 wide and 1/2 deep in its upper edge, and one upside down
        String low =
                "  - { name: low rail, kind: framing, section: [out 3/4, up 2, in 1/4, down 1/2, in 1/4, up 1/2, in 1/4], back: wall, bottom: -2 }";
        String high =
                "  - { name: high rail, kind: framing, section: [out 3/4, up 2, in 1/4, down 1/2, in 1/4, up 1/2, in 1/4], flip: over, back: wall, bottom: 11 }";
        Lived tight = Lived.of(
                "{ name: damp, moisture: 11 % }",
                "pieces:",
                low,
                high,
                "  - { name: panel, profile: board 1/4 x 12, cut: flat, back: wall + 1/4, bottom: -1/2 }");
        assertThat(tight.how("panel")).isEqualTo(Held.How.FLOATS);
        assertThat(tight.said("no-room-to-swell")).contains("must float").contains("low rail and high rail");
        Lived loose = Lived.of(
                "{ name: damp, moisture: 11 % }",
                "pieces:",
                low,
                high,
                "  - { name: panel, profile: board 1/4 x 11-3/4, cut: flat, back: wall + 1/4, bottom: -3/8 }");
        assertThat(loose.codes()).doesNotContain("no-room-to-swell");
    }

    @Test
    void a_shelf_that_barely_bears_falls_short_in_the_dry() {
        String[] stack = {
            "pieces:",
            "  - { name: cleat, kind: framing, section: [out 1/16, up 1], back: wall, bottom: -1 }",
            "  - { name: post, kind: framing, section: [out 1, up 3], back: wall + 12, bottom: -3 }",
            "  - { name: shelf, fixed: post, profile: board 3/4 x 13, cut: flat, lay: flat, back: wall, bottom: datum }"
        };
        Lived dry = Lived.of("{ name: dry, moisture: 4.5 % }", stack);
        Effect bearing = dry.effect("bearing of shelf on cleat", "dry");
        assertThat(bearing.left().orElseThrow()).isNegative();
        assertThat(dry.said("bearing-falls-short")).contains("'shelf' no longer reaches 'cleat'");
        Lived damp = Lived.of("{ name: damp, moisture: 9 % }", stack);
        assertThat(damp.codes()).doesNotContain("bearing-falls-short");
    }

    @Test
    void an_outside_corner_opens_at_its_long_point_when_it_swells_and_at_its_short_point_when_it_shrinks() {
        String plan =
                "plan: [{ left: square, right: square, stretches: [{ name: front, length: 60, corner: outside 90 },"
                        + " { name: side, length: 40 }] }]";
        String cap = "  - { name: cap, profile: board 3/4 x 3-1/2, cut: flat, lay: flat, back: wall, bottom: datum }";
        Lived lived = Lived.of("{ name: damp, moisture: 11 % }; { name: dry, moisture: 6 % }", "pieces:", cap, plan);
        Effect swollen = lived.effect("miter of cap, right of front, outside (long point)", "damp");
        assertThat(swollen.amount()).isEqualTo(0.0572, within(0.0001));
        assertThat(swollen.seen()).isTrue();
        Effect shrunk = lived.effect("miter of cap, right of front, inside (short point)", "dry");
        assertThat(shrunk.amount()).isEqualTo(0.0143, within(0.0001));
        assertThat(shrunk.seen()).as("the wedge lies open on top").isTrue();
        // a block on it leaves only the front 1/2 of 3-1/2 open on top: the wedge is 1/7 as wide there
        Effect covered = Lived.of(
                        "{ name: damp, moisture: 11 % }; { name: dry, moisture: 6 % }",
                        "pieces:",
                        cap,
                        "  - { name: block, profile: board 2 x 3, lay: flat, back: wall, bottom: cap.top }",
                        "  - { name: under, profile: board 3-1/2 x 3, back: wall, top: cap.bottom }",
                        plan)
                .effect("miter of cap, right of front, inside (short point)", "dry");
        assertThat(covered.seen()).isFalse();
        assertThat(covered.amount()).as("at its point").isEqualTo(0.0143, within(0.0001));
        Lived inside =
                Lived.of("{ name: dry, moisture: 2 % }", "pieces:", cap, plan.replace("outside 90", "inside 90"));
        assertThat(inside.effect("miter of cap, right of front, inside (short point)", "dry")
                        .seen())
                .isTrue();
        assertThat(inside.said("joint-opens")).contains("inside (short point)");
    }

    /**
     * Red oak sawn flat, .00369 (Wood Handbook, FPL-GTR-190, Table 13-5), 4-1/2 wide, dried from 7 to 3 %: .0664, times the
     * square root of 2 at a corner of 90 degrees. Round an opening the miter runs across the face.
     */
    @Test
    void the_miter_of_a_wide_casing_round_a_door_opens_in_sight() {
        Lived casing = Lived.of(
                "{ name: winter, moisture: 3 % }",
                "pieces:",
                "  - { name: casing, wood: red-oak, profile: board 3/4 x 4-1/2, cut: flat, back: wall, bottom: datum }",
                "plan: [{ around: opening, left: square, right: square, stretches: [{ name: leg, length: 80, corner:"
                        + " outside 90 }, { name: head, length: 30 }] }]");
        Effect winter = casing.effect("miter of casing, right of leg, inside (short point)", "winter");
        assertThat(winter.amount()).isEqualTo(0.00369 * 4 * 4.5 * Math.sqrt(2), within(0.002));
        assertThat(winter.seen()).isTrue();
        assertThat(casing.said("joint-opens")).contains("miter of casing", "inside (short point)");
    }

    /**
     * A shelf of red oak 4-1/2 wide that swells 4 points moves .0664 across when sawn flat, .0284 when quartersawn (Wood
     * Handbook, FPL-GTR-190, Table 13-5: .00369 and .00158); its miter opens by the square root of 2 of that, .094 and .040,
     * and 1/16 is too much. Copes are cut at inside corners alone: common practice, no source.
     */
    @Test
    void a_miter_that_opens_is_offered_what_helps_at_its_corner() {
        assertThat(mitered("red-oak", "flat", "outside", "4-1/2"))
                .isEqualTo("Take quartersawn stock for 'shelf': 'cut: quartered'.");
        assertThat(mitered("red-oak", "flat", "inside", "4-1/2"))
                .isEqualTo("Take quartersawn stock for 'shelf': 'cut: quartered'.");
        // 10 wide .0894 remain; it is quartersawn already; mdf has no rings
        for (List<String> wide : List.of(
                List.of("red-oak", "flat", "10"), List.of("red-oak", "quartered", "10"), List.of("mdf", "", "14"))) {
            assertThat(mitered(wide.get(0), wide.get(1), "outside", wide.get(2)))
                    .isEqualTo("Build the width of 'shelf' up from narrower pieces.");
            assertThat(mitered(wide.get(0), wide.get(1), "inside", wide.get(2)))
                    .isEqualTo("Cope that inside corner, or build the width of 'shelf' up from narrower pieces.");
        }
    }

    private static String mitered(String wood, String cut, String corner, String width) {
        String said = Lived.of(
                        "{ name: damp, moisture: 11 % }",
                        "pieces:",
                        "  - { name: shelf, wood: " + wood + (cut.isEmpty() ? "" : ", cut: " + cut)
                                + ", profile: board 3/4 x " + width + ", lay: flat, back: wall, bottom: datum }",
                        "plan: [{ left: square, right: square, stretches: [{ name: front, length: 60, corner: " + corner
                                + " 90 }, { name: side, length: 60 }] }]")
                .said("joint-opens");
        return said.substring(said.indexOf("standard). ") + "standard). ".length());
    }

    @Test
    void panels_have_their_own_and_woods_that_are_not_listed_are_asked_for() {
        Lived panel = Lived.of("{ name: damp, moisture: 10 % }", "pieces:", FRIEZE.replace("cut: flat", "wood: mdf"));
        assertThat(panel.grown("frieze", "damp")).isEqualTo(9.25 * 0.0009 * 3, within(1e-9));
        Lived plywood =
                Lived.of("{ name: damp, moisture: 10 % }", "pieces:", FRIEZE.replace("cut: flat", "wood: plywood"));
        assertThat(plywood.grown("frieze", "damp")).isPositive().isLessThan(9.25 * 0.0003 * 3);
        Lived unknown =
                Lived.of("{ name: damp, moisture: 10 % }", "pieces:", FRIEZE.replace("cut: flat", "wood: slash-pine"));
        assertThat(unknown.grown("frieze", "damp")).isZero();
        assertThat(unknown.said("no-coefficient")).contains("slash-pine");
        assertThat(ruling(unknown).answer()).isEqualTo(Ruling.Reply.TRUST);
    }

    private static Ruling ruling(Lived lived) {
        return lived.known().verdict().rulings().stream()
                .filter(one -> one.topic() == Topic.SEASON)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_verdict_is_yes_look_or_no_by_what_moves_in_sight() {
        String small = "  - { name: bead, profile: board 1 x 3/4, back: wall, bottom: datum }";
        assertThat(ruling(Lived.of("{ name: damp, moisture: 10 % }", "pieces:", small))
                        .answer())
                .isEqualTo(Ruling.Reply.YES);
        Lived sliding = Lived.of(
                "{ name: damp, moisture: 8 % }",
                "pieces:",
                "  - { name: ground, grain: up, profile: board 3/4 x 10, back: wall, bottom: -1/8 }",
                FRIEZE.replace("back: wall", "back: ground.face"),
                "fastenings:",
                nail("high", "9"));
        assertThat(ruling(sliding).answer()).isEqualTo(Ruling.Reply.LOOK);
        assertThat(ruling(sliding).figure().orElseThrow().amount()).isEqualTo(9 * 0.00289, within(1e-9));
        Lived split = Lived.of(
                "{ name: dry, moisture: 4 % }",
                "pieces:", FRIEZE, "fastenings:", nail("low", "1"), nail("high", "8-1/4"));
        assertThat(ruling(split).answer()).isEqualTo(Ruling.Reply.NO);
        assertThat(ruling(split).cure()).isPresent();
    }

    @Test
    void what_moves_can_be_held_under_must_and_stands_in_the_sheets() {
        Lived lived = Lived.of(
                "{ name: damp, moisture: 10 % }",
                "pieces:",
                FRIEZE,
                "must:",
                "  - movement of frieze in damp <= 1/16",
                "  - opens of room under the ceiling in damp >= -1/8",
                "  - moisture of the wood of damp <= 12");
        assertThat(lived.known().must()).extracting(met -> met.met()).containsExactly(false, true, true);
        assertThat(Sheets.of(lived.known()))
                .extracting(sheet -> sheet.key())
                .contains("season", "movements", "openings");
    }

    @Test
    void a_year_that_cannot_be_is_refused_and_one_beyond_the_coefficients_is_said() {
        String[] refused = {
            "{ name: x, temperature: 68 F, humidity: 120 % }",
            "{ name: x, temperature: 68 F }",
            "{ name: x }",
            "{ name: x, moisture: 8 %, temperature: 68 F, humidity: 40 % }",
            "{ name: x, moisture: 45 % }",
            "{ name: x, moisture: wet }",
            "{ name: x, temperature: 500 C, humidity: 40 % }"
        };
        for (String season : refused) {
            Lived lived = Lived.of(season, "pieces:", FRIEZE);
            assertThat(lived.codes()).as(season).contains("not-a-season");
        }
        assertThat(Lived.of("{ name: built, moisture: 9 % }", "pieces:", FRIEZE).codes())
                .contains("same-name-twice");
        Lived dry = Lived.of("{ name: winter, temperature: 68 F, humidity: 25 % }", "pieces:", FRIEZE);
        assertThat(dry.said("moisture-out-of-range")).contains("5.4 %").contains("30 %");
        Lived metric = Lived.read("units: mm\nwood: yellow-poplar\nspace: { wall: { solid: yes } }\nseasons:\n"
                + "  - { name: built, moisture: 7 }\n  - { name: damp, temperature: 20, humidity: 50 }\n"
                + "pieces:\n  - { name: frieze, profile: board 19 x 235, cut: flat, back: wall, bottom: datum }\n");
        assertThat(metric.year().seasons().get(1).moisture()).isEqualTo(9.271, within(0.001));
        assertThat(metric.grown("frieze", "damp")).isEqualTo(235 / 25.4 * 0.00289 * 2.271, within(0.0001));
    }

    @Test
    void one_season_alone_moves_nothing_and_none_asks_nothing() {
        Lived none = Lived.read("wood: yellow-poplar\nspace: { wall: { solid: yes } }\npieces:\n" + FRIEZE + "\n");
        assertThat(none.year().asked()).isFalse();
        Lived one = Lived.read(
                "wood: yellow-poplar\nspace: { wall: { solid: yes } }\nseasons: [{ name: built, moisture: 8 % }]\npieces:\n"
                        + FRIEZE + "\n");
        assertThat(one.codes()).contains("one-season");
        assertThat(one.year().asked()).isFalse();
    }

    /**
     * A panel of 14 in flat-sawn white oak, nailed 1 over its lower edge: 13 x 0.00365 x 4 = 0.19 of the joint over it is the
     * panel's, and 0.02 the rail's (change per percent: Wood Handbook, FPL-GTR-190, Table 13-5). Nailed midway, half of that.
     */
    @Test
    void the_piece_that_opens_a_joint_is_the_one_whose_nails_move() {
        String text = """
                title: panel
                wood: white-oak
                space: { floor: -30, wall: { solid: no } }
                eyes: [{ name: standing, distance: 40, height: 20 }]
                pieces:
                  - { name: case, kind: framing, section: [out 1, up 40], face: wall, top: 30 }
                  - { name: low rail, profile: board 3/4 x 3, back: wall, top: datum }
                  - { name: panel, profile: board 3/4 x 14, cut: flat, back: wall, bottom: low rail.top }
                  - { name: top rail, profile: board 3/4 x 3, back: wall, bottom: panel.top }
                fastenings:
                  - { name: lr, piece: low rail, use: 16 ga x 1-1/2, at: { up: -1-1/2 } }
                  - { name: pn, piece: panel, use: 16 ga x 1-1/2, at: { up: 1 } }
                  - { name: tr, piece: top rail, use: 16 ga x 1-1/2, at: { up: 15-1/2 } }
                seasons:
                  - { name: now, moisture: 9 % }
                  - { name: winter, moisture: 5 % }
                """;
        assertThat(Answered.cure(text, Topic.SEASON))
                .isEqualTo("Drive 'pn' at 7 up, midway, so that either edge of 'panel' moves by half. [tried]");
        String driven = text.replace("at: { up: 1 }", "at: { up: 7 }");
        assertThat(Answered.row(driven, Topic.SEASON).answer()).isNotEqualTo(Ruling.Reply.NO);
        String wide = text.replace("3/4 x 14", "3/4 x 24").replace("15-1/2", "25-1/2");
        assertThat(Answered.cure(wide, Topic.SEASON))
                .isEqualTo("Let a molding lap that joint, or take narrower or quartersawn stock for 'panel'.");
        // what is quartersawn already can be taken no slower
        assertThat(Answered.cure(
                        wide.replace("cut: flat", "cut: quartered")
                                .replace("3/4 x 24", "3/4 x 40")
                                .replace("25-1/2", "41-1/2")
                                .replace("up 40], face: wall, top: 30", "up 60], face: wall, top: 50"),
                        Topic.SEASON))
                .isEqualTo("Let a molding lap that joint, or take narrower stock for 'panel'.");
    }
}
