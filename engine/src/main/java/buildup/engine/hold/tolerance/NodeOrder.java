package buildup.engine.hold.tolerance;

import buildup.engine.hold.tolerance.Assembly.Adjustable;
import buildup.engine.hold.tolerance.PlaceNode.How;
import buildup.engine.hold.tolerance.PlaceRule.Edge;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Edges;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Rule;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the rules of a stack ready and puts them in an order in which each finds what it hangs on already placed. */
final class NodeOrder {
    private record Key(int piece, Axis axis) {}

    private final Section section;
    private final List<PartShape> shapes;
    private final Optional<Adjustable> adjustable;
    private final Map<Key, PlaceNode> ready = new LinkedHashMap<>();

    NodeOrder(Section section, List<PartShape> shapes, Optional<Adjustable> adjustable) {
        this.section = section;
        this.shapes = shapes;
        this.adjustable = adjustable;
    }

    List<PlaceNode> nodes() {
        for (int i = 0; i < shapes.size(); i++) {
            for (Axis axis : Axis.values()) {
                ready(new Key(i, axis));
            }
        }
        return List.copyOf(ready.values());
    }

    private Placed placed(int piece) {
        return section.body(piece).placed().orElseThrow();
    }

    /** The stack has been placed once, so no rule leads back to itself. */
    private void ready(Key key) {
        if (ready.containsKey(key)) {
            return;
        }
        PlaceNode node = node(key);
        if (node.touches()) {
            ready(new Key(key.piece, key.axis.other()));
            for (int i = 0; i < shapes.size(); i++) {
                boolean framing = placed(i).piece().kind() == PieceKind.FRAMING;
                if (i < key.piece || (i > key.piece && framing)) {
                    ready(new Key(i, Axis.OUT));
                    ready(new Key(i, Axis.UP));
                }
            }
        }
        for (PlaceRule rule : List.of(node.rule(), node.second())) {
            if (rule.target() >= 0) {
                ready(new Key(rule.target(), key.axis));
            }
        }
        ready.put(key, node);
    }

    private PlaceNode node(Key key) {
        Piece piece = placed(key.piece).piece();
        Optional<Rule> low = piece.rules().low(key.axis);
        Optional<Rule> high = piece.rules().high(key.axis);
        boolean fitted = adjustable
                .filter(one -> one.piece() == key.piece && one.axis() == key.axis)
                .isPresent();
        if (low.isPresent() && high.isPresent()) {
            return node(key, How.RIPPED, rule(key, low.get()), rule(key, high.get()));
        }
        if (low.or(() -> high).filter(Rule.Touch.class::isInstance).isPresent()) {
            PlaceRule none = PlaceRule.level(0, 0, false);
            return node(key, low.isPresent() ? How.TOUCH_LOW : How.TOUCH_HIGH, none, none);
        }
        Box box = section.body(key.piece).outline().box();
        if (low.isPresent()) {
            PlaceRule at = rule(key, low.get());
            return fitted
                    ? node(key, How.RIPPED, at, PlaceRule.level(key.axis.high(box), 0, false))
                    : node(key, How.LOW, at, at);
        }
        if (high.isPresent()) {
            PlaceRule at = rule(key, high.get());
            return fitted
                    ? node(key, How.RIPPED, PlaceRule.level(key.axis.low(box), 0, false), at)
                    : node(key, How.HIGH, at, at);
        }
        return byMember(key, piece);
    }

    private static PlaceNode node(Key key, How how, PlaceRule rule, PlaceRule second) {
        return new PlaceNode(key.piece, key.axis, how, rule, second, Point.ORIGIN);
    }

    private PlaceNode byMember(Key key, Piece piece) {
        for (Map.Entry<String, Rule> entry : piece.rules().byMember().entrySet()) {
            Optional<Edges.Straight> edge = Edges.straight(piece.shape(), entry.getKey());
            if (edge.filter(found -> found.axis() == key.axis).isPresent()) {
                PlaceRule at = rule(key, entry.getValue());
                return new PlaceNode(
                        key.piece, key.axis, How.MEMBER, at, at, member(key.piece, entry.getKey(), edge.get()));
            }
        }
        // nothing places it, which has been refused
        Box box = section.body(key.piece).outline().box();
        PlaceRule stays = PlaceRule.level(key.axis.low(box), 0, false);
        return node(key, How.LOW, stays, stays);
    }

    /** A place on a straight member, from the home of its piece. */
    private Point member(int piece, String name, Edges.Straight edge) {
        Box shape = placed(piece).piece().shape().box();
        double from = edge.coordinate() - (edge.axis() == Axis.OUT ? shape.back() : shape.bottom());
        return placed(piece).outline().straights(name).stream()
                .findFirst()
                .map(line -> shapes.get(piece).fromHome(line.at(0.5)))
                .orElse(edge.axis() == Axis.OUT ? new Point(from, 0) : new Point(0, from));
    }

    private PlaceRule rule(Key key, Rule rule) {
        if (rule instanceof Rule.ByEdge edge) {
            return byEdge(edge, key.axis);
        }
        double at = rule instanceof Rule.Level level ? level.at() : 0;
        boolean ceiling = rule instanceof Rule.Level level && level.ceiling();
        boolean strays = placed(key.piece).piece().kind() != PieceKind.FRAMING;
        return PlaceRule.level(at, key.axis == Axis.OUT && strays ? sway(key.piece) : 0, ceiling);
    }

    /** What is set against a wall goes with it at its own height, counted from the foot of the stack. */
    private double sway(int piece) {
        Box box = section.body(piece).outline().box();
        return box.middle().y() - section.totals().bottom();
    }

    private PlaceRule byEdge(Rule.ByEdge rule, Axis axis) {
        int target = section.number(rule.piece()).orElseThrow();
        Piece piece = placed(target).piece();
        Edges.Straight edge = Edges.straight(piece.shape(), rule.edge()).orElseThrow();
        Box shape = piece.shape().box();
        if (Tolerance.same(edge.coordinate(), axis.high(shape))) {
            return new PlaceRule(target, Edge.HIGH, Point.ORIGIN, rule.offset(), 0, false);
        }
        if (Tolerance.same(edge.coordinate(), axis.low(shape))) {
            return new PlaceRule(target, Edge.LOW, Point.ORIGIN, rule.offset(), 0, false);
        }
        return new PlaceRule(target, Edge.MEMBER, member(target, rule.edge(), edge), rule.offset(), 0, false);
    }

    /** Which of the nodes any error reaches. */
    static List<Boolean> straying(List<PlaceNode> nodes, List<PartShape> shapes, boolean wall, boolean ceiling) {
        Map<Key, Boolean> strays = new LinkedHashMap<>();
        List<Boolean> all = new ArrayList<>();
        for (PlaceNode node : nodes) {
            boolean moved = shapes.get(node.piece()).strays() || node.touches();
            for (PlaceRule rule : List.of(node.rule(), node.second())) {
                moved |= (wall && Math.abs(rule.sway()) > 0)
                        || (ceiling && rule.ceiling())
                        || strays.getOrDefault(new Key(rule.target(), node.axis()), false);
            }
            strays.put(new Key(node.piece(), node.axis()), moved);
            all.add(moved);
        }
        return all;
    }
}
