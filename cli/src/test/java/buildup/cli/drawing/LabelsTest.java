package buildup.cli.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.cli.command.Typed;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * In every view, no text lies on another or on a line, leaves the sheet, or is too small to read, and the lines to check
 * full size lie clear of all else. {@code
 * -Dbuildup.pictures=300} looks at so many stacks of chance, {@code -Dbuildup.pictures.first=72} from another one on, {@code
 * -Dbuildup.pictures.page=a4} on other paper than letter.
 */
class LabelsTest {
    private static final int STACKS = Integer.getInteger("buildup.pictures", 6);
    private static final int FIRST = Integer.getInteger("buildup.pictures.first", 1);

    static Stream<String> documents() {
        return Stream.concat(
                Stream.of("case", "cornice", "door-head", "mantel", "wainscot-cap")
                        .map(name -> Ran.read(Ran.demo("reading-room-" + name + ".yaml"))),
                Stream.of("cornice", "door-head", "cap")
                        .map(starter -> Ran.of("new", starter).out()));
    }

    static LongStream seeds() {
        return LongStream.range(FIRST, FIRST + STACKS);
    }

    @ParameterizedTest
    @MethodSource("documents")
    void texts_keep_clear_in_every_view_of_what_comes_with_the_program(String yaml) {
        keepClear(yaml);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void texts_keep_clear_in_every_view_of_a_stack_of_any_shape(long seed) {
        keepClear(AnyPicture.thrown(seed));
    }

    private static void keepClear(String yaml) {
        Map<String, Scene> views = AnyPicture.of(Typed.of(yaml));
        assertThat(LabelFaults.parted(views.values())).as(yaml).isEmpty();
        for (Map.Entry<String, Scene> view : views.entrySet()) {
            Scene scene = view.getValue();
            List<String> faults = Stream.of(LabelFaults.of(scene), LabelFaults.lines(scene), LabelFaults.checks(scene))
                    .flatMap(List::stream)
                    .toList();
            assertThat(faults).as("%s of%n%s", view.getKey(), yaml).isEmpty();
        }
    }

    /** A closed void 10 in wide and high would take the line that full size is checked by. */
    @Test
    void the_line_to_check_full_size_by_stands_in_no_void_however_large() {
        keepClear("""
                title: A hollow beam
                wood: red-oak
                pieces:
                  - { name: back, profile: board 3/4 x 10, back: 0, bottom: 0 }
                  - { name: front, profile: board 3/4 x 10, back: 10-3/4, bottom: 0 }
                  - { name: under, profile: board 3/4 x 11-1/2, lay: flat, back: 0, top: 0 }
                  - { name: over, profile: board 3/4 x 11-1/2, lay: flat, back: 0, bottom: 10 }
                """);
    }

    @Test
    void the_check_sees_a_text_on_a_line_on_another_text_off_the_sheet_and_too_small() {
        Path line = new Path(List.of(new Line(new Point(0, 1), new Point(4, 1))), false, LineStyle.DIMENSION);
        Label label = Label.centered(Drawn.FONT, "1-1/2", new Point(2, 1), 0.14, false);
        Label small = Label.centered(Drawn.FONT, "1-1/2", new Point(2, 3), 0.08, false);
        assertThat(LabelFaults.lines(new Scene("", "", 5, 5, List.of(line, label))))
                .hasSize(1);
        assertThat(LabelFaults.of(new Scene("", "", 5, 5, List.of(label, label.moved(0.1, 0)))))
                .hasSize(1);
        assertThat(LabelFaults.of(new Scene("", "", 5, 5, List.of(label, label.moved(0, 1)))))
                .isEmpty();
        assertThat(LabelFaults.of(new Scene("", "", 2, 5, List.of(label)))).hasSize(1);
        assertThat(LabelFaults.of(new Scene("", "", 5, 5, List.of(small)))).hasSize(1);
    }
}
