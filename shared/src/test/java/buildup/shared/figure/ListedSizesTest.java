package buildup.shared.figure;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.length.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes as a catalog lists them, and sticks as a lumberyard names them. */
class ListedSizesTest {
    private static final FigurePrinter MILLIMETERS = new FigurePrinter(LengthUnit.MILLIMETER);

    @ParameterizedTest
    @CsvSource({"0.09375, 3/32, 2.4-", "0.734375, 47/64, 18.7-", "1.25, 1-1/4, 31.8-", "0.1, 3/32+, 2.5+"})
    void a_listed_size_is_told_to_a_64th_or_a_tenth_of_a_millimeter(double inches, String listed, String metric) {
        Figure size = Figure.length(inches).rounded(Rounding.LISTED);
        assertThat(FigurePrinter.INCHES.print(size)).isEqualTo(listed);
        assertThat(MILLIMETERS.bare(size)).isEqualTo(metric);
    }

    @ParameterizedTest
    @CsvSource({"144, 12 ft, 3657.6", "88, 88, 2235.2", "6, 6, 152.4", "12.5, 12-1/2, 317.5"})
    void a_stick_has_whole_feet_where_it_is_so(double inches, String stick, String metric) {
        Figure length = Figure.length(inches).rounded(Rounding.STICK);
        assertThat(FigurePrinter.INCHES.print(length)).isEqualTo(stick);
        assertThat(MILLIMETERS.bare(length)).isEqualTo(metric);
    }

    @ParameterizedTest
    @CsvSource({"4, 4, 100 mm", "3, 3, 75 mm", "-4, -4, -100 mm", "12, 12, 305 mm", "11.75, 11-3/4, 300 mm"})
    void a_size_of_a_rule_of_thumb_is_round_in_the_unit_in_which_it_is_told(double inches, String shop, String metric) {
        Figure size = Figure.thumb(inches);
        assertThat(FigurePrinter.INCHES.print(size)).isEqualTo(shop);
        assertThat(MILLIMETERS.print(size)).isEqualTo(metric);
    }
}
