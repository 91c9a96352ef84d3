package buildup.engine.room.cope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.room.plan.Plan;
import buildup.engine.room.run.CopeSide;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Runs;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which stick is coped, how sharp its edge becomes, and the line that it is cut to. */
class CopesTest {
    private static final String CROWN = Bench.head("space: { floor: -90, ceiling: 6, wall: { solid: yes } }")
            + Bench.list("name: crown, profile: check-crown 9/16 x 3-5/8, back: wall, top: ceiling");

    private record Asked(Bench bench, List<Cope> copes, List<Notice> plan, List<Notice> said) {
        List<String> where() {
            return copes.stream()
                    .map(cope -> cope.stretch() + (cope.right() ? " right" : " left"))
                    .toList();
        }
    }

    private static Asked of(String stack, String keys) {
        Bench bench = Bench.sound(stack);
        Notices notices = new Notices();
        String text = stack + "plan:\n  - { name: room, " + keys + " }\n";
        Fields root = Fields.of(
                DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), notices)
                        .orElseThrow(),
                new Claims(),
                notices,
                bench.stack().lengths());
        Plan plan = Plan.read(bench.stack(), root, notices);
        List<Notice> read = notices.sorted();
        Job job = Runs.of(bench.section(), plan, new Notices());
        Notices said = new Notices();
        return new Asked(bench, Copes.of(bench.section(), Optional.of(job), said), read, said.sorted());
    }

    private static String room(String keys, String... corners) {
        return "inside: cope, " + keys + "stretches: [{ name: north, length: 144, corner: " + corners[0]
                + " }, { name: east, length: 120, corner: " + corners[1] + " }, { name: south, length: 144, corner: "
                + corners[2] + " }, { name: west, length: 120, corner: " + corners[3] + " }]";
    }

    private static final String[] SQUARE = {"inside 90", "inside 90", "inside 90", "inside 90"};

    @Test
    void without_a_word_each_left_end_is_coped_over_the_stick_before_it() {
        Asked usual = of(CROWN, room("", SQUARE));
        assertThat(usual.where()).containsExactly("north left", "east left", "south left", "west left");
        assertThat(usual.copes())
                .allSatisfy(cope -> assertThat(cope.side().why()).isEqualTo(CopeSide.Why.USUAL));
    }

    /**
     * A door in the middle of the south wall of a square-cornered room: one faces the north wall, whose stick runs from
     * corner to corner, and both walls beside one are coped over it. At the corners of the south wall itself one looks
     * along that wall: it is coped over east and west.
     */
    @Test
    void the_wall_that_faces_the_entry_runs_through() {
        Asked seen = of(CROWN, room("entry: { stretch: south, at: 72 }, ", SQUARE));
        assertThat(seen.where()).containsExactlyInAnyOrder("east left", "west right", "south left", "south right");
        assertThat(seen.copes())
                .allSatisfy(cope -> assertThat(cope.side().why()).isEqualTo(CopeSide.Why.ENTRY));
    }

    @Test
    void a_corner_may_say_itself_which_is_coped_or_that_none_is() {
        Asked given = of(
                CROWN, room("", "inside 90, cope: left", "inside 90, cope: no", "inside 90, cope: right", "inside 90"));
        assertThat(given.where()).containsExactlyInAnyOrder("north right", "west left", "north left");
        assertThat(given.copes().stream().map(cope -> cope.side().why()))
                .contains(CopeSide.Why.GIVEN, CopeSide.Why.USUAL);
    }

    /** Closed forms: acos(sin^2 S) at a square corner, 180 - C for an upright face, and both together. */
    @Test
    void the_edge_of_a_cope_follows_from_spring_and_corner() {
        double s = Math.sin(Math.toRadians(38));
        assertThat(of(CROWN, room("", SQUARE)).copes().get(0).edge())
                .isCloseTo(Math.toDegrees(Math.acos(s * s)), within(1e-6));
        Asked bay = of(
                CROWN,
                "left: square, right: square, inside: cope, stretches: [{ name: a, length: 60, corner: inside 135 }, {"
                        + " name: b, length: 60 }]");
        double open = s * s + (1 - s * s) * Math.sqrt(0.5);
        assertThat(bay.copes().get(0).edge()).isCloseTo(Math.toDegrees(Math.acos(open)), within(1e-6));
        assertThat(bay.said()).extracting(Notice::code).containsExactly("cope-too-thin");
        assertThat(NoticeWords.INCHES.message(bay.said().get(0)))
                .isEqualTo(
                        "'crown' on 'b', coped at 135\u00B0: its edge is 35.1\u00B0 thick at the sharpest (face), under"
                                + " 40\u00B0, and breaks.");
        assertThat(of(CROWN, room("", SQUARE)).said()).isEmpty();
    }

    /** A corner is told by the stretch to its left, whichever of its sticks is coped; 'cope: no' there miters it. */
    @Test
    void what_is_better_mitered_says_on_which_stretches_that_is_written() {
        String bay =
                "left: square, right: square, inside: cope, stretches: [{ name: a, length: 60, corner: inside 135%s },"
                        + " { name: b, length: 60, corner: inside 135, cope: left }, { name: c, length: 60, corner: inside 135%s },"
                        + " { name: d, length: 60 }]";
        Asked asked = of(CROWN, bay.formatted("", ""));
        assertThat(asked.where()).containsExactlyInAnyOrder("b left", "b right", "d left");
        assertThat(asked.said()).singleElement().satisfies(notice -> {
            assertThat(NoticeWords.INCHES.message(notice)).startsWith("'crown' on 'b' and 'd', coped at 135\u00B0: ");
            assertThat(NoticeWords.INCHES.cure(notice))
                    .isEqualTo("Miter it there: write 'cope: no' on 'a', 'b' and 'c', to the left of the corner.");
        });
        Asked one = of(CROWN, bay.replace("cope: left", "cope: no").formatted(", cope: no", ""));
        assertThat(one.where()).containsExactly("d left");
        assertThat(NoticeWords.INCHES.cure(one.said().get(0)))
                .isEqualTo("Miter it there: write 'cope: no' on 'c', to the left of the corner.");
        assertThat(of(CROWN, bay.replace("cope: left", "cope: no").formatted(", cope: no", ", cope: no"))
                        .said())
                .isEmpty();
    }

    /** Independent of the formula: the angle between two planes in space, as their normals give it. */
    @Test
    void the_edge_is_the_angle_between_the_two_faces_in_space() {
        for (double corner : new double[] {60, 80, 90, 92, 120, 135}) {
            double s = Math.toRadians(38);
            double turn = Math.toRadians(180 - corner);
            // the face's normal on one wall, and the same turned in plan onto the other
            double[] own = {0, Math.cos(s), -Math.sin(s)};
            double[] other = {Math.sin(turn) * Math.cos(s), Math.cos(turn) * Math.cos(s), -Math.sin(s)};
            double dot = own[0] * other[0] + own[1] * other[1] + own[2] * other[2];
            double wood = 180 - Math.toDegrees(Math.acos(-dot));
            Asked asked = of(
                    CROWN,
                    "left: square, right: square, inside: cope, stretches: [{ name: a, length: 60, corner: inside "
                            + corner + " }, { name: b, length: 60 }]");
            assertThat(asked.copes().get(0).edge())
                    .as("%s", corner)
                    .isCloseTo(Math.min(wood, 180 - corner), within(1e-6));
        }
    }

    private static final String CORNER =
            "left: square, right: square, inside: cope, stretches: [{ name: a, length: 60, corner: inside 90 }, { name:"
                    + " b, length: 60 }]";

    private static Asked coped(String section) {
        return of(
                Bench.head("space: { floor: -90, ceiling: 9, projection: 6 }")
                        + Bench.list("name: p, section: [" + section + "], back: wall, bottom: datum"),
                CORNER);
    }

    /**
     * Closed form at a square corner, acos(cos^2 S), where a quarter circle that begins level has risen by 1/16:
     * r (1 - cos S) = 1/16. The last 1/16 breaks off harmlessly (common practice, no source).
     */
    @Test
    void a_quarter_round_and_a_cove_count_where_they_have_risen_by_a_sixteenth_from_level() {
        for (String kind : List.of("ovolo", "cove")) {
            for (double r : new double[] {3.0 / 8, 0.5, 0.75, 1, 2}) {
                Asked asked = coped("out 1/4, up 1/4, " + kind + " " + r + ", up 1/8");
                Cope cope = asked.copes().get(0);
                double level = 1 - 1 / (16 * r);
                assertThat(cope.edge())
                        .as("%s %s", kind, r)
                        .isCloseTo(Math.toDegrees(Math.acos(level * level)), within(1e-6));
                assertThat(cope.at()).isEqualTo(kind);
                assertThat(asked.said()).hasSize(r > 0.5 ? 1 : 0);
            }
        }
    }

    /** A quarter circle of 1 in two chamfers at 22.5 and 67.5 degrees: the arc is no blunter than its chords. */
    @Test
    void an_arc_is_as_sharp_as_the_flats_that_stand_for_it() {
        Cope flats = coped("out 1/4, up 1/4, chamfer 0.70711 x 0.29289, chamfer 0.29289 x 0.70711, up 1/8")
                .copes()
                .get(0);
        double half = Math.cos(Math.toRadians(22.5));
        assertThat(flats.edge()).isCloseTo(Math.toDegrees(Math.acos(half * half)), within(0.01));
        assertThat(coped("out 1/4, up 1/4, cove 1, up 1/8").copes().get(0).edge())
                .isLessThan(flats.edge());
    }

    @Test
    void a_flat_counts_by_its_own_angle_however_low_it_is() {
        for (String flat : List.of("chamfer 1/2 x 1", "chamfer 0.02 x 0.04")) {
            assertThat(coped("out 1/4, up 1/4, " + flat + ", up 1/8")
                            .copes()
                            .get(0)
                            .edge())
                    .as(flat)
                    .isCloseTo(Math.toDegrees(Math.acos(0.8)), within(1e-6));
        }
    }

    /** Neither level end of an S-curve lends its sixteenth to the other: each arc has r/2 of the height. */
    @Test
    void each_end_of_an_ogee_loses_a_sixteenth_of_its_own() {
        double level = 1 - 1 / (16 * 0.5);
        for (String kind : List.of("ovolo 1/2, cove 1/2", "cove 1/2, ovolo 1/2")) {
            assertThat(coped("out 1/4, up 1/4, " + kind + ", up 1/8")
                            .copes()
                            .get(0)
                            .edge())
                    .as(kind)
                    .isCloseTo(Math.toDegrees(Math.acos(level * level)), within(1e-6));
        }
    }

    /** An ellipse comes as several arcs, the first of them lower than 1/16; it is one curve all the same. */
    @Test
    void a_curve_of_several_arcs_loses_no_more_than_one_of_one_arc() {
        // x = a cos u, y = b sin u, level at the top: it has fallen by 1/16 where sin u = 1 - 1/(16 b)
        double a = 1.25;
        double b = 0.75;
        double sin = 1 - 1 / (16 * b);
        double slope = Math.atan2(b * Math.sqrt(1 - sin * sin), a * sin);
        double cos = Math.cos(slope);
        assertThat(coped("out 1/4, up 1/4, greek ovolo 3/4 x 1-1/4, up 1/8")
                        .copes()
                        .get(0)
                        .edge())
                .isCloseTo(Math.toDegrees(Math.acos(cos * cos)), within(0.5));
    }

    @Test
    void the_line_of_a_square_corner_is_the_profile_itself_and_another_is_stretched() {
        Asked square = of(CROWN, room("", SQUARE));
        var outline = square.bench().section().body(0).outline();
        List<Segment> line = CopeLine.onFace(outline, 90);
        Point low = line.get(0).from();
        Point high = line.get(line.size() - 1).to();
        assertThat(low.y()).isCloseTo(outline.box().bottom(), within(1e-9));
        assertThat(high.y()).isCloseTo(outline.box().top(), within(1e-9));
        assertThat(line.stream().mapToDouble(one -> one.box().face()).max().orElseThrow())
                .isCloseTo(outline.box().face(), within(1e-9));
        List<Segment> wide = CopeLine.onFace(outline, 135);
        assertThat(wide.stream().mapToDouble(one -> one.box().face()).max().orElseThrow())
                .isCloseTo(outline.box().face() / Math.tan(Math.toRadians(67.5)), within(1e-6));
        List<Segment> back = CopeLine.onBack(outline, 120);
        assertThat(back.stream().mapToDouble(one -> one.box().face()).max().orElseThrow())
                .isCloseTo(outline.box().face() / Math.sin(Math.toRadians(120)), within(1e-6));
    }

    @Test
    void words_about_copes_that_cannot_be_are_refused() {
        assertThat(refusal(
                        "left: square, right: square, stretches: [{ name: a, length: 60, cope: up, corner: inside 90 }, {"
                                + " name: b, length: 60 }]"))
                .isEqualTo("No end to cope is called 'up'.");
        assertThat(refusal(
                        "left: square, right: square, stretches: [{ name: a, length: 60, cope: left, corner: outside 90"
                                + " }, { name: b, length: 60 }]"))
                .isEqualTo("At the right end of 'a' there is no inside corner to cope.");
        assertThat(refusal(
                        "left: square, right: square, inside: cope, entry: { stretch: attic }, stretches: [{ name: a,"
                                + " length: 60 }]"))
                .isEqualTo("No stretch called 'attic' to come in by.");
        assertThat(refusal(
                        "left: square, right: square, inside: cope, entry: { stretch: a, at: 70 }, stretches: [{ name:"
                                + " a, length: 60 }]"))
                .isEqualTo("The entry at 70 is not on 'a', which is 60 long.");
    }

    private static String refusal(String keys) {
        Asked asked = of(CROWN, keys);
        assertThat(asked.plan()).hasSize(1);
        return NoticeWords.INCHES.message(asked.plan().get(0));
    }
}
