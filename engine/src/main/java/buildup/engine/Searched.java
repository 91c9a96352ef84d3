package buildup.engine;

import buildup.catalog.Catalog;
import buildup.engine.judge.along.FigureCurves;
import buildup.engine.judge.along.SizeCurves;
import buildup.engine.judge.along.WhyNot;
import buildup.engine.judge.along.WhyNots;
import buildup.engine.judge.bound.StackBounds;
import buildup.engine.judge.choice.ChoiceSpace;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.Musts;
import buildup.engine.judge.must.WishRule;
import buildup.engine.judge.search.SearchLimits;
import buildup.engine.judge.search.SearchNotices;
import buildup.engine.judge.search.SearchResult;
import buildup.engine.judge.search.SearchWords;
import buildup.engine.judge.search.StackSearch;
import buildup.engine.judge.search.Unbuilt;
import buildup.engine.section.free.FreeSize;
import buildup.engine.section.free.FreeSizes;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a search through the free sizes of a document has found.
 *
 * @param answer of the stack as it is now
 * @param unit of the document
 * @param sizes that are free
 * @param result absent when something was refused, or when it was asked why a rule is not met
 * @param why what each size does to the rule that was asked about; absent unless one was
 * @param stacks what is known of the stack with a text in the place of each free size
 * @param notices worst first
 */
