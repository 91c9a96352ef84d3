package buildup.cli.drawing.paper;

import buildup.cli.drawing.draft.Scale;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Clip;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.SceneItem;
import buildup.profiles.outline.Box;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Pictures drawn smaller, seen from the origin. */
final class Shrunk {
    /** Lines that show what a picture is of. */
    private static final Set<LineStyle> BODIES = EnumSet.of(
            LineStyle.OUTLINE,
            LineStyle.NAILER,
            LineStyle.STANDING,
            LineStyle.BREAK,
            LineStyle.ARRIS,
            LineStyle.LIT,
            LineStyle.SEEN,
            LineStyle.PLANE);

    private Shrunk() {}

    /** A block made to fit; one that fits stays as it is. */
    static Block toFit(Block block, double wide, double high) {
        double by = Math.min(wide / block.width(), high / block.height());
        return by >= 1 ? block : Block.of(group(block.group(), by));
    }

    /** A block drawn so much smaller. */
    static Block by(Block block, double by) {
        return Block.of(group(block.group(), by));
    }

    private static Group group(Group group, double by) {
        return new Group(group.id(), items(group.items(), by));
    }

    private static List<SceneItem> items(List<SceneItem> items, double by) {
        return items.stream().map(item -> item(item, by)).toList();
    }

    private static SceneItem item(SceneItem item, double by) {
        if (item instanceof Group group) {
            return group(group, by);
        } else if (item instanceof About about) {
            return new About(about.subject(), items(about.items(), by));
        } else if (item instanceof PiecePart part) {
            return new PiecePart(
                    part.name(),
                    part.subject(),
                    part.home().times(by),
                    part.origin().times(by),
                    items(part.items(), by));
        } else if (item instanceof Clip clip) {
            return new Clip(Scale.of(clip.window(), by), items(clip.items(), by));
        } else if (item instanceof Area area) {
            return new Area(area.id(), area.title(), Scale.of(area.ring(), by), area.tone());
        } else if (item instanceof Path path) {
            return new Path(Scale.of(path.segments(), by), path.closed(), path.style());
        } else if (item instanceof Hatch hatch) {
            return new Hatch(
                    Scale.of(hatch.ring(), by),
                    pattern(hatch.pattern(), by),
                    hatch.home().times(by));
        }
        Label label = (Label) item;
        return new Label(
                label.text(),
                label.at().times(by),
                label.size() * by,
                label.anchor(),
                label.upright(),
                label.width() * by);
    }

    private static Pattern pattern(Pattern pattern, double by) {
        return new Pattern(
                pattern.angle(),
                pattern.spacing() * by,
                pattern.crossed(),
                pattern.width() * by,
                pattern.dash().stream().map(length -> length * by).toList());
    }

    /** The edges of what is drawn within a window, in thin lines. */
    static List<SceneItem> edges(List<SceneItem> leaves, Box window, double by) {
        return leaves.stream()
                .filter(item -> item instanceof Path path
                        && BODIES.contains(path.style())
                        && path.box().near(window, 0))
                .map(Path.class::cast)
                .<SceneItem>map(path -> new Path(Scale.of(path.segments(), by), path.closed(), LineStyle.RULE))
                .toList();
    }
}
