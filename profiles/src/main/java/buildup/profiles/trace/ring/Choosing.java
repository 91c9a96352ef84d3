package buildup.profiles.trace.ring;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Value;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Chooses the outline among the lines of a drawing: not its frame, not a dimension, not a mark. */
public final class Choosing {
    /** A closed line is an upright rectangle when it fills its box to this share. */
    private static final double RECTANGLE = 0.995;

    /** A closed line is a circle when its area is this near to that of one in its box, as a share. */
    private static final double CIRCLE = 0.01;

    /** What holds a line of this share of its own area goes round it. */
    private static final double HELD = 0.005;

    /** What a sheet holds has at least so many points, more than the arrow of a dimension. */
    private static final int ARROW = 5;

    /** A rectangle that is thicker than this is no board, in; common practice, no source. */
    private static final double BOARD = 3;

    /** Another line of this share of the area of the outline may be meant just as well. */
    private static final double RIVAL = 0.1;

    /** One within the outline only if it is so much of it: holes and marks are smaller. */
    private static final double RIVAL_WITHIN = 0.4;

    /** Two lines whose sides and areas differ by less than this share are one line drawn twice. */
    private static final double SAME_AGAIN = 0.01;

    private static final int LISTED = 6;

    private final Notices notices;
    private final double size;

    private Choosing(double size, Notices notices) {
        this.size = size;
        this.notices = notices;
    }

    /** The runs that make the outline: one closed, or several open that are to be joined; none when there is no line. */
    public static List<Run> of(List<Run> runs, Notices notices) {
        if (runs.isEmpty()) {
            return runs;
        }
        Box box = Box.around(runs.stream().map(Run::box).toList());
        return new Choosing(Math.max(box.width(), box.height()), notices).chosen(runs);
    }

    private List<Run> chosen(List<Run> runs) {
        List<Run> single = single(runs);
        Knitting.Knitted knitted =
                Knitting.of(single.stream().filter(run -> !run.closed()).toList(), size);
        List<Run> closed = new ArrayList<>(single.stream().filter(Run::closed).toList());
        closed.addAll(knitted.rings());
        List<Run> solid = closed.stream()
                .filter(run -> run.area() > Tolerance.FLAT_RING * size * size)
                .sorted(Comparator.comparingDouble(Run::area).reversed())
                .toList();
        if (solid.isEmpty()) {
            return closed.isEmpty() || !knitted.loose().isEmpty() ? knitted.loose() : List.of(closed.get(0));
        }
        List<Run> unframed = new ArrayList<>(solid);
        unframed.removeIf(run -> isFrame(run, solid));
        List<Run> framed = Annotation.without(unframed);
        Optional<PenLine.Middle> pen =
                framed.size() > 1 ? PenLine.between(framed.get(0), framed.get(1)) : Optional.empty();
        pen.ifPresent(line -> notices.add(RingNotices.PEN_LINE.notice().amount(Figure.fine(line.width()))));
        Run outline = pen.map(PenLine.Middle::middle).orElse(framed.get(0));
        tell(outline, framed.subList(pen.isPresent() ? 2 : 1, framed.size()), solid.size() - framed.size(), knitted);
        return List.of(outline);
    }

    /** Without runs that lie on one before them. */
    private List<Run> single(List<Run> runs) {
        Map<List<Long>, List<Run>> alike = new LinkedHashMap<>();
        List<Run> single = new ArrayList<>();
        for (Run run : runs) {
            Box box = run.box();
            List<Long> key = List.of(
                    Math.round(box.back() / size * 1e3),
                    Math.round(box.bottom() / size * 1e3),
                    Math.round(box.face() / size * 1e3),
                    Math.round(box.top() / size * 1e3));
            List<Run> there = alike.computeIfAbsent(key, any -> new ArrayList<>());
            if (there.stream().noneMatch(other -> same(run, other))) {
                there.add(run);
                single.add(run);
            }
        }
        int doubled = runs.size() - single.size();
        if (doubled > 0) {
            notices.add(RingNotices.DRAWN_TWICE.with("lines", Figure.count(doubled)));
        }
        return single;
    }

    private boolean same(Run a, Run b) {
        double near = Tolerance.DRAWN_TWICE * size;
        boolean ends = a.closed() == b.closed()
                && (a.closed()
                        || (a.first().near(b.first(), near) && a.last().near(b.last(), near))
                        || (a.first().near(b.last(), near) && a.last().near(b.first(), near)));
        return ends && Math.abs(a.area() - b.area()) <= near * size && middle(a).near(middle(b), near * 10);
    }

    private static Point middle(Run run) {
        Point sum = run.dots().stream().map(Dot::at).reduce(Point.ORIGIN, Point::plus);
        return sum.times(1.0 / run.dots().size());
    }

