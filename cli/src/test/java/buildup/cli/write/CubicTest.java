package buildup.cli.write;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CubicTest {
    @ParameterizedTest
    @CsvSource({"0.125, 90", "1, 90", "1, 180", "5, 359", "40, 30", "500, 17", "1, -90", "3, -250"})
    void curves_stay_on_the_circle_within_two_ten_thousandths(double radius, double sweep) {
        Point center = new Point(3, -2);
        double start = Math.toRadians(33);
        Arc arc = new Arc(
                center.plus(Point.towards(start).times(radius)),
                center.plus(Point.towards(start + Math.toRadians(sweep)).times(radius)),
                center,
                sweep > 0);
        double worst = 0;
        Point end = arc.from();
        for (Cubic curve : Cubic.along(arc)) {
            assertThat(curve.from().distance(end)).isLessThan(1e-9);
            end = curve.to();
            for (int i = 0; i <= 200; i++) {
                worst = Math.max(worst, Math.abs(curve.at(i / 200.0).distance(center) - radius));
            }
        }
        assertThat(end.distance(arc.to())).isLessThan(1e-9);
        assertThat(worst).isLessThan(0.0002);
    }
}
