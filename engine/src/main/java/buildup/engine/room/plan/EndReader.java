package buildup.engine.room.plan;

import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.figure.Figure;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads corners, the ends of runs, the sides of openings and walls out of plumb. */
final class EndReader {
    /** A wall further out of plumb than this is a slip of the pen: 1 in 10. */
    private static final double MOST_LEAN = 0.1;

    private static final List<String> SIDES = List.of("butt", "return", "square");

    private final PieceNames pieces;
    private final Notices notices;

    EndReader(PieceNames pieces, Notices notices) {
        this.pieces = pieces;
        this.notices = notices;
    }

    /** {@code outside 90}; a word alone is square. */
    Optional<WallCorner> corner(Fields fields) {
        return fields.scalar("corner").flatMap(text -> {
            String[] words = text.text().strip().split("\\s+", 2);
            boolean inside = words[0].equals("inside");
            if (!inside && !words[0].equals("outside")) {
                refuse(PlanNotices.WHICH_CORNER.with("word", text.text()), text.mark());
                return Optional.empty();
            }
            Optional<Angle> angle = words.length < 2 ? Optional.of(Angle.degrees(90)) : Angle.read(words[1]);
            if (angle.isEmpty()) {
                refuse(PlanNotices.NO_ANGLE.with("word", words[1]), text.mark());
            }
            return angle.flatMap(found -> open(found.toDegrees(), text.mark()))
                    .map(degrees -> new WallCorner(inside, degrees));
        });
    }

    /** A corner that is open at all and not straight. */
    private Optional<Double> open(double degrees, Mark mark) {
        if (degrees > 0 && degrees < 180) {
            return Optional.of(degrees);
        }
        refuse(
                (degrees == 180 ? PlanNotices.STRAIGHT_ON : degrees <= 0 ? PlanNotices.SHUT : PlanNotices.WRONG_SIDE)
                        .with("corner", Figure.angle(degrees)),
                mark);
        return Optional.empty();
    }

