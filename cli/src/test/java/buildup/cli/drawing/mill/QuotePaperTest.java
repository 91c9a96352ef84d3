package buildup.cli.drawing.mill;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.report.QuoteTelling;
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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuotePaperTest {
    private static final String ONE = "{ name: tiny, profile: quarter-round 1/4 x 1/4, feet: 60 }";

    private static Quote quote(String items, String more) {
        Notices notices = new Notices();
        String order = "title: Trim\nrates: example\nwood: red-oak\nitems: [" + items + "]\n" + more;
        return DocumentReader.read("order.yaml", order.getBytes(UTF_8), notices)
                .flatMap(document -> Order.read(document, Catalog.builtIn(), new Claims(), notices))
                .map(wanted -> Quote.of(wanted, Catalog.builtIn(), notices))
                .orElseThrow(() -> new AssertionError(notices.sorted()));
    }

    private static List<Scene> pages(Quote quote, boolean customer, String... page) {
        Notices notices = new Notices();
        return new QuotePaper(
                        quote, customer ? QuoteTelling.customer(quote) : QuoteTelling.shop(quote), customer, Drawn.FONT)
                .onMany(Stream.of(page).findFirst(), notices)
                .orElseThrow(() -> new AssertionError(notices.sorted()));
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
        String sheet = "sheet: { number: 1041, revision: B, date: 3 May 2027, mill: [A mill, 12 Weir Lane], customer: A"
                + " joiner with a long name of many words, terms: 30 days, tax: 8.25 %, deposit: 50 % }\n";
        for (String more : List.of("", sheet + "quantities: [1, 10, 100, 1000, 10000]\n")) {
            Quote quote = quote(items, more);
            Stream.of(true, false)
                    .flatMap(customer -> pages(quote, customer).stream())
                    .forEach(QuotePaperTest::isClear);
        }
    }

    private static void isClear(Scene scene) {
        List<Label> labels = labels(scene);
        for (int i = 0; i < labels.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(Boxes.overlap(labels.get(i).box(), labels.get(j).box()))
                        .as("%s and %s", labels.get(i), labels.get(j))
                        .isFalse();
            }
        }
        Box drawn = Box.around(scene.leaves().stream().map(SceneItem::box).toList());
        assertThat(drawn.back()).isGreaterThan(0.25);
        assertThat(drawn.bottom()).isGreaterThan(0.25);
        assertThat(drawn.face()).isLessThan(scene.width() - 0.25);
        assertThat(drawn.top()).isLessThan(scene.height() - 0.25);
    }

    @Test
    void the_profile_is_as_large_as_it_is() {
        Scene scene = pages(quote("{ name: a, profile: cove-bed 1-1/4 x 1-3/8, feet: 60 }", ""), true)
                .get(0);
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
    void it_takes_as_many_pages_as_it_needs_each_with_its_number_and_with_a_profile_its_check_lines() {
        StringBuilder items = new StringBuilder();
        for (int i = 1; i <= 12; i++) {
            items.append("{ name: part ")
                    .append(i)
                    .append(", profile: cyma-crown 3-5/8, feet: ")
                    .append(100 + i)
                    .append(" }, ");
        }
        List<Scene> pages = pages(quote(items + ONE, ""), true);
        assertThat(pages).hasSizeGreaterThan(2);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i).width()).isEqualTo(8.5);
            assertThat(pages.get(i).height()).isEqualTo(11);
            assertThat(labels(pages.get(i)))
                    .extracting(Label::text)
                    .contains("Page " + (i + 1) + " of " + pages.size())
                    .filteredOn("This line is 4 in"::equals)
                    .hasSize(2);
            isClear(pages.get(i));
        }
    }

    /** What is not at full size bears no line to check it by. */
    @Test
    void a_tall_profile_stands_beside_its_words_on_the_first_page_and_a_page_without_one_has_no_check_line() {
        String sheet = "sheet: { mill: [A mill, 12 Weir Lane], customer: [A joiner, 2 Hill Street], terms: 30 days }\n"
                + "units: mm\nquantities: [1 m, 10 m, 100 m, 1000 m, 10000 m]\n";
        List<Scene> pages = pages(quote("{ name: base, profile: base-beaded 19 x 140, meters: 42 }", sheet), true);
        assertThat(pages).hasSize(2);
        Box profile = firstArea(pages.get(0)).box();
        assertThat(profile.height()).isCloseTo(140 / 25.4, within(1e-9));
        Box name = labels(pages.get(0)).stream()
                .filter(label -> label.text().equals("1. base"))
                .findFirst()
                .orElseThrow()
                .box();
        assertThat(name.back()).isGreaterThan(profile.face());
        assertThat(name.bottom()).isBetween(profile.bottom(), profile.top());
        assertThat(labels(pages.get(0))).extracting(Label::text).contains("This line is 100 mm");
        assertThat(labels(pages.get(1))).extracting(Label::text).doesNotContain("This line is 100 mm");
        pages.forEach(QuotePaperTest::isClear);
    }

    @Test
    void a_metric_quote_is_on_a4_and_one_that_is_asked_for_on_its_page() {
        Scene metric = pages(quote("{ name: a, profile: quarter-round 6 mm x 6 mm, meters: 20 }", "units: mm\n"), true)
                .get(0);
        assertThat(metric.width()).isCloseTo(210 / 25.4, within(1e-9));
        assertThat(pages(quote(ONE, ""), true, "a4").get(0).height()).isCloseTo(297 / 25.4, within(1e-9));
    }

    /** 7 in of a profile stand upright on a letter page; 11-1/2 take a larger one. */
    @Test
    void a_profile_too_wide_for_the_page_is_turned_and_one_too_high_takes_a_larger_page() {
        assertThat(pages(quote("{ name: wide, profile: board 3/4 x 7, feet: 60 }", ""), true)
                        .get(0)
                        .width())
                .isEqualTo(8.5);
        assertThat(pages(quote("{ name: wide, profile: board 3/4 x 11-1/2, feet: 60 }", ""), true)
                        .get(0)
                        .height())
                .isGreaterThan(11);
    }
}
