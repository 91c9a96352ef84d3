package buildup.engine.look.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.section.stack.Eye;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import org.junit.jupiter.api.Test;

/** Heights as they look, and eyes that stand where none can. */
class SightTest {
    private static final String ROOM = Bench.head("space: { floor: -84, ceiling: 24, wall: { solid: yes } }");
    private static final String SHELF = "name: shelf, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: datum";
    /** A shelf of raw wood between a fascia, a taller back and a board under it: seen from above alone. */
    private static final String[] TRAY = {
        "name: under, profile: board 3/4 x 3-1/2, lay: flat, back: wall, top: datum",
        "name: base, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: datum",
        "name: back, profile: board 3/4 x 5-1/2, back: wall, bottom: base.top",
        "name: fascia, profile: board 3/4 x 2, back: base.face, bottom: datum"
    };

    private static Sights eye(String eye, String... pieces) {
        return Sights.of(ROOM + "eyes: [ { " + eye + " } ]\n" + Bench.list(pieces));
    }

    @Test
    void an_upright_face_looks_as_much_higher_as_the_eye_is_nearer_to_it_than_to_the_wall() {
        // similar triangles: h d / (d - p)
        SeenMember face = eye("name: e, distance: 72, height: 10", SHELF).seen("e", "shelf", "face");
        assertThat(face.trueHeight()).isCloseTo(0.75, within(1e-9));
        assertThat(face.seenHeight()).hasValueCloseTo(0.75 * 72 / (72 - 5.5), within(1e-9));
        assertThat(face.length()).isCloseTo(0.75, within(1e-9));
    }

    @Test
    void a_level_underside_has_no_height_and_yet_takes_some_from_below() {
        // its back edge at the wall stands at y = 0, its front is thrown on the wall plane by the eye's slope
        double eye = -40;
        SeenMember bottom = eye("name: e, distance: 72, height: -40", SHELF).seen("e", "shelf", "bottom");
        assertThat(bottom.trueHeight()).isZero();
        assertThat(bottom.seenHeight()).hasValueCloseTo(-eye * 72 / (72 - 5.5) + eye, within(1e-9));
        SeenMember higher = eye("name: e, distance: 72, height: -40", SHELF.replace("datum", "5"))
                .seen("e", "shelf", "bottom");
        assertThat(higher.seenHeight()).hasValueCloseTo(45.0 * 72 / (72 - 5.5) - 45, within(1e-9));
    }

    @Test
    void the_bead_hides_the_foot_of_the_frieze_from_below() {
        Sights cornice = Sights.of(Bench.resource("/reference-cornice.yaml") + Sights.EYES);
        SeenMember frieze = cornice.seen("standing", "frieze", "face");
        double foot = 0.75 + 0.25 * (0.75 + 24) / (72 - 1);
        assertThat(frieze.length()).isCloseTo(4.875 - foot, within(1e-9));
        assertThat(frieze.seenHeight()).hasValueCloseTo((4.875 - foot) * 72 / (72 - 0.75), within(1e-9));
        assertThat(frieze.trueHeight()).isCloseTo(4.125, within(1e-9));
    }

    @Test
    void what_turns_away_from_the_eye_is_not_seen() {
        SeenMember top = eye("name: e, distance: 72, height: -40", SHELF).seen("e", "shelf", "top");
        assertThat(top.visible()).isEmpty();
        assertThat(top.seenHeight()).hasValue(0);
    }

    @Test
    void every_member_and_every_nailer_has_a_row() {
        Sights tray = eye("name: e, distance: 72, height: 0", TRAY);
        assertThat(tray.from("e").members())
                .hasSameSizeAs(tray.bench().section().members());
        assertThat(tray.from("e").coverage()).hasSize(1);
    }

