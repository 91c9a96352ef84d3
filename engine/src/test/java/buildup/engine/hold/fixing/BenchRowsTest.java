package buildup.engine.hold.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Answered;
import buildup.engine.Answers;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.order.Driving;
import buildup.shared.notice.Level;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What joins the pieces of a bench unit is driven on the bench, where all of them lie and neither wall nor ceiling is. */
class BenchRowsTest {
    /** A trough 7-3/4 under the ceiling, less than a brad nailer is long; its bottom is nailed up into its upstand. */
    private static String trough(String bench, String more) {
        return """
                wood: check-wood
                space: { floor: -96, ceiling: 12, wall: { covering: 1/2 } }
                pieces:
                  - { name: ledger, kind: nailer, profile: board 1-1/2 x 3-1/2, back: wall, bottom: datum }
                  - { name: bottom, profile: board 3/4 x 7-1/4, lay: flat, back: wall, top: datum }
                  - { name: upstand, profile: board 3/4 x 3-1/2, back: bottom.face - 3/4, bottom: bottom.top }
                  - { name: lip, profile: board 3/4 x 3-1/2, lay: flat, back: upstand.back - 1/2, bottom: upstand.top }
                """ + more + bench + """
                fastenings:
                  - { name: ledger screws, piece: ledger, use: screw 10 x 3-1/2, at: { up: 2 } }
                  - { name: lip nails, piece: lip, use: 18 ga x 1-1/2, at: { out: 6-7/8, up: 4-1/4 } }
                  - { name: upstand nails, piece: bottom, use: 16 ga x 2, at: { out: 6-7/8, up: -3/4 }, first: 4 }
                """;
    }

    private static final String UNIT = "bench: { trough: [bottom, upstand, lip] }\n";

    private static Fixed row(String yaml, String name) {
        return Answered.sound(yaml).fixed().stream()
                .filter(fixed -> fixed.fastening().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> told(String yaml) {
        return Answered.messages(Answered.of(yaml), Level.PROBLEM);
    }

    @Test
    void neither_the_ceiling_nor_what_is_joined_later_is_in_the_way() {
        String joined = trough(UNIT, "");
        assertThat(row(joined, "lip nails").sound()).isTrue();
        // 2 less the 3/4 of the bottom, and 1-1/2 less the 3/4 of the lip
        assertThat(row(joined, "upstand nails").bite()).isCloseTo(1.25, within(1e-9));
        assertThat(row(joined, "lip nails").bite()).isCloseTo(0.75, within(1e-9));
        assertThat(told(joined)).noneMatch(said -> said.contains("'lip nails'") || said.contains("'upstand nails'"));
        String apart = trough("", "");
        assertThat(told(apart))
                .anyMatch(said -> said.contains("'lip nails'") && said.contains("runs into the ceiling"))
                .anyMatch(said -> said.contains("'upstand nails'") && said.contains("comes out of 'bottom'"));
    }

    @Test
    void nothing_covers_later_what_was_driven_on_the_bench() {
        Answers answers = Answered.sound(
                trough(UNIT, "  - { name: bed, profile: board 3/4 x 1-1/2, back: wall, top: bottom.bottom }\n"));
        assertThat(answers.order().driving())
                .filteredOn(Driving::bench)
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.before()).isEmpty());
    }

    @Test
    void what_covers_the_head_on_the_bench_is_still_in_the_way() {
        String under = "  - { name: under, profile: board 3/4 x 3, lay: flat, back: 5, top: bottom.bottom }\n";
        String first = trough("bench: { trough: [under, bottom, upstand, lip] }\n", "")
                .replace("  - { name: bottom,", under.replace("bottom.bottom", "-3/4") + "  - { name: bottom,");
        assertThat(told(first)).anyMatch(said -> said.contains("'under'") && said.contains("'upstand nails'"));
    }
}
