package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Drops what a tracing says twice or by a slip, and turns it counterclockwise. */
public final class Cleaning {
    /** A stray point lies so many usual steps from both neighbors, and they that much nearer to each other. */
    private static final double STRAY_STEPS = 6;

    private static final double STRAY_RATIO = 3;

    private Cleaning() {}

    /** The ring without doubled and stray points, counterclockwise; one note tells how many there were. */
    public static List<Dot> of(List<Dot> ring, Notices notices) {
        List<Dot> single = single(ring);
        List<Dot> kept = withoutStrays(single);
        int doubled = ring.size() - single.size();
        int stray = single.size() - kept.size();
        if (doubled + stray > 0) {
            notices.add(
                    RingNotices.DROPPED.with("doubled", Figure.count(doubled)).with("stray", Figure.count(stray)));
        }
        if (kept.size() > 2 && RingSizes.area(kept) < 0) {
            notices.add(RingNotices.TURNED_ROUND.notice());
            return turned(kept);
        }
        return kept;
    }

    /** The other way round; a gap stays between the same two points. */
    private static List<Dot> turned(List<Dot> ring) {
        int n = ring.size();
        List<Dot> turned = new ArrayList<>();
        for (int i = n - 1; i >= 0; i--) {
            turned.add(ring.get(i).opened(ring.get((i + n - 1) % n).open()));
        }
        return List.copyOf(turned);
    }

    private static List<Dot> single(List<Dot> ring) {
        double near = Tolerance.TRACED_TWICE * RingSizes.size(ring);
        List<Dot> kept = new ArrayList<>();
        for (Dot dot : ring) {
            int last = kept.size() - 1;
            if (last < 0 || !kept.get(last).at().near(dot.at(), near)) {
                kept.add(dot);
            } else {
                kept.set(last, kept.get(last).opened(dot.open()));
            }
        }
        while (kept.size() > 1
                && kept.get(0).at().near(kept.get(kept.size() - 1).at(), near)) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    private static List<Dot> withoutStrays(List<Dot> ring) {
        int n = ring.size();
        if (n < 8) {
            return List.copyOf(ring);
        }
        double[] steps = new double[n];
        for (int i = 0; i < n; i++) {
            steps[i] = ring.get(i).at().distance(ring.get((i + 1) % n).at());
        }
        double[] sorted = steps.clone();
        Arrays.sort(sorted);
        double far = STRAY_STEPS * sorted[n / 2];
        List<Dot> kept = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Point before = ring.get((i + n - 1) % n).at();
            Point after = ring.get((i + 1) % n).at();
            double nearer = Math.min(steps[(i + n - 1) % n], steps[i]);
            boolean stray = nearer > far && before.distance(after) * STRAY_RATIO < nearer;
            if (!stray) {
                kept.add(ring.get(i));
            }
        }
        return List.copyOf(kept);
    }
}
