package buildup.engine.hold.support;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import java.util.List;
import java.util.Optional;

/**
 * A row of fastenings with which a stack stands that does not without it; put into the stack, it was tried.
 *
 * @param nail one of them, checked as one of the file
 * @param spacing along the run, in
 * @param needed how many in a foot of run would just do
 * @param instead the name of the row of the file that it takes the place of; absent when it is added
 * @param fall number of the motion that it holds, among those of the stack
 * @param others rows that would do as well, the next best first
 */
public record LeastRow(
        Fixed nail, double spacing, double needed, Optional<String> instead, int fall, List<LeastRow> others) {
    /** Copies the list. */
    public LeastRow {
        others = List.copyOf(others);
    }

    /** The same for a motion of the stack. */
    LeastRow against(int number) {
        return new LeastRow(nail, spacing, needed, instead, number, others);
    }

    /** The same with others that would do. */
    LeastRow or(List<LeastRow> more) {
        return new LeastRow(nail, spacing, needed, instead, fall, more);
    }

    /** How many stand in a foot of run. */
    public double perFoot() {
        return 12 / spacing;
    }

    /** What the row may hold along its axis, pounds per foot. */
    public double pull() {
        return nail.joints().stream().findFirst().map(Joint::pull).orElse(0.0) * perFoot();
    }

    /** What it may hold across, pounds per foot. */
    public double across() {
        return nail.joints().stream().findFirst().map(Joint::lateral).orElse(0.0) * perFoot();
    }
}
