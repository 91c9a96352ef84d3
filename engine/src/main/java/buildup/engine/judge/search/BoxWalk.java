package buildup.engine.judge.search;

import buildup.engine.judge.bound.FigureBound;
import buildup.engine.judge.bound.StackBounds;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.choice.ChoiceSpace;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.WishRule;
import buildup.profiles.outline.Tolerance;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Goes through a space box by box, the box of which most may be hoped first. A box that holds nothing to be hoped for is
 * ruled out; a small one is judged stack by stack; any other is halved. The same boxes are taken in every run, on any
 * number of threads.
 */
final class BoxWalk {
    /** A box of so many stacks is judged rather than halved. */
    private static final int LEAF = 24;

    /** So many boxes are taken at a time, whatever the number of threads. */
    private static final int ROUND = 64;

    /** So many boxes wait at most: some dozen megabytes. Those of which least may be hoped are given up then. */
    private static final int MOST_WAITING = 100_000;

    /** So many boxes are looked at for each stack that may be tried. */
    private static final long BOXES_FOR_A_TRY = 4;

    /**
     * A box, and what no stack of it is better than.
     *
     * @param tried the stacks of it that were judged before any box was
     */
    private record Open(
            ChoiceBox box,
            BigInteger count,
            List<int[]> tried,
            int unmet,
            double value,
            int changed,
            double change,
            long number) {
        BigInteger untried() {
            return count.subtract(BigInteger.valueOf(tried.size()));
        }
    }

    private static final Comparator<Open> MOST_HOPED = Comparator.comparingInt(Open::unmet)
            .thenComparingDouble(Open::value)
            .thenComparingInt(Open::changed)
            .thenComparingDouble(Open::change)
            .thenComparingLong(Open::number);

    /** What became of a box: its halves, or its stacks. */
    private record Taken(List<Open> halves, Shortlist judged) {}

    private final ChoiceSpace space;
    private final Goal goal;
    private final StackBounds bounds;
    private final List<StackBounds.Bounding> rules;
    private final List<Optional<StackBounds.Bounding>> wishes;
    private final SearchLimits limits;
    private final TreeSet<Open> waiting = new TreeSet<>(MOST_HOPED);
    private final Shortlist found;
    private BigInteger ruledOut = BigInteger.ZERO;
    private Optional<Open> givenUp = Optional.empty();
    private Optional<Open> leastChanged = Optional.empty();

    /** @param found so far; what is found now is added */
    BoxWalk(ChoiceSpace space, Goal goal, StackBounds bounds, SearchLimits limits, Shortlist found) {
        this.space = space;
        this.goal = goal;
        this.bounds = bounds;
        this.limits = limits;
        this.found = found;
        this.rules = bounds.of(goal.rules().stream().map(MustRule::figure).toList());
        this.wishes = goal.wishes().stream()
                .map(wish ->
                        wish.figure().map(figure -> bounds.of(List.of(figure)).get(0)))
                .toList();
    }

    /** Whether anything can be ruled out at all. */
    boolean isOfUse() {
        return rules.stream().anyMatch(StackBounds.Bounding::known)
                || Double.isFinite(open(ChoiceBox.whole(space.sizes()), List.of(), 0).value);
    }

    /** Whether some line is met by no stack at all. */
    boolean isHopeless() {
        return !outOfReach().isEmpty();
    }

