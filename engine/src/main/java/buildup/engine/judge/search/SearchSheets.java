package buildup.engine.judge.search;

import buildup.engine.judge.along.Turning;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.must.WishRule;
import buildup.engine.section.free.FreeSize;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a search has found, as sheets. */
public final class SearchSheets {
    /** One stack of a table: an answer, or today's. */
    private record Line(String name, Answered answered) {}

    /** One line under {@code must:} or {@code wish:} and what it comes to in each stack. */
    private record Held(String rule, String stack, boolean wished, Optional<MustResult> result) {}

    /** A wish and what a stack has of its figure. */
    private record Wished(WishRule wish, MustResult result) {}

    private final SearchResult result;
    private final List<FreeSize> sizes;
    private final Map<List<Integer>, String> files;

    private SearchSheets(SearchResult result, List<FreeSize> sizes, Map<List<Integer>, String> files) {
        this.result = result;
        this.sizes = sizes;
        this.files = files;
    }

    /**
     * All of them.
     *
     * @param result absent for the columns alone
     * @param sizes that were free
     * @param files by the choices of an answer, the file into which it was written
     * @param seconds that the search took
     */
    public static List<Sheet> of(
            Optional<SearchResult> result, List<FreeSize> sizes, Map<List<Integer>, String> files, double seconds) {
        List<SearchSheets> all = result.map(found -> new SearchSheets(found, sizes, files)).stream()
                .toList();
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(found(all, seconds));
        sheets.add(answers(all));
        sheets.add(figures(all));
        return List.copyOf(sheets);
    }

    private static Sheet found(List<SearchSheets> all, double seconds) {
        return Sheet.single("search", "", all.stream().findFirst())
                .many("best", "best", answer(), SearchSheets::best)
                .json()
                .one(
                        "smallest",
                        "smallest change",
                        ", ",
                        answer(),
                        sheets -> sheets.result.smallest().map(one -> sheets.named("smallest", one)))
                .json()
                .one(
                        "nearest",
                        "gives up least",
                        ", ",
                        answer(),
                        sheets -> sheets.result.nearest().map(one -> sheets.named("nearest", one)))
                .json()
                .many("turning", "turning", turning(), SearchSheets::turns)
                .json()
                .words("stacks", "stacks", sheets -> sheets.result.space().toString())
                .json()
                .count("judged", "tried", sheets -> sheets.result.judged())
                .json()
                .count("composed", "composed whole", sheets -> sheets.result.composed())
                .json()
                .count("unbuilt", "could not be put together", sheets -> sheets.result.unbuilt())
                .json()
                .one("without", "the first of these", ", ", without(), sheets -> sheets.result.without())
                .json()
                .count("meeting", "meet all", sheets -> sheets.result.meeting())
                .json()
                .flag("proved", "proved", sheets -> sheets.result.proved())
                .json()
                .words(
                        "ruledOut",
                        "ruled out",
                        sheets -> sheets.result.ruledOut().toString())
                .json()
                .amountIf(
                        "bound",
                        "nothing is better than",
                        SearchSheets::counted,
                        sheets -> sheets.gap(ProvedGap::bound))
                .json()
                .amountIf("gap", "gap", SearchSheets::counted, sheets -> sheets.gap(ProvedGap::amount))
                .json()
                .wordsIf(
                        "unbounded",
                        "known only of stacks that are tried",
                        sheets -> sheets.result.proof().unbounded())
                .json()
                .measure("seconds", "seconds", Quantity.COUNT, sheets -> Math.floor(seconds))
                .json()
                .tableOfEach(
                        "turning", "WHERE A RULE TURNS, each size alone, all others as they are", turningColumns(all))
                .sheet();
    }

    /** What is no length is found on no rule: where only such sizes turn, no column is kept for a shop size. */
    private static String[] turningColumns(List<SearchSheets> all) {
        boolean shop = all.stream()
                .flatMap(sheets -> sheets.result.turning().stream())
                .anyMatch(turn -> turn.quantity() == Quantity.LENGTH);
        return Stream.of("key", "rule", "at", "shop", "met")
                .filter(column -> shop || !column.equals("shop"))
                .map(column -> "turning." + column)
                .toArray(String[]::new);
    }

    private static Quantity counted(SearchSheets sheets) {
        return ProvedGap.of(sheets.result).map(ProvedGap::quantity).orElse(Quantity.TIMES);
    }

    private OptionalDouble gap(ToDoubleFunction<ProvedGap> of) {
        return ProvedGap.of(result).stream().mapToDouble(of).findFirst();
    }

