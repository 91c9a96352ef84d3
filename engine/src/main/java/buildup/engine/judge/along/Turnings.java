package buildup.engine.judge.along;

import buildup.engine.judge.choice.ChoiceSpace;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.MustRule;
import buildup.engine.section.free.FreeSize;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Quantity;
import buildup.shared.length.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;

/**
 * Finds where along each size, all others as they are today, a rule turns. The figure is taken at every choice, and
 * between two choices on different sides of the value the place is halved down to what a double tells apart; so it is
 * exact also where the figure leaps.
 */
public final class Turnings {
    /** Halvings; they bring an inch to what a size can be typed to, a billionth. */
    private static final int HALVINGS = 36;

    /** So many places along a size are looked at, at most and at least; what lies between is passed over. */
    private static final int MOST_LOOKS = 256;

    private static final int LEAST_LOOKS = 9;

    /** What part of a step is looked at beyond a choice at which a rule turns. */
    private static final int BESIDE = 1024;

    private final ChoiceSpace space;
    private final List<MustRule> rules;
    private final StackJudge judge;
    private final LengthUnit unit;
    private final int looks;

    /** @param tries how many stacks may be judged in all; a part of them is spent on each size */
    public Turnings(ChoiceSpace space, List<MustRule> rules, StackJudge judge, LengthUnit unit, long tries) {
        this.space = space;
        this.rules = rules;
        this.judge = judge;
        this.unit = unit;
        long share = tries / Math.max(1, space.sizes().size());
        this.looks = (int) Math.max(LEAST_LOOKS, Math.min(MOST_LOOKS, share));
    }

    /** Every turn of every rule along every size that lies on a scale. */
    List<Turning> all() {
        return all(() -> false);
    }

    /**
     * The same for somebody who may have had enough.
     *
     * @param stopped whether somebody has had enough; sizes that were not looked at then are left out
     */
    public List<Turning> all(BooleanSupplier stopped) {
        List<Turning> all = new ArrayList<>();
        for (int size = 0; size < space.sizes().size() && !stopped.getAsBoolean(); size++) {
            if (space.sizes().get(size).scaled()) {
                all.addAll(along(size));
            }
        }
        return List.copyOf(all);
    }

    private List<Turning> along(int size) {
        FreeSize free = space.sizes().get(size);
        int count = free.choices().size();
        int stride = (count + looks - 1) / looks;
        List<Double> at = new ArrayList<>();
        for (int i = 0; i < count; i += stride) {
            at.add(free.amounts().get(i));
        }
        List<StackJudgment> judged =
                at.parallelStream().map(amount -> judged(size, amount)).toList();
        List<Turning> found = new ArrayList<>();
        for (int rule = 0; rule < rules.size(); rule++) {
            found.addAll(along(size, rule, at, judged));
        }
        return found;
    }

    /**
     * Where the figure passes the value, or else where the rule is met on one side and not on the other: one place between
     * any two that were looked at.
     */
    private List<Turning> along(int size, int rule, List<Double> at, List<StackJudgment> judged) {
        List<Turning> found = new ArrayList<>();
        for (int i = 0; i + 1 < at.size(); i++) {
            double low = beyond(judged.get(i), rule);
            double high = beyond(judged.get(i + 1), rule);
            if (Double.isFinite(low) && Double.isFinite(high) && low < 0 != high < 0) {
                found.add(turning(size, rule, at.get(i), at.get(i + 1), one -> beyond(one, rule) < 0, at));
            }
        }
        List<Turning> passed = List.copyOf(found);
        for (int i = 0; i + 1 < at.size(); i++) {
            StackJudgment low = judged.get(i);
            StackJudgment high = judged.get(i + 1);
            if (low.built() && high.built() && met(low, rule) != met(high, rule)) {
                Turning turn = turning(size, rule, at.get(i), at.get(i + 1), one -> met(one, rule), at);
                // the ends of a stretch round a place where the figure passes its value are told with that place
                if (passed.stream().noneMatch(other -> other.reaches(turn.value()))) {
                    found.add(turn);
                }
            }
        }
        found.sort(Comparator.comparingDouble(Turning::value));
        return found;
    }

    private static boolean met(StackJudgment judged, int rule) {
        return judged.musts().get(rule).met();
    }

    private StackJudgment judged(int size, double amount) {
        return judge.judge(space.textsWith(size, space.sizes().get(size).typed(amount)));
    }

    /** By how much the figure is beyond the value of the rule; no number where there is no such figure. */
    private double beyond(StackJudgment judged, int rule) {
        if (!judged.built()) {
            return Double.NaN;
        }
        OptionalDouble figure = judged.musts().get(rule).figure();
        return figure.isPresent() ? figure.getAsDouble() - rules.get(rule).value() : Double.NaN;
    }

