package buildup.engine.buy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answer;
import buildup.engine.Cuts;
import buildup.engine.room.sticks.Limit;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What waste wants on top of a cutting plan; by hand. */
class WasteSticksTest {
    private static Cuts cuts(String length, String stock) {
        return Cuts.of(
                BoughtJob.answer(BoughtJob.FRIEZE + BoughtJob.wall("left: die, right: die", length) + "stock: { "
                        + stock + " }\n"),
                Limit.usual());
    }

    private static Shopping shopping(String length, String stock) {
        return cuts(length, stock).known().orElseThrow().shopping();
    }

    private static String packs(WasteSticks waste) {
        return waste.basket().taken().stream()
                .map(taken -> taken.count() + " x "
                        + FigurePrinter.INCHES.print(taken.pack().words()))
                .toList()
                .toString();
    }

    /**
     * 130 in of frieze from a stick of 144 leave 14 in, 10.8 % of 130. A tenth more is 143: nothing is bought. 15 % more is
     * 149.5 and a fifth is 156: a stick of 12 ft, since one of 8 ft does not hold a length of 130. All over again is 260, two
     * fifths on top 312: one stick makes 288, two 432.
     */
    @ParameterizedTest
    @CsvSource({
        "simple, []",
        "mitered, [1 x 12 ft]",
        "matched, [1 x 12 ft]",
        "10.5 %, []",
        "11 %, [1 x 12 ft]",
        "100 %, [1 x 12 ft]",
        "140 %, [2 x 12 ft]"
    })
    void only_what_the_plan_does_not_leave_over_is_bought(String waste, String packs) {
        Shopping all =
                shopping("130", "waste: " + waste + ", sticks: [{ of: 1x6, buy: [8', 12'], price: 2.75, per: foot }]");
        WasteSticks one = all.waste().get(0);
        assertThat(one.lengths()).isCloseTo(130, within(1e-6));
        assertThat(one.sticks()).isCloseTo(144, within(1e-6));
        assertThat(packs(one)).isEqualTo(packs);
        assertThat(all.woodPrice()).isEqualTo(3300);
        assertThat(all.wastePrice()).isEqualTo(packs.equals("[]") ? 0 : packs.contains("2 x") ? 6600 : 3300);
        assertThat(all.priced()).isTrue();
    }

    /** 90 in from a stick of 8 ft leave 6: a tenth more wants 99, 3 more, and any stick holds another 90: the cheapest is 8 ft. */
    @Test
    void the_shortest_stick_that_holds_the_longest_length_is_enough() {
        Shopping all = shopping("90", "waste: 10 %, sticks: [{ of: 1x6, buy: [6', 8', 12'], price: 2.75, per: foot }]");
        assertThat(packs(all.waste().get(0))).isEqualTo("[1 x 8 ft]");
    }

    /** Nobody knows what its wood costs. */
    @Test
    void a_job_without_stock_is_not_priced() {
        assertThat(Cuts.of(
                                BoughtJob.answer(BoughtJob.FRIEZE + BoughtJob.wall("left: die, right: die", "96")
                                        + "supplies: {}\n"),
                                Limit.usual())
                        .known()
                        .orElseThrow()
                        .shopping()
                        .priced())
                .isFalse();
    }

    @Test
    void no_waste_is_bought_where_none_is_asked() {
        assertThat(shopping("130", "sticks: [{ of: 1x6, buy: [8', 12'] }]").waste())
                .isEmpty();
    }

    /** A frieze of 130 from 150 on hand: a fifth more wants 156, 6 more, and nothing is sold. */
    @Test
    void sticks_on_hand_that_do_not_cover_the_waste_are_said() {
        Cuts cuts = cuts("130", "waste: 20 %, sticks: [{ of: 1x6, on-hand: 150 }]");
        assertThat(cuts.notices().stream()
                        .filter(notice -> notice.code().equals("waste-not-covered"))
                        .map(notice -> NoticeWords.INCHES.message(notice) + " " + NoticeWords.INCHES.cure(notice)))
                .containsExactly(
                        "'1x6 (softwood)': 20 % of waste wants 6 more, and none can be bought. Add 'buy:' with lengths"
                                + " to be had.");
    }

    /** In millimeters: 3300 of 3600 leave 300, 9.1 %; a tenth wants 3630: another of 3600, which alone holds 3300. */
    @Test
    void metric_stock_is_bought_by_its_own_lengths() {
        Answer answer = BoughtJob.answer("""
                units: mm
                wood: ponderosa-pine
                boards: metric-softwood
                pieces:
                  - { name: frieze, profile: 25x100, back: wall, bottom: datum }
                plan:
                  - { name: run, left: die, right: die, stretches: [{ name: wall, length: 3300 }] }
                stock:
                  waste: 10 %
                  sticks: [{ of: 25x100, buy: [2400, 3000, 3600], price: 12.50, per: stick }]
                """);
        assertThat(BoughtJob.said(answer, Level.REFUSAL)).isEmpty();
        Shopping all = Cuts.of(answer, Limit.usual()).known().orElseThrow().shopping();
        WasteSticks one = all.waste().get(0);
        assertThat(one.sticks() * 25.4).isCloseTo(3600, within(1e-6));
        assertThat(one.basket().taken()).hasSize(1);
        assertThat(FigurePrinter.MILLIMETERS.print(
                        one.basket().taken().get(0).pack().words()))
                .isEqualTo("3600 mm");
        assertThat(all.wastePrice()).isEqualTo(1250);
    }

    /**
     * A stick of 25x100, 4.8 m, at 3.10 a meter is 14.88, also where nothing is said of what a price is for; at 3.10 a
     * foot its 15.748 feet are 48.82.
     */
    @ParameterizedTest
    @CsvSource({"'3.10', 1488", "'3.10, per: meter', 1488", "'3.10, per: foot', 4882"})
    void metric_stock_has_its_price_for_a_meter(String price, long hundredths) {
        Answer answer = BoughtJob.answer("""
                units: mm
                wood: ponderosa-pine
                boards: metric-softwood
                pieces:
                  - { name: frieze, profile: 25x100, back: wall, bottom: datum }
                plan:
                  - { name: run, left: die, right: die, stretches: [{ name: wall, length: 4700 }] }
                stock:
                  sticks: [{ of: 25x100, buy: 4800, price: %s }]
                """.formatted(price));
        assertThat(Cuts.of(answer, Limit.usual())
                        .known()
                        .orElseThrow()
                        .shopping()
                        .woodPrice())
                .isEqualTo(hundredths);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "waste: plenty | No kind of work is called 'plenty'. Known here: matched, mitered, simple.",
                "waste: miterd | No kind of work is called 'miterd'. Did you mean mitered?",
                "waste: 15 | '15' is not a share. Write it as 15 %."
            })
    void waste_that_cannot_be_read_is_refused(String stock, String message) {
        List<String> said = BoughtJob.said(
                BoughtJob.answer(BoughtJob.FRIEZE + BoughtJob.wall("left: die, right: die", "96") + "stock: { " + stock
                        + " }\n"),
                Level.REFUSAL);
        assertThat(said).containsExactly(message);
    }
}
