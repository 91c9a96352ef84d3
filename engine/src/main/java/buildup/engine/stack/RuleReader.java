package buildup.engine.stack;

import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads where an edge goes: a landmark, an edge of a piece or a plain length, with lengths added or taken off. */
final class RuleReader {
    private static final Set<String> LANDMARKS = Set.of("wall", "floor", "ceiling", "datum");

    private final OptionalDouble floor;
    private final OptionalDouble ceiling;
    private final Notices notices;

    RuleReader(OptionalDouble floor, OptionalDouble ceiling, Notices notices) {
        this.floor = floor;
        this.ceiling = ceiling;
        this.notices = notices;
    }

    /** The rule under a key; nothing when the key is absent or what stands there was refused. */
    Optional<Rule> rule(Fields fields, String key, Axis axis) {
        return fields.scalar(key).flatMap(scalar -> rule(fields, scalar, Optional.of(axis)));
    }

    /** A level that no piece decides: a landmark or a length, with offsets. */
    OptionalDouble level(Fields fields, String key, Axis axis) {
        Optional<Rule> rule = rule(fields, key, axis);
        if (rule.isPresent() && rule.get() instanceof Rule.Level level) {
            return OptionalDouble.of(level.at());
        }
        rule.ifPresent(other -> notices.add(Notice.refusal(
                        "not-a-length", "'" + key + "' cannot hang on a piece here.")
                .at(other.mark())
                .cure("Give a length" + (axis == Axis.UP ? ", or floor + a length." : "."))));
        return OptionalDouble.empty();
    }

    /** @param axis of the edge; empty when the member that is placed decides it later */
    Optional<Rule> rule(Fields fields, Scalar scalar, Optional<Axis> axis) {
        String text = scalar.text().trim();
        if (text.equals("touch")) {
            return Optional.of(new Rule.Touch(scalar.mark()));
        }
        Optional<Reference> base = Optional.empty();
        double offset = 0;
        boolean sound = true;
        for (LengthReader.Term term : LengthReader.terms(text)) {
            Optional<Reference> reference = reference(term.text());
            if (reference.isPresent()) {
                if (base.isPresent() || term.minus()) {
                    refuse(scalar, "'" + text + "' measures from more than one place or from the far side of one.");
                    sound = false;
                }
                base = reference;
                continue;
            }
            Optional<Length> length = fields.readLength(new Scalar(term.text(), scalar.mark()));
            sound &= length.isPresent();
            double inches = length.map(Length::toInches).orElse(0.0);
            offset += term.minus() ? -inches : inches;
        }
        return sound ? rule(scalar, base, offset, axis) : Optional.empty();
    }

    private Optional<Rule> rule(Scalar scalar, Optional<Reference> base, double offset, Optional<Axis> axis) {
        if (base.isEmpty()) {
            return Optional.of(new Rule.Level(offset, Optional.empty(), scalar.mark()));
        }
        Reference reference = base.get();
        if (reference.edge().isPresent()) {
            return Optional.of(
                    new Rule.ByEdge(reference.name(), reference.edge().get(), offset, scalar.mark()));
        }
        String landmark = reference.name();
        if (axis.isPresent() && !axis.get().landmarks().contains(landmark)) {
            refuse(scalar, "'" + landmark + "' is not " + axis.get().measure() + ".");
            return Optional.empty();
        }
        OptionalDouble level =
                switch (landmark) {
                    case "floor" -> floor;
                    case "ceiling" -> ceiling;
                    default -> OptionalDouble.of(0);
                };
        if (level.isEmpty()) {
            notices.add(Notice.refusal("unknown-name", "This space has no " + landmark + ".")
                    .at(scalar.mark())
                    .cure("Give 'space: { " + landmark + ": HEIGHT }'."));
            return Optional.empty();
        }
        Axis own = Axis.OUT.landmarks().contains(landmark) ? Axis.OUT : Axis.UP;
        return Optional.of(new Rule.Level(level.getAsDouble() + offset, Optional.of(own), scalar.mark()));
    }

    private void refuse(Scalar scalar, String message) {
        notices.add(Notice.refusal("not-a-place", message)
                .at(scalar.mark())
                .cure("Write one place and lengths, as 'frieze.top + 1/4'."));
    }

    private record Reference(String name, Optional<String> edge) {}

    /** The edge is what follows the last dot, and begins with a letter: 3.8cm and .5 are lengths. */
    private static Optional<Reference> reference(String term) {
        if (LANDMARKS.contains(term)) {
            return Optional.of(new Reference(term, Optional.empty()));
        }
        int dot = term.lastIndexOf('.');
        if (dot <= 0 || dot == term.length() - 1 || !Character.isLetter(term.codePointAt(dot + 1))) {
            return Optional.empty();
        }
        return Optional.of(new Reference(term.substring(0, dot), Optional.of(term.substring(dot + 1))));
    }
}
