package buildup.engine;

import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Named;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Value;
import buildup.shared.notice.Level;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;

/**
 * What is wrong with a stack: each fault once, with how grave it is.
 *
 * @param gravest of each fault, its largest amount; in the unit of the engine, zero where it has none
 */
record Faults(Map<Key, Double> gravest) {
    /** A fault has clearly grown when it is more by a step of a shop rule, in, and by a tenth: a rule of our own. */
    private static final double STEP = 1.0 / 16;

    private static final double TENTH = 1.1;

    /** Copies the map. */
    Faults {
        gravest = Map.copyOf(gravest);
    }

    /** Those among some notices. */
    static Faults of(List<Notice> notices) {
        Map<Key, Double> found = new HashMap<>();
        notices.stream()
                .filter(Faults::wrong)
                .forEach(notice -> found.merge(Key.of(notice), grave(notice).orElse(0), Math::max));
        return new Faults(found);
    }

    /** Whether it says that something is wrong. */
    static boolean wrong(Notice notice) {
        return notice.level() != Level.NOTE;
    }

    /** Whether this fault is among them, whatever its amount. */
    boolean hold(Notice notice) {
        return gravest.containsKey(Key.of(notice));
    }

    /** Whether it is among them and has not clearly grown since. */
    boolean holdAsGrave(Notice notice) {
        OptionalDouble now = grave(notice);
        boolean length = notice.amount().stream().anyMatch(figure -> figure.quantity() == Quantity.LENGTH);
        double before = gravest.getOrDefault(Key.of(notice), Double.NaN);
        return hold(notice)
                && (now.isEmpty()
                        || now.getAsDouble() <= before * TENTH
                        || (length && now.getAsDouble() < before + STEP - Tolerance.SAME_SIZE));
    }

    /** Whether all of the others are among them. */
    boolean holdAll(Faults others) {
        return gravest.keySet().containsAll(others.gravest.keySet());
    }

    /** Those and others. */
    Faults and(Faults others) {
        Map<Key, Double> all = new HashMap<>(gravest);
        others.gravest.forEach((key, grave) -> all.merge(key, grave, Math::max));
        return new Faults(all);
    }

    /** By how much it goes wrong; of loads of which a part is carried, how many times they are too much. */
    private static OptionalDouble grave(Notice notice) {
        DoubleStream amount = notice.amount().stream().mapToDouble(Figure::amount);
        DoubleStream tooMuch = notice.values().stream()
                .filter(named -> named.name().equals("share"))
                .map(Named::value)
                .filter(value -> value instanceof Figure figure && figure.quantity() == Quantity.TIMES)
                .mapToDouble(value -> 1 / ((Figure) value).amount());
        return DoubleStream.concat(amount, tooMuch).findFirst();
    }

    /** What a problem is about, whatever its figures, and where: a row of nails has its own place in the document. */
    private record Key(
            String code, Optional<String> piece, Optional<Mark> mark, Map<String, Value> names, Optional<String> asks) {
        static Key of(Notice notice) {
            Map<String, Value> names = new HashMap<>();
            notice.values().stream()
                    .filter(named ->
                            Set.of("other", "edge", "eye", "rule", "figure").contains(named.name()))
                    .filter(named -> !(named.value() instanceof Figure))
                    .forEach(named -> names.put(named.name(), named.value()));
            // a board may be too thin and too narrow: two problems of one kind, told apart by what they ask for
            Optional<String> asks = notice.cure()
                    .map(Phrase::template)
                    .filter(words -> notice.code().equals("board-too-small"));
            return new Key(notice.code(), notice.piece(), notice.mark(), names, asks);
        }
    }
}
