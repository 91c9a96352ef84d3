package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.Label;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Letters on pieces and words on voids: inside where they fit, else outside with a leader. */
public final class Tags {
    private static final int ROWS = 36;
    private static final int DIRECTIONS = 24;

    /** More room than this is no better; 1 is just enough. */
    private static final double ENOUGH = 1.3;

    /** Room where the tag would lie on a line or another text. */
    private static final double NONE = 0.9;

    /** What room counts against distance from the middle. */
    private static final double WEIGHT = 20;

    private static final List<Double> DISTANCES = List.of(0.35, 0.5, 0.7, 0.95, 1.25, 1.6, 2.0, 2.6, 3.4, 4.5, 6.0);

    private final Clearances clearances;
    private final TextMeasure text;
    private final Box window;
    private final List<SceneItem> items = new ArrayList<>();

    public Tags(Clearances clearances, TextMeasure text, Box window) {
        this.clearances = clearances;
        this.text = text;
        this.window = window;
    }

    /** What is set on the picture: a letter in a ring, or a word. */
    private record Tag(String word, boolean ringed, double halfWidth, double halfHeight) {
        Box box(Point center) {
            return new Box(
                    center.x() - halfWidth, center.y() - halfHeight, center.x() + halfWidth, center.y() + halfHeight);
        }
    }

    private record Spot(Point at, double room) {}

    /** A part whose tag found no place within it. */
    private record Outside(Tag tag, Point anchor) {}

    private final List<Outside> waiting = new ArrayList<>();

    /** Asks for a ringed letter in or beside a ring. */
    public void letter(String letter, ChordRing ring) {
        tag(new Tag(letter, true, Drafting.RING, Drafting.RING), ring);
    }

    /** Asks for a word in or beside a ring. */
    public void word(String word, ChordRing ring) {
        tag(new Tag(word, false, text.width(word, Drafting.TEXT) / 2, Drafting.TEXT / 2), ring);
    }

    private void tag(Tag tag, ChordRing ring) {
        Spot spot = roomiest(ring, tag);
        if (spot.room() >= 1) {
            set(tag, spot.at());
        } else {
            waiting.add(new Outside(tag, spot.at()));
        }
    }

    /** The outside ones, when all inside are set. */
    public List<SceneItem> items() {
        for (Outside outside : waiting) {
            lead(outside);
        }
        waiting.clear();
        return List.copyOf(items);
    }

    /** The place within a ring where a tag has most room, and of those with enough the one nearest to the middle. */
    private Spot roomiest(ChordRing ring, Tag tag) {
        Box box = ring.box();
        Point middle = box.middle();
        double around = box.width() + box.height();
        List<Double> heights = IntStream.range(1, ROWS)
                .mapToObj(row -> box.bottom() + box.height() * row / ROWS)
                .toList();
        return BestPlace.<Double, Spot>among(
                        heights,
                        Double.MAX_VALUE,
                        y -> Math.abs(y - middle.y()) / around - WEIGHT * ENOUGH,
                        (y, most) -> BestPlace.among(
                                level(ring, y),
                                most,
                                p -> middle.distance(p) / around - WEIGHT * ENOUGH,
                                (p, least) -> spot(ring, tag, p, middle.distance(p) / around, least)))
                .map(BestPlace::place)
                .orElse(new Spot(ring.points().get(0), 0));
    }

    private static List<Point> level(ChordRing ring, double y) {
        return ring.level(y).stream()
                .flatMap(span -> IntStream.range(1, ROWS)
                        .mapToObj(column -> new Point(span.from() + span.length() * column / ROWS, y)))
                .toList();
    }

    private Optional<BestPlace<Spot>> spot(ChordRing ring, Tag tag, Point p, double far, double least) {
        double room = room(ring, tag, p, far, least);
        if (room >= 1 && (!clearances.takesTag(tag.box(p)) || clearances.holdsEdge(tag.box(p)))) {
            room = Math.min(room, NONE);
        }
        return Optional.of(new BestPlace<>(new Spot(p, room), far - WEIGHT * room));
    }

    /**
     * 1 and more when the tag fits there, air included; else less. Looks no further when the place costs more than
     * {@code least} already.
     */
    private static double room(ChordRing ring, Tag tag, Point p, double far, double least) {
        Box wide = tag.box(p).grown(Drafting.AIR);
        double high = tag.halfHeight() + Drafting.AIR;
        // a little more than what counts, so that rounding leaves nothing out
        double reach = 1.01 * ENOUGH * high;
        Box near = wide.with(new Box(p.x() - reach, p.y() - reach, p.x() + reach, p.y() + reach));
        double[] room = {ENOUGH};
        ring.anyNear(near, edge -> {
            room[0] = Math.min(room[0], edge.distance(p) / high);
            if (!tag.ringed() && Boxes.crosses(wide, edge.from(), edge.to())) {
                room[0] = Math.min(room[0], NONE);
            }
            return far - WEIGHT * room[0] >= least;
        });
        return room[0];
    }

    private void set(Tag tag, Point at) {
        clearances.addText(tag.box(at));
        if (tag.ringed()) {
            items.addAll(Caption.ringed(text, tag.word(), at, Drafting.RING, Drafting.LETTER, false));
        } else {
            items.add(Label.centered(text, tag.word(), at, Drafting.TEXT, false));
        }
    }

    private void lead(Outside outside) {
        Tag tag = outside.tag();
        Point anchor = outside.anchor();
        List<Point> steps = DISTANCES.stream()
                .flatMap(distance -> IntStream.range(0, DIRECTIONS)
                        .mapToObj(i -> Point.towards(2 * Math.PI * (i + 0.5) / DIRECTIONS)
                                .times(distance)))
                .toList();
        Optional<Point> best = BestPlace.<Point, Point>among(
                        steps, Double.MAX_VALUE, Point::length, (step, known) -> led(tag, anchor, anchor.plus(step)))
                .map(BestPlace::place);
        best.ifPresent(at -> {
            Line leader = leader(tag, anchor, at);
            items.addAll(Leaders.drawn(leader));
            set(tag, at);
            clearances.addLine(leader);
        });
    }

    private Optional<BestPlace<Point>> led(Tag tag, Point anchor, Point at) {
        Line leader = leader(tag, anchor, at);
        if (!clearances.takesText(tag.box(at)) || !clearances.takesLine(leader)) {
            return Optional.empty();
        }
        double cost = anchor.distance(at) + beyond(tag.box(at)) * 0.7 + 0.5 * clearances.crossedLines(leader);
        return Optional.of(new BestPlace<>(at, cost));
    }

    private static Line leader(Tag tag, Point anchor, Point at) {
        if (!tag.ringed()) {
            return Leaders.to(tag.box(at), anchor);
        }
        Point step = anchor.minus(at);
        return new Line(at.plus(step.times(tag.halfWidth() / step.length())), anchor);
    }

    private double beyond(Box box) {
        return Math.max(0, box.face() - window.face())
                + Math.max(0, window.back() - box.back())
                + Math.max(0, box.top() - window.top())
                + Math.max(0, window.bottom() - box.bottom());
    }
}
