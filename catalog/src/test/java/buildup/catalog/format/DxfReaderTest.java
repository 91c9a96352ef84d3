package buildup.catalog.format;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DxfReaderTest {
    private static final double EXACT = 1e-12;
    private static final double SOME = 1e-3;

    /** Pairs as a file has them, each value on a line of its own: codes and values in turn. */
    private static String pairs(String words) {
        return words.strip().replaceAll("\\s+", "\n") + "\n";
    }

    private static Inboxed dxf(String entities) {
        return whole("", "", entities);
    }

    private static Inboxed whole(String header, String blocks, String entities) {
        String text = (header.isEmpty() ? "" : pairs("0 SECTION 2 HEADER " + header + " 0 ENDSEC"))
                + (blocks.isEmpty() ? "" : pairs("0 SECTION 2 BLOCKS " + blocks + " 0 ENDSEC"))
                + pairs("0 SECTION 2 ENTITIES " + entities + " 0 ENDSEC 0 EOF");
        return Inboxed.of(text, "a.dxf");
    }

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static double least(Trail trail) {
        return trail.points().stream().mapToDouble(Point::y).min().orElseThrow();
    }

    private static double most(Trail trail) {
        return trail.points().stream().mapToDouble(Point::y).max().orElseThrow();
    }

    @Test
    void a_line_goes_from_end_to_end_whatever_its_height() {
        Inboxed read = dxf("0 LINE 5 1A 100 AcDbLine 8 0 62 1 10 1.5 20 2 30 7 11 3 21 4.25 31 7");
        assertThat(read.points()).containsExactly(p(1.5, 2), p(3, 4.25));
        assertThat(read.notices()).isEmpty();
    }

    @Test
    void arcs_run_counterclockwise_also_across_zero() {
        Trail arc = dxf("0 ARC 8 0 10 1 20 1 40 2 50 270 51 90").only();
        assertThat(arc.closed()).isFalse();
        assertThat(arc.points().get(0).distance(p(1, -1))).isLessThan(EXACT);
        assertThat(arc.points().get(arc.points().size() - 1).distance(p(1, 3))).isLessThan(EXACT);
        assertThat(arc.points().stream().mapToDouble(Point::x).max().orElseThrow())
                .isCloseTo(3, within(SOME));
        assertThat(arc.points())
                .hasSizeGreaterThan(16)
                .allSatisfy(point -> assertThat(point.distance(p(1, 1))).isCloseTo(2, within(EXACT)));
    }

    @Test
    void circles_and_ellipses_close() {
        Trail circle = dxf("0 CIRCLE 10 1 20 1 40 2").only();
        assertThat(circle.closed()).isTrue();
        assertThat(Inboxed.area(circle)).isCloseTo(4 * Math.PI, within(SOME));
        Trail ellipse = dxf("0 ELLIPSE 10 0 20 0 11 0 21 3 40 0.5 41 0 42 6.283185307179586")
                .only();
        assertThat(ellipse.closed()).isTrue();
        assertThat(Inboxed.area(ellipse)).isCloseTo(Math.PI * 3 * 1.5, within(SOME));
        assertThat(most(ellipse)).isCloseTo(3, within(SOME));
        Trail quarter = dxf("0 ELLIPSE 10 0 20 0 11 2 21 0 40 0.5 41 0 42 1.5707963267948966")
                .only();
        assertThat(quarter.closed()).isFalse();
        assertThat(quarter.points().get(0).distance(p(2, 0))).isLessThan(EXACT);
        assertThat(quarter.points().get(quarter.points().size() - 1).distance(p(0, 1)))
                .isLessThan(EXACT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 LWPOLYLINE 90 4 70 1 43 0 10 0 20 0 10 4 20 0 42 1 10 4 20 2 10 0 20 2",
                "0 POLYLINE 66 1 70 1 10 0 20 0 0 VERTEX 10 0 20 0 0 VERTEX 10 4 20 0 42 1 0 VERTEX 10 4 20 2"
                        + " 0 VERTEX 10 0 20 2 0 SEQEND"
            })
    void a_polyline_bulges_to_the_right(String entity) {
        Inboxed read = dxf(entity + " 0 LINE 10 0 20 0 11 1 21 0");
        assertThat(read.notices()).isEmpty();
        assertThat(read.trails()).hasSize(2);
        Trail trail = read.trails().get(0);
        assertThat(trail.closed()).isTrue();
        // a rectangle 4 x 2 with half a circle of radius 1 on its right side
        assertThat(Inboxed.area(trail)).isCloseTo(8 + Math.PI / 2, within(SOME));
        assertThat(trail.points()).startsWith(p(0, 0), p(4, 0)).endsWith(p(4, 2), p(0, 2));
    }

    @Test
    void the_last_bulge_closes() {
        Trail circle = dxf("0 LWPOLYLINE 70 1 10 -1 20 0 42 1 10 1 20 0 42 1").only();
        assertThat(Inboxed.area(circle)).isCloseTo(Math.PI, within(SOME));
        Trail open = dxf("0 LWPOLYLINE 70 0 10 -1 20 0 42 -1 10 1 20 0 42 1").only();
        assertThat(open.closed()).isFalse();
        assertThat(most(open)).isCloseTo(1, within(SOME));
        assertThat(least(open)).isZero();
    }

    @Test
    void points_that_only_pull_at_a_smoothed_polyline_are_not_on_it() {
        Inboxed read = dxf(
                "0 POLYLINE 70 4 0 VERTEX 70 16 10 9 20 9 0 VERTEX 70 8 10 0 20 0 0 VERTEX 70 8 10 1 20 1 0 SEQEND");
        assertThat(read.points()).containsExactly(p(0, 0), p(1, 1));
    }

    /** Seen from behind, x runs the other way (the DXF reference's arbitrary axis algorithm for 0, 0, -1). */
    @Test
    void what_is_drawn_from_behind_is_turned_round() {
        Trail arc = dxf("0 ARC 10 -5 20 0 40 1 50 0 51 90 210 0 220 0 230 -1").only();
        assertThat(arc.points().get(0).distance(p(4, 0))).isLessThan(EXACT);
        assertThat(arc.points().get(arc.points().size() - 1).distance(p(5, 1))).isLessThan(EXACT);
        Trail ellipse = dxf("0 ELLIPSE 10 0 20 0 11 2 21 0 40 0.5 41 0 42 1.5707963267948966 230 -1")
                .only();
        assertThat(ellipse.points().get(ellipse.points().size() - 1).distance(p(0, -1)))
                .isLessThan(EXACT);
        assertThat(dxf("0 LINE 10 1 20 0 11 2 21 0 230 -1").points()).containsExactly(p(1, 0), p(2, 0));
    }

    @Test
    void splines_are_read_with_weights_and_knots() {
        // a quarter circle as a rational quadratic
        Trail quarter =
                dxf("0 SPLINE 70 12 71 2 72 6 73 3 40 0 40 0 40 0 40 1 40 1 40 1 41 1 41 0.7071067811865476 41 1"
                                + " 10 1 20 0 10 1 20 1 10 0 20 1")
                        .only();
        assertThat(quarter.points())
                .hasSizeGreaterThan(16)
                .allSatisfy(point -> assertThat(point.length()).isCloseTo(1, within(EXACT)));
        Trail loop = dxf("0 SPLINE 70 1 71 1 40 0 40 0 40 1 40 2 40 3 40 3 10 0 20 0 10 2 20 0 10 2 20 2 10 0 20 0")
                .only();
        assertThat(loop.closed()).isTrue();
        assertThat(Inboxed.area(loop)).isCloseTo(2, within(EXACT));
    }

    /**
     * Closed form of a natural cubic spline through three points with equal chords: its second derivative in the middle is
     * -3 / h^2 of the height, so that halfway along the first chord it stands 3/16 above it.
     */
    @Test
    void a_spline_through_points_is_a_smooth_curve() {
        Inboxed read = dxf("0 SPLINE 70 8 71 3 74 3 11 0 21 0 11 1 21 1 11 2 21 0");
        assertThat(read.notices()).isEmpty();
        List<Point> points = read.points();
        assertThat(points).contains(p(0, 0), p(1, 1), p(2, 0));
        assertThat(points.stream()
                        .mapToDouble(q -> q.distance(p(0.5, 0.6875)))
                        .min()
                        .orElseThrow())
                .isLessThan(0.01);
        for (int i = 1; i < points.size(); i++) {
            if (Math.abs(points.get(i).x() - 0.5) < 1e-9) {
                assertThat(points.get(i).y()).isEqualTo(0.6875, within(1e-12));
            }
        }
    }

    /** Through points of a circle it stays within the fourth power of their spacing over 384, times the radius. */
    @Test
    void a_closed_spline_through_points_of_a_circle_is_round_all_the_way() {
        StringBuilder words = new StringBuilder("0 SPLINE 70 9 71 3");
        int n = 16;
        for (int i = 0; i < n; i++) {
            Point q = Point.towards(2 * Math.PI * i / n);
            words.append(" 11 ").append(q.x()).append(" 21 ").append(q.y());
        }
        Trail ring = dxf(words.toString()).only();
        assertThat(ring.closed()).isTrue();
        double most = Math.pow(2 * Math.PI / n, 4) / 384;
        ring.points().forEach(q -> assertThat(q.length()).isEqualTo(1, within(2 * most)));
    }

    @Test
    void layers_and_blocks_can_be_chosen_by_name() {
        String blocks = "0 BLOCK 2 crown 8 0 70 0 10 0 20 0 0 LINE 8 0 11 1 0 ENDBLK";
        String entities = "0 LINE 8 Frame 11 9 0 INSERT 2 crown 8 Trim 0 LINE 8 0 11 4";
        assertThat(whole("", blocks, entities).trails()).hasSize(3);
        String file = pairs(
                "0 SECTION 2 BLOCKS " + blocks + " 0 ENDSEC 0 SECTION 2 ENTITIES " + entities + " 0 ENDSEC 0 EOF");
        assertThat(Inboxed.of(file, "a.dxf", "TRIM").points()).containsExactly(p(0, 0), p(1, 0));
        assertThat(Inboxed.of(file, "a.dxf", "crown").points()).containsExactly(p(0, 0), p(1, 0));
        assertThat(Inboxed.of(file, "a.dxf", "0").points()).containsExactly(p(0, 0), p(4, 0));
        assertThat(Inboxed.of(file, "a.dxf", "walls").codes()).containsExactly("unknown-name");
        Inboxed unsaid = Inboxed.of(pairs("0 SECTION 2 ENTITIES 0 LINE 11 4 0 ENDSEC 0 EOF"), "a.dxf", "trim");
        assertThat(NoticeWords.INCHES.cure(unsaid.notices().get(0))).isEqualTo("Its only layer is 0.");
        Inboxed photo = dxf("0 IMAGE 8 0 10 0 20 0 0 LINE 11 1");
        assertThat(photo.said()).contains("photo");
    }

    @Test
    void blocks_are_put_in_scaled_turned_repeated_and_nested() {
        String blocks = "0 BLOCK 2 inner 70 0 10 1 20 0 0 LINE 10 1 20 0 11 2 21 0 0 ENDBLK"
                + " 0 BLOCK 2 outer 70 0 10 0 20 0 0 INSERT 2 INNER 10 0 20 0 41 3 42 3 50 90 0 ENDBLK";
        Inboxed read = whole(
                "",
                blocks,
                "0 INSERT 2 Outer 10 10 20 0 0 INSERT 2 inner 10 0 20 0 70 2 71 1 44 5 66 1"
                        + " 0 ATTRIB 1 x 10 0 20 0 0 SEQEND 0 INSERT 2 inner 10 3 20 1 230 -1");
        assertThat(read.notices()).isEmpty();
        assertThat(read.trails().get(0).points().get(0).distance(p(10, 0))).isLessThan(EXACT);
        assertThat(read.trails().get(0).points().get(1).distance(p(10, 3))).isLessThan(EXACT);
        assertThat(read.trails().get(1).points()).containsExactly(p(0, 0), p(1, 0));
        assertThat(read.trails().get(2).points()).containsExactly(p(5, 0), p(6, 0));
        assertThat(read.trails().get(3).points()).containsExactly(p(-3, 1), p(-4, 1));
    }

    @Test
    void a_block_that_holds_itself_is_refused_and_one_that_is_elsewhere_left_out() {
        Inboxed round = whole("", "0 BLOCK 2 a 0 LINE 11 1 0 INSERT 2 a 10 1 0 ENDBLK", "0 INSERT 2 a");
        assertThat(round.codes()).containsExactly("too-deep");
        String bomb = "0 BLOCK 2 a0 0 ENDBLK";
        for (int i = 1; i < 30; i++) {
            bomb += " 0 BLOCK 2 a" + i + " 0 INSERT 2 a" + (i - 1) + " 70 9 71 9 0 ENDBLK";
        }
        assertThat(whole("", bomb, "0 INSERT 2 a29").codes()).containsExactly("too-many-points");
        Inboxed elsewhere = whole("", "0 BLOCK 2 far 70 4 1 /else/where.dxf 0 ENDBLK", "0 INSERT 2 far 0 LINE 11 1");
        assertThat(elsewhere.points()).hasSize(2);
        assertThat(elsewhere.codes()).containsExactly("outside-reference");
        assertThat(elsewhere.notices().get(0).level()).isEqualTo(Level.PROBLEM);
    }

    /** Numbers of $INSUNITS as the DXF reference has them. */
    @ParameterizedTest
    @CsvSource({
        "1, INCH, 1, 0",
        "2, FOOT, 1, 0",
        "4, MILLIMETER, 1, 0",
        "5, CENTIMETER, 1, 0",
        "6, MILLIMETER, 1000, 1",
        "8, INCH, 0.000001, 1",
        "9, INCH, 0.001, 1",
        "10, FOOT, 3, 1",
        "13, MILLIMETER, 0.001, 1",
        "14, CENTIMETER, 10, 1"
    })
    void the_unit_stands_in_the_header_and_another_is_turned_into_ours(
            int number, LengthUnit unit, double factor, int said) {
        Inboxed read = whole("9 $ACADVER 1 AC1015 9 $INSUNITS 70 " + number, "", "0 LINE 11 2");
        assertThat(read.drawn().orElseThrow().unit()).contains(unit);
        assertThat(read.points().get(1).x()).isCloseTo(2 * factor, within(EXACT));
        assertThat(read.notices()).hasSize(said);
    }

    @Test
    void a_unit_that_no_shop_works_in_is_told() {
        Inboxed read = whole("9 $INSUNITS 70 7", "", "0 LINE 11 2");
        assertThat(read.drawn().orElseThrow().unit()).isEmpty();
        assertThat(read.codes()).containsExactly("drawing-unit");
        assertThat(read.notices().get(0).level()).isEqualTo(Level.PROBLEM);
    }

    @ParameterizedTest
    @CsvSource({"0, INCH", "1, MILLIMETER"})
    void where_no_unit_is_stated_metric_or_not_is_a_hint(int metric, LengthUnit unit) {
        Inboxed read = whole("9 $INSUNITS 70 0 9 $MEASUREMENT 70 " + metric, "", "0 LINE 11 2");
        assertThat(read.drawn().orElseThrow().unit()).contains(unit);
        assertThat(read.codes()).containsExactly("drawing-unit");
        assertThat(dxf("0 LINE 11 2").drawn().orElseThrow().unit()).isEmpty();
    }

    @Test
    void what_is_no_line_is_counted() {
        Inboxed read = dxf("0 TEXT 1 x 10 zero 0 TEXT 1 y 0 HATCH 10 1 0 LINE 11 1 0 LINE 60 1 11 9 0 LINE 67 1 11 9");
        assertThat(read.points()).hasSize(2);
        assertThat(read.codes()).containsExactly("not-read");
        assertThat(read.said()).contains("1 HATCH, 2 TEXT, 2 hidden");
    }

    @Test
    void what_lies_on_a_layer_that_is_off_or_frozen_is_hidden() {
        String layers = "0 SECTION 2 TABLES 0 TABLE 2 LAYER 70 3 0 LAYER 2 Grid 70 0 62 -8 0 LAYER 2 cold 70 1 62 7"
                + " 0 LAYER 2 wood 70 0 62 7 0 ENDTAB 0 ENDSEC ";
        String lines = "0 SECTION 2 ENTITIES 0 LINE 8 GRID 11 1 0 LINE 8 cold 11 2 0 LINE 8 wood 11 3 0 ENDSEC 0 EOF";
        Inboxed read = Inboxed.of(pairs(layers + lines), "a.dxf");
        assertThat(read.points()).containsExactly(p(0, 0), p(3, 0));
        assertThat(read.said()).contains("2 hidden");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 ARC 40 0",
                "0 ARC 40 1 50 NaN",
                "0 CIRCLE 40 -1",
                "0 CIRCLE 40 1e308",
                "0 CIRCLE 40 1 210 1 220 0 230 0",
                "0 ELLIPSE 40 1",
                "0 ELLIPSE 11 1 40 0",
                "0 LWPOLYLINE 10 1 20 1",
                "0 LWPOLYLINE 10 1 20 1 10 2 10 3",
                "0 LWPOLYLINE 10 1 20 1 42 1e7 10 2 20 2 42 1e300 70 1",
                "0 POLYLINE 70 64 0 VERTEX 10 1 0 VERTEX 10 2 0 SEQEND",
                "0 POLYLINE 0 VERTEX 10 x 0 VERTEX 10 2 0 SEQEND",
                "0 SPLINE 71 3 10 0 20 0",
                "0 INSERT 2 a 41 wide"
            })
    void a_faulty_entity_is_told_and_the_others_are_kept(String entity) {
        Inboxed read = dxf(entity + " 0 LINE 11 5");
        assertThat(read.points()).containsExactly(p(0, 0), p(5, 0));
        assertThat(read.codes()).containsExactly("dxf-error");
        assertThat(read.lines()).containsExactly(6);
    }

    @Test
    void a_bad_number_is_told_with_its_line() {
        assertThat(dxf("0 CIRCLE 10 1 20 1 40 1,5 0 LINE 11 1").said()).contains("In line 12, '1,5' is not a number");
    }

    @Test
    void a_bad_group_code_is_refused_with_its_line() {
        Inboxed read = Inboxed.of("0\nSECTION\n2\nENTITIES\n0\nLINE\nten\n5\n0\nEOF\n", "a.dxf");
        assertThat(read.drawn()).isEmpty();
        assertThat(read.codes()).containsExactly("dxf-error");
        assertThat(read.lines()).containsExactly(7);
        assertThat(read.said()).contains("'ten'");
    }

    @Test
    void a_file_that_breaks_off_is_told() {
        Inboxed read = Inboxed.of("0\nSECTION\n2\nENTITIES\n0\nLINE\n11\n5\n0", "a.dxf");
        assertThat(read.points()).hasSize(2);
        assertThat(read.said()).contains("breaks off");
        assertThat(read.lines()).containsExactly(9);
    }

    @Test
    void too_many_points_are_refused() {
        assertThat(dxf("0 LWPOLYLINE " + "10 1 20 2 10 2 20 1 ".repeat(50_001)).codes())
                .containsExactly("too-many-points");
        assertThat(dxf("0 LWPOLYLINE " + "10 1 20 2 10 2 20 1 ".repeat(50_000)).points())
                .hasSize(100_000);
        assertThat(dxf("0 CIRCLE 40 1 ".repeat(2_000)).codes()).containsExactly("too-many-points");
        assertThat(dxf("0 LWPOLYLINE " + "10 1 ".repeat(800_001)).codes()).containsExactly("too-many-points");
        List<String> codes =
                dxf("0 LINE 11 1 10 9e6 20 9e6 21 -9e6 0 LINE 11 1").codes();
        assertThat(codes).isEmpty();
    }

    @Test
    void a_drawing_of_no_lines_is_refused() {
        assertThat(dxf("0 TEXT 1 x").codes()).containsExactly("no-points", "not-read");
        assertThat(dxf("0 LINE 10 1 11 1").codes()).containsExactly("one-point");
    }
}
