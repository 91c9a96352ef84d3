package buildup.profiles.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notices;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Of a drawing that has layers for what is written on it, the outline is what is drawn. */
class AnnotationLayersTest {
    private static Trail box(double left, double wide, double high, String layer) {
        return new Trail(
                List.of(
                        new Point(left, 0),
                        new Point(left + wide, 0),
                        new Point(left + wide, high),
                        new Point(left, high)),
                true,
                List.of(layer));
    }

    private static Traced traced(Notices notices, Trail... trails) {
        return Tracer.trace(List.of(trails), TracingOptions.PLAIN.in(LengthUnit.INCH), notices)
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"NOTES", "A-ANNO-TEXT", "Dim 2", "title block"})
    void a_box_of_a_title_is_larger_than_a_small_molding_and_is_not_taken_for_it(String layer) {
        Notices notices = new Notices();
        Traced found = traced(notices, box(0, 2, 0.5, layer), box(5, 0.25, 0.75, "PROFILE"));
        assertThat(found.outline().box().height()).isCloseTo(0.75, within(1e-6));
        assertThat(notices.sorted()).noneMatch(notice -> notice.level() == Level.PROBLEM);
    }

    @Test
    void what_stands_on_a_layer_for_notes_alone_is_the_outline_all_the_same() {
        assertThat(traced(new Notices(), box(0, 0.25, 0.75, "NOTES"))
                        .outline()
                        .box()
                        .height())
                .isCloseTo(0.75, within(1e-6));
    }

    @Test
    void a_layer_whose_name_only_begins_like_one_for_notes_holds_an_outline() {
        Traced found = traced(new Notices(), box(0, 1, 3, "NOTCHED"), box(5, 0.75, 2, "PROFILE"));
        assertThat(found.outline().box().height()).isCloseTo(3, within(1e-6));
    }
}
