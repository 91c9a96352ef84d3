package buildup.engine.room.stock;

import buildup.catalog.Catalog;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.document.Scalar;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads {@code stock:}. */
final class ShopReader {
    private static final double USUAL_KERF = 0.125;
    private static final double WIDEST_KERF = 1;
    private static final double MOST_TRIM = 24;

    /** Shorter rests are firewood in most shops: common practice, no source. */
    private static final double USUAL_OFFCUT = 12;

    private static final double LONGEST_OFFCUT = 1200;
    private static final Pattern MONEY = Pattern.compile("(\\d{1,7})(?:\\.(\\d{1,4}))?");

    private final Stack stack;
    private final Fields fields;
    private final Notices notices;
    private final TapeStep grid;
    private final SupplyReader supplies;

    ShopReader(Stack stack, Catalog catalog, Fields fields, Notices notices) {
        this.stack = stack;
        this.fields = fields;
        this.notices = notices;
        this.grid = TapeStep.of(stack.lengths().bareUnit());
        this.supplies = new SupplyReader(stack, catalog, this, notices);
    }

    TapeStep grid() {
        return grid;
    }

    Shop read() {
        int kerf = size("kerf", USUAL_KERF, WIDEST_KERF, StickNotices.NEGATIVE_KERF.notice());
        int ripKerf = fields.has("rip-kerf")
                ? size("rip-kerf", USUAL_KERF, WIDEST_KERF, StickNotices.NEGATIVE_KERF.notice())
                : kerf;
        int trim = size("trim", 0, MOST_TRIM, StickNotices.NEGATIVE_TRIM.with("example", Figure.atLeast(0.5)));
        int offcut = size(
                "offcut",
                USUAL_OFFCUT,
                LONGEST_OFFCUT,
                StickNotices.NEGATIVE_OFFCUT.with("example", Figure.atLeast(2 * USUAL_OFFCUT)));
        int hold = size("hold", Shop.USUAL_HOLD, LONGEST_OFFCUT, StickNotices.NEGATIVE_HOLD.notice());
        int holdForReturn = fields.has("hold") ? hold : grid.needed(Shop.HOLD_FOR_RETURN);
        Optional<Shop.Aim> aim = word("aim", Shop.Aim.values());
        Map<EndJoint, Long> joints = fields.fields("joints").map(this::joints).orElse(Map.of());
        List<Supply> read = supplies.read(fields, trim);
        return new Shop(grid, kerf, ripKerf, trim, offcut, hold, holdForReturn, aim, read, joints);
    }

    private int size(String key, double usual, double most, Notice negative) {
        Optional<Double> size = fields.length(key).map(Length::toInches);
        if (size.filter(inches -> inches < 0).isPresent()) {
            say(negative.with("key", key).with("size", Figure.length(size.get())), fields.mark(key));
        } else if (size.filter(inches -> inches > most).isPresent()) {
            say(
                    StickNotices.TOO_LARGE
                            .with("key", key)
                            .with("size", Figure.length(size.get()))
                            .with("most", Figure.length(most)),
                    fields.mark(key));
        } else {
            return grid.needed(size.orElse(usual));
        }
        return grid.needed(usual);
    }

    private <T extends Enum<T>> Optional<T> word(String key, T[] values) {
        Optional<Scalar> said = fields.scalar(key).filter(text -> !text.text().isBlank());
        List<String> known = Stream.of(values)
                .map(value -> value.name().toLowerCase(Locale.ROOT))
                .toList();
        if (said.filter(text -> !known.contains(text.text())).isPresent()) {
            say(
                    StickNotices.UNKNOWN_WORD
                            .with("word", said.get().text())
                            .with("key", key)
                            .cure(Phrase.plain(Suggestion.cure(said.get().text(), known))),
                    said.get().mark());
        }
        return said.filter(text -> known.contains(text.text())).map(text -> values[known.indexOf(text.text())]);
    }

    private Map<EndJoint, Long> joints(Fields rates) {
        Map<EndJoint, Long> joints = new EnumMap<>(EndJoint.class);
        for (EndJoint joint : EndJoint.values()) {
            money(rates, joint.word())
                    .ifPresent(price -> joints.put(joint, Math.round((double) price / Supply.RATE_PER_HUNDREDTH)));
        }
        return joints;
    }

    /** A price in ten-thousandths. */
    OptionalLong money(Fields from, String key) {
        Optional<Scalar> text = from.scalar(key).filter(scalar -> !scalar.text().isBlank());
        if (text.isEmpty()) {
            return OptionalLong.empty();
        }
        Matcher money = MONEY.matcher(text.get().text().strip());
        if (!money.matches()) {
            say(
                    StickNotices.NO_PLAIN_NUMBER.with("word", text.get().text()),
                    text.get().mark());
            return OptionalLong.empty();
        }
        String part = money.group(2) == null ? "" : money.group(2);
        return OptionalLong.of(Long.parseLong(money.group(1) + part + "0".repeat(4 - part.length())));
    }

    /** The wood of an entry: its own, else the one wood that all pieces are of. */
    Optional<Scalar> wood(Fields entry, Consumer<Mark> missing) {
        Optional<Scalar> own = entry.scalar("wood").filter(text -> !text.text().isBlank());
        List<String> woods = stack.pieces().stream()
                .filter(piece -> piece.kind() != PieceKind.FRAMING)
                .map(Piece::wood)
                .map(wood -> wood.name())
                .distinct()
                .toList();
        if (own.isEmpty() && woods.size() != 1) {
            missing.accept(entry.mark());
        }
        return own.or(() -> woods.size() == 1 ? Optional.of(new Scalar(woods.get(0), entry.mark())) : Optional.empty());
    }

    void say(Notice notice, Mark mark) {
        notices.add(notice.at(mark));
    }
}
