package buildup.engine;

import buildup.engine.judge.bound.StackBounds;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.AskedFigure;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.must.MustRule;
import buildup.engine.judge.must.WishRule;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.Seats;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Stack;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Judges stacks by what their outlines tell where that is enough, the rules that ask for least first, and the whole answer
 * where it is not. The judgments are those of the whole answer. Many threads may ask.
 */
final class QuickJudge implements StackJudge {
    /** What one thread remembers of the stacks that it judged. */
    private record Memory(Seats seats, Composer.Known known) {}

    private final SearchJudge whole;
    private final Supplier<Optional<StackBounds>> bounds;
    private final StackVariants variants;
    private final List<MustRule> rules;
    private final List<WishRule> wishes;
    private final QuickAsking asking;
    /** The numbers of the rules, those first that ask for least. */
    private final int[] order;

    private final ThreadLocal<Memory> memory =
            ThreadLocal.withInitial(() -> new Memory(new Seats(), new Composer.Known()));
    private final LongAdder composed = new LongAdder();

    /**
     * @param asking what the document says besides its pieces
     * @param bounds what is known of stacks that are not judged
     */
    QuickJudge(
            SearchJudge whole,
            StackVariants variants,
            List<MustRule> rules,
            List<WishRule> wishes,
            QuickAsking asking,
            Supplier<Optional<StackBounds>> bounds) {
        this.whole = whole;
        this.bounds = bounds;
        this.variants = variants;
        this.rules = List.copyOf(rules);
        this.wishes = List.copyOf(wishes);
        this.asking = asking;
        this.order = IntStream.range(0, rules.size())
                .boxed()
                .sorted(Comparator.comparing(
                        i -> QuickFigures.depth(rules.get(i).figure(), asking)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    @Override
    public StackJudgment judge(List<String> texts) {
        return judge(texts, Integer.MAX_VALUE);
    }

    @Override
    public List<Phrase> faults(List<String> texts) {
        return whole.faults(texts);
    }

    @Override
    public Optional<StackBounds> bounds() {
        return bounds.get();
    }

    @Override
    public boolean matters(int size, List<String> texts) {
        return variants.matters(size, texts);
    }

    @Override
    public long composed() {
        return composed.sum();
    }

    @Override
    public StackJudgment judge(List<String> texts, int unmet) {
        Optional<Stack> stack = variants.of(texts);
        if (stack.isEmpty()) {
            return StackJudgment.NOT_BUILT;
        }
        Memory own = memory.get();
        Notices said = new Notices();
        List<Placed> placed = StackPlacing.place(stack.get(), said, own.seats);
        if (said.refused() || allFraming(placed)) {
            return StackJudgment.NOT_BUILT;
        }
        return Composer.staged(stack.get(), placed, own.known)
                .map(staged -> new QuickFigures(
                        staged, own.known, stack.get().eyes(), stack.get().lights(), asking))
                .flatMap(figures -> judged(figures, unmet))
                .orElseGet(() -> composed(texts));
    }

    private static boolean allFraming(List<Placed> placed) {
        for (Placed one : placed) {
            if (one.piece().kind() != PieceKind.FRAMING) {
                return false;
            }
        }
        return true;
    }

    @Override
    public StackJudgment whole(List<String> texts) {
        return whole.judge(texts);
    }

    @Override
    public List<Optional<MustResult>> wished(List<String> texts) {
        return whole.wished(texts);
    }

    private StackJudgment composed(List<String> texts) {
        composed.increment();
        return whole.judge(texts);
    }

    /** By the outlines alone; absent where they do not tell all that is asked. */
    private Optional<StackJudgment> judged(QuickFigures figures, int unmet) {
        MustResult[] musts = new MustResult[rules.size()];
        int missed = 0;
        for (int i : order) {
            Optional<Collection<Double>> found = of(figures, rules.get(i).figure());
            if (found.isEmpty()) {
                return Optional.empty();
            }
            musts[i] = rules.get(i).on(found.get());
            missed += musts[i].met() ? 0 : 1;
            if (missed > unmet) {
                return Optional.of(StackJudgment.DROPPED);
            }
        }
        List<OptionalDouble> far = new ArrayList<>();
        for (WishRule wish : wishes) {
            Optional<Collection<Double>> found = wish.figure().isEmpty()
                    ? Optional.of(List.of())
                    : of(figures, wish.figure().get());
            if (found.isEmpty()) {
                return Optional.empty();
            }
            far.add(wish.far(found.get()));
        }
        return Optional.of(StackJudgment.of(List.of(musts), far));
    }

    private Optional<Collection<Double>> of(QuickFigures figures, AskedFigure figure) {
        return QuickFigures.depth(figure, asking) == QuickFigures.Depth.ALL ? Optional.empty() : figures.of(figure);
    }
}
