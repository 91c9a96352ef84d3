package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import org.junit.jupiter.api.Test;

/** What holds a piece up, fastenings not counted. */
class StandingTest {
    private static final String CASE = "name: case, kind: framing, section: [out 10, up 20], face: 4, top: 0";
    private static final String LOW = "name: low, profile: board 1 x 2, back: 2, bottom: case.top";

    private static Notice about(Bench bench, String piece, String code) {
        assertThat(bench.notices(code))
                .as(code)
                .anyMatch(notice -> notice.piece().filter(piece::equals).isPresent());
        return bench.notices(code).stream()
                .filter(notice -> notice.piece().filter(piece::equals).isPresent())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void what_stands_on_framing_or_floor_is_grounded_and_so_is_what_stands_on_that() {
        Bench bench = Bench.in(
                "{ floor: -20, wall: { solid: no } }",
                CASE,
                LOW,
                "name: high, profile: board 1 x 2, back: 2, bottom: low.top",
                "name: base, profile: board 1 x 3, back: 10, bottom: floor");
        assertThat(bench.section().standing()).allMatch(Standing::grounded);
        assertThat(bench.standing("low").fixed()).isFalse();
        assertThat(bench.codes()).as("what to nail into is another question").containsOnly("no-backing");
        assertThat(bench.standing("base").bearing())
                .singleElement()
                .satisfies(bearing -> assertThat(bench.name(bearing.on())).isEqualTo("floor"));
    }

    @Test
    void a_back_flat_on_framing_or_solid_wall_counts_as_fixed_and_a_note_says_so() {
        Bench bench = Bench.onWall("name: rail, profile: board 3/4 x 3, back: wall, bottom: 40");
        assertThat(bench.standing("rail").fixed()).isTrue();
        Notice note = about(bench, "rail", "counts-as-fixed");
        assertThat(note.level()).isEqualTo(Level.NOTE);
        assertThat(NoticeWords.INCHES.message(note))
                .isEqualTo("'rail' lies flat on the wall: it counts as fixed there until fastenings are given.");
        assertThat(Bench.loose(
                                "name: case, kind: framing, section: [out 10, up 20], face: wall, top: 0",
                                "name: rail, profile: board 3/4 x 3, back: wall, top: case.top")
                        .standing("rail")
                        .fixed())
                .isTrue();
    }

    @Test
    void a_wall_that_is_only_a_line_to_measure_from_fixes_nothing() {
        assertThat(Bench.loose("name: rail, profile: board 3/4 x 3, back: wall, bottom: 40")
                        .standing("rail")
                        .grounded())
                .isFalse();
    }

    @Test
    void the_document_may_say_outright_what_a_piece_is_fixed_to() {
        Bench bench =
                Bench.loose(CASE, LOW, "name: strip, fixed: low, profile: board 1/4 x 1, back: low.face, bottom: 1");
        assertThat(bench.standing("strip").grounded()).isTrue();
        assertThat(bench.standing("strip").fixed()).isTrue();
        assertThat(bench.codes()).doesNotContain("counts-as-fixed", "hangs-on-its-fastenings");
    }

    @Test
    void being_nailed_to_another_piece_of_trim_does_not_ground_a_piece() {
        Bench bench = Bench.loose(CASE, LOW, "name: strip, profile: board 1/4 x 1, back: low.face, bottom: 1");
        assertThat(bench.standing("strip").grounded()).isFalse();
        Notice note = about(bench, "strip", "hangs-on-its-fastenings");
        assertThat(note.level()).isEqualTo(Level.NOTE);
        assertThat(NoticeWords.INCHES.message(note)).isEqualTo("'strip' is held by nails only; nothing carries it.");
        assertThat(NoticeWords.INCHES.cure(note)).isEqualTo("Nail it to what is behind it.");
    }

    @Test
    void a_slope_of_more_than_five_degrees_is_no_bearing() {
        // tan 4 = 0.0699, tan 6 = 0.1051, on a base of 2
        assertThat(onSlope(0.1399).standing("over").grounded()).isTrue();
        assertThat(onSlope(0.2102).standing("over").grounded()).isFalse();
    }

    private static Bench onSlope(double rise) {
        String section = "section: [out 2, up 1, chamfer in " + rise + " x 2]";
        return Bench.loose(
                CASE,
                "name: wedge, " + section + ", back: 0, bottom: case.top",
                "name: over, " + section + ", turn: 180, face: 2, top: 2 + " + rise);
    }

    @Test
    void a_round_in_a_hollow_is_no_bearing_however_level_its_chord() {
        // a hollow of radius 1 that faces up, and a half round of radius 1 lying in it with its flat up
        Bench bench = Bench.loose(
                CASE,
                "name: trough, section: [out 2, up 1/2, scotia 2 x 0, up 1/2], turn: 90, back: -4, bottom: case.top",
                "name: rod, section: [out 1, bead up 2], turn: -90, back: trough.back + 1/2, bottom: touch");
        assertThat(bench.contacts()).contains("trough carries rod 3.142");
        assertThat(bench.standing("rod").bearing()).isEmpty();
        assertThat(bench.standing("rod").grounded()).isFalse();
    }

    @Test
    void a_bearing_runs_from_back_to_face_over_all_grounded_supports() {
        Bench bench = Bench.loose(
                CASE,
                "name: low, profile: board 1 x 2, back: 3, bottom: case.top",
                "name: front, profile: board 1 x 2, back: low.face, bottom: case.top",
                "name: shelf, profile: board 1 x 6, lay: flat, back: 1, bottom: low.top");
        assertThat(bench.standing("shelf").bearing())
                .extracting(bearing -> bench.name(bearing.on()))
                .containsExactly("low");
        Notice note = about(bench, "shelf", "support-that-only-hangs");
        assertThat(NoticeWords.INCHES.message(note))
                .isEqualTo("'shelf' bears on front, which only hangs by its fastenings. Counting low alone: 1.");
        assertThat(NoticeWords.INCHES.cure(note)).isEqualTo("Give front something to stand on, or trust the rest.");
        assertThat(bench.standing("shelf").bearing().get(0).width()).isCloseTo(1, within(1e-9));
    }

    @Test
    void a_piece_on_nothing_but_hanging_ones_hangs_too() {
        Bench bench = Bench.loose(
                CASE,
                "name: one, profile: board 1 x 2, back: 4, bottom: -1",
                "name: two, profile: board 1 x 2, back: 5, bottom: -1",
                "name: shelf, profile: board 1 x 2, lay: flat, back: 4, bottom: one.top");
        // one is backed by the case, so it counts as fixed; two hangs from it
        assertThat(bench.standing("shelf").grounded()).isTrue();
        Bench loose = Bench.loose(
                "name: one, profile: board 1 x 2, back: 4, bottom: -1",
                "name: two, profile: board 1 x 2, back: 5, bottom: -1",
                "name: shelf, profile: board 1 x 2, lay: flat, back: 4, bottom: one.top");
        assertThat(NoticeWords.INCHES.message(about(loose, "shelf", "support-that-only-hangs")))
                .isEqualTo(
                        "'shelf' bears on one and two, which only hang by their fastenings. Nothing else carries it.");
    }

    @Test
    void air_below_a_piece_is_said_with_its_amount() {
        Bench bench = Bench.loose(CASE, "name: bed, profile: board 1 x 1, back: 0, bottom: 3/16");
        Notice problem = about(bench, "bed", "floating-piece");
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(problem)).isEqualTo("'bed' touches nothing: 3/16 of air below it.");
        assertThat(NoticeWords.INCHES.cure(problem)).isEqualTo("Move it down 3/16, or add a block.");
        assertThat(problem.amount().orElseThrow().amount()).isCloseTo(3.0 / 16, within(1e-9));
        assertThat(problem.mark().orElseThrow().line()).isEqualTo(5);
    }

