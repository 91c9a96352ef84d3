package buildup.engine.look.light;

import buildup.engine.look.view.Surfaces;
import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A section as it looks straight from the front, each strip with how light it is. */
public final class FrontView {
    /** Longest stretch of a face that gets one tone, in: finer than the eye tells apart across a room. */
    private static final double STRIP = 1.0 / 8;

    /** The same on curves, where the tone changes faster. */
    private static final double CURVED_STRIP = 1.0 / 32;

    /** What an evenly lit room gives beside the light itself; a drafting choice, not a measurement. */
    private static final double ROOM_SHARE = 0.45;

    /**
     * A level strip of the front view.
     *
     * @param member number of the member on the walk
     * @param low, high its lower and upper edge on the outline
     * @param tone 0 for black to 1 for a face square to the light with the whole room before it
     */
    public record Strip(int member, Point low, Point high, Band.Lit lit, double tone) {}

    private FrontView() {}

    /** All strips that face the room, from low to high. */
    public static List<Strip> of(Section section, Lighting lighting) {
        Visibility front = Visibility.of(Viewpoint.FarAway.at(0), Surfaces.withoutFloorAndCeiling(section));
        Ambient ambient = Ambient.of(section);
        List<Strip> strips = new ArrayList<>();
        for (Band band : lighting.bands()) {
            for (Stretch seen : front.seen(band.segment())) {
                if ((seen.end() - seen.start()) * band.segment().length() > Tolerance.SNAP) {
                    strips(band, band.segment().part(seen.start(), seen.end()), lighting.light(), ambient, strips);
                }
            }
        }
        strips.sort(Comparator.comparingDouble((Strip strip) -> strip.low().y()));
        return strips;
    }

    private static void strips(Band band, Segment segment, Light light, Ambient ambient, List<Strip> out) {
        double longest = segment instanceof Line ? STRIP : CURVED_STRIP;
        int count = Math.max(1, (int) Math.ceil(segment.length() / longest));
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            middles.add((i + 0.5) / count);
        }
        List<Double> shares = ambient.along(segment, middles);
        for (int i = 0; i < count; i++) {
            Point a = segment.at((double) i / count);
            Point b = segment.at((i + 1.0) / count);
            double direct = band.lit() == Band.Lit.LIT ? direct(segment, middles.get(i), light) : 0;
            double tone = ROOM_SHARE * shares.get(i) + (1 - ROOM_SHARE) * direct;
            out.add(new Strip(band.member(), a.y() <= b.y() ? a : b, a.y() <= b.y() ? b : a, band.lit(), tone));
        }
    }

    /** Lambert's law: the cosine between the face and the light, the part of it along the run included. */
    private static double direct(Segment segment, double t, Light light) {
        Point outward = segment.direction(t).right();
        Point towards;
        if (light instanceof Light.Lamp lamp) {
            towards = lamp.at().minus(segment.at(t)).unit();
        } else {
            Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
            double altitude = Math.toRadians(distant.altitude());
            towards = new Point(Math.cos(altitude) * Math.cos(Math.toRadians(distant.azimuth())), Math.sin(altitude));
        }
        return Math.max(0, outward.dot(towards));
    }
}
