package buildup.shared.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.shared.length.Reading.Good;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthPrinterTest {

    @ParameterizedTest
    @CsvSource({
        "6.625,6-5/8", "2,2", "0.75,3/4", "0,0", "-0.25,-1/4", "-1.375,-1-3/8", "0.5,1/2", "0.9375,15/16",
        "2.01,2+", "1.99,2-", "0.001,0+", "-0.001,-0.001", "-0.26,-0.260", "-0.24,-0.240", "5.302,5-5/16-",
                "0.03125,1/16-"
    })
    void a_size_is_printed_to_the_sixteenth_and_marked_when_the_true_one_is_more_or_less_and_a_negative_one_in_decimals(
            double inches, String text) {
        assertThat(LengthPrinter.sixteenths(Length.inches(inches))).isEqualTo(text);
    }

    @Test
    void what_no_tape_can_show_is_not_marked() {
        assertThat(LengthPrinter.sixteenths(Length.inches(0.75 + 0.9e-6))).isEqualTo("3/4");
        assertThat(LengthPrinter.sixteenths(Length.inches(0.75 + 1.1e-6))).isEqualTo("3/4+");
        assertThat(LengthPrinter.sixteenths(Length.inches(0.75 - 1.1e-6))).isEqualTo("3/4-");
    }

    @Test
    void any_step_can_be_printed_in_lowest_terms() {
        assertThat(LengthPrinter.fraction(Length.inches(0.328125), 64)).isEqualTo("21/64");
        assertThat(LengthPrinter.fraction(Length.inches(1.25), 64)).isEqualTo("1-1/4");
        assertThat(LengthPrinter.fraction(Length.inches(1.4), 1)).isEqualTo("1+");
    }

    @ParameterizedTest
    @CsvSource({"1.23456,3,1.235", "0.0005,3,0.001", "-0.0001,3,0.000", "2,3,2.000", "-1.5,0,-2", "100000,1,100000.0"})
    void decimals_keep_their_places_and_round_halves_away_from_zero(double inches, int places, String text) {
        assertThat(LengthPrinter.decimals(Length.inches(inches), places)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"5.302,16,5.3125,5.25", "0.75,16,0.75,0.75", "-0.3,4,-0.25,-0.5", "0.7500000001,16,0.75,0.75"})
    void a_safe_side_is_chosen_by_name(double inches, int denominator, double up, double down) {
        assertThat(LengthPrinter.roundUp(Length.inches(inches), denominator)).isEqualTo(Length.inches(up));
        assertThat(LengthPrinter.roundDown(Length.inches(inches), denominator)).isEqualTo(Length.inches(down));
    }

    @Test
    void a_sum_of_tenths_that_should_be_whole_stays_on_its_step() {
        Length sum = Length.ZERO;
        for (int i = 0; i < 10; i++) {
            sum = sum.plus(Length.inches(0.1));
        }
        assertThat(sum).isNotEqualTo(Length.inches(1));
        assertThat(LengthPrinter.roundUp(sum, 16)).isEqualTo(Length.inches(1));
        assertThat(LengthPrinter.roundDown(sum, 16)).isEqualTo(Length.inches(1));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 8, 16, 32, 64})
    void every_multiple_of_a_shop_fraction_prints_without_a_mark_and_reads_back_exactly(int denominator) {
        for (int steps = -200 * denominator; steps <= 200 * denominator; steps++) {
            Length size = Length.inches((double) steps / denominator);
            String printed = LengthPrinter.fraction(size, denominator);
            assertThat(printed).doesNotEndWith("+").doesNotEndWith("-");
            assertThat(read(printed)).as(printed).isEqualTo(size);
        }
    }

    @Test
    void every_other_size_reads_back_within_half_a_step_on_the_side_that_its_mark_says() {
        long seed = 1616;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double inches = random.nextDouble() * Math.pow(10, random.nextInt(6)) / 2;
            String printed = LengthPrinter.sixteenths(Length.inches(inches));
            double back = read(printed).toInches();
            assertThat(back).as("%s, seed %s", inches, seed).isEqualTo(inches, within(1 / 32.0 + 1e-12));
            String mark = Math.abs(inches - back) <= 1e-6 ? "" : inches > back ? "+" : "-";
            assertThat(printed).as("%s, seed %s", inches, seed).matches("[0-9/-]*[0-9]" + Pattern.quote(mark));
        }
    }

    @Test
    void a_negative_size_off_the_sixteenths_reads_back_within_half_a_thousandth() {
        long seed = 1617;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double inches = -random.nextDouble() * Math.pow(10, random.nextInt(4));
            double back = read(LengthPrinter.sixteenths(Length.inches(inches))).toInches();
            assertThat(back).as("%s, seed %s", inches, seed).isEqualTo(inches, within(0.0005 + 1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"1.09375,1-3/32", "0.828125,53/64", "0.8268,0.827", "0.8125,13/16", "0.00005,0"})
    void a_move_to_contact_reads_back_in_contact(double inches, String text) {
        assertThat(LengthPrinter.toContact(Length.inches(inches))).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"19.05,19.1-", "19,19", "20.96,21-", "-0.01,-0.01", "9.525,9.5+", "208.0000000001,208"})
    void a_metric_size_is_printed_to_the_tenth_and_marked(double millimeters, String text) {
        assertThat(LengthPrinter.tenths(Length.millimeters(millimeters))).isEqualTo(text);
    }

    @Test
    void printed_millimeters_read_back_within_half_a_tenth() {
        long seed = 381;
        Random random = new Random(seed);
        for (int i = 0; i < 10_000; i++) {
            double millimeters = (random.nextDouble() - 0.5) * 5_000;
            Length back =
                    read(LengthPrinter.tenths(Length.millimeters(millimeters)).replaceFirst("[+-]$", "") + " mm");
            assertThat(back.toMillimeters())
                    .as("%s mm, seed %s", millimeters, seed)
                    .isEqualTo(millimeters, within(0.05 + 1e-9));
        }
    }

    private static Length read(String printed) {
        return ((Good) new LengthReader(LengthUnit.INCH, Map.of()).read(printed)).length();
    }

    @Test
    void a_half_that_computing_missed_by_a_hair_is_a_half() {
        assertThat(LengthPrinter.decimals(Length.inches(44.249999999999996), 1)).isEqualTo("44.3");
        assertThat(LengthPrinter.decimals(Length.inches(44.2499), 1)).isEqualTo("44.2");
    }
}
