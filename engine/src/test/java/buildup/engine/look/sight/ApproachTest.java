package buildup.engine.look.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.Bench;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import buildup.engine.look.sight.Approach.Showing;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Where a raw nailer first shows to an eye that comes nearer, by similar triangles. */
class ApproachTest {
    /** Less than 1/64 in, the step of the search on a way of 216 in. */
    private static final Offset<Double> NEAR = within(1.0 / 64);

    /** A strip narrower than this is no showing: pieces this near to each other touch. */
    private static final double LEAST = 1.0 / 256;

    private static final String CORNICE = Bench.resource("/reference-cornice.yaml");

    /** A shelf of raw wood between a fascia, a taller back and a board under it: seen from above alone. */
    private static final String TRAY = Bench.head("space: { floor: -84, wall: { solid: yes } }")
            + Bench.list(
                    "name: under, profile: board 3/4 x 3-1/2, lay: flat, back: wall, top: datum",
                    "name: shelf, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: datum",
                    "name: back, profile: board 3/4 x 5-1/2, back: wall, bottom: shelf.top",
                    "name: fascia, profile: board 3/4 x 2, back: shelf.face, bottom: datum");

    private static Showing only(String text, String from, String to) {
        Notices notices = new Notices();
        List<Approach> answers = Sights.approaches(
                text, "approach:\n  - { name: visitor, from: {" + from + "}, to: {" + to + "} }\n", notices);
        assertThat(notices.sorted()).singleElement().satisfies(said -> {
            assertThat(said.level()).isEqualTo(Level.NOTE);
            assertThat(said.code()).isEqualTo("nailer-shows");
        });
        assertThat(answers).hasSize(1);
        assertThat(answers.get(0).name()).isEqualTo("visitor");
        assertThat(answers.get(0).showing()).hasSize(1);
        return answers.get(0).showing().get(0);
    }

    @Test
    void the_soffit_of_the_reference_cornice_first_shows_from_183_in() {
        Showing soffit = only(CORNICE, "distance: 240, height: floor + 60", "distance: 24, height: floor + 60");
        // the lip's back arris (3.5, 6) blocks 0.25 (d - 3.5) / 30 of the 1.5 of soffit
        assertThat(soffit.first()).hasValueCloseTo(3.5 + (1.5 - LEAST) * 30 / 0.25, NEAR);
        assertThat(soffit.exposed()).isCloseTo(1.5, within(1e-9));
        assertThat(soffit.most()).as("at 24 in").isCloseTo(1.5 - 0.25 * 20.5 / 30, within(1e-6));
    }

    /** The block's raw soffit runs from 3/4 to 4 out; the fascia's back edge is 3/4 under it, the eye 22-1/4 under that. */
    private static final String CORE = """
            title: Core
            wood: yellow-poplar
            space: { floor: -80, ceiling: 12 }
            eyes: [ { name: far, distance: 120, height: floor + 62 } ]
            approach:
              - { name: enter, from: { distance: 140, height: floor + 62 }, to: { distance: 15, height: floor + 62 } }
            pieces:
              - { name: frieze, profile: board 3/4 x 5, back: wall, bottom: datum }
              - { name: block, kind: nailer, profile: board 1-1/2 x 4, lay: flat, back: wall, bottom: frieze.top }
              - { name: fascia, profile: board 3/4 x 2-1/2, back: block.face, bottom: block.bottom - 3/4 }
            """;

    @Test
    void of_raw_wood_that_an_eye_sees_a_little_of_the_verdict_tells_how_much_more_shows_on_the_way() {
        // an eye at d sees 4 - 3/4 - 3/4 (d - 4) / 22-1/4: 0.351 at 90, 2.879 at 15
        String near = CORE.replace("distance: 120", "distance: 90");
        assertThat(Answered.row(near, Topic.SEEN).answer()).isEqualTo(Ruling.Reply.NO);
        assertThat(Answered.because(near, Topic.SEEN))
                .isEqualTo("block: up to 2-7/8+ of raw wood from 100-5/16- off the wall on, walking up enter."
                        + " From 'far' you see 3/8- of raw 'block'.");
        assertThat(Answered.messages(Answered.of(near), Level.NOTE))
                .anyMatch(note -> note.startsWith("Walking up 'enter' you see up to 2-7/8+ of raw 'block'"));
        assertThat(Answered.cure(near, Topic.SEEN))
                .startsWith("block: Finish it, or cover it, if people come that near. block: Finish it, or ");
        // from 15 on whoever stands there sees as much as whoever walks up to there
        assertThat(Answered.because(CORE.replace("distance: 120", "distance: 15"), Topic.SEEN))
                .isEqualTo("From 'far' you see 2-7/8+ of raw 'block'.");
    }

