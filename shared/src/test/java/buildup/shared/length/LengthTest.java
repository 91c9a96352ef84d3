package buildup.shared.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    // Source: NIST Special Publication 811, 2008 edition, Appendix B.8, "Factors for units listed alphabetically":
    // inch (in) to meter 2.54 E-02, foot (ft) to meter 3.048 E-01, both printed bold, that is exact. Cited from memory.
    @Test
    void an_inch_is_25_point_4_millimeters_exactly_and_a_foot_304_point_8() {
        assertThat(Length.inches(1).toMillimeters()).isEqualTo(25.4);
        assertThat(Length.millimeters(25.4)).isEqualTo(Length.inches(1));
        assertThat(LengthUnit.FOOT.of(1).toMillimeters()).isEqualTo(304.8, within(1e-13));
        assertThat(LengthUnit.CENTIMETER.of(2.54)).isEqualTo(Length.inches(1));
    }

    @Test
    void every_64th_of_an_inch_is_one_number_in_whichever_unit_it_is_written() {
        for (int i = 1; i <= 100 * 64; i++) {
            Length inches = Length.inches(i / 64.0);
            BigDecimal exact = BigDecimal.valueOf(i / 64.0).multiply(new BigDecimal("25.4"));
            double millimeters = exact.doubleValue();
            assertThat(Length.millimeters(millimeters)).isEqualTo(inches);
            assertThat(Length.centimeters(exact.movePointLeft(1).doubleValue())).isEqualTo(inches);
            assertThat(inches.toMillimeters()).isEqualTo(millimeters);
        }
    }

    @Test
    void millimeters_come_back_as_they_went_in() {
        long seed = 254;
        Random random = new Random(seed);
        for (int i = 0; i < 10_000; i++) {
            double millimeters = (random.nextDouble() - 0.5) * 10_000;
            assertThat(Length.millimeters(millimeters).toMillimeters())
                    .as("%s mm, seed %s", millimeters, seed)
                    .isEqualTo(millimeters, within(2 * Math.ulp(millimeters)));
        }
    }

    @Test
    void lengths_add_subtract_turn_and_scale() {
        Length board = Length.inches(0.75);

        assertThat(board.plus(Length.inches(0.5))).isEqualTo(Length.inches(1.25));
        assertThat(board.minus(Length.inches(1))).isEqualTo(Length.inches(-0.25));
        assertThat(board.negated()).isEqualTo(Length.inches(-0.75));
        assertThat(board.negated().abs()).isEqualTo(board);
        assertThat(board.times(2)).isEqualTo(Length.inches(1.5));
    }

    @Test
    void equality_is_exact_and_nearness_is_asked_for() {
        Length sum = Length.inches(0.1).plus(Length.inches(0.2));

        assertThat(sum).isNotEqualTo(Length.inches(0.3)).isNotEqualTo("0.3");
        assertThat(sum.near(Length.inches(0.3), Length.inches(1e-9))).isTrue();
        assertThat(sum.near(Length.inches(0.31), Length.inches(1e-9))).isFalse();
    }

    @Test
    void there_is_one_zero() {
        assertThat(Length.inches(-0.0)).isEqualTo(Length.ZERO).hasSameHashCodeAs(Length.ZERO);
        assertThat(Length.ZERO.negated()).hasToString("0.0 in");
        assertThat(Length.ZERO.isPositive()).isFalse();
        assertThat(Length.inches(1).isPositive()).isTrue();
        assertThat(Length.inches(-1).isPositive()).isFalse();
    }

    @Test
    void longer_comes_after_shorter() {
        assertThat(Length.inches(1)).isGreaterThan(Length.millimeters(25)).isLessThan(Length.millimeters(26));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void a_length_is_finite(double inches) {
        assertThatThrownBy(() -> Length.inches(inches))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A length must be finite, not " + inches);
    }

    @ParameterizedTest
    @ValueSource(strings = {"in", "in.", "Inch", "inches", "\"", "mm", "MM", "millimeters", "millimeter"})
    void inches_and_millimeters_go_by_several_names(String name) {
        LengthUnit expected = name.toLowerCase(Locale.ROOT).startsWith("m") ? LengthUnit.MILLIMETER : LengthUnit.INCH;
        assertThat(LengthUnit.named(name)).contains(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cm", "centimeter", "centimeters", "ft", "ft.", "foot", "Feet", "'"})
    void so_do_centimeters_and_feet(String name) {
        LengthUnit expected = name.startsWith("c") ? LengthUnit.CENTIMETER : LengthUnit.FOOT;
        assertThat(LengthUnit.named(name)).contains(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "m", "yard", "inc"})
    void other_words_are_no_unit(String name) {
        assertThat(LengthUnit.named(name)).isEmpty();
    }
}
