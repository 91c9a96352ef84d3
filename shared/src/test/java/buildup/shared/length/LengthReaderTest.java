package buildup.shared.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.shared.Said;
import buildup.shared.document.SizeNotices;
import buildup.shared.length.Reading.Bad;
import buildup.shared.length.Reading.Good;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthReaderTest {

    private static final String HOW_TO_WRITE = "Write it as 3/4, 1-3/8, 5'-6 1/2\", 38 mm or 0.75.";

    private final LengthReader inches = new LengthReader(
            LengthUnit.INCH,
            Map.of("lip", Length.inches(0.25), "height", Length.inches(96), "top of case", Length.inches(7)));
    private final LengthReader millimeters = new LengthReader(LengthUnit.MILLIMETER, Map.of());

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "3/4|0.75",
                "1 3/8|1.375",
                "12|12",
                "0.75|0.75",
                ".5|0.5",
                "0|0",
                "0/8|0",
                "63/64|0.984375",
                "-1/4|-0.25",
                "+1/4|0.25",
                "−1/4|-0.25",
                "-1 3/8|-1.375",
                "-5'-6\"|-66",
                "5'-6 1/2\"|66.5",
                "5' 6-1/2\"|66.5",
                "5'6\"|66",
                "5'-6 in|66",
                "6 ft 6 in|78",
                "6ft6in|78",
                "66\"|66",
                "6'|72",
                "6 ft|72",
                "6 feet|72",
                "3/4 in|0.75",
                "3/4\"|0.75",
                "3/4 inches|0.75",
                "5' 0\"|60",
                "38 mm|1.4960629921259843",
                "3.8cm|1.4960629921259843",
                "25.4mm|1",
                "-25.4 mm|-1"
            })
    void the_plain_ways_to_write_a_size_need_no_word(String written, double expected) {
        assertThat(inches.read(written)).isEqualTo(new Good(Length.inches(expected), Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"  3/4  ", "3/4\u00A0in", "\t3/4", "3/4\u202Fin"})
    void blanks_of_any_kind_are_blanks(String written) {
        assertThat(length(written)).isEqualTo(Length.inches(0.75));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "½|0.5",
                "1⅜|1.375",
                "1-⅜|1.375",
                "1 ⅜|1.375",
                "1⁄2|0.5",
                "3∕4|0.75",
                "5′ 6½″|66.5",
                "5’-6”|66",
                "5‘ 6“|66",
                "66''|66",
                "-¼|-0.25"
            })
    void marks_that_a_phone_or_a_printer_makes_can_be_read_in_one_way_only(String written, double expected) {
        assertThat(inches.read(written)).isEqualTo(new Good(Length.inches(expected), Optional.empty()));
    }

    @Test
    void a_comma_may_part_thousands_or_decimals_and_how_it_was_read_is_told() {
        assertThat(length("3,5")).isEqualTo(Length.inches(3.5));
        assertThat(echo("3,5")).isEqualTo(Said.note("reading-echo", "3,5 read as 3.5."));
        assertThat(echo("1,250")).isEqualTo(Said.note("reading-echo", "1,250 read as 1.25."));
    }

    @Test
    void a_bare_number_takes_the_unit_of_the_file() {
        assertThat(((Good) millimeters.read("38")).length()).isEqualTo(Length.millimeters(38));
        assertThat(((Good) millimeters.read("66\"")).length()).isEqualTo(Length.inches(66));
        assertThat(((Good) millimeters.read("5'-6\"")).length()).isEqualTo(Length.inches(66));
        assertThat(((Good) millimeters.read("3,5")).length()).isEqualTo(Length.millimeters(3.5));
        assertThat(echo(millimeters.read("3,5"))).isEqualTo(Said.note("reading-echo", "3,5 read as 3.5 mm."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3/4|3/4 in or mm?|Write 3/4 in, or 0.75 mm.",
                "2-1/2|2-1/2 in or mm?|Write 2-1/2 in, or 2.5 mm.",
                "-1 3/8|-1 3/8 in or mm?|Write -1 3/8 in, or -1.375 mm.",
                "6-5/8+|6-5/8 in or mm?|Write 6-5/8 in, or 6.625 mm.",
                "13/8|13/8 in or mm?|Write 13/8 in, or 1.625 mm.",
                "38 + 3/4|3/4 in or mm?|Write 3/4 in, or 0.75 mm."
            })
    void a_bare_fraction_of_a_metric_file_is_asked_about_since_nobody_writes_millimeters_so(
            String written, String message, String cure) {
        assertThat(said(millimeters.read(written)))
                .isEqualTo(Said.refusal("ambiguous", message).cure(cure));
    }

    @Test
    void a_fraction_that_names_its_unit_is_no_riddle_in_a_metric_file() {
        assertThat(millimeters.read("3/4 in")).isEqualTo(new Good(Length.inches(0.75), Optional.empty()));
        assertThat(millimeters.read("3/4 mm")).isEqualTo(new Good(Length.millimeters(0.75), Optional.empty()));
        assertThat(millimeters.read("5'-6 1/2\"")).isEqualTo(new Good(Length.inches(66.5), Optional.empty()));
        assertThat(said(millimeters.read("3/43")).cure()).isEqualTo("Meant 3/4 in?");
        assertThat(said(millimeters.read("wide?")).cure()).isEqualTo("Write it as 38, 38 mm, 3.8 cm or 1-1/2 in.");
    }

    @ParameterizedTest
    @CsvSource({"1-3/8,1.375", "1-3/8 in,1.375", "1–3/8,1.375", "6-1/4,6.25"})
    void a_hyphen_before_a_fraction_is_ordinary_and_needs_no_word(String written, double expected) {
        assertThat(inches.read(written)).isEqualTo(new Good(Length.inches(expected), Optional.empty()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "13/8|1.625|13/8 read as 1.625: is that meant?",
                "4/4|1|4/4 read as 1: is that meant?",
                "1 13/8|2.625|1 13/8 read as 2.625: is that meant?",
                "5'14\"|74|5'14\" read as 74: is that meant?",
                "5' - 6\"|54|5' - 6\" read as 54: is that meant?",
                "1 - 3/8|0.625|1 - 3/8 read as 0.625: is that meant?"
            })
    void what_may_be_a_slip_is_asked_about(String written, double expected, String message) {
        assertThat(length(written)).isEqualTo(Length.inches(expected));
        assertThat(echo(written)).isEqualTo(Said.note("ambiguous", message));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "5'6|66|5'6 read as 5 ft 6 in = 66.",
                "5' 6 1/2|66.5|5' 6 1/2 read as 5 ft 6-1/2 in = 66.5.",
                "5 ft 6|66|5 ft 6 read as 5 ft 6 in = 66.",
                "5'-6.25|66.25|5'-6.25 read as 5 ft 6.25 in = 66.25."
            })
    void feet_followed_by_a_bare_number_are_feet_and_inches(String written, double expected, String message) {
        assertThat(length(written)).isEqualTo(Length.inches(expected));
        assertThat(echo(written)).isEqualTo(Said.note("mixed-marks", message));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "6-5/8+|6.625|6.625",
                "2+|2|2",
                "66\"-|66|66",
                "-6-5/8-|-6.625|-6.625",
                "38 mm+|1.4960629921259843|38 mm",
                "32.7+ mm|1.2874015748031495|32.7 mm",
                "-38- mm|-1.4960629921259843|-38 mm",
                "3.8+cm|1.4960629921259843|3.8 cm",
                "1-1/4- in|1.25|1.25",
                "5/16+\"|0.3125|0.3125",
                "5'-6+\"|66|66"
            })
    void the_mark_behind_a_printed_size_is_dropped_with_a_word(String written, double expected, String number) {
        assertThat(length(written)).isEqualTo(Length.inches(expected));
        assertThat(echo(written))
                .isEqualTo(Said.note(
                        "trailing-mark",
                        written + " read as " + number + ": the mark behind a printed size was dropped."));
    }

    @ParameterizedTest
    @CsvSource({
        "lip,0.25",
        "-lip,-0.25",
        "+lip,0.25",
        "- lip,-0.25",
        "top of case,7",
        "height - lip,95.75",
        "height + 1/2 - lip,96.25",
        "lip + 1/4 - 1/8,0.375",
        "height − lip,95.75",
        "1/4 - -1/4,0.5",
        "lip + 25.4 mm,1.25"
    })
    void terms_are_joined_by_signs_between_blanks(String written, double expected) {
        assertThat(length(written).near(Length.inches(expected), Length.inches(1e-12)))
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "1/3 of height,32", "0.4 of lip,0.1", "1/2 of 1/3 of height,16", "½ of lip,0.125", "2 of lip,0.5",
        "-1/3 of height,-32", "1/2 of top of case,3.5", "height - 1/3 of height,64", "'0,5 of lip',0.125",
                "1/3 of 12\",4"
    })
    void a_share_may_have_any_denominator(String written, double expected) {
        assertThat(length(written).toInches()).isEqualTo(expected, within(1e-12));
    }

    @Test
    void the_gravest_word_of_a_sum_is_the_one_said() {
        assertThat(echo("1-3/8 + 13/8").message()).isEqualTo("13/8 read as 1.625: is that meant?");
        assertThat(echo("13/8 + 5'6").message()).isEqualTo("13/8 read as 1.625: is that meant?");
        assertThat(echo("lip + 13/8 + 1-3/8").message()).isEqualTo("13/8 read as 1.625: is that meant?");
    }

    @ParameterizedTest
    @CsvSource({
        "3/43,Meant 3/4?",
        "7/18,Meant 7/8?",
        "3/61,Meant 3/16?",
        "1/3,Meant 5/16?",
        "3/10,Meant 5/16?",
        "13/7,Meant 1-7/8?",
        "1/1000,Write it as a decimal.",
        "3/128,Write it as a decimal.",
        "99999/3,Write it as a decimal."
    })
    void a_fraction_that_is_on_no_tape_is_a_slip(String written, String cure) {
        assertThat(said(inches.read(written)))
                .isEqualTo(refused(
                        "fraction-mistyped",
                        written + " is not a shop fraction (halves, quarters, 8ths, 16ths, 32nds, 64ths).",
                        cure));
    }

    @Test
    void the_slip_is_found_inside_a_longer_size() {
        assertThat(said(inches.read("lip + 1-3/43 in")).message())
                .isEqualTo("3/43 is not a shop fraction (halves, quarters, 8ths, 16ths, 32nds, 64ths).");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "1/0|'1/0' divides by zero.",
                "1-3/0|'1-3/0' divides by zero.",
                "1/0 of lip|'1/0 of lip' divides by zero.",
                "1e308|'1e308' is not a length.",
                "NaN|'NaN' is not a length.",
                "inf|'inf' is not a length.",
                "-Infinity|'-Infinity' is not a length.",
                "1,234,567|'1,234,567' is not a length.",
                "2x4|'2x4' is not a length.",
                "3 apples|'3 apples' is not a length.",
                "1/2/3|'1/2/3' is not a length.",
                "--3|'--3' is not a length.",
                "lip +|'lip +' ends in a sign with nothing behind it.",
                "+|'+' ends in a sign with nothing behind it.",
                "-|'-' ends in a sign with nothing behind it.",
                "''|''' is not a length.",
                "٣|'٣' is not a length."
            })
    void what_is_no_length_is_refused(String written, String message) {
        String shown = written.equals("''") ? "'''' is not a length." : message;
        assertThat(said(inches.read(written))).isEqualTo(refused("not-a-length", shown, HOW_TO_WRITE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t"})
    void nothing_is_no_length(String written) {
        assertThat(said(inches.read(written))).isEqualTo(refused("not-a-length", "No length is given.", HOW_TO_WRITE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"99999999", "10001 ft", "-120001", "9999999999999 mm", "2000 of height", "119999 + 2"})
    void nothing_is_longer_than_ten_thousand_feet(String written) {
        assertThat(said(inches.read(written)))
                .isEqualTo(refused(
                        "not-a-length",
                        "'" + written + "' is longer than 10000 ft.",
                        "Check the figure and its unit."));
    }

    @Test
    void the_longest_length_is_still_read() {
        assertThat(length("10000 ft")).isEqualTo(Length.inches(120_000));
        assertThat(length("-10000 ft")).isEqualTo(Length.inches(-120_000));
    }

    @Test
    void a_text_without_end_is_refused_without_reading_it() {
        assertThat(said(inches.read("1/2 of ".repeat(100_000))))
                .isEqualTo(refused("not-a-length", "A text of 700000 characters is not a length.", HOW_TO_WRITE));
        assertThat(inches.read("9".repeat(199))).isInstanceOf(Bad.class);
    }

    @Test
    void an_unknown_name_brings_the_nearest_known_one() {
        assertThat(said(inches.read("height - lpi")))
                .isEqualTo(refused("unknown-name", "No length is called 'lpi'.", "Did you mean lip?"));
        assertThat(said(inches.read("1/3 of Height")))
                .isEqualTo(refused("unknown-name", "No length is called 'Height'.", "Did you mean height?"));
        assertThat(said(inches.read("architrave")))
                .isEqualTo(refused(
                        "unknown-name", "No length is called 'architrave'.", "Known here: height, lip, top of case."));
        assertThat(said(millimeters.read("lip")))
                .isEqualTo(refused(
                        "unknown-name", "No length is called 'lip'.", "Write it as 38, 38 mm, 3.8 cm or 1-1/2 in."));
    }

    @Test
    void a_sum_can_be_taken_apart_without_reading_it() {
        assertThat(LengthReader.terms("frieze.top − lip +  1/4"))
                .containsExactly(
                        new LengthReader.Term(false, "frieze.top"),
                        new LengthReader.Term(true, "lip"),
                        new LengthReader.Term(false, "1/4"));
    }

    private Length length(String written) {
        Reading reading = inches.read(written);
        assertThat(reading).as(written).isInstanceOf(Good.class);
        return ((Good) reading).length();
    }

    private Said echo(String written) {
        return echo(inches.read(written));
    }

    private static Said echo(Reading reading) {
        return Said.of(SizeNotices.of(((Good) reading).echo().orElseThrow()));
    }

    private static Said refused(String code, String message, String cure) {
        return Said.refusal(code, message).cure(cure);
    }

    private static Said said(Reading reading) {
        return Said.of(SizeNotices.of((Bad) reading));
    }
}