    private record Named(String name, Answered answered, SearchSheets in) {}

    private Named named(String name, Answered answered) {
        return new Named(name, answered, this);
    }

    private List<Named> best() {
        return IntStream.range(0, result.best().size())
                .mapToObj(i -> named(String.valueOf(i + 1), result.best().get(i)))
                .toList();
    }

    private static Columns<Named> answer() {
        return Columns.<Named>inner()
                .many("changes", "changes", change(), one -> one.answered().changes())
                .count("meets", "meets", one -> meets(one.answered()))
                .many("wishes", "wishes", wishes(), one -> one.in().wished(one.answered()))
                .measureIf("cost", "cost", Quantity.MONEY, Rounding.NEAREST, one -> one.in.cost(one.answered()))
                .measure(
                        "score",
                        "far from what is wished",
                        Quantity.TIMES,
                        Rounding.decimals(3),
                        one -> one.answered().candidate().score())
                .flag("proved", "proved", one -> one.in.proved(one.name()))
                .wordsIf("file", "file", one -> one.in.file(one.answered()));
    }

    private boolean proved(String name) {
        return name.equals("smallest") ? result.smallestProved() : result.proved();
    }

    private Optional<String> file(Answered answered) {
        return Optional.ofNullable(files.get(answered.candidate().choices()));
    }

    private static Columns<SizeChange> change() {
        return Columns.<SizeChange>inner()
                .words("key", "size", SizeChange::key)
                .words("from", "from", SizeChange::from)
                .words("to", "to", SizeChange::to);
    }

    private static Columns<Unbuilt> without() {
        return Columns.<Unbuilt>inner()
                .many("changes", "changes", change(), Unbuilt::changes)
                .saying("why", "why", Unbuilt::why)
                .both();
    }

    private static long meets(Answered answered) {
        return answered.candidate().judged().musts().stream()
                .filter(MustResult::met)
                .count();
    }

