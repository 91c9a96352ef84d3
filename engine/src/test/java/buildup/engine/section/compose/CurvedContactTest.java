package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A rod of a quarter round in the hollow of a bed that is hollow by a quarter too, both round the point 1-1/4 out. What they
 * share is the angle that both have times the radius.
 */
class CurvedContactTest {
    private static final String BED = "name: bed, profile: check-bed 1-1/4 x 1-3/8, back: wall, bottom: datum";

    private static String rod(double radius, String place) {
        return String.format(
                Locale.ROOT, "name: rod, section: [out %1$.4f, ovolo in %1$.4f], flip: ends, %2$s", radius, place);
    }

    private static Contact arc(Bench bench) {
        return bench.section().contacts().stream()
                .filter(contact -> contact.length() > 0)
                .findFirst()
                .orElseThrow(() -> new AssertionError(bench.contacts().toString()));
    }

    /** The hollow has the angles from 90 to 180 degrees, the rod as many, turned. */
    @ParameterizedTest
    @CsvSource({
        "0, face: 1-1/4, bottom: 0, 90",
        "-30, face: 1-1/4, bottom: -1/2, 60",
        "-60, face: 1-1/4, bottom: -0.8660254, 30",
        "30, face: 1-3/4, bottom: 0, 60",
        "60, face: 2.1160254, bottom: 0, 30"
    })
    void a_turned_round_touches_as_far_as_both_go(int turn, String x, String y, double degrees) {
        String rod = rod(1, "turn: " + turn + ", " + x + ", " + y).replace("turn: 0, ", "");
        for (Bench bench : new Bench[] {Bench.loose(BED, rod), Bench.loose(rod, BED)}) {
            Contact contact = arc(bench);
            assertThat(contact.length()).isEqualTo(Math.toRadians(degrees), within(1e-6));
            assertThat(contact.gap()).isEqualTo(0, within(1e-9));
            assertThat(contact.from().distance(contact.to()))
                    .as("its chord")
                    .isEqualTo(2 * Math.sin(Math.toRadians(degrees) / 2), within(1e-6));
        }
    }

    /** A rod that is smaller leaves air all along, one that is larger bites all along; either may have been put up first. */
    @ParameterizedTest
    @CsvSource({"0.997, 0.003", "1.003, -0.003"})
    void the_air_along_a_round_is_the_difference_of_the_radii(double radius, double air) {
        String rod = rod(radius, "face: 1-1/4, bottom: 0");
        for (Bench bench : new Bench[] {Bench.loose(BED, rod), Bench.loose(rod, BED)}) {
            assertThat(arc(bench).gap()).isEqualTo(air, within(1e-6));
            assertThat(bench.notices("overlap-thinner-than-touching")).hasSize(air < 0 ? 1 : 0);
        }
    }

    @Test
    void a_thin_lap_is_told_with_how_much_it_is_and_the_piece_that_makes_it() {
        Bench bench = Bench.loose(
                "name: low, profile: board 1 x 2, back: 0, bottom: 0",
                "name: high, profile: board 1 x 2, back: 0, bottom: low.top - 0.003");
        assertThat(bench.notices("overlap-thinner-than-touching"))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.piece()).contains("high");
                    assertThat(notice.amount().orElseThrow().amount()).isEqualTo(0.003, within(1e-9));
                });
        Bench ceiling = Bench.in(
                "{ ceiling: 1.998, wall: { solid: no } }", "name: low, profile: board 1 x 2, back: 0, bottom: 0");
        assertThat(ceiling.notices("overlap-thinner-than-touching"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.piece()).contains("low"));
    }
}
