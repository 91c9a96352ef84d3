package buildup.engine.placing;

import buildup.engine.stack.Axis;
import buildup.engine.stack.Kind;
import buildup.engine.stack.Piece;
import buildup.engine.stack.Rule;
import buildup.engine.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import buildup.shared.notice.Suggestion;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Resolves the rules of a stack. Each axis of each piece is found on its own, so that a piece may hang by its top on one
 * neighbour and by its back on another, in any order of writing; only a true circle is refused.
 */
public final class Placing {
    /** One axis of one piece. */
    private record Node(int piece, Axis axis) {}

    /** Least and greatest coordinate on an axis. */
    private record Span(double low, double high) {
        Span shifted(double by) {
            return new Span(low + by, high + by);
        }
    }

    private final Stack stack;
    private final Notices notices;
    private final Map<String, Integer> byName = new HashMap<>();
    private final Map<Node, Optional<Span>> found = new HashMap<>();
    private final Deque<Node> underWay = new ArrayDeque<>();

    private Placing(Stack stack, Notices notices) {
        this.stack = stack;
        this.notices = notices;
        for (int i = 0; i < stack.pieces().size(); i++) {
            byName.put(stack.pieces().get(i).name(), i);
        }
    }

    /** The pieces in the order of the stack; a piece that has no place is refused and left out. */
    public static List<Placed> place(Stack stack, Notices notices) {
        Placing placing = new Placing(stack, notices);
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < stack.pieces().size(); i++) {
            Piece piece = stack.pieces().get(i);
            placing.outline(i).ifPresent(outline -> placed.add(new Placed(piece, outline)));
        }
        return List.copyOf(placed);
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

    private Optional<Span> span(Node node) {
        Optional<Span> known = found.get(node);
        if (known != null) {
            return known;
        }
        if (underWay.contains(node)) {
            circle(node);
            return Optional.empty();
        }
        underWay.push(node);
        Optional<Span> span = resolve(node);
        underWay.pop();
        // a circle met below may already have settled this node as placeless
        found.putIfAbsent(node, span);
        return found.get(node);
    }

    /** Says a circle once and settles all in it as placeless. */
    private void circle(Node node) {
        List<String> names = new ArrayList<>();
        for (Node on : underWay) {
            names.add(0, stack.pieces().get(on.piece).name());
            found.put(on, Optional.empty());
            if (on.equals(node)) {
                break;
            }
        }
        names.add(names.get(0));
        List<String> steps = new ArrayList<>();
        for (int i = 0; i + 1 < names.size(); i++) {
            if (!names.get(i).equals(names.get(i + 1))) {
                steps.add(names.get(i) + " is placed on " + names.get(i + 1));
            }
        }
        Piece first = stack.pieces().get(node.piece);
        String message = steps.isEmpty() ? first.name() + " is placed on itself" : String.join(", ", steps);
        refuse(
                "circular-or-missing-placing",
                message + ".",
                mark(first, node.axis),
                first.name(),
                "Place one of them on the wall, the floor or the datum.");
    }

    private static Mark mark(Piece piece, Axis axis) {
        return rule(piece, axis, true)
                .or(() -> rule(piece, axis, false))
                .map(Rule::mark)
                .orElse(piece.mark());
    }

    private static Optional<Rule> rule(Piece piece, Axis axis, boolean low) {
        return axis == Axis.OUT
                ? low ? piece.rules().back() : piece.rules().face()
                : low ? piece.rules().bottom() : piece.rules().top();
    }

