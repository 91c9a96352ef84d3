package buildup.profiles.member;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Soundness;
import buildup.profiles.outline.Stroke;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class SprungTest {
    private static final double EXACT = 1e-12;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/spring.csv", useHeadersInDisplayName = true)
    void drop_and_projection_are_those_of_the_trade_tables(
            double spring, double width, double drop, double projection) {
        Sprung sprung = new Sprung(spring, width, 0.5625, 0, 0);
        assertThat(sprung.drop()).isCloseTo(drop, within(5e-5));
        assertThat(sprung.projection()).isCloseTo(projection, within(5e-5));
    }

    @Test
    void the_worked_crown_has_its_numbers() {
        // worked-example-a.md
        Sprung sharp = new Sprung(38, 3.25, 0.5625, 0, 0);
        assertThat(sharp.drop()).isCloseTo(2.5610, within(5e-5));
        assertThat(sharp.projection()).isCloseTo(2.0009, within(5e-5));
        Sprung square = new Sprung(38, 3.25, 0.5625, 0.25, 0.25);
        assertThat(square.drop()).isCloseTo(2.7150, within(5e-5));
        assertThat(square.projection()).isCloseTo(2.1979, within(5e-5));
        Box box = sharp.plain().box();
        assertThat(box.height()).isCloseTo(2.5610, within(5e-5));
        assertThat(sharp.plain().straights("ceiling-flat").get(0).to().x()).isCloseTo(5.5371 - 4.25, within(5e-5));
        assertThat(sharp.plain().straights("wall-flat").get(0).from().y()).isCloseTo(8.4137 - 7.5, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({"38, 0, 0", "38, 0.25, 0.25", "45, 0.125, 0.5", "52, 0.25, 0.125", "52, 0.5625, 0", "38, 0, 0.5625"})
    void the_outline_fills_its_drop_and_projection_with_flats_upright_and_level(double spring, double a, double b) {
        double w = 4.625;
        double t = 0.5625;
        double s = Math.toRadians(spring);
        Outline outline = new Sprung(spring, w, t, a, b).plain();
        assertThat(Soundness.faults(outline.strokes())).isEmpty();
        assertThat(outline.box().back()).isCloseTo(0, within(EXACT));
        assertThat(outline.box().bottom()).isCloseTo(0, within(EXACT));
        assertThat(outline.box().face()).isCloseTo(w * Math.sin(s) + a * Math.cos(s), within(EXACT));
        assertThat(outline.box().top()).isCloseTo(w * Math.cos(s) + b * Math.sin(s), within(EXACT));
        outline.straights("wall-flat").forEach(flat -> {
            assertThat(flat.from().x()).isCloseTo(0, within(EXACT));
            assertThat(flat.to().x()).isCloseTo(0, within(EXACT));
        });
        outline.straights("ceiling-flat")
                .forEach(flat -> assertThat(flat.from().y())
                        .isCloseTo(outline.box().top(), within(EXACT))
                        .isCloseTo(flat.to().y(), within(EXACT)));
        Line face = outline.straights("face").get(0);
        assertThat(face.length()).isCloseTo(w, within(EXACT));
        assertThat(Math.toDegrees(Math.atan2(
                        face.to().x() - face.from().x(),
                        face.to().y() - face.from().y())))
                .isCloseTo(spring, within(1e-9));
        Line back = outline.straights("back").get(0);
        assertThat(face.direction(0).cross(back.direction(0))).isCloseTo(0, within(EXACT));
        assertThat(face.direction(0).cross(back.from().minus(face.from()))).isCloseTo(t, within(EXACT));
        // the stick's rectangle less a triangle at each edge: right-angled, legs (t - a) and its share of the back
        double cutWall = (t - a) * (t - a) / Math.tan(s) / 2;
        double cutCeiling = (t - b) * (t - b) * Math.tan(s) / 2;
        assertThat(outline.area()).isCloseTo(w * t - cutWall - cutCeiling, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"38, 0.25, 0.125", "45, 0.25, 0.25", "52, 0, 0.25"})
    void end_for_end_is_the_stick_of_the_other_spring(double spring, double a, double b) {
        Sprung sprung = new Sprung(spring, 3.25, 0.5625, a, b);
        Outline other = Sprung.endForEnd(sprung.plain());
        Sprung twin = new Sprung(90 - spring, 3.25, 0.5625, b, a);
        assertThat(other.area()).isCloseTo(twin.plain().area(), within(EXACT));
        assertThat(other.box().face()).isCloseTo(twin.projection(), within(EXACT));
        assertThat(other.box().top()).isCloseTo(twin.drop(), within(EXACT));
        assertThat(other.box().back()).isCloseTo(0, within(EXACT));
        assertThat(other.box().bottom()).isCloseTo(0, within(EXACT));
        for (String member : twin.plain().members()) {
            Line expected = twin.plain().straights(member).get(0);
            Line met = other.straights(member).get(0);
            assertThat(met.from().distance(expected.from())).as(member).isLessThan(EXACT);
        }
        assertThat(Sprung.endForEnd(other).area()).isCloseTo(sprung.plain().area(), within(EXACT));
    }

    @Test
    void a_worked_face_keeps_its_shape_on_the_stick() {
        Sprung sprung = new Sprung(38, 2, 0.5625, 0.25, 0.25);
        Point from = new Point(0, 0.5);
        Point to = new Point(0, 1.5);
        // a shallow hollow: chord 1, rise 1/8 into the wood
        Arc hollow = new Arc(from, to, new Point(0.9375, 1), false);
        List<Stroke> face = List.of(new Stroke(new Line(Point.ORIGIN, from), "fillet"), new Stroke(hollow, "cove"));
        assertThat(sprung.holds(face)).isTrue();
        Outline outline = sprung.withFace(face);
        assertThat(outline.members()).startsWith("fillet", "cove", "face");
        double r = hollow.radius();
        double sweep = Math.abs(hollow.sweep());
        assertThat(outline.area())
                .isCloseTo(sprung.plain().area() - r * r * (sweep - Math.sin(sweep)) / 2, within(EXACT));
        assertThat(sprung.holds(List.of(new Stroke(new Line(Point.ORIGIN, new Point(0.1, 1)), "out"))))
                .isFalse();
        assertThat(sprung.holds(List.of(new Stroke(new Line(Point.ORIGIN, new Point(0, 2.1)), "long"))))
                .isFalse();
        assertThat(sprung.holds(List.of(new Stroke(new Line(Point.ORIGIN, new Point(-0.6, 1)), "deep"))))
                .isFalse();
    }

    @Test
    void why_a_stick_cannot_be_is_told_in_the_unit_of_whoever_asks() {
        Phrase edges = Sprung.fault(38, 3, 0.5, 0.625, 0).orElseThrow();
        assertThat(FigurePrinter.INCHES.print(edges))
                .isEqualTo("square edges of 5/8 and 0 do not fit a thickness of 1/2");
        assertThat(new FigurePrinter(LengthUnit.MILLIMETER).print(edges))
                .isEqualTo("square edges of 15.9- mm and 0 mm do not fit a thickness of 12.7 mm");
        assertThat(Sprung.fault(38, 3, 0.5, 0.25, 0.25)).isEmpty();
    }

    @Test
    void a_stick_that_cannot_be_is_refused() {
        assertThatThrownBy(() -> new Sprung(90, 3, 0.5, 0, 0)).hasMessageContaining("90");
        assertThatThrownBy(() -> new Sprung(Double.NaN, 3, 0.5, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Sprung(38, 0, 0.5, 0, 0)).hasMessageContaining("stick");
        assertThatThrownBy(() -> new Sprung(38, 3, 0.5, 0.6, 0)).hasMessageContaining("do not fit");
        assertThatThrownBy(() -> new Sprung(38, 3, 0.5, 0, -0.1)).hasMessageContaining("do not fit");
        assertThatThrownBy(() -> new Sprung(38, 1, 0.75, 0, 0)).hasMessageContaining("no back");
    }
}
