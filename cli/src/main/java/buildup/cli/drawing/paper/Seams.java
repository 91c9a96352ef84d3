package buildup.cli.drawing.paper;

import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * A length that is covered by windows of one size, each lapping over the next.
 *
 * @param starts where each begins, rising; one at least
 * @param window how long each is
 */
record Seams(List<Double> starts, double window) {
    /** How far one laps over the next at least. */
    static final double OVERLAP = 0.5;

    /** How many places of the whole are tried before windows lap further. */
    private static final int TRIED = 24;

    /** What is left clear beside a text. */
    private static final double AIR = 0.03;

    /** A window goes on at least so far for a text; a share of it. */
    private static final double LEAST = 0.25;

    Seams {
        starts = List.copyOf(starts);
    }

    /** From where to where. */
    record Span(double from, double to) {
        private boolean within(double start, double window) {
            return from >= start - Tolerance.SNAP && to <= start + window + Tolerance.SNAP;
        }
    }

    /**
     * The fewest windows that hold a length, with the length in their middle. Where that cuts a text that is shorter than a
     * window, the whole is moved, and then windows lap further, so that every text is whole in one of them.
     *
     * @return the best first; one at least
     */
    static List<Seams> of(double low, double high, double window, List<Span> texts) {
        if (high - low <= window) {
            return List.of(new Seams(List.of((low + high - window) / 2), window));
        }
        List<Span> shorter = texts.stream()
                .map(text -> new Span(text.from() - AIR, text.to() + AIR))
                .filter(text -> text.to() - text.from() < window)
                .toList();
        int count = fewest(high - low, window);
        double free = count * (window - OVERLAP) + OVERLAP - (high - low);
        List<Seams> whole = new ArrayList<>();
        for (int i = 0; i < TRIED; i++) {
            // the middle, then ever farther to either side of it
            double share = 0.5 + (i % 2 == 0 ? -1 : 1) * ((i + 1) / 2) / (double) TRIED;
            Seams even = even(low - share * free, count, window);
            if (even.cutsNone(shorter)) {
                whole.add(even);
            }
        }
        if (whole.isEmpty()) {
            Seams lapping = lapping(low, high, window, shorter);
            whole.add(lapping.cutsNone(shorter) ? lapping : even(low - free / 2, count, window));
        }
        return whole;
    }

    /** How many windows a length takes where they cut no text. */
    static int fewest(double length, double window) {
        return length <= window ? 1 : (int) Math.ceil((length - OVERLAP) / (window - OVERLAP));
    }

    private static Seams even(double first, int count, double window) {
        List<Double> starts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            starts.add(first + i * (window - OVERLAP));
        }
        return new Seams(starts, window);
    }

    private boolean cutsNone(List<Span> texts) {
        return texts.stream().allMatch(text -> starts.stream().anyMatch(start -> text.within(start, window)));
    }

    /** Each as far on as the texts that the one before cuts allow. */
    private static Seams lapping(double low, double high, double window, List<Span> texts) {
        List<Double> starts = new ArrayList<>();
        double start = low;
        starts.add(start);
        while (start + window < high - Tolerance.SNAP) {
            double end = start + window;
            double next = end - OVERLAP;
            for (Span text : texts) {
                if (text.from() < end && text.to() > end) {
                    next = Math.min(next, text.from());
                }
            }
            start = Math.max(next, start + LEAST * window);
            starts.add(start);
        }
        return new Seams(starts, window);
    }

    /** What a window holds that its neighbors do not; a quarter of it about its middle where they hold nearly all. */
    Span own(int i) {
        double start = starts.get(i);
        double from = i == 0 ? start : Math.max(start, starts.get(i - 1) + window);
        double to = i == count() - 1 ? start + window : Math.min(start + window, starts.get(i + 1));
        double middle = (from + to) / 2;
        double half = Math.max(to - from, LEAST * window) / 2;
        return new Span(middle - half, middle + half);
    }

    int count() {
        return starts.size();
    }

    /** Where two windows lap; the first is the beginning of the first, the last the end of the last. */
    Span lap(int i) {
        if (i == 0) {
            return new Span(starts.get(0), starts.get(0) + OVERLAP);
        }
        double end = starts.get(i - 1) + window;
        return i == count() ? new Span(end - OVERLAP, end) : new Span(starts.get(i), end);
    }
}
