package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.statics.Cluster;
import buildup.engine.hold.statics.Equilibrium;
import buildup.engine.hold.statics.Force;
import buildup.engine.hold.statics.Loading;
import buildup.engine.hold.statics.Mechanism;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.statics.Model.Weight;
import buildup.engine.hold.statics.Tie;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A stack falls apart into clusters that can be asked one by one, and no answer changes by that. */
class ClustersTest {
    private static final int STACKS = Integer.getInteger("buildup.clusters", 40);

    private static Held pile(int boards, double step) {
        List<String> pieces =
                new ArrayList<>(List.of("name: case, kind: framing, section: [out 8, up 8], face: wall, top: 0"));
        for (int i = 0; i < boards; i++) {
            pieces.add(String.format(
                    Locale.ROOT,
                    "name: b%d, profile: board 1 x 8, lay: flat, back: %.4f, bottom: %d",
                    i,
                    -8 + step * i,
                    i));
        }
        return Held.of(Bench.loose(pieces.toArray(String[]::new))).free();
    }

    @Test
    void a_pile_has_a_cluster_for_each_board() {
        List<Cluster> clusters = pile(40, 0).model().clusters();
        assertThat(clusters).hasSize(40).allMatch(cluster -> cluster.size() == 1);
        assertThat(clusters.get(0).forces()).hasSize(2);
    }

    @Test
    void what_stands_on_a_board_moves_with_it_in_the_clusters_below() {
        Held pile = pile(3, 0);
        for (Cluster cluster : pile.model().clusters()) {
            String lead = pile.section().name(cluster.body(0));
            assertThat(pile.names(
                            pile.model().free().stream().filter(cluster::moves).toList()))
                    .isEqualTo(List.of("b0", "b1", "b2").subList(Integer.parseInt(lead.substring(1)), 3));
        }
    }

    @Test
    void boards_that_lean_on_one_another_both_ways_are_one_cluster() {
        Held boards = Held.of(Bench.loose(
                        "name: case, kind: framing, section: [out 8, up 8], face: wall, top: 0",
                        "name: a, section: [out 2, up 2], back: -6, bottom: 0",
                        "name: b, section: [out 2, up 2], back: -4, bottom: 0",
                        "name: lid, section: [out 4, up 1], back: -6, bottom: 2"))
                .free();
        assertThat(boards.model().clusters()).hasSize(1).allMatch(cluster -> cluster.size() == 3);
    }

    @Test
    void welded_pieces_are_one() {
        Held pile = pile(4, 0);
        assertThat(pile.model().welded(List.of(2, 3, 4), 1).clusters()).hasSize(1);
        assertThat(pile.model().welded(List.of(1, 2), Force.EARTH).clusters()).hasSize(2);
    }

    @Test
    void a_board_that_nothing_carries_has_a_cluster_without_forces() {
        Held floating = Held.of(Bench.loose(
                        "name: a, section: [out 2, up 2], back: 4, bottom: 0",
                        "name: b, section: [out 2, up 2], back: 4, bottom: 2"))
                .free();
        List<Cluster> clusters = floating.model().clusters();
        assertThat(clusters).hasSize(2);
        assertThat(clusters.get(0).forces()).isEmpty();
        assertThat(floating.falls()).isNotEmpty();
    }

    /** The same model with every piece in one cluster, which is the program of the whole stack as it is written in books. */
    private static boolean fallsAsOne(Held held, List<Weight> weights) {
        // a nail too weak to hold anything joins every piece to the one before, and the ground to the last: a circle
        List<Integer> free = held.model().free();
        List<Tie> circle = new ArrayList<>();
        for (int i = 0; i < free.size(); i++) {
            int other = i == 0 ? Force.EARTH : free.get(i - 1);
            circle.add(new Tie("none", free.get(i), other, Point.ORIGIN, new Point(1, 0), 0, 0));
        }
        circle.add(new Tie("none", free.get(free.size() - 1), Force.EARTH, Point.ORIGIN, new Point(1, 0), 0, 0));
        Model one = held.model().with(circle);
        assertThat(one.clusters()).hasSize(1);
        return Mechanism.falls(one, new Loading(weights));
    }

    @Tag("sampled")
    @Test
    void random_stacks_fall_cluster_by_cluster_just_when_they_fall_as_a_whole() {
        int apart = 0;
        int falls = 0;
        for (long seed = 1; seed <= STACKS; seed++) {
            for (Held held : List.of(RandomHeld.of(seed), RandomBridge.of(seed), RandomPile.of(seed))) {
                boolean whole = fallsAsOne(held, held.all());
                assertThat(Mechanism.falls(held.model(), new Loading(held.all())))
                        .as("seed %d", seed)
                        .isEqualTo(whole);
                apart += held.model().clusters().size() > 1 ? 1 : 0;
                falls += whole ? 1 : 0;
            }
        }
        assertThat(apart).isGreaterThan(STACKS);
        assertThat(falls).isBetween(STACKS * 2 / 3, STACKS * 7 / 3);
    }

    @Test
    void the_factor_is_that_of_the_weakest_cluster() {
        // two shelves apart from each other, each under one nail that holds 10 lb at 4 in behind the edge it tips on
        Held shelves = Held.of(Bench.loose(
                        "name: case, kind: framing, section: [out 8, up 8], face: wall, top: 0",
                        "name: one, profile: board 1 x 12, lay: flat, back: -8, bottom: 0",
                        "name: other, kind: framing, section: [out 8, up 8], face: wall, top: 20",
                        "name: two, profile: board 1 x 12, lay: flat, back: -8, bottom: 20"))
                .free()
                .nail("n one", "one", "case", new Point(-4, 0), -90, 10, 0)
                .nail("n two", "two", "other", new Point(-4, 20), -90, 20, 0)
                .load("one", 2, 1)
                .load("two", 2, 1);
        double own = 12 * Held.WOOD * 2;
        // load f, 2 in past the edge, against the board's weight 2 in behind it and the nail's pull 4 in behind it
        double least = (own + 10 * 4) / 2;
        assertThat(shelves.model().clusters()).hasSize(2);
        assertThat(Equilibrium.factor(shelves.model(), shelves.weights(), Weight.of(shelves.loads())))
                .hasValueSatisfying(factor -> assertThat(factor).isCloseTo(least, within(1e-6)));
        assertThat(shelves.governs()).isEqualTo("n one");
    }

    @Test
    void loads_that_one_cluster_needs_and_another_does_not_bear_leave_no_factor() {
        // the beam tips without 2 lb on its tail; the post's nail bears 1
        Held stack = Held.of(Bench.loose(
                        "name: case, kind: framing, section: [out 8, up 8], face: wall, top: 0",
                        "name: beam, section: [out 12, up 1], back: -4, bottom: 0",
                        "name: other, kind: framing, section: [out 8, up 8], face: wall, top: 20",
                        "name: tray, section: [out 1, up 1], back: 0, bottom: 19"))
                .free()
                .nail("n", "tray", "other", new Point(0, 19.5), 180, 0, 1)
                .nail("m", "tray", "other", new Point(0, 19.1), 180, 100, 0)
                .load("beam", -4, 10)
                .load("tray", 0.5, 10);
        Optional<Double> factor = Equilibrium.factor(stack.model(), stack.weights(), Weight.of(stack.loads()));
        assertThat(factor).isEmpty();
    }
}
