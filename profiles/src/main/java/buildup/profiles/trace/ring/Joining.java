package buildup.profiles.trace.ring;

import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Makes one ring of the runs of an outline. Sizes are inches. */
public final class Joining {
    /**
     * Smaller gaps are how a tracing of a closed line looks; nothing is said of them. Up to the second size, the least
     * member that is milled, a gap hides nothing.
     */
    private static final double UNSEEN_GAP = 1.0 / 64;

    private static final double HARMLESS_GAP = 1.0 / 16;

    /** So many steps of the tracing are how its last one looks, if they are no greater share of its size. */
    private static final double USUAL_STEPS = 3;

    private static final double SMALL_GAP = 0.05;

    /** A greater share of the way round is not made up for, but where it may be the back. */
    private static final double MOST_LOST = 0.15;

    /** How far points may lie behind a line that is taken for the back, as a share of the tracing's size. */
    private static final double BEHIND = 0.01;

    private final Notices notices;

    private Joining(Notices notices) {
        this.notices = notices;
    }

    /**
     * The way round.
     *
     * @param dots where nothing was drawn between two of them, the first is open
     * @param again what was drawn when the tracing had come round
     */
    public record Ring(List<Dot> dots, List<Dot> again) {}

    /** One ring, or nothing when the runs do not make one; what was done is noted. */
    public static Optional<Ring> ring(List<Run> runs, Notices notices) {
        if (runs.isEmpty()) {
            notices.add(RingNotices.NO_LINE.notice());
            return Optional.empty();
        }
        return new Joining(notices).ring(runs);
    }

    private Optional<Ring> ring(List<Run> runs) {
        Run chain = runs.size() == 1 ? runs.get(0) : chain(runs);
        Laps.Rounds rounds = Laps.of(chain.dots());
        if (!rounds.again().isEmpty()) {
            notices.add(RingNotices.TRACED_TWICE.with(
                    "share",
                    Figure.share((double) rounds.again().size() / rounds.lap().size())));
            return Optional.of(new Ring(rounds.lap(), rounds.again()));
        }
        return (chain.closed() ? Optional.of(chain.dots()) : closed(chain.dots()))
                .map(Skips::opened)
                .map(dots -> new Ring(dots, List.of()));
    }

    /** One run after the other, each time the one whose end lies nearest, turned round where its end does. */
    private Run chain(List<Run> open) {
        List<Run> left = new ArrayList<>(open);
        Run chain = left.remove(0);
        double step =
                open.stream().mapToDouble(run -> RingSizes.way(run.dots())).sum()
                        / open.stream().mapToInt(run -> run.dots().size()).sum();
        double widest = 0;
        int joined = 1;
        while (!left.isEmpty()) {
            Run before = chain;
            Joint joint = left.stream()
                    .flatMap(run -> Joint.between(before, run).stream())
                    .min(Comparator.comparingDouble(Joint::gap))
                    .orElseThrow();
            left.remove(joint.run());
            boolean gap = joint.gap() > Math.max(UNSEEN_GAP, USUAL_STEPS * step);
            chain = joint.joined(chain, gap);
            widest = Math.max(widest, joint.gap());
            joined++;
        }
        if (widest > UNSEEN_GAP) {
            notices.add(RingNotices.JOINED.with("lines", Figure.count(joined)).amount(Figure.fine(widest)));
        }
        return chain;
    }

    /** How a run can be set to a chain. */
    private record Joint(Run run, boolean atEnd, boolean turned, double gap) {
        static List<Joint> between(Run chain, Run run) {
            return List.of(
                    new Joint(run, true, false, chain.last().distance(run.first())),
                    new Joint(run, true, true, chain.last().distance(run.last())),
                    new Joint(run, false, false, chain.first().distance(run.last())),
                    new Joint(run, false, true, chain.first().distance(run.first())));
        }

        Run joined(Run chain, boolean gap) {
            Run way = turned ? run.turned() : run;
            return atEnd ? opened(chain, gap).then(way) : opened(way, gap).then(chain);
        }

        private static Run opened(Run run, boolean gap) {
            List<Dot> dots = new ArrayList<>(run.dots());
            int last = dots.size() - 1;
            dots.set(last, dots.get(last).opened(gap));
            return new Run(dots, false, run.layers());
        }
    }

    private Optional<List<Dot>> closed(List<Dot> chain) {
        Point first = chain.get(0).at();
        Point last = chain.get(chain.size() - 1).at();
        double gap = first.distance(last);
        double size = RingSizes.size(chain);
        if (chain.size() > 2 && first.near(last, Tolerance.SNAP * size)) {
            // how files close a line: the first point again
            return Optional.of(chain.subList(0, chain.size() - 1));
        }
        double way = RingSizes.way(chain);
        double unseen = Math.min(SMALL_GAP * size, Math.max(UNSEEN_GAP, USUAL_STEPS * way / chain.size()));
        Figure missing = Figure.fine(gap);
        if (gap <= unseen) {
            if (gap > Math.max(UNSEEN_GAP, USUAL_STEPS * Stepping.usual(chain))) {
                notices.add(RingNotices.CLOSED.notice().amount(missing));
            }
            return Optional.of(chain);
        }
        if (gap <= HARMLESS_GAP) {
            notices.add(RingNotices.CLOSED.notice().amount(missing));
        } else if (gap > MOST_LOST * way && !isBack(chain, first, last, BEHIND * size)) {
            notices.add(RingNotices.LEFT_OPEN.notice().amount(missing));
            return Optional.empty();
        }
        List<Dot> opened = new ArrayList<>(chain);
        opened.set(chain.size() - 1, chain.get(chain.size() - 1).opened(true));
        return Optional.of(opened);
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
