package buildup.engine.run;

import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Scalar;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads corners, the ends of runs, the sides of openings and walls out of plumb. */
final class EndReader {
    /** A wall further out of plumb than this is a slip of the pen: 1 in 10. */
    private static final double MOST_LEAN = 0.1;

    private static final List<String> SIDES = List.of("butt", "return", "square");

    private final Notices notices;

    EndReader(Notices notices) {
        this.notices = notices;
    }

    /** {@code outside 90}; a word alone is square. */
    Optional<Corner> corner(Fields fields) {
        return fields.scalar("corner").flatMap(text -> {
            String[] words = text.text().strip().split("\\s+", 2);
            boolean inside = words[0].equals("inside");
            if (!inside && !words[0].equals("outside")) {
                refuse(
                        "not-a-corner",
                        "'" + text.text() + "' does not say which corner it is.",
                        "Write 'outside 90' or 'inside 90'.",
                        text.mark());
                return Optional.empty();
            }
            Optional<Angle> angle = words.length < 2 ? Optional.of(Angle.degrees(90)) : Angle.read(words[1]);
            if (angle.isEmpty()) {
                refuse(
                        "not-an-angle",
                        "'" + words[1] + "' is not an angle.",
                        "Write degrees, as 38 or 22.5.",
                        text.mark());
            }
            return angle.flatMap(found -> open(found.toDegrees(), text.mark()))
                    .map(degrees -> new Corner(inside, degrees));
        });
    }

    /** A corner that is open at all and not straight. */
    private Optional<Double> open(double degrees, Mark mark) {
        if (degrees > 0 && degrees < 180) {
            return Optional.of(degrees);
        }
        String why = degrees == 180
                ? "the wall runs straight on"
                : degrees <= 0 ? "the walls would lie on one another" : "it would be measured on the wrong side";
        refuse(
                "not-a-corner",
                "A corner of " + Wording.degrees(degrees) + " is none: " + why + ".",
                degrees == 180
                        ? "Make one stretch of the two."
                        : "Measure through the room at an inside corner, through the wall or case at an outside one.",
                mark);
        return Optional.empty();
    }

    /** A word, or a mapping with more to say. */
    Optional<Ending> end(Fields fields, String key) {
        if (fields.node(key).orElse(fields.mapping()) instanceof Scalar word) {
            return kind(word).map(kind -> plain(kind, word.mark()));
        }
        return fields.has(key) ? fields.fields(key).flatMap(this::end) : Optional.empty();
    }

    private static Ending plain(Ending.Kind kind, Mark mark) {
        return new Ending(kind, 90, 0, OptionalDouble.empty(), OptionalDouble.empty(), mark);
    }

    private Optional<Ending> end(Fields fields) {
        Optional<Scalar> word = fields.scalar("end");
        if (word.isEmpty()) {
            refuse("missing-key", "This end does not say what it is.", "Add 'end: return'.", fields.mark());
        }
        Optional<Ending.Kind> kind = word.flatMap(this::kind);
        Optional<Double> corner = fields.has("corner")
                ? fields.angle("corner").flatMap(angle -> open(angle.toDegrees(), fields.mark("corner")))
                : Optional.of(90.0);
        Optional<Double> lean = lean(fields);
        OptionalDouble casing = size(fields, "casing");
        OptionalDouble room = size(fields, "room");
        if (kind.isEmpty() || corner.isEmpty() || lean.isEmpty()) {
            return Optional.empty();
        }
        boolean agree = belongs(fields, "corner", kind.get(), Ending.Kind.DIE)
                & belongs(fields, "plumb", kind.get(), Ending.Kind.DIE)
                & belongs(fields, "casing", kind.get(), Ending.Kind.BUTT)
                & belongs(fields, "room", kind.get(), Ending.Kind.RETURN);
        return agree
                ? Optional.of(new Ending(kind.get(), corner.get(), lean.get(), casing, room, fields.mark()))
                : Optional.empty();
    }

    private boolean belongs(Fields fields, String key, Ending.Kind kind, Ending.Kind owner) {
        if (!fields.has(key) || kind == owner) {
            return true;
        }
        refuse(
                "ends-contradict",
                "An end that is '" + kind.word() + "' has no '" + key + "': that is of '" + owner.word() + "'.",
                "Take '" + key + ":' out, or write 'end: " + owner.word() + "'.",
                fields.mark(key));
        return false;
    }

    private Optional<Ending.Kind> kind(Scalar word) {
        Optional<Ending.Kind> kind = Arrays.stream(Ending.Kind.values())
                .filter(one -> one.word().equals(word.text().strip()))
                .findFirst();
        if (kind.isEmpty()) {
            refuse(
                    "unknown-name",
                    "No end is called '" + word.text() + "'.",
                    "Write return, die, butt or square.",
                    word.mark());
        }
        return kind;
    }

    /** How the run ends on both sides of an opening: it butts the casing when nothing is said. */
    Optional<Ending> ofOpening(Fields fields) {
        Optional<Scalar> word = fields.scalar("ends");
        OptionalDouble casing = size(fields, "casing");
        if (word.filter(text -> !SIDES.contains(text.text().strip())).isPresent()) {
            refuse(
                    "unknown-name",
                    "A run does not end by '" + word.get().text() + "' beside an opening.",
                    "Write butt, return or square.",
                    word.get().mark());
            return Optional.empty();
        }
        Ending.Kind kind = word.flatMap(this::kind).orElse(Ending.Kind.BUTT);
        if (!belongs(fields, "casing", kind, Ending.Kind.BUTT)) {
            return Optional.empty();
        }
        return Optional.of(new Ending(kind, 90, 0, casing, OptionalDouble.empty(), fields.mark()));
    }

    private OptionalDouble size(Fields fields, String key) {
        Optional<Double> size = fields.length(key).map(Length::toInches);
        if (size.filter(inches -> inches < 0).isPresent()) {
            refuse(
                    "not-a-size",
                    "'" + key + "' is " + Wording.near(size.get()) + ".",
                    "Give nothing less than 0.",
                    fields.mark(key));
            return OptionalDouble.empty();
        }
        return size.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** {@code plumb: { out: 3/8, over: 96 }}: inches forward for every inch up; 0 when it is not said. */
    Optional<Double> lean(Fields fields) {
        Optional<Mapping> said = fields.mapping("plumb");
        if (said.isEmpty()) {
            return Optional.of(0.0);
        }
        Fields plumb = fields.fields(said.get(), "plumb");
        Optional<Double> out = plumb.length("out").map(Length::toInches);
        Optional<Double> over = plumb.length("over").map(Length::toInches);
        if (!plumb.has("out") || !plumb.has("over")) {
            refuse(
                    "missing-key",
                    "A wall out of plumb says how far over what height.",
                    "Write 'plumb: { out: 3/8, over: 96 }'; a wall that falls back has a negative 'out'.",
                    plumb.mark());
        }
        if (out.isEmpty() || over.isEmpty()) {
            return Optional.empty();
        }
        if (!(over.get() > 0) || Math.abs(out.get()) > MOST_LEAN * over.get()) {
            refuse(
                    "not-a-size",
                    "A wall does not lean " + Wording.near(out.get()) + " over " + Wording.near(over.get()) + ".",
                    "Give the lean, a few sixteenths, and the height over which it was measured.",
                    plumb.mark());
            return Optional.empty();
        }
        return Optional.of(out.get() / over.get());
    }

    private void refuse(String code, String message, String cure, Mark mark) {
        notices.add(Notice.refusal(code, message).at(mark).cure(cure));
    }
}