    /** The lines that no stack meets, each by the figure that is nearest to what it asks. */
    private List<MustResult> outOfReach() {
        ChoiceBox whole = ChoiceBox.whole(space.sizes());
        List<MustResult> out = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            MustRule rule = goal.rules().get(i);
            FigureBound bound = rules.get(i).over(whole);
            if (bound.missed(rule)) {
                boolean over = bound.greatest() > rule.value() + rule.within()
                        && rule.relation() != MustRule.Relation.AT_LEAST
                        && rule.relation() != MustRule.Relation.MORE;
                out.add(rule.on(List.of(over ? bound.greatest() : bound.least())));
            }
        }
        return out;
    }

    /** The wish of which nothing is known over the whole space. */
    Optional<String> unbounded() {
        ChoiceBox whole = ChoiceBox.whole(space.sizes());
        for (int i = 0; i < wishes.size(); i++) {
            WishRule wish = goal.wishes().get(i);
            if (wishes.get(i).isPresent()
                    && !Double.isFinite(wishes.get(i).get().over(whole).far(wish))) {
                return Optional.of(wish.text());
            }
        }
        return Optional.empty();
    }

    /**
     * Walks until nothing is left, or until so much was tried or somebody had enough.
     *
     * @param tried the stacks that were judged before, each once
     * @param judged a stack as far as it takes to know that it gives up more rules than that; none where it was judged before
     */
    Proof walked(List<int[]> tried, Judging judged) {
        long boxes = 0;
        long most = BOXES_FOR_A_TRY * limits.tries();
        waiting.add(open(ChoiceBox.whole(space.sizes()), tried, 0));
        boolean stopped = limits.stopped().getAsBoolean();
        while (!waiting.isEmpty() && found.judged() < limits.tries() && boxes < most && !stopped) {
            long leaf = Math.min(LEAF, limits.tries() - found.judged());
            List<Open> round = round(leaf);
            int unmet = found.meeting() > 0 ? 0 : fewest();
            long first = boxes;
            boxes += 2L * round.size();
            IntStream.range(0, round.size())
                    .parallel()
                    .mapToObj(i -> taken(round.get(i), first + 2L * i, leaf, unmet, judged))
                    .toList()
                    .forEach(this::take);
            stopped = limits.stopped().getAsBoolean();
        }
        return proof();
    }

    /** The boxes that are taken next: of those that are judged, no more than there are tries left for. */
    private List<Open> round(long leaf) {
        List<Open> round = new ArrayList<>();
        long left = limits.tries() - found.judged();
        while (round.size() < ROUND && !waiting.isEmpty()) {
            Open next = waiting.pollFirst();
            if (isRuledOut(next)) {
                ruleOut(next);
                continue;
            }
            boolean judged = next.count.compareTo(BigInteger.valueOf(leaf)) <= 0;
            long tries = judged ? next.untried().longValueExact() : 0;
            if (tries > left) {
                waiting.add(next);
                return round;
            }
            left -= tries;
            round.add(next);
        }
        return round;
    }

    /** Judges one stack. */
    interface Judging {
        /**
         * Judges a stack, unless it was judged before.
         *
         * @param choices of the stack
         * @param unmet so many rules may be unmet, else it is dropped
         * @param into where it is put, unless it was judged before
         */
        void judge(int[] choices, int unmet, Shortlist into);
    }

    private Taken taken(Open open, long number, long leaf, int unmet, Judging judging) {
        if (open.count.compareTo(BigInteger.valueOf(leaf)) > 0) {
            int size = split(open.box);
            int middle = open.box.low(size) + open.box.width(size) / 2 - 1;
            List<int[]> lower = open.tried.stream()
                    .filter(choices -> choices[size] <= middle)
                    .toList();
            List<int[]> higher = open.tried.stream()
                    .filter(choices -> choices[size] > middle)
                    .toList();
            return new Taken(
                    List.of(
                            open(open.box.with(size, open.box.low(size), middle), lower, number),
                            open(open.box.with(size, middle + 1, open.box.high(size)), higher, number + 1)),
                    new Shortlist());
        }
        Shortlist judged = new Shortlist();
        for (long i = 0; i < open.count.longValueExact(); i++) {
            judging.judge(open.box.at(i), unmet, judged);
        }
        return new Taken(List.of(), judged);
    }

    /** The size along which the edges of pieces move most. */
    private int split(ChoiceBox box) {
        int best = -1;
        double most = -1;
        for (int size = 0; size < box.sizes(); size++) {
            if (box.width(size) > 1) {
                double spread = bounds.spread(size, box);
                if (spread > most) {
                    best = size;
                    most = spread;
                }
            }
        }
        return best;
    }

    private void take(Taken taken) {
        found.with(taken.judged);
        for (Open half : taken.halves) {
            if (isRuledOut(half)) {
                ruleOut(half);
            } else {
                waiting.add(half);
            }
        }
        while (waiting.size() > MOST_WAITING) {
            Open last = waiting.pollLast();
            givenUp = Optional.of(givenUp.filter(before -> MOST_HOPED.compare(before, last) < 0)
                    .orElse(last));
            changed(last);
        }
    }

    private Open open(ChoiceBox box, List<int[]> tried, long number) {
        int unmet = 0;
        for (int i = 0; i < rules.size(); i++) {
            unmet += rules.get(i).over(box).missed(goal.rules().get(i)) ? 1 : 0;
        }
        int[] nearest = space.now();
        for (int i = 0; i < nearest.length; i++) {
            nearest[i] = Math.max(box.low(i), Math.min(box.high(i), nearest[i]));
        }
        return new Open(
                box,
                box.count(),
                tried,
                unmet,
                value(box, space.share(nearest)),
                space.changed(nearest),
                space.change(nearest),
                number);
    }

    /** No stack of a box is nearer to what is wished; without a wish, by the least change. */
    private double value(ChoiceBox box, double change) {
        if (wishes.isEmpty()) {
            return change;
        }
        double value = 0;
        for (int i = 0; i < wishes.size(); i++) {
            WishRule wish = goal.wishes().get(i);
            double far = wishes.get(i).isEmpty()
                    ? change
                    : wishes.get(i).get().over(box).far(wish) / goal.scales().get(i);
            value += wish.weight() * far;
        }
        return value;
    }

    private int fewest() {
        return found.nearest().stream().mapToInt(Candidate::unmet).min().orElse(Integer.MAX_VALUE);
    }

    private boolean isRuledOut(Open open) {
        if (found.meeting() == 0) {
            return open.unmet > fewest();
        }
        return open.unmet > 0
                || found.lastKept(goal.wishes().isEmpty())
                        .filter(last -> open.value > value(last) + Tolerance.COINCIDENT)
                        .isPresent();
    }

    private double value(Candidate candidate) {
        return goal.wishes().isEmpty()
                ? space.share(
                        candidate.choices().stream().mapToInt(Integer::intValue).toArray())
                : candidate.score();
    }

    private void ruleOut(Open open) {
        ruledOut = ruledOut.add(open.untried());
        if (open.unmet == 0) {
            changed(open);
        }
    }

    /** A box that may hold a smaller change than any that is found. */
    private void changed(Open open) {
        boolean less = leastChanged.isEmpty()
                || open.changed < leastChanged.get().changed
                || (open.changed == leastChanged.get().changed && open.change < leastChanged.get().change);
        leastChanged = less ? Optional.of(open) : leastChanged;
    }

    private Proof proof() {
        // what was found last may rule out what waits
        while (!waiting.isEmpty() && isRuledOut(waiting.last())) {
            ruleOut(waiting.pollLast());
        }
        Optional<Open> first = waiting.stream().findFirst();
        Optional<Open> open = first.isPresent() && givenUp.isPresent()
                ? Optional.of(MOST_HOPED.compare(first.get(), givenUp.get()) < 0 ? first.get() : givenUp.get())
                : first.or(() -> givenUp);
        waiting.stream().filter(one -> one.unmet == 0).forEach(this::changed);
        // what cannot meet every rule is no better answer, whatever is wished
        Optional<Open> hope = open.filter(one -> one.unmet == 0);
        return new Proof(
                open.isEmpty(),
                ruledOut,
                hope.isEmpty(),
                hope.filter(one -> Double.isFinite(one.value))
                        .map(one -> OptionalDouble.of(one.value))
                        .orElse(OptionalDouble.empty()),
                hope.flatMap(any -> unbounded()),
                leastChanged.map(Open::changed),
                leastChanged.map(Open::change).orElse(0.0),
                outOfReach());
    }
}
