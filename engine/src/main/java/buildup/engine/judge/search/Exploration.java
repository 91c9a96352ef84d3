package buildup.engine.judge.search;

import buildup.engine.judge.bound.StackBounds;
import buildup.engine.judge.choice.ChoiceSpace;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.choice.StackJudgment;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Goes through the choices of a space: all of them where that can be afforded; else those with one change, with two, and
 * so on, and after these from random starts downhill. The same choices are judged in every run, on any number of threads.
 */
final class Exploration {
    private static final int CHUNK = 256;

    /** Chunks for each processor before somebody is asked whether that is enough. */
    private static final long BATCH = 8;

    /** Steps along a scale that are looked at from a place: fine ones to settle, coarse ones to get there. */
    private static final List<Integer> STRIDES = List.of(1, 2, 5, 20, 100);

    /** So many stacks are tried where no stack meets all lines, to find which of them gives up least. */
    private static final long HOPELESS = 5000;

    private final ChoiceSpace space;
    private final Goal goal;
    private final StackJudge judge;
    private final SearchLimits limits;
    private final Optional<StackBounds> bounds;
    private final Shortlist found = new Shortlist();
    /** The choices that were judged before any box was. */
    private final Set<List<Integer>> seen = new HashSet<>();

    private Proof proof = Proof.NOTHING;
    private int rings = -1;

    /** So many are tried before boxes are. */
    private long starts;

    Exploration(ChoiceSpace space, Goal goal, StackJudge judge, SearchLimits limits) {
        this.space = space;
        this.goal = goal;
        this.judge = judge;
        boolean large = space.count().compareTo(BigInteger.valueOf(limits.tries())) > 0;
        this.bounds = large ? judge.bounds() : Optional.empty();
        boolean hopeless = bounds.map(known -> new BoxWalk(space, goal, known, limits, found))
                .filter(BoxWalk::isHopeless)
                .isPresent();
        this.limits = hopeless ? limits.atMost(HOPELESS) : limits;
    }

    /** How many stacks may be tried. */
    long tries() {
        return limits.tries();
    }

    /** What is known of the stacks that were not judged. */
    Proof proof() {
        return proof;
    }

    /** With how many changes every stack was judged; -1 if not even today's. */
    int rings() {
        return rings;
    }

    Shortlist explored() {
        if (space.count().compareTo(BigInteger.valueOf(limits.tries())) <= 0) {
            everything(space.count().longValueExact());
        } else {
            Optional<BoxWalk> known = bounds.map(of -> new BoxWalk(space, goal, of, limits, found));
            Optional<BoxWalk> boxes = known.filter(BoxWalk::isOfUse);
            proof = Proof.NOTHING.because(known.flatMap(BoxWalk::unbounded));
            // half of what may be tried is left for boxes, where they are of use
            starts = boxes.isPresent() ? Math.max(1, limits.tries() / 2) : limits.tries();
            byChanges();
            downhill();
            boxes.ifPresent(walk ->
                    proof = walk.walked(seen.stream().map(Exploration::choices).toList(), this::judged));
        }
        if (found.judged() == 0) {
            // whoever had enough at once is told of today's stack
            found.add(candidate(space.now()));
        }
        return found;
    }

    private void judged(int[] choices, int unmet, Shortlist into) {
        if (seen.contains(key(choices))) {
            return;
        }
        StackJudgment judged = judge.judge(space.texts(choices), unmet);
        if (judged.dropped()) {
            into.drop();
        } else {
            into.add(candidate(choices, judged));
        }
        limits.progress().accept(1);
    }

