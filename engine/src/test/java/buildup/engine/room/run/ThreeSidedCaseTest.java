package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.run.Saw.Hand;
import buildup.shared.figure.FigurePrinter;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths round a three-sided case, reference/round-the-corner.md: this project's own arithmetic. */
class ThreeSidedCaseTest {
    private static final Offset<Double> NEAR = within(0.0006);
    private static final Planned CASE = Planned.clean(Planned.CORNICE, Planned.CASE);

    @ParameterizedTest
    @CsvSource({
        "bead, 98.000, 15.000, 128.000",
        "frieze, 97.500, 14.750, 127.000",
        "bed, 100.000, 16.000, 132.000",
        "fascia, 104.500, 18.250, 141.000",
        "crown, 108.502, 20.251, 149.004",
        "cap, 109.252, 20.626, 150.504"
    })
    void every_course_is_as_long_as_the_example_has_it(String course, double front, double side, double sum) {
        assertThat(CASE.fit(course, "front").faceLength()).isCloseTo(front, NEAR);
        assertThat(CASE.fit(course, "left side").faceLength()).isCloseTo(side, NEAR);
        assertThat(CASE.fit(course, "right side").faceLength()).isCloseTo(side, NEAR);
        assertThat(CASE.sum(course)).isCloseTo(sum, NEAR);
        assertThat(CASE.cut(course, "front").length()).isCloseTo(front, NEAR);
    }

    @Test
    void the_cap_reaches_further_round_a_sharp_corner_and_less_far_round_a_blunt_one() {
        Planned off = Planned.clean(
                Planned.CORNICE,
                Planned.CASE
                        .replace("length: 14, corner: outside 90", "length: 14, corner: outside 89")
                        .replace("length: 96, corner: outside 90", "length: 96, corner: outside 91.5"));
        Fit front = off.fit("cap", "front");
        assertThat(front.leftMeeting().past(front.course().face())).isCloseTo(6.743, NEAR);
        assertThat(front.rightMeeting().past(front.course().face())).isCloseTo(6.455, NEAR);
        assertThat(front.faceLength()).isCloseTo(96 + 6.743 + 6.455, within(0.001));
        assertThat(front.fromSquare()).isCloseTo(6.743 + 6.455 - 2 * 6.6259, within(0.001));
        // two cuts of 45 degrees on a miter of 6.6259 sqrt 2 in plan, one degree apart
        assertThat(front.gape(Hand.LEFT)).isCloseTo(6.6259 * Math.sqrt(2) * Math.toRadians(1), NEAR);
        assertThat(front.gape(Hand.RIGHT)).isCloseTo(6.6259 * Math.sqrt(2) * Math.toRadians(1.5), NEAR);
        assertThat(CASE.fit("cap", "front").gape(Hand.LEFT)).isZero();
        assertThat(CASE.fit("cap", "front").fromSquare()).isZero();
    }

    @Test
    void the_back_of_the_bed_is_as_long_as_the_face_of_the_frieze_that_it_lies_on() {
        assertThat(CASE.fit("bed", "front").backLength()).isCloseTo(97.5, within(1e-9));
        assertThat(CASE.fit("bed", "front").shortPoint()).isCloseTo(97.5, within(1e-9));
        assertThat(CASE.fit("bed", "front").longPoint()).isCloseTo(100, within(1e-9));
        assertThat(CASE.fit("bed", "front").heel(Hand.LEFT)).isCloseTo(1.25, within(1e-9));
        assertThat(CASE.fit("bed", "left side").heel(Hand.LEFT)).isZero();
    }

