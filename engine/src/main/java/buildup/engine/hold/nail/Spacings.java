package buildup.engine.hold.nail;

import buildup.catalog.fastener.Fastener;
import java.util.List;

/**
 * How far apart along the run, in, the fastenings of a row are set where nobody says: by the spacing of studs, or a part of
 * it. Fasteners that are sold by the millimeter go into studs that are 400 mm apart. Common practice, no source.
 */
public final class Spacings {
    private static final List<Double> INCHES = List.of(16.0, 12.0, 8.0, 6.0, 4.0);

    private static final List<Double> MILLIMETERS = List.of(400 / 25.4, 300 / 25.4, 200 / 25.4, 150 / 25.4, 100 / 25.4);

    private Spacings() {}

    /** What a row has that names none. */
    public static double usual(Fastener.Cut use) {
        return steps(use).get(0);
    }

    /** What is tried where more of them are needed, widest first. */
    public static List<Double> steps(Fastener.Cut use) {
        return use.fastener().metric() ? MILLIMETERS : INCHES;
    }
}
