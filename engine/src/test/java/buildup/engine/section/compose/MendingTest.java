package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Box;
import buildup.shared.figure.Figure;
import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Changes of a stack, and the document that they leave; where pieces then sit is worked by hand. */
class MendingTest {
    private static final String LOW = "name: low, profile: board 3/4 x 4, back: 0, bottom: 0";
    private static final String HIGH = "name: high, profile: board 3/4 x 3, back: low.back, bottom: low.top";
    private static final String SHELF = "name: shelf, profile: board 3/4 x 6, lay: flat, back: 0, bottom: high.top";
    private static final String RIPPED =
            "name: ripped, profile: board 3/4 x 6, lay: flat, back: 0, face: 4, bottom: high.top";

    private static Mending stack(String... pieces) {
        return Mending.of(Bench.loose(pieces).stack());
    }

    private static Figure told(double inches) {
        return Figure.length(inches);
    }

    private static List<String> typed(Mending mending) {
        return mending.changes().stream()
                .map(change -> change.place() + " = " + change.typed(LengthUnit.INCH))
                .toList();
    }

    private static Box box(Mending mending, String piece) {
        Section section = mending.section().orElseThrow();
        return section.body(section.number(piece).orElseThrow()).outline().box();
    }

    @Test
    void what_is_placed_on_a_piece_that_moves_goes_with_it() {
        Mending up = stack(LOW, HIGH).moved("low", Axis.UP, 1.5, told(1.5)).orElseThrow();
        assertThat(typed(up)).containsExactly("pieces.low.bottom = 0 + 1-1/2");
        assertThat(box(up, "low").bottom()).isEqualTo(1.5, within(1e-9));
        assertThat(box(up, "high").top()).isEqualTo(8.5, within(1e-9));
        Mending back =
                stack(LOW, HIGH).moved("high", Axis.OUT, -0.25, told(0.25)).orElseThrow();
        assertThat(typed(back)).containsExactly("pieces.high.back = low.back - 1/4");
        assertThat(box(back, "high").back()).isEqualTo(-0.25, within(1e-9));
        assertThat(box(back, "low").back()).isEqualTo(0, within(1e-9));
    }

    @Test
    void one_change_after_another_stands_in_one_line() {
        Mending twice = stack(LOW, HIGH)
                .moved("low", Axis.UP, 1, told(1))
                .flatMap(once -> once.moved("low", Axis.UP, -0.25, told(0.25)))
                .flatMap(once -> once.moved("high", Axis.UP, 2, told(2)))
                .orElseThrow();
        assertThat(typed(twice)).containsExactly("pieces.low.bottom = 0 + 1 - 1/4", "pieces.high.bottom = low.top + 2");
        assertThat(box(twice, "high").bottom()).isEqualTo(6.75, within(1e-9));
    }

    @Test
    void an_edge_is_put_in_the_place_of_the_rule_that_places_it_and_of_no_other() {
        Mending put =
                stack(LOW, HIGH).placed("high", Axis.UP, false, 5, told(5)).orElseThrow();
        assertThat(typed(put)).containsExactly("pieces.high.bottom = 5");
        assertThat(box(put, "high").bottom()).isEqualTo(5, within(1e-9));
        assertThat(stack(LOW, HIGH).placed("high", Axis.UP, true, 5, told(5))).isEmpty();
        assertThat(stack(LOW, HIGH).placed("none", Axis.UP, false, 5, told(5))).isEmpty();
    }

    @Test
    void a_piece_between_two_rules_is_ripped_on_the_side_that_is_asked_and_any_other_not() {
        Mending face = stack(LOW, HIGH, RIPPED)
                .ripped("ripped", Axis.OUT, true, 0.5, told(0.5))
                .orElseThrow();
        assertThat(typed(face)).containsExactly("pieces.ripped.face = 4 - 1/2");
        assertThat(box(face, "ripped").face()).isEqualTo(3.5, within(1e-9));
        Mending back = stack(LOW, HIGH, RIPPED)
                .ripped("ripped", Axis.OUT, false, 0.5, told(0.5))
                .orElseThrow();
        assertThat(typed(back)).containsExactly("pieces.ripped.back = 0 + 1/2");
        assertThat(box(back, "ripped").back()).isEqualTo(0.5, within(1e-9));
        assertThat(stack(LOW, HIGH, RIPPED).ripped("ripped", Axis.UP, true, 0.5, told(0.5)))
                .isEmpty();
        assertThat(stack(LOW, HIGH, SHELF).ripped("shelf", Axis.OUT, true, 0.5, told(0.5)))
                .isEmpty();
    }

