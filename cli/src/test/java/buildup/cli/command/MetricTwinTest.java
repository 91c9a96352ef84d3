package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Agreement;
import buildup.cli.Agreement.Bare;
import buildup.cli.MetricTwin;
import buildup.cli.Ran;
import buildup.cli.Sheeted;
import buildup.cli.TwinTables;
import buildup.cli.report.SectionTables;
import buildup.cli.table.Table;
import buildup.engine.Answer;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A stack and its twin in millimeters are one stack: what is told of the one is told of the other, in its unit. */
@Tag("long")
class MetricTwinTest {
    /** What is worded in the unit of the document, or echoes words of it. */
    private static final Set<String> WORDS =
            Set.of("units", "message", "cure", "because", "profile", "stock", "use", "rule", "instead");

    private static final Pattern LABEL = Pattern.compile("<text[^>]*>([^<]*)</text>|<desc>([^<]*)</desc>");

    @TempDir
    private Path folder;

    static Stream<Path> stacks() {
        Path starters = Path.of("src/main/resources/buildup/cli/new");
        return Stream.of(
                Ran.demo("reading-room-cornice.yaml"),
                Ran.demo("reading-room-case.yaml"),
                Ran.demo("reading-room-door-head.yaml"),
                Ran.demo("reading-room-mantel.yaml"),
                Ran.demo("reading-room-wainscot-cap.yaml"),
                starters.resolve("cornice.yaml"),
                starters.resolve("door-head.yaml"),
                starters.resolve("cap.yaml"),
                Ran.stack("wainscot-cap.yaml"));
    }

    @Test
    void the_twin_holds_exact_millimeters() {
        assertThat(MetricTwin.of("""
                units: in # for bare numbers
                sizes: { turn: 1/4 }
                eyes: [{ name: eye 2, distance: 72, height: floor + 60 }]
                lights: [{ name: far, altitude: 35.264, azimuth: 45 }]
                pieces:
                  - { name: rail, profile: 1x4, back: wall - 3/4, top: -1-1/16 }
                  - { name: cap, section: [out 1-1/2, bead up 3/4 as nose], spring: 38 }
                fastenings: [{ use: 15 ga x 2-1/2, per: 2 }]
                """)).isEqualTo("""
                units: mm # for bare numbers
                sizes: { turn: 6.35 }
                eyes: [{ name: eye 2, distance: 1828.8, height: floor + 1524 }]
                lights: [{ name: far, altitude: 35.264, azimuth: 45 }]
                pieces:
                  - { name: rail, profile: 1x4, back: wall - 19.05, top: -26.9875 }
                  - { name: cap, section: [out 38.1, bead up 19.05 as nose], spring: 38 }
                fastenings: [{ use: 15 ga x 63.5 mm, per: 2 }]
                """);
    }

    @Test
    void the_check_itself_sees_a_size_that_is_another() {
        assertThat(Agreement.fault("fascia: bottom 5-1/4", "fascia: bottom 133.4-"))
                .isEmpty();
        assertThat(Agreement.fault("fascia: bottom 5-1/4", "fascia: bottom 133.5-"))
                .isPresent();
        assertThat(Agreement.fault("fascia: bottom 5-1/4", "fascia: bottom 5-1/4"))
                .isPresent();
        assertThat(Agreement.fault("4.63 lb a foot", "6.89 kg a meter")).isEmpty();
        assertThat(Agreement.fault("4.63 lb a foot", "4.63 lb a foot")).isPresent();
        assertThat(Agreement.fault("at 45.0 degrees", "at 45.0 degrees")).isEmpty();
    }

