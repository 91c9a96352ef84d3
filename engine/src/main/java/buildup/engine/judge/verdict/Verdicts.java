package buildup.engine.judge.verdict;

import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gives the verdict on a stack. */
public final class Verdicts {

    private final Facts facts;

    private Verdicts(Facts facts) {
        this.facts = facts;
    }

    /** The verdict on these facts. */
    public static Verdict of(Facts facts) {
        Verdicts verdicts = new Verdicts(facts);
        List<Phrase> trusted = new ArrayList<>(new HoldingRows(facts).trusted());
        trusted.addAll(new LastingRows(facts).trusted());
        trusted.addAll(new JudgingRows(facts).trusted());
        return new Verdict(verdicts.rulings(), trusted, verdicts.notAsked());
    }

    private List<Ruling> rulings() {
        Map<Topic, List<Notice>> problems = new EnumMap<>(Topic.class);
        facts.notices().stream()
                .filter(notice -> notice.level() == Level.PROBLEM)
                .forEach(notice -> problems.computeIfAbsent(Topic.of(notice.code()), topic -> new ArrayList<>())
                        .add(notice));
        Map<Topic, Ruling> found = new EnumMap<>(Topic.class);
        for (Ruling ruling : good()) {
            found.put(ruling.topic(), ruling);
        }
        problems.forEach((topic, all) -> {
            // the row on what must be met counts and weighs what is missing itself
            if (topic != Topic.MUST) {
                Ruling wrong = wrong(topic, all);
                found.put(
                        topic,
                        Optional.ofNullable(found.get(topic))
                                .filter(other -> topic == Topic.SEEN && showsMore(other, wrong))
                                .map(more -> with(worstFirst(topic, all).get(0), wrong, more))
                                .orElse(wrong));
            }
        });
        return saidOnce(List.copyOf(found.values()));
    }

    private static boolean showsMore(Ruling look, Ruling wrong) {
        return look.figure()
                .filter(seen ->
                        seen.amount() > wrong.figure().map(Figure::amount).orElse(Double.POSITIVE_INFINITY))
                .isPresent();
    }

    /** What is wrong, with what is only to be looked at and of which more is seen before it; each with its cure. */
    private static Ruling with(Notice worst, Ruling wrong, Ruling look) {
        Phrase both = VerdictWords.SAID_AND_WORSE.with("said", wrong.because()).with("worse", look.because());
        Optional<Phrase> own = wrong.cure()
                .map(cure -> worst.piece()
                        .map(piece -> VerdictWords.CURE_OF.with("piece", piece).with("cure", cure))
                        .orElse(cure));
        Optional<Phrase> cures = look.cure()
                .flatMap(first ->
                        own.map(second -> VerdictWords.CURES.with("one", first).with("other", second)))
                .or(() -> own)
                .or(look::cure);
        return new Ruling(wrong.topic(), wrong.answer(), look.figure(), both, cures);
    }

    /** A cure that an earlier row has told is not told again. */
    private static List<Ruling> saidOnce(List<Ruling> rulings) {
        Set<Phrase> told = new HashSet<>();
        return rulings.stream()
                .map(ruling -> ruling.cure()
                                .filter(cure -> cure.template().equals(VerdictWords.TRIED.template()))
                                .filter(cure -> !told.add(cure))
                                .isPresent()
                        ? ruling.cure(VerdictWords.THE_SAME)
                        : ruling)
                .toList();
    }

    /** The answers as far as nothing was said against them. */
    private List<Ruling> good() {
        List<Ruling> rulings = new ArrayList<>();
        rulings.addAll(new HoldingRows(facts).rulings());
        rulings.addAll(new LookingRows(facts).rulings());
        rulings.addAll(new LastingRows(facts).rulings());
        rulings.addAll(new JudgingRows(facts).rulings());
        return rulings;
    }

    /** A problem decides; what else is wrong is counted. */
    private static Ruling wrong(Topic topic, List<Notice> found) {
        List<Notice> problems = worstFirst(topic, found);
        Notice worst = problems.get(0);
        Set<String> others = new LinkedHashSet<>();
        problems.stream().skip(1).flatMap(notice -> notice.piece().stream()).forEach(others::add);
        worst.piece().ifPresent(others::remove);
        Phrase because = others.isEmpty()
                ? (problems.size() == 1 ? VerdictWords.SAID : VerdictWords.SAID_AND_MORE)
                : VerdictWords.SAID_AND_OTHERS;
        Ruling ruling = new Ruling(
                topic,
                Reply.NO,
                worst.amount(),
                because.with("what", worst.sentence())
                        .with("more", Figure.count(problems.size() - 1))
                        .with("others", VerdictWords.names(List.copyOf(others))),
                Optional.empty());
        // a cure that brings its changes of the document was put into the stack before it was said
        return worst.cure()
                .map(cure -> worst.changes().isEmpty() ? cure : VerdictWords.TRIED.with("cure", cure))
                .map(ruling::cure)
                .orElse(ruling);
    }

    /**
     * What lacks room lacks it by an amount, and what lacks most decides; of what is seen the most does. Elsewhere the order
     * of the questions decides.
     */
    private static List<Notice> worstFirst(Topic topic, List<Notice> problems) {
        if (!Set.of(Topic.FITS, Topic.FIRE, Topic.SEEN).contains(topic)) {
            return problems;
        }
        return problems.stream()
                .sorted(Comparator.comparingDouble(
                        notice -> -notice.amount().map(Figure::amount).orElse(0.0)))
                .toList();
    }

    private List<Verdict.NotAsked> notAsked() {
        Map<String, String> asks = new LinkedHashMap<>();
        asks.put("eyes", "is raw wood seen");
        asks.put("fastenings", "do the nails bite");
        asks.put("plan", "lengths");
        asks.put("seasons", "movement");
        asks.put("tolerance", "error");
        asks.put("proportion", "how it stands to the books");
        asks.put("firebox", "how near to a fire");
        asks.put("must", "what it has to meet");
        return asks.entrySet().stream()
                .filter(entry -> !facts.keys().contains(entry.getKey()))
                .map(entry -> new Verdict.NotAsked(entry.getKey(), entry.getValue()))
                .toList();
    }
}
