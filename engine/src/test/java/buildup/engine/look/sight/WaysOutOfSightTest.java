package buildup.engine.look.sight;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.shared.notice.NoticeWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What hides raw wood from an eye: sight lines by similar triangles. */
class WaysOutOfSightTest {
    private static final String OPEN = "space: { wall: { solid: no } }\n";

    private static Sights eye(String eye, List<String> pieces) {
        return Sights.of(Bench.head(OPEN) + "eyes: [ { " + eye + " } ]\n" + Bench.list(pieces.toArray(String[]::new)));
    }

    /** An apron far out and a foot before the rail: each could hide what shows between them. */
    @Test
    void a_piece_comes_down_no_farther_than_its_own_sight_line_whatever_another_would_have_to_rise() {
        Sights between = eye(
                "name: gallery, distance: 20, height: 30",
                List.of(
                        "name: rail, kind: nailer, profile: board 1 x 2, back: wall, bottom: datum",
                        "name: foot, profile: board 1/2 x 1-1/4, back: 1-1/2, bottom: datum",
                        "name: apron, section: [out 1/2, up 3], back: 4-1/2, bottom: 7"));
        // the line from the eye over the foot's arris (1-1/2, 1-1/4) passes the apron's face, 5 out, at this height
        double needs = 1.25 + 3.5 * (30 - 1.25) / (20 - 1.5);
        assertThat(between.coverage("gallery", "rail").cures()).hasSize(2);
        assertThat(NoticeWords.INCHES.cure(between.said()))
                .contains("apron")
                .endsWith(String.format(Locale.ROOT, "(needs %.3f).", needs));
    }

    /** A low eye sees the rail over the upper arris of the foot's face, 2 out. */
    @Test
    void raw_wood_seen_from_below_over_a_piece_is_hidden_by_raising_it() {
        Sights over = eye(
                "name: low, distance: 20, height: -4",
                List.of(
                        "name: rail, kind: nailer, profile: board 1 x 2, back: wall, bottom: datum",
                        "name: foot, profile: board 1/2 x 3, back: 1-1/2, top: 1/2"));
        double needs = 2 - (2 + 4) / (20.0 - 1);
        assertThat(NoticeWords.INCHES.cure(over.said()))
                .contains("foot")
                .endsWith(String.format(Locale.ROOT, "(needs %.3f).", needs));
    }

    @Test
    void raw_wood_elsewhere_does_not_keep_a_piece_from_hiding_its_own() {
        List<String> both = new ArrayList<>();
        for (String name : List.of("low", "high")) {
            String at = name.equals("low") ? "datum" : "20";
            both.add("name: " + name
                    + " base, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: " + at);
            both.add("name: " + name + " back, profile: board 3/4 x 5-1/2, back: wall, bottom: " + name + " base.top");
            both.add("name: " + name + " lip, profile: board 3/4 x 2, back: " + name + " base.face, bottom: " + at);
        }
        Sights trays = eye("name: landing, distance: 72, height: 60", both);
        assertThat(trays.notices())
                .extracting(NoticeWords.INCHES::cure)
                .satisfiesExactlyInAnyOrder(
                        low -> assertThat(low).contains("'low lip'"),
                        high -> assertThat(high).contains("'high lip'"));
    }

    @Test
    void a_piece_flush_with_raw_wood_hides_nothing_of_it_wherever_its_edge_lies() {
        Sights flush = eye(
                "name: standing, distance: 72, height: 1",
                List.of(
                        "name: rail, kind: nailer, profile: board 3/4 x 2, back: wall, bottom: datum",
                        "name: face, profile: board 3/4 x 2, back: wall, bottom: rail.top"));
        assertThat(flush.coverage("standing", "rail").cures()).isEmpty();
        assertThat(NoticeWords.INCHES.cure(flush.said())).isEqualTo("Finish it, or cover it.");
    }

    /** The underside of the base shows past the bed, out to its end straight over the eye: no height hides that end. */
    @Test
    void no_piece_is_told_to_hide_what_lies_straight_over_the_eye() {
        List<String> pieces = List.of(
                "name: base, kind: nailer, profile: board 3/4 x 3-1/2, lay: flat, back: wall, bottom: datum",
                "name: bed, section: [out 1, up 1], back: wall, bottom: -3");
        Sights under = eye("name: under, distance: 3-1/2, height: -40", pieces);
        assertThat(under.coverage("under", "base").visible()).hasSize(1);
        assertThat(under.coverage("under", "base").cures()).isEmpty();
    }
}
