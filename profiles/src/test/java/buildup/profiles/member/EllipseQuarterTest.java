package buildup.profiles.member;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Quarter of an ellipse with half axes a and b: area pi a b / 4, centroid 4a / (3 pi), 4b / (3 pi) from its center
 * (Beer, Johnston, "Vector Mechanics for Engineers: Statics", table of centroids of common shapes: quarter-elliptical
 * area; from memory).
 */
class EllipseQuarterTest {
    private static final double CHAIN = 1e-4;

    private static List<Segment> greek(double height, double width, boolean hollow) {
        Walk walk = new Walk();
        if (hollow) {
            walk.greekCove(Way.UP, height, Way.OUT, width, "greek");
        } else {
            walk.greekOvolo(Way.UP, height, Way.OUT, width, "greek");
        }
        return walk.strokes().stream().map(Stroke::segment).toList();
    }

    @ParameterizedTest
    @CsvSource({"1,1", "0.5,0.375", "0.375,0.5", "2,0.5", "0.5,2", "1,0.25", "0.25,1", "4,3", "0.125,0.0625"})
    void the_arcs_follow_the_ellipse_and_go_over_into_each_other(double height, double width) {
        for (boolean hollow : List.of(true, false)) {
            List<Segment> arcs = greek(height, width, hollow);
            // a cove has its center out of its start, an ovolo straight above it
            Point center = hollow ? new Point(width, 0) : new Point(0, height);
            assertThat(arcs.get(arcs.size() - 1).to().distance(new Point(width, height)))
                    .isLessThan(1e-12);
            for (int i = 0; i < arcs.size(); i++) {
                for (int k = 0; k <= 20; k++) {
                    Point p = arcs.get(i).at(k / 20.0).minus(center);
                    // first order: the implicit function over its slope
                    double f = p.x() * p.x() / (width * width) + p.y() * p.y() / (height * height) - 1;
                    double slope = 2 * Math.hypot(p.x() / (width * width), p.y() / (height * height));
                    assertThat(Math.abs(f) / slope).isLessThan(CHAIN);
                }
                if (i > 0) {
                    assertThat(arcs.get(i).direction(0).distance(arcs.get(i - 1).direction(1)))
                            .isLessThan(1e-9);
                }
            }
            assertThat(arcs.get(0).direction(0).distance(hollow ? new Point(0, 1) : new Point(1, 0)))
                    .isLessThan(1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource({"1,1", "0.5,0.375", "2,0.5", "0.5,2", "4,3"})
    void area_and_centroid_are_those_of_the_quarter_ellipse(double height, double width) {
        List<Stroke> ring = new ArrayList<>();
        greek(height, width, false).forEach(arc -> ring.add(new Stroke(arc, "greek")));
        Point center = new Point(0, height);
        ring.add(new Stroke(new Line(new Point(width, height), center), "top"));
        ring.add(new Stroke(new Line(center, Point.ORIGIN), "back"));
        Outline quarter = Outline.closed(ring);
        assertThat(quarter.area()).isEqualTo(Math.PI * width * height / 4, within(CHAIN * (width + height)));
        assertThat(quarter.centroid().x()).isEqualTo(4 * width / (3 * Math.PI), within(CHAIN));
        assertThat(height - quarter.centroid().y()).isEqualTo(4 * height / (3 * Math.PI), within(CHAIN));
    }
}
