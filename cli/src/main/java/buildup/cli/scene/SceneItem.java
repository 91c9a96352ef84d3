package buildup.cli.scene;

import buildup.profiles.outline.Box;
import java.util.List;
import java.util.Optional;

/** Something on the sheet. */
public sealed interface SceneItem permits Group, PiecePart, About, Clip, Area, Path, Hatch, Label {
    /** The same, so much further right and up; inches. */
    SceneItem moved(double right, double up);

    /** What it covers, widths of lines left out. */
    Box box();

    /** What it holds, where it does not draw itself but what it holds; empty of what draws. */
    default Optional<List<SceneItem>> held() {
        if (this instanceof Group group) {
            return Optional.of(group.items());
        }
        if (this instanceof PiecePart part) {
            return Optional.of(part.items());
        }
        return this instanceof About about ? Optional.of(about.items()) : Optional.empty();
    }
}
