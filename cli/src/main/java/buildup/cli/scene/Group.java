package buildup.cli.scene;

import buildup.profiles.outline.Box;
import java.util.List;

/** Items that belong together, under a name that is unique in the scene; at least one. */
public record Group(String id, List<SceneItem> items) implements SceneItem {
    public Group {
        items = List.copyOf(items);
    }

    @Override
    public Group moved(double right, double up) {
        return new Group(id, items.stream().map(item -> item.moved(right, up)).toList());
    }

    @Override
    public Box box() {
        return Box.around(items.stream().map(SceneItem::box).toList());
    }
}