    /** What the stack costs, where a wish has asked for it. */
    private OptionalDouble cost(Answered answered) {
        List<WishRule> wishes = result.goal().wishes();
        return IntStream.range(0, wishes.size())
                .filter(i -> wishes.get(i).aim() == WishRule.Aim.LEAST)
                .filter(i -> wishes.get(i)
                        .figure()
                        .filter(asked -> asked.quantity() == Quantity.MONEY)
                        .isPresent())
                .mapToObj(i -> answered.candidate().judged().wishes().get(i))
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** A place where a rule turns, and where along that size it turns again on either side. */
    private record Turns(Turning turning, Optional<Turning> before, Optional<Turning> behind) {}

    private List<Turns> turns() {
        List<Turning> all = result.turning();
        return IntStream.range(0, all.size())
                .mapToObj(i -> new Turns(all.get(i), along(all, i - 1, i), along(all, i + 1, i)))
                .toList();
    }

    /** The turn of one number, where it is one of the same rule along the same size as another. */
    private static Optional<Turning> along(List<Turning> all, int number, int other) {
        return number < 0 || number == all.size()
                ? Optional.empty()
                : Optional.of(all.get(number))
                        .filter(turn -> turn.key().equals(all.get(other).key())
                                && turn.rule().equals(all.get(other).rule()));
    }

    private static Columns<Turns> turning() {
        return Columns.<Turns>inner()
                .words("key", "size", turn -> turn.turning().key())
                .words("rule", "rule", turn -> turn.turning().rule())
                .measure(
                        "value",
                        "at",
                        Quantity.LENGTH,
                        Rounding.FINE,
                        turn -> turn.turning().value())
                .json()
                .saying(
                        "at",
                        "turns at",
                        turn -> Phrase.of("{at}").with("at", turn.turning().at()))
                .lengthIf("shop", "shop size", turn -> turn.turning().shop())
                .saying("met", "it is met", SearchSheets::met);
    }

    private static Phrase met(Turns turns) {
        Turning turn = turns.turning();
        double from = turn.metFrom().orElse(turn.value());
        double to = turn.metTo().orElse(turn.value());
        if (to - from > 2 * Tolerance.TOUCHING) {
            return Phrase.of("from {from} to {to}")
                    .with("from", Figure.of(turn.quantity(), from).rounded(Rounding.FINE.to(Rounding.Side.UP)))
                    .with("to", Figure.of(turn.quantity(), to).rounded(Rounding.FINE.to(Rounding.Side.DOWN)));
        }
        if (turn.metAbove() == turn.metBelow()) {
            return Phrase.of(turn.metAbove() ? "on both sides" : "only there");
        }
        Optional<Turning> end = turn.metAbove() ? turns.behind() : turns.before();
        return end.map(other -> Phrase.of(turn.metAbove() ? "from there up to {end}" : "from {end} up to there")
                        .with("end", other.at()))
                .orElse(Phrase.of(turn.metAbove() ? "from there up" : "up to there"));
    }

    /** The stacks of the tables: today's, the best, the smallest change, or what gives up least. */
    private List<Line> lines() {
        List<Line> lines = new ArrayList<>(List.of(new Line("today", result.today())));
        for (int i = 0; i < result.best().size(); i++) {
            lines.add(new Line("best " + (i + 1), result.best().get(i)));
        }
        result.smallest()
                .filter(small -> result.best().stream()
                        .noneMatch(one -> one.candidate()
                                .choices()
                                .equals(small.candidate().choices())))
                .ifPresent(small -> lines.add(new Line("smallest change", small)));
        result.nearest().ifPresent(near -> lines.add(new Line("gives up least", near)));
        return lines;
    }

    private static Sheet answers(List<SearchSheets> all) {
        List<Object[]> rows = new ArrayList<>();
        all.forEach(sheets -> {
            for (int i = 0; i < sheets.sizes.size(); i++) {
                int size = i;
                sheets.lines()
                        .forEach(line -> rows.add(new Object[] {
                            sheets.sizes.get(size).place(),
                            line.name(),
                            sheets.sizes
                                    .get(size)
                                    .choices()
                                    .get(line.answered().candidate().choices().get(size))
                        }));
            }
        });
        return Sheet.of("search.sizes", "THE SIZES OF EACH", rows)
                .name("size", "size", row -> (String) row[0])
                .name("stack", "stack", row -> (String) row[1])
                .words("typed", "typed", row -> (String) row[2])
                .people()
                .table("THE SIZES OF EACH", "size", "typed")
                .across("stack")
                .sheet();
    }

    private static Sheet figures(List<SearchSheets> all) {
        List<Held> rows = all.stream().flatMap(sheets -> sheets.held().stream()).toList();
        return Sheet.of("search.figures", "HOW EACH STANDS TO WHAT IS ASKED", rows)
                .name("rule", "asked", Held::rule)
                .name("stack", "stack", Held::stack)
                .saying("figure", "figure", SearchSheets::figure)
                .people()
                .table("HOW EACH STANDS TO WHAT IS ASKED", "rule", "figure")
                .across("stack")
                .sheet();
    }

    private List<Held> held() {
        List<Held> rows = new ArrayList<>();
        for (int i = 0; i < result.goal().rules().size(); i++) {
            for (Line line : lines()) {
                List<MustResult> musts = line.answered().candidate().judged().musts();
                rows.add(new Held(
                        result.goal().rules().get(i).text(),
                        line.name(),
                        false,
                        musts.isEmpty() ? Optional.empty() : Optional.of(musts.get(i))));
            }
        }
        for (int i = 0; i < result.goal().wishes().size(); i++) {
            WishRule wish = result.goal().wishes().get(i);
            for (Line line : wish.figure().isEmpty() ? List.<Line>of() : lines()) {
                List<Optional<MustResult>> wished = line.answered().wished();
                rows.add(new Held(wish.text(), line.name(), true, wished.isEmpty() ? Optional.empty() : wished.get(i)));
            }
        }
        return rows;
    }

    private List<Wished> wished(Answered answered) {
        return IntStream.range(0, answered.wished().size())
                .boxed()
                .flatMap(i -> answered.wished().get(i).stream()
                        .map(one -> new Wished(result.goal().wishes().get(i), one)))
                .toList();
    }

    private static Columns<Wished> wishes() {
        return Columns.<Wished>inner()
                .words("wish", "wish", one -> one.wish().text())
                .amountIf(
                        "figure",
                        "figure",
                        one -> one.result().quantity(),
                        one -> one.result().figure());
    }

    private static Phrase figure(Held held) {
        if (held.result().isEmpty()) {
            return Phrase.of("no stack");
        }
        MustResult must = held.result().get();
        if (must.told().isEmpty()) {
            return Phrase.of(must.endless() ? "any" : "no such figure");
        }
        return Phrase.of(must.met() || held.wished() ? "{figure}" : "{figure}: no")
                .with("figure", must.told().orElseThrow());
    }
}
