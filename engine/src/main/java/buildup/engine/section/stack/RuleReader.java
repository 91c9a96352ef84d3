package buildup.engine.section.stack;

import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Mark;
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
    private final Optional<String> piece;

    RuleReader(OptionalDouble floor, OptionalDouble ceiling, Notices notices) {
        this(floor, ceiling, notices, Optional.empty());
    }

    private RuleReader(OptionalDouble floor, OptionalDouble ceiling, Notices notices, Optional<String> piece) {
        this.floor = floor;
        this.ceiling = ceiling;
        this.notices = notices;
        this.piece = piece;
    }

    /** The same, its notices naming the piece from now on. */
    RuleReader about(String name) {
        return new RuleReader(floor, ceiling, notices, Optional.of(name));
    }

    /** The rule under a key; nothing when the key is absent. */
    Optional<Rule> rule(Fields fields, String key, Axis axis) {
        return fields.has(key)
                ? Optional.of(fields.scalar(key)
                        .map(scalar -> rule(fields, scalar, Optional.of(axis)))
                        .orElse(new Rule.Unread(fields.mark(key))))
                : Optional.empty();
    }

    /** A level that no piece decides: a landmark or a length, with offsets. */
    OptionalDouble level(Fields fields, String key, Axis axis) {
        Optional<Rule> rule = rule(fields, key, axis);
        if (rule.isPresent() && rule.get() instanceof Rule.Level level) {
            return OptionalDouble.of(level.at());
        }
        rule.filter(other -> !(other instanceof Rule.Unread))
                .ifPresent(other -> refuse(
                        (axis == Axis.UP ? StackNotices.LEVEL_ON_A_PIECE : StackNotices.HANGS_ON_A_PIECE)
                                .with("key", key),
                        other.mark()));
        return OptionalDouble.empty();
    }

    /** @param axis of the edge; empty when the member that is placed decides it later */
    Rule rule(Fields fields, Scalar scalar, Optional<Axis> axis) {
        String text = scalar.text().trim();
        if (text.equals("touch")) {
            return new Rule.Touch(scalar.mark());
        }
        Optional<Reference> base = Optional.empty();
        double offset = 0;
        boolean sound = true;
        for (LengthReader.Term term : LengthReader.terms(text)) {
            Optional<Reference> reference = reference(term.text());
            if (reference.isPresent()) {
                if (base.isPresent() || term.minus()) {
                    notAPlace(scalar, StackNotices.SEVERAL_PLACES.with("rule", text));
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
        return sound ? rule(scalar, base, offset, axis) : new Rule.Unread(scalar.mark());
    }

    private Rule rule(Scalar scalar, Optional<Reference> base, double offset, Optional<Axis> axis) {
        if (base.isEmpty()) {
            return new Rule.Level(offset, Optional.empty(), scalar.mark());
        }
        Reference reference = base.get();
        if (reference.edge().isPresent()) {
            return new Rule.ByEdge(reference.name(), reference.edge().get(), offset, scalar.mark());
        }
        String landmark = reference.name();
        if (axis.isPresent() && !axis.get().landmarks().contains(landmark)) {
            notAPlace(
                    scalar,
                    StackNotices.OTHER_AXIS
                            .with("landmark", landmark)
                            .with("measure", axis.get().measure()));
            return new Rule.Unread(scalar.mark());
        }
        OptionalDouble level = switch (landmark) {
            case "floor" -> floor;
            case "ceiling" -> ceiling;
            default -> OptionalDouble.of(0);
        };
        if (level.isEmpty()) {
            refuse(StackNotices.NO_SUCH_LANDMARK.with("landmark", landmark), scalar.mark());
            return new Rule.Unread(scalar.mark());
        }
        Axis own = Axis.OUT.landmarks().contains(landmark) ? Axis.OUT : Axis.UP;
        return new Rule.Level(
                level.getAsDouble() + offset, Optional.of(own), landmark.equals("ceiling"), scalar.mark());
    }

    private void notAPlace(Scalar scalar, Notice notice) {
        refuse(notice.with("example", Figure.atLeast(0.25)), scalar.mark());
    }

    private void refuse(Notice unplaced, Mark mark) {
        Notice notice = unplaced.at(mark);
        notices.add(piece.map(notice::of).orElse(notice));
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
