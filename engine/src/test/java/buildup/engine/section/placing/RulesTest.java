package buildup.engine.section.placing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.profiles.outline.Box;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Where rules put a piece. The figures are sums of the sizes in each test. */
class RulesTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static final String FRIEZE = "name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum";

    /** The box of {@code cap}, given its rules, in a room 96 high with the datum 84 over the floor. */
    private static Box cap(String rules) {
        return Bench.in(
                        "{ floor: -84, ceiling: 12, wall: { solid: no } }",
                        FRIEZE,
                        "name: cap, profile: board 3/4 x 3, " + rules)
                .box("cap");
    }

    private static void sits(Box box, double back, double bottom) {
        assertThat(box.back()).isCloseTo(back, EXACT);
        assertThat(box.bottom()).isCloseTo(bottom, EXACT);
    }

    @Test
    void a_plain_length_is_measured_from_the_wall_plane_and_from_the_datum() {
        sits(cap("back: 1/4, bottom: 2"), 0.25, 2);
        sits(cap("face: 1, top: 2"), 0.25, -1);
        sits(cap("back: -14, bottom: -84"), -14, -84);
    }

    @Test
    void wall_floor_ceiling_and_datum_are_places() {
        sits(cap("back: wall, bottom: floor"), 0, -84);
        sits(cap("back: wall + 1/8, top: ceiling"), 0.125, 9);
        sits(cap("face: wall, bottom: datum - 1/2"), -0.75, -0.5);
        sits(cap("back: wall, top: ceiling - 1/4 - 1/8"), 0, 8.625);
    }

    @Test
    void all_four_edges_of_a_piece_are_places_on_their_axis() {
        sits(cap("back: frieze.face, bottom: frieze.top"), 0.75, 5.5);
        sits(cap("face: frieze.back, top: frieze.bottom"), -0.75, -3);
        sits(cap("back: frieze.back, bottom: frieze.bottom"), 0, 0);
        sits(cap("face: frieze.face, top: frieze.top"), 0, 2.5);
    }

    @Test
    void lengths_are_added_and_taken_off_and_may_stand_before_the_place() {
        sits(cap("back: frieze.face + 1/4 - 1/16, bottom: 1/2 + frieze.top"), 0.9375, 6);
    }

    @Test
    void a_named_length_stands_wherever_a_length_stands() {
        Bench bench = Bench.sound("""
                wood: check-wood
                sizes: { lip: 1/4, lap: lip + 1/4, thick: 3/4 }
                space: { wall: { solid: no } }
                pieces:
                  - { name: frieze, profile: board thick x 5-1/2, back: lip, bottom: datum }
                  - { name: cap, profile: board 3/4 x 3, back: frieze.face - lip, bottom: frieze.top + 1/2 of lap }
                """);
        sits(bench.box("frieze"), 0.25, 0);
        assertThat(bench.box("frieze").width()).isEqualTo(0.75);
        sits(bench.box("cap"), 0.75, 5.75);
        assertThat(bench.stack().lengths().read("lap")).isNotNull();
    }

    @Test
    void a_rule_may_name_a_piece_that_is_put_up_later() {
        Bench bench = Bench.loose(
                "name: block, kind: nailer, section: [out 1, up 2], face: fascia.back, top: crown.top",
                "name: fascia, profile: board 3/4 x 2, back: 3, bottom: 4",
                "name: crown, profile: check-crown-edged 9/16 x 3-1/4, back: fascia.face, bottom: fascia.top - 1/2");
        assertThat(bench.box("block").face()).isCloseTo(3, EXACT);
        assertThat(bench.box("block").top()).isCloseTo(bench.box("crown").top(), EXACT);
    }

    @Test
    void the_two_axes_of_two_pieces_may_lean_on_each_other() {
        Bench bench = Bench.loose(
                "name: one, profile: board 3/4 x 2, back: other.face, bottom: datum",
                "name: other, profile: board 3/4 x 2, back: wall, bottom: one.top");
        sits(bench.box("one"), 0.75, 0);
        sits(bench.box("other"), 0, 2);
    }

    @Test
    void a_straight_member_of_another_piece_is_an_edge() {
        Bench bench = Bench.loose(
                "name: band, profile: check-backband 1-5/8 x 1-1/2, back: wall, bottom: datum",
                "name: casing, profile: board 3/4 x 3-1/2, back: wall, top: band.shoulder",
                "name: bead, profile: board 1/4 x 1/4, back: band.lip-back, top: band.lip-bottom");
        assertThat(bench.box("casing").top()).isCloseTo(0.375, EXACT);
        sits(bench.box("bead"), 0.75, -0.25);
    }

    @Test
    void a_piece_may_be_placed_by_a_straight_member_of_its_own() {
        Bench bench = Bench.loose(
                "name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: datum",
                "name: band, profile: check-backband 1-5/8 x 1-1/2, at: { shoulder: casing.top, lip-back: casing.face }");
        sits(bench.box("band"), 0, 3.125);
    }

    @Test
    void at_takes_lengths_places_and_the_four_edges_too() {
        sits(cap("at: { face: wall + 2, top: ceiling }"), 1.25, 9);
        sits(cap("at: { back: 1 }, bottom: 2"), 1, 2);
    }

    @Test
    void the_edges_of_a_laid_or_turned_board_are_those_of_the_board_as_it_sits() {
        Bench bench = Bench.loose(
                "name: shelf, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: datum",
                "name: post, profile: board 3/4 x 5-1/2, turn: 90, back: shelf.face, bottom: shelf.top");
        assertThat(bench.box("shelf").face()).isCloseTo(5.5, EXACT);
        sits(bench.box("post"), 5.5, 0.75);
        assertThat(bench.box("post").width()).isCloseTo(5.5, EXACT);
        assertThat(bench.piece("post").outline().straights("top"))
                .singleElement()
                .satisfies(top -> assertThat(top.length()).isCloseTo(5.5, EXACT));
    }

    @Test
    void a_name_may_hold_blanks_and_letters_of_any_script() {
        Bench bench = Bench.loose(
                "name: upper frieze board, profile: board 3/4 x 2, back: wall, bottom: datum",
                "name: Фриз 上, profile: board 3/4 x 2, back: upper frieze board.face, bottom: upper frieze board.top",
                "name: Gesims-Ä, profile: board 3/4 x 2, back: Фриз 上.face - 1/4, bottom: Фриз 上.top");
        sits(bench.box("Gesims-Ä"), 1.25, 4);
    }

    @Test
    void blanks_and_dashes_in_a_name_are_read_as_in_the_rule_that_calls_it() {
        Bench bench = Bench.loose(
                "name: bed\u2013mold  one, profile: board 3/4 x 2, back: wall, bottom: datum",
                "name: cap, profile: board 3/4 x 2, back: wall, bottom: bed\u2013mold one.top");
        sits(bench.box("cap"), 0, 2);
    }

    @Test
    void a_file_in_millimeters_gives_the_section_of_the_same_file_in_inches() {
        String inches = """
                wood: check-wood
                space: { floor: -80, ceiling: 10, wall: { solid: no } }
                pieces:
                  - { name: frieze, profile: board 0.75 x 5.5, back: wall, bottom: 1 }
                  - { name: bed, profile: check-bed 1.25 x 1.375, back: frieze.face, top: frieze.top }
                  - { name: cap, profile: board 0.75 x 3.5, lay: flat, back: wall, face: 3, bottom: frieze.top }
                """;
        String millimeters = """
                units: mm
                wood: check-wood
                space: { floor: -2032, ceiling: 254, wall: { solid: no } }
                pieces:
                  - { name: frieze, profile: board 19.05 x 139.7, back: wall, bottom: 25.4 }
                  - { name: bed, profile: check-bed 31.75 x 34.925, back: frieze.face, top: frieze.top }
                  - { name: cap, profile: board 19.05 x 88.9, lay: flat, back: wall, face: 76.2, bottom: 165.1 }
                """;
        Bench metric = Bench.sound(millimeters);
        Bench imperial = Bench.sound(inches);
        assertThat(metric.walk()).isEqualTo(imperial.walk());
        assertThat(metric.contacts()).isEqualTo(imperial.contacts());
        assertThat(metric.reveals()).isEqualTo(imperial.reveals());
        assertThat(metric.section().totals().area())
                .isCloseTo(imperial.section().totals().area(), within(1e-9));
        assertThat(metric.section().ceilingLeft())
                .hasValueCloseTo(imperial.section().ceilingLeft().orElseThrow(), within(1e-9));
    }

    @Test
    void every_spelling_of_a_length_is_the_same_place() {
        for (String length : new String[] {"1-3/8", "1 3/8", "1.375", "34.925 mm", "'1-3/8\"'", "1⅜"}) {
            sits(cap("back: " + length + ", bottom: 1'-0"), 1.375, 12);
        }
    }

    @Test
    void five_hundred_pieces_each_placed_on_the_next_are_resolved() {
        String[] pieces = new String[500];
        for (int i = 0; i < 500; i++) {
            String bottom = i == 499 ? "datum" : "p" + (i + 1) + ".top";
            pieces[i] = "name: p" + i + ", profile: board 3/4 x 1/4, back: wall, bottom: " + bottom;
        }
        Bench bench = Bench.loose(pieces);
        assertThat(bench.box("p0").top()).isCloseTo(125, EXACT);
        assertThat(bench.section().totals().area()).isCloseTo(500 * 0.75 * 0.25, within(1e-6));
    }
}