public record Searched(
        Answer answer,
        LengthUnit unit,
        List<FreeSize> sizes,
        Optional<SearchResult> result,
        Optional<List<WhyNot>> why,
        Function<List<String>, Answer> stacks,
        List<Notice> notices) {
    /** So many choices of a size are looked at for some that make no stack. */
    private static final int MOST_LOOKS = 64;

    /** The option that asks about a rule. */
    private static final String WHY = "--why";

    /** Copies the lists. */
    public Searched {
        sizes = List.copyOf(sizes);
        why = why.map(List::copyOf);
        notices = List.copyOf(notices);
    }

    /**
     * Searches.
     *
     * @param claims of what has been read of the document before
     * @param why the rule that is asked about, as under {@code must:}; when it is there nothing is sought
     */
    public static Searched of(
            Document document,
            Catalog catalog,
            Claims claims,
            Notices notices,
            SearchLimits limits,
            Optional<String> why) {
        Notices read = new Notices();
        FreeSizes free = FreeSizes.read(document, catalog::usualCalls, read);
        Answer today = Answer.of(document, catalog, claims, notices, Optional.empty());
        Searched nothing = new Searched(
                today,
                today.unit(),
                free.sizes(),
                Optional.empty(),
                Optional.empty(),
                // pictures and figures of an answer need no cures tried
                texts -> Answer.untried(free.with(texts), catalog, new Claims(), new Notices(), Optional.empty()),
                today.notices());
        if (read.refused()) {
            return nothing;
        }
        if (free.sizes().isEmpty()) {
            // where something was refused, that may be what was to be free
            return today.known().isEmpty() ? nothing : nothing.saying(List.of(SearchNotices.NOTHING_FREE.notice()));
        }
        Optional<Answers> start = start(today, free, catalog);
        return start.isEmpty()
                ? nothing.saying(List.of(SearchNotices.TODAY_REFUSED.notice()))
                : new Seeking(nothing, start.get(), document, free, catalog, limits).found(why);
    }

    /**
     * What a search judges the stacks of a document by, for whoever measures it.
     *
     * @return absent where the document is refused
     */
    public static Optional<StackJudge> judge(Document document, Catalog catalog) {
        FreeSizes free = FreeSizes.read(document, catalog::usualCalls, new Notices());
        Searched nothing = unread(document.file(), List.of());
        return Answer.of(document, catalog).known().map(start -> {
            Seeking seeking = new Seeking(nothing, start, document, free, catalog, SearchLimits.of(1));
            SearchLines lines = SearchLines.of(start, new Notices());
            return seeking.judge(lines.rules(), lines.wishes());
        });
    }

    /** What is asked of a stack against each of its free sizes alone; height and projection where nothing is asked. */
    static SizeCurves curves(Answers start, Document document, FreeSizes free, Catalog catalog) {
        if (free.sizes().isEmpty()) {
            return SizeCurves.NONE;
        }
        SearchLines lines = SearchLines.of(start, new Notices());
        List<MustRule> rules = new ArrayList<>(lines.rules());
        int held = rules.size();
        lines.wishes().forEach(wish -> wish.asRule().ifPresent(rules::add));
        if (rules.isEmpty()) {
            Mark mark = new Mark(document.file(), 1, 1);
            // nobody wrote these lines: the figures are called by their names
            for (String figure : List.of("height", "projection")) {
                SearchLines.rules(start, new Scalar(figure + " >= 0", mark), new Notices())
                        .forEach(rule -> rules.add(rule.called(figure)));
            }
            held = 0;
        }
        Searched nothing = unread(document.file(), List.of());
        StackJudge judge =
                new Seeking(nothing, start, document, free, catalog, SearchLimits.of(1)).judge(rules, List.of());
        return FigureCurves.of(
                free.sizes(), rules, held, judge, start.blocks().stack().unit());
    }

    /** Today's stack, whose sheets hold the figures, also where only a line under {@code must:} is not understood. */
    private static Optional<Answers> start(Answer today, FreeSizes free, Catalog catalog) {
        return today.known()
                .or(() -> Answer.untried(free.now(), catalog, new Claims(), new Notices(), Optional.empty())
                        .known());
    }

    /** A search of a document that could not be read. */
    public static Searched unread(String file, List<Notice> why) {
        Answer answer = Answer.unread(file, why);
        return new Searched(answer, answer.unit(), List.of(), Optional.empty(), Optional.empty(), texts -> answer, why);
    }

    /** The same with more to say. */
    public Searched saying(List<Notice> more) {
        Notices all = new Notices();
        all.addAll(notices);
        all.addAll(more);
        return new Searched(answer, unit, sizes, result, why, stacks, all.sorted());
    }

    /** The same without figures, since they could not be delivered. */
    public Searched refused(List<Notice> because) {
        return new Searched(answer, unit, sizes, Optional.empty(), Optional.empty(), stacks, notices).saying(because);
    }

    /** A search of one document that can be searched. */
    private record Seeking(
            Searched nothing, Answers start, Document document, FreeSizes free, Catalog catalog, SearchLimits limits) {
        Searched found(Optional<String> why) {
            Notices said = new Notices();
            SearchLines lines = SearchLines.of(start, said);
            List<MustRule> rules = lines.rules();
            List<WishRule> wishes = lines.wishes();
            List<MustRule> asked = why.map(text ->
                            SearchLines.rules(start, new Scalar(text, new Mark(WHY, Mark.NO_LINE, Mark.NO_LINE)), said))
                    .orElse(List.of());
            lines.sayWhatCannotBeSought(start.blocks(), free.sizes(), said);
            if (why.isEmpty() && rules.isEmpty() && wishes.isEmpty() && !said.refused()) {
                said.add(SearchNotices.NOTHING_WANTED.notice());
            }
            if (said.refused() || nothing.answer.known().isEmpty()) {
                return nothing.saying(said.sorted());
            }
            return why.isPresent() ? why(asked.get(0), rules) : sought(rules, wishes);
        }

        private StackJudge judge(List<MustRule> rules, List<WishRule> wishes) {
            SearchJudge whole = new SearchJudge(
                    free,
                    catalog,
                    rules,
                    wishes,
                    SearchJudge.groups(start),
                    nothing.answer.known().map(Answers::notices).orElse(List.of()));
            return new QuickJudge(
                    whole,
                    new StackVariants(document, free, catalog),
                    rules,
                    wishes,
                    QuickAsking.of(start, document, free),
                    () -> StackBounds.of(document, free, catalog));
        }

        private Searched why(MustRule asked, List<MustRule> rules) {
            List<MustRule> others = rules.stream()
                    .filter(rule -> !rule.text().equals(asked.text()))
                    .toList();
            List<MustRule> all =
                    Stream.concat(Stream.of(asked), others.stream()).toList();
            StackJudge judge = judge(all, List.of());
            List<WhyNot> told = WhyNots.of(free.sizes(), asked, others, judge, nothing.unit, SearchLimits.USUAL_TRIES);
            Notices said = new Notices();
            free.sizes().forEach(size -> noStack(size, Optional.empty(), judge, said));
            return new Searched(
                    nothing.answer,
                    nothing.unit,
                    nothing.sizes,
                    Optional.empty(),
                    Optional.of(told),
                    nothing.stacks,
                    said.sorted());
        }

        private Searched sought(List<MustRule> rules, List<WishRule> wishes) {
            Notices said = new Notices();
            StackJudge judge = judge(rules, wishes);
            StackSearch.withoutFigure(free.sizes(), wishes, judge)
                    .forEach(wish ->
                            said.add(Musts.withoutFigure(wish, start.blocks().keys())));
            if (said.refused()) {
                return nothing.saying(said.sorted());
            }
            SearchResult result = StackSearch.of(free.sizes(), rules, wishes, judge, nothing.unit, limits);
            if (result.unbuilt() == result.judged()) {
                said.add(SearchNotices.NONE_BUILT.with(
                        "first",
                        nothing.notices.isEmpty()
                                ? Phrase.of("")
                                : nothing.notices.get(0).sentence()));
                return nothing.saying(said.sorted());
            }
            boolean nothingLeft = result.nothingLeft();
            if (limits.stopped().getAsBoolean()) {
                said.add(SearchNotices.interrupted(
                                result.proved() || result.bound().isPresent())
                        .with("judged", Figure.count(result.judged()))
                        .with("count", result.space().toString()));
            } else if (!nothingLeft && !result.proved()) {
                said.add(SearchNotices.LARGE
                        .with("count", result.space().toString())
                        .with("tries", Figure.count(result.judged())));
            }
            free.sizes().forEach(size -> noStack(size, result.without(), judge, said));
            result.idle()
                    .forEach(size -> said.add(SearchNotices.IDLE
                            .with("place", size.place())
                            .with("times", Figure.count(size.choices().size()))
                            .at(size.mark())));
            result.exact()
                    .ifPresent(between -> said.add(SearchNotices.between(between)
                            .with("place", between.turning().key())
                            .with("typed", between.typed())));
            result.proof()
                    .outOfReach()
                    .forEach(must -> said.add(SearchNotices.OUT_OF_REACH
                            .with("rule", must.rule())
                            .with("reach", must.told().orElseThrow())));
            result.nearest()
                    .ifPresent(near -> said.add(
                            near.candidate().unmet() == 0
                                    ? SearchNotices.FAULTY.notice()
                                    : SearchNotices.noneMeets(nothingLeft)
                                            .with("rules", SearchWords.unmet(near))
                                            .with("judged", Figure.count(result.judged()))));
            return new Searched(
                    nothing.answer,
                    nothing.unit,
                    nothing.sizes,
                    Optional.of(result),
                    Optional.empty(),
                    nothing.stacks,
                    said.sorted());
        }

        /** Choices that make no stack are told with what is refused there: they must not pass for stacks that fail a line. */
        private void noStack(FreeSize size, Optional<Unbuilt> known, StackJudge judge, Notices said) {
            ChoiceSpace space = new ChoiceSpace(free.sizes());
            int at = free.sizes().indexOf(size);
            TreeSet<Integer> looks = new TreeSet<>();
            int count = size.choices().size();
            int step = (count + MOST_LOOKS - 1) / MOST_LOOKS;
            for (int choice = 0; choice < count; choice += step) {
                looks.add(choice);
            }
            known.filter(one -> one.changes().size() == 1)
                    .map(one -> one.changes().get(0))
                    .filter(change -> change.key().equals(size.place()))
                    .ifPresent(change -> looks.add(size.choices().indexOf(change.to())));
            List<List<String>> looked = new ArrayList<>();
            for (int choice : looks) {
                looked.add(space.textsWith(at, size.choices().get(choice)));
            }
            List<List<String>> none = looked.stream()
                    .filter(texts -> !limits.stopped().getAsBoolean()
                            && !judge.judge(texts).built())
                    .toList();
            none.stream()
                    .findFirst()
                    .ifPresent(texts -> said.add(SearchNotices.NO_STACK
                            .with("place", size.place())
                            .with("typed", texts.get(at))
                            .with(
                                    "why",
                                    nothing.stacks.apply(texts).notices().stream()
                                            .findFirst()
                                            .map(Notice::sentence)
                                            .orElse(Phrase.of("")))
                            .with("looked", Figure.count(looked.size()))
                            .with("count", Figure.count(none.size()))
                            .at(size.mark())));
        }
    }
}