    @Test
    void of_two_ways_the_one_that_shows_more_is_told() {
        // 1.229 of it at 64, where the first way ends
        String two = CORE.replace(
                "approach:\n",
                "approach:\n  - { name: aisle, from: { distance: 140, height: floor + 62 }, to: { distance: 64, height:"
                        + " floor + 62 } }\n");
        assertThat(Answered.because(two, Topic.SEEN))
                .isEqualTo("block: up to 2-7/8+ of raw wood from 100-5/16- off the wall on, walking up enter");
        assertThat(Answered.messages(Answered.of(two), Level.NOTE))
                .anyMatch(note -> note.contains("Walking up 'enter'"))
                .noneMatch(note -> note.contains("Walking up 'aisle'"));
    }

    @Test
    void of_two_nailers_that_an_eye_sees_the_one_that_shows_more_is_told_first() {
        // the second block's soffit is open from the fascia's face at 4-3/4 out to 6: all of 1-1/4 is seen from
        // anywhere
        // under it, 0.351 of the first block at 90
        String second = CORE.replace("distance: 120", "distance: 90")
                + "  - { name: upper, kind: nailer, profile: board 3/4 x 6, lay: flat, back: wall, bottom: fascia.top }\n";
        assertThat(Answered.because(second.replaceAll("approach:\\n.*\\n", ""), Topic.SEEN))
                .startsWith("From 'far' you see 2 of raw 'upper'")
                .endsWith("Also block");
    }

    @Test
    void what_shows_to_whoever_walks_up_is_in_the_verdict_though_no_standing_eye_sees_it() {
        String text = CORE;
        double first = 4 + (4 - 0.75 - LEAST) * 22.25 / 0.75;
        assertThat(Answered.sound(text).approaches().get(0).showing().get(0).first())
                .hasValueCloseTo(first, NEAR);
        assertThat(Answered.row(text, Topic.SEEN).answer()).isEqualTo(Ruling.Reply.LOOK);
        assertThat(Answered.because(text, Topic.SEEN))
                .isEqualTo("block: up to 2-7/8+ of raw wood from 100-5/16- off the wall on, walking up enter");
        assertThat(Answered.messages(Answered.of(text), Level.NOTE))
                .anySatisfy(
                        note -> assertThat(note).startsWith("Walking up 'enter' you see up to 2-7/8+ of raw 'block'"))
                .noneMatch(note -> note.contains("no eye of the stack sees it"));
        String farther = text.replace("to: { distance: 15", "to: { distance: 110");
        assertThat(Answered.row(farther, Topic.SEEN).answer()).isEqualTo(Ruling.Reply.YES);
        assertThat(Answered.messages(Answered.of(farther), Level.NOTE))
                .anyMatch(note -> note.contains("of raw 'block' lies on the room side; no eye of the stack sees it"));
    }

    @Test
    void a_lip_at_5_and_a_quarter_hides_it_to_47_in() {
        String text = CORNICE.replace(
                "board 3/4 x 2, back: soffit.face, bottom: soffit.bottom - 1/4",
                "board 3/4 x 2-3/4, back: soffit.face, bottom: soffit.bottom - 1");
        Showing soffit = only(text, "distance: 240, height: floor + 60", "distance: 24, height: floor + 60");
        assertThat(soffit.first()).hasValueCloseTo(3.5 + (1.5 - LEAST) * 29.25, NEAR);
    }

    @Test
    void a_way_that_ends_short_of_the_first_showing_never_shows_it() {
        Showing soffit = only(CORNICE, "distance: 240, height: floor + 60", "distance: 190, height: floor + 60");
        assertThat(soffit.first()).isEmpty();
        assertThat(soffit.most()).isZero();
    }

    @Test
    void up_a_stair_the_top_of_a_shelf_comes_into_sight_over_the_fascia() {
        // at the share s of the way: d = 120 - 90 s, h = -30 + 90 s; over the back arris (3.5, 2) the sight line comes
        // down on the shelf's top, y = 3/4, at 3.5 - 1.25 (d - 3.5) / (h - 2); it is seen from the back, 3/4, to there
        double reach = 3.5 - 0.75 - LEAST;
        double share = (1.25 * 116.5 + 32 * reach) / (90 * reach + 90 * 1.25);
        Showing shelf = only(TRAY, "distance: 120, height: -30", "distance: 30, height: 60");
        assertThat(shelf.first()).hasValueCloseTo(120 - 90 * share, NEAR);
        assertThat(shelf.most()).isCloseTo(2.75 - 1.25 * 26.5 / 58, within(1e-6));
    }

