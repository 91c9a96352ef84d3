package buildup.cli.drawing.sheet;

import buildup.cli.scene.Group;
import buildup.profiles.outline.Box;

/** A part of the sheet that is moved as one. */
public record Block(Group group, Box box) {
    /** A block that takes as much paper as is drawn. */
    public static Block of(Group group) {
        return new Block(group, group.box());
    }

    /** How wide it is, in of paper. */
    public double width() {
        return box.width();
    }

    /** How high it is, in of paper. */
    public double height() {
        return box.height();
    }

    /** Its upper left corner put there. */
    public Group at(double left, double top) {
        return group.moved(left - box.back(), top - box.top());
    }
}
