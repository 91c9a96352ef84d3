package buildup.cli.scene;

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

    /** Every item that draws, groups opened, in the order in which they are laid on. */
    public List<SceneItem> leaves() {
        return leaves(items).toList();
    }

    private static Stream<SceneItem> leaves(List<SceneItem> items) {
        return items.stream().flatMap(item -> item instanceof Group group ? leaves(group.items()) : Stream.of(item));
    }
}
