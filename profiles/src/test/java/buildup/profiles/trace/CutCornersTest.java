package buildup.profiles.trace;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Points that do not stray, and leave the corners out. */
class CutCornersTest {
    private static final String DOUBT = "may have a corner between them";

    private final Notices notices = new Notices();

    /** Flats alone: 1 x 2 with a step of 3/8 x 1/2, and the arris of the step chamfered when that is more than 0. */
    private static Outline stepped(double chamfer) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 1, "bottom");
        walk.straight(Way.UP, 0.5 - chamfer, "lower");
        if (chamfer > 0) {
            walk.chamfer(Way.UP, chamfer, Way.IN, chamfer, "chamfer");
        }
        walk.straight(Way.IN, 0.375 - chamfer, "step");
        walk.straight(Way.UP, 1.5, "upper");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    /** Points at steps that differ by as much as this share to either side; no corner is among them but by chance. */
    private static List<Point> followed(Outline outline, double step, double uneven, long seed) {
        Random random = new Random(seed);
        List<Point> points = new ArrayList<>();
        double at = step * random.nextDouble();
        for (Stroke stroke : outline.strokes()) {
            double length = stroke.segment().length();
            while (at < length) {
                points.add(stroke.segment().at(at / length));
                at += step * (1 + uneven * (2 * random.nextDouble() - 1));
            }
            at -= length;
        }
        return points;
    }

    private static List<Point> corners(Outline outline) {
        return outline.strokes().stream().map(stroke -> stroke.segment().from()).toList();
    }

    private Optional<Traced> traced(List<Point> points) {
        return Tracer.trace(List.of(new Trail(points, true)), TracingOptions.PLAIN.in(LengthUnit.INCH), notices);
    }

    private List<String> problems() {
        return notices.sorted().stream()
                .filter(notice -> notice.level() != Level.NOTE)
                .map(NoticeWords.INCHES::message)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.04, 0.06, 0.08, 0.1})
    void flats_that_were_followed_come_out_at_their_size_or_are_doubted(double step) {
        Outline truth = stepped(0);
        for (int seed = 1; seed <= 20; seed++) {
            Notices own = new Notices();
            Optional<Traced> traced = Tracer.trace(
                    List.of(new Trail(followed(truth, step, 0.6, seed), true)),
                    TracingOptions.PLAIN.in(LengthUnit.INCH),
                    own);
            boolean sure = own.sorted().stream().allMatch(notice -> notice.level() == Level.NOTE);
            if (sure) {
                assertThat(traced).as("step %s, seed %s", step, seed).hasValueSatisfying(found -> {
                    assertThat(found.outline().box().width()).isBetween(0.999, 1.001);
                    assertThat(found.outline().box().height()).isBetween(1.999, 2.001);
                    assertThat(found.outline().strokes()).hasSize(6);
                });
            }
        }
    }

    @Test
    void a_chamfer_that_is_drawn_by_its_ends_is_not_doubted() {
        assertThat(traced(corners(stepped(0.0625))))
                .hasValueSatisfying(
                        found -> assertThat(found.outline().strokes()).hasSize(7));
        assertThat(problems()).isEmpty();
    }

    @Test
    void a_step_as_short_as_those_beside_it_may_be_a_chamfer_or_a_corner() {
        List<Point> points = new ArrayList<>();
        Outline truth = stepped(0.0625);
        // every flat in tenths of an inch or a little less, its corners among them, as a careful hand does
        truth.strokes().forEach(stroke -> {
            int parts = (int) Math.ceil(stroke.segment().length() / 0.1);
            for (int k = 0; k < parts; k++) {
                points.add(stroke.segment().at((double) k / parts));
            }
        });
        traced(points);
        assertThat(problems()).anyMatch(said -> said.contains(DOUBT));
    }
}
