package buildup.engine.buy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The area that shows; square inches by hand, faces of boards as rectangles and trapezoids. */
class ShownFacesTest {
    private static final Offset<Double> EXACT = within(1e-6);

    private static FaceArea area(Purchases purchases, String piece) {
        return purchases.faces().stream()
                .filter(face -> purchases.section().name(face.body()).equals(piece))
                .findFirst()
                .orElseThrow();
    }

    private static Purchases job(String stack, String plan) {
        return BoughtJob.purchases(stack + plan + "supplies: {}\n");
    }

    private static Purchases frieze(String plan) {
        return job(BoughtJob.FRIEZE, plan);
    }

    /** Bottom 3/4, face 5-1/2 and top 3/4 show: 7 by 120. */
    @Test
    void between_two_walls_it_is_the_outline_by_the_length() {
        FaceArea area = area(frieze(BoughtJob.wall("left: die, right: die", "120")), "frieze");
        assertThat(area.faces()).isCloseTo(7 * 120, EXACT);
        assertThat(area.ends()).isZero();
    }

    /** Two ends cut square show 3/4 x 5-1/2 of end grain each. */
    @Test
    void ends_cut_square_show_their_end_grain() {
        FaceArea area = area(frieze(BoughtJob.wall("left: square, right: square", "120")), "frieze");
        assertThat(area.faces()).isCloseTo(7 * 120, EXACT);
        assertThat(area.ends()).isCloseTo(2 * 0.75 * 5.5, EXACT);
    }

    /**
     * Returned at both ends: the face goes round 121-1/2 and twice 3/4, 5-1/2 high; bottom and top are frames 3/4 wide round
     * 120 by 0, outer sides 121-1/2 and 3/4: (121-1/2 x 3/4 less 120 x 0) each.
     */
    @Test
    void the_faces_of_returns_are_counted() {
        FaceArea area = area(frieze(BoughtJob.wall("left: return, right: return", "120")), "frieze");
        assertThat(area.faces()).isCloseTo(5.5 * (121.5 + 2 * 0.75) + 2 * (121.5 * 0.75), EXACT);
        assertThat(area.ends()).isZero();
    }

    /** Round an outside corner of 100 and 50: faces 100-3/4 and 50-3/4; top and bottom an L of 150 x 3/4 and a square of 3/4. */
    @Test
    void an_outside_corner_adds_what_it_turns_round() {
        FaceArea area = area(
                frieze("plan:\n  - { name: run, left: die, right: die, stretches:"
                        + " [{ name: a, length: 100, corner: outside 90 }, { name: b, length: 50 }] }\n"),
                "frieze");
        assertThat(area.faces()).isCloseTo(5.5 * 151.5 + 2 * (150 * 0.75 + 0.75 * 0.75), EXACT);
    }

    /** In an inside corner the same is lost, whether the joint is mitered, coped or butted. */
    @Test
    void an_inside_corner_loses_as_much_however_it_is_joined() {
        String corner = "plan:\n  - { name: run, left: die, right: die, inside: %s, stretches:"
                + " [{ name: a, length: 100, corner: inside 90 }, { name: b, length: 50 }] }\n";
        double lost = 5.5 * 148.5 + 2 * (150 * 0.75 - 0.75 * 0.75);
        for (String joint : new String[] {"miter", "cope"}) {
            assertThat(area(frieze(corner.formatted(joint)), "frieze").faces())
                    .as(joint)
                    .isCloseTo(lost, EXACT);
        }
    }

    /**
     * A window from 40 to 76 takes the frieze alone: there 36 of its bottom and face are gone, and the cap shows all 2-1/2 of
     * its underside in place of the 1-3/4 before the frieze.
     */
    @Test
    void over_an_opening_more_shows_of_what_runs_on() {
        String plan = "plan:\n  - { name: run, left: die, right: die, stretches: [{ name: wall, length: 120,"
                + " openings: [{ name: window, from: 40, to: 76, pieces: [frieze] }] }] }\n";
        Purchases cut = job(BoughtJob.SHELF, plan);
        assertThat(area(cut, "frieze").faces()).isCloseTo(6.25 * (120 - 36), EXACT);
        assertThat(area(cut, "cap").faces()).isCloseTo((2.5 + 0.75) * 120 + 1.75 * (120 - 36) + 2.5 * 36, EXACT);
    }

    /** A stretch that does not carry the cap shows the top of the frieze. */
    @Test
    void a_stretch_without_a_piece_shows_what_it_would_cover() {
        String plan = "plan:\n  - { name: run, left: die, right: die, stretches:"
                + " [{ name: wall, length: 120, pieces: [frieze] }] }\n";
        assertThat(area(job(BoughtJob.SHELF, plan), "frieze").faces()).isCloseTo(7 * 120, EXACT);
    }

    /**
     * A casing 3-1/2 wide round a door 36 by 80: faces are trapezoids of mean length 81-3/4, 39-1/2 and 81-3/4; the inner edge
     * is 80, 36, 80 and the outer one 83-1/2, 43, 83-1/2 long, both 3/4.
     */
    @Test
    void a_casing_is_measured_in_the_plane_of_the_wall() {
        Purchases casing = BoughtJob.purchases("""
                wood: yellow-poplar
                pieces:
                  - { name: casing, profile: board 3/4 x 3-1/2, back: wall, bottom: datum }
                plan:
                  - name: door
                    around: opening
                    left: square
                    right: square
                    stretches:
                      - { name: left leg, length: 80, corner: outside 90 }
                      - { name: head, length: 36, corner: outside 90 }
                      - { name: right leg, length: 80 }
                supplies: {}
                """);
        FaceArea area = area(casing, "casing");
        assertThat(area.faces())
                .isCloseTo(3.5 * (81.75 + 39.5 + 81.75) + 0.75 * (80 + 36 + 80) + 0.75 * (83.5 + 43 + 83.5), EXACT);
        assertThat(area.ends()).isCloseTo(2 * 0.75 * 3.5, EXACT);
    }

    /**
     * A quarter round of radius 1 round an outside corner. Pappus's second theorem: the centroid of a quarter arc lies
     * 2 r / pi from its center in either direction, and the arc is pi r / 2 long.
     */
    @Test
    void a_curved_member_is_as_long_as_its_stick_at_its_centroid() {
        Point centroid = ShownFaces.centroid(new Arc(new Point(1, 0), new Point(0, 1), new Point(0, 0), true));
        assertThat(centroid.x()).isCloseTo(2 / Math.PI, EXACT);
        assertThat(centroid.y()).isCloseTo(2 / Math.PI, EXACT);
        Purchases round = job(
                """
                wood: yellow-poplar
                pieces:
                  - { name: shoe, section: [out 1, ovolo 1], back: wall, bottom: datum }
                """,
                "plan:\n  - { name: run, left: die, right: die, stretches:"
                        + " [{ name: a, length: 100, corner: outside 90 }, { name: b, length: 50 }] }\n");
        double shown = round.section().members().stream()
                .flatMap(member -> member.segments().stream())
                .mapToDouble(segment -> {
                    double sum = 0;
                    int parts = 20_000;
                    for (int i = 0; i < parts; i++) {
                        Point middle = segment.at((i + 0.5) / parts);
                        sum += segment.length() / parts * (150 + 2 * middle.x());
                    }
                    return sum;
                })
                .sum();
        assertThat(area(round, "shoe").faces()).isCloseTo(shown, within(1e-5));
        assertThat(shown).isGreaterThan(150 * Math.PI / 2);
    }
}
