package buildup.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.cli.Agreement;
import buildup.cli.MetricTwin;
import buildup.cli.Ran;
import buildup.cli.TwinTables;
import buildup.cli.compare.ChangeWords;
import buildup.cli.compare.Comparison;
import buildup.cli.report.CutsTelling;
import buildup.cli.report.QuoteTelling;
import buildup.cli.tell.Beside;
import buildup.cli.tell.BesideTables;
import buildup.cli.tell.SheetTables;
import buildup.cli.tell.Telling;
import buildup.engine.Cuts;
import buildup.engine.mill.quote.Order;
import buildup.engine.mill.quote.Quote;
import buildup.engine.room.sticks.Limit;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is cut, quoted, checked and compared of a job and of its twin in millimeters is one thing in two units. */
class MetricTwinOfOthersTest {
    /** What echoes the words of the document. */
    private static final Set<String> ECHOES = Set.of("pieces.profile", "pieces.blank.stock", "verdict.because");

    private static final String CASE = Ran.read(Ran.demo("reading-room-case.yaml"));
    private static final String ORDER = Ran.read(Ran.demo("reading-room-order.yaml"));

    private static final String CORNICE = Ran.read(Ran.demo("reading-room-cornice.yaml"));

    /** Steps of a search: enough for a plan, whichever it is. */
    private static final long STEPS = 50_000;

    static Stream<Path> stacks() {
        return MetricTwinTest.stacks();
    }

    private static Telling cuts(String stack) {
        return CutsTelling.of(Cuts.of(Typed.of(stack), new Limit(STEPS, (steps, most) -> true)));
    }

    private static Telling quote(String order) {
        Notices notices = new Notices();
        return DocumentReader.read("order.yaml", order.getBytes(UTF_8), notices)
                .flatMap(document -> Order.read(document, Catalog.builtIn(), new Claims(), notices))
                .map(wanted -> Quote.of(wanted, Catalog.builtIn(), notices))
                .map(QuoteTelling::shop)
                .orElseThrow(() -> new AssertionError(notices.sorted()));
    }

    private static List<String> faults(Telling inches, Telling metric) {
        List<String> faults = new ArrayList<>(TwinTables.faults(
                new SheetTables(inches.printer()).of(inches.sheets()),
                new SheetTables(metric.printer()).of(metric.sheets())));
        assertThat(metric.before()).hasSameSizeAs(inches.before());
        assertThat(metric.after()).hasSameSizeAs(inches.after());
        List<Phrase> one =
                Stream.concat(inches.before().stream(), inches.after().stream()).toList();
        List<Phrase> other =
                Stream.concat(metric.before().stream(), metric.after().stream()).toList();
        for (int i = 0; i < one.size(); i++) {
            String said = inches.printer().print(one.get(i));
            if (!said.startsWith("Sizes in inches")) {
                Agreement.fault(said, metric.printer().print(other.get(i))).ifPresent(faults::add);
            }
        }
        return faults;
    }

    @Test
    void lengths_settings_sticks_and_costs() {
        // wood is measured on 64ths of an inch or on tenths of a millimeter: MetricCutsTest holds sticks to that
        assertThat(faults(cuts(CASE), cuts(MetricTwin.of(CASE))))
                .allSatisfy(fault -> assertThat(fault).startsWith("STICK BY STICK"));
    }

    @Test
    void what_a_mill_asks_and_what_it_rests_on() {
        // what is charged is whole hundredths a foot or a meter: QuoteCommandTest holds how far apart the two may be
        assertThat(faults(quote(ORDER), quote(MetricTwin.of(ORDER))))
                .allSatisfy(
                        fault -> assertThat(fault)
                                .matches(
                                        "(?s)(PRICES|OTHER QUANTITIES|TOTAL).*, total: .*|HOW EACH FIGURE CAME ABOUT.*, amount: .*"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"text", "csv"})
    void no_inch_is_left_in_what_a_metric_order_is_told(String format) {
        Ran ran = Ran.with(MetricTwin.of(ORDER).getBytes(UTF_8), "quote", "-", "--format", format);
        assertThat(ran.code()).isZero();
        assertThat(TwinTables.customary(ran.out() + ran.err())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void each_is_checked_alike(Path stack) {
        Ran one = Ran.with(Ran.read(stack).getBytes(UTF_8), "check", "-");
        Ran other = Ran.with(MetricTwin.of(Ran.read(stack)).getBytes(UTF_8), "check", "-");
        assertThat(other.code()).isEqualTo(one.code());
        assertThat(Agreement.fault(one.out(), other.out())).isEmpty();
        assertThat(TwinTables.customary(other.out())).isEmpty();
    }

    @Test
    void two_of_them_are_set_beside_each_other_alike() {
        Comparison inches = beside(CASE, CORNICE);
        Comparison metric = beside(MetricTwin.of(CASE), MetricTwin.of(CORNICE));
        assertThat(metric.differing()).isEqualTo(inches.differing()).isPositive();
        FigurePrinter printer = new FigurePrinter(LengthUnit.MILLIMETER);
        assertThat(TwinTables.faults(
                        new BesideTables(FigurePrinter.INCHES).of(inches.sheets()),
                        new BesideTables(printer).of(metric.sheets())))
                .isEmpty();
        List<String> one = ChangeWords.of(inches, FigurePrinter.INCHES);
        List<String> other = ChangeWords.of(metric, printer);
        assertThat(other).hasSameSizeAs(one);
        for (int i = 0; i < one.size(); i++) {
            assertThat(Agreement.fault(one.get(i), other.get(i))).isEmpty();
        }
        assertThat(TwinTables.customary(String.join("\n", other))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void a_stack_and_its_twin_differ_in_no_figure(Path stack) {
        Comparison comparison = beside(Ran.read(stack), MetricTwin.of(Ran.read(stack)));
        List<String> differing = comparison.figures().stream()
                // a line under must is known by its words
                .filter(beside -> !beside.sheet().key().equals("must"))
                .flatMap(beside -> beside.pairs().stream().flatMap(pair -> differing(beside, pair)))
                .filter(figure -> !ECHOES.contains(figure))
                .toList();
        assertThat(differing).isEmpty();
        assertThat(comparison.figures()).isNotEmpty();
    }

    private static Stream<String> differing(Beside beside, Beside.Pair pair) {
        return IntStream.range(0, pair.columns().size())
                .filter(i -> !pair.both() || !pair.alike(i))
                .mapToObj(
                        i -> beside.sheet().key() + "." + pair.columns().get(i).key());
    }

    private static Comparison beside(String first, String second) {
        return Comparison.of(Typed.of(first), Typed.of(second)).orElseThrow();
    }
}
