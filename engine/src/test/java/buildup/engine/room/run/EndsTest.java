package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.Bench;
import buildup.engine.judge.verdict.Topic;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Saw.Hand;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import org.junit.jupiter.api.Test;

/** How runs end: returned, dying, butting, square; openings; returns that find no room. */
class EndsTest {
    private static String run(String keys) {
        return "plan:\n  - { name: head, " + keys + " }\n";
    }

    private static final String ONE = "stretches: [{ name: front, length: 48 }]";

    @Test
    void a_self_return_is_as_long_as_its_projection_and_is_glued() {
        Planned head = Planned.of(Planned.CORNICE, run("left: return, right: return, " + ONE));
        for (Course course : head.job().courses()) {
            Fit front = head.fit(course.name(), "front");
            assertThat(front.faceLength()).isCloseTo(48 + 2 * course.face(), within(1e-9));
            if (course.trim()) {
                Cut left = head.cut(course.name(), "front, left return");
                Cut right = head.cut(course.name(), "front, right return");
                assertThat(left.length()).isCloseTo(course.face(), within(1e-9));
                assertThat(right.length()).isCloseTo(course.face(), within(1e-9));
                assertThat(left.selfReturn() && right.selfReturn()).isTrue();
                assertThat(left.right().kind()).isEqualTo(EndCut.Kind.RETURN);
                assertThat(FigurePrinter.INCHES.print(left.left().words())).isEqualTo("square, against the wall");
                assertThat(right.left().kind()).isEqualTo(EndCut.Kind.RETURN);
                assertThat(FigurePrinter.INCHES.print(right.left().words())).endsWith("; glue");
                Fit piece = head.fit(course.name(), "front, right return");
                assertThat(front.right(course.face()).distance(piece.left(course.face())))
                        .isLessThan(1e-9);
                assertThat(front.left(course.back())
                                .distance(head.fit(course.name(), "front, left return")
                                        .right(course.back())))
                        .isLessThan(1e-9);
            }
        }
        Notice note = head.said();
        assertThat(note.level()).isEqualTo(Level.NOTE);
        assertThat(note.code()).isEqualTo("return-too-short-to-nail");
        assertThat(NoticeWords.INCHES.message(note))
                .startsWith("The returns of 'bead', 'frieze', 'bed' are shorter than 3:");
        assertThat(NoticeWords.INCHES.cure(note)).isEqualTo("Glue them, and pin at most.");
    }

    @Test
    void hidden_blocking_fills_the_corner_behind_the_returns_with_a_square_end() {
        Planned head = Planned.of(Planned.CORNICE, run("left: return, right: return, " + ONE));
        Cut soffit = head.cut("soffit", "front");
        assertThat(soffit.length()).isCloseTo(48 + 2 * 3.5, within(1e-9));
        assertThat(soffit.left().kind()).isEqualTo(EndCut.Kind.SQUARE);
        assertThat(head.job().cuts())
                .filteredOn(cut -> cut.course().equals("soffit"))
                .hasSize(1);
    }

    @Test
    void a_return_shorter_than_its_thickness_is_planted() {
        Planned planned = Planned.of(
                Bench.head("space: { wall: { solid: yes } }")
                        + Bench.list("name: shelf, profile: board 3/4 x 1/2, lay: flat, back: wall, bottom: 0"),
                run("left: return, right: square, " + ONE));
        Notice problem = planned.said();
        assertThat(problem.level()).isEqualTo(Level.PROBLEM);
        assertThat(problem.code()).isEqualTo("self-return-shorter-than-its-thickness");
        assertThat(NoticeWords.INCHES.message(problem))
                .isEqualTo("'shelf': return 1/2 long and 3/4 thick: cannot be mitered.");
        assertThat(NoticeWords.INCHES.cure(problem)).startsWith("Plant it");
        assertThat(problem.amount().orElseThrow().amount()).isCloseTo(0.25, within(1e-9));
        assertThat(planned.cut("shelf", "front").length()).isCloseTo(48, within(1e-9));
        assertThat(FigurePrinter.INCHES.print(
                        planned.cut("shelf", "front").left().words()))
                .isEqualTo("square");
        Cut glued = planned.cut("shelf", "front, left return");
        assertThat(glued.length()).isCloseTo(0.5, within(1e-9));
        assertThat(FigurePrinter.INCHES.print(glued.right().words())).isEqualTo("square, against the piece, planted");
    }

