package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.fastener.Fastener.Kind;
import buildup.engine.Bench;
import buildup.engine.hold.nail.Factor;
import buildup.engine.hold.nail.Grip;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.nail.Strength;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Heads that pull through, and the factors on published strength. The equation of the heads is from memory: it is held
 * against its own table in reference/fixing.md, which is no outside oracle. The clauses of the factors stand there too.
 */
class HeadPullTest {
    private static final String ROOM = "{ floor: -84, ceiling: 30, wall: { solid: no } }";

    private static List<double[]> table() {
        return Bench.resource("/reference/fixing.md")
                .lines()
                .dropWhile(line -> !line.startsWith("| G | D_H"))
                .skip(2)
                .takeWhile(line -> line.startsWith("|"))
                .map(line -> Arrays.stream(line.split("\\|"))
                        .filter(cell -> !cell.isBlank())
                        .mapToDouble(cell -> Double.parseDouble(cell.strip()))
                        .toArray())
                .toList();
    }

    @Test
    void heads_pull_through_as_the_equation_from_memory_says() {
        assertThat(table())
                .hasSize(7)
                .allSatisfy(row ->
                        assertThat(Strength.headPull(row[0], row[1], row[2])).isCloseTo(row[3], within(0.0051)));
    }

    @Test
    void the_two_equations_meet_at_two_and_a_half_diameters() {
        double below = Strength.headPull(0.42, 0.12, 2.5 * 0.12 - 1e-9);
        assertThat(below).isCloseTo(1725 * Math.PI * 0.12 * 0.12 * 0.42 * 0.42, within(1e-6));
        assertThat(Strength.headPull(0.42, 0.12, 3)).isCloseTo(below, within(1e-6));
    }

    @Test
    void the_program_says_that_it_is_from_memory() {
        assertThat(Strength.HEAD_PULL.edition().template()).contains("NDS 2018", "from memory");
        assertThat(Strength.NOT_CHECKED).noneMatch(what -> what.contains("head"));
    }

    private static Driven lath(String... rows) {
        return Driven.in(
                ROOM,
                List.of(
                        "name: base, wood: white-oak, kind: framing, section: [out 4, up 6], back: wall, bottom: 0",
                        "name: lath, wood: eastern-white-pine, section: [out 1/4, up 6], back: base.face, bottom: 0"),
                rows);
    }

    @Test
    void in_a_thin_lath_the_head_governs_and_not_the_bite() {
        Driven lath =
                lath("piece: lath, use: 15 ga x 2, at: { up: 3 }", "piece: lath, use: screw 8 x 2, at: { up: 2 }");
        Joint nail = lath.nail(1).joints().get(0);
        assertThat(nail.withdrawal()).as("in white oak").isCloseTo(66.3, within(0.05));
        assertThat(nail.headGoverns()).isTrue();
        assertThat(nail.head()).as("set 1/16").isCloseTo(5.97, within(0.01));
        assertThat(lath.nail(1).allowable()).isEqualTo(nail.pull()).isEqualTo(nail.head());
        assertThat(Strength.headPull(0.35, 0.12, 0.25)).as("flush").isCloseTo(7.97, within(0.01));
        Joint screw = lath.nail(2).joints().get(0);
        assertThat(screw.head()).as("a flat head, flush").isCloseTo(22.04, within(0.02));
        assertThat(screw.pull()).isEqualTo(screw.head());
    }

    @Test
    void heads_of_the_catalog_are_those_of_the_reference() {
        List<String> heads = List.of("screw 6 x 2: 0.279", "screw 8 x 2: 0.332", "screw 10 x 2: 0.385");
        for (String head : heads) {
            Driven lath = lath("piece: lath, use: " + head.split(":")[0] + ", at: { up: 3 }");
            assertThat(lath.nail(1).fastening().use().fastener().head().toInches())
                    .isCloseTo(Double.parseDouble(head.split(": ")[1]), within(1e-9));
        }
        assertThat(Math.sqrt(4 * 0.063 * 0.104 / Math.PI)).isCloseTo(0.0913, within(0.00006));
        assertThat(Math.sqrt(4 * 0.048 * 0.075 / Math.PI)).isCloseTo(0.0677, within(0.00006));
    }

