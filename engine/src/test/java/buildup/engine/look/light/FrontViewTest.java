package buildup.engine.look.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.look.light.FrontView.Strip;
import buildup.engine.look.view.Drawn;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Light;
import buildup.engine.section.sun.SunHour;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.shared.notice.Notices;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** A section as it looks straight from the front. */
class FrontViewTest {
    /** Without floor and ceiling: lamps hang where they please. */
    private final Section cornice = Bench.sound(
                    Bench.resource("/reference-cornice.yaml").replace("floor: -84, ceiling: 12, projection: 8, ", ""))
            .section();

    private static List<Strip> strips(Section section, Light light) {
        return FrontView.of(
                section, Lights.of(section, List.of(light), new Notices()).get(0));
    }

    private static Light distant(double altitude, double azimuth) {
        return new Light.Distant("light", altitude, azimuth, Optional.empty());
    }

    private static final Light LAMP = new Light.Lamp("lamp", new Point(60, 40), 0, Optional.empty());

    @Test
    void the_strips_cover_the_front_of_the_cornice_without_gap_or_overlap() {
        for (Light light : List.of(distant(35.264, 45), distant(0, 0), LAMP)) {
            List<Strip> strips = strips(cornice, light);
            assertThat(strips.get(0).low().y()).isCloseTo(0, within(1e-6));
            for (int i = 0; i + 1 < strips.size(); i++) {
                assertThat(strips.get(i + 1).low().y())
                        .as("strip " + (i + 1))
                        .isCloseTo(strips.get(i).high().y(), within(1e-6));
                assertThat(strips.get(i).high().y())
                        .isGreaterThan(strips.get(i).low().y());
            }
            assertThat(strips.get(strips.size() - 1).high().y()).isCloseTo(10.811, within(0.0005));
        }
    }

    @Test
    void every_tone_lies_between_black_and_white() {
        for (Light light : List.of(distant(35.264, 45), distant(0, 0), distant(80, -60), LAMP)) {
            assertThat(strips(cornice, light)).allMatch(strip -> strip.tone() >= 0 && strip.tone() <= 1);
        }
    }

    @Test
    void a_face_square_to_the_light_with_the_whole_room_before_it_has_tone_1() {
        Section board = Drawn.section(false, Outline.rectangle(new Box(0, 0, 1, 4)));
        assertThat(strips(board, distant(0, 0))).allMatch(strip -> strip.tone() > 1 - 1e-9);
    }

    @Test
    void a_face_off_square_loses_by_the_cosine_in_altitude_and_azimuth() {
        // Lambert's cosine law: an upright face under altitude h and azimuth z gets cos h cos z
        Section board = Drawn.section(false, Outline.rectangle(new Box(0, 0, 1, 4)));
        double square = strips(board, distant(0, 0)).get(0).tone();
        double dark = strips(board, distant(89.9, 0)).get(0).tone();
        double off = strips(board, distant(40, 60)).get(0).tone();
        double cosine = Math.cos(Math.toRadians(40)) * Math.cos(Math.toRadians(60));
        double least = Math.cos(Math.toRadians(89.9));
        assertThat((off - dark) / (square - dark)).isCloseTo((cosine - least) / (1 - least), within(1e-9));
    }

    @Test
    void each_strip_of_a_round_has_the_tone_of_its_middle() {
        // Lambert's cosine law at the middle of the strip; what the room gives is the same under both lights
        Point foot = new Point(1, 0);
        Point head = new Point(1, 2);
        Section nosing = Drawn.section(
                false,
                Outline.closed(List.of(
                        new Stroke(new Arc(foot, head, new Point(1, 1), true), "round"),
                        new Stroke(new Line(head, new Point(0, 2)), "top"),
                        new Stroke(new Line(new Point(0, 2), new Point(0, 0)), "back"),
                        new Stroke(new Line(new Point(0, 0), foot), "bottom"))));
        List<Strip> level = strips(nosing, distant(0, 0));
        List<Strip> higher = strips(nosing, distant(30, 0));
        int compared = 0;
        for (Strip strip : level) {
            assertThat(strip.low().distance(strip.high())).isLessThan(1.0 / 31);
            Optional<Strip> other = higher.stream()
                    .filter(one -> one.lit() == Band.Lit.LIT)
                    .filter(one -> one.low().equals(strip.low()) && one.high().equals(strip.high()))
                    .findFirst();
            if (other.isPresent()) {
                compared++;
                double low = Math.atan2(strip.low().y() - 1, strip.low().x() - 1);
                double high = Math.atan2(strip.high().y() - 1, strip.high().x() - 1);
                double middle = (low + high) / 2;
                double drop = Math.cos(middle) - Math.cos(middle - Math.toRadians(30));
                assertThat(strip.tone() - other.get().tone())
                        .as("at %s", strip.low())
                        .isCloseTo((1 - FrontView.ROOM_SHARE) * drop, within(1e-9));
            }
        }
        assertThat(compared).isGreaterThan(60);
    }

