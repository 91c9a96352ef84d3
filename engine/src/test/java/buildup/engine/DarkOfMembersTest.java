package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.engine.judge.along.WhyNot;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * How much of a member is dark is one figure, whoever asks for it: what is cast on it and what of it is turned away,
 * together.
 *
 * <p>Closed form: a quarter round of radius 2 under a shelf, light from 45 degrees above. The lower half of the arc, 45 of
 * its 90 degrees, is turned away. The ray past the shelf's lower edge, which stands p out beyond the round, meets the arc
 * at the angle t below level with {@code cos t + sin t = 1 + p / 2}. For {@code p = 2 (sqrt 2 cos 22.5 - 1)} that is 22.5
 * degrees: a quarter of the arc is in cast shadow, a quarter in light, half in shade.
 */
class DarkOfMembersTest {
    private static final double QUARTER = 2 * (Math.sqrt(2) * Math.cos(Math.toRadians(22.5)) - 1);

    private static String round(String over, String must) {
        return """
                title: Quarter round under a shelf
                units: in
                wood: yellow-poplar
                sizes: { over: "%s" }
                space: { floor: -60, wall: { solid: yes } }
                lights: [{ name: high, altitude: 45, azimuth: 0 }]
                pieces:
                  - { name: quarter, section: [ovolo 2], back: wall, bottom: 0 }
                  - { name: shelf, section: [out 2 + over, up 3/4], back: wall, bottom: quarter.top }
                must: [%s]
                """.formatted(over, must);
    }

    private static Answers answers(double over, String must) {
        return Answer.of(SearchedTest.document(round(Double.toString(over), must)), Catalog.builtIn())
                .known()
                .orElseThrow();
    }

    private static MustResult held(double over, String must) {
        return answers(over, must).must().get(0);
    }

    @Test
    void a_line_under_must_counts_what_is_cast_and_what_is_turned_away_together() {
        MustResult share = held(QUARTER, "share of quarter.ovolo in high <= 70 %");
        assertThat(share.figure().orElseThrow()).isCloseTo(0.75, within(1e-6));
        assertThat(share.met()).isFalse();
        assertThat(held(QUARTER, "share of quarter.ovolo in high <= 76 %").met())
                .isTrue();
        MustResult dark = held(QUARTER, "dark of quarter.ovolo in high <= 2");
        assertThat(dark.figure().orElseThrow()).isCloseTo(0.75 * Math.PI, within(1e-5));
        assertThat(dark.met()).isFalse();
    }

    @Test
    void a_member_that_no_light_reaches_is_dark_by_all_of_it_and_by_no_more() {
        MustResult all = held(4, "share of quarter.ovolo in high <= 99 %");
        assertThat(all.figure().orElseThrow()).isCloseTo(1, within(1e-6)).isLessThanOrEqualTo(1);
        assertThat(all.met()).isFalse();
    }

    @Test
    void the_row_of_the_verdict_tells_the_same() {
        Ruling light = answers(QUARTER, "height >= 1").verdict().rulings().stream()
                .filter(ruling -> ruling.topic() == Topic.LIGHT)
                .findFirst()
                .orElseThrow();
        // 3/4 of pi inches
        assertThat(FigurePrinter.INCHES.print(light.because())).isEqualTo("high: 2-3/8- of quarter's 3-1/8+ dark");
    }

    /** A hollow quarter of 2 whose upper arris is 1/4 farther out: the ray of 45 degrees passes it, and meets the face below. */
    @Test
    void where_a_member_alone_is_dark_it_is_named_and_not_its_piece() {
        String stack = round("1/4", "height >= 1")
                .replace("section: [ovolo 2]", "section: [out 1, up 1 as face, cove 2]")
                .replace("out 2 + over", "out 3 + over");
        Answers answers = Answer.of(SearchedTest.document(stack), Catalog.builtIn())
                .known()
                .orElseThrow();
        Ruling light = answers.verdict().rulings().stream()
                .filter(ruling -> ruling.topic() == Topic.LIGHT)
                .findFirst()
                .orElseThrow();
        assertThat(FigurePrinter.INCHES.print(light.because())).isEqualTo("high: all of quarter's cove dark");
    }

    @Test
    void the_stretches_of_a_member_each_tell_its_dark_in_all() {
        Answers answers = answers(QUARTER, "height >= 1");
        Sheet shadows = answers.sheets().stream()
                .filter(sheet -> sheet.key().equals("shadows"))
                .findFirst()
                .orElseThrow();
        List<Double> shares = shadows.rows().stream()
                .filter(row -> shadows.cell(row, "member").equals(new Cell.Words("ovolo")))
                .map(row -> ((Cell.Decimal) shadows.cell(row, "memberShare")).amount())
                .toList();
        assertThat(shares).hasSize(2).allSatisfy(share -> assertThat(share).isCloseTo(0.75, within(1e-6)));
    }

    @Test
    void a_search_turns_where_the_dark_in_all_does() {
        String yaml = round("between 1/8 and 1 by 1/8, now 1/4", "height >= 1");
        List<WhyNot> why = SearchedTest.search(
                        yaml, SearchLimits.of(100), Optional.of("share of quarter.ovolo in high <= 75 %"))
                .why()
                .orElseThrow();
        assertThat(why.get(0).today()).isTrue();
        assertThat(why.get(0).turning().orElseThrow().value()).isCloseTo(QUARTER, within(1e-4));
        String asked = round("between 1/8 and 1 by 1/8, now 1", "share of quarter.ovolo in high <= 75 %");
        assertThat(SearchedTest.search(asked, SearchLimits.of(100), Optional.empty())
                        .result()
                        .orElseThrow()
                        .smallest()
                        .orElseThrow()
                        .candidate()
                        .texts())
                // 0.613 of an inch at most, in eighths
                .containsExactly("1/2");
    }
}
