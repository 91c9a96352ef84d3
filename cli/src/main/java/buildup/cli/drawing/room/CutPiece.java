package buildup.cli.drawing.room;

import buildup.cli.scene.Area;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.Optional;

/**
 * The shape of a cut piece from above: four corners, the wall side up. A side that is longer at one end reaches the box
 * there; the other stays behind.
 */
final class CutPiece {
    private CutPiece() {}

    /**
     * The closed ring.
     *
     * @param left, right how much longer the room side is at that end, in of the sheet; negative when shorter
     */
    static List<Segment> ring(Box box, double left, double right) {
        double most = box.width() * 0.45;
        double l = Math.max(-most, Math.min(most, left));
        double r = Math.max(-most, Math.min(most, right));
        return List.copyOf(Line.ring(List.of(
                new Point(box.back() + Math.max(0, -l), box.bottom()),
                new Point(box.face() - Math.max(0, -r), box.bottom()),
                new Point(box.face() - Math.max(0, r), box.top()),
                new Point(box.back() + Math.max(0, l), box.top()))));
    }

    static List<Segment> ring(Box box) {
        return ring(box, 0, 0);
    }

    static List<SceneItem> items(Optional<String> title, List<Segment> ring) {
        return List.of(new Area(Optional.empty(), title, ring, Tone.TRIM), new Path(ring, true, LineStyle.ARRIS));
    }
}