    @Test
    void the_nearest_air_is_said_below_behind_or_above() {
        String shelf = "name: bed, profile: board 1 x 1, ";
        assertThat(NoticeWords.INCHES.message(about(
                        Bench.in("{ floor: -84, wall: { solid: yes } }", shelf + "back: 3/16, bottom: 0"),
                        "bed",
                        "floating-piece")))
                .isEqualTo("'bed' touches nothing: 3/16 of air behind it.");
        assertThat(NoticeWords.INCHES.message(about(
                        Bench.in("{ floor: -84, ceiling: 2, wall: { solid: yes } }", shelf + "back: 4, top: 1-3/4"),
                        "bed",
                        "floating-piece")))
                .isEqualTo("'bed' touches nothing: 1/4 of air above it.");
    }

    @Test
    void what_hangs_over_a_piece_does_not_hide_the_air_below_it() {
        Bench bench = Bench.loose(
                CASE,
                "name: arch, section: [out 3, up 3, in 1, up 1, in 2], back: -4, bottom: case.top + 6, fixed: case",
                "name: bed, profile: board 1 x 1, back: -4, bottom: 1/4");
        assertThat(NoticeWords.INCHES.message(about(bench, "bed", "floating-piece")))
                .isEqualTo("'bed' touches nothing: 1/4 of air below it.");
    }

    @Test
    void a_piece_with_nothing_round_it_floats_without_an_amount() {
        Notice problem =
                about(Bench.loose("name: bed, profile: board 1 x 1, back: 40, bottom: 2"), "bed", "floating-piece");
        assertThat(NoticeWords.INCHES.message(problem))
                .isEqualTo("'bed' touches nothing, and nothing is below, behind or above it.");
        assertThat(NoticeWords.INCHES.cure(problem)).isEqualTo("Place it on a piece, or add a block.");
        assertThat(problem.amount()).isEmpty();
    }

    @Test
    void resting_by_a_point_is_a_problem() {
        Bench bench = Bench.loose(CASE, "name: crown, profile: board 1 x 1, back: 4, bottom: case.top");
        Notice problem = about(bench, "crown", "touches-on-a-corner-only");
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(NoticeWords.INCHES.message(problem)).isEqualTo("'crown' rests on 'case' by a point.");
        assertThat(NoticeWords.INCHES.cure(problem)).isEqualTo("It needs a flat: lap it at least 1/4.");
    }

    @Test
    void what_an_overlap_stands_on_is_not_judged_before_it_is_mended() {
        Bench bench = Bench.loose(CASE, "name: bed, profile: board 1 x 1, back: 0, bottom: -1/4");
        assertThat(bench.codes()).containsExactly("overlap");
    }
}
