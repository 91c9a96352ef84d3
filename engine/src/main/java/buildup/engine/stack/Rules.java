package buildup.engine.stack;

import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    public List<String> members() {
        return List.copyOf(byMember.keySet());
    }
}
