package buildup.engine.judge.search;

import buildup.engine.judge.along.Turning;
import buildup.engine.judge.along.Turnings;
import buildup.engine.judge.choice.ChoiceSpace;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.WishRule;
import buildup.engine.section.free.FreeSize;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Looks for the choices of free sizes that meet every rule and come nearest to what is wished. */
public final class StackSearch {
    /** Two answers are unlike when a size differs by more than this share of its range. */
    private static final double UNLIKE = 0.2;

    /** So many are looked at for one without a fault once somebody has had enough. */
    private static final int LAST_LOOKS = 20;

    /** So many choices of a size are looked at to see whether anything changes with it. */
    private static final int LOOKS = 5;

    private final ChoiceSpace space;
    private final Goal goal;
    private final StackJudge judge;
    private final LengthUnit unit;
    private final SearchLimits limits;
    private final Map<List<Integer>, List<Phrase>> faults = new HashMap<>();
    private Optional<Phrase> fault = Optional.empty();
    private int faulty;

    private StackSearch(ChoiceSpace space, Goal goal, StackJudge judge, LengthUnit unit, SearchLimits limits) {
        this.space = space;
        this.goal = goal;
        this.judge = judge;
        this.unit = unit;
        this.limits = limits;
    }

    /**
     * Searches.
     *
     * @param sizes that are free
     * @param wishes where there are none, as little change as may be is wished
     * @param judge of a stack
     * @param unit of the document, for sizes that a shop measures
     */
    public static SearchResult of(
            List<FreeSize> sizes,
            List<MustRule> rules,
            List<WishRule> wishes,
            StackJudge judge,
            LengthUnit unit,
            SearchLimits limits) {
        ChoiceSpace space = new ChoiceSpace(sizes);
        Goal goal = Goal.of(rules, wishes, judge.judge(space.texts(space.now())));
        return new StackSearch(space, goal, judge, unit, limits).found();
    }

    /** The wishes whose figure neither today's stack has nor one of those looked at along each size alone. */
    public static List<WishRule> withoutFigure(List<FreeSize> sizes, List<WishRule> wishes, StackJudge judge) {
        List<WishRule> without = new ArrayList<>();
        ChoiceSpace space = new ChoiceSpace(sizes);
        for (int i = 0; i < wishes.size(); i++) {
            int wish = i;
            Predicate<int[]> has = choices -> {
                StackJudgment judged = judge.judge(space.texts(choices));
                return judged.built() && judged.wishes().get(wish).isPresent();
            };
            boolean had = wishes.get(i).figure().isEmpty()
                    || has.test(space.now())
                    || IntStream.range(0, sizes.size())
                            .anyMatch(size -> looks(space, size).anyMatch(has));
            if (!had) {
                without.add(wishes.get(i));
            }
        }
        return without;
    }

    /** Some choices of a size from its first to its last, all others as they are. */
    private static Stream<int[]> looks(ChoiceSpace space, int size) {
        int last = space.sizes().get(size).choices().size() - 1;
        return IntStream.range(0, LOOKS).mapToObj(look -> {
            int[] choices = space.now();
            choices[size] = (int) ((long) look * last / (LOOKS - 1));
            return choices;
        });
    }

    /** How many stacks some free sizes make. */
    public static BigInteger count(List<FreeSize> sizes) {
        return new ChoiceSpace(sizes).count();
    }

    /** What is typed for each size in one of them, by number; the last size turns fastest. */
    public static List<String> texts(List<FreeSize> sizes, BigInteger number) {
        ChoiceSpace space = new ChoiceSpace(sizes);
        return space.texts(space.at(number));
    }

    private SearchResult found() {
        Exploration exploration = new Exploration(space, goal, judge, limits);
        Candidate today = exploration.candidate(space.now());
        List<FreeSize> idle = idle();
        if (!stopped()) {
            limits.planned().accept(new SearchPlan(space.count(), exploration.tries(), idle, this::sample));
        }
        Shortlist shortlist = exploration.explored();
        long composed = judge.composed();
        List<Candidate> byScore = shortlist.meeting(goal.wishes().isEmpty() ? Candidate.BY_CHANGE : Candidate.BY_SCORE);
        List<Answered> best = best(byScore);
        List<Candidate> byChange = shortlist.meeting(Candidate.BY_CHANGE);
        Optional<Answered> smallest = byChange.stream()
                .limit(stopped() ? LAST_LOOKS : Shortlist.KEPT)
                .filter(one -> faults(one).isEmpty())
                .findFirst()
                .map(this::answered);
        Optional<Answered> nearest = smallest.isPresent()
                ? Optional.empty()
                : shortlist.nearest().stream().findFirst().map(this::answered);
        boolean kept = shortlist.meeting() <= Shortlist.KEPT || smallest.isPresent();
        Proof proof = exploration.proof();
        boolean near = smallest.isPresent()
                && (smallest.get().candidate().changed() <= exploration.rings()
                        || (kept && proof.leastChange(smallest.get().candidate())));
        Optional<Answered> first = best.stream().findFirst();
        boolean proved =
                (kept && (proof.all() || first.map(one -> beats(proof, one)).orElse(false))) || goal.isReached(first);
        List<Turning> turning = new Turnings(space, goal.rules(), judge, unit, limits.tries()).all(limits.stopped());
        return new SearchResult(
                goal,
                answered(today),
                best,
                smallest,
                nearest,
                smallest.isPresent() ? Optional.empty() : exact(turning),
                turning,
                idle,
                faulty,
                fault,
                space.count(),
                shortlist.judged(),
                shortlist.judged() - shortlist.built(),
                shortlist.unbuilt().map(this::unbuilt),
                composed,
                shortlist.meeting(),
                proof,
                proved,
                near);
    }

