package buildup.engine.hold.fixing;

import buildup.engine.hold.nail.Fastening;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Edges;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Rule;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds the spots that fastenings name. */
final class Spots {
    /** A place given by both its coordinates may lie this far off the face, in: a tape is read no finer. */
    private static final double OFF = 1.0 / 16;

    /** So much room a tool takes before a face, in: common practice, no source. */
    private static final double TOOL = 12;

    private final Section section;
    private final Notices notices;

    Spots(Section section, Notices notices) {
        this.section = section;
        this.notices = notices;
    }

    /** Number of the body of that name among the pieces. */
    Optional<Integer> piece(String name) {
        return IntStream.range(0, section.bodies().size())
                .filter(i -> section.body(i).piece() && section.name(i).equals(name))
                .boxed()
                .findFirst();
    }

    /** The spot of a fastening; nothing, with a problem, when the piece has no such place. */
    Optional<Spot> of(Fastening fastening) {
        int body = piece(fastening.piece()).orElseThrow();
        Optional<Double> out = fastening.out().map(rule -> coordinate(rule, Axis.OUT));
        Optional<Double> up = fastening.up().map(rule -> coordinate(rule, Axis.UP));
        Outline outline = section.body(body).outline();
        if (out.isPresent() && up.isPresent()) {
            Point asked = new Point(out.get(), up.get());
            Spot spot = Spot.nearest(body, outline, asked);
            double off = spot.at().distance(asked);
            if (off <= OFF) {
                return Optional.of(spot);
            }
            say(fastening, off, asked, FixingNotices.ONE_COORDINATE);
            return Optional.empty();
        }
        Axis given = up.isPresent() ? Axis.UP : Axis.OUT;
        double at = up.or(() -> out).orElseThrow();
        Optional<Spot> spot = onFace(body, given, at);
        if (spot.isEmpty()) {
            double low = given.low(outline.box());
            double high = given.high(outline.box());
            double off = Math.max(low - at, at - high);
            Point asked = given == Axis.UP
                    ? new Point(outline.box().face(), at)
                    : new Point(at, outline.box().top());
            say(
                    fastening,
                    off,
                    asked,
                    FixingNotices.RUNS.with("low", Figure.length(low)).with("high", Figure.length(high)));
        }
        return spot;
    }

    private double coordinate(Rule rule, Axis axis) {
        if (rule instanceof Rule.Level level) {
            return level.at();
        }
        Rule.ByEdge byEdge = (Rule.ByEdge) rule;
        Placed placed =
                section.body(piece(byEdge.piece()).orElseThrow()).placed().orElseThrow();
        Box drawn = placed.piece().shape().box();
        Box sits = placed.outline().box();
        double edge = Edges.straight(placed.piece().shape(), byEdge.edge())
                .orElseThrow()
                .coordinate();
        // a board ripped to fit has lost its members, and its far edge has moved
        double at = Tolerance.same(edge, axis.high(drawn)) ? axis.high(sits) : axis.low(sits) + edge - axis.low(drawn);
        return at + byEdge.offset();
    }

    private void say(Fastening fastening, double off, Point asked, Phrase cure) {
        notices.add(FixingNotices.OFF_ITS_PIECE
                .with("nail", NailWords.label(fastening))
                .with("out", Figure.length(asked.x()))
                .with("up", Figure.length(asked.y()))
                .at(fastening.mark())
                .of(fastening.piece())
                .amount(Figure.length(off))
                .cure(cure));
    }

    /**
     * The place at a height on the face farthest into the room, where that is covered as the piece goes up on one that lies
     * open then; at a projection, on the room side, else on top.
     */
    private Optional<Spot> onFace(int body, Axis given, double at) {
        Outline outline = section.body(body).outline();
        Box box = outline.box().grown(1);
        Line line = given == Axis.UP
                ? new Line(new Point(box.back(), at), new Point(box.face(), at))
                : new Line(new Point(at, box.bottom()), new Point(at, box.top()));
        List<Spot> met = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            for (Point p : Crossings.of(line, stroke.segment(), Tolerance.SNAP)) {
                met.add(Spot.on(body, stroke, stroke.segment().nearest(p)));
            }
        }
        List<Spot> shown = given == Axis.UP
                ? List.of()
                : met.stream().filter(this::onTheWalk).toList();
        Optional<Spot> farthest = farthest(shown.isEmpty() ? met : shown, given);
        boolean covered = given == Axis.UP
                && farthest.filter(spot -> standsBefore(spot, Reaching.OVER)).isPresent();
        return covered
                ? farthest(met.stream().filter(this::isOpen).toList(), given).or(() -> farthest)
                : farthest;
    }

    private static Optional<Spot> farthest(List<Spot> spots, Axis given) {
        return spots.stream().max(Comparator.comparingDouble((Spot spot) -> {
            double along = given == Axis.UP ? spot.at().x() : spot.at().y();
            // strokes that meet at a place must not be told apart by rounding
            return Math.rint(along / Tolerance.SNAP);
        }));
    }

    /** Whether nothing stands before a spot for the length of a tool when its piece goes up. */
    private boolean isOpen(Spot spot) {
        return IntStream.rangeClosed(1, (int) (TOOL / OFF)).noneMatch(i -> standsBefore(spot, i * OFF));
    }

    private boolean standsBefore(Spot spot, double away) {
        Point place = spot.outside(away);
        return IntStream.range(0, section.bodies().size())
                .filter(i ->
                        i != spot.body() && (i < spot.body() || section.body(i).standing()))
                .anyMatch(i -> section.body(i).outline().holds(place));
    }

    private boolean onTheWalk(Spot spot) {
        return section.members().stream()
                .filter(member -> member.body() == spot.body())
                .flatMap(member -> member.segments().stream())
                .anyMatch((Segment segment) -> segment.distance(spot.at()) <= Tolerance.TOUCHING);
    }
}