    @Test
    void a_return_longer_than_its_wall_says_how_much() {
        Planned head = Planned.of(Planned.CORNICE, run("left: { end: return, room: 5-1/2 }, right: square, " + ONE));
        Notice cap = head.notices().stream()
                .filter(notice -> notice.piece().equals(java.util.Optional.of("cap")))
                .findFirst()
                .orElseThrow();
        assertThat(cap.level()).isEqualTo(Level.PROBLEM);
        assertThat(cap.code()).isEqualTo("return-longer-than-its-wall");
        assertThat(NoticeWords.INCHES.message(cap)).isEqualTo("'cap': return needs 6-11/16, wall ends at 5-1/2.");
        assertThat(NoticeWords.INCHES.cure(cap)).isEqualTo("Shorten the projection by 1-3/16 or die into the wall.");
        assertThat(cap.amount().orElseThrow().amount()).isCloseTo(6.6259 - 5.5, within(1e-3));
        // 1/16 and more is free beside the fascia's 4-1/4
        assertThat(head.notices())
                .noneMatch(notice -> NoticeWords.INCHES.message(notice).startsWith("'fascia'"));
    }

    @Test
    void a_wall_shorter_than_its_two_inside_corners_take_is_said_and_its_stick_left_out() {
        Planned alcove = Planned.of(
                Planned.CORNICE,
                run("left: square, right: square, stretches: [{ name: a, length: 60, corner: inside 90 }, { name: back,"
                        + " length: 12, corner: inside 90 }, { name: b, length: 60 }]"));
        assertThat(alcove.tooShort())
                .singleElement()
                .satisfies(note -> assertThat(NoticeWords.INCHES.message(note)).contains("cannot be held for sawing"));
        assertThat(alcove.notices())
                .extracting(Notice::code)
                .containsOnly("return-longer-than-its-wall", "raw-end-shows");
        assertThat(NoticeWords.INCHES.message(alcove.notices().get(0)))
                .isEqualTo("'crown' needs 12-9/16 on 'back' to come round its ends, the wall ends at 12.");
        assertThat(alcove.job().cuts())
                .filteredOn(cut -> cut.course().equals("crown"))
                .extracting(Cut::stretch)
                .containsExactly("a", "b");
        assertThat(alcove.fit("bed", "back").faceLength()).isCloseTo(8, within(1e-9));
    }

    @Test
    void courses_that_run_into_themselves_across_a_passage_are_said() {
        Planned fold = Planned.of(
                Planned.CORNICE,
                run("left: square, right: square, stretches: [{ name: a, length: 60, corner: inside 150 }, { name: b,"
                        + " length: 30, corner: inside 60 }, { name: c, length: 30, corner: inside 60 }, { name: d,"
                        + " length: 60 }]"));
        assertThat(fold.notices()).extracting(Notice::code).contains("returns-collide");
        assertThat(fold.notices())
                .anySatisfy(
                        notice -> assertThat(NoticeWords.INCHES.message(notice)).contains("runs into itself on"));
    }

    @Test
    void a_run_that_dies_on_a_slanting_wall_is_cut_to_the_slant() {
        Planned head = Planned.clean(Planned.CORNICE, run("left: square, right: { end: die, corner: 80 }, " + ONE));
        Fit cap = head.fit("cap", "front");
        assertThat(cap.faceLength()).isCloseTo(48 - cap.course().face() / Math.tan(Math.toRadians(80)), within(1e-9));
        assertThat(cap.cut(Hand.RIGHT).miter()).isCloseTo(10, within(1e-9));
        assertThat(cap.cut(Hand.RIGHT).kind()).isEqualTo(EndCut.Kind.BUTT);
        assertThat(FigurePrinter.INCHES.print(cap.cut(Hand.RIGHT).words())).endsWith(", against the wall");
        // a crown dying at C is cut as at a corner of twice that angle
        Saw.Flat crown = Saw.flat(360 - 160, 38);
        assertThat(head.cut("crown", "front").right().miter()).isCloseTo(-crown.miter(), within(1e-6));
    }

    @Test
    void a_run_that_dies_near_to_square_says_what_the_wall_takes() {
        Fit cap = Planned.clean(Planned.CORNICE, run("left: square, right: { end: die, corner: 89 }, " + ONE))
                .fit("cap", "front");
        assertThat(cap.fromSquare()).isCloseTo(-6.6259 * Math.tan(Math.toRadians(1)), within(1e-4));
    }

    @Test
    void a_course_that_stands_proud_of_the_casing_that_it_butts_shows_its_end() {
        Planned base = Planned.board("1 x 6", "left: { end: butt, casing: 3/4 }, right: butt, " + ONE);
        assertThat(base.said().code()).isEqualTo("end-shows");
        assertThat(base.said().level()).isEqualTo(Level.NOTE);
        assertThat(NoticeWords.INCHES.message(base.said()))
                .isEqualTo("'board' stands 1/4 proud of the casing that it butts: its end grain shows.");
        assertThat(FigurePrinter.INCHES.print(base.cut("board", "front").left().words()))
                .isEqualTo("square, against the casing");
        assertThat(base.cut("board", "front").length()).isEqualTo(48);
    }