    /** Whether whoever asked has had enough: what is left to do is to be short then. */
    private boolean stopped() {
        return limits.stopped().getAsBoolean();
    }

    /** Whether nothing that was not tried is nearer to what is wished than an answer. */
    private boolean beats(Proof proof, Answered answered) {
        Candidate candidate = answered.candidate();
        return goal.wishes().isEmpty()
                ? proof.leastChange(candidate)
                : proof.bound().isPresent()
                        && candidate.score() <= proof.bound().getAsDouble() + Tolerance.COINCIDENT;
    }

    /**
     * The first place between the choices of a size at which every rule is met, and what to type there: where a rule is met
     * only there, or else between two places at which rules turn.
     */
    private Optional<Between> exact(List<Turning> turning) {
        Stream<Between> there = turning.stream()
                .filter(turn -> !turn.metAbove() && !turn.metBelow())
                .flatMap(turn -> typed(turn, turn.value()).stream().map(text -> new Between(turn, true, text)));
        Stream<Between> between = turning.stream()
                .flatMap(turn -> next(turn, turning).stream()
                        .boxed()
                        .flatMap(next -> typed(turn, (turn.value() + next) / 2).stream())
                        .map(text -> new Between(turn, false, text)));
        return Stream.concat(there, between).findFirst();
    }

    /** The next place up along the same size at which a rule turns. */
    private static OptionalDouble next(Turning turn, List<Turning> turning) {
        return turning.stream()
                .filter(other -> other.key().equals(turn.key()))
                .mapToDouble(Turning::value)
                .filter(value -> value > turn.value() + Tolerance.TURNS_ROUND)
                .min();
    }

    /** The shortest text near a size at which every rule is met. */
    private Optional<String> typed(Turning turn, double value) {
        int at = IntStream.range(0, space.sizes().size())
                .filter(i -> space.sizes().get(i).place().equals(turn.key()))
                .findFirst()
                .orElseThrow();
        return space.sizes().get(at).typedNear(value).stream()
                .filter(text -> {
                    StackJudgment there = judge.judge(space.textsWith(at, text));
                    return there.built() && there.unmet() == 0;
                })
                .findFirst();
    }

    /** Judges some stacks all over the space, so that somebody may tell how long all will take. */
    private void sample(int count) {
        for (int i = 0; i < count && !stopped(); i++) {
            BigInteger number = space.count().multiply(BigInteger.valueOf(i)).divide(BigInteger.valueOf(count));
            judge.judge(space.texts(space.at(number)), 0);
        }
    }

    /** The sizes along which, all others as they are today, no figure changes that is asked for. */
    private List<FreeSize> idle() {
        StackJudgment today = judge.judge(space.texts(space.now()));
        return IntStream.range(0, space.sizes().size())
                .filter(size -> today.built() && isIdle(size, today))
                .mapToObj(space.sizes()::get)
                .toList();
    }

    private boolean isIdle(int size, StackJudgment today) {
        return space.sizes().get(size).choices().size() > 1
                && !stopped()
                && looks(space, size).allMatch(choices -> today.tells(judge.judge(space.texts(choices))));
    }

    private List<Answered> best(List<Candidate> inOrder) {
        List<Answered> best = new ArrayList<>();
        int looked = 0;
        for (Candidate candidate : inOrder) {
            if (best.size() == limits.answers() || (stopped() && looked == LAST_LOOKS)) {
                break;
            }
            looked++;
            boolean unlike = best.stream().allMatch(one -> unlike(one.candidate(), candidate));
            if (unlike && faults(candidate).isEmpty()) {
                best.add(answered(candidate));
            }
        }
        return best;
    }

    /** Whether some choice of two is another kind of choice, or a size so far from the other that they look different. */
    private boolean unlike(Candidate one, Candidate other) {
        return IntStream.range(0, space.sizes().size()).anyMatch(i -> {
            FreeSize size = space.sizes().get(i);
            int mine = one.choices().get(i);
            int its = other.choices().get(i);
            if (mine == its || !(judge.matters(i, one.texts()) || judge.matters(i, other.texts()))) {
                return false;
            }
            if (!size.scaled()) {
                return mine != its;
            }
            double range = size.amounts().get(size.amounts().size() - 1)
                    - size.amounts().get(0);
            return Math.abs(size.amounts().get(mine) - size.amounts().get(its)) > UNLIKE * range;
        });
    }

    private List<Phrase> faults(Candidate candidate) {
        List<Phrase> known = faults.get(candidate.choices());
        if (known != null) {
            return known;
        }
        List<Phrase> found = judge.faults(candidate.texts());
        faults.put(candidate.choices(), found);
        if (!found.isEmpty()) {
            faulty++;
            fault = fault.or(() -> Optional.of(found.get(0)));
        }
        return found;
    }

    private List<SizeChange> changes(Candidate candidate) {
        return IntStream.range(0, space.sizes().size())
                .filter(i -> candidate.choices().get(i) != space.sizes().get(i).now())
                .mapToObj(i -> change(space.sizes().get(i), candidate.choices().get(i)))
                .toList();
    }

    private Unbuilt unbuilt(Candidate candidate) {
        return new Unbuilt(
                changes(candidate),
                judge.faults(candidate.texts()).stream().findFirst().orElse(Phrase.of("")));
    }

    private Answered answered(Candidate candidate) {
        boolean built = candidate.judged().built();
        return new Answered(
                candidate,
                changes(candidate),
                built ? faults(candidate) : List.of(),
                built && !goal.wishes().isEmpty() ? judge.wished(candidate.texts()) : List.of());
    }

    private static SizeChange change(FreeSize size, int choice) {
        return new SizeChange(
                size.place(), size.choices().get(size.now()), size.choices().get(choice));
    }
}
