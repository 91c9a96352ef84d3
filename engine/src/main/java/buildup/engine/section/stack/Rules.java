package buildup.engine.section.stack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The rules of one piece.
 *
 * @param byMember rules that place the piece by a straight member of its own, in the order written
 * @param written the words of each rule under its key, as {@code back} or {@code at.shoulder}
 */
public record Rules(
        Optional<Rule> back,
        Optional<Rule> face,
        Optional<Rule> bottom,
        Optional<Rule> top,
        Map<String, Rule> byMember,
        Map<String, String> written) {
    /** The key of a rule that places the piece by one of its members. */
    public static String key(String member) {
        return "at." + member;
    }

    /** The rule for the edge of least coordinate on an axis. */
    public Optional<Rule> low(Axis axis) {
        return axis == Axis.OUT ? back : bottom;
    }

    /** The rule for the edge of greatest coordinate on an axis. */
    public Optional<Rule> high(Axis axis) {
        return axis == Axis.OUT ? face : top;
    }

    /** The rule that stands under a key. */
    public Optional<Rule> at(String key) {
        for (Axis axis : Axis.values()) {
            if (key.equals(axis.low())) {
                return low(axis);
            }
            if (key.equals(axis.high())) {
                return high(axis);
            }
        }
        return byMember.entrySet().stream()
                .filter(entry -> key(entry.getKey()).equals(key))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** The same with another rule under a key that has one. */
    public Rules with(String key, Rule other) {
        Map<String, Rule> members = new LinkedHashMap<>(byMember);
        members.replaceAll((member, rule) -> key(member).equals(key) ? other : rule);
        return new Rules(
                key.equals("back") ? Optional.of(other) : back,
                key.equals("face") ? Optional.of(other) : face,
                key.equals("bottom") ? Optional.of(other) : bottom,
                key.equals("top") ? Optional.of(other) : top,
                members,
                written);
    }

    /** The key under which a rule stands. */
    public Optional<String> keyOf(Rule rule) {
        for (Axis axis : Axis.values()) {
            if (low(axis).filter(rule::equals).isPresent()) {
                return Optional.of(axis.low());
            }
            if (high(axis).filter(rule::equals).isPresent()) {
                return Optional.of(axis.high());
            }
        }
        return byMember.entrySet().stream()
                .filter(entry -> entry.getValue().equals(rule))
                .map(entry -> key(entry.getKey()))
                .findFirst();
    }

    /** Whether the piece is moved until it touches, on one axis or on both. */
    public boolean touch() {
        return Stream.of(Axis.values()).anyMatch(this::touch);
    }

    /** Whether the piece is to touch on both axes, so that neither can be found first. */
    public boolean touchTwice() {
        return Stream.of(Axis.values()).allMatch(this::touch);
    }

    private boolean touch(Axis axis) {
        return Stream.of(low(axis), high(axis)).flatMap(Optional::stream).anyMatch(Rule.Touch.class::isInstance);
    }

    /** The members by which pieces may be set, in the order of the document. */
    public List<String> members() {
        return List.copyOf(byMember.keySet());
    }
}
