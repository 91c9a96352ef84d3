package buildup.engine.judge.along;

import buildup.engine.judge.along.FigureCurve.Break;
import buildup.engine.judge.along.FigureCurve.How;
import buildup.engine.judge.along.FigureCurve.Place;
import buildup.engine.judge.choice.ChoiceSpace;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.must.MustRule;
import buildup.engine.section.free.FreeSize;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Draws figures against each free size alone, and finds where they break. */
public final class FigureCurves {
    /** So many choices of a size are looked at, evenly spread, where it has more. */
    private static final int MOST_PLACES = 33;

    /** So many sizes are drawn; the page of a document with more would take long to make. */
    private static final int MOST_SIZES = 6;

    /** Halvings that bring an inch to a billionth. */
    private static final int HALVINGS = 30;

    /** A figure that changes by so many times as much as beside there may leap. */
    private static final double STEEP = 4;

    private final ChoiceSpace space;
    private final List<MustRule> rules;
    private final StackJudge judge;

    private FigureCurves(ChoiceSpace space, List<MustRule> rules, StackJudge judge) {
        this.space = space;
        this.rules = rules;
        this.judge = judge;
    }

    /**
     * The curves of all rules along each size that lies on a scale, size by size, and which sizes have none.
     *
     * @param held so many rules, the first, have to be met
     * @param judge of a stack by these rules
     * @param unit of the document
     */
    public static SizeCurves of(
            List<FreeSize> sizes, List<MustRule> rules, int held, StackJudge judge, LengthUnit unit) {
        ChoiceSpace space = new ChoiceSpace(sizes);
        FigureCurves curves = new FigureCurves(space, rules, judge);
        List<Turning> turns =
                new Turnings(space, rules.subList(0, held), judge, unit, (long) MOST_PLACES * sizes.size()).all();
        List<Integer> drawn = IntStream.range(0, sizes.size())
                .filter(size ->
                        sizes.get(size).scaled() && sizes.get(size).choices().size() > 1)
                .limit(MOST_SIZES)
                .boxed()
                .toList();
        return new SizeCurves(
                drawn.stream()
                        .flatMap(size -> curves.along(size, held, turns).stream())
                        .toList(),
                IntStream.range(0, sizes.size())
                        .filter(size -> !drawn.contains(size))
                        .mapToObj(size -> sizes.get(size).place())
                        .toList());
    }

    private List<FigureCurve> along(int size, int held, List<Turning> turns) {
        FreeSize free = space.sizes().get(size);
        List<Integer> looks = looks(free);
        List<StackJudgment> judged = looks.parallelStream()
                .map(look -> at(size, free.choices().get(look)))
                .toList();
        List<FigureCurve> curves = new ArrayList<>();
        for (int rule = 0; rule < rules.size(); rule++) {
            int number = rule;
            List<Place> places = IntStream.range(0, looks.size())
                    .mapToObj(i -> new Place(
                            free.choices().get(looks.get(i)),
                            free.amounts().get(looks.get(i)),
                            figure(judged.get(i), number),
                            judged.get(i).built()
                                    && judged.get(i).musts().get(number).met()))
                    .toList();
            List<Turning> own = turns.stream()
                    .filter(turn -> number < held
                            && turn.key().equals(free.place())
                            && turn.rule().equals(rules.get(number).text()))
                    .toList();
            curves.add(new FigureCurve(
                    free.place(),
                    free.spelling().quantity(),
                    looks.indexOf(free.now()),
                    rules.get(rule),
                    rule < held,
                    places,
                    own,
                    breaks(size, rule, places)));
        }
        return curves;
    }

    private static List<Integer> looks(FreeSize free) {
        int last = free.choices().size() - 1;
        int count = Math.min(last, MOST_PLACES - 1);
        TreeSet<Integer> looks = new TreeSet<>(List.of(free.now()));
        for (int i = 0; i <= count; i++) {
            looks.add((int) ((long) i * last / count));
        }
        return List.copyOf(looks);
    }

    private StackJudgment at(int size, String text) {
        return judge.judge(space.textsWith(size, text));
    }

    private OptionalDouble figure(int size, int rule, double amount) {
        return figure(at(size, space.sizes().get(size).typed(amount)), rule);
    }

    private static OptionalDouble figure(StackJudgment judged, int rule) {
        return judged.built() ? judged.musts().get(rule).figure() : OptionalDouble.empty();
    }

