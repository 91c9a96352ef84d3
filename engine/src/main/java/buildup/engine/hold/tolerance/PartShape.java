package buildup.engine.hold.tolerance;

import buildup.engine.hold.tolerance.ErrorSource.What;
import buildup.engine.section.placing.Placed;
import buildup.engine.section.placing.WidthWay;
import buildup.engine.section.stack.Piece;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;

/**
 * The outline of a piece and how it grows with the two sizes of its stick. Places are told from its home, the corner of
 * least projection and height as drawn.
 */
final class PartShape {
    private final Point home;
    private final List<Point> ring;
    private final Point width;
    private final double wide;
    private final double thick;
    private final int widthSource;
    private final int thicknessSource;

    /** @param sources what strays; those of another piece are left alone */
    PartShape(Placed placed, int number, List<ErrorSource> sources) {
        Outline outline = placed.outline();
        Box box = outline.box();
        this.home = new Point(box.back(), box.bottom());
        this.ring = outline.chords().stream().map(point -> point.minus(home)).toList();
        this.width = WidthWay.of(placed);
        Piece piece = placed.piece();
        this.wide = piece.rips() ? along(box, width) : piece.stock().width();
        this.thick = piece.rips() ? along(box, width.left()) : piece.stock().thickness();
        this.widthSource = source(What.WIDTH, number, sources);
        this.thicknessSource = source(What.THICKNESS, number, sources);
    }

    private static double along(Box box, Point way) {
        return Math.abs(way.x()) * box.width() + Math.abs(way.y()) * box.height();
    }

    private static int source(What what, int number, List<ErrorSource> sources) {
        return ErrorSources.of(number, sources)
                .filter(i -> sources.get(i).what() == what)
                .findFirst()
                .orElse(-1);
    }

    /** Whether its size is ever another than drawn. */
    boolean strays() {
        return widthSource >= 0 || thicknessSource >= 0;
    }

    Point fromHome(Point place) {
        return place.minus(home);
    }

    Point home() {
        return home;
    }

    /** Grows a piece by what its sizes have strayed in a build. */
    void grow(BuiltPiece piece, double[] strayed) {
        double more = widthSource < 0 ? 0 : strayed[widthSource] / wide;
        double thicker = thicknessSource < 0 ? 0 : strayed[thicknessSource] / thick;
        double x = width.x();
        double y = width.y();
        piece.out = 1 + more * x * x + thicker * y * y;
        piece.both = (more - thicker) * x * y;
        piece.up = 1 + more * y * y + thicker * x * x;
        piece.lowOut = Double.POSITIVE_INFINITY;
        piece.lowUp = Double.POSITIVE_INFINITY;
        piece.highOut = Double.NEGATIVE_INFINITY;
        piece.highUp = Double.NEGATIVE_INFINITY;
        for (Point point : ring) {
            double out = piece.out * point.x() + piece.both * point.y();
            double up = piece.both * point.x() + piece.up * point.y();
            piece.lowOut = Math.min(piece.lowOut, out);
            piece.highOut = Math.max(piece.highOut, out);
            piece.lowUp = Math.min(piece.lowUp, up);
            piece.highUp = Math.max(piece.highUp, up);
        }
    }

    /** The outline of a piece as it is in a build, in chords. */
    Outline outline(BuiltPiece piece) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            strokes.add(new Stroke(new Line(at(piece, i), at(piece, (i + 1) % ring.size())), ""));
        }
        return Outline.closed(strokes);
    }

    private Point at(BuiltPiece piece, int corner) {
        return new Point(piece.x(ring.get(corner)), piece.y(ring.get(corner)));
    }
}