    @Test
    void raw_wood_seen_from_above_is_cured_by_a_higher_fascia() {
        // from the nailer's corner with the back, (3/4, 3/4), to the eye, past the fascia's back at 3-1/2
        double needs = 0.75 + 2.75 * (60 - 0.75) / (72 - 0.75);
        Sights tray = Sights.of(Bench.head("space: { floor: -84, wall: { solid: yes } }")
                + "eyes: [ { name: landing, distance: 72, height: 60 } ]\n" + Bench.list(TRAY));
        assertThat(tray.coverage("landing", "base").seen()).isCloseTo(2.75 - 1.25 * 68.5 / 58, within(1e-9));
        assertThat(tray.coverage("landing", "base").cures().get(0).to()).isCloseTo(needs, within(1e-6));
        assertThat(NoticeWords.INCHES.message(tray.said())).isEqualTo("From 'landing' you see 1-1/4+ of raw 'base'.");
        assertThat(NoticeWords.INCHES.cure(tray.said()))
                .isEqualTo(
                        "Finish it, or make 'fascia' 3-1/16 wide: its upper edge then comes up to 3-1/16 (needs 3.037).");
    }

    /** The foot of the board stays where its rule puts it, 2 up, and so does all that is worked out from there. */
    @Test
    void a_higher_fascia_is_as_much_wider_wherever_its_foot_is() {
        double needs = 0.75 + 2.75 * (60 - 0.75) / (72 - 0.75);
        String[] raised = TRAY.clone();
        for (int i = 0; i < raised.length; i++) {
            raised[i] = raised[i].replace("bottom: datum", "bottom: 2").replace("bottom: 0", "bottom: 2");
        }
        Sights tray = Sights.of(Bench.head("space: { floor: -84, wall: { solid: yes } }")
                + "eyes: [ { name: landing, distance: 72, height: 62 } ]\n" + Bench.list(raised));
        assertThat(NoticeWords.INCHES.cure(tray.said()))
                .isEqualTo(String.format(
                        java.util.Locale.ROOT,
                        "Finish it, or make 'fascia' 3-1/16 wide: its upper edge then comes up to 5-1/16 (needs %.3f).",
                        needs + 2));
    }

    /** From (0, 0) at the wall to an eye 72 out and 40 down the line passes 3-1/2 out at -40 * 3.5 / 72. */
    @Test
    void raw_wood_seen_from_below_is_cured_by_a_wider_fascia_that_hangs_by_its_upper_edge() {
        double needs = -40 * 3.5 / 72;
        Sights open = Sights.of(ROOM + "eyes: [{ name: low, distance: 72, height: -40 }]\n"
                + Bench.list(
                        "name: base, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: datum",
                        "name: back, profile: board 3/4 x 5-1/2, back: wall, bottom: base.top",
                        "name: fascia, profile: board 3/4 x 1-1/4, back: base.face, top: 1"));
        assertThat(NoticeWords.INCHES.cure(open.said()))
                .isEqualTo(String.format(
                        java.util.Locale.ROOT,
                        "Finish it, or make 'fascia' 3 wide: its lower edge then comes down to -2 (needs %.3f).",
                        needs));
    }

    @Test
    void an_eye_that_is_asked_by_itself_sees_what_it_sees_among_others_and_one_in_the_wood_nothing() {
        Sights tray = eye("name: e, distance: 72, height: 20", TRAY);
        Eyes eyes = Eyes.asked(tray.bench().section());
        Eye eye = tray.bench().stack().eyes().get(0);
        assertThat(eyes.covered(eye, any -> true)).hasSize(1);
        assertThat(eyes.covered(eye, any -> true).get(0).seen())
                .isEqualTo(tray.coverage("e", "base").seen());
        assertThat(eyes.covered(new Eye("in the base", 1, 0.25, eye.mark()), any -> true))
                .isEmpty();
    }

    /** A board of 1 whose face leans: what is seen of it looks as high as its two ends are apart on the wall. */
    @Test
    void a_leaning_face_looks_as_high_as_its_ends_are_apart_on_the_picture() {
        SeenMember chamfer = eye(
                        "name: e, distance: 40, height: 10",
                        "name: w, section: [out 2, chamfer in 2 x 1 as lean, up 1], back: 0, bottom: 0")
                .seen("e", "w", "lean");
        double low = 10 + (0 - 10) * 40.0 / (40 - 2);
        double high = 10 + (2 - 10) * 40.0 / (40 - 1);
        assertThat(chamfer.seenHeight()).hasValueCloseTo(high - low, within(1e-9));
    }