    /** The frame of a sheet with its table, or the ring round a detail: it holds something that is neither. */
    private static boolean isFrame(Run run, List<Run> all) {
        return goesRound(run, all)
                || (isRectangle(run)
                        && all.stream()
                                .filter(frame -> within(run, frame) && isRectangle(frame) && goesRound(frame, all))
                                .anyMatch(frame -> inCorner(run.box(), frame.box())));
    }

    private static boolean goesRound(Run run, List<Run> all) {
        if (!isRectangle(run) && !isCircle(run)) {
            return false;
        }
        Box box = run.box();
        boolean sheet = Math.min(box.width(), box.height()) > BOARD;
        return all.stream()
                .filter(other -> !other.equals(run) && within(other, run) && !isCircle(other) && !isRectangle(other))
                .anyMatch(other -> other.area() > HELD * run.area()
                        || (sheet
                                && other.area() > Tolerance.HELD_ON_SHEET * run.area()
                                && other.dots().size() >= ARROW));
    }

    /** Whether a rectangle stands in a corner of another, as a title does. */
    private static boolean inCorner(Box box, Box frame) {
        double near = Tolerance.TITLE_CORNER * Math.max(frame.width(), frame.height());
        boolean across = Math.abs(box.back() - frame.back()) < near || Math.abs(box.face() - frame.face()) < near;
        boolean up = Math.abs(box.bottom() - frame.bottom()) < near || Math.abs(box.top() - frame.top()) < near;
        return across && up;
    }

    private static boolean isRectangle(Run run) {
        Box box = run.box();
        return run.area() > RECTANGLE * box.width() * box.height();
    }

    private static boolean isCircle(Run run) {
        Box box = run.box();
        double round = Math.PI / 4 * box.width() * box.height();
        return Math.abs(box.width() - box.height()) < CIRCLE * box.width()
                && Math.abs(run.area() - round) < CIRCLE * round;
    }

    private static boolean within(Run inner, Run outer) {
        Box in = inner.box();
        Box out = outer.box();
        return in.back() >= out.back()
                && in.face() <= out.face()
                && in.bottom() >= out.bottom()
                && in.top() <= out.top();
    }

    private void tell(Run outline, List<Run> others, int frames, Knitting.Knitted knitted) {
        List<Run> rivals = others.stream()
                .filter(other -> !isSameAgain(other, outline))
                .filter(other -> other.area() > (within(other, outline) ? RIVAL_WITHIN : RIVAL) * outline.area()
                        || (isRectangle(outline) && within(other, outline) && !isCircle(other)))
                .toList();
        if (!rivals.isEmpty()) {
            Set<String> layers = new LinkedHashSet<>();
            layers.add(layer(outline));
            rivals.forEach(rival -> layers.add(layer(rival)));
            notices.add((layers.size() > 1 ? RingNotices.RIVALS_ON_LAYERS : RingNotices.RIVALS)
                    .with("outline", said(outline))
                    .with("others", listed(rivals)));
            return;
        }
        int beside = others.size() + frames + knitted.loose().size();
        if (beside > 0) {
            notices.add(RingNotices.BESIDE.with("outline", said(outline)).with("others", Figure.count(beside)));
        }
    }

    /** Whether a line is the outline once more, as the edge of a shape and that of the ground round it. */
    private static boolean isSameAgain(Run run, Run outline) {
        Box box = run.box();
        Box other = outline.box();
        double near = SAME_AGAIN * Math.max(other.width(), other.height());
        return Math.abs(box.back() - other.back()) < near
                && Math.abs(box.face() - other.face()) < near
                && Math.abs(box.bottom() - other.bottom()) < near
                && Math.abs(box.top() - other.top()) < near
                && Math.abs(run.area() - outline.area()) < SAME_AGAIN * outline.area();
    }

    private static String layer(Run run) {
        return run.layers().isEmpty() ? "" : run.layers().get(run.layers().size() - 1);
    }

    private static Phrase said(Run run) {
        Box box = run.box();
        Phrase size = (layer(run).isEmpty() ? RingNotices.SIZE : RingNotices.SIZE_ON_LAYER)
                .with("width", Figure.fine(box.width()))
                .with("height", Figure.fine(box.height()));
        return layer(run).isEmpty() ? size : size.with("layer", layer(run));
    }

    private static Value listed(List<Run> runs) {
        List<Value> said = new ArrayList<>();
        runs.stream().limit(LISTED).forEach(run -> said.add(said(run)));
        if (runs.size() > LISTED) {
            said.add(RingNotices.MORE.with("more", Figure.count(runs.size() - LISTED)));
        }
        return Listing.and(said);
    }
}
