package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.mill.Cutter;
import buildup.catalog.mill.Head;
import buildup.shared.length.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CuttersTest {
    private static Cutter listed(String name) {
        return Asked.BUILT_IN.cutters().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    private static List<Length> inches(String... sizes) {
        return Arrays.stream(sizes).map(Asked::inches).toList();
    }

    /** Common router bits; from memory. */
    @Test
    void the_usual_bits_are_there_in_their_usual_sizes() {
        assertThat(listed("round-over").sizes())
                .isEqualTo(inches("1/16", "1/8", "3/16", "1/4", "5/16", "3/8", "1/2", "5/8", "3/4", "1"));
        assertThat(listed("cove bit").sizes()).isEqualTo(inches("1/8", "1/4", "3/8", "1/2", "5/8", "3/4"));
        assertThat(listed("core box").sizes()).startsWith(Asked.inches("1/4")).endsWith(Asked.inches("1-1/2"));
        assertThat(listed("beading bit").sizes()).isEqualTo(inches("1/8", "3/16", "1/4", "3/8", "1/2"));
        assertThat(listed("Roman ogee").sizes()).isEqualTo(inches("5/32", "1/4"));
    }

    @Test
    void there_is_one_of_every_kind_and_each_has_a_size() {
        Set<Cutter.Kind> kinds =
                Asked.BUILT_IN.cutters().stream().map(Cutter::kind).collect(Collectors.toSet());
        assertThat(kinds).containsExactlyInAnyOrder(Cutter.Kind.values());
        assertThat(Asked.BUILT_IN.cutters()).allSatisfy(cutter -> {
            assertThat(cutter.sizes()).as(cutter.name()).isSorted().isNotEmpty();
            assertThat(cutter.depth().isPositive()).isTrue();
        });
        assertThat(listed("core box").sized().get(2).call()).isEqualTo("core box, diameter 1/2");
    }

    @Test
    void the_head_of_the_shop_is_listed() {
        Head head = Asked.BUILT_IN.heads().get(0);
        assertThat(head.circle()).isEqualTo(Length.inches(6));
        assertThat(head.hook().toDegrees()).isEqualTo(20);
        assertThat(head.knives()).isEqualTo(1);
        assertThat(head.stock()).isSorted();
    }

    @Test
    void own_cutters_and_heads_are_read_over_the_built_in_ones() {
        Asked own = Asked.with("""
                cutters:
                  - { name: round-over, kind: round-over, pilot: 1/2, depth: 1, sizes: [7/16, 1/4] }
                heads:
                  - { name: shaper, circle: 4, hook: 15, speed: 7000, knives: 2, feed: 12.5 ft, widest: 3, deepest: 1,
                      corner: 1/32, stock: [3, 2] }
                """);
        assertThat(own.said()).isEmpty();
        Cutter cutter = own.catalog().cutters().get(0);
        assertThat(cutter.sizes()).isEqualTo(inches("1/4", "7/16"));
        assertThat(own.catalog().heads()).extracting(Head::name).containsExactly("molder head", "shaper");
        assertThat(own.catalog().heads().get(1).feed()).isEqualTo(Length.inches(150));
    }

    @Test
    void what_is_wrong_with_own_ones_is_all_said() {
        assertThat(Asked.with("""
                        cutters:
                          - { name: a, kind: round, sizes: [1/4], depth: 1 }
                          - { name: b, kind: cove, sizes: [0, 40], depth: -1 }
                          - { name: c }
                          - { name: d, kind: chamfer, sizes: [1], depth: 1, angle: 90 }
                        heads:
                          - { name: e, circle: 6, hook: 50, speed: fast, knives: 0, feed: 25 ft, widest: 9, deepest: 1,
                              corner: 1/16, stock: [9] }
                        """).said())
                .containsExactly(
                        "REFUSAL unknown-name own.yaml:2:22 No kind of cutter is called 'round'. | Known here: beading,"
                                + " chamfer, core-box, cove, ogee, rabbet, round-over, saw, straight.",
                        "REFUSAL not-a-size own.yaml:3:35 'b' has a size of 0. | Write it with its unit, as 3/8 in.",
                        "REFUSAL not-a-size own.yaml:3:35 'b' has a size of 40. | Write it with its unit, as 3/8 in.",
                        "REFUSAL not-a-size own.yaml:3:51 'b' has a depth of -1. | Write it with its unit, as 3/8 in.",
                        "REFUSAL missing-key own.yaml:4:5 'c' has no kind. | Add 'kind:', one of round-over, beading,"
                                + " cove, core-box, ogee, straight, rabbet, chamfer, saw.",
                        "REFUSAL missing-key own.yaml:4:5 'c' has no sizes. | Add 'sizes:', the sizes in which it is"
                                + " sold.",
                        "REFUSAL missing-key own.yaml:4:5 'c' has no depth. | Add 'depth:', a length.",
                        "REFUSAL not-an-angle own.yaml:5:60 No cutter has an angle of 90. | Write degrees from 1 to"
                                + " 89.",
                        "REFUSAL not-an-angle own.yaml:7:33 No cutter has a hook of 50. | Write degrees from 0 to 45.",
                        "REFUSAL not-a-number own.yaml:7:44 'fast' is not a speed figure of a head. | Write a whole"
                                + " number from 1 to 60000.",
                        "REFUSAL not-a-number own.yaml:7:58 '0' is not a knives figure of a head. | Write a whole number"
                                + " from 1 to 24.");
    }
}
