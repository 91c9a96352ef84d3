package buildup.cli.scene;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import java.util.List;

/**
 * Items that show one piece. It may be shown in several parts, since what lies above and below it is laid on between them:
 * parts of one name with their home at one place belong together.
 *
 * @param name small Latin letters, figures and hyphens
 * @param subject what it is
 * @param home lower back corner of the piece, on the sheet
 * @param origin where the wall plane and the datum of what is drawn meet, on the sheet
 * @param items one at least
 */
public record PiecePart(String name, Subject subject, Point home, Point origin, List<SceneItem> items)
        implements SceneItem {
    /** Copies the list. */
    public PiecePart {
        items = List.copyOf(items);
    }

    @Override
    public PiecePart moved(double right, double up) {
        Motion motion = Motion.shift(right, up);
        return new PiecePart(
                name,
                subject,
                motion.apply(home),
                motion.apply(origin),
                items.stream().map(item -> item.moved(right, up)).toList());
    }

    @Override
    public Box box() {
        return Box.around(items.stream().map(SceneItem::box).toList());
    }
}
