package buildup.engine.look.view;

import buildup.catalog.wood.Wood;
import buildup.engine.look.view.Visibility.Surface;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.stack.FiberDirection;
import buildup.engine.section.stack.OwnSpread;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Rules;
import buildup.engine.section.stack.Space;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.Stock;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Outlines and sections made straight from coordinates, for figures that no stack document draws. */
public final class Drawn {
    private static final Wood WOOD = new Wood(
            "wood",
            "",
            0.42,
            29.35,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty());

    private Drawn() {}

    public static Point at(double x, double y) {
        return new Point(x, y);
    }

    /** A closed ring of straight strokes through the points. */
    public static Outline polygon(Point... points) {
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < points.length; i++) {
            sides.add(new Line(points[i], points[(i + 1) % points.length]));
        }
        return outline(sides.toArray(Segment[]::new));
    }

    public static Outline outline(Segment... segments) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < segments.length; i++) {
            strokes.add(new Stroke(segments[i], "m" + i));
        }
        return Outline.closed(strokes);
    }

    /** The same outline with each arc replaced by chords of at most that error, the member's name kept. */
    public static Outline chorded(Outline outline, double chordError) {
        List<Stroke> strokes = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            List<Point> points = stroke.segment().flattened(chordError);
            for (int i = 0; i + 1 < points.size(); i++) {
                strokes.add(new Stroke(new Line(points.get(i), points.get(i + 1)), stroke.member()));
            }
        }
        return Outline.closed(strokes);
    }

    public static List<Surface> surfaces(List<Outline> outlines) {
        List<Surface> surfaces = new ArrayList<>();
        for (int i = 0; i < outlines.size(); i++) {
            for (Stroke stroke : outlines.get(i).strokes()) {
                surfaces.add(new Surface(stroke.segment(), i));
            }
        }
        return surfaces;
    }

    /** Pieces of trim p0, p1, ... on a wall without end that is solid or is not. */
    public static Section section(boolean solidWall, Outline... outlines) {
        List<Piece> pieces = new ArrayList<>();
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < outlines.length; i++) {
            Piece piece = piece("p" + i, outlines[i]);
            pieces.add(piece);
            placed.add(new Placed(piece, outlines[i]));
        }
        OptionalDouble none = OptionalDouble.empty();
        Space space = new Space(none, none, 0, none, new Space.Wall(none, none, solidWall, 0));
        LengthReader lengths = new LengthReader(LengthUnit.INCH, Map.of());
        Stack stack = new Stack(
                "drawn",
                buildup.shared.length.LengthUnit.INCH,
                "softwood",
                space,
                List.of(),
                List.of(),
                pieces,
                lengths);
        return Composer.compose(stack, placed, new Notices());
    }

    private static Piece piece(String name, Outline outline) {
        return new Piece(
                name,
                PieceKind.TRIM,
                outline,
                new Stock(
                        "section",
                        "section",
                        outline.box().width(),
                        outline.box().height(),
                        false,
                        false,
                        false),
                WOOD,
                FiberDirection.RUN,
                Optional.empty(),
                OwnSpread.NONE,
                new Rules(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Map.of(), Map.of()),
                false,
                Optional.empty(),
                new Mark("drawn", 1, 1));
    }
}
