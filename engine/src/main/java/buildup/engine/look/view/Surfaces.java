package buildup.engine.look.view;

import buildup.engine.look.view.Visibility.Surface;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import buildup.profiles.region.Part;
import buildup.profiles.region.Ring;
import buildup.profiles.region.WeldedOutlines;
import java.util.ArrayList;
import java.util.List;

/** The surfaces of a section that can stand in the way of a ray. */
public final class Surfaces {
    private Surfaces() {}

    /** All that is solid: pieces, framing, wall, floor and ceiling. */
    public static List<Surface> solid(Section section) {
        return outer(section.skin(), List.of());
    }

    /** All but floor and ceiling: the drafting light comes through the ceiling. */
    public static List<Surface> withoutFloorAndCeiling(Section section) {
        return withoutFloorAndCeiling(section, new Composer.Known());
    }

    /** The same, with what is remembered of outlines that lie beside each other. */
    public static List<Surface> withoutFloorAndCeiling(Section section, Composer.Known known) {
        List<Part> own = new ArrayList<>();
        boolean apart = true;
        for (Part part : section.skin()) {
            long around = part.outer().bounds().stream()
                    .filter(bound -> isFloorOrCeiling(section.body(bound.outline())))
                    .count();
            if (around == 0) {
                own.add(part);
            }
            apart &= around == 0 || around == part.outer().bounds().size();
        }
        // floor and ceiling that nothing reaches are parts of their own
        return apart ? outer(own, List.of()) : united(section, known);
    }

    private static boolean isFloorOrCeiling(Body body) {
        return !body.piece() && !body.name().equals("wall");
    }

    private static List<Surface> united(Section section, Composer.Known known) {
        List<Integer> numbers = new ArrayList<>();
        List<Outline> outlines = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            Body body = section.body(i);
            if (!isFloorOrCeiling(body)) {
                numbers.add(i);
                outlines.add(body.outline());
            }
        }
        return outer(
                Composer.skin(outlines, known)
                        .orElseGet(() -> WeldedOutlines.of(outlines).union().parts()),
                numbers);
    }

    /** @param numbers the body of each outline joined; empty when they are the same */
    private static List<Surface> outer(List<Part> parts, List<Integer> numbers) {
        List<Surface> surfaces = new ArrayList<>();
        for (Part part : parts) {
            Ring ring = part.outer();
            for (int i = 0; i < ring.bounds().size(); i++) {
                Bound bound = ring.bounds().get(i);
                int body = numbers.isEmpty() ? bound.outline() : numbers.get(bound.outline());
                surfaces.add(new Surface(bound.segment(), body));
                // where welding closed a gap no ray passes either
                Point end = bound.segment().to();
                Point next = ring.bounds()
                        .get((i + 1) % ring.bounds().size())
                        .segment()
                        .from();
                if (!end.near(next, Tolerance.COINCIDENT)) {
                    surfaces.add(new Surface(new Line(end, next), body));
                }
            }
        }
        return surfaces;
    }
}