    @Test
    void raw_wood_that_nothing_stands_before_can_only_be_finished_or_covered() {
        Sights bare =
                eye("name: e, distance: 72, height: -40", SHELF.replace("name: shelf", "name: shelf, kind: nailer"));
        assertThat(NoticeWords.INCHES.cure(bare.said())).isEqualTo("Finish it, or cover it.");
    }

    @Test
    void the_way_out_hides_raw_wood_also_from_the_eye_that_sees_less_and_needs_more() {
        // a sight line over the lip's back arris (3.5, y) meets the soffit's inner end (2, 6.25): y = 6.25 - 1.5 k,
        // with k
        // its slope from the eye; the near eye sees more past the lip as it is, the far one needs the lower lip
        double near = 6.25 - 1.5 * (6.25 - 3) / (10 - 2);
        double far = 6.25 - 1.5 * (6.25 + 36) / (100 - 2);
        assertThat(far).isLessThan(near - 0.01);
        Sights cornice = Sights.of(Bench.resource("/reference-cornice.yaml")
                + "eyes: [{ name: near, distance: 10, height: 3 }, { name: far, distance: 100, height: -36 }]\n");
        assertThat(cornice.coverage("near", "soffit").seen())
                .isGreaterThan(cornice.coverage("far", "soffit").seen());
        assertThat(NoticeWords.INCHES.message(cornice.said())).startsWith("From 'near' you see");
        assertThat(NoticeWords.INCHES.cure(cornice.said()))
                .endsWith(String.format(java.util.Locale.ROOT, "down to 5-9/16 (needs %.3f).", far));
    }

    @Test
    void a_lower_lip_is_no_way_out_while_another_eye_sees_the_wood_from_above() {
        String[] open = {
            "name: base, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: datum",
            "name: back, profile: board 3/4 x 5-1/2, back: wall, bottom: base.top",
            "name: fascia, profile: board 3/4 x 5-1/2, back: base.face, bottom: -1/4, top: 1"
        };
        String low = "{ name: low, distance: 72, height: -40 }";
        String high = "{ name: high, distance: 72, height: 20 }";
        Sights below = Sights.of(ROOM + "eyes: [" + low + "]\n" + Bench.list(open));
        assertThat(NoticeWords.INCHES.edits(below.said())).isNotEmpty();
        Sights both = Sights.of(ROOM + "eyes: [" + low + ", " + high + "]\n" + Bench.list(open));
        assertThat(both.coverage("high", "base").seen()).isPositive();
        assertThat(NoticeWords.INCHES.cure(both.said())).isEqualTo("Finish it, or cover it.");
        assertThat(NoticeWords.INCHES.edits(both.said())).isEmpty();
    }

    @Test
    void raw_wood_that_shows_and_raw_wood_that_lies_out_of_sight_are_two_things_to_say() {
        Sights both = eye(
                "name: low, distance: 72, height: -40",
                "name: rail, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: datum",
                "name: cap, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: rail.top",
                "name: cleat, kind: nailer, profile: board 3/4 x 1-1/2, lay: flat, back: wall, bottom: cap.top");
        assertThat(both.notices())
                .extracting(NoticeWords.INCHES::message)
                .satisfiesExactly(
                        rail -> assertThat(rail)
                                .startsWith("From 'low' you see")
                                .endsWith("of raw 'rail'."),
                        cleat -> assertThat(cleat).contains("of raw 'cleat'").endsWith("no eye of the stack sees it."));
    }

    @Test
    void framing_that_hides_some_of_the_wood_is_not_told_to_move() {
        Sights behind = eye(
                "name: low, distance: 72, height: -40",
                "name: rail, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: datum",
                "name: beam, kind: framing, section: [out 1, up 3/4], back: rail.face, bottom: datum - 1/4");
        assertThat(behind.coverage("low", "rail").hiddenShare()).isBetween(0.01, 0.99);
        assertThat(behind.coverage("low", "rail").cures()).isEmpty();
        assertThat(NoticeWords.INCHES.cure(behind.said())).isEqualTo("Finish it, or cover it.");
    }

