package buildup.shared.length;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AngleTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "38|38",
                "38°|38",
                "38 deg|38",
                "38 degrees|38",
                "45.5|45.5",
                "35,264|35.264",
                "-12.25|-12.25",
                "−12|-12",
                "22-1/2°|22.5",
                "22½°|22.5",
                "360|360",
                ".5|0.5",
                "0|0"
            })
    void an_angle_is_read_in_degrees(String written, double degrees) {
        assertThat(Angle.read(written)).contains(Angle.degrees(degrees));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "steep", "38 rad", "38'", "361", "1e308", "NaN", "inf", "1/0", "38 38"})
    void anything_else_is_no_angle(String written) {
        assertThat(Angle.read(written)).isEmpty();
    }

    @Test
    void half_a_turn_is_pi() {
        assertThat(Angle.degrees(180).toRadians()).isEqualTo(Math.PI, within(1e-15));
        assertThat(Angle.degrees(180).toDegrees()).isEqualTo(180);
    }

    @Test
    void angles_are_values() {
        assertThat(Angle.degrees(-0.0)).isEqualTo(Angle.degrees(0)).hasSameHashCodeAs(Angle.degrees(0));
        assertThat(Angle.degrees(38))
                .isLessThan(Angle.degrees(52))
                .isNotEqualTo("38")
                .hasToString("38.0°");
        assertThatThrownBy(() -> Angle.degrees(Double.NaN)).hasMessage("An angle must be finite, not NaN");
    }
}
