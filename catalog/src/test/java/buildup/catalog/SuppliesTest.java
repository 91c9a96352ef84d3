package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.fastener.Fastener;
import buildup.catalog.supply.Good;
import buildup.catalog.supply.KindOfWork;
import buildup.catalog.supply.Volume;
import buildup.catalog.supply.WetFilm;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is bought besides wood: volumes, coverages, boxes. */
class SuppliesTest {
    /**
     * Cubic inches: 231 to the gallon (NIST Handbook 44, Appendix C), 61.023744 to the liter (NIST Special Publication 811,
     * Appendix B.8: 1 L = 1000 cm3, 1 in3 = 16.387064 cm3).
     */
    @ParameterizedTest
    @CsvSource({
        "1 gal, 231",
        "1 qt, 57.75",
        "1/2 pt, 14.4375",
        "10 oz, 18.046875",
        "10 fl oz, 18.046875",
        "1 L, 61.0237441",
        "750 mL, 45.7678081",
        "2.5L, 152.5593602"
    })
    void a_volume_is_read_in_its_unit(String text, double cubicInches) {
        assertThat(Volume.read(text).orElseThrow().cubicInches().doubleValue()).isCloseTo(cubicInches, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1", "qt", "0 qt", "-1 qt", "1 bucket", "1/0 qt", "1001 gal", "1 qt 2"})
    void what_is_no_volume_is_not_read(String text) {
        assertThat(Volume.read(text)).isEmpty();
    }

    /**
     * A gallon spread over 1604 square feet is one mil thick, as painters reckon (231 / 144 / 0.001 = 1604.17): 400 square
     * feet are 4.01 mils. Ten square meters a liter are a tenth of a millimeter.
     */
    @Test
    void a_coverage_is_a_wet_film() {
        assertThat(WetFilm.read("1604.167 ft2/gal").orElseThrow().thickness().toInches())
                .isCloseTo(0.001, within(1e-8));
        assertThat(WetFilm.read("400 ft2/gal").orElseThrow().thickness().toInches())
                .isCloseTo(0.00401, within(1e-5));
        assertThat(WetFilm.read("100 ft2/qt").orElseThrow().thickness().toInches())
                .isCloseTo(WetFilm.read("400 ft2/gal").orElseThrow().thickness().toInches(), within(1e-12));
        assertThat(WetFilm.read("10 m2/L").orElseThrow().thickness().toMillimeters())
                .isCloseTo(0.1, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "400", "0 ft2/gal", "400 ft/gal", "-3 m2/L"})
    void what_is_no_coverage_is_not_read(String text) {
        assertThat(WetFilm.read(text)).isEmpty();
    }

    /** Each kind of good is there, and the first of a kind is what a stack gets that names none. */
    @Test
    void every_kind_of_supply_is_listed_with_its_packs() {
        List<Good> goods = Asked.BUILT_IN.goods();
        for (Good.Kind kind : Good.Kind.values()) {
            assertThat(goods).as(kind.word()).anyMatch(good -> good.kind() == kind);
        }
        assertThat(goods).allSatisfy(good -> {
            assertThat(good.packs()).as(good.name()).isNotEmpty();
            assertThat(good.metricPacks()).as(good.name()).isNotEmpty();
            assertThat(good.coverage().isPresent())
                    .as(good.name())
                    .isEqualTo(good.kind().spread());
            assertThat(good.metricPacks())
                    .allSatisfy(pack -> assertThat(pack.words()).endsWith("L"));
        });
        assertThat(Asked.BUILT_IN.works().stream().map(KindOfWork::name))
                .containsExactly("simple", "mitered", "matched");
    }

    /**
     * A pound of finishing nails by a printed table, beside the weight of the wire: pi/4 D^2 L at 0.2836 lb in a cubic inch of
     * steel (7850 kg a cubic meter). The table's 6d is 15 % off its own gauge, the others within 8 %.
     */
    @Test
    void a_box_of_finish_nails_is_a_pound() {
        for (String[] row : Reference.rows("nails-per-pound.csv")) {
            Fastener nail = Asked.BUILT_IN.fasteners().stream()
                    .filter(one -> one.name().equals(row[0]))
                    .findFirst()
                    .orElseThrow();
            assertThat(nail.boxes()).as(row[0]).containsExactly(Integer.parseInt(row[1]));
            double diameter = nail.diameter().toInches();
            double pounds =
                    Math.PI / 4 * diameter * diameter * nail.lengths().get(0).toInches() * 0.2836;
            double off = row[0].equals("6d finish") ? 0.16 : 0.08;
            assertThat(1 / pounds / nail.boxes().get(0)).as(row[0]).isCloseTo(1, within(off));
        }
    }

    @Test
    void an_own_list_replaces_and_adds() {
        Asked own = Asked.with("""
                supplies:
                  - { name: trim paint, kind: paint, coverage: 300 ft2/gal, coats: 3, packs: 1 gal }
                  - { name: hide glue, kind: glue, coverage: 5 m2/L, packs: [1/2 pt], metric-packs: [250 mL] }
                works:
                  - { name: carved, waste: 35 % }
                """);
        assertThat(own.said()).isEmpty();
        Good paint = own.catalog().goods().stream()
                .filter(good -> good.name().equals("trim paint"))
                .findFirst()
                .orElseThrow();
        assertThat(paint.coats()).isEqualTo(3);
        assertThat(paint.metricPacks()).isEqualTo(paint.packs());
        assertThat(own.catalog().works()).anyMatch(work -> work.name().equals("carved"));
    }

    @Test
    void what_an_own_list_lacks_or_spoils_is_said() {
        assertThat(Asked.with("""
                        supplies:
                          - { name: a, kind: varnish, packs: 1 qt }
                          - { name: b, kind: paint, packs: [] }
                          - { name: c, kind: adhesive, packs: 1 tube }
                        works:
                          - { name: d }
                          - { name: e, waste: much }
                        """).said())
                .containsExactly(
                        "REFUSAL unknown-name own.yaml:2:22 'varnish' is not a kind of supply. | Known here: adhesive, filler,"
                                + " glue, paint, primer.",
                        "REFUSAL missing-key own.yaml:3:5 'b' has no coverage. | Add 'coverage:', as 400 ft2/gal or 10 m2/L.",
                        "REFUSAL missing-key own.yaml:3:36 'b' has no packs. | Add 'packs:', the packs in which it is sold, as"
                                + " [1 qt, 1 gal].",
                        "REFUSAL missing-key own.yaml:4:5 'c' has no bead. | Add 'bead:', a length.",
                        "REFUSAL not-a-number own.yaml:4:39 '1 tube' is not the size of a pack. | Write it with its unit, as"
                                + " 1 qt, 10 oz or 750 mL.",
                        "REFUSAL missing-key own.yaml:6:5 'd' has no waste. | Add 'waste:', a share, as 15 %.",
                        "REFUSAL not-a-share own.yaml:7:23 'much' is not a share. | Write it as 15 %.");
    }
}
