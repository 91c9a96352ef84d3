package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.room.run.Saw.Flat;
import buildup.engine.room.run.Saw.Hand;
import buildup.engine.room.run.Saw.Setting;
import buildup.engine.room.run.Saw.Swing;
import buildup.profiles.outline.Box;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Compound miter of reference/round-the-corner.md: its table, its identities, and the cut turned in space. */
class SawTest {
    private static final Offset<Double> FOUR_PLACES = within(5e-5);
    private static final double[] CORNERS = {60, 75, 85, 88, 89, 90, 91, 92, 95, 108, 120, 135, 150};
    private static final double[] SPRINGS = {38, 45, 52};

    @ParameterizedTest
    @CsvSource({
        "60, 46.8393, 43.0344, 50.7685, 37.7612, 53.7710, 32.2205, 60",
        "75, 38.7417, 38.6947, 42.6612, 34.1240, 45.7619, 29.2379, 52.5",
        "85, 33.8962, 35.5197, 37.6564, 31.4218, 40.6943, 26.9950, 47.5",
        "88, 32.5190, 34.5307, 36.2127, 30.5740, 39.2148, 26.2871, 46",
        "89, 32.0672, 34.1976, 35.7372, 30.2878, 38.7256, 26.0478, 45.5",
        "90, 31.6190, 33.8629, 35.2644, 30.0000, 38.2385, 25.8068, 45",
        "91, 31.1743, 33.5266, 34.7944, 29.7105, 37.7533, 25.5642, 44.5",
        "92, 30.7331, 33.1887, 34.3270, 29.4193, 37.2702, 25.3201, 44",
        "95, 29.4295, 32.1659, 32.9410, 28.5362, 35.8323, 24.5782, 42.5",
        "108, 24.0992, 27.5926, 27.1915, 24.5588, 29.7921, 21.2155, 36",
        "120, 19.5679, 23.2040, 22.2077, 20.7048, 24.4636, 17.9285, 30",
        "135, 14.3064, 17.5512, 16.3249, 15.6999, 18.0769, 13.6272, 22.5",
        "150, 9.3675, 11.7682, 10.7286, 10.5453, 11.9227, 9.1689, 15"
    })
    void the_table_of_compound_miters_holds(
            double corner, double m38, double b38, double m45, double b45, double m52, double b52, double nested) {
        is(Saw.flat(corner, 38), m38, b38);
        is(Saw.flat(corner, 45), m45, b45);
        is(Saw.flat(corner, 52), m52, b52);
        assertThat(Saw.nested(corner)).isEqualTo(nested);
    }

    private static void is(Flat flat, double miter, double bevel) {
        assertThat(flat.miter()).isCloseTo(miter, FOUR_PLACES);
        assertThat(flat.bevel()).isCloseTo(bevel, FOUR_PLACES);
    }

    /** A published geometry page works this one out; the reference file says which. */
    @Test
    void thirty_eight_degrees_at_an_octagon_is_as_published() {
        assertThat(Saw.flat(135, 38).miter()).isCloseTo(14.30638, within(5e-6));
        assertThat(Saw.flat(135, 38).bevel()).isCloseTo(17.55124, within(5e-6));
    }

    @Test
    void both_identities_hold_at_every_corner_and_spring() {
        for (double corner = 5; corner < 180; corner += 2.5) {
            for (double spring = 5; spring < 90; spring += 2.5) {
                Flat flat = Saw.flat(corner, spring);
                double m = Math.toRadians(flat.miter());
                double b = Math.toRadians(flat.bevel());
                assertThat(Math.cos(m) * Math.cos(b)).isCloseTo(Math.sin(Math.toRadians(corner / 2)), within(1e-12));
                assertThat(Math.tan(b)).isCloseTo(Math.sin(m) / Math.tan(Math.toRadians(spring)), within(1e-9));
            }
        }
    }

    @Test
    void a_corner_from_the_other_side_turns_both_signs() {
        for (double corner : CORNERS) {
            for (double spring : SPRINGS) {
                Flat one = Saw.flat(corner, spring);
                Flat other = Saw.flat(360 - corner, spring);
                assertThat(other.miter()).isCloseTo(-one.miter(), within(1e-9));
                assertThat(other.bevel()).isCloseTo(-one.bevel(), within(1e-9));
            }
        }
    }

    @Test
    void the_sine_in_place_of_the_cosine_agrees_at_a_square_corner_and_nowhere_else() {
        for (double corner : CORNERS) {
            for (double spring : SPRINGS) {
                double wrong = Math.toDegrees(
                        Math.asin(Math.cos(Math.toRadians(spring)) * Math.sin(Math.toRadians(corner / 2))));
                if (corner == 90) {
                    assertThat(Saw.flat(corner, spring).bevel()).isCloseTo(wrong, within(1e-9));
                } else {
                    assertThat(Math.abs(Saw.flat(corner, spring).bevel() - wrong))
                            .isGreaterThan(0.2);
                }
            }
        }
    }

    @Test
    void flat_on_the_wall_is_all_bevel_and_flat_on_the_ceiling_all_miter() {
        for (double corner : CORNERS) {
            is(Saw.flat(corner, 0), 0, 90 - corner / 2);
            is(Saw.flat(corner, 90), 90 - corner / 2, 0);
        }
    }

    @Test
    void a_straight_wall_wants_a_square_cut() {
        is(Saw.flat(180, 38), 0, 0);
        is(Saw.flat(179.9999, 38), 0, 0);
        assertThat(Saw.nested(180.0, 38, Hand.LEFT).swing()).isEqualTo(Swing.NONE);
    }

