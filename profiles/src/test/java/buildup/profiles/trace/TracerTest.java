package buildup.profiles.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.member.Walk;
import buildup.profiles.member.Way;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TracerTest {
    private final Notices notices = new Notices();

    /** Bottom 1/4, a cove of 1, a fillet of 3/8: 1-1/4 x 1-3/8. */
    private static Outline bed() {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 0.25, "bottom");
        walk.cove(Way.UP, 1, Way.OUT, 1, "cove");
        walk.straight(Way.UP, 0.375, "fillet");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    /** A board 3/4 x 3 with its front arrises eased to the radius. */
    private static Outline eased(double radius) {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 0.75 - radius, "bottom");
        walk.ovolo(Way.UP, radius, Way.OUT, radius, "lower");
        walk.straight(Way.UP, 3 - 2 * radius, "face");
        walk.ovolo(Way.UP, radius, Way.IN, radius, "upper");
        walk.levelToBack();
        return Outline.closed(walk.close());
    }

    private static List<Point> sampled(Outline outline, int count, double noise) {
        Random random = new Random(11);
        List<Point> points = new ArrayList<>();
        double step = outline.perimeter() / count;
        double at = step / 3;
        for (Stroke stroke : outline.strokes()) {
            double length = stroke.segment().length();
            for (; at < length; at += step) {
                Point p = stroke.segment().at(at / length);
                points.add(new Point(p.x() + noise * random.nextGaussian(), p.y() + noise * random.nextGaussian()));
            }
            at -= length;
        }
        return points;
    }

    private static Trail ring(List<Point> points) {
        return new Trail(points, true);
    }

    private Traced traced(TracingOptions options, Trail... trails) {
        return Tracer.trace(List.of(trails), options, notices).orElseThrow(() -> new AssertionError(said()));
    }

    private void refused(TracingOptions options, Trail... trails) {
        assertThat(Tracer.trace(List.of(trails), options, notices)).isEmpty();
    }

    private List<String> said() {
        return notices.sorted().stream()
                .map(notice -> notice.level() + " " + notice.code() + ": " + NoticeWords.INCHES.message(notice) + " | "
                        + NoticeWords.INCHES.cure(notice))
                .toList();
    }

    private static List<Point> all(List<Point> points, Motion motion) {
        return points.stream().map(motion::apply).toList();
    }

    @Test
    void a_tracing_becomes_the_outline_in_shop_sizes() {
        Traced traced = traced(TracingOptions.PLAIN, ring(sampled(bed(), 800, 0.002)));
        assertThat(said())
                .containsExactly("NOTE trace-grain: The points scatter 0.002: members under 0.011 cannot be told."
                        + " Taken: --deviation 0.006. | ");
        assertThat(traced.outline().members()).containsExactlyInAnyOrder("bottom", "cove", "face", "top", "back");
        assertThat(traced.outline().area()).isEqualTo(1.25 * 1.375 - Math.PI / 4, within(1e-3));
        assertThat(traced.outline().box().width()).isEqualTo(1.25, within(1e-9));
        assertThat(traced.outline().box().height()).isEqualTo(1.375, within(1e-9));
        assertThat(radius(traced)).isEqualTo(1, within(1e-9));
        assertThat(traced.rms()).isEqualTo(0.002, within(0.0002));
        assertThat(traced.largest()).isBetween(0.004, 0.010);
        assertThat(traced.members().stream().mapToInt(Traced.Fit::points).sum())
                .isEqualTo(traced.points().size());
        assertThat(traced.farthest()).isIn(traced.points());
    }

    /** 1-5/8 below, 1-1/2 on the left, both square: either may be the back. */
    @Test
    void of_a_tracing_whose_lower_side_is_a_little_longer_it_is_said_which_side_was_taken_for_the_back() {
        traced(
                TracingOptions.PLAIN,
                ring(List.of(
                        new Point(0, 0),
                        new Point(1.625, 0),
                        new Point(1.625, 1),
                        new Point(1.25, 1),
                        new Point(1.25, 1.5),
                        new Point(0, 1.5))));
        assertThat(said())
                .contains(
                        "NOTE back-unsure: The back is taken to be on the left, 1.500 high as drawn; the side below is"
                                + " about as long, 1.625. | Where that is the back: --back down.");
    }

    private static double radius(Traced traced) {
        return traced.outline().segments().stream()
                .filter(Arc.class::isInstance)
                .mapToDouble(arc -> ((Arc) arc).radius())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_drawn_polygon_of_four_corners_is_a_board() {
        Traced traced = traced(
                TracingOptions.PLAIN,
                ring(List.of(new Point(0, 0), new Point(0.75, 0), new Point(0.75, 3.5), new Point(0, 3.5))));
        assertThat(traced.outline().isRectangle()).isTrue();
        assertThat(traced.outline().box()).isEqualTo(new Box(0, 0, 0.75, 3.5));
    }

    @Test
    void two_caliper_sizes_give_the_scale_and_check_it() {
        Trail drawn = ring(all(sampled(bed(), 600, 0.002), Motion.turn(2)).stream()
                .map(p -> p.times(37.1))
                .toList());
        TracingOptions options = TracingOptions.PLAIN.measured(
                List.of(new Caliper(Caliper.Across.WIDTH, 1.25), new Caliper(Caliper.Across.HEIGHT, 1.375)));
        assertThat(traced(options, drawn).outline().box().height()).isEqualTo(1.375, within(1e-3));
        assertThat(said())
                .containsExactly(
                        "NOTE scale-checked: Scaled by the height: one unit of the tracing is 0.02696 in. | ",
                        "NOTE scale-checked: By the height the width comes out at 1.250; the calipers say 1.250. | ",
                        "NOTE trace-grain: The points scatter 0.002: members under 0.011 cannot be told."
                                + " Taken: --deviation 0.006. | ");
    }

    @Test
    void calipers_that_disagree_are_told() {
        TracingOptions options = TracingOptions.PLAIN.measured(
                List.of(new Caliper(Caliper.Across.THICKNESS, 1.25), new Caliper(Caliper.Across.HEIGHT, 1.5)));
        traced(options, ring(sampled(bed(), 600, 0)));
        assertThat(said())
                .containsExactly(
                        "PROBLEM scale-disagrees: By the height the thickness comes out at 1.364;"
                                + " the calipers say 1.250: 0.114 apart. | Measure both again, and trace square to the piece.",
                        "NOTE scale-checked: Scaled by the height: one unit of the tracing is 1.09091 in. | ");
    }

    /** Calipers that are off by less than 1/64, and by more than the points stray: on the whole piece and on a quarter of it. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.0005, 0.994", "1, 0.001, 1.006", "1, 0.002, 0.994", "1, 0.002, 1.006",
        "0.25, 0.0005, 0.98", "0.25, 0.001, 1.02", "0.25, 0.0015, 0.98", "0.25, 0.0015, 1.02"
    })
    void calipers_agree_with_points_within_what_these_scatter(double size, double noise, double off) {
        List<Point> points = sampled(bed(), 900, noise / size).stream()
                .map(p -> p.times(size))
                .toList();
        traced(
                TracingOptions.PLAIN
                        .in(LengthUnit.INCH)
                        .measured(List.of(new Caliper(Caliper.Across.HEIGHT, 1.375 * size * off))),
                ring(points));
        assertThat(said())
                .anyMatch(notice -> notice.startsWith("PROBLEM scale-disagrees: By the stated unit the height"));
    }

    @Test
    void millimeters_read_as_inches_are_asked_for() {
        Trail drawn = ring(sampled(eased(0.125), 500, 0).stream()
                .map(p -> new Point(p.y(), p.x()).times(38.1))
                .toList());
        refused(TracingOptions.PLAIN.of(new TracingOptions.Usual("casing", 5.5)), drawn);
        assertThat(said())
                .containsExactly(
                        "REFUSAL missing-unit: The outline is 114.3 wide. As inches that is 9.5 ft of casing: mm? |"
                                + " State the unit of the tracing, or one caliper size.",
                        "NOTE outline-clockwise: The tracing runs clockwise; turned round. | ");
        assertThat(metric().message(notices.sorted().get(0)))
                .isEqualTo("The outline is 114.3 wide. As inches that is 2.90 m of casing: mm?");
    }

    @Test
    void a_stated_unit_is_taken() {
        Trail drawn =
                ring(sampled(bed(), 500, 0).stream().map(p -> p.times(25.4)).toList());
        assertThat(traced(TracingOptions.PLAIN.in(LengthUnit.MILLIMETER), drawn)
                        .outline()
                        .box()
                        .width())
                .isEqualTo(1.25, within(1e-6));
        assertThat(said()).isEmpty();
    }

    @Test
    void open_trails_are_joined_at_their_nearest_ends() {
        List<Point> points = sampled(bed(), 600, 0.001);
        List<Point> second = new ArrayList<>(points.subList(200, 400));
        Collections.reverse(second);
        Traced traced = traced(
                TracingOptions.PLAIN,
                new Trail(points.subList(0, 200), false),
                new Trail(points.subList(400, 600), false),
                new Trail(second, false));
        assertThat(traced.outline().area()).isEqualTo(bed().area(), within(5e-3));
        assertThat(said()).isEmpty();
    }

    @Test
    void a_small_gap_is_closed_and_told() {
        List<Point> points = sampled(bed(), 600, 0);
        traced(TracingOptions.PLAIN, new Trail(points.subList(0, points.size() - 4), false));
        assertThat(said())
                .singleElement()
                .asString()
                .matches("NOTE outline-open: Last point is 0\\.0\\d\\d short of the first\\."
                        + " Closed it, or was a piece lost\\? \\| Trace it again if so\\.");
        assertThat(metric().message(notices.sorted().get(0)))
                .matches("Last point is \\d\\.\\d\\d mm short of the first\\. Closed it, or was a piece lost\\?");
    }

    @Test
    void a_drawing_by_its_corners_whose_ends_do_not_meet_is_closed_and_told() {
        List<Point> corners = List.of(
                new Point(0, 0.02),
                new Point(0, 2),
                new Point(0.5, 2),
                new Point(0.5, 1),
                new Point(1.25, 1),
                new Point(1.25, 0),
                new Point(0, 0));
        assertThat(traced(TracingOptions.PLAIN, new Trail(corners, false))
                        .outline()
                        .area())
                .isEqualTo(1.75, within(1e-6));
        assertThat(said()).anyMatch(notice -> notice.startsWith("NOTE outline-open: Last point is 0.020 short"));
    }

    private static NoticeWords metric() {
        return NoticeWords.in(LengthUnit.MILLIMETER);
    }

    @Test
    void a_tracing_of_the_face_alone_is_closed_along_its_back() {
        List<Point> points = sampled(bed(), 600, 0);
        List<Point> face = points.stream().filter(p -> p.x() > 0).toList();
        assertThat(traced(TracingOptions.PLAIN, new Trail(face, false))
                        .outline()
                        .area())
                .isEqualTo(bed().area(), within(0.02));
        assertThat(said()).singleElement().asString().contains("Of the back, 1.375 were not traced");
    }

    @Test
    void a_lost_piece_is_refused() {
        List<Point> points = sampled(bed(), 600, 0);
        // without the middle of the cove
        Collections.rotate(points, -200);
        refused(TracingOptions.PLAIN, new Trail(points.subList(0, 460), false));
        assertThat(said()).singleElement().asString().startsWith("REFUSAL outline-open: Last point is");
    }

    @Test
    void doubled_and_stray_points_are_counted_once() {
        List<Point> points = new ArrayList<>(sampled(bed(), 600, 0.001));
        points.add(300, points.get(300));
        points.add(100, points.get(100));
        points.set(50, points.get(50).plus(new Point(0.5, 0.5)));
        Collections.reverse(points);
        assertThat(traced(TracingOptions.PLAIN, ring(points)).largest()).isLessThan(0.01);
        assertThat(said())
                .containsExactly(
                        "NOTE doubled-points: Dropped 2 doubled and 1 stray points. | ",
                        "NOTE outline-clockwise: The tracing runs clockwise; turned round. | ");
    }

    @Test
    void an_outline_that_crosses_itself_is_refused_with_the_place() {
        List<Point> points = List.of(new Point(0, 0), new Point(2, 0), new Point(0.5, 2), new Point(2, 2));
        refused(TracingOptions.PLAIN, ring(points));
        assertThat(said())
                .singleElement()
                .asString()
                .matches(
                        "REFUSAL outline-crosses-itself: Outline crosses itself near \\(.*\\), between points 2 and 4\\."
                                + " \\| Traced twice\\?");
    }

    @Test
    void a_mirrored_profile_is_told_and_turned_when_asked() {
        List<Point> points = all(sampled(bed(), 600, 0.001), Motion.ENDS);
        traced(TracingOptions.PLAIN, ring(points));
        assertThat(said())
                .contains("PROBLEM outline-mirrored: The back of this profile is on the room side. |"
                        + " Turn it end for end, or say where its back is as it is drawn: --back right.");
        Traced turned = Tracer.trace(List.of(ring(points)), TracingOptions.PLAIN.flipped(), new Notices())
                .orElseThrow();
        assertThat(turned.outline().centroid().x()).isEqualTo(bed().centroid().x(), within(2e-3));
    }

    @Test
    void worn_arrises_are_made_sharp_and_paint_comes_off() {
        List<Point> points = sampled(eased(0.125), 1000, 0.001);
        assertThat(traced(TracingOptions.PLAIN.restored(0.15, 0), ring(points))
                        .outline()
                        .isRectangle())
                .isTrue();
        assertThat(traced(TracingOptions.PLAIN.restored(0.1, 0), ring(points))
                        .outline()
                        .strokes())
                .hasSize(6);
        Box bare = traced(TracingOptions.PLAIN.restored(0, 1.0 / 64), ring(points))
                .outline()
                .box();
        assertThat(bare.width()).isEqualTo(0.75 - 1.0 / 64, within(2e-3));
        assertThat(bare.height()).isEqualTo(3 - 2.0 / 64, within(2e-3));
    }

    @Test
    void nothing_and_a_line_are_no_outline() {
        refused(TracingOptions.PLAIN);
        refused(TracingOptions.PLAIN, ring(List.of(new Point(0, 0), new Point(1, 1), new Point(2, 2))));
        assertThat(said())
                .containsExactly(
                        "REFUSAL no-outline: The tracing holds no line. | Trace the outline once round.",
                        "REFUSAL no-area: The tracing encloses no area. | Trace the outline once round.");
    }

    @Test
    void the_largest_of_several_closed_lines_is_taken() {
        List<Point> mark = List.of(new Point(0.1, 0.1), new Point(0.2, 0.1), new Point(0.2, 0.2));
        traced(TracingOptions.PLAIN, ring(mark), ring(sampled(bed(), 600, 0)));
        assertThat(said())
                .containsExactly("NOTE outline-beside: Taken: the outline 1.250 x 1.375. Beside it the drawing holds"
                        + " other lines: 1. | ");
    }

    @Test
    void a_hundred_thousand_points_are_averaged_and_fitted() {
        Traced traced = traced(TracingOptions.PLAIN, ring(sampled(bed(), 100_000, 0.005)));
        assertThat(radius(traced)).isEqualTo(1, within(1e-9));
        assertThat(traced.points()).hasSizeLessThan(20_000);
        assertThat(said()).singleElement().asString().startsWith("NOTE trace-grain: The points scatter 0.002");
    }

    @Test
    void a_circle_of_points_or_scatter_does_not_raise() {
        List<Point> circle = new ArrayList<>();
        Random random = new Random(3);
        List<Point> scatter = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            circle.add(Point.towards(i * Math.PI / 200));
            scatter.add(new Point(random.nextDouble(), random.nextDouble()));
        }
        Optional<Traced> round = Tracer.trace(List.of(ring(circle)), TracingOptions.PLAIN, notices);
        Optional<Traced> wild = Tracer.trace(List.of(ring(scatter)), TracingOptions.PLAIN, notices);
        assertThat(round.isEmpty() || wild.isEmpty()).isEqualTo(notices.refused());
    }

    /** A sawtooth round a circle. */
    @ParameterizedTest
    @ValueSource(ints = {45, 120})
    void a_scrawl_that_would_take_too_many_lines_and_arcs_is_refused_and_soon(int teeth) {
        List<Point> saw = new ArrayList<>();
        for (int i = 0; i < 2 * teeth; i++) {
            Point from = Point.towards(i * Math.PI / teeth).times(i % 2 == 0 ? 3 : 2.7);
            Point to = Point.towards((i + 1) * Math.PI / teeth).times(i % 2 == 0 ? 2.7 : 3);
            for (int k = 0; k < 20; k++) {
                saw.add(from.towards(to, k / 20.0));
            }
        }
        refused(TracingOptions.PLAIN, ring(saw));
        assertThat(said())
                .anyMatch(line -> line.contains("It would take more than 60 lines and arcs to follow this tracing."));
    }
}
