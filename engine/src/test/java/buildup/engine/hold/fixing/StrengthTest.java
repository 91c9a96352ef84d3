package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.fastener.Fastener.Kind;
import buildup.catalog.wood.Wood.Group;
import buildup.engine.Bench;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Strength;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Published strength; sources in reference/fixing.md and at the top of reference/nail-strength.csv. */
class StrengthTest {
    private static final double NEWTON = 4.4482216;
    private static final double MILLIMETER = 25.4;

    private static List<String[]> rows(String kind) {
        return Bench.resource("/reference/nail-strength.csv")
                .lines()
                .filter(line -> line.startsWith(kind + ","))
                .map(line -> line.split(","))
                .toList();
    }

    /** Wood Handbook FPL-GTR-190 (2010) ch. 8; NDS 2018 eq. 12.2-3. */
    @Test
    void nails_are_drawn_at_the_published_loads() {
        assertThat(rows("withdrawal")).hasSize(10).allSatisfy(row -> {
            double gravity = Double.parseDouble(row[1]);
            double diameter = Double.parseDouble(row[2]);
            assertThat(Strength.testWithdrawal(Kind.NAIL, gravity, diameter))
                    .isCloseTo(Double.parseDouble(row[3]), within(0.0051));
            assertThat(Strength.designWithdrawal(Kind.NAIL, gravity, diameter))
                    .isCloseTo(Double.parseDouble(row[4]), within(0.0051));
        });
    }

    /** The same book prints 54.12 G^(5/2) D L in N and mm. */
    @Test
    void metric_and_inch_forms_of_withdrawal_agree() {
        double newtons = 54.12 * Math.pow(0.48, 2.5) * (0.072 * MILLIMETER) * (1.25 * MILLIMETER);
        double pounds = 1.25 * Strength.testWithdrawal(Kind.NAIL, 0.48, 0.072);
        assertThat(pounds).isCloseTo(112.78, within(0.005));
        assertThat(newtons).isCloseTo(501.6, within(0.05));
        assertThat(pounds * NEWTON).isCloseTo(newtons, within(0.06));
        assertThat(0.75 * Strength.testWithdrawal(Kind.NAIL, 0.42, 0.048)).isCloseTo(32.31, within(0.006));
        assertThat(0.75 * Strength.designWithdrawal(Kind.NAIL, 0.42, 0.048)).isCloseTo(5.68, within(0.006));
    }

    /** FPL-093 (1965): 6900 G^(5/2) D, of which the design formula is a fifth. */
    @Test
    void the_other_published_test_value_is_five_times_the_design_value() {
        assertThat(Strength.otherTestWithdrawal(Kind.NAIL, 0.42, 0.072))
                .isCloseTo(5 * Strength.designWithdrawal(Kind.NAIL, 0.42, 0.072), within(1e-9));
    }

    /** Wood Handbook FPL-GTR-190 (2010) Table 8-4, in inches and in metric units. */
    @Test
    void nails_slip_across_at_the_published_loads() {
        assertThat(rows("lateral")).hasSize(18).allSatisfy(row -> {
            double gravity = Double.parseDouble(row[2]);
            double diameter = Double.parseDouble(row[3]);
            double load = Strength.slip(Kind.NAIL, Optional.of(Group.valueOf(row[1])), gravity, diameter);
            assertThat(load).isCloseTo(Double.parseDouble(row[4]), within(0.0051));
            double metric = Double.parseDouble(row[5]) * Math.pow(diameter * MILLIMETER, 1.5);
            assertThat(load * NEWTON).isCloseTo(metric, within(0.001 * metric));
        });
    }

    @Test
    void a_wood_of_no_known_group_takes_the_lower_value_and_a_panel_none() {
        assertThat(Strength.slip(Kind.NAIL, Optional.empty(), 0.45, 0.072))
                .isEqualTo(Strength.slip(Kind.NAIL, Optional.of(Group.HARDWOOD), 0.45, 0.072))
                .isLessThan(Strength.slip(Kind.NAIL, Optional.of(Group.SOFTWOOD), 0.45, 0.072));
        assertThat(Strength.slip(Kind.NAIL, Optional.of(Group.PANEL), 0.64, 0.072))
                .isZero();
    }

    @Test
    void wood_lighter_than_the_table_begins_takes_less_than_its_first_value() {
        assertThat(Strength.slip(Kind.NAIL, Optional.of(Group.SOFTWOOD), 0.145, 0.0625))
                .isCloseTo(22.5 / 2, within(1e-9));
    }

    /** NDS 2018 eq. 12.2-2; an engineering reference works a No. 10 screw at G 0.45: 109 lb an inch. */
    @Test
    void screws_are_drawn_at_the_published_loads() {
        assertThat(Strength.designWithdrawal(Kind.SCREW, 0.45, 0.190)).isCloseTo(109, within(1.0));
        assertThat(Strength.testWithdrawal(Kind.SCREW, 0.45, 0.190)
                        / Strength.designWithdrawal(Kind.SCREW, 0.45, 0.190))
                .isCloseTo(5.5, within(0.01));
    }

    /** Allowable loads before 1991, p = C D², in a construction handbook, ch. 6. */
    @Test
    void screws_bear_across_by_the_groups_of_the_handbook() {
        double square = 0.164 * 0.164;
        assertThat(Strength.slip(Kind.SCREW, Optional.empty(), 0.41, 0.164)).isCloseTo(2520 * square, within(1e-9));
        assertThat(Strength.slip(Kind.SCREW, Optional.empty(), 0.44, 0.164)).isCloseTo(3240 * square, within(1e-9));
        assertThat(Strength.slip(Kind.SCREW, Optional.empty(), 0.51, 0.164)).isCloseTo(3960 * square, within(1e-9));
    }

    @Test
    void every_figure_names_its_formula_its_edition_and_its_safety_factor() {
        assertThat(Strength.values()).allSatisfy(strength -> {
            assertThat(strength.formula()).isNotBlank();
            assertThat(strength.edition().template()).isNotBlank();
            assertThat(strength.safety()).isNotBlank();
        });
        assertThat(Strength.NOT_CHECKED).contains("splitting");
        assertThat(Strength.CAUTION).contains("not engineering", "local code");
        assertThat(Check.Rule.values()).allSatisfy(rule -> {
            assertThat(rule.words().template()).isNotBlank();
            assertThat(rule.source()).isNotBlank();
        });
    }
}