    /** All stacks, each asked until a rule is not met; only where none meets all, which of them gives up fewest. */
    private void everything(long count) {
        boolean all = inChunks(count, this::meeting, found::with);
        proof = all ? Proof.ALL_TRIED : Proof.NOTHING;
        rings = all ? space.sizes().size() : -1;
        if (!all && found.judged() <= space.number(space.now())) {
            // whoever had enough may not have come to today's stack, which may need no change
            found.add(candidate(space.now()));
        }
        if (all && found.meeting() == 0) {
            found.consider(candidate(space.now()));
            AtomicInteger fewest = new AtomicInteger(fewest());
            inChunks(count, numbers -> nearest(numbers, fewest), some -> {
                some.forEach(found::consider);
                fewest.set(fewest());
            });
        }
    }

    private int fewest() {
        return found.nearest().stream().mapToInt(Candidate::unmet).min().orElse(Integer.MAX_VALUE);
    }

    /** The numbers of some stacks, one after the other. */
    private record Numbers(long from, long to) {}

    /** Whether all chunks were asked before somebody had enough. What each gives is taken in their order. */
    private <T> boolean inChunks(long count, Function<Numbers, T> asked, Consumer<T> taken) {
        long chunks = (count + CHUNK - 1) / CHUNK;
        long batch = BATCH * Runtime.getRuntime().availableProcessors();
        for (long first = 0; first < chunks; first += batch) {
            if (limits.stopped().getAsBoolean()) {
                return false;
            }
            LongStream.range(first, Math.min(first + batch, chunks))
                    .parallel()
                    .mapToObj(chunk -> asked.apply(new Numbers(chunk * CHUNK, Math.min(count, (chunk + 1) * CHUNK))))
                    .toList()
                    .forEach(taken);
        }
        return true;
    }

    private Shortlist meeting(Numbers numbers) {
        Shortlist some = new Shortlist();
        for (long number = numbers.from; number < numbers.to; number++) {
            int[] choices = space.at(number);
            StackJudgment judged = judge.judge(space.texts(choices), 0);
            if (judged.dropped()) {
                some.drop();
            } else {
                some.add(candidate(choices, judged));
            }
        }
        limits.progress().accept(numbers.to - numbers.from);
        return some;
    }

    /** Those that give up no more rules than the fewest so far. */
    private List<Candidate> nearest(Numbers numbers, AtomicInteger fewest) {
        List<Candidate> some = new ArrayList<>();
        for (long number = numbers.from; number < numbers.to; number++) {
            int[] choices = space.at(number);
            StackJudgment judged = judge.judge(space.texts(choices), fewest.get());
            if (judged.built() && !judged.dropped()) {
                some.add(candidate(choices, judged));
            }
        }
        return some;
    }

    Candidate candidate(int[] choices) {
        return candidate(choices, judge.judge(space.texts(choices)));
    }

    private Candidate candidate(int[] choices, StackJudgment judged) {
        List<String> texts = space.texts(choices);
        boolean built = judged.built();
        return new Candidate(
                key(choices),
                texts,
                judged,
                space.changed(choices),
                space.change(choices),
                built ? goal.missing(judged) : Double.POSITIVE_INFINITY,
                built ? goal.score(judged, space.share(choices)) : Double.POSITIVE_INFINITY);
    }

    /** Today's stack, those with one change, with two, while half of what may be judged lasts. */
    private void byChanges() {
        for (int changes = 0; changes <= space.sizes().size(); changes++) {
            BigInteger more = ring(changes);
            boolean affordable =
                    more.add(BigInteger.valueOf(found.judged())).compareTo(BigInteger.valueOf(Math.max(1, starts / 2)))
                            <= 0;
            if (!affordable || limits.stopped().getAsBoolean()) {
                return;
            }
            List<int[]> ring = new ArrayList<>();
            ring(space.now(), 0, changes, ring);
            judged(ring);
            rings = limits.stopped().getAsBoolean() ? rings : changes;
        }
    }

    /** How many stacks have so many changes. */
    private BigInteger ring(int changes) {
        BigInteger[] ways = new BigInteger[changes + 1];
        Arrays.fill(ways, BigInteger.ZERO);
        ways[0] = BigInteger.ONE;
        space.sizes().forEach(size -> {
            BigInteger others = BigInteger.valueOf(size.choices().size() - 1L);
            for (int i = changes; i > 0; i--) {
                ways[i] = ways[i].add(ways[i - 1].multiply(others));
            }
        });
        return ways[changes];
    }