    /** A word, a mapping with more to say, or a list of them for different pieces; the one for all others is last. */
    List<Ending> ends(Fields fields, String key) {
        Optional<Node> node = fields.node(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (!(node.get() instanceof Sequence list)) {
            return one(fields, key, node.get())
                    .map(end -> List.of(end.of(List.of())))
                    .orElse(List.of());
        }
        List<Ending> all = new ArrayList<>();
        list.items().forEach(item -> one(fields, key, item).ifPresent(all::add));
        long others = all.stream().filter(end -> end.pieces().isEmpty()).count();
        if (all.size() == list.items().size() && others != 1) {
            refuse(
                    (others == 0 ? PlanNotices.NO_END_FOR_OTHERS : PlanNotices.ENDS_FOR_OTHERS).with("side", key),
                    list.mark());
            return List.of();
        }
        all.sort(Comparator.comparing((Ending end) -> end.pieces().isEmpty()));
        return all.size() == list.items().size() ? List.copyOf(all) : List.of();
    }

    private Optional<Ending> one(Fields fields, String key, Node node) {
        if (node instanceof Scalar word) {
            return kind(word).map(kind -> plain(kind, word.mark()));
        }
        return node instanceof Mapping mapping ? end(fields.fields(mapping, key)) : Optional.empty();
    }

    private static Ending plain(Ending.Kind kind, Mark mark) {
        return Ending.plain(kind, mark);
    }

    private Optional<Ending> end(Fields fields) {
        Optional<Scalar> word = fields.scalar("end");
        if (word.isEmpty()) {
            refuse(PlanNotices.END_WITHOUT_KIND.notice(), fields.mark());
        }
        Optional<Ending.Kind> kind = word.flatMap(this::kind);
        Optional<Double> corner = fields.has("corner")
                ? fields.angle("corner").flatMap(angle -> open(angle.toDegrees(), fields.mark("corner")))
                : Optional.of(90.0);
        Optional<Double> lean = lean(fields);
        OptionalDouble casing = size(fields, "casing");
        OptionalDouble room = size(fields, "room");
        OptionalDouble block = size(fields, "block");
        List<String> named = pieces.of(fields, "pieces");
        if (kind.isEmpty() || corner.isEmpty() || lean.isEmpty()) {
            return Optional.empty();
        }
        // all are asked, so that each key that does not belong gets its notice
        boolean agree = !List.of(
                        belongs(fields, "corner", kind.get(), Ending.Kind.DIE),
                        belongs(fields, "plumb", kind.get(), Ending.Kind.DIE),
                        belongs(fields, "casing", kind.get(), Ending.Kind.BUTT),
                        belongs(fields, "block", kind.get(), Ending.Kind.BLOCK),
                        belongs(fields, "room", kind.get(), Ending.Kind.RETURN))
                .contains(false);
        return agree
                ? Optional.of(
                        new Ending(kind.get(), corner.get(), lean.get(), casing, room, block, named, fields.mark()))
                : Optional.empty();
    }

    private boolean belongs(Fields fields, String key, Ending.Kind kind, Ending.Kind owner) {
        if (!fields.has(key) || kind == owner) {
            return true;
        }
        refuse(
                PlanNotices.OF_ANOTHER_END
                        .with("kind", kind.word())
                        .with("key", key)
                        .with("owner", owner.word()),
                fields.mark(key));
        return false;
    }

    private Optional<Ending.Kind> kind(Scalar word) {
        Optional<Ending.Kind> kind = Arrays.stream(Ending.Kind.values())
                .filter(one -> one.word().equals(word.text().strip()))
                .findFirst();
        if (kind.isEmpty()) {
            refuse(PlanNotices.UNKNOWN_END.with("word", word.text()), word.mark());
        }
        return kind;
    }

    /** How the run ends on both sides of an opening: it butts the casing when nothing is said. */
    Optional<Ending> ofOpening(Fields fields) {
        Optional<Scalar> word = fields.scalar("ends");
        OptionalDouble casing = size(fields, "casing");
        if (word.filter(text -> !SIDES.contains(text.text().strip())).isPresent()) {
            refuse(
                    PlanNotices.UNKNOWN_SIDE.with("word", word.get().text()),
                    word.get().mark());
            return Optional.empty();
        }
        Ending.Kind kind = word.flatMap(this::kind).orElse(Ending.Kind.BUTT);
        if (!belongs(fields, "casing", kind, Ending.Kind.BUTT)) {
            return Optional.empty();
        }
        Ending plain = Ending.plain(kind, fields.mark());
        return Optional.of(new Ending(
                kind, plain.corner(), plain.lean(), casing, plain.room(), plain.block(), List.of(), fields.mark()));
    }

    /** A length of no less than 0; absent when it is not said or is refused. */
    OptionalDouble size(Fields fields, String key) {
        Optional<Double> size = fields.length(key).map(Length::toInches);
        if (size.filter(inches -> inches < 0).isPresent()) {
            refuse(
                    PlanNotices.LESS_THAN_NOTHING.with("key", key).with("size", Figure.length(size.get())),
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
                    PlanNotices.LEAN_HALF_SAID
                            .with("out", Figure.atLeast(0.375))
                            .with("over", Figure.atLeast(96)),
                    plumb.mark());
        }
        if (out.isEmpty() || over.isEmpty()) {
            return Optional.empty();
        }
        if (!(over.get() > 0) || Math.abs(out.get()) > MOST_LEAN * over.get()) {
            refuse(
                    PlanNotices.LEANS_TOO_FAR
                            .with("out", Figure.length(out.get()))
                            .with("over", Figure.length(over.get())),
                    plumb.mark());
            return Optional.empty();
        }
        return Optional.of(out.get() / over.get());
    }

    private void refuse(Notice notice, Mark mark) {
        notices.add(notice.at(mark));
    }
}
