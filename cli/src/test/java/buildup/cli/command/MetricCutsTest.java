package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.MetricTwin;
import buildup.cli.Ran;
import buildup.cli.command.files.ExitCode;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo round the case, and its twin with each size as its exact millimeter value. */
class MetricCutsTest {
    private static final String DEMO = Ran.demo("reading-room-case.yaml").toString();
    private static final String TWIN = MetricTwin.of(Ran.read(Ran.demo("reading-room-case.yaml")));

    /** A fraction that is no name of a board: 5/4x4 is one. */
    private static final Pattern FRACTION = Pattern.compile("\\d/(?!4x)\\d");

    /** Wood is measured on tenths of a millimeter, or on 64ths of an inch. */
    private static final double STEP = 1.0 / 64 + 0.1 / 25.4;

    private static Ran twin(String... options) {
        String[] words = new String[options.length + 2];
        words[0] = "cuts";
        words[1] = "-";
        System.arraycopy(options, 0, words, 2, options.length);
        return Ran.with(TWIN.getBytes(UTF_8), words);
    }

    @Test
    void the_figures_for_programs_are_those_of_the_job_in_inches() {
        SortedMap<String, Double> inches =
                MetricTwin.numbers(Ran.of("cuts", DEMO, "--format", "json").out());
        Ran ran = twin("--format", "json");
        SortedMap<String, Double> metric = MetricTwin.numbers(ran.out());
        assertThat(ran.out()).contains("\"units\": \"mm\"");
        assertThat(of(metric, "/lengths|/rounds|/scribes|/leans|/revealShifts|/coves|/joints|/rips"))
                .isEqualTo(of(inches, "/lengths|/rounds|/scribes|/leans|/revealShifts|/coves|/joints|/rips"))
                .hasSizeGreaterThan(300);
        SortedMap<String, Double> pieces = of(inches, "/pieces/\\d+/length");
        assertThat(of(metric, "/pieces/\\d+/length").keySet()).isEqualTo(pieces.keySet());
        of(metric, "/pieces/\\d+/length")
                .forEach((place, length) -> assertThat(length).as(place).isCloseTo(pieces.get(place), within(STEP)));
        for (String figure : List.of("/cost/wood", "/cost/labor", "/cost/total", "/totals/feet", "/totals/boardFeet")) {
            assertThat(metric.get(figure)).as(figure).isEqualTo(inches.get(figure));
        }
    }

    private static SortedMap<String, Double> of(SortedMap<String, Double> numbers, String places) {
        SortedMap<String, Double> some = new TreeMap<>(numbers);
        some.keySet()
                .removeIf(place ->
                        !Pattern.compile("^(" + places + ")").matcher(place).find());
        return some;
    }

    @Test
    void the_text_is_metric_from_its_lengths_to_its_lumber() {
        String text = twin().out();
        SortedMap<String, Double> inches =
                MetricTwin.numbers(Ran.of("cuts", DEMO, "--format", "json").out());
        // 0.3048 m in a foot and 0.002359737 cubic meters in a board foot: NIST SP 811, appendix B.8
        double meters = inches.get("/totals/feet") * 0.3048;
        double cubicMeters = inches.get("/totals/boardFeet") * 0.002359737;
        assertThat(text.lines())
                .allSatisfy(
                        line -> assertThat(line).hasSizeLessThanOrEqualTo(80).doesNotContainPattern(FRACTION));
        assertThat(text)
                .contains("Sizes in millimeters;")
                // 15 in, 14 in, 98 in long
                .containsPattern("bead +left side +381 +355\\.6 +355\\.6 +0 +25\\.4")
                .containsPattern("bead +front +2489\\.2 +2438\\.4")
                .containsPattern(String.format(Locale.ROOT, "sticks, end to end, m +%.2f\n", meters))
                .containsPattern(String.format(Locale.ROOT, "lumber, cubic meters +%.4f\n", cubicMeters))
                .contains("3657.6", "board 19.1- x 139.7")
                .doesNotContain(" ft", "board feet", "inch");
    }

    @Test
    void the_spreadsheet_is_in_millimeters() {
        List<String> inches = rows(Ran.of("cuts", DEMO, "--format", "csv").out());
        List<String> metric = rows(twin("--format", "csv").out());
        assertThat(metric.get(0))
                .contains("length mm", "stick length mm", "begins at mm")
                .doesNotContain(" in,");
        assertThat(metric).hasSameSizeAs(inches);
        for (int i = 1; i < metric.size(); i++) {
            assertThat(length(metric.get(i)) / 25.4).as(metric.get(i)).isCloseTo(length(inches.get(i)), within(STEP));
        }
    }

    /** Those of the lengths; the shopping list stands below. */
    private static List<String> rows(String csv) {
        return csv.lines().takeWhile(line -> !line.isBlank()).toList();
    }

    /** In the sixth column, behind a title in quotes that holds a comma. */
    private static double length(String row) {
        return Double.parseDouble(row.substring(row.indexOf("\",") + 2).split(",", -1)[4]);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "sticks"})
    void the_pictures_are_in_millimeters(String view, @TempDir Path folder) {
        Path drawn = folder.resolve(view + ".svg");
        Ran ran = Ran.with(TWIN.getBytes(UTF_8), "draw", "-", "--view", view, "-o", drawn.toString());
        assertThat(ran.code()).as(ran.err()).isNotEqualTo(ExitCode.REFUSED);
        String labels = String.join("\n", Ran.read(drawn).split("<(?!tspan|/tspan)[^>]*>"));
        assertThat(labels).contains("in millimeters", "2438.4").doesNotContainPattern(FRACTION);
    }

    @Test
    void the_page_is_metric_too() {
        assertThat(twin("--format", "html").out())
                .startsWith("<!DOCTYPE html>")
                .contains(">2489.2<", "cubic meters", "miter set-back left")
                .doesNotContain(">98<");
    }
}
