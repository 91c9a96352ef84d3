package buildup.cli.drawing.mill;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.engine.mill.quote.Order;
import buildup.engine.mill.quote.Quote;
import buildup.profiles.outline.Box;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuoteSheetTest {
    private static final String ONE = "{ name: tiny, profile: quarter-round 1/4 x 1/4, feet: 60 }";

    private static Scene sheet(String items, String more) {
        Notices notices = new Notices();
        String order = "title: Trim\nrates: example\nwood: red-oak\nitems: [" + items + "]\n" + more;
        Quote quote = DocumentReader.read("order.yaml", order.getBytes(UTF_8), notices)
                .flatMap(document -> Order.read(document, Catalog.builtIn(), new Claims(), notices))
                .map(wanted -> Quote.of(wanted, Catalog.builtIn(), notices))
                .orElseThrow();
        return QuoteSheet.of(quote, Drawn.FONT, Optional.empty(), notices).orElseThrow();
    }

    private static List<Label> labels(Scene scene) {
        return scene.leaves().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                ONE,
                "{ name: bead, profile: screen-bead 1/4 x 3/4, feet: 60 }, " + ONE,
                "{ name: stool with a name of some length that goes on, profile: stool 1 x 5-1/2, feet: 60 }, " + ONE,
                "{ name: case crown, profile: cyma-crown-45 11/16 x 5-1/4, feet: 99999.5, finish: [sanded, clear] }",
                "{ name: wide, profile: board 3/4 x 8-3/4, feet: 1 }"
            })
    void words_keep_clear_of_each_other_and_of_the_edge(String items) {
        for (String more : List.of("", "quantities: [1, 10, 100, 1000, 10000]\n")) {
            Scene scene = sheet(items, more);
            List<Box> words = labels(scene).stream().map(Label::box).toList();
            for (int i = 0; i < words.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(Boxes.overlap(words.get(i), words.get(j)))
                            .as("%s and %s", labels(scene).get(i), labels(scene).get(j))
                            .isFalse();
                }
            }
            Box drawn = Box.around(scene.leaves().stream().map(SceneItem::box).toList());
            assertThat(drawn.back()).isGreaterThan(0.25);
            assertThat(drawn.bottom()).isGreaterThan(0.25);
            assertThat(drawn.face()).isLessThan(scene.width() - 0.25);
            assertThat(drawn.top()).isLessThan(scene.height() - 0.25);
        }
    }

    @Test
    void the_profile_is_as_large_as_it_is() {
        Scene scene = sheet("{ name: a, profile: cove-bed 1-1/4 x 1-3/8, feet: 60 }", "");
        Box box = firstArea(scene).box();
        // the longer side lies level
        assertThat(box.width()).isCloseTo(1.375, within(1e-9));
        assertThat(box.height()).isCloseTo(1.25, within(1e-9));
    }

    private static SceneItem firstArea(Scene scene) {
        return scene.leaves().stream()
                .filter(Area.class::isInstance)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_page_grows_with_what_stands_on_it() {
        Scene small = sheet(ONE, "");
        assertThat(small.width()).isEqualTo(8.5);
        assertThat(small.height()).isEqualTo(11);
        Scene wide = sheet("{ name: wide, profile: board 3/4 x 8-3/4, feet: 60 }", "");
        assertThat(wide.width()).isGreaterThan(9.5);
    }
}
