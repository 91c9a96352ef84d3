package buildup.engine.look.light;

import buildup.engine.look.view.Surfaces;
import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.look.view.Visibility.Stretch;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What of a section shows straight from the front, and how much of the room it sees, whatever the light. */
public final class FrontFaces {
    /** Longest stretch of a face that gets one tone, in: finer than the eye tells apart across a room. */
    private static final double STRIP = 1.0 / 8;

    /** The same on curves, where the tone changes faster. */
    private static final double CURVED_STRIP = 1.0 / 32;

    /** More strips than these make no picture finer: on a face of 20 ft and more they grow longer. */
    private static final int MOST_STRIPS = 2_000;

    private final Visibility front;
    private final Ambient ambient;

    private FrontFaces(Section section) {
        this.front = Visibility.of(Viewpoint.FarAway.at(0), Surfaces.withoutFloorAndCeiling(section));
        this.ambient = Ambient.of(section);
    }

    /**
     * A stretch of a segment that shows, in strips of equal length.
     *
     * @param start, end shares of the segment
     * @param open for each strip, in walking order, the share of the room that its middle sees, 0 to 1
     */
    public record Face(double start, double end, List<Double> open) {
        /** Copies the list. */
        public Face {
            open = List.copyOf(open);
        }

        /** Share of the segment at which a strip begins; that of the number of strips is its end. */
        public double at(int strip) {
            return start + (end - start) * strip / open.size();
        }
    }

    /** A section made ready to be asked. */
    public static FrontFaces of(Section section) {
        return new FrontFaces(section);
    }

    /** What shows of a segment of the room side, in walking order. */
    public List<Face> of(Segment segment) {
        List<Face> faces = new ArrayList<>();
        for (Stretch seen : front.seen(segment)) {
            if ((seen.end() - seen.start()) * segment.length() > Tolerance.SNAP) {
                Segment part = segment.part(seen.start(), seen.end());
                double longest = segment instanceof Line ? STRIP : CURVED_STRIP;
                int count = (int) Math.min(MOST_STRIPS, Math.max(1, Math.ceil(part.length() / longest)));
                List<Double> middles = IntStream.range(0, count)
                        .mapToObj(i -> (i + 0.5) / count)
                        .toList();
                faces.add(new Face(seen.start(), seen.end(), ambient.along(part, middles)));
            }
        }
        return faces;
    }
}