    @Test
    void raw_wood_without_an_eye_is_a_note() {
        Sights tray = Sights.of(ROOM + Bench.list(TRAY));
        assertThat(tray.sightings()).isEmpty();
        assertThat(tray.said().level()).isEqualTo(Level.NOTE);
        assertThat(NoticeWords.INCHES.message(tray.said()))
                .isEqualTo("2-3/4 of raw 'base' lies on the room side; no eye is given.");
    }

    @Test
    void raw_wood_behind_a_slit_of_a_sixteenth_is_nowhere_to_be_seen_and_nothing_is_said_of_it() {
        String[] pocket = {
            "name: sill, kind: framing, section: [out 3, up 1], back: wall, bottom: 0",
            "name: shelf, profile: board 3/4 x 3, lay: flat, back: wall, bottom: 4",
            "name: cleat, kind: nailer, profile: board 3/4 x 1, back: wall, top: shelf.bottom",
            "name: front, profile: board 3/4 x 3, face: shelf.face, top: shelf.bottom, bottom: sill.top + 1/16"
        };
        assertThat(Sights.of(ROOM + Bench.list(pocket)).notices()).isEmpty();
        assertThat(eye("name: low, distance: 72, height: 1", pocket)
                        .coverage("low", "cleat")
                        .exposed())
                .isZero();
        pocket[3] = pocket[3].replace("1/16", "1/4");
        assertThat(NoticeWords.INCHES.message(
                        Sights.of(ROOM + Bench.list(pocket)).said()))
                .isEqualTo("1-3/4 of raw 'cleat' lies on the room side; no eye is given.");
    }

    @Test
    void an_eye_in_the_wood_is_said_and_left_out() {
        Sights shelf = eye("name: e, distance: 2-1/2, height: 1/2", SHELF);
        assertThat(shelf.sightings()).isEmpty();
        said(
                shelf.said(),
                "Eye 'e' (2-1/2 out, 1/2 up) is inside the shelf.",
                "Stand it in the room: a distance of 72 and a height of floor + 60, say.");
    }

    @Test
    void an_eye_over_the_ceiling_or_under_the_floor_is_said() {
        assertThat(NoticeWords.INCHES.message(
                        eye("name: e, distance: 72, height: 30", SHELF).said()))
                .isEqualTo("Eye 'e' (72 out, 30 up) is inside the ceiling.");
        assertThat(NoticeWords.INCHES.message(
                        eye("name: e, distance: 72, height: -90", SHELF).said()))
                .isEqualTo("Eye 'e' (72 out, -90 up) is inside the floor.");
    }

    @Test
    void an_eye_in_or_behind_the_wall_is_said() {
        assertThat(NoticeWords.INCHES.message(
                        eye("name: e, distance: -5, height: -40", SHELF).said()))
                .isEqualTo("Eye 'e' (-5 out, -40 up) is inside the wall.");
        Sights open = Sights.of(Bench.head("space: { wall: { solid: no } }")
                + "eyes: [ { name: e, distance: -5, height: -40 } ]\n" + Bench.list(SHELF));
        assertThat(open.sightings()).isEmpty();
        said(open.said(), "Eye 'e' is behind the wall plane, at -5.", "Give its distance out from the wall, as 72.");
    }

    private static void said(Notice said, String message, String cure) {
        assertThat(said.level()).isEqualTo(Level.PROBLEM);
        assertThat(said.code()).isEqualTo("impossible-light-or-eye");
        assertThat(NoticeWords.INCHES.message(said)).isEqualTo(message);
        assertThat(NoticeWords.INCHES.cure(said)).isEqualTo(cure);
        assertThat(said.mark().orElseThrow()).hasToString("stack.yaml:3:9");
    }
}
