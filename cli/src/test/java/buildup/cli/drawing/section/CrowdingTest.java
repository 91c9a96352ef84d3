package buildup.cli.drawing.section;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.drawing.AnyPicture;
import buildup.cli.drawing.LabelFaults;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.profiles.outline.Box;
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

    /** As a viewer sets it that has another font and squeezes no text. */
    @ParameterizedTest
    @MethodSource("stacks")
    void the_columns_of_the_list_stay_apart_in_a_font_that_is_wider_by_a_sixth(String yaml) {
        List<Label> texts = Drawn.of(yaml).scene().leaves().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .map(text -> new Label(
                        text.text(), text.at(), text.size(), text.anchor(), text.upright(), 1.16 * text.width()))
                .toList();
        Label head = texts.stream()
                .filter(text -> text.text().equals("projection"))
                .findFirst()
                .orElseThrow();
        double right = head.box().face();
        List<Label> list = texts.stream()
                .filter(text -> !text.upright()
                        && text.at().y() <= head.at().y()
                        && text.box().face() <= right + 1e-6)
                .toList();
        assertThat(list).hasSizeGreaterThan(6);
        for (int i = 0; i < list.size(); i++) {
            Box box = list.get(i).box();
            assertThat(list.subList(i + 1, list.size()))
                    .as(list.get(i).text())
                    .noneMatch(other -> Boxes.overlap(box, other.box()));
        }
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
