package buildup.cli.write;

import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Entities of a DXF drawing, or of one of its blocks, as they are added. */
final class DxfEntities {
    /** Alignments of a text; a fitted one is stretched or narrowed to lie between two points. */
    private static final int CENTERED = 1;

    private static final int RIGHT = 2;
    private static final int FITTED = 5;

    private static final int MOST_HUNG = 3;

    private final DxfTables tables;
    private final Point zero;
    private final DxfPairs out = new DxfPairs();

    /** @param zero what is written as (0, 0) */
    DxfEntities(DxfTables tables, Point zero) {
        this.tables = tables;
        this.zero = zero;
    }

    @Override
    public String toString() {
        return out.toString();
    }

    /** A block that stands there with its base point at {@code at}. */
    void insert(String block, Subject layer, Point at) {
        out.put(0, "INSERT").put(8, layer.name()).put(2, block).put(10, at.minus(zero));
    }

    /**
     * Adds what draws.
     *
     * @param subject absent where the item says it itself
     * @param over what lies over the item
     */
    void add(SceneItem item, Optional<Subject> subject, List<SceneItem> over) {
        if (item instanceof Path path && path.style() != LineStyle.CASING) {
            path(
                    path.segments(),
                    path.closed(),
                    subject.orElse(Subject.of(path.style())),
                    tables.lineType(path.style().dash()));
        } else if (item instanceof Hatch hatch) {
            hatch(hatch, over);
        } else if (item instanceof Label label) {
            label(label, subject.orElse(Subject.NOTES));
        } else if (item instanceof Area area && area.tone() == Tone.INK) {
            path(area.ring(), true, subject.orElse(Subject.LETTERS), tables.lineType(List.of()));
        }
    }

    private void path(List<? extends Segment> segments, boolean closed, Subject layer, String lineType) {
        List<Segment> run = new ArrayList<>();
        for (Segment segment : segments) {
            if (!run.isEmpty() && !Joins.meet(run.get(run.size() - 1).to(), segment.from())) {
                run(run, false, layer, lineType);
                run.clear();
            }
            run.add(segment);
        }
        if (!run.isEmpty()) {
            run(run, closed, layer, lineType);
        }
    }

    private void run(List<Segment> run, boolean closed, Subject layer, String lineType) {
        if (closed && run.size() > 1) {
            polyline(run, layer, lineType);
        } else {
            run.forEach(segment -> single(segment, layer, lineType));
        }
    }

    private DxfPairs begin(String entity, Subject layer, String lineType) {
        return out.put(0, entity).put(8, layer.name()).put(6, lineType);
    }

    private void polyline(List<Segment> run, Subject layer, String lineType) {
        begin("POLYLINE", layer, lineType).put(66, 1).put(70, 1).put(10, Point.ORIGIN);
        run.forEach(segment -> vertex(segment.from(), bulge(segment), layer));
        Point end = run.get(run.size() - 1).to();
        if (!Joins.meet(end, run.get(0).from())) {
            vertex(end, 0, layer);
        }
        out.put(0, "SEQEND").put(8, layer.name());
    }

    private void vertex(Point at, double bulge, Subject layer) {
        out.put(0, "VERTEX").put(8, layer.name()).put(10, at.minus(zero));
        if (Math.abs(bulge) > 0) {
            out.put(42, bulge);
        }
    }

    /** The tangent of a quarter of the angle swept, positive counterclockwise; 0 of a line. */
    private static double bulge(Segment segment) {
        return segment instanceof Arc arc ? Math.tan(arc.sweep() / 4) : 0;
    }

    private void single(Segment segment, Subject layer, String lineType) {
        if (segment instanceof Arc arc && Math.abs(arc.sweep()) > 0) {
            // the format knows arcs in one sense only
            Arc forward = arc.counterclockwise() ? arc : arc.reversed();
            double start = Math.toDegrees(forward.startAngle());
            begin("ARC", layer, lineType).put(10, arc.center().minus(zero)).put(40, arc.radius());
            out.put(50, upright(start)).put(51, upright(start + Math.toDegrees(forward.sweep())));
        } else {
            begin("LINE", layer, lineType)
                    .put(10, segment.from().minus(zero))
                    .put(11, segment.to().minus(zero));
        }
    }

    /** From 0 to a full turn, degrees. */
    private static double upright(double degrees) {
        double within = degrees % 360;
        return within < 0 ? within + 360 : within;
    }

    /** A hatch, with room left for the letters that lie on it. */
    private void hatch(Hatch hatch, List<SceneItem> over) {
        List<Box> papers = over.stream()
                .filter(item -> item instanceof Area area && area.tone() == Tone.PAPER)
                .map(SceneItem::box)
                .filter(box -> Boxes.overlap(box, hatch.box()))
                .toList();
        List<Line> lines = hatch.lines().stream()
                .flatMap(line -> Boxes.broken(line, papers).stream())
                .toList();
        path(lines, false, Subject.HATCH, tables.lineType(hatch.pattern().dash()));
    }

    /**
     * A text, fitted between its ends, so that it keeps to its place in whatever font it is shown. A few letters would be
     * pulled out of shape, and are hung up by their anchor.
     */
    private void label(Label label, Subject layer) {
        boolean fitted = label.text().length() > MOST_HUNG && label.width() > 0;
        Point start = label.start().minus(zero);
        begin("TEXT", layer, tables.lineType(List.of())).put(10, start);
        out.put(40, label.size() * Label.CAPITALS).putText(1, label.text());
        if (label.upright()) {
            out.put(50, 90.0);
        }
        if (fitted) {
            Point along = label.upright() ? new Point(0, label.width()) : new Point(label.width(), 0);
            out.put(72, FITTED).put(11, start.plus(along));
        } else if (label.anchor() != Label.Anchor.START) {
            out.put(72, label.anchor() == Label.Anchor.MIDDLE ? CENTERED : RIGHT)
                    .put(11, label.at().minus(zero));
        }
    }
}
