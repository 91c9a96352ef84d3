package buildup.engine.mill.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.catalog.mill.Mill;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Price as a function of the finished width: 10.16 a foot at 4-9/16 was 19.83 at 4-5/8 once, for one strip of one board. */
class WidthPriceTest {
    private static final Mill MILL = Catalog.builtIn()
            .mill(new Scalar(OrderReader.USUAL_MILL, new Mark("test", 1, 1)), new Notices())
            .orElseThrow();

    /** What a saw gets out of the mill's boards: feet of strip, and board feet of drops that are kept, of a board foot. */
    private record Sawn(double strips, double kept) {
        static Sawn of(double strip) {
            double wide = 0;
            double strips = 0;
            double kept = 0;
            for (Mill.Width width : MILL.widths()) {
                double board = width.width().toInches();
                double length = width.share().doubleValue() * 12 / board;
                double left = board - 0.25;
                if (left >= strip - 1e-9) {
                    wide += width.share().doubleValue();
                    while (left >= strip - 1e-9) {
                        left -= strip + 0.125;
                        strips += length;
                    }
                    kept += left >= 1.5 - 1e-9 ? length * left / 12 : 0;
                }
            }
            return new Sawn(strips / wide, kept / wide);
        }
    }

    private static Quoted quoted(String section, double width, int feet) {
        String words = section.replace("REST", Double.toString(width - 0.5)).replace("WIDTH", Double.toString(width));
        return Ordered.of("rates: example\nitems: [{ name: a, wood: red-oak, feet: " + feet + ", " + words + " }]\n")
                .first();
    }

    /**
     * Up to 8-1/2, which a head of 9 still takes: what a 1/16 more costs beyond its own share is what the boards that lose a strip by it explain, no more: 1 % stands for
     * what falls under the least drop that is taken back.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "profile: board 3/4 x WIDTH | 60",
                "profile: board 3/4 x WIDTH | 500",
                "profile: board 1-1/8 x WIDTH | 3000",
                "profile: board 2-1/2 x WIDTH | 500",
                "section: [out 11/16, up REST, ovolo in 1/4, cove in 1/4] | 500",
                "section: [out 1, up 1/4, cove in 1/4, up REST] | 120"
            })
    void a_sixteenth_more_costs_no_more_than_the_strips_that_are_lost(String section, int feet) {
        Quoted before = quoted(section, 1, feet);
        for (int sixteenths = 17; sixteenths <= 136; sixteenths++) {
            Quoted after = quoted(section, sixteenths / 16.0, feet);
            Sawn was = Sawn.of(before.blank().strip());
            Sawn is = Sawn.of(after.blank().strip());
            Price price = after.price().orElseThrow();
            double bought = price.run()
                    * after.blank().pieces()
                    / is.strips()
                    / 0.8
                    * Math.max(1, after.blank().quarter().rough().toInches());
            assertThat(price.boardFeet()).as("%s at %s", section, sixteenths).isCloseTo(bought, within(1e-6 * bought));
            assertThat(price.kept()).isCloseTo(bought * 0.8 * is.kept(), within(1e-6 * bought));
            double lost = was.strips()
                    * after.blank().pieces()
                    / (is.strips() * before.blank().pieces());
            double ratio = price.foot().doubleValue()
                    / before.price().orElseThrow().foot().doubleValue();
            assertThat(ratio).as("%s at %s", section, sixteenths).isLessThan(Math.max(1, lost) + 0.01);
            before = after;
        }
    }
}
