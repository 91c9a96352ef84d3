package buildup.cli.scene;

import buildup.profiles.outline.Box;
import java.util.List;
import java.util.stream.Stream;

/**
 * One sheet.
 *
 * @param title what a screen reader says first
 * @param description what the picture shows, in a sentence
 * @param width, height of the sheet, in
 * @param items in the order in which they are laid on
 */
public record Scene(String title, String description, double width, double height, List<SceneItem> items) {
    public Scene {
        items = List.copyOf(items);
    }

    /** What is drawn on it. */
    public Box box() {
        return Box.around(items.stream().map(SceneItem::box).toList());
    }

    /** Every item that draws, groups opened, in the order in which they are laid on; a clipped part stays whole. */
    public List<SceneItem> leaves() {
        return leaves(items);
    }

    /** The same of some items. */
    public static List<SceneItem> leaves(List<SceneItem> items) {
        return opened(items).toList();
    }

    private static Stream<SceneItem> opened(List<SceneItem> items) {
        return items.stream().flatMap(item -> item.held().map(Scene::opened).orElseGet(() -> Stream.of(item)));
    }
}
