package buildup.engine.buy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whole packs that hold what is needed; by hand, and against every other basket. */
class BasketTest {
    private static Pack priced(double size, long price) {
        return new Pack(Phrase.plain("" + size), size, OptionalLong.of(price));
    }

    private static Pack plain(double size) {
        return new Pack(Phrase.plain("" + size), size, OptionalLong.empty());
    }

    private static String words(Basket basket) {
        StringBuilder words = new StringBuilder();
        basket.taken()
                .forEach(taken -> words.append(taken.count())
                        .append(" x ")
                        .append((int) taken.pack().size())
                        .append(' '));
        return words.toString().strip();
    }

    /** 1,320 nails: three boxes of 500 are 27.00, one of 2500 is 31.00; 2,100: five are 45.00, so the large one. */
    @Test
    void with_prices_the_cheapest_is_taken() {
        List<Pack> boxes = List.of(priced(500, 900), priced(2500, 3100));
        assertThat(words(Basket.holding(1320, boxes))).isEqualTo("3 x 500");
        assertThat(words(Basket.holding(2100, boxes))).isEqualTo("1 x 2500");
        assertThat(words(Basket.holding(2600, boxes))).isEqualTo("1 x 2500 1 x 500");
        assertThat(Basket.holding(2600, boxes).price()).isEqualTo(4000);
    }

    /** 1,200 with boxes of 1000 and 5000: two of 1000 leave 800 over; 4,600: 400 either way, so the one box. */
    @Test
    void without_prices_the_least_is_left_over_and_then_the_fewest_are_taken() {
        List<Pack> boxes = List.of(plain(1000), plain(5000));
        assertThat(words(Basket.holding(1200, boxes))).isEqualTo("2 x 1000");
        assertThat(words(Basket.holding(4600, boxes))).isEqualTo("1 x 5000");
        assertThat(words(Basket.holding(1000, boxes))).isEqualTo("1 x 1000");
        assertThat(Basket.holding(1200, boxes).priced()).isFalse();
    }

    @Test
    void nothing_is_bought_for_nothing() {
        assertThat(Basket.holding(0, List.of(plain(10))).taken()).isEmpty();
        assertThat(Basket.holding(-3, List.of(plain(10))).taken()).isEmpty();
    }

    @Test
    void a_very_large_need_is_met_from_the_pack_that_is_cheapest_for_what_it_holds() {
        Basket basket = Basket.holding(10_000_001, List.of(priced(100, 250), priced(500, 900)));
        assertThat(words(basket)).isEqualTo("20000 x 500 1 x 100");
    }

    /** Every way to fill a need from three sizes, one by one. */
    @Test
    void no_other_basket_is_cheaper() {
        Random random = new Random(17);
        for (int trial = 0; trial < 300; trial++) {
            List<Pack> offers = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                offers.add(priced(1 + random.nextInt(40), 1 + random.nextInt(900)));
            }
            int need = 1 + random.nextInt(120);
            long least = Long.MAX_VALUE;
            for (int a = 0; a <= need; a++) {
                for (int b = 0; b <= need; b++) {
                    double left =
                            need - a * offers.get(0).size() - b * offers.get(1).size();
                    int c = (int) Math.max(0, Math.ceil(left / offers.get(2).size()));
                    least = Math.min(
                            least,
                            a * offers.get(0).price().getAsLong()
                                    + b * offers.get(1).price().getAsLong()
                                    + c * offers.get(2).price().getAsLong());
                }
            }
            Basket basket = Basket.holding(need, offers);
            assertThat(basket.size()).isGreaterThanOrEqualTo(need - 1e-9);
            assertThat(basket.price()).as("need %s of %s", need, offers).isEqualTo(least);
        }
    }

    @Test
    void what_it_holds_and_costs_adds_up() {
        Basket basket = Basket.holding(45, List.of(priced(32, 1600), priced(8, 500)));
        // 32 and two of 8 are 26.00; six of 8 are 30.00; two of 32 are 32.00
        assertThat(words(basket)).isEqualTo("1 x 32 2 x 8");
        assertThat(basket.size()).isCloseTo(48, within(1e-9));
        assertThat(basket.price()).isEqualTo(2600);
        assertThat(basket.packs()).isEqualTo(3);
    }
}
