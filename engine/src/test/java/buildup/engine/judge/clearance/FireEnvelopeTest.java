package buildup.engine.judge.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.catalog.fire.FireRule;
import buildup.engine.judge.clearance.FireEnvelope.Need;
import buildup.engine.judge.clearance.FireEnvelope.Tightest;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of fire as data, row by row; sources in reference/fire.md. */
class FireEnvelopeTest {
    private static final int OUTLINES = Integer.getInteger("buildup.outlines", 100);

    private static final double EXACT = 1e-9;

    private static FireRule rule(String name) {
        return Catalog.builtIn().fireRules().stream()
                .filter(rule -> rule.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static FireEnvelope above(String name) {
        return FireEnvelope.of(rule(name).above());
    }

    private static FireEnvelope sides(String name) {
        return FireEnvelope.of(rule(name).sides());
    }

    private static Outline box(double out, double bottom, double top) {
        return Outline.rectangle(new Box(0, bottom, out, top));
    }

    /** R1001.11 exception 4, inches and millimeters. */
    @ParameterizedTest
    @CsvSource({
        "6, 0.750, 19.1",
        "7, 0.875, 22.2",
        "8, 1.000, 25.4",
        "9, 1.125, 28.6",
        "10, 1.250, 31.8",
        "11, 1.375, 34.9",
        "12, 1.500, 38.1"
    })
    void an_eighth_of_an_inch_for_each_inch_from_six_to_twelve(double distance, double inches, double millimeters) {
        for (String edition : List.of("IRC 2006", "IRC 2012", "IRC 2018", "IBC 2111")) {
            double allowed = above(edition).allowed(distance).orElseThrow();
            assertThat(allowed).as(edition).isEqualTo(inches, within(EXACT));
            assertThat(allowed * 25.4).as(edition).isEqualTo(millimeters, within(0.0501));
        }
    }

    @Test
    void nothing_within_six_inches_and_no_limit_past_twelve() {
        FireEnvelope irc = above("IRC 2018");
        assertThat(irc.allowed(5.999)).hasValue(0);
        assertThat(irc.allowed(-2)).hasValue(0);
        assertThat(irc.allowed(12.001)).isEmpty();
        assertThat(irc.nearest()).isEqualTo(6);
    }

    @Test
    void the_2018_wording_holds_the_taper_all_round() {
        assertThat(sides("IRC 2018").allowed(8)).hasValueCloseTo(1.0, within(EXACT));
    }

    /** Trim at the sides that projects p over 1-1/2 needs 6 + p; in the kit's manual 8 + p. */
    @ParameterizedTest
    @CsvSource({"IBC 2111, 1.5, 6", "IBC 2111, 2, 8", "IBC 2111, 4, 10", "kit manual, 1.5, 8", "kit manual, 2, 10"})
    void where_it_is_directly_above_the_sides_need_more_by_what_projects(String name, double out, double needs) {
        Need need = sides(name).needed(box(out, 20, 30), 0);
        assertThat(20 + need.more()).isEqualTo(needs, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({
        "NFPA 211 2016, 1.5, 6, 6",
        "NFPA 211 2016, 1.6, 12, 6",
        "NFPA 211 2016, 7, 12, 6",
        "NFPA 211 retold, 7, 12, 12",
        "OBC, 1.5, 6, 6",
        "OBC, 7, 12, 6",
        "kit manual, 7, 12, 15",
        "factory manual, 12, 12, 6",
        "regional practice, 7, 10, 8"
    })
    void each_text_asks_its_own_distance(String name, double out, double aboveIt, double beside) {
        assertThat(20 + above(name).needed(box(out, 20, 22), 0).more()).isEqualTo(aboveIt, within(EXACT));
        assertThat(20 + sides(name).needed(box(out, 20, 22), 0).more()).isEqualTo(beside, within(EXACT));
    }

    @Test
    void no_distance_is_enough_for_a_shelf_deeper_than_a_manual_allows() {
        assertThat(above("factory manual").needed(box(12.5, 40, 42), 0).more()).isInfinite();
    }

    /** Both readings where they disagree: a leg 10 away that projects 4. */
    @Test
    void the_two_wordings_disagree_on_a_leg() {
        Outline leg = box(4, 10, 16);
        assertThat(sides("IRC 2018").tightest(leg, 0).orElseThrow().allowed()).isEqualTo(1.25, within(EXACT));
        assertThat(sides("IBC 2111").tightest(leg, 0).orElseThrow().margin()).isEqualTo(0, within(EXACT));
    }

    /** A shelf of 7: refused below 12, nothing said past 12; NFPA lets it be at 12. */
    @Test
    void a_shelf_fails_below_twelve_and_is_free_past_it() {
        FireEnvelope irc = above("IRC 2018");
        assertThat(irc.tightest(box(7, 11.9, 13), 0).orElseThrow().margin()).isNegative();
        assertThat(irc.tightest(box(7, 12, 13), 0).orElseThrow().margin())
                .as("read strictly")
                .isNegative();
        assertThat(irc.tightest(box(7, 12.01, 13), 0)).isEmpty();
        assertThat(above("NFPA 211 2016").tightest(box(7, 12, 13), 0)).isEmpty();
        Need need = irc.needed(box(7, 11, 13), 0);
        assertThat(11 + need.more()).isEqualTo(12, within(EXACT));
        assertThat(need.past()).isTrue();
    }

    /** Wrong figures seen: the taper drawn on past 12 asks 50 for 7 out, 22 for 3-1/2, and another page 20 for 8. */
    @ParameterizedTest
    @CsvSource({"7, 50", "3.5, 22", "8, 20"})
    void the_taper_ends_at_twelve(double out, double wrong) {
        for (String edition : List.of("IRC 2006", "IRC 2012", "IRC 2018", "IBC 2111")) {
            assertThat(20 + above(edition).needed(box(out, 20, 22), 0).more()).isLessThan(wrong - 5);
            assertThat(above(edition).tightest(box(out, 12.5, 14), 0)).isEmpty();
        }
    }

    /** Worked example I. */
    @Test
    void an_edge_eight_over_the_opening_is_a_quarter_too_far_out_and_right_at_ten() {
        Outline edge = box(1.25, 8, 9);
        Tightest irc = above("IRC 2018").tightest(edge, 0).orElseThrow();
        assertThat(irc.allowed()).isEqualTo(1.0, within(EXACT));
        assertThat(irc.margin()).isEqualTo(-0.25, within(EXACT));
        assertThat(8 + above("IRC 2018").needed(edge, 0).more()).isEqualTo(10, within(EXACT));
        assertThat(above("NFPA 211 2016").tightest(edge, 0).orElseThrow().margin())
                .isPositive();
    }

    /** A nose of radius r round a center (c, d): under a line of slope 1/8 the least is d/8 - c - r sqrt(1 + 1/64). */
    @Test
    void the_place_of_a_round_nose_that_faces_the_taper_decides() {
        double r = 0.5;
        Point center = new Point(0.6, 9);
        Tightest found = above("IRC 2018").tightest(nose(center, r), 0).orElseThrow();
        assertThat(found.margin()).isEqualTo(9 / 8.0 - 0.6 - r * Math.sqrt(1 + 1 / 64.0), within(EXACT));
    }

    private static Outline nose(Point center, double r) {
        Point low = center.plus(new Point(0, -r));
        Point high = center.plus(new Point(0, r));
        Point back = new Point(0, low.y());
        Point top = new Point(0, high.y());
        return Outline.closed(List.of(
                new Stroke(new Line(back, low), "bottom"),
                new Stroke(new Arc(low, high, center, true), "nose"),
                new Stroke(new Line(high, top), "top"),
                new Stroke(new Line(top, back), "back")));
    }

    /** Against points set close together along the outline, for outlines and rules by chance. */
    @Tag("sampled")
    @Test
    void what_decides_is_what_many_points_of_the_outline_find() {
        Random random = new Random(19);
        List<FireRule> rules = Catalog.builtIn().fireRules();
        for (int i = 0; i < OUTLINES; i++) {
            Outline outline = nose(new Point(0.2 + 3 * random.nextDouble(), 0), 0.1 + random.nextDouble())
                    .moved(Motion.shift(0, 3 + 12 * random.nextDouble()));
            FireRule rule = rules.get(random.nextInt(rules.size()));
            FireEnvelope envelope = FireEnvelope.of(random.nextBoolean() ? rule.above() : rule.sides());
            double sampled = sampled(outline, envelope);
            double margin = envelope.tightest(outline, 0).map(Tightest::margin).orElse(Double.POSITIVE_INFINITY);
            if (Double.isInfinite(sampled)) {
                assertThat(margin).isGreaterThan(-1e-6);
            } else {
                assertThat(margin).isBetween(sampled - 0.01, sampled + EXACT);
            }
            double more = envelope.needed(outline, 0).more();
            if (Double.isFinite(more)) {
                assertThat(sampled(outline.moved(Motion.shift(0, more + 1e-5)), envelope))
                        .isGreaterThan(-1e-4);
                assertThat(sampled(outline.moved(Motion.shift(0, more - 0.02)), envelope))
                        .isNegative();
            }
        }
    }

    private static double sampled(Outline outline, FireEnvelope envelope) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment segment : outline.segments()) {
            for (int k = 0; k <= 2000; k++) {
                Point p = segment.at(k / 2000.0);
                OptionalDouble allowed = envelope.allowed(p.y());
                if (p.x() > 0 && allowed.isPresent()) {
                    least = Math.min(least, allowed.getAsDouble() - p.x());
                }
            }
        }
        return least;
    }
}
