package buildup.cli.drawing.paper;

import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Clip;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.SceneItem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Takes names off what is drawn more than once, since a name stands for one thing. */
final class Unnamed {
    private Unnamed() {}

    /** The same items without groups and names; what they are about stays. */
    static List<SceneItem> of(List<SceneItem> items) {
        return items.stream().flatMap(Unnamed::of).toList();
    }

    /** The same items one by one, without what they are about. */
    static List<SceneItem> leaves(List<SceneItem> items) {
        return items.stream().flatMap(Unnamed::leaves).toList();
    }

    private static Stream<SceneItem> leaves(SceneItem item) {
        return item.held().isPresent() ? leaves(item.held().get()).stream() : of(item);
    }

    private static Stream<SceneItem> of(SceneItem item) {
        if (item instanceof About about) {
            return About.of(about.subject(), of(about.items())).stream();
        }
        if (item instanceof PiecePart part) {
            return About.of(part.subject(), of(part.items())).stream();
        }
        if (item.held().isPresent()) {
            return of(item.held().get()).stream();
        }
        if (item instanceof Clip clip) {
            return Stream.of(new Clip(clip.window(), of(clip.items())));
        }
        return Stream.of(
                item instanceof Area area ? new Area(Optional.empty(), area.title(), area.ring(), area.tone()) : item);
    }
}
