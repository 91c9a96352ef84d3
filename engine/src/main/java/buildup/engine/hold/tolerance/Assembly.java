package buildup.engine.hold.tolerance;

import buildup.engine.hold.tolerance.ErrorSource.What;
import buildup.engine.hold.tolerance.PlaceNode.How;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Touching;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The rules of a stack, made ready to place it anew for build after build. What no error touches keeps its place. A piece
 * that is ripped to fit goes from rule to rule, whatever its neighbors are; one that touches is moved until it does.
 */
final class Assembly {
    private final Section section;
    private final List<PartShape> shapes;
    private final List<PlaceNode> nodes;
    private final List<BuiltPiece> drawn;
    private final List<Boolean> growing;
    private final List<Double> drawnShift;
    private final int wall;
    private final int ceiling;

    private Assembly(Section section, List<ErrorSource> sources, List<PlaceNode> all, List<PartShape> shapes) {
        this.section = section;
        this.shapes = shapes;
        this.wall = number(What.WALL, sources);
        this.ceiling = number(What.CEILING, sources);
        this.drawn = drawn();
        List<Boolean> strays = NodeOrder.straying(all, shapes, wall >= 0, ceiling >= 0);
        this.nodes = IntStream.range(0, all.size())
                .filter(strays::get)
                .mapToObj(all::get)
                .toList();
        this.growing = shapes.stream().map(PartShape::strays).toList();
        this.drawnShift = nodes.stream()
                .map(node -> node.touches() ? shift(node, drawn, 0) : 0.0)
                .toList();
    }

    /**
     * The assembly of a section.
     *
     * @param adjustable a piece that is left wide and ripped on site until its far edge sits as drawn; absent when none
     *     is
     */
    static Assembly of(Section section, List<ErrorSource> sources, Optional<Adjustable> adjustable) {
        List<PartShape> shapes = new ArrayList<>();
        for (int i = 0; i < section.pieces().size(); i++) {
            shapes.add(new PartShape(section.body(i).placed().orElseThrow(), i, sources));
        }
        return new Assembly(section, sources, new NodeOrder(section, shapes, adjustable).nodes(), shapes);
    }

    /** One axis of a piece that may be ripped on site. */
    record Adjustable(int piece, Axis axis) {}

    private static int number(What what, List<ErrorSource> sources) {
        return IntStream.range(0, sources.size())
                .filter(i -> sources.get(i).what() == what)
                .findFirst()
                .orElse(-1);
    }

