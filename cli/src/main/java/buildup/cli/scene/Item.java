package buildup.cli.scene;

import buildup.profiles.outline.Box;

/** Something on the sheet. */
public sealed interface Item permits Group, Area, Path, Hatch, Label {
    /** The same, so much further right and up; inches. */
    Item moved(double right, double up);

    /** What it covers, widths of lines left out. */
    Box box();
}
