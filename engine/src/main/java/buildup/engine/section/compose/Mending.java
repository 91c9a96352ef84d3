package buildup.engine.section.compose;

import buildup.engine.section.placing.Edges;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Rule;
import buildup.engine.section.stack.Rules;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.Stock;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.notice.Change;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A stack with some of its pieces moved, ripped or made smaller, and the changes of the document that do it: so a cure is
 * tried before it is told. What is placed on a piece that moves goes with it, as in the document.
 */
public final class Mending {
    private static final Phrase MORE = Phrase.of("{was} + {by}");
    private static final Phrase AT = Phrase.of("{to}");
    private static final Phrase LESS = Phrase.of("{was} - {by}");

    private final Stack stack;
    private final List<Change> changes;

    private Mending(Stack stack, List<Change> changes) {
        this.stack = stack;
        this.changes = List.copyOf(changes);
    }

    /** The stack as it is. */
    public static Mending of(Stack stack) {
        return new Mending(stack, List.of());
    }

    /** What of the document changes, so far. */
    public List<Change> changes() {
        return changes;
    }

    /**
     * The piece moved along an axis, inches, positive out or up; nothing when it goes where it touches.
     *
     * @param told how far, as it is told; never negative
     */
    public Optional<Mending> moved(String piece, Axis axis, double by, Figure told) {
        return find(piece).flatMap(found -> shifted(found, rules(found, axis), by, told));
    }

    /**
     * One edge of a piece put at a coordinate, inches, in place of the rule that places it now; nothing when no rule does.
     *
     * @param told the same as it is told
     */
    public Optional<Mending> placed(String piece, Axis axis, boolean high, double at, Figure told) {
        String key = high ? axis.high() : axis.low();
        return find(piece)
                .flatMap(found -> found.rules().at(key).map(rule -> {
                    Rule level = new Rule.Level(at, Optional.empty(), rule.mark());
                    Change change = new Change(found.place(key), AT.with("to", told));
                    return with(found, found.placedBy(found.rules().with(key, level)), List.of(change));
                }));
    }

    /** One edge of a piece that is ripped to fit on that axis moved inward, inches; nothing when it is not so ripped. */
    public Optional<Mending> ripped(String piece, Axis axis, boolean high, double off, Figure told) {
        return find(piece)
                .filter(found -> found.rips() && isBetween(found, axis))
                .flatMap(found -> shifted(found, List.of(high ? axis.high() : axis.low()), high ? -off : off, told));
    }

    /** A board in another width, inches; nothing for what is no board or is ripped already. */
    public Optional<Mending> wide(String piece, double width, Figure told) {
        return find(piece)
                .filter(found -> found.stock().board() && found.rips() && !isBetween(found, acrossGrain(found)))
                .filter(found -> Tolerance.same(size(found), found.stock().width()))
                .map(found -> with(
                        found,
                        found.from(wide(found.stock(), width), wide(found, width)),
                        List.of(new Change(found.place("profile"), found.stock().soWide(told)))));
    }

    /** Whether a piece is placed by two rules on an axis. */
    static boolean isBetween(Piece piece, Axis axis) {
        return piece.rules().low(axis).isPresent() && piece.rules().high(axis).isPresent();
    }

    private static Axis acrossGrain(Piece board) {
        return board.stock().lying() ? Axis.OUT : Axis.UP;
    }

    private static double size(Piece board) {
        Box box = board.shape().box();
        return board.stock().lying() ? box.width() : box.height();
    }

    private static Outline wide(Piece board, double width) {
        Box box = board.shape().box();
        return Outline.rectangle(
                board.stock().lying() ? new Box(0, 0, width, box.height()) : new Box(0, 0, box.width(), width));
    }

    private static Stock wide(Stock stock, double width) {
        return new Stock(
                stock.name(),
                stock.profileKind(),
                stock.thickness(),
                width,
                stock.rips(),
                stock.board(),
                stock.lying());
    }

    private Optional<Piece> find(String name) {
        return stack.pieces().stream()
                .filter(piece -> piece.name().equals(name))
                .findFirst();
    }

