package buildup.profiles.trace;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Makes one ring of the trails of a tracing. Sizes are inches. */
final class Joining {
    /** A gap of this share of the tracing's size is closed with a note; a greater one must be told to be the back. */
    private static final double SMALL_GAP = 0.05;

    /** Smaller gaps are how a tracing of a closed line looks; nothing is said of them, in. */
    private static final double UNSEEN_GAP = 1.0 / 64;

    /** So many steps of the tracing are how its last one looks. */
    private static final double USUAL_STEPS = 3;

    /** How far points may lie behind a line that is taken for the back, as a share of the tracing's size. */
    private static final double BEHIND = 0.01;

    private final Notices notices;

    private Joining(Notices notices) {
        this.notices = notices;
    }

    /** One ring, or nothing when the trails do not make one; what was done is noted. */
    static Optional<List<Dot>> ring(List<Trail> trails, Notices notices) {
        List<List<Dot>> open = new ArrayList<>();
        List<List<Dot>> closed = new ArrayList<>();
        int number = 1;
        for (Trail trail : trails) {
            List<Dot> dots = new ArrayList<>();
            for (Point p : trail.points()) {
                dots.add(new Dot(p, number++));
            }
            if (dots.size() > 1) {
                (trail.closed() ? closed : open).add(dots);
            }
        }
        return new Joining(notices).ring(open, closed);
    }

    private Optional<List<Dot>> ring(List<List<Dot>> open, List<List<Dot>> closed) {
        if (open.isEmpty() && closed.isEmpty()) {
            notices.add(TraceNotices.NO_LINE.notice());
            return Optional.empty();
        }
        if (!closed.isEmpty()) {
            return Optional.of(largest(open, closed));
        }
        return closed(chain(open));
    }

    /** The closed trail that holds most, which is the outline; others are holes, frames or marks. */
    private List<Dot> largest(List<List<Dot>> open, List<List<Dot>> closed) {
        List<Dot> best = closed.stream()
                .max(Comparator.comparingDouble(dots -> Math.abs(Loops.area(dots))))
                .orElseThrow();
        int others = open.size() + closed.size() - 1;
        if (others > 0) {
            notices.add((others == 1 ? TraceNotices.ONE_BESIDE : TraceNotices.SEVERAL_BESIDE)
                    .with("others", Figure.count(others)));
        }
        return best;
    }

    /** One trail after the other, each time the one whose end lies nearest, turned round where its end does. */
    private List<Dot> chain(List<List<Dot>> open) {
        List<List<Dot>> left = new ArrayList<>(open);
        List<Dot> chain = new ArrayList<>(left.remove(0));
        double widest = 0;
        int joined = 0;
        while (!left.isEmpty()) {
            Joint joint = left.stream()
                    .flatMap(dots -> Joint.between(chain, dots).stream())
                    .min(Comparator.comparingDouble(Joint::gap))
                    .orElseThrow();
            left.remove(joint.dots());
            joint.addTo(chain);
            widest = Math.max(widest, joint.gap());
            joined++;
        }
        if (widest > UNSEEN_GAP) {
            notices.add(
                    TraceNotices.JOINED.with("lines", Figure.count(joined + 1)).amount(Figure.fine(widest)));
        }
        return chain;
    }

    /** How a trail can be set to a chain. */
    private record Joint(List<Dot> dots, boolean atEnd, boolean turned, double gap) {
        static List<Joint> between(List<Dot> chain, List<Dot> dots) {
            Point start = chain.get(0).at();
            Point end = chain.get(chain.size() - 1).at();
            Point first = dots.get(0).at();
            Point last = dots.get(dots.size() - 1).at();
            return List.of(
                    new Joint(dots, true, false, end.distance(first)),
                    new Joint(dots, true, true, end.distance(last)),
                    new Joint(dots, false, false, start.distance(last)),
                    new Joint(dots, false, true, start.distance(first)));
        }

        void addTo(List<Dot> chain) {
            List<Dot> way = new ArrayList<>(dots);
            if (turned) {
                Collections.reverse(way);
            }
            chain.addAll(atEnd ? chain.size() : 0, way);
        }
    }

    private Optional<List<Dot>> closed(List<Dot> chain) {
        Point first = chain.get(0).at();
        Point last = chain.get(chain.size() - 1).at();
        double gap = first.distance(last);
        double size = Loops.size(chain);
        if (chain.size() > 2 && first.near(last, Tolerance.SNAP * size)) {
            // how files close a line: the first point again
            return Optional.of(chain.subList(0, chain.size() - 1));
        }
        double unseen = Math.max(UNSEEN_GAP, USUAL_STEPS * (Loops.length(chain) - gap) / chain.size());
        if (gap <= Math.min(unseen, SMALL_GAP * size)) {
            return Optional.of(chain);
        }
        Figure missing = Figure.fine(gap);
        if (gap <= SMALL_GAP * size) {
            notices.add(TraceNotices.CLOSED.notice().amount(missing));
            return Optional.of(chain);
        }
        if (isBack(chain, first, last, BEHIND * size)) {
            notices.add(TraceNotices.CLOSED_AT_BACK.notice().amount(missing));
            return Optional.of(chain);
        }
        notices.add(TraceNotices.LEFT_OPEN.notice().amount(missing));
        return Optional.empty();
    }

    /** Whether all points lie on one side of the line that would close the ring. */
    private static boolean isBack(List<Dot> chain, Point first, Point last, double behind) {
        Point side = first.minus(last).unit().left();
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Dot dot : chain) {
            double off = dot.at().minus(last).dot(side);
            least = Math.min(least, off);
            most = Math.max(most, off);
        }
        return least >= -behind || most <= behind;
    }
}
