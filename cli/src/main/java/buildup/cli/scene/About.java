package buildup.cli.scene;

import buildup.profiles.outline.Box;
import java.util.List;

/** Items that are about one thing, whatever their lines look like: figures, their rings and leaders; at least one. */
public record About(Subject subject, List<SceneItem> items) implements SceneItem {
    /** Copies the list. */
    public About {
        items = List.copyOf(items);
    }

    /** The same as a list; nothing of nothing. */
    public static List<SceneItem> of(Subject subject, List<? extends SceneItem> items) {
        return items.isEmpty() ? List.of() : List.of(new About(subject, List.copyOf(items)));
    }

    @Override
    public About moved(double right, double up) {
        return new About(
                subject, items.stream().map(item -> item.moved(right, up)).toList());
    }

    @Override
    public Box box() {
        return Box.around(items.stream().map(SceneItem::box).toList());
    }
}