    private void ring(int[] from, int first, int changes, List<int[]> ring) {
        if (changes == 0) {
            ring.add(from.clone());
            return;
        }
        for (int size = first; size <= from.length - changes; size++) {
            for (int choice = 0; choice < space.sizes().get(size).choices().size(); choice++) {
                if (choice != space.sizes().get(size).now()) {
                    from[size] = choice;
                    ring(from, size + 1, changes - 1, ring);
                }
            }
            from[size] = space.sizes().get(size).now();
        }
    }

    /** Judges those that were not judged before, as far as the tries last, and returns all that were judged now. */
    private List<Candidate> judged(List<int[]> some) {
        List<int[]> fresh = some.stream()
                .map(Exploration::key)
                .distinct()
                .filter(choices -> !seen.contains(choices))
                .limit(Math.max(0, starts - found.judged()))
                .map(Exploration::choices)
                .toList();
        List<Candidate> candidates = new ArrayList<>();
        for (int from = 0; from < fresh.size() && !limits.stopped().getAsBoolean(); from += 16 * CHUNK) {
            List<int[]> part = fresh.subList(from, Math.min(fresh.size(), from + 16 * CHUNK));
            candidates.addAll(part.parallelStream().map(this::told).toList());
        }
        candidates.forEach(candidate -> {
            seen.add(candidate.choices());
            found.add(candidate);
        });
        return candidates;
    }

    private Candidate told(int[] choices) {
        Candidate candidate = candidate(choices);
        limits.progress().accept(1);
        return candidate;
    }

    /** From the best so far and from random starts to the best neighbor, until there is none better. */
    private void downhill() {
        SplittableRandom random = new SplittableRandom(limits.seed());
        Optional<Candidate> start = found.meeting(Candidate.BY_SCORE).stream()
                .findFirst()
                .or(() -> found.nearest().stream().findFirst());
        int[] from = start.map(one -> choices(one.choices())).orElseGet(space::now);
        int idle = 0;
        while (found.judged() < starts && !limits.stopped().getAsBoolean() && idle < 1000) {
            long before = found.judged();
            settle(from);
            idle = found.judged() == before ? idle + 1 : 0;
            from = space.sizes().stream()
                    .mapToInt(size -> random.nextInt(size.choices().size()))
                    .toArray();
        }
    }

    private void settle(int[] start) {
        Candidate at = candidate(start);
        boolean better = true;
        while (better && found.judged() < starts && !limits.stopped().getAsBoolean()) {
            Candidate from = at;
            Optional<Candidate> next = judged(around(choices(at.choices()))).stream()
                    .filter(one -> one.judged().built())
                    .min(Candidate.BY_UNMET)
                    .filter(one -> !from.judged().built() || Candidate.BY_UNMET.compare(one, from) < 0);
            better = next.isPresent();
            at = next.orElse(at);
        }
    }

    private static List<Integer> key(int[] choices) {
        return IntStream.of(choices).boxed().toList();
    }

    private static int[] choices(List<Integer> key) {
        return key.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The choices that differ from these in one size, and this one itself. */
    private List<int[]> around(int[] center) {
        List<int[]> around = new ArrayList<>(List.of(center.clone()));
        for (int size = 0; size < center.length; size++) {
            int count = space.sizes().get(size).choices().size();
            Set<Integer> steps = new TreeSet<>();
            if (space.sizes().get(size).scaled()) {
                for (int stride : STRIDES) {
                    steps.add(Math.max(0, center[size] - stride));
                    steps.add(Math.min(count - 1, center[size] + stride));
                }
            } else {
                IntStream.range(0, count).forEach(steps::add);
            }
            for (int step : steps) {
                int[] other = center.clone();
                other[size] = step;
                around.add(other);
            }
        }
        return around;
    }
}
