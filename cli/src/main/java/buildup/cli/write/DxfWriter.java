package buildup.cli.write;

import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.Label;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a scene as ASCII DXF of release R12, in inches. Lines are lines, arcs are true arcs, a closed outline is one
 * closed polyline with bulges; hatches become their lines. Areas have no lines and are left out, but for small solid
 * marks.
 */
public final class DxfWriter {
    /** Alignments of a text; a fitted one is stretched or narrowed to lie between two points. */
    private static final int CENTERED = 1;

    private static final int RIGHT = 2;
    private static final int FITTED = 5;

    private static final int MOST_HUNG = 3;

    private final Scene scene;
    private final DxfTables tables = new DxfTables();
    private final DxfPairs entities = new DxfPairs();

    private DxfWriter(Scene scene) {
        this.scene = scene;
    }

    /** The scene as a DXF file, in inches. */
    public static byte[] write(Scene scene) {
        return new DxfWriter(scene).text().getBytes(DxfPairs.LETTERS);
    }

    private String text() {
        List<SceneItem> leaves = scene.leaves();
        List<DxfLayer> wordings = new ArrayList<>();
        scene.items().forEach(item -> wordings(item, DxfLayer.NOTES, wordings));
        for (int i = 0; i < leaves.size(); i++) {
            add(leaves.get(i), wordings.get(i), leaves.subList(i + 1, leaves.size()));
        }
        DxfPairs head = new DxfPairs();
        tables.write(scene, head);
        head.put(0, "SECTION").put(2, "ENTITIES");
        return head + entities.toString() + new DxfPairs().put(0, "ENDSEC").put(0, "EOF");
    }

    /** For every leaf, in their order, the layer of a text there and of its ring and leader: that of what it speaks of. */
    private static void wordings(SceneItem item, DxfLayer layer, List<DxfLayer> out) {
        if (item instanceof Group group) {
            DxfLayer own = DxfLayer.ofWords(group.id()).orElse(layer);
            group.items().forEach(one -> wordings(one, own, out));
        } else {
            out.add(layer);
        }
    }

    /**
     * @param words the layer of a text there
     * @param over what lies over the item
     */
    private void add(SceneItem item, DxfLayer words, List<SceneItem> over) {
        if (item instanceof Path path) {
            DxfLayer.of(path.style())
                    .map(layer -> layer == DxfLayer.BALLOONS && words == DxfLayer.DIMENSIONS ? words : layer)
                    .ifPresent(layer -> path(
                            path.segments(),
                            path.closed(),
                            layer,
                            tables.lineType(path.style().dash())));
        } else if (item instanceof Hatch hatch) {
            hatch(hatch, over);
        } else if (item instanceof Label label) {
            label(label, words);
        } else if (item instanceof Area area && area.tone() == Tone.INK) {
            path(area.ring(), true, DxfLayer.BALLOONS, tables.lineType(List.of()));
        }
    }

    private void path(List<? extends Segment> segments, boolean closed, DxfLayer layer, String lineType) {
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

    private void run(List<Segment> run, boolean closed, DxfLayer layer, String lineType) {
        if (closed && run.size() > 1) {
            polyline(run, layer, lineType);
        } else {
            run.forEach(segment -> single(segment, layer, lineType));
        }
    }

    private DxfPairs begin(String entity, DxfLayer layer, String lineType) {
        return entities.put(0, entity).put(8, layer.name()).put(6, lineType);
    }

    private void polyline(List<Segment> run, DxfLayer layer, String lineType) {
        begin("POLYLINE", layer, lineType).put(66, 1).put(70, 1).put(10, Point.ORIGIN);
        run.forEach(segment -> vertex(segment.from(), bulge(segment), layer));
        Point end = run.get(run.size() - 1).to();
        if (!Joins.meet(end, run.get(0).from())) {
            vertex(end, 0, layer);
        }
        entities.put(0, "SEQEND").put(8, layer.name());
    }

    private void vertex(Point at, double bulge, DxfLayer layer) {
        entities.put(0, "VERTEX").put(8, layer.name()).put(10, at);
        if (Math.abs(bulge) > 0) {
            entities.put(42, bulge);
        }
    }

    /** The tangent of a quarter of the angle swept, positive counterclockwise; 0 of a line. */
    private static double bulge(Segment segment) {
        return segment instanceof Arc arc ? Math.tan(arc.sweep() / 4) : 0;
    }

    private void single(Segment segment, DxfLayer layer, String lineType) {
        if (segment instanceof Arc arc && Math.abs(arc.sweep()) > 0) {
            // the format knows arcs in one sense only
            Arc forward = arc.counterclockwise() ? arc : arc.reversed();
            double start = Math.toDegrees(forward.startAngle());
            begin("ARC", layer, lineType).put(10, arc.center()).put(40, arc.radius());
            entities.put(50, upright(start)).put(51, upright(start + Math.toDegrees(forward.sweep())));
        } else {
            Line line = new Line(segment.from(), segment.to());
            begin("LINE", layer, lineType).put(10, line.from()).put(11, line.to());
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
        path(lines, false, DxfLayer.HATCH, tables.lineType(hatch.pattern().dash()));
    }

    /**
     * A text, fitted between its ends, so that it keeps to its place in whatever font it is shown. A few letters would be
     * pulled out of shape, and are hung up by their anchor.
     */
    private void label(Label label, DxfLayer layer) {
        boolean fitted = label.text().length() > MOST_HUNG && label.width() > 0;
        begin("TEXT", layer, tables.lineType(List.of())).put(10, label.start());
        entities.put(40, label.size() * Label.CAPITALS).putText(1, label.text());
        if (label.upright()) {
            entities.put(50, 90.0);
        }
        if (fitted) {
            Point along = label.upright() ? new Point(0, label.width()) : new Point(label.width(), 0);
            entities.put(72, FITTED).put(11, label.start().plus(along));
        } else if (label.anchor() != Label.Anchor.START) {
            entities.put(72, label.anchor() == Label.Anchor.MIDDLE ? CENTERED : RIGHT)
                    .put(11, label.at());
        }
    }
}
