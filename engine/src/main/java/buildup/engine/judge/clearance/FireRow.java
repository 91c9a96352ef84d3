package buildup.engine.judge.clearance;

import buildup.catalog.fire.FireRule;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How one piece stands to one rule. Inches.
 *
 * @param piece name of the piece, or of the trim beside the opening
 * @param ofStack whether it is a piece of the stack
 * @param distance from the opening to its nearest edge; negative when it hangs in front of the opening
 * @param needs the least distance at which it keeps the rule; absent when none is enough
 * @param past whether it has to be more than that
 * @param allowed how far it may project where it has the least to spare; absent when nothing bounds it where it is
 * @param has how far it projects there
 */
public record FireRow(
        FireRule rule,
        Where where,
        String piece,
        boolean ofStack,
        double distance,
        OptionalDouble needs,
        boolean past,
        OptionalDouble allowed,
        double has,
        boolean clear) {
    /** On which side of the opening. */
    public enum Where {
        ABOVE,
        LEFT,
        RIGHT;

        /** Its word in reports. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What is left of the projection that is allowed; negative when it projects too far, absent when nothing bounds it. */
    public OptionalDouble margin() {
        return allowed.isPresent() ? OptionalDouble.of(allowed.getAsDouble() - has) : OptionalDouble.empty();
    }

    /** How much nearer it could be; negative when it is too near, absent when no distance is enough. */
    public OptionalDouble spare() {
        return needs.isPresent() ? OptionalDouble.of(distance - needs.getAsDouble()) : OptionalDouble.empty();
    }
}
