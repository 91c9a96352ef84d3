package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.catalog.fastener.Fastener;
import buildup.engine.section.placing.Edges;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Rule;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code fastenings:}. What is wrong with an entry is refused, and the entry left out. */
final class FasteningReader {
    /** More rows than this are not a section. */
    private static final int MOST = 500;

    /** Studs and trim: common practice, no source. */
    static final double USUAL_SPACING = 16;

    private static final double WIDEST_SPACING = 120;
    private static final int MOST_AT_A_PLACE = 20;

    /** Flatter than this to the face nothing can be driven, degrees off square. */
    private static final double FLATTEST = 75;

    private final Stack stack;
    private final Catalog catalog;
    private final Notices notices;

    FasteningReader(Stack stack, Catalog catalog, Notices notices) {
        this.stack = stack;
        this.catalog = catalog;
        this.notices = notices;
    }

    List<Fastening> read(Fields root) {
        List<Fields> entries = root.list("fastenings");
        if (entries.size() > MOST) {
            notices.add(Notice.refusal(
                            "too-many-fastenings",
                            "The stack holds " + entries.size() + " rows of fastenings; at most " + MOST
                                    + " are looked at.")
                    .at(root.mark("fastenings"))
                    .cure("Give each row once, with its spacing."));
            return List.of();
        }
        List<Fastening> all = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            fastening(entries.get(i), i + 1).ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    private Optional<Fastening> fastening(Fields plain, int number) {
        Optional<Scalar> piece = named(plain, "piece", true);
        Fields fields = piece.map(named -> plain.about(named.text())).orElse(plain);
        Optional<Fastener.Cut> use = use(fields);
        Optional<Fields> at = fields.fields("at");
        Optional<Rule> out = at.flatMap(place -> rule(place, "out", Axis.OUT));
        Optional<Rule> up = at.flatMap(place -> rule(place, "up", Axis.UP));
        if (at.isEmpty() || (!at.get().has("out") && !at.get().has("up"))) {
            refuse("missing-key", at.orElse(fields).mark(), "A fastening has no place.", "Add 'at: { up: PLACE }'.");
        }
        boolean placed = at.isPresent()
                && (out.isPresent() || up.isPresent())
                && out.isPresent() == at.get().has("out")
                && up.isPresent() == at.get().has("up");
        Optional<Double> angle = angle(fields);
        Optional<Double> spacing = spacing(fields);
        Optional<Integer> per = per(fields);
        Optional<Scalar> after = named(fields, "after", false);
        boolean later = after.isEmpty() || piece.isEmpty() || isLater(after.get(), piece.get());
        Optional<String> own = fields.text("name");
        if (piece.isEmpty()
                || use.isEmpty()
                || !placed
                || angle.isEmpty()
                || spacing.isEmpty()
                || per.isEmpty()
                || !later
                || (fields.has("after") && after.isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(new Fastening(
                own.orElse(Wording.kind(use.get()) + " " + number),
                piece.get().text(),
                use.get(),
                out,
                up,
                angle.get(),
                spacing.get(),
                per.get(),
                after.map(Scalar::text),
                fields.mark()));
    }

    private Optional<Scalar> named(Fields fields, String key, boolean needed) {
        Optional<Scalar> name = fields.scalar(key).filter(text -> !text.text().isBlank());
        List<String> known = stack.pieces().stream().map(Piece::name).toList();
        if (name.isEmpty() && needed) {
            refuse("missing-key", fields.mark(), "A fastening names no " + key + ".", "Add '" + key + ":'.");
        }
        if (name.isPresent() && !known.contains(name.get().text())) {
            refuse(
                    "unknown-name",
                    name.get().mark(),
                    "No piece called '" + name.get().text() + "' to be fastened.",
                    Suggestion.cure(name.get().text(), known));
            return Optional.empty();
        }
        return name;
    }

    private boolean isLater(Scalar after, Scalar piece) {
        List<String> order = stack.pieces().stream().map(Piece::name).toList();
        if (order.indexOf(after.text()) >= order.indexOf(piece.text())) {
            return true;
        }
        refuse(
                "nail-before-its-piece",
                after.mark(),
                "'" + piece.text() + "' cannot be fastened after '" + after.text() + "': it is not up yet.",
                "Name '" + piece.text() + "' or a later piece, or leave 'after:' out.");
        return false;
    }

    private Optional<Fastener.Cut> use(Fields fields) {
        Optional<Scalar> call = fields.scalar("use").filter(text -> !text.text().isBlank());
        if (call.isEmpty()) {
            refuse("missing-key", fields.mark(), "A fastening says no nail or screw.", "Add 'use: 15 ga x 2'.");
        }
        return call.flatMap(text -> catalog.fastener(text, stack.lengths(), notices));
    }

    private Optional<Rule> rule(Fields at, String key, Axis axis) {
        return stack.rule(at, key, axis, notices).filter(rule -> usable(rule, axis));
    }

    /** Whether it names a place: an unreadable one has been said, a touch is none, an edge must be there. */
    private boolean usable(Rule rule, Axis axis) {
        if (rule instanceof Rule.Touch) {
            refuse("not-a-place", rule.mark(), "A nail cannot be placed by touch.", "Give a height or a projection.");
            return false;
        }
        return rule instanceof Rule.Level || (rule instanceof Rule.ByEdge byEdge && edgeIsThere(byEdge, axis));
    }

    private boolean edgeIsThere(Rule.ByEdge rule, Axis axis) {
        List<String> known = stack.pieces().stream().map(Piece::name).toList();
        Optional<Piece> piece = stack.pieces().stream()
                .filter(one -> one.name().equals(rule.piece()))
                .findFirst();
        if (piece.isEmpty()) {
            refuse(
                    "unknown-name",
                    rule.mark(),
                    "No piece called '" + rule.piece() + "'.",
                    Suggestion.cure(rule.piece(), known));
            return false;
        }
        Optional<Edges.Straight> edge = Edges.straight(piece.get().shape(), rule.edge());
        if (edge.isEmpty()) {
            refuse(
                    "unknown-name",
                    rule.mark(),
                    "'" + rule.piece() + "' has no one straight, level or upright edge called '" + rule.edge() + "'.",
                    Suggestion.cure(rule.edge(), Edges.names(piece.get().shape())));
        } else if (edge.get().axis() != axis) {
            refuse(
                    "not-a-place",
                    rule.mark(),
                    "'" + rule.piece() + "." + rule.edge() + "' is "
                            + axis.other().measure() + ", not " + axis.measure() + ".",
                    "Name a " + axis.low() + " or a " + axis.high() + ".");
        }
        return edge.filter(straight -> straight.axis() == axis).isPresent();
    }

    private Optional<Double> angle(Fields fields) {
        if (!fields.has("angle")) {
            return Optional.of(0.0);
        }
        Optional<Double> angle = fields.angle("angle").map(Angle::toDegrees);
        if (angle.filter(degrees -> Math.abs(degrees) > FLATTEST).isPresent()) {
            refuse(
                    "not-an-angle",
                    fields.mark("angle"),
                    "A nail cannot go in " + Wording.angle(angle.get()) + " off square.",
                    "Measure from square to the face, at most " + Wording.angle(FLATTEST) + ".");
            return Optional.empty();
        }
        return angle;
    }

    private Optional<Double> spacing(Fields fields) {
        if (!fields.has("spacing")) {
            return Optional.of(USUAL_SPACING);
        }
        Optional<Double> spacing = fields.length("spacing").map(Length::toInches);
        if (spacing.filter(inches -> inches <= 0 || inches > WIDEST_SPACING).isPresent()) {
            refuse(
                    "not-a-size",
                    fields.mark("spacing"),
                    "A spacing of " + Wording.near(spacing.get()) + " along the run fastens nothing.",
                    "Write it as 16.");
            return Optional.empty();
        }
        return spacing;
    }

    private Optional<Integer> per(Fields fields) {
        Optional<Scalar> text = fields.scalar("per");
        Optional<Integer> count = text.isEmpty()
                ? Optional.of(1)
                : text.filter(scalar -> scalar.text().matches("[1-9]\\d?"))
                        .map(scalar -> Integer.parseInt(scalar.text()))
                        .filter(number -> number <= MOST_AT_A_PLACE);
        if (count.isEmpty()) {
            refuse(
                    "not-a-number",
                    fields.mark("per"),
                    "'" + text.orElseThrow().text() + "' is not how many nails go in at a place.",
                    "Write 1 to " + MOST_AT_A_PLACE + ".");
        }
        return count;
    }

    private void refuse(String code, Mark mark, String message, String cure) {
        notices.add(Notice.refusal(code, message).at(mark).cure(cure));
    }
}