    private List<Break> breaks(int size, int rule, List<Place> places) {
        List<Break> breaks = new ArrayList<>();
        for (int i = 0; i + 1 < places.size(); i++) {
            Place low = places.get(i);
            Place high = places.get(i + 1);
            if (low.figure().isPresent() != high.figure().isPresent()) {
                breaks.add(halved(size, rule, low, high));
            } else if (steep(places, i)) {
                Break there = halved(size, rule, low, high);
                if (rise(there.before(), there.after()) > rise(low.figure(), high.figure()) / 2) {
                    breaks.add(there);
                }
            } else {
                bend(size, rule, places, i)
                        .filter(bend -> breaks.stream()
                                .noneMatch(other -> Math.abs(other.at() - bend.at()) < Tolerance.TURNS_ROUND))
                        .ifPresent(breaks::add);
            }
        }
        return breaks;
    }

    private static double rise(OptionalDouble from, OptionalDouble to) {
        return from.isPresent() && to.isPresent() ? Math.abs(to.getAsDouble() - from.getAsDouble()) : 0;
    }

    /** Whether the figure changes far more after a place than it does beside there. */
    private static boolean steep(List<Place> places, int i) {
        double own = rise(places.get(i).figure(), places.get(i + 1).figure());
        double before = i > 0 ? rise(places.get(i - 1).figure(), places.get(i).figure()) : 0;
        double after = i + 2 < places.size()
                ? rise(places.get(i + 1).figure(), places.get(i + 2).figure())
                : 0;
        return own > STEEP * Math.max(before, after) + Tolerance.SAME_SHARE;
    }

    /** The place of the greatest change between two places, halved down to what a size can be typed to. */
    private Break halved(int size, int rule, Place from, Place to) {
        double low = from.at();
        double high = to.at();
        OptionalDouble before = from.figure();
        OptionalDouble after = to.figure();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            OptionalDouble there = figure(size, rule, middle);
            boolean below = before.isPresent() == after.isPresent()
                    ? rise(before, there) > rise(there, after)
                    : there.isPresent() == after.isPresent();
            if (below) {
                high = middle;
                after = there;
            } else {
                low = middle;
                before = there;
            }
        }
        How how = before.isPresent() == after.isPresent() ? How.LEAPS : before.isPresent() ? How.ENDS : How.BEGINS;
        return new Break((low + high) / 2, how, before, after);
    }

    /** Where two straight stretches of the curve meet that lie on both sides of a place and the next. */
    private Optional<Break> bend(int size, int rule, List<Place> places, int i) {
        if (i < 2 || i + 3 >= places.size() || absent(places.subList(i - 2, i + 4))) {
            return Optional.empty();
        }
        double before = slope(places, i - 1);
        double after = slope(places, i + 1);
        double most = Math.max(Math.abs(before), Math.abs(after));
        boolean straight = Math.abs(before - slope(places, i - 2)) <= Tolerance.SAME_SHARE * most
                && Math.abs(after - slope(places, i + 2)) <= Tolerance.SAME_SHARE * most;
        if (!straight || Math.abs(after - before) <= STEEP * Tolerance.SAME_SHARE * most) {
            return Optional.empty();
        }
        Place low = places.get(i);
        Place high = places.get(i + 1);
        double y = low.figure().getAsDouble();
        double at = (high.figure().getAsDouble() - y + before * low.at() - after * high.at()) / (before - after);
        double met = y + before * (at - low.at());
        boolean there = at >= low.at() - Tolerance.TURNS_ROUND && at <= high.at() + Tolerance.TURNS_ROUND;
        OptionalDouble found = there ? figure(size, rule, at) : OptionalDouble.empty();
        return found.isPresent() && Math.abs(found.getAsDouble() - met) < Tolerance.TURNS_ROUND
                ? Optional.of(new Break(at, How.BENDS, found, found))
                : Optional.empty();
    }

    private static boolean absent(List<Place> places) {
        return places.stream().anyMatch(place -> place.figure().isEmpty());
    }

    private static double slope(List<Place> places, int i) {
        Place low = places.get(i);
        Place high = places.get(i + 1);
        return (high.figure().getAsDouble() - low.figure().getAsDouble()) / (high.at() - low.at());
    }
}
