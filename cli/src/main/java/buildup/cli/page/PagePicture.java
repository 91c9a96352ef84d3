package buildup.cli.page;

import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Group;
import buildup.cli.scene.PiecePart;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.write.SvgWriter;
import buildup.shared.length.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Pictures as they stand within a page.
 *
 * @param key that begins all their ids
 */
record PagePicture(String key) {
    /** The picture as markup. */
    String svg(Scene scene) {
        Scene named = new Scene(
                scene.title(),
                scene.description(),
                scene.width(),
                scene.height(),
                scene.items().stream().map(this::named).toList());
        String file = new String(SvgWriter.write(named, LengthUnit.INCH), StandardCharsets.UTF_8);
        return file.substring(file.indexOf("<svg")).strip();
    }

    private SceneItem named(SceneItem item) {
        if (item instanceof Group group) {
            return new Group(
                    key + "-" + group.id(),
                    group.items().stream().map(this::named).toList());
        }
        if (item instanceof About about) {
            return new About(
                    about.subject(), about.items().stream().map(this::named).toList());
        }
        if (item instanceof PiecePart part) {
            return new About(
                    part.subject(), part.items().stream().map(this::named).toList());
        }
        return item instanceof Area area ? new Area(Optional.empty(), area.title(), area.ring(), area.tone()) : item;
    }
}
