package buildup.cli.scene;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Segment;
import java.util.List;
import java.util.Optional;

/**
 * A filled area without an edge of its own, so that it covers exactly what its ring encloses.
 *
 * @param id unique in the scene
 * @param title what a screen reader says
 * @param ring closed: each segment begins where the one before it ends
 */
public record Area(Optional<String> id, Optional<String> title, List<Segment> ring, Paint tone) implements SceneItem {
    public Area {
        ring = List.copyOf(ring);
    }

    @Override
    public Area moved(double right, double up) {
        return new Area(id, title, Path.moved(ring, Motion.shift(right, up)), tone);
    }

    @Override
    public Box box() {
        return Path.box(ring);
    }
}
