package buildup.engine.hold.support;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import java.util.Optional;

/**
 * A row of fastenings with which a stack stands that does not without it; put into the stack, it was tried.
 *
 * @param nail one of them, checked as one of the file
 * @param spacing along the run, in
 * @param needed how many in a foot of run would just do
 * @param instead the name of the row of the file that it takes the place of; absent when it is added
 */
public record LeastRow(Fixed nail, double spacing, double needed, Optional<String> instead) {
    /** How many stand in a foot of run. */
    public double perFoot() {
        return 12 / spacing;
    }

    /** What the row may hold along its axis, pounds per foot. */
    public double pull() {
        return nail.joints().stream().findFirst().map(Joint::pull).orElse(0.0) * perFoot();
    }

    /** As {@code , angle 30 degrees}; nothing for what is driven square to its face. */
    public Phrase tilt() {
        double degrees = nail.fastening().angle();
        return Math.abs(degrees) < 0.5
                ? Phrase.of("")
                : Phrase.of(", angle {angle}")
                        .with("angle", Figure.angle(degrees).rounded(Rounding.decimals(0)));
    }

    /** What it may hold across, pounds per foot. */
    public double across() {
        return nail.joints().stream().findFirst().map(Joint::lateral).orElse(0.0) * perFoot();
    }
}
