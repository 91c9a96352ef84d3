package buildup.engine.look.light;

import buildup.engine.look.view.Surfaces;
import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.look.view.Visibility.Surface;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * How much of the room a place on the outline sees: the share of the directions out into the room, weighted by the
 * cosine off the surface (Lambert's law), in which no wood stands. Floor and ceiling count as room: they throw light
 * back.
 */
public final class Ambient {
    /** Directions looked in, evenly from straight down to straight up. */
    private static final int DIRECTIONS = 60;

    private final List<Visibility> views;

    private Ambient(List<Visibility> views) {
        this.views = views;
    }

    /** A section made ready to be asked. */
    public static Ambient of(Section section) {
        List<Surface> surfaces = Surfaces.withoutFloorAndCeiling(section);
        List<Visibility> views = new ArrayList<>();
        for (int i = 0; i < DIRECTIONS; i++) {
            double angle = Math.PI * ((i + 0.5) / DIRECTIONS - 0.5);
            views.add(Visibility.of(Viewpoint.FarAway.at(angle), surfaces));
        }
        return new Ambient(views);
    }

    /** The share, 0 to 1, at each of the places {@code t} of a segment of the outline. */
    public List<Double> along(Segment segment, List<Double> places) {
        double[] open = new double[places.size()];
        double[] whole = new double[places.size()];
        for (Visibility view : views) {
            List<Stretch> seen = view.seen(segment);
            for (int i = 0; i < open.length; i++) {
                double t = places.get(i);
                Point outward = segment.direction(t).right();
                double weight = Math.max(0, outward.dot(view.from().towards(segment.at(t))));
                whole[i] += weight;
                if (seen.stream().anyMatch(stretch -> stretch.start() <= t && t <= stretch.end())) {
                    open[i] += weight;
                }
            }
        }
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < open.length; i++) {
            shares.add(whole[i] > 0 ? open[i] / whole[i] : 0);
        }
        return shares;
    }
}