    private List<BuiltPiece> drawn() {
        List<BuiltPiece> pieces = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            BuiltPiece piece = new BuiltPiece();
            shapes.get(i).grow(piece, new double[2 * shapes.size() + 2]);
            Box box = section.body(i).outline().box();
            piece.back = box.back();
            piece.face = box.face();
            piece.bottom = box.bottom();
            piece.top = box.top();
            pieces.add(piece);
        }
        return pieces;
    }

    Section section() {
        return section;
    }

    PartShape shape(int piece) {
        return shapes.get(piece);
    }

    /** Pieces as drawn, for a thread to build in. */
    List<BuiltPiece> fresh() {
        List<BuiltPiece> pieces = new ArrayList<>();
        for (BuiltPiece one : drawn) {
            BuiltPiece piece = new BuiltPiece();
            piece.take(one);
            pieces.add(piece);
        }
        return pieces;
    }

    /** How far the wall leans in a build, for every inch of height. */
    double lean(double[] strayed) {
        return wall < 0 ? 0 : strayed[wall];
    }

    /** How far the ceiling has risen in a build, in. */
    double rise(double[] strayed) {
        return ceiling < 0 ? 0 : strayed[ceiling];
    }

    /**
     * Places the pieces of one build.
     *
     * @param strayed how far each source has strayed, in their order
     * @param pieces from {@link #fresh}; changed
     */
    void build(double[] strayed, List<BuiltPiece> pieces) {
        for (int i = 0; i < shapes.size(); i++) {
            if (growing.get(i)) {
                shapes.get(i).grow(pieces.get(i), strayed);
            }
        }
        double lean = lean(strayed);
        double rise = rise(strayed);
        for (int i = 0; i < nodes.size(); i++) {
            place(nodes.get(i), drawnShift.get(i), lean, rise, pieces);
        }
    }

    private void place(PlaceNode node, double drawnShift, double lean, double rise, List<BuiltPiece> pieces) {
        BuiltPiece piece = pieces.get(node.piece());
        boolean out = node.axis() == Axis.OUT;
        double low = out ? piece.lowOut : piece.lowUp;
        double size = (out ? piece.highOut : piece.highUp) - low;
        double at = node.touches() ? 0 : at(node.rule(), node.axis(), lean, rise, pieces);
        double from = switch (node.how()) {
            case LOW, RIPPED -> at;
            case HIGH -> at - size;
            case MEMBER -> at - (out ? grownOut(piece, node.member()) : grownUp(piece, node.member())) + low;
            case TOUCH_LOW, TOUCH_HIGH -> touching(node, drawnShift, rise, size, pieces);
        };
        double to = node.how() == How.RIPPED ? at(node.second(), node.axis(), lean, rise, pieces) : from + size;
        if (out) {
            piece.back = from;
            piece.face = to;
        } else {
            piece.bottom = from;
            piece.top = to;
        }
        if (node.how() == How.RIPPED) {
            Box box = section.body(node.piece()).outline().box();
            if (out) {
                piece.out = (to - from) / box.width();
                piece.lowOut = 0;
                piece.highOut = to - from;
            } else {
                piece.up = (to - from) / box.height();
                piece.lowUp = 0;
                piece.highUp = to - from;
            }
        }
    }

    private static double grownOut(BuiltPiece piece, Point fromHome) {
        return piece.out * fromHome.x() + piece.both * fromHome.y();
    }

    private static double grownUp(BuiltPiece piece, Point fromHome) {
        return piece.both * fromHome.x() + piece.up * fromHome.y();
    }

    private static double at(PlaceRule rule, Axis axis, double lean, double rise, List<BuiltPiece> pieces) {
        double at = rule.at() + rule.sway() * lean + (rule.ceiling() ? rise : 0);
        if (rule.target() < 0) {
            return at;
        }
        BuiltPiece target = pieces.get(rule.target());
        boolean out = axis == Axis.OUT;
        return at
                + switch (rule.edge()) {
                    case LOW -> out ? target.back : target.bottom;
                    case HIGH -> out ? target.face : target.top;
                    case MEMBER -> out ? target.x(rule.member()) : target.y(rule.member());
                };
    }

    /** Where the low edge comes to lie: as drawn, and as much farther as the first meeting is farther off. */
    private double touching(PlaceNode node, double drawnShift, double rise, double size, List<BuiltPiece> pieces) {
        boolean out = node.axis() == Axis.OUT;
        BuiltPiece piece = pieces.get(node.piece());
        Box box = section.body(node.piece()).outline().box();
        double low = out ? box.back() : box.bottom();
        // it starts where it was drawn, with the size that it has now
        if (out) {
            piece.back = low;
            piece.face = low + size;
        } else {
            piece.bottom = low;
            piece.top = low + size;
        }
        return low + shift(node, pieces, rise) - drawnShift;
    }

    private double shift(PlaceNode node, List<BuiltPiece> pieces, double rise) {
        BuiltPiece moving = pieces.get(node.piece());
        List<Outline> before = IntStream.range(0, shapes.size())
                .filter(i -> inTheWay(node.axis(), moving, pieces.get(i)))
                .filter(i -> i < node.piece()
                        || (i > node.piece()
                                && section.body(i)
                                                .placed()
                                                .orElseThrow()
                                                .piece()
                                                .kind()
                                        == PieceKind.FRAMING))
                .mapToObj(i -> shapes.get(i).outline(pieces.get(i)))
                .toList();
        return Touching.shift(
                        shapes.get(node.piece()).outline(pieces.get(node.piece())),
                        node.axis(),
                        node.how() == How.TOUCH_LOW,
                        risen(rise),
                        before)
                .orElse(0.0);
    }

    /** Whether one piece can meet another that moves along an axis; what only comes near it may count as met. */
    private static boolean inTheWay(Axis axis, BuiltPiece moving, BuiltPiece other) {
        double room = 2 * Tolerance.TOUCHING;
        return axis == Axis.UP
                ? moving.back < other.face + room && other.back < moving.face + room
                : moving.bottom < other.top + room && other.bottom < moving.top + room;
    }

    private Space risen(double rise) {
        return section.stack().space().raised(rise);
    }
}