    private static String metric(Path stack) {
        return MetricTwin.of(Ran.read(stack));
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void every_cell_of_every_table_agrees(Path stack) {
        Answer inches = Typed.of(Ran.read(stack));
        Answer metric = Typed.of(metric(stack));
        List<Table> one = new SectionTables(inches.known().orElseThrow(), FigurePrinter.INCHES).all();
        List<Table> other = new SectionTables(metric.known().orElseThrow(), new FigurePrinter(metric.unit())).all();
        assertThat(TwinTables.faults(one, other)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void the_text_reads_alike_from_its_first_word_to_its_last_and_holds_no_inch(Path stack) {
        Ran one = Ran.with(Ran.read(stack).getBytes(UTF_8), "report", "-");
        Ran other = Ran.with(metric(stack).getBytes(UTF_8), "report", "-");
        assertThat(other.code()).isEqualTo(one.code());
        assertThat(TwinTables.customary(other.out())).isEmpty();
        String first = head(one.out());
        String second = head(other.out());
        assertThat(Agreement.fault(first, second)).isEmpty();
    }

    /** The verdict, which is told in sentences. */
    private static String head(String report) {
        return report.substring(0, report.indexOf("\nSizes in "));
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void each_notice_agrees(Path stack) {
        Ran one = Ran.with(Ran.read(stack).getBytes(UTF_8), "report", "-");
        Ran other = Ran.with(metric(stack).getBytes(UTF_8), "report", "-");
        List<String> first = one.err().lines().toList();
        List<String> second = other.err().lines().toList();
        assertThat(second).hasSameSizeAs(first);
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < first.size(); i++) {
            Agreement.fault(first.get(i), second.get(i)).ifPresent(faults::add);
        }
        assertThat(faults).isEmpty();
        assertThat(TwinTables.customary(other.err())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void programs_are_told_the_same(Path stack) {
        JsonNode one = json(Ran.read(stack));
        JsonNode other = json(metric(stack));
        assertThat(one.get("units").stringValue()).isEqualTo("in");
        assertThat(other.get("units").stringValue()).isEqualTo("mm");
        List<String> faults = new ArrayList<>();
        same(one, other, "", faults);
        assertThat(faults).isEmpty();
    }

    private static JsonNode json(String stack) {
        return new JsonMapper()
                .readTree(Ran.with(stack.getBytes(UTF_8), "report", "-", "--format", "json")
                        .out());
    }

    private static void same(JsonNode one, JsonNode other, String where, List<String> faults) {
        if (one.isObject() && other.isObject()) {
            if (!List.copyOf(one.propertyNames()).equals(List.copyOf(other.propertyNames()))) {
                faults.add(where + ": " + one.propertyNames() + " and " + other.propertyNames());
                return;
            }
            one.propertyNames().stream()
                    .filter(key -> !WORDS.contains(key))
                    .forEach(key -> same(one.get(key), other.get(key), where + "/" + key, faults));
        } else if (one.isArray() && other.isArray() && one.size() == other.size()) {
            for (int i = 0; i < one.size(); i++) {
                same(one.get(i), other.get(i), where + "/" + i, faults);
            }
        } else if (one.isNumber() && other.isNumber()) {
            if (Math.abs(one.doubleValue() - other.doubleValue()) > 2e-6 * Math.max(1, Math.abs(one.doubleValue()))) {
                faults.add(where + ": " + one + " and " + other);
            }
        } else if (!one.equals(other)
                && Agreement.fault(one.toString(), other.toString()).isPresent()) {
            faults.add(where + ": " + one + " and " + other);
        }
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void a_spreadsheet_holds_the_same_figures_under_the_other_unit(Path stack) {
        List<Sheeted.Block> one = csv(Ran.read(stack));
        List<Sheeted.Block> other = csv(metric(stack));
        assertThat(other).hasSameSizeAs(one);
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            Sheeted.Block a = one.get(i);
            Sheeted.Block b = other.get(i);
            assertThat(b.rows()).as(a.title()).hasSameSizeAs(a.rows());
            for (int column = 0; column < a.headings().size(); column++) {
                String head = a.headings().get(column);
                double factor = factor(head, b.headings().get(column));
                for (int row = 0; row < a.rows().size(); row++) {
                    String x = a.rows().get(row).get(column);
                    String y = b.rows().get(row).get(column);
                    boolean own = column + 1 < a.headings().size()
                            && a.headings().get(column + 1).equals("unit of " + head);
                    double of = own
                            ? factor(
                                    a.rows().get(row).get(column + 1),
                                    b.rows().get(row).get(column + 1))
                            : factor;
                    boolean unit = head.startsWith("unit of ");
                    if (!unit && !same(x, y, of)) {
                        faults.add(a.title() + ", " + head + ": " + x + " and " + y);
                    }
                }
            }
        }
        assertThat(faults).isEmpty();
        assertThat(TwinTables.customary(Ran.with(metric(stack).getBytes(UTF_8), "report", "-", "--format", "csv")
                        .out()))
                .isEmpty();
    }

    private static List<Sheeted.Block> csv(String stack) {
        return Sheeted.blocks(Ran.with(stack.getBytes(UTF_8), "report", "-", "--format", "csv")
                .out());
    }

    /** What a figure is multiplied by, from the units at the ends of the headings. */
    private static double factor(String inches, String metric) {
        if (inches.equals(metric)) {
            return 1;
        }
        return Arrays.stream(Quantity.values())
                .filter(quantity -> ends(inches, quantity.unit(false)) && ends(metric, quantity.unit(true)))
                .filter(quantity -> stem(inches, quantity.unit(false)).equals(stem(metric, quantity.unit(true))))
                // square feet end in feet, and are none
                .max(Comparator.comparingInt(quantity -> quantity.unit(false).length()))
                .map(quantity -> quantity.shown(1, true) / quantity.shown(1, false))
                .orElseThrow(() -> new AssertionError(inches + " and " + metric));
    }

    private static boolean ends(String heading, String unit) {
        return !unit.isEmpty() && heading.endsWith(unit);
    }

    private static String stem(String heading, String unit) {
        return heading.substring(0, heading.length() - unit.length());
    }

    private static boolean same(String one, String other, double factor) {
        if (one.matches("-?[0-9.]+") && other.matches("-?[0-9.]+")) {
            double a = Double.parseDouble(one);
            double b = Double.parseDouble(other);
            // either is written with six decimals
            return Math.abs(a * factor - b) <= 1e-6 * (1 + factor) + 1e-9 * Math.abs(b)
                    || Math.abs(a * 25.4 - b) <= 1e-6 * 26.4 && factor == 1 && one.length() > 0;
        }
        return one.equals(other) || Agreement.fault(one, other).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void the_labels_of_every_picture_agree(Path stack) {
        for (String view : List.of("section", "elevation", "rays", "holds")) {
            List<String> one = labels(Ran.read(stack), view);
            List<String> other = labels(metric(stack), view);
            assertThat(TwinTables.customary(String.join("\n", other))).as(view).isEmpty();
            assertThat(other.stream()
                            .map(MetricTwinTest::spoken)
                            .filter(label -> one.stream()
                                    .map(MetricTwinTest::spoken)
                                    .noneMatch(
                                            mine -> Agreement.fault(mine, label).isEmpty())))
                    .as("%s: labels in millimeters without their like in inches, of %s", view, one)
                    .isEmpty();
        }
    }

    /** As above, of a stack that asks for both: here too lines break where they must. */
    @ParameterizedTest
    @ValueSource(strings = {"proportion", "clearance"})
    void the_judgments_on_a_mantel_agree(String view) {
        Path stack = Ran.demo("reading-room-mantel.yaml");
        String one = spoken(String.join(" ", labels(Ran.read(stack), view)));
        String other = spoken(String.join(" ", labels(metric(stack), view)));
        assertThat(TwinTables.customary(other)).isEmpty();
        assertThat(Agreement.fault(one, other)).isEmpty();
    }

    /** Its lines break where they must, so they are read as one text. */
    @ParameterizedTest
    @MethodSource("stacks")
    void the_steps_of_putting_up_agree(Path stack) {
        String one = spoken(String.join(" ", labels(Ran.read(stack), "steps")));
        String other = spoken(String.join(" ", labels(metric(stack), "steps")));
        assertThat(TwinTables.customary(other)).isEmpty();
        assertThat(Agreement.fault(one, other)).isEmpty();
    }

    /** Without what names the unit of the sheet. */
    private static String spoken(String label) {
        return label.replaceAll("Sizes in (inches|millimeters)", "Sizes")
                .replaceAll("[Tt]his line is (4 in|100 mm)", "this line is so long")
                .replaceAll("Grid (1/4 in|5 mm)", "Grid")
                .replaceAll(" in (high|of run)", " $1")
                .replaceAll(" in\\.$", ".");
    }

    private List<String> labels(String stack, String view) {
        Path file = folder.resolve(view + ".svg");
        Ran ran = Ran.with(stack.getBytes(UTF_8), "draw", "-", "--view", view, "-o", file.toString());
        assertThat(ran.code()).as(ran.err()).isLessThan(2);
        List<String> labels = new ArrayList<>();
        Matcher label = LABEL.matcher(Ran.read(file));
        while (label.find()) {
            labels.add(label.group(1) == null ? label.group(2) : label.group(1));
        }
        return labels;
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void the_page_shows_one_size_in_both_units_and_the_same_ones_for_both(Path stack) {
        String one = page(Ran.read(stack));
        String other = page(metric(stack));
        List<String> faults = new ArrayList<>();
        List<String> sizes = pairs(other, faults);
        assertThat(faults).isEmpty();
        List<String> missing = new ArrayList<>(pairs(one, faults));
        sizes.forEach(missing::remove);
        assertThat(missing).as("in inches alone").isEmpty();
        assertThat(sizes).hasSameSizeAs(pairs(one, faults));
        assertThat(TwinTables.customary(other.replaceAll("(?s)FORMULAS behind[^<]*</h3>.*?</section>", "")
                        .replaceAll("(?s)<script.*?</script>|<style>.*?</style>", "")
                        .replaceAll("<span class=\"in\">(?:[^<]|<span class=\"size\">[^<]*</span>)*</span>", "")
                        .replaceAll("(?s)<g id=\"a-dimensions-in\".*(?=<g id=\"a-dimensions-mm\")", "")
                        .replaceAll(" data-(?:in|head)=\"[^\"]*\"", "")
                        .replaceAll("<[^>]*>", "\n")
                        .replace("Grid in whole inches.", "")
                        .replaceAll("(?m)^inches$", "")))
                .isEmpty();
    }

    private static String page(String stack) {
        return Ran.with(stack.getBytes(UTF_8), "report", "-", "--format", "html")
                .out();
    }

    /** What is said in either unit, as it stands in the page. */
    private static List<String> pairs(String page, List<String> faults) {
        Matcher both = Pattern.compile(
                        "<span class=\"in\">((?:[^<]|<span class=\"size\">[^<]*</span>)*)</span><span class=\"mm\">([^<]*)</span>")
                .matcher(page);
        List<String> pairs = new ArrayList<>();
        while (both.find()) {
            String inches = both.group(1).replaceAll("<[^>]*>", "");
            // a line under must is told as it is written
            pairs.add((inches + " | " + both.group(2)).replaceAll("&#39;[^&]*&[gl]t;=[^&]*&#39;", "the line"));
            if (!inches.startsWith("Sizes in inches")) {
                Agreement.fault(inches, both.group(2))
                        .flatMap(fault -> Agreement.fault(inches, both.group(2), Bare.ANY))
                        .ifPresent(faults::add);
            }
        }
        return pairs;
    }
}
