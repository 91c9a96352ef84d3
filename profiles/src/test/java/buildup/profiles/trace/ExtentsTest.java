package buildup.profiles.trace;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the points of a tracing tell of its sizes is no more than they know. */
class ExtentsTest {
    /** A bed molding with a cove of 0.8 whose width and height are on no rule. */
    private static Outline bed(double width, double height) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, width - 0.8, "bottom");
        walk.cove(Way.UP, 0.8, Way.OUT, 0.8, "cove");
        walk.straight(Way.UP, height - 0.8, "fillet");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    private static List<Point> round(Outline outline, double step) {
        List<Point> points = new ArrayList<>();
        double at = step / 2;
        for (Stroke stroke : outline.strokes()) {
            double length = stroke.segment().length();
            for (; at < length; at += step) {
                points.add(stroke.segment().at(at / length));
            }
            at -= length;
        }
        return points;
    }

    /** A scan that lies square: all points of a flat are rounded the same way, by up to half a dot. */
    @ParameterizedTest
    @ValueSource(doubles = {150, 300, 600})
    void a_flat_that_stays_on_one_row_of_dots_is_known_no_better_than_a_dot(double toInch) {
        double noise = 1 / toInch / Math.sqrt(12);
        for (int phase = 0; phase < 12; phase++) {
            Outline outline = bed(1.2017 + 0.29 * phase / toInch, 1.7309 + 0.17 * phase / toInch);
            List<Point> dots = new ArrayList<>();
            for (Point p : round(outline, 0.004)) {
                Point dot = new Point(
                        Math.rint((p.x() + 1) * toInch) / toInch,
                        Math.rint((p.y() + 1 + phase / 12.0 / toInch) * toInch) / toInch);
                if (dots.isEmpty() || !dots.get(dots.size() - 1).near(dot, 0.5 / toInch)) {
                    dots.add(dot);
                }
            }
            Notices notices = new Notices();
            Box box = Tracer.trace(List.of(new Trail(dots, true)), TracingOptions.PLAIN.in(LengthUnit.INCH), notices)
                    .orElseThrow()
                    .outline()
                    .box();
            double off = Math.max(
                    Math.abs(box.width() - outline.box().width()),
                    Math.abs(box.height() - outline.box().height()));
            boolean doubted = notices.sorted().stream().anyMatch(notice -> notice.level() == Level.PROBLEM);
            assertThat(doubted || off <= 2 * noise)
                    .as("%s to the inch, phase %d: off by %s", toInch, phase, off)
                    .isTrue();
        }
    }

    private static Traced traced(int rounds, double moved, long seed, Notices notices) {
        Random random = new Random(seed);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < rounds; i++) {
            for (Point p : round(bed(1.2017, 1.7309), 0.01)) {
                points.add(new Point(
                        p.x() + i * moved + 0.002 * random.nextGaussian(), p.y() + 0.002 * random.nextGaussian()));
            }
        }
        return Tracer.trace(List.of(new Trail(points, true)), TracingOptions.PLAIN.in(LengthUnit.INCH), notices)
                .orElseThrow();
    }

    private static double radiusOff(int rounds) {
        return Math.sqrt(IntStream.range(0, 30)
                .mapToDouble(seed -> traced(rounds, 0, seed, new Notices()).outline().segments().stream()
                        .filter(Arc.class::isInstance)
                        .mapToDouble(arc -> ((Arc) arc).radius() - 0.8)
                        .findFirst()
                        .orElseThrow())
                .map(off -> off * off)
                .average()
                .orElseThrow());
    }

    /** Twice the points are off by 1 / sqrt(2) of what the first round is; thirty tracings tell that to an eighth. */
    @Tag("long")
    @Test
    void two_rounds_tell_a_radius_better_than_one() {
        assertThat(radiusOff(2)).isLessThan(0.85 * radiusOff(1));
    }

    @Test
    void a_second_round_of_a_sheet_that_slipped_is_told_and_not_averaged() {
        Notices notices = new Notices();
        Traced traced = traced(2, 0.02, 1, notices);
        assertThat(notices.sorted()).anyMatch(notice -> notice.code().equals("trace-deviates"));
        assertThat(traced.points())
                .hasSizeLessThan(round(bed(1.2017, 1.7309), 0.01).size() * 11 / 10);
    }
}
