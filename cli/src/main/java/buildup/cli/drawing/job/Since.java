package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What changed since an earlier document.
 *
 * @param name of that document
 * @param before its section; absent when there is none to compare with
 * @param changes in words, by comparison
 * @param letter of the revision that changed it
 */
public record Since(String name, Optional<Section> before, List<String> changes, String letter) {
    /** Nothing is compared. */
    public static final Since NOTHING = new Since("", Optional.empty(), List.of(), "");

    private static final double AIR = 0.12;

    /** About the length of a scallop of a cloud. */
    private static final double SCALLOP = 0.28;

    /** Half the side of the triangle round the letter. */
    private static final double HALF = 0.15;

    /** Copies the list. */
    public Since {
        changes = List.copyOf(changes);
    }

    boolean asked() {
        return before.isPresent();
    }

    /**
     * On the section, a cloud with the letter round each piece that is new or of another size, and the letter at each
     * that only moved.
     *
     * @param texts of the picture: nothing lies on them
     */
    List<SceneItem> marks(Section now, List<Box> texts, TextMeasure measure) {
        List<SceneItem> clouds = new ArrayList<>();
        List<SceneItem> letters = new ArrayList<>();
        List<Box> taken = new ArrayList<>(texts);
        for (Body body : now.bodies()) {
            Change change = asked() && body.inStack() ? change(body) : Change.NONE;
            if (change == Change.NONE) {
                continue;
            }
            Box box = body.outline().box();
            List<Segment> cloud = cloud(change == Change.MOVED ? box : box.grown(AIR));
            if (change == Change.SHAPE) {
                clouds.add(new Path(clear(cloud, texts), false, LineStyle.CLOUD));
            }
            Point place = place(cloud, taken);
            letters.addAll(letter(measure, place));
            taken.add(triangle(place));
        }
        clouds.addAll(letters);
        return clouds.isEmpty() ? List.of() : List.of(new Group("revision", clouds));
    }

    private enum Change {
        NONE,
        MOVED,
        SHAPE
    }

    private Change change(Body body) {
        Box box = body.outline().box();
        return before.orElseThrow().bodies().stream()
                .filter(old -> old.inStack() && old.name().equals(body.name()))
                .findFirst()
                .map(old -> {
                    Box was = old.outline().box();
                    if (differs(was.width(), box.width())
                            || differs(was.height(), box.height())
                            || differs(old.outline().area(), body.outline().area())) {
                        return Change.SHAPE;
                    }
                    return differs(was.back(), box.back()) || differs(was.bottom(), box.bottom())
                            ? Change.MOVED
                            : Change.NONE;
                })
                .orElse(Change.SHAPE);
    }

    /** The scallops that no text lies on. */
    private static List<Segment> clear(List<Segment> cloud, List<Box> texts) {
        return cloud.stream()
                .filter(scallop -> texts.stream().noneMatch(text -> Boxes.overlap(text, scallop.box())))
                .toList();
    }

    /** Where the letter stands: at the upper corner toward the room, or the place nearest to it that is free. */
    private static Point place(List<Segment> cloud, List<Box> taken) {
        Box whole = Box.around(cloud.stream().map(Segment::box).toList());
        Point corner = new Point(whole.face(), whole.top());
        List<Point> nearest = cloud.stream()
                .map(Segment::from)
                .sorted(Comparator.comparingDouble(corner::distance))
                .toList();
        return nearest.stream()
                .filter(at -> taken.stream().noneMatch(box -> Boxes.overlap(box, triangle(at))))
                .findFirst()
                .orElse(nearest.get(0));
    }

    private static Box triangle(Point at) {
        return new Box(at.x() - HALF, at.y() - HALF, at.x() + HALF, at.y() + 1.2 * HALF);
    }

    private static boolean differs(double was, double now) {
        return Math.abs(was - now) >= Tolerance.SAW_CUT;
    }

    private static List<Segment> cloud(Box box) {
        List<Point> corners = List.of(
                new Point(box.back(), box.bottom()),
                new Point(box.face(), box.bottom()),
                new Point(box.face(), box.top()),
                new Point(box.back(), box.top()));
        List<Segment> scallops = new ArrayList<>();
        for (Line side : Line.ring(corners)) {
            int count = Math.max(1, (int) Math.round(side.length() / SCALLOP));
            for (int k = 0; k < count; k++) {
                Point from = side.at((double) k / count);
                Point to = side.at((double) (k + 1) / count);
                scallops.add(new Arc(from, to, from.towards(to, 0.5), true));
            }
        }
        return scallops;
    }

    private List<SceneItem> letter(TextMeasure measure, Point corner) {
        Point left = corner.plus(new Point(-HALF, -HALF));
        Point right = corner.plus(new Point(HALF, -HALF));
        Point top = corner.plus(new Point(0, 1.2 * HALF));
        List<Segment> ring = List.of(new Line(left, right), new Line(right, top), new Line(top, left));
        Point middle = corner.minus(new Point(0, 0.45 * HALF));
        return List.of(
                new Area(Optional.empty(), Optional.of("revision " + letter), ring, Tone.PAPER),
                new Path(ring, true, LineStyle.CLOUD),
                Label.centered(measure, letter, middle, Drafting.SMALL_LETTER, false));
    }
}
