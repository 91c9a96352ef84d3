package buildup.profiles.member;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Soundness;
import buildup.profiles.outline.Stroke;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class WalkTest {
    private static final double EXACT = 1e-12;
    private static final List<Double> RADII = List.of(0.0625, 0.3, 1.0, 2.75);

    /** Starts {@code base} out on the floor, draws, closes level to the wall. */
    private static Outline drawn(double base, Consumer<Walk> members) {
        Walk walk = new Walk();
        if (base > 0) {
            walk.straight(Way.OUT, base, "bottom");
        }
        members.accept(walk);
        walk.levelToBack();
        List<Stroke> strokes = walk.close();
        assertThat(Soundness.faults(strokes)).isEmpty();
        return Outline.closed(strokes);
    }

    private static double curve(Outline outline) {
        return outline.strokes().stream()
                .map(Stroke::segment)
                .filter(Arc.class::isInstance)
                .mapToDouble(Segment::length)
                .sum();
    }

    private static List<Arc> arcs(Outline outline) {
        return outline.strokes().stream()
                .map(Stroke::segment)
                .filter(Arc.class::isInstance)
                .map(Arc.class::cast)
                .toList();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/closed-forms.csv", useHeadersInDisplayName = true)
    void the_plain_members_have_their_closed_forms(String shape, double area, double x, double z, double curve) {
        for (double r : RADII) {
            Outline outline = drawn(0, walk -> {
                switch (shape) {
                    case "quarter-round" -> walk.ovolo(Way.UP, r, Way.OUT, r, "m");
                    case "cavetto" -> walk.cove(Way.UP, r, Way.OUT, r, "m");
                    case "half-round" -> walk.halfRound(2 * r, "m");
                    case "cyma-recta" -> walk.cymaRecta(Way.UP, 2 * r, Way.OUT, 2 * r, "m");
                    default -> walk.cymaReversa(Way.UP, 2 * r, Way.OUT, 2 * r, "m");
                }
            });
            double top = outline.box().top();
            assertThat(outline.area() / (r * r)).isCloseTo(area, within(1e-11));
            assertThat(outline.centroid().x() / r).isCloseTo(x, within(1e-11));
            assertThat((outline.centroid().y() - top) / r).isCloseTo(z, within(1e-11));
            assertThat(curve(outline) / r).isCloseTo(curve, within(1e-11));
        }
    }

    @Test
    void ovolo_and_cavetto_are_complements() {
        double round =
                drawn(0, walk -> walk.ovolo(Way.UP, 0.7, Way.OUT, 0.7, "m")).area();
        double hollow =
                drawn(0, walk -> walk.cove(Way.UP, 0.7, Way.OUT, 0.7, "m")).area();
        assertThat(round + hollow).isCloseTo(0.49, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"1, 0.5", "0.5, 1", "0.375, 0.25", "2, 1.875", "0.1, 1.5"})
    void an_arc_of_unequal_legs_is_tangent_to_the_longer(double height, double width) {
        // plane geometry: the center stands square to the longer leg's end, so r = (H^2 + W^2) / (2 min)
        double radius = (height * height + width * width) / (2 * Math.min(height, width));
        double sweep = 2 * Math.asin(Math.hypot(height, width) / (2 * radius));
        double segment = radius * radius * (sweep - Math.sin(sweep)) / 2;
        Outline round = drawn(0, walk -> walk.ovolo(Way.UP, height, Way.OUT, width, "m"));
        Outline hollow = drawn(0, walk -> walk.cove(Way.UP, height, Way.OUT, width, "m"));
        for (Outline outline : List.of(round, hollow)) {
            Arc arc = arcs(outline).get(0);
            assertThat(arc.radius()).isCloseTo(radius, within(1e-9));
            assertThat(Math.abs(arc.sweep())).isCloseTo(sweep, within(1e-9));
            assertThat(arc.to().distance(new Point(width, height))).isLessThan(EXACT);
            Point longer = height > width ? new Point(0, 1) : new Point(1, 0);
            boolean atStart = (height > width) == (outline == hollow);
            assertThat(arc.direction(atStart ? 0 : 1).distance(longer)).isLessThan(1e-9);
        }
        double triangle = height * width / 2;
        assertThat(round.area()).isCloseTo(triangle + segment, within(EXACT));
        assertThat(hollow.area()).isCloseTo(triangle - segment, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"UP, OUT", "UP, IN", "DOWN, OUT", "DOWN, IN"})
    void hollow_words_have_their_center_on_the_air_side_wherever_the_walk_goes(Way vertical, Way level) {
        for (boolean hollow : List.of(true, false)) {
            Walk walk = new Walk();
            if (hollow) {
                walk.cove(vertical, 0.5, level, 0.5, "m");
            } else {
                walk.ovolo(vertical, 0.5, level, 0.5, "m");
            }
            Arc arc = (Arc) walk.strokes().get(0).segment();
            Point chord = arc.to().minus(arc.from());
            // wood on the left of the walk
            boolean centerOnWood = chord.cross(arc.center().minus(arc.from())) > 0;
            assertThat(centerOnWood).isEqualTo(!hollow);
            assertThat(Math.abs(arc.sweep())).isCloseTo(Math.PI / 2, within(EXACT));
        }
    }

    @Test
    void cyma_recta_is_hollow_where_it_stands_out_most() {
        List<Arc> out = arcs(drawn(0, walk -> walk.cymaRecta(Way.UP, 1, Way.OUT, 0.75, "m")));
        assertThat(out).extracting(Arc::counterclockwise).containsExactly(true, false);
        List<Arc> in = arcs(drawn(2, walk -> walk.cymaRecta(Way.UP, 1, Way.IN, 0.75, "m")));
        assertThat(in).extracting(Arc::counterclockwise).containsExactly(false, true);
        List<Arc> reversa = arcs(drawn(2, walk -> walk.cymaReversa(Way.UP, 1, Way.IN, 0.75, "m")));
        assertThat(reversa).extracting(Arc::counterclockwise).containsExactly(true, false);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "1, 0.5", "0.5, 1.25"})
    void the_two_arcs_of_a_cyma_are_alike_and_tangent_halfway(double height, double width) {
        for (Outline outline : List.of(
                drawn(0, walk -> walk.cymaRecta(Way.UP, height, Way.OUT, width, "m")),
                drawn(0, walk -> walk.cymaReversa(Way.UP, height, Way.OUT, width, "m")))) {
            List<Arc> arcs = arcs(outline);
            assertThat(arcs.get(0).radius()).isCloseTo(arcs.get(1).radius(), within(EXACT));
            assertThat(arcs.get(0).to().distance(new Point(width / 2, height / 2)))
                    .isLessThan(EXACT);
            // like halves turned about the middle: the area is half the box
            assertThat(outline.area()).isCloseTo(height * width / 2, within(EXACT));
        }
        if (height == width) {
            List<Arc> arcs = arcs(drawn(0, walk -> walk.cymaRecta(Way.UP, height, Way.OUT, width, "m")));
            assertThat(arcs.get(0).direction(1).distance(arcs.get(1).direction(0)))
                    .isLessThan(EXACT);
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 0.25, OUT", "1, 0.25, IN", "0.5, 0.375, OUT", "0.75, 0, OUT"})
    void a_scotia_is_two_quarters_tangent_at_its_deepest(double height, double width, Way level) {
        double base = 3;
        Outline outline = drawn(base, walk -> walk.scotia(Way.UP, height, level, width, "m"));
        double first = level == Way.OUT ? (height - width) / 2 : (height + width) / 2;
        double second = height - first;
        List<Arc> arcs = arcs(outline);
        assertThat(arcs)
                .extracting(Arc::radius)
                .satisfiesExactly(
                        r -> assertThat(r).isCloseTo(first, within(EXACT)),
                        r -> assertThat(r).isCloseTo(second, within(EXACT)));
        assertThat(arcs.get(0).direction(1).distance(new Point(0, 1))).isLessThan(EXACT);
        assertThat(arcs.get(1).direction(0).distance(new Point(0, 1))).isLessThan(EXACT);
        double end = base - first + second;
        // under each quarter a rectangle to its center's x, less a quarter disc
        double expected = base * first + end * second - Math.PI * (first * first + second * second) / 4;
        assertThat(outline.area()).isCloseTo(expected, within(EXACT));
        assertThat(curve(outline)).isCloseTo(Math.PI * height / 2, within(EXACT));
    }

    @Test
    void a_scotia_going_down_hollows_the_wood_too() {
        Walk walk = new Walk();
        walk.scotia(Way.DOWN, 1, Way.IN, 0.25, "m");
        assertThat(walk.at().distance(new Point(-0.25, -1))).isLessThan(EXACT);
        assertThat(walk.strokes())
                .allSatisfy(stroke ->
                        assertThat(((Arc) stroke.segment()).counterclockwise()).isFalse());
        assertThatThrownBy(() -> walk.scotia(Way.UP, 1, Way.OUT, 1, "m")).hasMessageContaining("wider than high");
    }

    @Test
    void an_astragal_is_a_half_round_between_fillets() {
        double d = 0.5;
        double f = 0.125;
        Outline outline = drawn(1, walk -> {
            walk.straight(Way.UP, 0.25, "face");
            walk.astragal(d, f, "astragal");
            walk.straight(Way.UP, 0.25, "face");
        });
        double high = d + 2 * f;
        assertThat(outline.area()).isCloseTo(0.5 + high * (1 + f) + Math.PI * d * d / 8, within(EXACT));
        assertThat(curve(outline)).isCloseTo(Math.PI * d / 2, within(EXACT));
        assertThat(outline.box()).isEqualTo(new Box(0, 0, 1 + f + d / 2, 0.5 + high));
    }

    @Test
    void a_torus_stands_on_the_line_the_walk_is_on() {
        Outline outline = drawn(1, walk -> {
            walk.straight(Way.UP, 0.25, "face");
            walk.halfRound(0.5, "bead");
            walk.halfRound(Way.UP, 0.25, "bead-2");
        });
        assertThat(outline.area()).isCloseTo(1 + Math.PI * (0.25 + 0.0625) / 8, within(EXACT));
        assertThat(outline.box().face()).isEqualTo(1.25);
    }

    @Test
    void chamfer_rabbet_and_groove_take_off_what_they_say() {
        double h = 0.3;
        double w = 0.2;
        Outline chamfer = drawn(1, walk -> {
            walk.straight(Way.UP, 1 - h, "face");
            walk.chamfer(Way.UP, h, Way.IN, w, "chamfer");
        });
        assertThat(chamfer.area()).isCloseTo(1 - h * w / 2, within(EXACT));
        assertThat(chamfer.straights("chamfer").get(0).length()).isCloseTo(Math.hypot(h, w), within(EXACT));
        Outline rabbet = drawn(1, walk -> {
            walk.straight(Way.UP, 1 - h, "face");
            walk.rabbet(Way.UP, h, Way.IN, w, "rabbet");
        });
        assertThat(rabbet.area()).isCloseTo(1 - h * w, within(EXACT));
        assertThat(rabbet.straights("rabbet")).hasSize(2);
        Outline quirked = drawn(1, walk -> {
            walk.straight(Way.UP, 0.4, "face");
            walk.groove(0.125, 0.0625, "quirk");
            walk.straight(Way.UP, 0.4, "face");
        });
        assertThat(quirked.area()).isCloseTo(0.925 - 0.125 * 0.0625, within(EXACT));
    }

    @Test
    void a_drip_under_a_soffit_and_a_relief_in_a_back_are_grooves_too() {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 2, "bottom");
        walk.groove(0.25, 0.125, "drip");
        walk.straight(Way.OUT, 0.5, "bottom");
        walk.straight(Way.UP, 1, "face");
        walk.levelToBack();
        walk.straight(Way.DOWN, 0.25, "back");
        walk.groove(0.5, 0.1, "relief");
        Outline outline = Outline.closed(walk.close());
        assertThat(outline.area()).isCloseTo(2.75 - 0.25 * 0.125 - 0.5 * 0.1, within(EXACT));
        assertThat(outline.straights("back")).hasSize(2);
    }

    @Test
    void a_rabbet_meets_inside_the_wood_on_the_way_down_the_back_too() {
        Walk walk = new Walk();
        walk.straight(Way.OUT, 1.5, "bottom");
        walk.straight(Way.UP, 1.25, "face");
        walk.straight(Way.IN, 0.8, "top");
        walk.rabbet(Way.DOWN, 0.75, Way.IN, 0.7, "rabbet");
        Outline outline = Outline.closed(walk.close());
        assertThat(outline.area()).isCloseTo(1.5 * 1.25 - 0.75 * 0.7, within(EXACT));
        assertThat(outline.box()).isEqualTo(new Box(0, 0, 1.5, 1.25));
    }

    @Test
    void a_walk_can_go_to_a_named_level_or_projection() {
        Walk walk = new Walk();
        walk.straightTo(Way.OUT, 1.25, "bottom");
        walk.straightTo(Way.UP, 0.5, "face");
        assertThat(walk.at()).isEqualTo(new Point(1.25, 0.5));
    }

    @Test
    void sizes_must_be_more_than_nothing() {
        Walk walk = new Walk();
        for (double size : List.of(0.0, -1.0, Double.NaN, Double.POSITIVE_INFINITY)) {
            assertThatThrownBy(() -> walk.straight(Way.OUT, size, "m")).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> walk.cove(Way.UP, 1, Way.OUT, size, "m")).hasMessageContaining("width");
            assertThatThrownBy(() -> walk.halfRound(size, "m")).hasMessageContaining("diameter");
            assertThatThrownBy(() -> walk.groove(1, size, "m")).hasMessageContaining("depth");
        }
        assertThat(walk.strokes()).isEmpty();
    }
}
