package buildup.engine.hold.tolerance;

import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code tolerance:}. */
final class ErrorReader {
    private static final int MOST_BUILDS = 10_000_000;

    /** A piece that is moved until it touches takes as long, in each build, as a hundred pieces that stand on a rule. */
    private static final int TOUCHING = 100;

    /** Farther out a wall is no wall: 1 in 4. */
    private static final double MOST_LEAN = 0.25;

    private final Notices notices;

    ErrorReader(Notices notices) {
        this.notices = notices;
    }

    /**
     * @param spread whether any piece says how far it strays: that asks too
     * @param touching whether any piece is moved until it touches
     */
    ErrorSettings read(Fields root, boolean spread, boolean touching) {
        boolean asked = root.has("tolerance");
        Optional<Fields> fields = root.fields("tolerance");
        int usual = touching ? ErrorSettings.TOUCHING_BUILDS : ErrorSettings.USUAL_BUILDS;
        int most = touching ? MOST_BUILDS / TOUCHING : MOST_BUILDS;
        int builds =
                fields.map(found -> (int) number(found, "builds", usual, most)).orElse(usual);
        long seed =
                fields.map(found -> number(found, "seed", 1, Long.MAX_VALUE)).orElse(1L);
        OptionalDouble plumb = fields.map(this::plumb).orElse(OptionalDouble.empty());
        OptionalDouble level = fields.map(this::level).orElse(OptionalDouble.empty());
        return new ErrorSettings(
                asked || spread,
                builds,
                seed,
                fields.filter(this::normal).isPresent(),
                plumb.orElse(ErrorSettings.USUAL_PLUMB),
                plumb.isPresent(),
                level.orElse(ErrorSettings.USUAL_LEVEL),
                level.isPresent());
    }

    private boolean normal(Fields fields) {
        Optional<String> shape = fields.text("shape");
        boolean known =
                shape.isEmpty() || shape.get().equals("uniform") || shape.get().equals("normal");
        if (!known) {
            notices.add(ToleranceNotices.UNKNOWN_SHAPE.with("word", shape.get()).at(fields.mark("shape")));
        }
        return shape.filter("normal"::equals).isPresent();
    }

    private long number(Fields fields, String key, long usual, long most) {
        Optional<Scalar> text = fields.scalar(key);
        if (text.isEmpty()) {
            return usual;
        }
        String digits = text.get().text().strip().replace(",", "");
        long number = digits.matches("\\d{1,18}") ? Long.parseLong(digits) : 0;
        if (number < 1 || number > most) {
            notices.add(ToleranceNotices.NOT_A_COUNT
                    .with("key", key)
                    .with("text", text.get().text())
                    .with("most", Figure.count(most))
                    .at(text.get().mark()));
            return usual;
        }
        return number;
    }

    private OptionalDouble plumb(Fields fields) {
        Optional<Fields> plumb = fields.fields("plumb");
        if (plumb.isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<Length> out = plumb.get().length("out");
        Optional<Length> over = plumb.get().length("over");
        double lean = out.isPresent() && over.filter(Length::isPositive).isPresent()
                ? out.get().toInches() / over.get().toInches()
                : -1;
        if (lean < 0 || lean > MOST_LEAN) {
            notices.add(ToleranceNotices.NOT_A_LEAN.notice().at(fields.mark("plumb")));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(lean);
    }

    private OptionalDouble level(Fields fields) {
        Optional<Length> level = fields.length("ceiling");
        if (level.filter(length -> length.toInches() < 0).isPresent()) {
            notices.add(ToleranceNotices.NOT_A_LEVEL.notice().at(fields.mark("ceiling")));
            return OptionalDouble.empty();
        }
        return level.map(found -> OptionalDouble.of(found.toInches())).orElse(OptionalDouble.empty());
    }
}
