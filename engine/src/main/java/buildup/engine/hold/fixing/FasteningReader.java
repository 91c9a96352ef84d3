package buildup.engine.hold.fixing;

import buildup.catalog.Catalog;
import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Spacings;
import buildup.engine.section.placing.Edges;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Rule;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code fastenings:}. What is wrong with an entry is refused, and the entry left out. */
final class FasteningReader {
    /** More rows than this are not a section. */
    private static final int MOST = 500;

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
            notices.add(FixingNotices.TOO_MANY
                    .with("rows", Figure.count(entries.size()))
                    .with("most", Figure.count(MOST))
                    .at(root.mark("fastenings")));
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
            notices.add(FixingNotices.NO_PLACE.notice().at(at.orElse(fields).mark()));
        }
        boolean placed = at.isPresent()
                && (out.isPresent() || up.isPresent())
                && out.isPresent() == at.get().has("out")
                && up.isPresent() == at.get().has("up");
        Optional<Double> angle = angle(fields);
        Optional<Double> spacing = spacing(fields, use);
        Optional<Double> first = first(fields, spacing.orElse(WIDEST_SPACING));
        Optional<Integer> per = per(fields);
        Optional<Scalar> after = named(fields, "after", false);
        boolean later = after.isEmpty() || piece.isEmpty() || isLater(after.get(), piece.get());
        Optional<String> own = fields.text("name");
        if (piece.isEmpty()
                || use.isEmpty()
                || !placed
                || angle.isEmpty()
                || spacing.isEmpty()
                || first.isEmpty()
                || per.isEmpty()
                || !later
                || (fields.has("after") && after.isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(new Fastening(
                own.orElse(NailWords.kind(use.get()) + " " + number),
                piece.get().text(),
                use.get(),
                out,
                up,
                angle.get(),
                spacing.get(),
                first.get(),
                per.get(),
                after.map(Scalar::text),
                fields.yesNo("bored").orElse(false),
                fields.mark()));
    }

    private Optional<Scalar> named(Fields fields, String key, boolean needed) {
        Optional<Scalar> name = fields.scalar(key).filter(text -> !text.text().isBlank());
        List<String> known = stack.pieces().stream().map(Piece::name).toList();
        if (name.isEmpty() && needed) {
            notices.add(FixingNotices.NO_PIECE.with("key", key).at(fields.mark()));
        }
        if (name.isPresent() && !known.contains(name.get().text())) {
            notices.add(FixingNotices.NO_SUCH_PIECE
                    .with("word", name.get().text())
                    .with("nearest", Suggestion.cure(name.get().text(), known))
                    .at(name.get().mark()));
            return Optional.empty();
        }
        return name;
    }

    private boolean isLater(Scalar after, Scalar piece) {
        List<String> order = stack.pieces().stream().map(Piece::name).toList();
        if (order.indexOf(after.text()) >= order.indexOf(piece.text())) {
            return true;
        }
        notices.add(FixingNotices.BEFORE_ITS_PIECE
                .with("after", after.text())
                .of(piece.text())
                .at(after.mark()));
        return false;
    }

    private Optional<Fastener.Cut> use(Fields fields) {
        Optional<Scalar> call = fields.scalar("use").filter(text -> !text.text().isBlank());
        if (call.isEmpty()) {
            notices.add(FixingNotices.NO_USE.notice().at(fields.mark()));
        }
        return call.flatMap(text -> catalog.fastener(text, stack.lengths(), notices));
    }

    private Optional<Rule> rule(Fields at, String key, Axis axis) {
        return stack.rule(at, key, axis, notices).filter(rule -> usable(rule, axis));
    }

    /** Whether it names a place: an unreadable one has been said, a touch is none, an edge must be there. */
    private boolean usable(Rule rule, Axis axis) {
        if (rule instanceof Rule.Touch) {
            notices.add(FixingNotices.BY_TOUCH.notice().at(rule.mark()));
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
            notices.add(FixingNotices.NO_SUCH_PLACE
                    .with("word", rule.piece())
                    .with("nearest", Suggestion.cure(rule.piece(), known))
                    .at(rule.mark()));
            return false;
        }
        Optional<Edges.Straight> edge = Edges.straight(piece.get().shape(), rule.edge());
        if (edge.isEmpty()) {
            notices.add(FixingNotices.NO_SUCH_EDGE
                    .with("other", rule.piece())
                    .with("word", rule.edge())
                    .with(
                            "nearest",
                            Suggestion.cure(rule.edge(), Edges.names(piece.get().shape())))
                    .at(rule.mark()));
        } else if (edge.get().axis() != axis) {
            notices.add(FixingNotices.OTHER_WAY
                    .with("other", rule.piece())
                    .with("edge", rule.edge())
                    .with("found", axis.other().measure())
                    .with("asked", axis.measure())
                    .with("low", axis.low())
                    .with("high", axis.high())
                    .at(rule.mark()));
        }
        return edge.filter(straight -> straight.axis() == axis).isPresent();
    }

    private Optional<Double> angle(Fields fields) {
        if (!fields.has("angle")) {
            return Optional.of(0.0);
        }
        Optional<Double> angle = fields.angle("angle").map(Angle::toDegrees);
        if (angle.filter(degrees -> Math.abs(degrees) > FLATTEST).isPresent()) {
            notices.add(FixingNotices.TOO_FLAT
                    .with("angle", NailWords.angle(angle.get()))
                    .with("most", NailWords.angle(FLATTEST))
                    .at(fields.mark("angle")));
            return Optional.empty();
        }
        return angle;
    }

    private Optional<Double> spacing(Fields fields, Optional<Fastener.Cut> use) {
        if (!fields.has("spacing")) {
            return use.map(Spacings::usual).or(() -> Optional.of(WIDEST_SPACING));
        }
        Optional<Double> spacing = fields.length("spacing").map(Length::toInches);
        if (spacing.filter(inches -> inches <= 0 || inches > WIDEST_SPACING).isPresent()) {
            notices.add(FixingNotices.NO_SPACING
                    .with("size", Figure.length(spacing.get()))
                    .at(fields.mark("spacing")));
            return Optional.empty();
        }
        return spacing;
    }

    private Optional<Double> first(Fields fields, double spacing) {
        if (!fields.has("first")) {
            return Optional.of(0.0);
        }
        Optional<Double> first = fields.length("first").map(Length::toInches);
        if (first.filter(inches -> inches < 0 || inches > spacing).isPresent()) {
            notices.add(FixingNotices.NO_FIRST
                    .with("size", Figure.length(first.get()))
                    .at(fields.mark("first")));
            return Optional.empty();
        }
        return first;
    }

    private Optional<Integer> per(Fields fields) {
        Optional<Scalar> text = fields.scalar("per");
        Optional<Integer> count = text.isEmpty()
                ? Optional.of(1)
                : text.filter(scalar -> scalar.text().matches("[1-9]\\d?"))
                        .map(scalar -> Integer.parseInt(scalar.text()))
                        .filter(number -> number <= MOST_AT_A_PLACE);
        if (count.isEmpty()) {
            notices.add(FixingNotices.NOT_HOW_MANY
                    .with("word", text.orElseThrow().text())
                    .with("most", Figure.count(MOST_AT_A_PLACE))
                    .at(fields.mark("per")));
        }
        return count;
    }
}
