package buildup.engine.judge.must;

import buildup.engine.hold.tolerance.Wanted;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
                                                !role.columns(source.sheet()).isEmpty())
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
     * @param held keys that the document holds at its root
     * @param lengths reads lengths in the unit of the document and with its named sizes
     */
    public static List<MustResult> of(
            List<Scalar> lines, List<Sheet> sheets, Set<String> held, LengthReader lengths, Notices notices) {
        MustReader reader = new MustReader(new KnownFigures(sheets), lengths, notices);
        List<MustResult> all = new ArrayList<>();
        for (Scalar line : lines) {
            reader.read(line).ifPresent(rule -> {
                Collection<Double> figures = rule.figure().here();
                MustResult met = rule.on(figures);
                all.add(met);
                if (!met.met()) {
                    Notice notice = figures.isEmpty()
                            ? withoutFigure(rule, held)
                            : met.figure().isEmpty() ? MustNotices.ENDLESS.with("rule", met.rule()) : lacks(met);
                    notices.add(notice.at(met.mark()));
                }
            });
        }
        return List.copyOf(all);
    }

    /** Whether each line asks for a figure of these sheets, and nothing is wrong with it. */
    public static boolean understood(List<Scalar> lines, List<Sheet> sheets, LengthReader lengths) {
        MustReader reader = MustReader.silent(sheets, lengths);
        return lines.stream().allMatch(line -> reader.read(line).isPresent());
    }

    /** Whether some line begins with the word for a figure, in any case. */
    public static boolean speakOf(List<Scalar> lines, String figure) {
        return lines.stream()
                .anyMatch(line -> line.text().strip().toLowerCase(Locale.ROOT).startsWith(figure));
    }

    /** The wishes as written; claims the key. */
    public static List<Scalar> wishLines(Fields root) {
        return root.scalars("wish");
    }

    /**
     * What the lines ask for; a line that cannot be read is refused and left out.
     *
     * @param sheets of a stack, in which figures and names are looked up
     */
    public static List<MustRule> rules(List<Scalar> lines, List<Sheet> sheets, LengthReader lengths, Notices notices) {
        MustReader reader = new MustReader(new KnownFigures(sheets), lengths, notices);
        return lines.stream().flatMap(line -> reader.read(line).stream()).toList();
    }

    /** What the lines under {@code wish:} ask for; a line that cannot be read is refused and left out. */
    public static List<WishRule> wishes(List<Scalar> lines, List<Sheet> sheets, LengthReader lengths, Notices notices) {
        WishReader reader = new WishReader(new MustReader(new KnownFigures(sheets), lengths, notices), notices);
        return lines.stream().flatMap(line -> reader.read(line).stream()).toList();
    }

    /**
     * That no stack has the figure of a wish, and which key asks for it.
     *
     * @param held keys that the document holds at its root
     */
    public static Notice withoutFigure(WishRule wish, Set<String> held) {
        AskedFigure figure = wish.figure().orElseThrow();
        Optional<String> key = AskingKey.of(figure.sheet(), held);
        boolean cost = figure.sheet().equals(AskingKey.COST);
        return (key.isPresent() ? MustNotices.NOT_ASKED_FOR : cost ? MustNotices.NO_COST : MustNotices.NONE_HAS_IT)
                .with("wish", wish.text())
                .with("key", key.orElse(""))
                .at(wish.mark());
    }

    /**
     * Between what the figures of some sheets have to lie, as the lines say; one for each row that a line speaks of.
     *
     * @param sheets of which lines may speak; lines on others are passed over
     */
    public static List<Wanted> wanted(List<Scalar> lines, List<Sheet> sheets, LengthReader lengths) {
        // what is wrong with a line is said where all sheets are known
        MustReader reader = MustReader.silent(sheets, lengths);
        List<Wanted> wanted = new ArrayList<>();
        for (Scalar line : lines) {
            reader.read(line).ifPresent(rule -> {
                KnownFigures.Source source = rule.figure().source();
                for (Row row : source.sheet().rows()) {
                    if (rule.figure().speaksOf(row)) {
                        wanted.add(wanted(rule, source, source.sheet().names(row)));
                    }
                }
            });
        }
        return List.copyOf(wanted);
    }

    private static Wanted wanted(MustRule rule, KnownFigures.Source source, List<String> names) {
        boolean equal = rule.relation() == MustRule.Relation.EQUAL;
        boolean least =
                equal || rule.relation() == MustRule.Relation.AT_LEAST || rule.relation() == MustRule.Relation.MORE;
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
        MustReader reader = MustReader.silent(List.of(sheet), lengths);
        Set<List<String>> named = new LinkedHashSet<>();
        for (Scalar line : lines) {
            reader.read(line)
                    .ifPresent(rule -> sheet.rows().stream()
                            .filter(row -> rule.figure().speaksOf(row))
                            .forEach(row -> named.add(sheet.names(row))));
        }
        return named;
    }

    private static Notice lacks(MustResult met) {
        return MustNotices.NOT_MET
                .with("rule", met.rule())
                .with("figure", met.told().orElseThrow())
                .amount(met.lacks().orElseThrow());
    }

    private static Notice withoutFigure(MustRule rule, Set<String> held) {
        // of a key below one that is there it is not known whether it is
        Optional<String> key =
                AskingKey.of(rule.figure().sheet(), held).filter(asks -> !held.contains(asks.replaceAll("\\..*", "")));
        return (key.isPresent() ? MustNotices.FIGURE_NOT_ASKED_FOR : MustNotices.NO_SUCH_FIGURE)
                .with("rule", rule.text())
                .with("key", key.orElse(""));
    }
}
