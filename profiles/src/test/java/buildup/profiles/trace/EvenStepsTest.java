package buildup.profiles.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Points that were put down at even steps along the wood: what lies between them need not be straight. */
class EvenStepsTest {
    private static final double RADIUS = 0.375;

    /** An ovolo and a cove of 3/8 between flats, 1-1/4 x 2-3/4. */
    private static Outline molded() {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 0.375, "bottom");
        walk.straight(Way.UP, 0.25, "fillet");
        walk.ovolo(Way.UP, RADIUS, Way.OUT, RADIUS, "ovolo");
        walk.straight(Way.UP, 1, "face");
        walk.cove(Way.UP, RADIUS, Way.OUT, RADIUS, "cove");
        walk.straight(Way.UP, 0.75, "edge");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    private static List<Point> followed(Outline outline, double step) {
        List<Point> points = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            int parts = (int) Math.max(1, Math.rint(stroke.segment().length() / step));
            for (int k = 0; k < parts; k++) {
                points.add(stroke.segment().at((double) k / parts));
            }
        }
        return points;
    }

    /** The step is up to a quarter of the radius: six points on a quarter round. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.075, 0.09, 0.1})
    void an_arc_comes_out_as_an_arc_and_not_as_the_chords_between_its_points(double step) {
        Notices notices = new Notices();
        Optional<Traced> traced = Tracer.trace(
                List.of(new Trail(followed(molded(), step), true)), TracingOptions.PLAIN.in(LengthUnit.INCH), notices);
        List<Arc> arcs = traced.orElseThrow().outline().segments().stream()
                .filter(Arc.class::isInstance)
                .map(Arc.class::cast)
                .toList();
        assertThat(notices.sorted()).allMatch(notice -> notice.level() == Level.NOTE);
        assertThat(arcs).hasSize(2).allSatisfy(arc -> assertThat(arc.radius()).isCloseTo(RADIUS, within(1e-3)));
        assertThat(traced.get().outline().segments())
                .hasSize(molded().segments().size());
    }
}