    private Turning turning(
            int size, int rule, double from, double to, Predicate<StackJudgment> side, List<Double> looked) {
        boolean lowSide = side.test(judged(size, from));
        FreeSize free = space.sizes().get(size);
        Edge edge = edge(from, to, middle -> {
            StackJudgment there = judged(size, middle);
            return there.built() ? Optional.of(side.test(there) == lowSide) : Optional.empty();
        });
        double value = edge.closed() && !free.spelling().coarse()
                ? round(size, rule, (edge.before() + edge.behind()) / 2)
                : ofTheMet(size, rule, edge);
        boolean below = met(size, rule, from, value, to);
        boolean above = met(size, rule, to, value, from);
        boolean about = rules.get(rule).relation() == MustRule.Relation.EQUAL && met(size, rule, value);
        List<Double> down = looked.stream()
                .filter(amount -> amount < value)
                .sorted(Comparator.reverseOrder())
                .toList();
        List<Double> up = looked.stream().filter(amount -> amount > value).toList();
        OptionalDouble least = about ? OptionalDouble.of(metAsFarAs(size, rule, value, down)) : OptionalDouble.empty();
        OptionalDouble most = about ? OptionalDouble.of(metAsFarAs(size, rule, value, up)) : OptionalDouble.empty();
        // met to one end of the size: no stretch round a place, but all that lies on that side of it
        boolean toLeast = about
                && below
                && least.getAsDouble() <= looked.get(0)
                && most.getAsDouble() - value <= Tolerance.TOUCHING;
        boolean toMost = about
                && above
                && most.getAsDouble() >= looked.get(looked.size() - 1)
                && value - least.getAsDouble() <= Tolerance.TOUCHING;
        boolean toEnd = toLeast || toMost;
        return new Turning(
                free.place(),
                rules.get(rule).text(),
                free.spelling().quantity(),
                value,
                shop(size, rule, value),
                above,
                below,
                toEnd ? OptionalDouble.empty() : least,
                toEnd ? OptionalDouble.empty() : most);
    }

    /**
     * Two sizes beside each other: at one something is still so, at the other it is not.
     *
     * @param closed whether they are as near to each other as a place is looked for
     */
    private record Edge(double before, double behind, boolean closed) {}

    /** Where no size can be tried between two, the one at which the rule is met: nothing is told of what lies between. */
    private double ofTheMet(int size, int rule, Edge edge) {
        double at = met(size, rule, edge.before()) ? edge.before() : edge.behind();
        return space.sizes().get(size).rounded(at);
    }

    /**
     * Halves the way from a size at which something is so to one at which it is not.
     *
     * @param so whether it is so at a size between; nothing where that cannot be told, and then it is not looked closer
     */
    private static Edge edge(double from, double to, DoubleFunction<Optional<Boolean>> so) {
        double before = from;
        double behind = to;
        boolean closed = true;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (before + behind) / 2;
            Optional<Boolean> there = so.apply(middle);
            if (there.isEmpty()) {
                closed = false;
                break;
            }
            if (there.get()) {
                before = middle;
            } else {
                behind = middle;
            }
        }
        return new Edge(before, behind, closed);
    }

    /** The size up to which the rule is met from one at which it is, on the way past these. */
    private double metAsFarAs(int size, int rule, double from, List<Double> way) {
        double met = from;
        for (double amount : way) {
            if (!met(size, rule, amount)) {
                return edge(met, amount, middle -> Optional.of(met(size, rule, middle)))
                        .before();
            }
            met = amount;
        }
        return met;
    }

    /**
     * Whether a rule is met on one side of a place at which it turns.
     *
     * @param looked that was looked at on that side; where it is the place itself, what lies a little beyond it is asked
     * @param other that was looked at on the other side
     */
    private boolean met(int size, int rule, double looked, double value, double other) {
        if (Math.abs(looked - value) > Tolerance.TURNS_ROUND) {
            return met(size, rule, looked);
        }
        double beyond = looked + (looked - other) / BESIDE;
        return judged(size, beyond).built() ? met(size, rule, beyond) : met(size, rule, looked);
    }

    private boolean met(int size, int rule, double amount) {
        StackJudgment judged = judged(size, amount);
        return judged.built() && judged.musts().get(rule).met();
    }

    /** A round size that is meant: figures are sharp to a millionth of an inch, and halving finds the edge of that. */
    private double round(int size, int rule, double value) {
        double fraction = Math.rint(value * 64) / 64;
        double decimal =
                BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_EVEN).doubleValue();
        return DoubleStream.of(fraction, decimal)
                .filter(round -> Math.abs(round - value) < Tolerance.TURNS_ROUND)
                .filter(round -> Math.abs(beyond(judged(size, round), rule)) < Tolerance.SAME_SHARE)
                .findFirst()
                .orElse(value);
    }

    /** The nearest size on a rule at which it is met. */
    private OptionalDouble shop(int size, int rule, double value) {
        if (space.sizes().get(size).spelling().quantity() != Quantity.LENGTH) {
            return OptionalDouble.empty();
        }
        double step = unit.isMetric() ? 1 / 25.4 : 1.0 / 16;
        List<UnaryOperator<Double>> ways = List.of(Math::floor, Math::ceil);
        return ways.stream()
                .mapToDouble(way -> way.apply(value / step + 0.0) * step)
                .filter(amount -> met(size, rule, amount))
                .boxed()
                .min((one, other) -> Double.compare(Math.abs(one - value), Math.abs(other - value)))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** Where a rule turns nearest to today's size. */
    List<Turning> nearest(int size, int rule) {
        FreeSize free = space.sizes().get(size);
        double today = free.amounts().get(free.now());
        return along(size).stream()
                .filter(turning -> turning.rule().equals(rules.get(rule).text()))
                .sorted(Comparator.comparingDouble(turning -> Math.abs(turning.value() - today)))
                .toList();
    }
}
