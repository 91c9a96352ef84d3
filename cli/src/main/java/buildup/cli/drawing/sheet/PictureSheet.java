package buildup.cli.drawing.sheet;

import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.profiles.outline.Box;
import java.util.List;

/** Sheets cut to the picture. */
public final class PictureSheet {
    private PictureSheet() {}

    /** A reader without the shipped font shows texts in another, and that may run so much wider. */
    public static final double WIDER = 0.16;

    /** The items in the middle of a sheet that is so much larger on every side. */
    public static Scene around(String title, String description, List<SceneItem> items, double margin) {
        Scene scene = new Scene(title, description, 0, 0, items);
        Box box = Box.around(scene.leaves().stream().map(PictureSheet::roomy).toList());
        return new Scene(
                title,
                description,
                box.width() + 2 * margin,
                box.height() + 2 * margin,
                items.stream()
                        .map(item -> item.moved(margin - box.back(), margin - box.bottom()))
                        .toList());
    }

    /** What stands below a picture, in line with its left edge. */
    public static Group below(List<SceneItem> picture, Group next, double gap) {
        Box above = Box.around(picture.stream().map(SceneItem::box).toList());
        return next.moved(
                above.back() - next.box().back(),
                above.bottom() - gap - next.box().top());
    }

    private static Box roomy(SceneItem item) {
        if (!(item instanceof Label label) || label.upright()) {
            return item.box();
        }
        double more = WIDER * label.width();
        Box box = label.box();
        double before = more * label.anchor().share();
        return new Box(box.back() - before, box.bottom(), box.face() + more - before, box.top());
    }
}