    @Test
    void a_board_that_stands_free_before_another_takes_its_place_between_the_strips_of_that_one() {
        Section boards = Drawn.section(
                false, Outline.rectangle(new Box(0, 0, 1, 4)), Outline.rectangle(new Box(2, 1, 3, 2.125)));
        List<Strip> strips = strips(boards, distant(0, 0));
        // each an eighth high: 8 and 15 of the face behind, below and above the 9 of the board before it
        assertThat(strips).hasSize(32);
        for (int i = 0; i < strips.size(); i++) {
            assertThat(strips.get(i).low().y()).as("strip %s", i).isCloseTo(i / 8.0, within(1e-9));
            assertThat(strips.get(i).high().y()).as("strip %s", i).isCloseTo((i + 1) / 8.0, within(1e-9));
            assertThat(strips.get(i).low().x()).as("strip %s", i).isEqualTo(i >= 8 && i < 17 ? 3 : 1);
        }
    }

    @Test
    void a_face_under_a_soffit_grows_lighter_strip_by_strip_away_from_it() {
        Bench eaves = Bench.loose(
                "name: frieze, profile: board 3/4 x 4, back: wall, bottom: datum",
                "name: soffit, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: frieze.top");
        List<Strip> frieze = strips(eaves.section(), distant(0, 0)).stream()
                .filter(strip -> strip.high().y() < 4 + 1e-9)
                .toList();
        assertThat(frieze).as("an eighth of an inch each").hasSize(32);
        assertThat(frieze.stream().map(Strip::tone).distinct().count()).isGreaterThan(10);
        for (int i = 0; i + 1 < frieze.size(); i++) {
            assertThat(frieze.get(i).tone())
                    .isGreaterThanOrEqualTo(frieze.get(i + 1).tone());
            assertThat(frieze.get(i).high().y() - frieze.get(i).low().y()).isCloseTo(0.125, within(1e-9));
        }
    }

    @Test
    void a_quirk_is_darker_than_the_face_beside_it() {
        Bench quirked =
                Bench.loose("name: board, section: [out 1, up 2, quirk 1/4 x 1/2, up 2], back: wall, bottom: datum");
        List<Strip> strips = strips(quirked.section(), distant(35.264, 45));
        Predicate<Strip> inQuirk = strip -> strip.low().x() < 0.75;
        double brightestInside =
                strips.stream().filter(inQuirk).mapToDouble(Strip::tone).max().orElseThrow();
        double darkestBeside = strips.stream()
                .filter(inQuirk.negate())
                .mapToDouble(Strip::tone)
                .min()
                .orElseThrow();
        assertThat(brightestInside).isLessThan(darkestBeside);
    }

    @Test
    void what_lies_in_shadow_is_darker_than_the_same_face_in_the_light() {
        List<Strip> frieze = strips(cornice, distant(35.264, 45)).stream()
                .filter(strip -> cornice.name(
                                cornice.members().get(strip.member()).body())
                        .equals("frieze"))
                .toList();
        double lit = frieze.stream()
                .filter(strip -> strip.lit() == Band.Lit.LIT)
                .mapToDouble(Strip::tone)
                .min()
                .orElseThrow();
        double cast = frieze.stream()
                .filter(strip -> strip.lit() == Band.Lit.CAST)
                .mapToDouble(Strip::tone)
                .max()
                .orElseThrow();
        assertThat(cast).isLessThan(lit);
    }

    @Test
    void the_sun_tones_as_the_distant_light_that_it_is_at_its_hour() {
        SunHour hour = new SunHour(40, OptionalDouble.empty(), LocalDate.of(2025, 12, 21), 14, OptionalDouble.empty());
        Light.Sun sun = new Light.Sun("sun", hour, 180, OptionalDouble.empty(), Optional.empty());
        List<Double> bySun = strips(cornice, sun).stream().map(Strip::tone).toList();
        List<Double> byLight =
                strips(cornice, Sunlight.distant(sun)).stream().map(Strip::tone).toList();
        assertThat(bySun).isEqualTo(byLight);
    }

    @Test
    void the_words_for_light_are_lit_shade_and_cast() {
        assertThat(List.of(Band.Lit.values())).extracting(Band.Lit::word).containsExactly("lit", "shade", "cast");
    }
}
