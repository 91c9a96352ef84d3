package buildup.engine.hold.order;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.section.compose.Overlap;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Motions in small steps never contradict the exact answer: chords of the outlines are moved by a 64th at a time and laid
 * over each other by a polygon overlay, which knows nothing of ends, crossings and tangents.
 */
@Tag("long")
class SampledMotionTest {
    private static final int STACKS = Integer.getInteger("buildup.order.stacks", 25);
    private static final double STEP = 1.0 / 64;
    private static final double FAR = 48;

    /** A lap of less area than this may be touching: 4 in of touching faces. */
    private static final double TOUCHES = 4 * Tolerance.TOUCHING;

    private final GeometryFactory factory = new GeometryFactory();
    private final Map<Outline, Geometry> polygons = new HashMap<>();

    private Geometry polygon(Outline outline) {
        return polygons.computeIfAbsent(outline, known -> {
            List<Coordinate> ring = new ArrayList<>();
            for (Point p : known.flattened(Tolerance.CHORD)) {
                ring.add(new Coordinate(p.x(), p.y()));
            }
            ring.add(ring.get(0));
            // shrunk by half of touching, so that faces that touch do not lap
            return factory.createPolygon(ring.toArray(Coordinate[]::new)).buffer(-Tolerance.TOUCHING / 2);
        });
    }

    /** The greatest lap on the way from the place by a step without end, looked at every 64th. */
    private double lap(
            Section section, int body, List<Integer> standing, Point from, Point way, double far, double enough) {
        Geometry moving = polygon(section.body(body).outline());
        double most = 0;
        for (double t = 0; t <= far + STEP / 2; t += STEP) {
            double along = Math.min(t, far);
            Geometry at = AffineTransformation.translationInstance(
                            from.x() + way.x() * along, from.y() + way.y() * along)
                    .transform(moving);
            for (int past : standing) {
                if (!lapped(section, body, past)) {
                    Geometry stays = polygon(section.body(past).outline());
                    if (at.getEnvelopeInternal().intersects(stays.getEnvelopeInternal())) {
                        most = Math.max(most, at.intersection(stays).getArea());
                    }
                    if (most > enough) {
                        return most;
                    }
                }
            }
        }
        return most;
    }

    /** The greatest lap on the way out: up or down past all pieces, where floor or ceiling leaves room for that, and then out. */
    private double out(Section section, int body, List<Integer> standing, Point from, double then, double enough) {
        if (then == 0) {
            return lap(section, body, standing, from, step(then), FAR, enough);
        }
        Box own = section.body(body).outline().box();
        Box all = Box.around(
                section.pieces().stream().map(piece -> piece.outline().box()).toList());
        double bottom = own.bottom() + from.y();
        double past = Math.max(0, then == 90 ? all.top() - bottom : bottom + own.height() - all.bottom());
        Point clear = from.plus(step(then).times(past));
        return Math.max(
                lap(section, body, standing, from, step(then), past, enough),
                lap(section, body, standing, clear, step(0), FAR, enough));
    }

    private static boolean lapped(Section section, int a, int b) {
        for (Overlap lap : section.overlaps()) {
            if ((lap.a() == a && lap.b() == b) || (lap.a() == b && lap.b() == a)) {
                return true;
            }
        }
        return false;
    }

    private static Point step(double degrees) {
        return Point.towards(Math.toRadians(degrees));
    }

    @Test
    void the_way_that_is_named_meets_nothing() {
        int ways = 0;
        int bent = 0;
        for (int seed = 0; seed < STACKS; seed++) {
            Ordered stack = RandomOrder.of(seed);
            List<Integer> standing = standing(stack.section());
            for (PutUp step : stack.order().steps()) {
                int body = step.unit().last();
                if (step.goes()) {
                    WayIn way = step.way().orElseThrow();
                    double first =
                            lap(stack.section(), body, standing, Point.ORIGIN, step(way.first()), way.shift(), TOUCHES);
                    double then = out(
                            stack.section(), body, standing, step(way.first()).times(way.shift()), way.then(), TOUCHES);
                    assertThat(Math.max(first, then))
                            .as("seed %d, piece %s, %s", seed, stack.section().name(body), way)
                            .isLessThan(TOUCHES);
                    ways++;
                    bent += way.isStraight() ? 0 : 1;
                }
                standing.add(body);
            }
        }
        assertThat(ways).isGreaterThan(2 * STACKS);
        assertThat(bent).isGreaterThan(STACKS / 10);
    }

    @Test
    void where_no_way_is_named_no_sampled_way_goes_and_no_shorter_shift_does() {
        int shut = 0;
        for (int seed = 0; seed < STACKS; seed++) {
            Ordered stack = RandomOrder.of(seed);
            List<Integer> standing = standing(stack.section());
            for (PutUp step : stack.order().steps()) {
                int body = step.unit().last();
                if (!step.goes() || !step.way().orElseThrow().isStraight()) {
                    double least = step.goes() ? step.way().orElseThrow().shift() - STEP : 8;
                    assertThat(sampled(stack.section(), body, standing, least))
                            .as("seed %d, piece %s, %s", seed, stack.section().name(body), step)
                            .isFalse();
                    shut++;
                }
                standing.add(body);
            }
        }
        // most go up past all pieces and then out under the ceiling
        assertThat(shut).isGreaterThan(STACKS / 8);
    }

    private static final double[] EXITS = {0, 90, 270};
    private static final double[] FIRST = {90, 270, 180, 0};

    /** Whether some shift up to a length, in 64ths, goes and lets it out. */
    private boolean sampled(Section section, int body, List<Integer> standing, double most) {
        for (double first : FIRST) {
            for (double t = 0; t <= most; t += STEP) {
                if (lap(section, body, standing, step(first).times(t), step(first), 0, STEP / 4) > STEP / 4) {
                    break;
                }
                for (double then : EXITS) {
                    if (Math.abs(Math.sin(Math.toRadians(first - then))) > 0.5
                            && out(section, body, standing, step(first).times(t), then, 1e-9) < 1e-9) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static List<Integer> standing(Section section) {
        List<Integer> standing = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).standing()) {
                standing.add(i);
            }
        }
        return standing;
    }
}