    @Test
    void the_crown_is_cut_at_the_setting_that_the_trade_knows_and_the_boards_as_they_lie() {
        Cut crown = CASE.cut("crown", "front");
        assertThat(crown.left().kind()).isEqualTo(EndCut.Kind.MITER);
        assertThat(crown.left().corner()).isEqualTo(90);
        // 31.62 / 33.86: known to the trade for 38 degrees and a square corner, seen in two places
        assertThat(crown.left().miter()).isCloseTo(31.62, within(0.005));
        assertThat(crown.left().bevel()).isCloseTo(33.86, within(0.005));
        assertThat(FigurePrinter.INCHES.print(crown.right().words()))
                .startsWith("flat, face up, bottom edge at the fence; miter 31.6° left");
        assertThat(FigurePrinter.INCHES.print(crown.stock())).isEqualTo("check-crown 9/16 x 3-1/4");
        assertThat(crown.thickness()).isEqualTo(0.5625);
        assertThat(crown.width()).isEqualTo(3.25);
        Cut cap = CASE.cut("cap", "front");
        assertThat(cap.left().miter()).isCloseTo(45, within(1e-9));
        assertThat(cap.left().bevel()).isCloseTo(0, within(1e-9));
        assertThat(FigurePrinter.INCHES.print(cap.stock())).isEqualTo("board 3/4 x 6-5/8+");
        Cut frieze = CASE.cut("frieze", "front");
        assertThat(frieze.left().miter()).isCloseTo(0, within(1e-9));
        assertThat(frieze.left().bevel()).isCloseTo(45, within(1e-9));
        assertThat(FigurePrinter.INCHES.print(frieze.left().words()))
                .startsWith("upright, back at the fence; miter 45°");
    }

    @Test
    void a_return_that_dies_is_square_against_the_wall() {
        EndCut end = CASE.cut("cap", "left side").left();
        assertThat(end.kind()).isEqualTo(EndCut.Kind.BUTT);
        assertThat(end.miter()).isZero();
        assertThat(end.bevel()).isZero();
        assertThat(FigurePrinter.INCHES.print(end.words())).isEqualTo("square, against the wall");
    }

    @Test
    void a_crown_may_be_held_against_the_fence_and_a_board_always_is() {
        assertThat(CASE.fit("crown", "front").nested(Hand.LEFT).orElseThrow().miter())
                .isCloseTo(45, within(1e-9));
        assertThat(CASE.fit("crown", "left side").nested(Hand.LEFT)).isEmpty();
        assertThat(CASE.fit("frieze", "front").nested(Hand.LEFT)).isEmpty();
        assertThat(CASE.fit("crown", "front").setting(Hand.LEFT).orElseThrow().miter())
                .isCloseTo(31.62, within(0.005));
        assertThat(CASE.fit("crown", "left side").setting(Hand.LEFT)).isEmpty();
    }

    @Test
    void an_end_at_a_wall_is_known_for_scribing() {
        assertThat(CASE.fit("cap", "left side").meetsWall(Hand.LEFT)).isTrue();
        assertThat(CASE.fit("cap", "left side").meetsWall(Hand.RIGHT)).isFalse();
    }

    @Test
    void corners_and_ends_are_called_by_their_names() {
        assertThat(FigurePrinter.INCHES.print(new WallCorner(true, 135).words()))
                .isEqualTo("inside 135°");
        assertThat(new WallCorner(true, 135).slope()).isCloseTo(-new WallCorner(false, 135).slope(), within(1e-12));
        assertThat(List.of("return", "die", "butt", "square").stream()
                        .map(end -> Planned.of(
                                Planned.CORNICE,
                                "plan: [{ left: " + end + ", right: square, stretches: [{ length: 40 }] }]\n"))
                        .map(planned -> planned.plan()
                                .runs()
                                .get(0)
                                .left()
                                .orElseThrow()
                                .words())
                        .map(FigurePrinter.INCHES::print))
                .containsExactly("returned to the wall", "dies on a wall at 90°", "butts a casing", "cut square");
    }

    @Test
    void every_piece_that_is_put_up_is_cut_once_for_each_side_and_the_case_is_not() {
        assertThat(CASE.job().cuts()).hasSize(3 * 10);
        assertThat(CASE.job().cuts()).extracting(Cut::course).doesNotContain("case");
        assertThat(CASE.job().cuts()).allSatisfy(cut -> assertThat(cut.length()).isPositive());
        assertThat(CASE.job().courses().stream().filter(Course::trim)).hasSize(6);
    }

    @Test
    void neighbors_meet_in_plan_along_their_miter() {
        Fit front = CASE.fit("cap", "front");
        Fit right = CASE.fit("cap", "right side");
        for (double x : new double[] {0, 3, 6.6259}) {
            assertThat(front.right(x).distance(right.left(x))).isLessThan(1e-9);
        }
        assertThat(front.outline()).hasSize(4);
    }
}
