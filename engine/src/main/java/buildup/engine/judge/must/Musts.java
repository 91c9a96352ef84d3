package buildup.engine.judge.must;

import buildup.engine.hold.tolerance.Wanted;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Holds a stack against the lines under {@code must:}. */
public final class Musts {
    private Musts() {}

    /**
     * A figure that a line may ask for.
     *
     * @param word as a line calls it
     * @param sheet the title of the sheet that it stands in
     * @param unit of an inch job; empty for bare numbers
     * @param narrowed the words that may stand behind it: of, over, in, from
     */
    public record Askable(String word, String sheet, String unit, List<String> narrowed) {
        /** Copies the list. */
        public Askable {
            narrowed = List.copyOf(narrowed);
        }
    }

    /** Every figure of some sheets that a line may ask for, in the order of the report. */
    public static List<Askable> askable(List<Sheet> sheets) {
        return new KnownFigures(sheets)
                .sources().stream()
                        .map(source -> new Askable(
                                KnownFigures.word(source.column()),
                                source.sheet().title().template(),
                                source.quantity().unit(false),
                                Arrays.stream(Role.values())
                                        .filter(role ->
                                                role.column(source.sheet()).isPresent())
                                        .map(Role::word)
                                        .toList()))
                        .toList();
    }

    /** The lines as written; claims the key. */
    public static List<Scalar> lines(Fields root) {
        return root.scalars("must");
    }

    /**
     * How the stack stands to each line, in their order; a line that cannot be read is refused and left out, one that is
     * not met is a problem.
     *
     * @param sheets of the stack
     * @param lengths reads lengths in the unit of the document and with its named sizes
     */
    public static List<MustResult> of(List<Scalar> lines, List<Sheet> sheets, LengthReader lengths, Notices notices) {
        MustReader reader = new MustReader(new KnownFigures(sheets), lengths, notices);
        List<MustResult> all = new ArrayList<>();
        for (Scalar line : lines) {
            reader.read(line).map(Musts::met).ifPresent(met -> {
                all.add(met);
                say(met, notices);
            });
        }
        return List.copyOf(all);
    }

    /** Whether each line asks for a figure of these sheets, and nothing is wrong with it. */
    public static boolean understood(List<Scalar> lines, List<Sheet> sheets, LengthReader lengths) {
        MustReader reader = new MustReader(new KnownFigures(sheets), lengths, new Notices());
        return lines.stream().allMatch(line -> reader.read(line).isPresent());
    }

    /**
     * Between what the figures of some sheets have to lie, as the lines say; one for each row that a line speaks of.
     *
     * @param sheets of which lines may speak; lines on others are passed over
     */
    public static List<Wanted> wanted(List<Scalar> lines, List<Sheet> sheets, LengthReader lengths) {
        // what is wrong with a line is said where all sheets are known
        MustReader reader = new MustReader(new KnownFigures(sheets), lengths, new Notices());
        List<Wanted> wanted = new ArrayList<>();
        for (Scalar line : lines) {
            reader.read(line).ifPresent(rule -> {
                KnownFigures.Source source = rule.sources().get(0);
                for (Row row : source.sheet().rows()) {
                    if (source.goesBy(row, rule.names())) {
                        wanted.add(wanted(rule, source, source.sheet().names(row)));
                    }
                }
            });
        }
        return List.copyOf(wanted);
    }

    private static Wanted wanted(MustRule rule, KnownFigures.Source source, List<String> names) {
        boolean equal = rule.comparison() == MustRule.Relation.EQUAL;
        boolean least =
                equal || rule.comparison() == MustRule.Relation.AT_LEAST || rule.comparison() == MustRule.Relation.MORE;
        boolean most = equal || !least;
        return new Wanted(
                source.sheet().key(),
                source.column().key(),
                names,
                least ? OptionalDouble.of(rule.value() - rule.within()) : OptionalDouble.empty(),
                most ? OptionalDouble.of(rule.value() + rule.within()) : OptionalDouble.empty());
    }

    /** The names of the rows of one sheet that the lines speak of. */
    public static Set<List<String>> named(List<Scalar> lines, Sheet sheet, LengthReader lengths) {
        // what is wrong with a line is said where all sheets are known
        MustReader reader = new MustReader(new KnownFigures(List.of(sheet)), lengths, new Notices());
        Set<List<String>> named = new LinkedHashSet<>();
        for (Scalar line : lines) {
            reader.read(line)
                    .ifPresent(rule -> sheet.rows().stream()
                            .filter(row -> rule.sources().get(0).goesBy(row, rule.names()))
                            .forEach(row -> named.add(sheet.names(row))));
        }
        return named;
    }

    private static void say(MustResult met, Notices notices) {
        if (met.met()) {
            return;
        }
        notices.add(
                met.figure().isEmpty()
                        ? MustNotices.NO_SUCH_FIGURE.with("rule", met.rule()).at(met.mark())
                        : MustNotices.NOT_MET
                                .with("rule", met.rule())
                                .with(
                                        "figure",
                                        Figure.of(met.quantity(), met.figure().getAsDouble()))
                                .amount(Figure.of(met.quantity(), met.missing().orElse(0)))
                                .at(met.mark()));
    }

    private static MustResult met(MustRule rule) {
        Collection<Double> figures = figures(rule);
        if (figures.isEmpty()) {
            return new MustResult(
                    rule.text(),
                    rule.mark(),
                    false,
                    rule.quantity(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }
        return figures.stream()
                .map(figure -> held(rule, figure))
                .reduce((one, other) -> worse(one) >= worse(other) ? one : other)
                .orElseThrow();
    }

    /** How bad: what is missing, or less than nothing by what there is to spare. */
    private static double worse(MustResult met) {
        return met.met() ? -met.spare().orElse(0) : met.missing().orElse(0);
    }

    private static MustResult held(MustRule rule, double figure) {
        double room = switch (rule.comparison()) {
            case AT_MOST, LESS -> rule.value() - figure;
            case AT_LEAST, MORE -> figure - rule.value();
            case EQUAL -> rule.within() - Math.abs(figure - rule.value());
        };
        boolean met = switch (rule.comparison()) {
            case LESS, MORE -> room > Tolerance.COINCIDENT;
            default -> room >= -Tolerance.COINCIDENT;
        };
        return new MustResult(
                rule.text(),
                rule.mark(),
                met,
                rule.quantity(),
                OptionalDouble.of(figure),
                met ? OptionalDouble.empty() : OptionalDouble.of(Math.max(0, -room)),
                met ? OptionalDouble.of(Math.max(0, room)) : OptionalDouble.empty());
    }

    /** The figures that the words of the line leave, those of one name added where they add up. */
    private static Collection<Double> figures(MustRule rule) {
        KnownFigures.Source source = rule.sources().get(0);
        Map<List<String>, Double> found = new LinkedHashMap<>();
        int number = 0;
        for (Row row : source.sheet().rows()) {
            OptionalDouble figure = source.of(row);
            if (figure.isPresent() && source.goesBy(row, rule.names())) {
                List<String> key = source.adds() ? source.sheet().names(row) : List.of(String.valueOf(number++));
                found.merge(key, figure.getAsDouble(), Double::sum);
            }
        }
        return found.isEmpty() && source.adds() && source.sheet().asked() ? List.of(0.0) : found.values();
    }
}
