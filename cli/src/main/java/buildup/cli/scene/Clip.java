package buildup.cli.scene;

import buildup.profiles.outline.Box;
import java.util.List;

/** Items of which only what lies within a window is seen: a part of a picture that is larger than its page. */
public record Clip(Box window, List<SceneItem> items) implements SceneItem {
    /** Copies the list. */
    public Clip {
        items = List.copyOf(items);
    }

    @Override
    public Clip moved(double right, double up) {
        Box there = new Box(window.back() + right, window.bottom() + up, window.face() + right, window.top() + up);
        return new Clip(there, items.stream().map(item -> item.moved(right, up)).toList());
    }

    @Override
    public Box box() {
        return window;
    }
}
