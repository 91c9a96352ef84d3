package buildup.cli.scene;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class LabelTest {
    /** Every character as wide as the size. */
    private static final TextMeasure SQUARE = (text, size) -> text.length() * size;

    private static void covers(Box box, double back, double bottom, double face, double top) {
        Offset<Double> near = Offset.offset(1e-9);
        assertThat(box.back()).isCloseTo(back, near);
        assertThat(box.bottom()).isCloseTo(bottom, near);
        assertThat(box.face()).isCloseTo(face, near);
        assertThat(box.top()).isCloseTo(top, near);
    }

    @Test
    void a_level_text_rises_over_its_baseline() {
        covers(Label.of(SQUARE, "abc", new Point(1, 2), 0.1, Label.Anchor.START).box(), 1, 1.979, 1.3, 2.069);
        covers(Label.of(SQUARE, "abc", new Point(1, 2), 0.1, Label.Anchor.END).box(), 0.7, 1.979, 1, 2.069);
    }

    @Test
    void an_upright_text_is_read_from_the_right() {
        Label label = new Label("abc", new Point(1, 2), 0.1, Label.Anchor.START, true, 0.3);
        covers(label.box(), 0.931, 2, 1.021, 2.3);
    }

    @Test
    void capitals_are_centered_where_asked() {
        Box level = Label.centered(SQUARE, "8", new Point(5, 5), 1, false).box();
        assertThat((level.bottom() + Label.DESCENT + level.top()) / 2).isCloseTo(5, Offset.offset(1e-9));
        Box upright = Label.centered(SQUARE, "8", new Point(5, 5), 1, true).box();
        assertThat((upright.back() + upright.face() - Label.DESCENT) / 2).isCloseTo(5, Offset.offset(1e-9));
    }
}
