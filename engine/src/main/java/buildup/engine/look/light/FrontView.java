package buildup.engine.look.light;

import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A section as it looks straight from the front, each strip with how light it is. */
public final class FrontView {
    /** What an evenly lit room gives beside the light itself; a drafting choice, not a measurement. */
    public static final double ROOM_SHARE = 0.45;

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
        FrontFaces front = FrontFaces.of(section);
        Map<Segment, List<FrontFaces.Face>> faces = new HashMap<>();
        List<Strip> strips = new ArrayList<>();
        for (Band band : lighting.bands()) {
            faces.computeIfAbsent(band.whole(), front::of)
                    .forEach(face -> strips(band, face, lighting.light(), strips));
        }
        strips.sort(Comparator.comparingDouble((Strip strip) -> strip.low().y()));
        return strips;
    }

    /** The strips of a face, cut where the light changes. */
    private static void strips(Band band, FrontFaces.Face face, Light light, List<Strip> out) {
        Segment segment = band.whole();
        for (int i = 0; i < face.open().size(); i++) {
            double start = Math.max(band.start(), face.at(i));
            double end = Math.min(band.end(), face.at(i + 1));
            if ((end - start) * segment.length() > Tolerance.SNAP) {
                Point a = segment.at(start);
                Point b = segment.at(end);
                double direct = band.lit() == Band.Lit.LIT ? direct(segment, (start + end) / 2, light) : 0;
                double tone = ROOM_SHARE * face.open().get(i) + (1 - ROOM_SHARE) * direct;
                out.add(new Strip(band.member(), a.y() <= b.y() ? a : b, a.y() <= b.y() ? b : a, band.lit(), tone));
            }
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
