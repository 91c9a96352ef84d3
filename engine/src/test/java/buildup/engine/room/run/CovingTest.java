package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coves of reference/round-the-corner.md. */
class CovingTest {
    @ParameterizedTest
    @CsvSource({
        "10, 0.5, 1.5, 4.35890, 20.1283, 18.4771, 0.5921, 0.8125, 0.37981, 0.50522",
        "10, 0.5, 3.0, 4.35890, 43.4915, 41.8266, 2.3684, 2.5000, 0.37981, 1.01045",
        "10, 0.625, 3.5, 4.84123, 46.2991, 44.8001, 2.6133, 2.7625, 0.47630, 1.47760",
        "10, 0.75, 3.0, 5.26783, 34.7150, 33.3445, 1.6216, 1.8750, 0.57345, 1.52405",
        "10, 1.0, 4.0, 6.00000, 41.8103, 40.6057, 2.2222, 2.5000, 0.76970, 2.72502",
        "12, 1.0, 5.0, 6.63325, 48.9187, 47.8275, 3.4091, 3.6250, 0.76628, 3.39318"
    })
    void the_table_of_coves_holds(
            double blade,
            double depth,
            double width,
            double chord,
            double thin,
            double kerfed,
            double bottom,
            double circular,
            double atQuarter,
            double area) {
        Coving cove = new Coving("cove", width, depth, blade, 0);
        assertThat(cove.chord()).isCloseTo(chord, within(5e-6));
        assertThat(cove.angle()).isCloseTo(thin, within(5e-5));
        assertThat(new Coving("cove", width, depth, blade, 0.125).angle()).isCloseTo(kerfed, within(5e-5));
        assertThat(cove.bottomRadius()).isCloseTo(bottom, within(5e-5));
        assertThat(cove.circularRadius()).isCloseTo(circular, within(5e-5));
        assertThat(heightAt(cove, width / 4)).isCloseTo(atQuarter, within(5e-6));
        assertThat(cove.area()).isCloseTo(area, within(5e-6));
    }

    @Test
    void the_hollow_is_as_deep_as_the_blade_in_the_middle_and_as_wide_as_it_was_asked_for() {
        Coving cove = new Coving("cove", 3, 0.75, 10, 0);
        assertThat(heightAt(cove, 0)).isCloseTo(0.75, within(1e-12));
        assertThat(heightAt(cove, 1.5)).isCloseTo(0, within(1e-9));
        assertThat(heightAt(cove, 1.49)).isPositive();
        assertThat(heightAt(cove, 9)).isZero();
    }

    /** Of the hollow over the table so far from its middle, thin blade: an ellipse cut off by the table; 0 beyond it. */
    private static double heightAt(Coving cove, double fromMiddle) {
        double radius = cove.diameter() / 2;
        double across = fromMiddle / (radius * Math.sin(Math.toRadians(cove.angle())));
        return Math.max(0, radius * Math.sqrt(Math.max(0, 1 - across * across)) - (radius - cove.depth()));
    }

    /** Independent of the formula: the disc's own edges, thick as the kerf, looked at along the fence. */
    @Test
    void a_thick_blade_seen_along_the_fence_is_as_wide_as_the_cove() {
        Coving cove = new Coving("cove", 3, 0.75, 10, 0.125);
        double a = Math.toRadians(cove.angle());
        double half = Math.sqrt(25 - 4.25 * 4.25);
        double widest = 0;
        for (double side : new double[] {-0.0625, 0.0625}) {
            widest = Math.max(widest, half * Math.sin(a) + side * Math.cos(a));
        }
        assertThat(2 * widest).isCloseTo(3, within(1e-9));
    }

    @Test
    void a_pass_takes_a_sixteenth() {
        assertThat(new Coving("cove", 3, 0.75, 10, 0).passes()).isEqualTo(12);
        assertThat(new Coving("cove", 3, 0.76, 10, 0).passes()).isEqualTo(13);
        assertThat(new FigurePrinter(LengthUnit.MILLIMETER).print(Coving.CAUTION))
                .contains("about 1.6 mm a pass", "clamp", "guard", "manual");
    }

    @Test
    void a_cove_is_read_with_a_ten_inch_blade_and_an_eighth_of_kerf_unless_it_says_otherwise() {
        assertThat(Planned.coving("table-saw-cove: [{ width: 3, depth: 3/4 }]\n")
                        .covings())
                .containsExactly(new Coving("cove 1", 3, 0.75, 10, 0.125));
        assertThat(Planned.coving("table-saw-cove: [{ name: c, width: 3, depth: 3/4, blade: 12, kerf: 0 }]\n")
                        .covings())
                .containsExactly(new Coving("c", 3, 0.75, 12, 0));
        assertThat(Planned.coving("").covings()).isEmpty();
    }

    @Test
    void what_no_blade_cuts_is_refused_with_what_would_do() {
        refused(
                "width: 5, depth: 1/2",
                "cove-beyond-the-blade",
                "'cove 1' is 5 wide; at that depth the blade is 4-5/16+ long.",
                "Make it 11/16 deep, or narrower.");
        refused("width: 11, depth: 1/2", "cove-beyond-the-blade", "'cove 1' is 11 wide", "Take a larger blade");
        refused("width: 3, depth: 4", "cove-beyond-the-blade", "'cove 1' is 4 deep", "Make it 3-1/2 or less");
        refused("width: 3", "missing-key", "A cove over the blade has no depth.", "Add 'depth:'.");
        refused("width: 3, depth: 0", "thickness-zero-or-negative", "The depth of a cove over the blade is 0.", "more");
        refused("width: 3, depth: 1/2, kerf: -1/8", "negative-kerf", "A kerf cannot be -1/8 wide.", "Measure the cut");
    }

    private static void refused(String keys, String code, String message, String cure) {
        Planned.Coves asked = Planned.coving("table-saw-cove: [{ " + keys + " }]\n");
        assertThat(asked.covings()).isEmpty();
        List<Notice> notices = asked.notices();
        assertThat(notices).hasSize(1);
        assertThat(notices.get(0).level()).isEqualTo(Level.REFUSAL);
        assertThat(notices.get(0).code()).isEqualTo(code);
        assertThat(NoticeWords.INCHES.message(notices.get(0))).startsWith(message.replace("5/16+", "5/16"));
        assertThat(NoticeWords.INCHES.cure(notices.get(0))).contains(cure);
        assertThat(notices.get(0).mark()).isPresent();
    }
}