    private Optional<Span> resolve(Node node) {
        Piece piece = stack.pieces().get(node.piece);
        Axis axis = node.axis;
        Optional<Rule> low = rule(piece, axis, true);
        Optional<Rule> high = rule(piece, axis, false);
        List<MemberRule> byMember = memberRules(piece, axis);
        int rules = (low.isPresent() ? 1 : 0) + (high.isPresent() ? 1 : 0) + byMember.size();
        Span own = new Span(axis.low(piece.shape().box()), axis.high(piece.shape().box()));
        if (rules == 0) {
            refuse(
                    "circular-or-missing-placing",
                    "'" + piece.name() + "' has no place: nothing says " + axis.measure() + ".",
                    piece.mark(),
                    piece.name(),
                    "Give '" + axis.low() + ":' or '" + axis.high() + ":'.");
            return Optional.empty();
        }
        if (rules == 2 && low.isPresent() && high.isPresent()) {
            return ripped(piece, axis, low.get(), high.get(), own);
        }
        if (rules > 1) {
            doubled(piece, axis, byMember.isEmpty() ? mark(piece, axis) : byMember.get(0).rule.mark());
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
        List<MemberRule> rules = new ArrayList<>();
        piece.rules().byMember().forEach((member, rule) -> {
            Optional<Edges.Straight> straight = Edges.straight(piece.shape(), member);
            if (straight.isEmpty()) {
                if (axis == Axis.OUT) {
                    unknownEdge(piece, member, rule.mark(), piece.name());
                }
            } else if (straight.get().axis() == axis) {
                rules.add(new MemberRule(rule, straight.get().coordinate()));
            }
        });
        return rules;
    }

    private Optional<Span> ripped(Piece piece, Axis axis, Rule low, Rule high, Span own) {
        if (low instanceof Rule.Touch || high instanceof Rule.Touch || !piece.rips()) {
            doubled(piece, axis, high.mark());
            return Optional.empty();
        }
        Optional<Double> from = at(low, piece, axis);
        Optional<Double> to = at(high, piece, axis);
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        double size = to.get() - from.get();
        if (size <= Tolerance.TOUCHING) {
            refuse(
                    "thickness-zero-or-negative",
                    "'" + piece.name() + "' is left " + print(size) + " between its " + axis.low() + " and its "
                            + axis.high() + ".",
                    high.mark(),
                    piece.name(),
                    "Move one of the two, or take it out.");
            return Optional.empty();
        }
        double stock = own.high - own.low;
        if (piece.stock().board() && size > stock + Tolerance.TOUCHING) {
            notices.add(Notice.problem(
                            "board-too-small",
                            "'" + piece.name() + "' needs " + print(size) + ", but " + piece.stock().name() + " gives "
                                    + print(stock) + ".")
                    .at(high.mark())
                    .of(piece.name())
                    .amount(Length.inches(size - stock))
                    .cure("Take a larger board, or glue one up."));
        }
        return Optional.of(new Span(from.get(), to.get()));
    }

    private void doubled(Piece piece, Axis axis, Mark mark) {
        refuse(
                "doubled-rule",
                "'" + piece.name() + "' has two rules for " + axis.measure()
                        + "; only a board or plain blocking is ripped to fit.",
                mark,
                piece.name(),
                "Keep '" + axis.low() + ":' or '" + axis.high() + ":'.");
    }

    /** The coordinate that a rule other than touch names. */
    private Optional<Double> at(Rule rule, Piece piece, Axis axis) {
        if (rule instanceof Rule.Level level) {
            if (level.axis().isPresent() && level.axis().get() != axis) {
                wrongAxis("A place of the room", rule, piece, axis);
                return Optional.empty();
            }
            return Optional.of(level.at());
        }
        if (rule instanceof Rule.ByEdge byEdge) {
            return edge(byEdge, piece, axis);
        }
        refuse(
                "not-a-place",
                "'" + piece.name() + "' touches by back, bottom or top alone.",
                rule.mark(),
                piece.name(),
                "Give a place here, as 'frieze.top'.");
        return Optional.empty();
    }

    private Optional<Double> edge(Rule.ByEdge rule, Piece asking, Axis axis) {
        Integer index = byName.get(rule.piece());
        if (index == null) {
            unknownPiece(rule, asking);
            return Optional.empty();
        }
        Piece target = stack.pieces().get(index);
        Optional<Edges.Straight> straight = Edges.straight(target.shape(), rule.edge());
        if (straight.isEmpty()) {
            unknownEdge(target, rule.edge(), rule.mark(), asking.name());
            return Optional.empty();
        }
        if (straight.get().axis() != axis) {
            wrongAxis("'" + rule.piece() + "." + rule.edge() + "'", rule, asking, axis);
            return Optional.empty();
        }
        largeReveal(rule, asking, target, axis);
        Span own = new Span(
                axis.low(target.shape().box()), axis.high(target.shape().box()));
        double coordinate = straight.get().coordinate();
        return span(new Node(index, axis)).map(span -> {
            // a ripped board's far edge has moved: measure from the nearer of its own two edges
            boolean atHigh = Tolerance.same(coordinate, own.high);
            return (atHigh ? span.high : span.low + coordinate - own.low) + rule.offset();
        });
    }

    private void wrongAxis(String place, Rule rule, Piece asking, Axis axis) {
        refuse(
                "not-a-place",
                place + " is " + axis.other().measure() + ", not " + axis.measure() + ".",
                rule.mark(),
                asking.name(),
                "Name a " + axis.low() + " or a " + axis.high() + ".");
    }

    private void largeReveal(Rule.ByEdge rule, Piece asking, Piece target, Axis axis) {
        double size = axis.high(target.shape().box()) - axis.low(target.shape().box());
        boolean inward = rule.edge().equals(axis.high()) && rule.offset() < 0
                || rule.edge().equals(axis.low()) && rule.offset() > 0;
        if (inward && !target.rips() && Math.abs(rule.offset()) > size + Tolerance.TOUCHING) {
            notices.add(Notice.problem(
                            "reveal-larger-than-its-piece",
                            "'" + asking.name() + "' stands " + print(Math.abs(rule.offset())) + " from the "
                                    + rule.edge() + " of '" + target.name() + "', which is only " + print(size) + ".")
                    .at(rule.mark())
                    .of(asking.name())
                    .amount(Length.inches(Math.abs(rule.offset()) - size))
                    .cure("Measure from its other edge, or make it less than " + print(size) + "."));
        }
    }

    private void unknownPiece(Rule.ByEdge rule, Piece asking) {
        List<String> names = stack.pieces().stream().map(Piece::name).toList();
        String cure = Suggestion.nearest(rule.piece(), names)
                .map(near -> "Did you mean " + near + " (" + described(near) + ")? There are " + (names.size() - 1)
                        + " others.")
                .orElseGet(() -> Suggestion.cure(rule.piece(), names));
        refuse("unknown-name", "No piece called '" + rule.piece() + "'.", rule.mark(), asking.name(), cure);
    }

    private String described(String name) {
        Piece piece = stack.pieces().get(byName.get(name));
        Box box = piece.shape().box();
        return print(box.width()) + " out x " + print(box.height()) + " up";
    }

    private void unknownEdge(Piece target, String edge, Mark mark, String asking) {
        refuse(
                "unknown-name",
                "'" + target.name() + "' has no one straight, level or upright edge called '" + edge + "'.",
                mark,
                asking,
                Suggestion.cure(edge, Edges.names(target.shape())));
    }

    private Optional<Span> touching(Node node, Piece piece, boolean low, Span own, Rule.Touch touch) {
        Axis axis = node.axis;
        if (axis == Axis.OUT && !low) {
            refuse(
                    "not-a-place",
                    "A face touches nothing: pieces come in from the room.",
                    touch.mark(),
                    piece.name(),
                    "Write 'back: touch'.");
            return Optional.empty();
        }
        if (rule(piece, axis.other(), true).or(() -> rule(piece, axis.other(), false)).orElse(null)
                instanceof Rule.Touch) {
            refuse(
                    "not-a-place",
                    "'" + piece.name() + "' has two touches: it would never stop in the same place.",
                    touch.mark(),
                    piece.name(),
                    "Give one of them a place.");
            return Optional.empty();
        }
        Optional<Span> across = span(new Node(node.piece, axis.other()));
        if (across.isEmpty()) {
            return Optional.empty();
        }
        Outline shape = axis == Axis.UP ? moved(piece, across.get(), own) : moved(piece, own, across.get());
        Optional<Double> shift = Touching.shift(shape, axis, low, stack.space(), inTheWay(node.piece));
        if (shift.isEmpty()) {
            refuse(
                    "circular-or-missing-placing",
                    "'" + piece.name() + "' meets nothing on its way.",
                    touch.mark(),
                    piece.name(),
                    "Give '" + (low ? axis.low() : axis.high()) + ":' a place.");
        }
        return shift.map(own::shifted);
    }

    /** Earlier pieces and all framing. */
    private List<Outline> inTheWay(int piece) {
        List<Outline> outlines = new ArrayList<>();
        for (int i = 0; i < stack.pieces().size(); i++) {
            if (i < piece || i > piece && stack.pieces().get(i).kind() == Kind.FRAMING) {
                outline(i).ifPresent(outlines::add);
            }
        }
        return outlines;
    }

    private void refuse(String code, String message, Mark mark, String piece, String cure) {
        notices.add(Notice.refusal(code, message).at(mark).of(piece).cure(cure));
    }

    private static String print(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }
}
