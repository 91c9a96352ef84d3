package buildup.cli.drawing;

import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.Clip;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is wrong with the texts of a picture, in words. */
public final class LabelFaults {
    /** Drawn lines have a width; texts are held clear of their middles. */
    private static final double SHRINK = 0.002;

    /** Of a point: less is rounding. */
    private static final double POINTS = 0.01;

    /** Nothing smaller is read on paper. */
    private static final double SMALLEST_POINTS = 6;

    /** Paper under a leader, and lines so light that a text is read on them. */
    private static final Set<LineStyle> QUIET = EnumSet.of(LineStyle.CASING, LineStyle.GRID, LineStyle.GRID_INCH);

    private LabelFaults() {}

    /** Texts on one another, off the sheet, or too small to be read. */
    public static List<String> of(Scene scene) {
        List<Label> labels = all(scene, Label.class);
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            Box box = label.box().grown(-SHRINK);
            for (Label other : labels.subList(i + 1, labels.size())) {
                if (Boxes.overlap(box, other.box())) {
                    faults.add(label.text() + " on " + other.text());
                }
            }
            if (box.back() < 0 || box.bottom() < 0 || box.face() > scene.width() || box.top() > scene.height()) {
                faults.add(label.text() + " off the sheet");
            }
            if (72 * label.size() < SMALLEST_POINTS - POINTS) {
                faults.add(label.text() + " only " + 72 * label.size() + " pt");
            }
        }
        return faults;
    }

    /** Texts that a line runs through which was drawn after them, or was drawn before and is not covered there. */
    public static List<String> lines(Scene scene) {
        List<String> faults = new ArrayList<>();
        List<Seen> drawn = seen(scene);
        for (int i = 0; i < drawn.size(); i++) {
            if (!(drawn.get(i).item() instanceof Label label)) {
                continue;
            }
            Box box = label.box().grown(-SHRINK);
            for (int k = 0; k < drawn.size(); k++) {
                if (drawn.get(k).item() instanceof Path path
                        && !QUIET.contains(path.style())
                        && drawn.get(k).near(box)
                        && path.segments().stream().anyMatch(line -> crosses(box, line))
                        && !covered(drawn, k, i, box)) {
                    faults.add(label.text() + " on a line, " + path.style());
                }
            }
        }
        return faults;
    }

    /** Lines to check full size that cross a piece or another line, or lie in a void, where they would be taken for its edge. */
    public static List<String> checks(Scene scene) {
        List<String> faults = new ArrayList<>();
        for (Path check : all(scene, Path.class)) {
            if (check.style() == LineStyle.CHECK) {
                Box box = check.box().grown(-SHRINK);
                for (SceneItem item : scene.leaves()) {
                    if (item instanceof Area area
                            && (area.tone() != Tone.PAPER || area.title().isPresent())
                            && meets(area.ring(), box)) {
                        faults.add(
                                "a check line on " + area.title().or(area::id).orElse("wood"));
                    } else if (item instanceof Path path
                            && path != check
                            && !QUIET.contains(path.style())
                            && path.segments().stream().anyMatch(line -> crosses(box, line))) {
                        faults.add("a check line on a line, " + path.style());
                    } else if (item instanceof Label label
                            && Boxes.overlap(box, label.box().grown(-SHRINK))) {
                        faults.add("a check line on " + label.text());
                    }
                }
            }
        }
        return faults;
    }

    private static boolean meets(List<Segment> ring, Box box) {
        return ChordRing.of(ring, 0.002).meets(box);
    }

    /** Texts that a page of a picture in parts cuts, though no other page of it shows them whole. */
    public static List<String> parted(Collection<Scene> pages) {
        Map<String, Set<String>> whole = new HashMap<>();
        pages.forEach(page -> opened(page).stream()
                .filter(Label.class::isInstance)
                .forEach(label -> whole.computeIfAbsent(page.title(), unseen -> new HashSet<>())
                        .add(((Label) label).text())));
        List<String> faults = new ArrayList<>();
        for (Scene page : pages) {
            for (Clip clip : clips(page.items())) {
                for (SceneItem item : Scene.leaves(clip.items())) {
                    if (item instanceof Label label
                            && Boxes.overlap(label.box(), clip.window())
                            && !whole.getOrDefault(page.title(), Set.of()).contains(label.text())) {
                        faults.add(label.text() + " cut by every page of " + page.title());
                    }
                }
            }
        }
        return faults;
    }

    private static List<Clip> clips(List<SceneItem> items) {
        List<Clip> clips = new ArrayList<>();
        for (SceneItem item : items) {
            if (item instanceof Clip clip) {
                clips.add(clip);
            } else {
                item.held().ifPresent(held -> clips.addAll(clips(held)));
            }
        }
        return clips;
    }

    /** What draws, and the window that it is seen through. */
    private record Seen(SceneItem item, Box window) {
        boolean near(Box box) {
            return item.box().near(box, 0) && Boxes.overlap(window, box);
        }
    }

    /** All that draws, windows opened; without the texts that a window cuts, which another page has whole. */
    private static List<Seen> seen(Scene scene) {
        List<Seen> seen = new ArrayList<>();
        for (SceneItem item : scene.leaves()) {
            if (item instanceof Clip clip) {
                Scene.leaves(clip.items()).stream()
                        .filter(held ->
                                !(held instanceof Label) || within(clip.window().grown(SHRINK), held.box()))
                        .forEach(held -> seen.add(new Seen(held, clip.window())));
            } else {
                seen.add(new Seen(item, new Box(0, 0, scene.width(), scene.height()).grown(1)));
            }
        }
        return seen;
    }

    private static List<SceneItem> opened(Scene scene) {
        return seen(scene).stream().map(Seen::item).toList();
    }

    private static boolean within(Box window, Box box) {
        return window.holds(new Point(box.back(), box.bottom()), 0)
                && window.holds(new Point(box.face(), box.top()), 0);
    }

    /** Whether paper was laid over the line before the text was. */
    private static boolean covered(List<Seen> drawn, int line, int text, Box box) {
        return line < text
                && drawn.subList(line, text).stream()
                        .map(Seen::item)
                        .anyMatch(item -> item instanceof Area area
                                && area.tone() == Tone.PAPER
                                && area.box().grown(SHRINK).holds(new Point(box.back(), box.bottom()), 0)
                                && area.box().grown(SHRINK).holds(new Point(box.face(), box.top()), 0));
    }

    /** Texts on wood that they do not name; letters and words on voids are left out. */
    public static List<String> wood(Scene scene) {
        List<String> faults = new ArrayList<>();
        for (Label label : all(scene, Label.class)) {
            Box box = label.box().grown(-SHRINK);
            for (Area piece : all(scene, Area.class)) {
                if (piece.id().isPresent()
                        && !label.text().matches("[A-Z]{1,2}|void")
                        && ChordRing.of(piece.ring(), 0.002).meets(box)) {
                    faults.add(label.text() + " on " + piece.id().orElseThrow());
                }
            }
        }
        return faults;
    }

    private static boolean crosses(Box box, Segment line) {
        if (!line.box().near(box, 0)) {
            return false;
        }
        List<Point> points = line.flattened(0.001);
        for (int i = 0; i + 1 < points.size(); i++) {
            if (Boxes.crosses(box, points.get(i), points.get(i + 1))) {
                return true;
            }
        }
        return false;
    }

    private static <T> List<T> all(Scene scene, Class<T> kind) {
        return opened(scene).stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
