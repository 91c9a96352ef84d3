package buildup.engine.section.stack;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The rules of one piece.
 *
 * @param byMember rules that place the piece by a straight member of its own, in the order written
 */
public record Rules(
        Optional<Rule> back,
        Optional<Rule> face,
        Optional<Rule> bottom,
        Optional<Rule> top,
        Map<String, Rule> byMember) {
    /** The rule for the edge of least coordinate on an axis. */
    public Optional<Rule> low(Axis axis) {
        return axis == Axis.OUT ? back : bottom;
    }

    /** The rule for the edge of greatest coordinate on an axis. */
    public Optional<Rule> high(Axis axis) {
        return axis == Axis.OUT ? face : top;
    }

    /** Whether the piece is to touch on both axes, so that neither can be found first. */
    public boolean touchTwice() {
        return Stream.of(Axis.values())
                .allMatch(axis -> Stream.of(low(axis), high(axis))
                        .flatMap(Optional::stream)
                        .anyMatch(Rule.Touch.class::isInstance));
    }

    public List<String> members() {
        return List.copyOf(byMember.keySet());
    }
}