    /**
     * The stick is turned from the wall onto the saw. In space: x right, y away from the user to the fence, z up. The
     * blade is tilted to the left by the bevel, its line swung by the miter.
     */
    @ParameterizedTest
    @ValueSource(doubles = {38, 45, 52, -38, 0})
    void flat_on_the_table_the_blade_lies_in_the_plane_of_the_corner(double spring) {
        for (double corner : new double[] {30, 60, 89, 90, 120, 150, 210, 240, 270, 300}) {
            for (Hand hand : Hand.values()) {
                Setting setting = Saw.flat(corner, spring, hand);
                double s = Math.toRadians(spring);
                double side = setting.edge().equals("top") ? 1 : -1;
                // along the run, out, up: as the stick lies, face up, the named edge at the fence
                double[] out = {0, side * Math.sin(s), Math.cos(s)};
                double[] along = {side, 0, 0};
                same(cut(corner, hand, along, out), setting);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {38, 45, 52, 0, 90, -38})
    void against_the_fence_the_blade_stands_in_the_plane_of_the_corner(double spring) {
        for (double corner : new double[] {30, 60, 89, 90, 120, 150, 210, 240, 270, 300}) {
            for (Hand hand : Hand.values()) {
                Setting setting = Saw.nested(corner, spring, hand);
                boolean upsideDown = FigurePrinter.INCHES.print(setting.words()).startsWith("upside down");
                assertThat(upsideDown).isEqualTo(spring > 0 && spring < 90);
                double[] along = {upsideDown ? -1 : 1, 0, 0};
                double[] out = {0, -1, 0};
                same(cut(corner, hand, along, out), setting);
                assertThat(setting.bevel()).isZero();
            }
        }
    }

    @Test
    void a_board_that_lies_is_cut_as_it_lies() {
        assertThat(Saw.flat(120, 90, Hand.RIGHT)).isEqualTo(Saw.nested(120, 90, Hand.RIGHT));
        assertThat(FigurePrinter.INCHES.print(Saw.flat(120, 90, Hand.RIGHT).words()))
                .isEqualTo("top up, back edge at the fence; miter 30° right, bevel 0°; keep the left");
    }

    /** A scarf through the thickness: the same planes in space, for what stands, what lies and what runs round an opening. */
    @Test
    void both_halves_of_a_scarf_lie_in_one_plane_however_the_piece_lies() {
        scarf(course(0, false), Map.of("top", 1, "bottom", -1));
        scarf(course(90, false), Map.of("back", 1, "front", -1));
        // seen from the outer edge, the inner one at the fence, left is right
        scarf(course(90, true), Map.of("inner", -1, "outer", 1));
    }

    private static void scarf(Course course, Map<String, Integer> ways) {
        for (Hand hand : Hand.values()) {
            boolean longSideUp = hand == Hand.RIGHT;
            Setting setting = Saw.scarf(longSideUp, hand, course);
            double[] along = {ways.get(setting.edge()), 0, 0};
            double[] up = {0, 0, 1};
            same(cut(longSideUp ? 90 : 270, hand, along, up), setting);
            assertThat(setting.bevel()).isCloseTo(45, within(1e-9));
            assertThat(FigurePrinter.INCHES.print(setting.position())).contains(setting.edge() + " edge at the fence");
        }
    }

    private static Course course(double spring, boolean turned) {
        Box box = new Box(0, 0, 0.75, 3.5);
        return new Course("rail", 0, true, box, spring, true, Phrase.of("1x4"), "board", 0.75, 3.5, turned);
    }

    /** The outward normal of the cut: at the right end the wood ends at length = projection / tan(corner / 2). */
    private static double[] cut(double corner, Hand hand, double[] along, double[] out) {
        double slope = 1 / Math.tan(Math.toRadians(corner / 2));
        double end = hand == Hand.RIGHT ? 1 : -1;
        double[] normal = new double[3];
        for (int i = 0; i < 3; i++) {
            normal[i] = (end * along[i] - slope * out[i]) / Math.sqrt(1 + slope * slope);
        }
        return normal;
    }

    private static void same(double[] cut, Setting setting) {
        double m = Math.toRadians(setting.swing() == Swing.LEFT ? -setting.miter() : setting.miter());
        double b = Math.toRadians(setting.bevel());
        // the blade's normal to the right; what is kept on the left ends there
        double[] blade = {Math.cos(b) * Math.cos(m), Math.cos(b) * Math.sin(m), Math.sin(b)};
        double side = setting.keep() == Hand.LEFT ? 1 : -1;
        for (int i = 0; i < 3; i++) {
            assertThat(cut[i]).as(FigurePrinter.INCHES.print(setting.words())).isCloseTo(side * blade[i], within(1e-9));
        }
    }

    @Test
    void the_words_of_a_setting_say_it_all() {
        assertThat(FigurePrinter.INCHES.print(Saw.flat(90, 38, Hand.RIGHT).words()))
                .isEqualTo("flat, face up, bottom edge at the fence; miter 31.6° left, bevel 33.9°; keep the right");
        assertThat(FigurePrinter.INCHES.print(Saw.nested(270, 38, Hand.LEFT).words()))
                .isEqualTo("upside down, wall side at the fence, ceiling side on the table; miter 45° left, bevel 0°;"
                        + " keep the left");
    }

    @Test
    void a_back_cut_of_five_degrees_takes_a_sixteenth_off_the_back_of_a_three_quarter_board() {
        assertThat(Saw.backCut(0.75)).isCloseTo(0.75 * Math.tan(Math.toRadians(5)), within(1e-12));
        assertThat(Saw.backCut(0.75)).isCloseTo(1.0 / 16, within(0.004));
    }
}
