package buildup.cli.scene;

import buildup.profiles.outline.Box;

/** Something on the sheet. */
public sealed interface SceneItem permits Group, Clip, Area, Path, Hatch, Label {
    /** The same, so much further right and up; inches. */
    SceneItem moved(double right, double up);

    /** What it covers, widths of lines left out. */
    Box box();
}
