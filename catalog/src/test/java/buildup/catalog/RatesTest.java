package buildup.catalog;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.mill.Mill;
import buildup.catalog.mill.Rates;
import buildup.shared.document.Claims;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Scalar;
import buildup.shared.notice.Mark;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RatesTest {
    private static final String MILL = """
            mills:
              - { name: m, quarters: { 8/4: 1-3/4, 4/4: 13/16 }, allowance: 1/4, board: 10, edge: 1/4, kerf: 1/8, joint: 1/8,
                  longest: 16', sound: 80 %, set-up: 20', waste: { simple: 10 %, matched: 20 % }, accuracy: 1/32 }
            rates:
              - { name: r, currency: EUR, wood: { red-oak: 5.60 }, knife: 40, set-up: 120, labor: 55, machine: 85,
                  prepared: 300, finish: { primed: 0.6 }, specified: 15 %, mark-up: 30 %, minimum: 350 }
            """;

    private static Scalar called(String name) {
        return new Scalar(name, new Mark("order.yaml", 3, 7));
    }

    private static Catalog with(String own, Notices notices) {
        return Catalog.builtIn()
                .with(
                        DocumentReader.read("own.yaml", own.getBytes(UTF_8), notices)
                                .orElseThrow(),
                        new Claims(),
                        notices);
    }

    @Test
    void the_built_in_mill_and_rates_are_read() {
        Notices notices = new Notices();
        Mill mill = Catalog.builtIn().mill(called("usual"), notices).orElseThrow();
        assertThat(mill.quarters()).extracting(Mill.Quarter::label).containsExactly("4/4", "5/4", "6/4", "8/4");
        assertThat(mill.waste()).containsOnlyKeys("simple", "many-miters", "matched");
        Rates rates = Catalog.builtIn().rates(called("example"), notices).orElseThrow();
        assertThat(rates.about()).contains("invented");
        assertThat(rates.wood().keySet())
                .allSatisfy(name -> assertThat(Catalog.builtIn().wood(called(name), notices))
                        .isPresent());
        assertThat(notices.sorted()).isEmpty();
    }

    @Test
    void ones_own_are_read_with_quarters_in_rising_order() {
        Notices notices = new Notices();
        Catalog catalog = with(MILL, notices);
        assertThat(notices.sorted()).isEmpty();
        Mill mill = catalog.mill(called("m"), notices).orElseThrow();
        assertThat(mill.quarters()).extracting(Mill.Quarter::label).containsExactly("4/4", "8/4");
        assertThat(mill.longest().toInches()).isEqualTo(192);
        assertThat(mill.sound()).isEqualByComparingTo(new BigDecimal("0.8"));
        Rates rates = catalog.rates(called("r"), notices).orElseThrow();
        assertThat(rates.wood()).containsEntry("red-oak", new BigDecimal("5.60"));
        assertThat(rates.markUp()).isEqualByComparingTo(new BigDecimal("0.3"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "board: 10;board: 0;The board of 'm' is 0.",
                "edge: 1/4;edge: -1/4;The edge of 'm' is -1/4.",
                "longest: 16';longest: 1600';The longest of 'm' is 19200.",
                "sound: 80 %;sound: 0 %;The sound share of the wood is more than 0 and up to 100 %.",
                "sound: 80 %;sound: 101 %;The sound share of the wood is more than 0 and up to 100 %.",
                "13/16;1-1/16;'4/4: 1-1/16' is not a quarter and what it yields.",
                "kerf: 1/8, ;'';'m' has no kerf.",
                "matched: 20 %;matched: 20;'20' is not a share.",
                "knife: 40;knife: -40;'-40' is not a price.",
                "prepared: 300;prepared: 0;No blank is made ready at 0 feet an hour.",
                "knife: 40, ;'';'r' has no knife.",
                "specified: 15 %, ;'';'r' has no specified.",
                "'wood: { red-oak: 5.60 }, ';'';'r' has no wood.",
                "mark-up: 30 %;mark-up: much;'much' is not a share."
            })
    void what_is_wrong_with_an_entry_is_said_and_the_entry_left_out(String right, String wrong, String said) {
        Notices notices = new Notices();
        assertThat(MILL).contains(right);
        Catalog catalog = with(MILL.replace(right, wrong), notices);
        assertThat(notices.sorted()).extracting(NoticeWords.INCHES::message).containsExactly(said);
        assertThat(notices.refused()).isTrue();
        assertThat(catalog.mill(called("m"), notices).isPresent()
                        && catalog.rates(called("r"), notices).isPresent())
                .isFalse();
    }

    @Test
    void unknown_ones_are_answered_with_the_nearest() {
        Notices notices = new Notices();
        assertThat(Catalog.builtIn().mill(called("usul"), notices)).isEmpty();
        assertThat(Catalog.builtIn().rates(called("exampel"), notices)).isEmpty();
        assertThat(notices.sorted())
                .extracting(NoticeWords.INCHES::cure)
                .containsExactly("Did you mean usual?", "Did you mean example?");
    }
}
