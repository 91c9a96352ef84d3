package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.wood.Wood;
import buildup.shared.notice.Notice;
import org.junit.jupiter.api.Test;

class WoodsTest {

    private final Asked asked = Asked.builtIn();

    private Wood wood(String name) {
        return asked.wood(name).orElseThrow();
    }

    /** Wood Handbook, FPL-GTR-190 (2010), Tables 5-3 and 13-5; reference/woods.csv. */
    @Test
    void woods_hold_the_figures_of_the_handbook() {
        for (String[] row : Reference.rows("woods.csv")) {
            Wood wood = wood(row[0]);
            if (!row[1].isEmpty()) {
                assertThat(wood.specificGravity()).as(row[0]).isEqualTo(Double.parseDouble(row[1]));
            }
            if (!row[2].isEmpty()) {
                assertThat(wood.radialChange()).as(row[0]).hasValue(Double.parseDouble(row[2]));
            }
            if (!row[3].isEmpty()) {
                assertThat(wood.tangentialChange()).as(row[0]).hasValue(Double.parseDouble(row[3]));
            }
        }
    }

    /**
     * Wood Handbook ch. 4: density at moisture content M is 1000 G (1 + M/100) kg/m³. Cherry, G 0.50: 560 kg/m³;
     * basswood, G 0.37: 414.4. One lb/ft³ is 16.018463 kg/m³ (NIST Special Publication 811, Appendix B.8).
     */
    @Test
    void density_follows_from_specific_gravity_at_twelve_percent() {
        assertThat(wood("black-cherry").densityPerCubicFoot()).isEqualTo(560 / 16.018463, within(1e-5));
        assertThat(wood("basswood").densityPerCubicFoot()).isEqualTo(414.4 / 16.018463, within(1e-5));
    }

    @Test
    void a_wood_may_be_written_with_blanks_and_capitals() {
        assertThat(wood("Yellow Poplar")).isEqualTo(wood("yellow-poplar"));
    }

    @Test
    void an_unknown_wood_is_refused_with_near_names_and_the_way_to_give_ones_own() {
        asked.wood("poplar");
        asked.wood("redoak");
        assertThat(asked.said())
                .containsExactly(
                        "REFUSAL unknown-name stack.yaml:7:3 No wood is called 'poplar'. | Did you mean yellow-poplar?"
                                + " Or list your own, with its density, under 'woods:' in a catalog file.",
                        "REFUSAL unknown-name stack.yaml:7:3 No wood is called 'redoak'. | Did you mean red-oak? Or list"
                                + " your own, with its density, under 'woods:' in a catalog file.");
        assertThat(asked.notices()).extracting(Notice::piece).allMatch(piece -> piece.isPresent());
    }

    @Test
    void an_own_wood_needs_a_density_or_a_specific_gravity() {
        Asked own = Asked.with("""
                woods:
                  - { name: pear, about: from the yard, density: 690 kg/m3 }
                  - { name: lime, density: 29.35 }
                  - { name: elm, specific-gravity: 0.5, radial: 0.0014, tangential: 0.003 }
                  - { name: basswood, density: 30 lb/ft3, specific-gravity: 0.4 }
                """);
        assertThat(own.said()).isEmpty();
        assertThat(own.wood("pear").orElseThrow().densityPerCubicFoot()).isEqualTo(690 / 16.018463, within(1e-5));
        assertThat(own.wood("pear").orElseThrow().specificGravity()).isEqualTo(0.690 / 1.12, within(1e-12));
        assertThat(own.wood("lime").orElseThrow().densityPerCubicFoot()).isEqualTo(29.35);
        assertThat(own.wood("elm").orElseThrow().densityPerCubicFoot()).isEqualTo(560 / 16.018463, within(1e-5));
        assertThat(own.wood("elm").orElseThrow().tangentialChange()).hasValue(0.003);
        assertThat(own.wood("pear").orElseThrow().tangentialChange()).isEmpty();
        assertThat(own.wood("basswood").orElseThrow().densityPerCubicFoot()).isEqualTo(30);
        assertThat(own.catalog().woods()).hasSize(asked.catalog().woods().size() + 3);
    }
}