    @Test
    void a_run_cut_square_in_the_open_shows_the_raw_ends_of_its_blocking_and_one_that_dies_does_not() {
        Planned square = Planned.of(Planned.CORNICE, run("left: square, right: die, " + ONE));
        assertThat(square.said().code()).isEqualTo("raw-end-shows");
        assertThat(square.said().level()).isEqualTo(Level.NOTE);
        assertThat(NoticeWords.INCHES.message(square.said()))
                .isEqualTo("'head' is cut square: its end shows the raw wood of 'soffit', 'block A', 'block B' and"
                        + " 'wedge', and any hollow beside it.");
        Planned dies = Planned.of(Planned.CORNICE, run("left: die, right: return, " + ONE));
        assertThat(dies.notices()).noneMatch(notice -> notice.code().equals("raw-end-shows"));
        String seen = "eyes: [ { name: a, distance: 60, height: floor + 64 } ]\nspace: { floor: -84, ceiling: 12 }\n"
                + Bench.head("")
                + Bench.list(
                        "name: frieze, profile: board 3/4 x 6, back: wall, bottom: 0",
                        "name: block, kind: nailer, profile: board 1-1/2 x 3-1/2, lay: flat, back: wall, bottom: frieze.top",
                        "name: fascia, profile: board 3/4 x 4, back: block.face, top: block.top + 1/2");
        assertThat(Answered.because(seen + run("left: square, right: die, " + ONE), Topic.SEEN))
                .contains("'block' raw at the end of a run that is cut square");
        assertThat(Answered.because(seen + run("left: die, right: die, " + ONE), Topic.SEEN))
                .doesNotContain("square");
        // nailers alone are no trim yet
        Planned alone = Planned.of(
                Bench.head("space: { wall: { solid: yes } }")
                        + Bench.list("name: rail, kind: nailer, profile: board 3/4 x 3, back: wall, bottom: datum"),
                run("left: square, right: square, " + ONE));
        assertThat(alone.notices()).noneMatch(notice -> notice.code().equals("raw-end-shows"));
    }

    @Test
    void an_opening_parts_the_run_and_the_parts_add_up() {
        Planned base = Planned.board(
                "3/4 x 6",
                "left: die, right: die, stretches: [{ name: wall, length: 120, openings: [{ name: door, from: 30, to: 66"
                        + " }, { name: niche, from: 90, to: 120 }] }]");
        assertThat(base.stretches()).containsExactly("wall, left of door", "wall, left of niche");
        assertThat(base.fit("board", "wall, left of door").faceLength()).isEqualTo(30);
        assertThat(base.fit("board", "wall, left of niche").faceLength()).isEqualTo(24);
        assertThat(base.fit("board", "wall, left of niche").start()).isEqualTo(66);
        assertThat(FigurePrinter.INCHES.print(
                        base.cut("board", "wall, left of niche").left().words()))
                .isEqualTo("square, against the casing");
    }

    @Test
    void returns_on_both_sides_of_an_opening_collide_when_it_is_too_narrow() {
        String plan = "left: die, right: die, stretches: [{ name: wall, length: 120, openings: [{ name: flue, from: 50,"
                + " to: 62, ends: return }] }]";
        Planned wall = Planned.of(Planned.CORNICE, run(plan));
        assertThat(wall.notices())
                .filteredOn(n -> n.code().equals("returns-collide"))
                .hasSize(2);
        Notice cap = wall.notices().stream()
                .filter(notice -> NoticeWords.INCHES.message(notice).startsWith("'cap'"))
                .findFirst()
                .orElseThrow();
        assertThat(NoticeWords.INCHES.message(cap))
                .isEqualTo("'cap': its returns on both sides of 'flue' need 13-5/16, and there is 12.");
        assertThat(NoticeWords.INCHES.cure(cap)).startsWith("Shorten the projection by 11/16,");
        assertThat(wall.stretches()).contains("wall, left of flue, right return", "wall, right of flue, left return");
        assertThat(Planned.of(Planned.CORNICE, run(plan.replace("62", "64"))).notices())
                .noneMatch(n -> n.code().equals("returns-collide"));
    }

