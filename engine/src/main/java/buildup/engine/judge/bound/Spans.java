package buildup.engine.judge.bound;

import buildup.engine.judge.bound.form.Range;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Stretches of a line that are taken, each known by where its ends may lie; the line goes from 0 to a length. */
final class Spans {
    private record Taken(Range from, Range to, boolean surely) {}

    private final List<Taken> taken = new ArrayList<>();

    /** @param surely whether it is there in every stack */
    void add(Range from, Range to, boolean surely) {
        taken.add(new Taken(from, to, surely));
    }

    /** Stretches that are taken in every stack, those that meet joined, in order. */
    private List<Range> joined(boolean surely) {
        List<Range> all = new ArrayList<>();
        for (Taken one : taken) {
            if (surely ? one.surely && one.from.most() <= one.to.least() : one.from.least() <= one.to.most()) {
                all.add(
                        surely
                                ? new Range(/* least= */ one.from.most(), /* most= */ one.to.least())
                                : new Range(one.from.least(), one.to.most()));
            }
        }
        all.sort(Comparator.comparingDouble(Range::least));
        List<Range> joined = new ArrayList<>();
        for (Range next : all) {
            Range last = joined.isEmpty() ? Range.UNKNOWN : joined.get(joined.size() - 1);
            if (!joined.isEmpty() && next.least() <= last.most() + Tolerance.COINCIDENT) {
                joined.set(joined.size() - 1, new Range(last.least(), Math.max(last.most(), next.most())));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }

    /**
     * The longest stretch that is taken in one in every stack, or what share of the line it is at least.
     *
     * @param length of the line
     */
    double longest(Range length, boolean share) {
        double longest = 0;
        for (Range one : joined(true)) {
            // of a longer line a stretch that reaches beyond its end takes more, of one that does not a lesser share
            longest = Math.max(longest, Math.min(part(one, length.least(), share), part(one, length.most(), share)));
        }
        return longest;
    }

    private static double part(Range one, double length, boolean share) {
        double part = Math.max(0, Math.min(one.most(), length) - Math.max(one.least(), 0));
        return share ? part / length : part;
    }

    /** The most that may be taken in any stack, or what share of the line it is at most. */
    double most(Range length, boolean share) {
        double most = 0;
        for (Range one : joined(false)) {
            double part = Math.max(0, Math.min(one.most(), length.most()) - Math.max(one.least(), 0));
            most += part;
        }
        return share ? Math.min(1, most / length.least()) : Math.min(length.most(), most);
    }

    /** The least of a line of that length that nothing can take. */
    double free(Range length) {
        double free = 0;
        double at = 0;
        for (Range one : joined(false)) {
            free += Math.max(0, Math.min(one.least(), length.least()) - at);
            at = Math.max(at, one.most());
        }
        return free + Math.max(0, length.least() - at);
    }
}
