package buildup.profiles.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The back of a casing that is relieved: both its lands lie on the wall. */
class FlushBacksTest {
    private static final double NOISE = 0.001;

    /** 11/16 x 3 with a relief of 2 x 1/16, and the lower land set in by so much. */
    private static Outline casing(double lower) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 0.6875 - lower, "bottom");
        walk.straight(Way.UP, 3, "face");
        walk.straight(Way.IN, 0.6875, "top");
        walk.straight(Way.DOWN, 0.5, "back");
        walk.straight(Way.OUT, 0.0625, "relief");
        walk.straight(Way.DOWN, 2, "relief");
        walk.straight(Way.IN, 0.0625 - lower, "relief");
        walk.straight(Way.DOWN, 0.5, "back");
        return Outline.closed(walk.strokes());
    }

    private static Traced traced(Outline outline, long seed) {
        Random random = new Random(seed);
        List<Point> points = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            int count = (int) Math.ceil(stroke.segment().length() / 0.02);
            for (int k = 0; k < count; k++) {
                Point p = stroke.segment().at((k + 0.5) / count);
                points.add(new Point(p.x() + NOISE * random.nextGaussian(), p.y() + NOISE * random.nextGaussian()));
            }
        }
        return Tracer.trace(List.of(new Trail(points, true)), TracingOptions.PLAIN.in(LengthUnit.INCH), new Notices())
                .orElseThrow();
    }

    private static List<Double> lands(Traced traced) {
        return traced.outline().strokes().stream()
                .map(Stroke::segment)
                .filter(line -> Math.abs(line.from().x() - line.to().x()) < 1e-9 && line.length() < 0.7)
                .map(line -> line.from().x())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.0006, -0.0003, 0, 0.0003, 0.0006})
    void lands_that_a_hand_followed_a_little_apart_come_out_in_one_plane(double apart) {
        for (int seed = 1; seed <= 5; seed++) {
            Traced traced = traced(casing(apart), seed);
            assertThat(lands(traced)).hasSize(2).allSatisfy(x -> assertThat(x).isEqualTo(0, within(1e-9)));
            assertThat(traced.outline().box().width()).isEqualTo(0.6875, within(2 * NOISE));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.015625", "0.03125"})
    void a_land_that_is_set_in_stays_so(double apart) {
        assertThat(lands(traced(casing(apart), 1)))
                .hasSize(2)
                .anySatisfy(x -> assertThat(x).isEqualTo(0, within(NOISE)))
                .anySatisfy(x -> assertThat(x).isEqualTo(apart, within(NOISE)));
    }
}