    /** The keys of the rules that place a piece on an axis. */
    private static List<String> rules(Piece piece, Axis axis) {
        List<String> keys = new ArrayList<>();
        piece.rules().low(axis).ifPresent(rule -> keys.add(axis.low()));
        piece.rules().high(axis).ifPresent(rule -> keys.add(axis.high()));
        piece.rules().members().stream()
                .filter(member -> Edges.straight(piece.shape(), member)
                        .filter(edge -> edge.axis() == axis)
                        .isPresent())
                .forEach(member -> keys.add(Rules.key(member)));
        return keys;
    }

    private Optional<Mending> shifted(Piece piece, List<String> keys, double by, Figure told) {
        Rules rules = piece.rules();
        List<Change> own = new ArrayList<>();
        Phrase words = by < 0 ? LESS : MORE;
        for (String key : keys) {
            Optional<Rule> moved = rules.at(key).flatMap(rule -> moved(rule, by));
            Optional<Value> was = written(piece, key);
            if (moved.isEmpty() || was.isEmpty()) {
                return Optional.empty();
            }
            own.add(new Change(piece.place(key), words.with("was", was.get()).with("by", told)));
            rules = rules.with(key, moved.get());
        }
        if (own.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(with(piece, piece.placedBy(rules), own));
    }

    /** What stands at a place now. */
    private Optional<Value> written(Piece piece, String key) {
        return changes.stream()
                .filter(change -> change.place().equals(piece.place(key)))
                .<Value>map(Change::value)
                .findFirst()
                .or(() -> Optional.ofNullable(piece.rules().written().get(key)).map(Text::new));
    }

    private static Optional<Rule> moved(Rule rule, double by) {
        if (rule instanceof Rule.Level level) {
            return Optional.of(new Rule.Level(level.at() + by, level.axis(), level.ceiling(), level.mark()));
        }
        return rule instanceof Rule.ByEdge edge
                ? Optional.of(new Rule.ByEdge(edge.piece(), edge.edge(), edge.offset() + by, edge.mark()))
                : Optional.empty();
    }

    private Mending with(Piece before, Piece after, List<Change> more) {
        Map<String, Change> all = new LinkedHashMap<>();
        changes.forEach(change -> all.put(change.place(), change));
        more.forEach(change -> all.put(change.place(), change));
        List<Piece> pieces = stack.pieces().stream()
                .map(piece -> piece.equals(before) ? after : piece)
                .toList();
        return new Mending(stack.with(pieces), List.copyOf(all.values()));
    }

    /**
     * Everything of the stack moved along an axis, inches: what is placed on the room or on what stands there already goes,
     * and the rest goes with it. Nothing when all of it goes where it touches.
     */
    public Optional<Mending> wholeMoved(Axis axis, double by, Figure told) {
        Optional<Mending> all = Optional.empty();
        for (Piece piece : stack.pieces()) {
            if (piece.kind() == PieceKind.FRAMING) {
                continue;
            }
            List<String> keys = rules(piece, axis).stream()
                    .filter(key -> piece.rules().at(key).filter(this::isOutside).isPresent())
                    .toList();
            Mending before = all.orElse(this);
            all = before.shifted(piece, keys, by, told)
                    .or(() -> before == this ? Optional.empty() : Optional.of(before));
        }
        return all;
    }

    /** Whether a rule measures from something that is not of the stack. */
    private boolean isOutside(Rule rule) {
        if (rule instanceof Rule.ByEdge edge) {
            return find(edge.piece())
                    .filter(piece -> piece.kind() == PieceKind.FRAMING)
                    .isPresent();
        }
        return rule instanceof Rule.Level;
    }

    /** The pieces where they then sit; nothing when one of them has no place any more. */
    Optional<List<Placed>> placed() {
        List<Placed> placed = StackPlacing.place(stack, new Notices());
        return placed.size() == stack.pieces().size() ? Optional.of(placed) : Optional.empty();
    }

    /** The section that it then makes; nothing when a piece has no place any more. */
    public Optional<Section> section() {
        return placed().map(placed -> Composer.unjudged(stack, placed));
    }

    /** The stack as changed. */
    Stack stack() {
        return stack;
    }
}
