package buildup.engine.mill.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.shared.figure.FigurePrinter;
import org.junit.jupiter.api.Test;

/** Worked out on paper; a board foot of 4/4 is 144 square inches of board an inch thick. */
class SharingTest {
    /** Blank 5-1/4 in a board of 9: 3-3/8 are left beside it and its kerf, 1/4 gone with the edge. */
    private static final String WIDE =
            "  - { name: base, profile: board 3/4 x 5, wood: red-oak, feet: 300, board: 9 }\n";

    /** Blank 3-1/4. */
    private static final String NARROW =
            "  - { name: casing, profile: board 3/4 x 3, wood: red-oak, feet: 100, board: 9 }\n";

    private static Quote quote(String items) {
        return Ordered.of("rates: example\nitems:\n" + items).quote().orElseThrow();
    }

    private static Price price(Quote quote, int item) {
        return quote.items().get(item).price().orElseThrow();
    }

    @Test
    void a_narrow_strip_is_ripped_from_what_is_left_beside_a_wide_one() {
        Quote quote = quote(WIDE + NARROW);
        // 130 ft of casing lie beside 130 of the 350 ft of base: no board is bought for it
        double casing = 130 * 3.375 / 12 / 0.8;
        assertThat(price(quote, 1).boardFeet()).isCloseTo(casing, within(1e-9));
        assertThat(price(quote, 0).boardFeet()).isCloseTo(350 * 9.0 / 12 / 0.8 - casing, within(1e-9));
        // 3-3/8 stay beside the other 220 ft, and nothing beside these
        assertThat(price(quote, 0).kept()).isCloseTo(220 * 3.375 / 12, within(1e-9));
    }

    @Test
    void the_paper_says_who_has_strips_from_whose_boards() {
        Quote quote = quote(WIDE + NARROW);
        assertThat(quote.items().get(0).how())
                .extracting(step -> step.what() + " " + FigurePrinter.INCHES.print(step.amount()) + ": "
                        + FigurePrinter.INCHES.print(step.how()))
                .contains(
                        "to other strips 45.70 board feet: strips of casing are ripped from what is left beside its own;"
                                + " their part is taken off");
        assertThat(quote.items().get(1).how())
                .extracting(step -> step.what() + " " + FigurePrinter.INCHES.print(step.amount()) + ": "
                        + FigurePrinter.INCHES.print(step.how()))
                .contains(
                        "from other boards 45.70 board feet: 130 ft of strip are ripped from what is left beside base;"
                                + " their part of those boards");
    }

    @Test
    void together_they_never_take_more_wood_than_alone() {
        for (int sixteenths = 16; sixteenths < 112; sixteenths += 3) {
            String other = "  - { name: other, profile: board 3/4 x " + sixteenths / 16.0
                    + ", wood: red-oak, feet: 700 }\n  - { name: base, profile: board 3/4 x 4, wood: red-oak, feet: 90 }\n";
            Quote both = quote(other);
            String[] lines = other.split("\n");
            double alone = price(quote(lines[0] + "\n"), 0).boardFeet()
                    + price(quote(lines[1] + "\n"), 0).boardFeet();
            double together = price(both, 0).boardFeet() + price(both, 1).boardFeet();
            assertThat(together).as(other).isLessThanOrEqualTo(alone + 1e-9);
            assertThat(price(both, 0).kept()).isNotNegative();
        }
    }

    @Test
    void other_wood_and_other_quarters_share_nothing() {
        for (String casing : new String[] {
            NARROW.replace("red-oak", "white-oak"),
            NARROW.replace("3/4", "1-1/4"),
            NARROW.replace("board: 9", "board: 10")
        }) {
            Quote quote = quote(WIDE + casing);
            assertThat(price(quote, 1).boardFeet())
                    .isEqualTo(price(quote(casing), 0).boardFeet());
            assertThat(price(quote, 0).boardFeet())
                    .isEqualTo(price(quote(WIDE), 0).boardFeet());
        }
    }
}
