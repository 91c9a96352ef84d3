package buildup.engine.section.compose;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.Bench;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stacks wholly above the ceiling that is given, or below the floor. */
class RoomTest {
    private static final String RAIL = "name: rail, profile: board 0.75 in x 3 in, back: wall, bottom: ";

    private static Bench bench(String units, String space, String bottom) {
        return Bench.sound(units + "wood: check-wood\nspace: " + space + "\n" + Bench.list(RAIL + bottom));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "''; { floor: 0, ceiling: 8 }; 30; 8 read as inches: 8' meant?",
                "''; { ceiling: 7-1/2 }; 7-1/2; 7.5 read as inches: 7.5' meant?",
                "units: mm|; { ceiling: 244 }; 800 mm; 244 read as mm: 244 cm meant?",
                "units: mm|; { ceiling: 3 }; 800 mm; 3 read as mm: 3000 mm meant?",
                "units: cm|; { ceiling: 2.5 }; 80 cm; 2.5 read as cm: 250 cm meant?",
                "''; { ceiling: 2 }; 90; Heights count up from the datum: give that of the ceiling.",
                "''; { floor: 84 }; 0; Heights count up from the datum: -84 meant?",
                "''; { floor: 5 }; -6; Heights count up from the datum: give that of the floor."
            })
    void a_slip_in_the_height_of_the_room_is_one_problem_with_a_hint(
            String units, String space, String bottom, String cure) {
        Bench bench = bench(units.replace('|', '\n'), space, bottom);
        assertThat(bench.notices("outside-the-room")).singleElement().satisfies(notice -> {
            assertThat(notice.level()).isEqualTo(Level.PROBLEM);
            assertThat(cure(bench, notice)).isEqualTo(cure);
        });
        assertThat(bench.codes()).doesNotContain("overlap", "too-tall");
    }

    private static String cure(Bench bench, Notice notice) {
        LengthUnit unit = bench.stack().unit();
        return NoticeWords.in(unit).cure(notice);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{ floor: 0, ceiling: 8 }", "{ floor: 84, ceiling: 180 }"})
    void the_rest_is_answered_as_if_that_height_were_not_given(String space) {
        Bench slip = bench("", space, "30");
        Bench none = bench("", space.contains("84") ? "{ ceiling: 180 }" : "{ floor: 0 }", "30");
        assertThat(slip.walk()).isNotEmpty().isEqualTo(none.walk());
        assertThat(slip.contacts()).isEqualTo(none.contacts());
        assertThat(slip.section().skin()).hasSameSizeAs(none.section().skin());
    }

    @Test
    void a_stack_that_only_reaches_into_the_ceiling_is_too_tall_and_not_outside() {
        for (double bottom = 5; bottom < 8 - 1.0 / 200; bottom += 0.37) {
            Bench bench = bench("", "{ ceiling: 8 }", Double.toString(bottom));
            assertThat(bench.codes()).as("from %s", bottom).doesNotContain("outside-the-room");
            assertThat(bench.codes().contains("too-tall")).isEqualTo(bottom > 5);
        }
    }
}
