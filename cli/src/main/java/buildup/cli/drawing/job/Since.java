package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.scene.Area;
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

    /** On the section, a cloud with the letter round each piece that is new, of another size or elsewhere. */
    List<SceneItem> marks(Section now, TextMeasure measure) {
        List<SceneItem> items = new ArrayList<>();
        for (Body body : now.bodies()) {
            if (asked() && body.inStack() && changed(body)) {
                Box box = body.outline().box().grown(AIR);
                items.add(new Path(cloud(box), true, LineStyle.CLOUD));
                items.addAll(letter(measure, new Point(box.face(), box.top())));
            }
        }
        return items.isEmpty() ? List.of() : List.of(new Group("revision", items));
    }

    private boolean changed(Body body) {
        Box box = body.outline().box();
        return before.orElseThrow().bodies().stream()
                .filter(old -> old.inStack() && old.name().equals(body.name()))
                .findFirst()
                .map(old -> {
                    Box was = old.outline().box();
                    return differs(was.back(), box.back())
                            || differs(was.bottom(), box.bottom())
                            || differs(was.face(), box.face())
                            || differs(was.top(), box.top())
                            || differs(old.outline().area(), body.outline().area());
                })
                .orElse(true);
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
        for (int i = 0; i < corners.size(); i++) {
            Line side = new Line(corners.get(i), corners.get((i + 1) % corners.size()));
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
