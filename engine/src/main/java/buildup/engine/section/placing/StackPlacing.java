package buildup.engine.section.placing;

import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Rule;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Resolves the rules of a stack. Each axis of each piece is found on its own, so that a piece may hang by its top on one
 * neighbor and by its back on another, in any order of writing; only a true circle is refused.
 */
public final class StackPlacing {
    /** One axis of one piece. What a record does of itself as a key, the JVM makes anew in each run, in milliseconds. */
    private record Node(int piece, Axis axis) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Node node && node.piece == piece && node.axis == axis;
        }

        @Override
        public int hashCode() {
            return number();
        }

        int number() {
            return 2 * piece + (axis == Axis.OUT ? 0 : 1);
        }
    }

    /** Least and greatest coordinate on an axis. */
    private record Span(double low, double high) {
        Span shifted(double by) {
            return new Span(low + by, high + by);
        }
    }

    private final Stack stack;
    private final Seats seats;
    private final PlacingFaults faults;
    private final Map<String, Integer> byName = new HashMap<>();
    /** What was found of each axis of each piece, by the number of its node; empty while it is not settled. */
    private final List<Optional<Optional<Span>>> found;

    private StackPlacing(Stack stack, Notices notices, Seats seats) {
        this.stack = stack;
        this.seats = seats;
        this.faults = new PlacingFaults(stack.pieces(), notices);
        this.found = new ArrayList<>(Collections.nCopies(2 * stack.pieces().size(), Optional.empty()));
        for (int i = 0; i < stack.pieces().size(); i++) {
            byName.put(stack.pieces().get(i).name(), i);
        }
    }

    /** The pieces in the order of the stack; a piece that has no place is refused and left out. */
    public static List<Placed> place(Stack stack, Notices notices) {
        return place(stack, notices, new Seats());
    }

    /** The same, with pieces that sat in their places before. */
    public static List<Placed> place(Stack stack, Notices notices, Seats seats) {
        StackPlacing placing = new StackPlacing(stack, notices, seats);
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < stack.pieces().size(); i++) {
            Piece piece = stack.pieces().get(i);
            placing.settle(new Node(i, Axis.OUT));
            placing.settle(new Node(i, Axis.UP));
            placing.seated(piece, i).ifPresent(placed::add);
        }
        return List.copyOf(placed);
    }

    private Optional<Placed> seated(Piece piece, int number) {
        Optional<Span> out = span(new Node(number, Axis.OUT));
        Optional<Span> up = span(new Node(number, Axis.UP));
        return out.flatMap(x -> up.map(y ->
                seats.of(piece, new Box(x.low, y.low, x.high, y.high), () -> new Placed(piece, moved(piece, x, y)))));
    }

    private Optional<Outline> outline(int piece) {
        Optional<Span> out = span(new Node(piece, Axis.OUT));
        Optional<Span> up = span(new Node(piece, Axis.UP));
        return out.flatMap(x -> up.map(y -> moved(stack.pieces().get(piece), x, y)));
    }

    private static Outline moved(Piece piece, Span x, Span y) {
        if (piece.rips()) {
            return Outline.rectangle(new Box(x.low, y.low, x.high, y.high));
        }
        Box box = piece.shape().box();
        return piece.shape().moved(Motion.shift(x.low - box.back(), y.low - box.bottom()));
    }

    /** What was found for a node; it must be settled, or part of a circle. */
    private Optional<Span> span(Node node) {
        return found.get(node.number()).orElse(Optional.empty());
    }

    /** A node under way, and what it still waits for. */
    private record Waiting(Node node, Iterator<Node> needs) {}

    /** Finds all that a node leans on, then the node itself; in a loop, for chains of rules may be long. */
    private void settle(Node start) {
        if (isSettled(start)) {
            return;
        }
        List<Node> needs = needs(start);
        if (allSettled(needs)) {
            settled(start, resolve(start));
            return;
        }
        Deque<Waiting> path = new ArrayDeque<>();
        path.push(new Waiting(start, needs.iterator()));
        while (!path.isEmpty()) {
            Waiting last = path.element();
            if (isSettled(last.node)) {
                path.pop();
            } else if (last.needs.hasNext()) {
                Node next = last.needs.next();
                if (path.stream().anyMatch(on -> on.node.equals(next))) {
                    circle(path, next);
                } else if (!isSettled(next)) {
                    path.push(new Waiting(next, needs(next).iterator()));
                }
            } else {
                settled(last.node, resolve(last.node));
            }
        }
    }

    private boolean isSettled(Node node) {
        return found.get(node.number()).isPresent();
    }

    private boolean allSettled(List<Node> nodes) {
        for (Node node : nodes) {
            if (!isSettled(node)) {
                return false;
            }
        }
        return true;
    }

    private void settled(Node node, Optional<Span> span) {
        found.set(node.number(), Optional.of(span));
    }

    /** Says a circle and settles all in it as placeless. */
    private void circle(Deque<Waiting> path, Node node) {
        List<Piece> ring = new ArrayList<>();
        for (Waiting on : path) {
            ring.add(0, stack.pieces().get(on.node.piece));
            settled(on.node, Optional.empty());
            if (on.node.equals(node)) {
                break;
            }
        }
        faults.circle(ring, mark(ring.get(0), node.axis));
    }

    /** The nodes that the rules of a node lean on. */
    private List<Node> needs(Node node) {
        Piece piece = stack.pieces().get(node.piece);
        List<Rule> rules = new ArrayList<>(2);
        piece.rules().low(node.axis).ifPresent(rules::add);
        piece.rules().high(node.axis).ifPresent(rules::add);
        memberRules(piece, node.axis).forEach(member -> rules.add(member.rule));
        List<Node> needs = new ArrayList<>(2);
        for (Rule rule : rules) {
            if (rule instanceof Rule.ByEdge byEdge) {
                target(byEdge)
                        .filter(index -> Edges.straight(
                                        stack.pieces().get(index).shape(), byEdge.edge())
                                .filter(edge -> edge.axis() == node.axis)
                                .isPresent())
                        .ifPresent(index -> needs.add(new Node(index, node.axis)));
            } else if (rule instanceof Rule.Touch && !piece.rules().touchTwice()) {
                needs.add(new Node(node.piece, node.axis.other()));
                for (int other : before(node.piece)) {
                    needs.add(new Node(other, Axis.OUT));
                    needs.add(new Node(other, Axis.UP));
                }
            }
        }
        return needs;
    }

    private Optional<Integer> target(Rule.ByEdge rule) {
        return Optional.ofNullable(byName.get(rule.piece()));
    }

    private static Mark mark(Piece piece, Axis axis) {
        return piece.rules()
                .low(axis)
                .or(() -> piece.rules().high(axis))
                .map(Rule::mark)
                .orElse(piece.mark());
    }

    private Optional<Span> resolve(Node node) {
        Piece piece = stack.pieces().get(node.piece);
        Axis axis = node.axis;
        Optional<Rule> low = piece.rules().low(axis);
        Optional<Rule> high = piece.rules().high(axis);
        List<MemberRule> byMember = memberRules(piece, axis);
        int rules = (low.isPresent() ? 1 : 0) + (high.isPresent() ? 1 : 0) + byMember.size();
        Span own =
                new Span(axis.low(piece.shape().box()), axis.high(piece.shape().box()));
        if (rules == 0) {
            // a member that is not there, which has been said, may have been meant for this axis
            if (piece.rules().members().stream()
                    .allMatch(member -> Edges.straight(piece.shape(), member).isPresent())) {
                faults.missing(piece, axis);
            }
            return Optional.empty();
        }
        if (rules == 2 && low.isPresent() && high.isPresent()) {
            return ripped(piece, axis, low.get(), high.get(), own);
        }
        if (rules > 1) {
            faults.doubled(
                    piece,
                    axis,
                    byMember.isEmpty()
                            ? mark(piece, axis)
                            : byMember.get(0).rule.mark());
            return Optional.empty();
        }
        if (!byMember.isEmpty()) {
            MemberRule rule = byMember.get(0);
            return at(rule.rule, piece, axis).map(at -> own.shifted(at - rule.coordinate));
        }
        if (low.or(() -> high).get() instanceof Rule.Touch touch) {
            return touching(node, piece, low.isPresent(), own, touch);
        }
        return low.isPresent()
                ? at(low.get(), piece, axis).map(at -> own.shifted(at - own.low))
                : at(high.get(), piece, axis).map(at -> own.shifted(at - own.high));
    }

    /** A rule on a straight member, with the member's coordinate in the piece's own frame. */
    private record MemberRule(Rule rule, double coordinate) {}

    private List<MemberRule> memberRules(Piece piece, Axis axis) {
        if (piece.rules().byMember().isEmpty()) {
            return List.of();
        }
        List<MemberRule> rules = new ArrayList<>();
        piece.rules().byMember().forEach((member, rule) -> {
            Optional<Edges.Straight> straight = Edges.straight(piece.shape(), member);
            if (straight.isEmpty()) {
                // found on either axis; the same notice is kept once
                faults.unknownEdge(piece, member, rule.mark(), piece);
            } else if (straight.get().axis() == axis) {
                rules.add(new MemberRule(rule, straight.get().coordinate()));
            }
        });
        return rules;
    }

    private Optional<Span> ripped(Piece piece, Axis axis, Rule low, Rule high, Span own) {
        if (low instanceof Rule.Touch || high instanceof Rule.Touch || !piece.rips()) {
            faults.doubled(piece, axis, high.mark());
            return Optional.empty();
        }
        Optional<Double> from = at(low, piece, axis);
        Optional<Double> to = at(high, piece, axis);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        double size = to.get() - from.get();
        if (size <= Tolerance.TOUCHING) {
            faults.nothingLeft(piece, axis, size, high.mark());
            return Optional.empty();
        }
        double stock = own.high - own.low;
        if (piece.stock().board() && size > stock + Tolerance.TOUCHING) {
            faults.tooSmall(piece, axis, size, stock, high.mark());
        }
        return Optional.of(new Span(from.get(), to.get()));
    }

    /** The coordinate that a rule other than touch names. */
    private Optional<Double> at(Rule rule, Piece piece, Axis axis) {
        if (rule instanceof Rule.Level level) {
            if (level.axis().isPresent() && level.axis().get() != axis) {
                faults.roomOnTheWrongAxis(rule, piece, axis);
                return Optional.empty();
            }
            return Optional.of(level.at());
        }
        if (rule instanceof Rule.ByEdge byEdge) {
            return edge(byEdge, piece, axis);
        }
        if (rule instanceof Rule.Unread) {
            return Optional.empty();
        }
        faults.touchElsewhere(piece, rule.mark());
        return Optional.empty();
    }

    private Optional<Double> edge(Rule.ByEdge rule, Piece asking, Axis axis) {
        Optional<Integer> index = target(rule);
        if (index.isEmpty()) {
            faults.unknownPiece(rule, asking);
            return Optional.empty();
        }
        Piece target = stack.pieces().get(index.get());
        Optional<Edges.Straight> straight = Edges.straight(target.shape(), rule.edge());
        if (straight.isEmpty()) {
            faults.unknownEdge(target, rule.edge(), rule.mark(), asking);
            return Optional.empty();
        }
        if (straight.get().axis() != axis) {
            faults.edgeOnTheWrongAxis(rule, asking, axis);
            return Optional.empty();
        }
        faults.largeReveal(rule, asking, target, axis);
        Span own = new Span(
                axis.low(target.shape().box()), axis.high(target.shape().box()));
        double coordinate = straight.get().coordinate();
        return span(new Node(index.get(), axis)).map(span -> {
            // a ripped board's far edge has moved: measure from the nearer of its own two edges
            boolean atHigh = Tolerance.same(coordinate, own.high);
            return (atHigh ? span.high : span.low + coordinate - own.low) + rule.offset();
        });
    }

    private Optional<Span> touching(Node node, Piece piece, boolean low, Span own, Rule.Touch touch) {
        Axis axis = node.axis;
        if (axis == Axis.OUT && !low) {
            faults.touchingFace(piece, touch.mark());
            return Optional.empty();
        }
        if (piece.rules().touchTwice()) {
            faults.twoTouches(piece, touch.mark());
            return Optional.empty();
        }
        Optional<Span> across = span(new Node(node.piece, axis.other()));
        Optional<List<Outline>> inTheWay = across.flatMap(known -> inTheWay(node.piece));
        if (inTheWay.isEmpty()) {
            return Optional.empty();
        }
        Outline shape = axis == Axis.UP ? moved(piece, across.get(), own) : moved(piece, own, across.get());
        Optional<Double> shift = Touching.shift(shape, axis, low, stack.space(), inTheWay.get());
        if (shift.isEmpty()) {
            faults.meetsNothing(piece, low ? axis.low() : axis.high(), touch.mark());
        }
        return shift.map(own::shifted);
    }

    /** Numbers of the earlier pieces and of all framing. */
    private List<Integer> before(int piece) {
        return IntStream.range(0, stack.pieces().size())
                .filter(i -> i < piece || (i > piece && stack.pieces().get(i).kind() == PieceKind.FRAMING))
                .boxed()
                .toList();
    }

    /** Earlier pieces and all framing; nothing when one of them has no place, for it might have been met. */
    private Optional<List<Outline>> inTheWay(int piece) {
        List<Integer> before = before(piece);
        List<Outline> outlines =
                before.stream().flatMap(i -> outline(i).stream()).toList();
        return outlines.size() == before.size() ? Optional.of(outlines) : Optional.empty();
    }
}