    @Test
    void down_a_stair_the_soffit_comes_into_sight_under_the_lip() {
        // d = 240 - 216 s, h = 8 - 32 s; seen when 0.25 (d - 3.5) / (6 - h) is under 1.5
        double reach = 1.5 - LEAST;
        double share = (0.25 * 236.5 + 2 * reach) / (32 * reach + 0.25 * 216);
        Showing soffit = only(CORNICE, "distance: 240, height: floor + 92", "distance: 24, height: floor + 60");
        assertThat(soffit.first()).hasValueCloseTo(240 - 216 * share, NEAR);
    }

    @Test
    void what_shows_from_the_start_first_shows_there() {
        Showing soffit = only(CORNICE, "distance: 100, height: floor + 60", "distance: 24, height: floor + 60");
        assertThat(soffit.first()).hasValueCloseTo(100.0, within(1e-9));
    }

    @Test
    void a_way_without_its_two_ends_is_said_with_its_place() {
        Notices notices = new Notices();
        String block = "approach:\n  - { name: visitor, from: { distance: 72, height: 0 } }\n";
        assertThat(Sights.approaches(TRAY, block, notices)).isEmpty();
        Notice said = notices.sorted().get(0);
        assertThat(said.level()).isEqualTo(Level.PROBLEM);
        assertThat(said.code()).isEqualTo("impossible-light-or-eye");
        assertThat(NoticeWords.INCHES.message(said)).isEqualTo("Approach 'visitor' does not say from where to where.");
        assertThat(NoticeWords.INCHES.cure(said)).isEqualTo("Give 'from:' and 'to:', each with distance and height.");
        assertThat(said.mark().orElseThrow()).hasToString("stack.yaml:9:5");
    }

    @Test
    void a_way_that_begins_in_the_wood_is_said_and_not_followed() {
        Notices notices = new Notices();
        String block = "approach:\n  - { from: { distance: 1, height: 1/2 }, to: { distance: 72, height: 0 } }\n";
        assertThat(Sights.approaches(TRAY, block, notices)).isEmpty();
        assertThat(notices.sorted())
                .filteredOn(notice -> notice.level() == Level.PROBLEM)
                .singleElement()
                .satisfies(said -> assertThat(NoticeWords.INCHES.message(said))
                        .isEqualTo("Eye 'approach 1' (1 out, 1/2 up) is inside the shelf."));
    }

    @Test
    void a_way_that_ends_in_the_wood_is_said_and_not_followed() {
        Notices notices = new Notices();
        String block = "approach:\n  - { from: { distance: 72, height: 0 }, to: { distance: 1, height: 1/2 } }\n";
        assertThat(Sights.approaches(TRAY, block, notices)).isEmpty();
        assertThat(notices.sorted())
                .filteredOn(notice -> notice.level() == Level.PROBLEM)
                .singleElement()
                .satisfies(said -> assertThat(NoticeWords.INCHES.message(said))
                        .isEqualTo("Eye 'approach 1' (1 out, 1/2 up) is inside the shelf."));
    }

    @Test
    void a_way_without_distance_or_height_is_not_followed() {
        Notices notices = new Notices();
        String block = "approach:\n  - { from: { distance: 72 }, to: { distance: 72, height: 0 } }\n";
        assertThat(Sights.approaches(TRAY, block, notices)).isEmpty();
        assertThat(notices.sorted()).singleElement().satisfies(said -> {
            assertThat(NoticeWords.INCHES.message(said))
                    .isEqualTo("Approach 'approach 1' does not say from where to where.");
            assertThat(said.mark().orElseThrow()).hasToString("stack.yaml:9:13");
        });
    }

    @Test
    void an_end_that_cannot_be_read_is_said_once() {
        Notices notices = new Notices();
        String block = "approach:\n  - { from: { distance: far, height: 0 }, to: { distance: 72, height: 0 } }\n";
        assertThat(Sights.approaches(TRAY, block, notices)).isEmpty();
        assertThat(notices.sorted()).extracting(Notice::code).containsExactly("unknown-name");
    }
}
