package buildup.cli.drawing.section;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.drawing.AnyPicture;
import buildup.cli.drawing.LabelFaults;
import buildup.cli.scene.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** No text meets another text, a line or wood that it does not name; nothing leaves the sheet. */
class CrowdingTest {
    static Stream<String> stacks() {
        return Stream.of(Drawn.CORNICE, Drawn.BASE, Drawn.ONE, Drawn.NAMES, courses(20, new Random(7)));
    }

    @ParameterizedTest
    @MethodSource("stacks")
    void texts_keep_clear(String yaml) {
        keepsClear(Drawn.of(yaml).scene(), yaml);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24})
    void texts_keep_clear_in_a_stack_of_any_shape(long seed) {
        String yaml = AnyPicture.thrown(seed);
        Drawn drawn = Drawn.of(yaml, java.util.Optional.of("arch-e"));
        keepsClear(drawn.scene(), "seed " + seed + "\n" + yaml);
    }

    private static void keepsClear(Scene scene, String about) {
        List<String> faults = new ArrayList<>(LabelFaults.of(scene));
        faults.addAll(LabelFaults.lines(scene));
        faults.addAll(LabelFaults.wood(scene));
        assertThat(faults).as(about).isEmpty();
    }

    /** Plain courses, one on the next. */
    private static String courses(int count, Random random) {
        StringBuilder yaml = new StringBuilder("title: Courses\nwood: red-oak\npieces:\n");
        String under = "datum";
        for (int i = 1; i <= count; i++) {
            yaml.append(String.format(
                    Locale.ROOT,
                    "  - { name: course %d, section: [out %d/16, up %d/16], back: wall, bottom: %s }\n",
                    i,
                    4 + random.nextInt(80),
                    2 + random.nextInt(16),
                    under));
            under = "course " + i + ".top";
        }
        return yaml.toString();
    }
}
