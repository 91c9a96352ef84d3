package buildup.engine.room.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.shared.figure.FigurePrinter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a piece of a stack lies on the saw. */
class CourseTest {
    private static Course course(String keys) {
        return Course.of(Bench.loose("name: it, " + keys + ", back: 0, bottom: 0")
                        .section())
                .get(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "profile: board 3/4 x 6 | 0 | board 3/4 x 6",
                "profile: board 3/4 x 6, lay: flat | 90 | board 3/4 x 6",
                "profile: board 3/4 x 6, turn: -30 | 30 | board 3/4 x 6",
                "profile: board 3/4 x 6, turn: 30 | -30 | board 3/4 x 6",
                "profile: check-crown 9/16 x 3-1/4 | 38 | check-crown 9/16 x 3-1/4",
                "'profile: check-crown 9/16 x 3-1/4, spring: 52' | 52 | check-crown 9/16 x 3-1/4",
                "'profile: check-crown 9/16 x 3-1/4, flip: over' | -38 | check-crown 9/16 x 3-1/4",
                "profile: check-bed 1-1/4 x 1-3/8 | 0 | check-bed 1-1/4 x 1-3/8",
                "'section: [out 1, cove 1/2]' | 0 | section of it",
                "'section: [out 8, ovolo 1/2, up 1/2]' | 90 | section of it",
                "'section: [out 2, up 1]' | 90 | board 1 x 2",
                "'section: [out 1, up 2]' | 0 | board 1 x 2"
            })
    void the_lean_of_the_flat_is_the_spring_of_the_cut(String keys, double spring, String stock) {
        Course course = course(keys);
        assertThat(course.spring()).isCloseTo(spring, within(1e-9));
        assertThat(FigurePrinter.INCHES.print(course.stock())).isEqualTo(stock);
        assertThat(course.lies()).isEqualTo(spring == 90);
        assertThat(course.sprung()).isEqualTo(spring != 0 && spring != 90);
    }
}