    @Test
    void an_opening_too_near_to_an_inside_corner_takes_the_room_of_the_return() {
        Planned wall = Planned.of(
                Planned.CORNICE,
                run("left: square, right: square, stretches: [{ name: a, length: 60, corner: inside 90 }, { name: b,"
                        + " length: 60, openings: [{ name: door, from: 4, to: 40 }] }]"));
        assertThat(wall.notices())
                .extracting(Notice::code)
                .containsOnly("return-longer-than-its-wall", "raw-end-shows");
        assertThat(wall.notices())
                .anySatisfy(
                        notice -> assertThat(NoticeWords.INCHES.message(notice))
                                .isEqualTo(
                                        "'fascia' needs 4-1/4 on 'b, left of door' to come round its ends, the wall ends at 4."));
    }

    @Test
    void coped_the_first_stick_runs_in_square_and_the_next_is_cut_over_it() {
        String plan = "left: die, right: die, inside: cope, stretches: [{ name: a, length: 60, corner: inside 90 }, {"
                + " name: b, length: 60 }]";
        Planned coped = Planned.clean(Planned.CORNICE, run(plan));
        // the frieze of the other wall is up already: 3/4 off that wall
        assertThat(coped.fit("bed", "a").faceLength()).isCloseTo(60 - 0.75, within(1e-9));
        assertThat(coped.cut("bed", "a").right().kind()).isEqualTo(EndCut.Kind.BUTT);
        Cut bed = coped.cut("bed", "b");
        assertThat(bed.left().kind()).isEqualTo(EndCut.Kind.COPE);
        assertThat(bed.left().bevel()).isCloseTo(45, within(1e-9));
        assertThat(FigurePrinter.INCHES.print(bed.left().words())).endsWith("; then cope along the line of the face");
        assertThat(coped.fit("bed", "b").faceLength()).isCloseTo(58, within(1e-9));
        // a plain board has no line to cope: it butts the face of the other
        assertThat(coped.cut("frieze", "b").left().kind()).isEqualTo(EndCut.Kind.BUTT);
        assertThat(coped.cut("frieze", "b").length()).isCloseTo(59.25, within(1e-9));
        // nobody copes blocking: 3-1/2 deep behind a fascia of 3/4, it begins where that one has passed
        assertThat(coped.cut("soffit", "b").left().kind()).isEqualTo(EndCut.Kind.BUTT);
        assertThat(coped.cut("soffit", "b").length()).isCloseTo(60 - 4.25, within(1e-9));
        Planned blunt = Planned.clean(Planned.CORNICE, run(plan.replace("inside 90", "inside 120")));
        Fit a = blunt.fit("frieze", "a");
        Fit b = blunt.fit("frieze", "b");
        // the second ends on the face of the first: 3/4 out from the first wall, all across
        for (double x : new double[] {0, 0.75}) {
            assertThat(-b.left(x).y()).isCloseTo(0.75, within(1e-9));
        }
        assertThat(a.faceLength()).isCloseTo(60 + 0.75 / Math.tan(Math.toRadians(60)), within(1e-9));
    }

    @Test
    void grain_that_runs_round_keeps_the_pieces_of_a_course_in_one_group_as_far_as_the_opening() {
        Planned run = Planned.of(
                Planned.CORNICE,
                run("left: return, right: die, grain: [cap, frieze], stretches: [{ name: a, length: 60, corner: outside"
                        + " 90 }, { name: b, length: 60, openings: [{ name: door, from: 20, to: 40 }] }]"));
        assertThat(run.job().cuts())
                .filteredOn(cut -> cut.course().equals("cap"))
                .extracting(cut -> cut.stretch() + ": " + cut.grainGroup().orElse("none"))
                .containsExactly(
                        "a, left return: head cap",
                        "a: head cap",
                        "b, left of door: head cap",
                        "b, right of door: head cap 2");
        assertThat(run.cut("bed", "a").grainGroup()).isEmpty();
    }

    @Test
    void several_runs_make_one_job() {
        Planned two = Planned.of(
                Planned.CORNICE,
                run("left: die, right: die, " + ONE)
                        + "  - { left: square, right: die, stretches: [{ length: 20 }] }\n");
        assertThat(two.plan().runs()).extracting(WallRun::name).containsExactly("head", "run 2");
        assertThat(two.job().cuts()).hasSize(20);
        assertThat(two.job().frames()).hasSize(2);
        assertThat(two.fit("cap", "stretch 1").run()).isEqualTo(1);
    }

    @Test
    void no_plan_is_no_job() {
        Planned none = Planned.clean(Planned.CORNICE, "");
        assertThat(none.plan().isEmpty()).isTrue();
        assertThat(none.job().cuts()).isEmpty();
    }
}