    @Test
    void a_board_in_another_width_grows_across_its_grain() {
        Mending upright = stack(LOW, HIGH, SHELF).wide("low", 3, told(3)).orElseThrow();
        assertThat(typed(upright)).containsExactly("pieces.low.profile = board 3/4 x 3");
        assertThat(box(upright, "low").height()).isEqualTo(3, within(1e-9));
        assertThat(box(upright, "low").width()).isEqualTo(0.75, within(1e-9));
        assertThat(box(upright, "shelf").bottom()).isEqualTo(6, within(1e-9));
        Mending lying = stack(LOW, HIGH, SHELF).wide("shelf", 5, told(5)).orElseThrow();
        assertThat(box(lying, "shelf").width()).isEqualTo(5, within(1e-9));
        assertThat(box(lying, "shelf").height()).isEqualTo(0.75, within(1e-9));
    }

    @Test
    void what_is_ripped_to_fit_cut_before_or_no_board_has_no_other_width() {
        assertThat(stack(LOW, HIGH, RIPPED).wide("ripped", 3, told(3))).isEmpty();
        String upright = "name: f, profile: board 3/4 x 6, back: 0, bottom: 0, top: 4";
        assertThat(stack(upright).wide("f", 3, told(3))).isEmpty();
        assertThat(stack(LOW.replace("back", "rip: { top: 1/4 }, back")).wide("low", 3, told(3)))
                .isEmpty();
        assertThat(stack("name: bed, profile: check-bed 1-1/4 x 1-3/8, back: 0, bottom: 0")
                        .wide("bed", 3, told(3)))
                .isEmpty();
    }

    /** A board that is set between two heights only is ripped in its width when it stands, and not when it lies. */
    @Test
    void a_lying_board_keeps_its_width_free_whatever_places_its_thickness() {
        Optional<Mending> wide = stack("name: f, profile: board 3/4 x 6, lay: flat, back: 0, bottom: 0, top: 5/8")
                .wide("f", 3, told(3));
        assertThat(wide).isPresent();
        assertThat(box(wide.orElseThrow(), "f").width()).isEqualTo(3, within(1e-9));
        assertThat(box(wide.orElseThrow(), "f").height()).isEqualTo(0.625, within(1e-9));
    }

    @Test
    void the_whole_stack_moves_by_the_rules_that_leave_it() {
        Mending all = stack(
                        "name: case, kind: framing, section: [out 3, up 4], back: -3, bottom: 0",
                        LOW.replace("bottom: 0", "bottom: case.bottom + 1/2"),
                        HIGH,
                        "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: low.face, bottom: 2")
                .wholeMoved(Axis.UP, -0.5, told(0.5))
                .orElseThrow();
        assertThat(typed(all))
                .containsExactly("pieces.low.bottom = case.bottom + 1/2 - 1/2", "pieces.bed.bottom = 2 - 1/2");
        assertThat(box(all, "case").bottom()).isEqualTo(0, within(1e-9));
        assertThat(box(all, "high").bottom()).isEqualTo(4, within(1e-9));
        assertThat(stack(
                                "name: case, kind: framing, section: [out 3, up 4], back: 0, bottom: 0",
                                "name: low, profile: board 3/4 x 4, back: 0, bottom: touch")
                        .wholeMoved(Axis.UP, -0.5, told(0.5)))
                .as("all of it goes where it touches")
                .isEmpty();
    }

    @Test
    void a_piece_that_its_member_places_moves_by_that_rule_on_its_own_axis_alone() {
        Mending band = stack("name: band, profile: check-backband 1-1/4 x 2, back: 0, at: { shoulder: 2 }");
        Mending up = band.moved("band", Axis.UP, 1, told(1)).orElseThrow();
        assertThat(typed(up)).containsExactly("pieces.band.at.shoulder = 2 + 1");
        assertThat(box(up, "band").bottom()).isEqualTo(box(band, "band").bottom() + 1, within(1e-9));
        Mending out = band.moved("band", Axis.OUT, 1, told(1)).orElseThrow();
        assertThat(typed(out)).containsExactly("pieces.band.back = 0 + 1");
        assertThat(box(out, "band").bottom()).isEqualTo(box(band, "band").bottom(), within(1e-9));
    }

    @Test
    void a_change_after_which_a_piece_has_no_place_makes_no_section() {
        Mending mending = stack(LOW, HIGH);
        assertThat(mending.section()).isPresent();
        assertThat(mending.moved("none", Axis.UP, 1, told(1))).isEmpty();
    }
}
