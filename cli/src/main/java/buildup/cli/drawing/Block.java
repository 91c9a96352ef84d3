package buildup.cli.drawing;

import buildup.cli.scene.Group;
import buildup.profiles.outline.Box;

/** A part of the sheet that is moved as one. */
record Block(Group group, Box box) {
    static Block of(Group group) {
        return new Block(group, group.box());
    }

    double width() {
        return box.width();
    }

    double height() {
        return box.height();
    }

    /** Its upper left corner put there. */
    Group at(double left, double top) {
        return group.moved(left - box.back(), top - box.top());
    }
}