    @Test
    void a_pin_holds_no_more_than_its_shank_in_the_outer_piece() {
        Driven pinned = Driven.in(
                ROOM,
                List.of(
                        "name: base, kind: framing, section: [out 4, up 6], back: wall, bottom: 0",
                        "name: bead, section: [out 1/2, up 2], back: base.face, bottom: 0"),
                "piece: bead, use: 23 ga x 1, at: { up: 1 }");
        assertThat(pinned.nail(1).allowable()).isCloseTo(1.97, within(0.005));
    }

    private static final List<String> BOARD_ON_BLOCK = List.of(
            "name: block, kind: nailer, section: [out 4, up 8], back: 0, bottom: 0",
            "name: board, profile: board 3/4 x 8, back: block.face, bottom: 0");

    /** NDS 2018, 12.5.4: 0.67 in withdrawal and 0.83 across, nails and spikes only. */
    @Test
    void a_slanted_nail_is_a_toe_nail_by_its_clause_and_a_slanted_screw_is_none() {
        Driven driven = Driven.in(
                ROOM,
                BOARD_ON_BLOCK,
                "piece: board, use: 15 ga x 2-1/2, at: { up: 3 }, angle: 30",
                "piece: board, use: screw 8 x 3, at: { up: 5 }, angle: 30",
                "piece: board, use: 15 ga x 2-1/2, at: { up: 7 }");
        Grip nail = driven.nail(1).beyond().get(0);
        double square = Math.cos(Math.toRadians(30));
        assertThat(nail.factors())
                .extracting(Factor::why)
                .containsExactly(Factor.Why.SLANTED_BITE, Factor.Why.TOE_WITHDRAWAL);
        assertThat(nail.factor()).isCloseTo(0.67 * square, within(1e-9));
        assertThat(nail.allowable())
                .isCloseTo(
                        0.67 * square * nail.bite() * Strength.designWithdrawal(Kind.NAIL, 0.42, 0.072), within(1e-9));
        assertThat(driven.nail(1).joints().get(0).across()).containsExactly(new Factor(Factor.Why.TOE_LATERAL, 0.83));
        assertThat(Factor.Why.TOE_WITHDRAWAL.source()).isEqualTo("NDS 2018, 12.5.4");
        assertThat(driven.nail(2).beyond().get(0).factors())
                .extracting(Factor::why)
                .containsExactly(Factor.Why.SLANTED_THREAD);
        assertThat(driven.nail(2).joints().get(0).across()).isEmpty();
        assertThat(driven.nail(3).beyond().get(0).factors()).isEmpty();
        assertThat(21.96 * Strength.TOE_WITHDRAWAL).as("the quoted example").isCloseTo(14.71, within(0.005));
    }

    /** NDS 2018, 12.2.3.4 and 12.5.2.2. */
    @Test
    void end_grain_holds_nothing_in_withdrawal_and_two_thirds_across() {
        Driven driven = Driven.in(
                ROOM,
                List.of(
                        "name: block, kind: nailer, grain: out, section: [out 4, up 8], back: 0, bottom: 0",
                        "name: board, profile: board 3/4 x 8, back: block.face, bottom: 0"),
                "piece: board, use: 15 ga x 2-1/2, at: { up: 3 }");
        Grip grip = driven.nail(1).beyond().get(0);
        assertThat(grip.factors()).containsExactly(new Factor(Factor.Why.END_GRAIN_WITHDRAWAL, 0));
        assertThat(Factor.Why.END_GRAIN_WITHDRAWAL.source()).isEqualTo("NDS 2018, 12.2.3.4");
        assertThat(driven.nail(1).joints().get(0).across())
                .containsExactly(new Factor(Factor.Why.END_GRAIN_LATERAL, 2.0 / 3));
        assertThat(Factor.Why.END_GRAIN_LATERAL.source()).isEqualTo("NDS 2018, 12.5.2.2");
    }

    /** NDS 2018, 12.1.6.4 and Table 12N, as quoted: in proportion from 6 to 10 diameters, nothing under 6. */
    @Test
    void a_shallow_bite_holds_across_in_proportion() {
        Driven driven = Driven.in(ROOM, BOARD_ON_BLOCK, "piece: board, use: 15 ga x 1-1/4, at: { up: 3 }");
        double depth = 0.5 / 0.072;
        assertThat(driven.nail(1).joints().get(0).across())
                .singleElement()
                .satisfies(factor -> assertThat(factor.value()).isCloseTo(depth / 10, within(1e-9)));
    }
}
