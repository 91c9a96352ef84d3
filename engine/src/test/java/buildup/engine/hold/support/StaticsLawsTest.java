package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.Bench;
import buildup.engine.hold.statics.Load;
import buildup.engine.hold.statics.Tie;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What must hold of any stack, on random ones. */
class StaticsLawsTest {
    private static final int PILES = Integer.getInteger("buildup.statics", 60);

    private static final int STACKS = 60;

    private interface Law {
        void holds(Held held, double factor, String as);
    }

    private static void all(Law law) {
        for (long seed = 1001; seed <= 1000 + STACKS; seed++) {
            Held held = RandomHeld.of(seed);
            law.holds(held, held.factor(), "seed " + seed);
        }
    }

    private static void same(double found, double wanted, String as) {
        if (Double.isInfinite(wanted)) {
            assertThat(found).as(as).isEqualTo(wanted);
        } else {
            assertThat(found).as(as).isCloseTo(wanted, within(1e-6 * Math.max(1, wanted)));
        }
    }

    private static void notMore(double found, double most, String as) {
        assertThat(found).as(as).isLessThanOrEqualTo(Double.isInfinite(most) ? most : most + 1e-6 * Math.max(1, most));
    }

    @Test
    void a_mirrored_stack_takes_as_much() {
        all((held, factor, as) -> same(held.mirrored().factor(), factor, as));
    }

    @Test
    void a_mirrored_pile_stands_and_tips_as_the_pile_does() {
        for (long seed = 1; seed <= STACKS; seed++) {
            Held held = RandomPile.of(seed);
            Held turned = held.mirrored();
            for (Balance balance : held.balancesOn("base")) {
                Balance other = turned.balancesOn("base").stream()
                        .filter(one -> one.group().equals(balance.group()))
                        .findFirst()
                        .orElseThrow();
                assertThat(other.bearingBack()).isCloseTo(-balance.bearingFace(), within(1e-9));
                assertThat(other.bearingFace()).isCloseTo(-balance.bearingBack(), within(1e-9));
                assertThat(other.weight()).isCloseTo(balance.weight(), within(1e-9));
                assertThat(other.resultant()).isCloseTo(-balance.resultant(), within(1e-9));
                assertThat(other.loaded()).isCloseTo(-balance.loaded(), within(1e-9));
                assertThat(other.overturning()).isCloseTo(balance.overturning(), within(1e-9));
                assertThat(other.margin()).isCloseTo(balance.margin(), within(1e-9));
                assertThat(other.holdDown().orElse(0))
                        .isCloseTo(balance.holdDown().orElse(0), within(1e-9));
            }
        }
    }

    @Test
    void k_times_the_loads_divide_the_factor_by_k() {
        all((held, factor, as) -> {
            same(held.loadsTimes(2.5).factor(), factor / 2.5, as);
            same(held.loadsTimes(0.125).factor(), factor / 0.125, as);
        });
    }

    @Test
    void a_load_moved_on_after_the_factor_has_sunk_never_raises_it_again() {
        // once beyond what governs, farther is never better: the factor over the place of the load has no valley
        all((held, factor, as) -> {
            Load load = held.loads().get(0);
            Held alone = new Held(held.section(), List.of(), held.joints());
            Box box = held.section().body(load.body()).outline().box();
            String on = held.section().name(load.body());
            double before = Double.NEGATIVE_INFINITY;
            boolean sunk = false;
            for (int i = 0; i <= 6; i++) {
                double out = box.back() + box.width() * i / 6;
                double here = alone.load(on, out, load.poundsPerFoot()).factor();
                if (sunk) {
                    notMore(here, before, as + " at " + out);
                }
                sunk = sunk || here < before - 1e-4 * Math.abs(before);
                before = here;
            }
        });
    }

    @Test
    void a_joint_taken_out_never_raises_the_factor() {
        all((held, factor, as) -> {
            for (int i = 0; i < held.joints().size(); i++) {
                List<Tie> fewer = new ArrayList<>(held.joints());
                fewer.remove(i);
                notMore(new Held(held.section(), held.loads(), fewer).factor(), factor, as + " without " + i);
            }
        });
    }

    @Test
    void a_stronger_joint_never_lowers_the_factor() {
        all((held, factor, as) -> {
            for (Tie chosen : held.joints()) {
                Held stronger = held.joints(joint -> joint == chosen ? times(joint, 1.5) : joint);
                notMore(factor, stronger.factor(), as + " " + chosen.name());
            }
        });
    }

    private static Tie times(Tie joint, double times) {
        return new Tie(
                joint.name(),
                joint.outer(),
                joint.inner(),
                joint.at(),
                joint.axis(),
                joint.withdrawal() * times,
                joint.lateral() * times);
    }

    @Test
    void the_nail_that_governs_helps_when_it_is_made_stronger() {
        int seen = 0;
        for (Held held : HandStacks.all()) {
            String governs = held.governs();
            Held stronger = held.joints(joint -> joint.name().equals(governs) ? times(joint, 1.01) : joint);
            if (!stronger.equals(held)) {
                assertThat(stronger.factor()).as(governs).isGreaterThan(held.factor());
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(5);
    }

    @Test
    void without_loads_a_stack_stands_or_tips_and_there_is_no_factor() {
        all((held, factor, as) -> {
            Held bare = new Held(held.section(), List.of(), held.joints());
            assertThat(bare.factor()).as(as).isInfinite();
            assertThat(bare.factor() > 0).as(as).isEqualTo(factor >= 0);
        });
    }

    /** Pieces on one bearing: a random trapezium on a base before a post, with a load over its face. */
    private static Held trapezium(Random random) {
        return Held.of(Bench.loose(
                        "name: post, kind: framing, section: [out 1, up 14], face: 0, top: 12",
                        "name: base, kind: framing, section: [out 9, up 1], back: 0, top: 0",
                        String.format(
                                Locale.ROOT,
                                "name: board, section: [out %.4f, chamfer %.4f x %.4f], back: 0, bottom: 0",
                                0.5 + random.nextDouble(),
                                2 + 8 * random.nextDouble(),
                                1 + 5 * random.nextDouble())))
                .free()
                .load("board", 1.5, 1 + 5 * random.nextDouble());
    }

    @Test
    void a_single_piece_without_nails_takes_the_load_that_brings_its_resultant_over_the_end_of_its_bearing() {
        Random random = new Random(5);
        int stood = 0;
        for (int i = 0; i < 100; i++) {
            Held held = trapezium(random);
            double factor = held.factor();
            Balance own = new Held(held.section(), List.of(), List.of()).balance("board");
            assertThat(factor >= 0).as("stands by itself").isEqualTo(!own.leans());
            if (factor >= 0 && Double.isFinite(factor)) {
                assertThat(held.loadsTimes(factor).balance("board").margin()).isCloseTo(0, within(1e-6));
                stood++;
            }
        }
        assertThat(stood).isBetween(10, 90);
    }

    @Tag("sampled")
    @Test
    void a_pile_takes_the_load_that_brings_the_first_of_its_joints_to_its_edge() {
        int stood = 0;
        for (long seed = 1; seed <= PILES; seed++) {
            Held pile = RandomPile.of(seed);
            double factor = pile.factor();
            assertThat(factor >= 0).as("seed %d", seed).isEqualTo(leastMargin(pile.loadsTimes(0)) >= 0);
            if (factor >= 0 && Double.isFinite(factor)) {
                assertThat(leastMargin(pile.loadsTimes(factor)))
                        .as("seed %d", seed)
                        .isCloseTo(0, within(1e-6));
                stood++;
            }
        }
        assertThat(stood).isGreaterThan(PILES / 20);
    }

    /** Over all blocks of a pile: how far the resultant of all above stays from the nearer end of the bearing. */
    private static double leastMargin(Held pile) {
        return IntStream.rangeClosed(1, 6)
                .mapToDouble(block -> pile.balance("p" + block).margin())
                .min()
                .orElseThrow();
    }

    @Test
    void the_load_that_one_nail_holds_back_needs_just_that_nail() {
        Random random = new Random(6);
        for (int i = 0; i < 100; i++) {
            Held held = trapezium(random);
            Point at = held.balance("board").holdAt();
            double pull = 5 + 10 * random.nextDouble();
            double factor =
                    held.nail("hold-back", "board", "post", at, 180, pull, 0).factor();
            assertThat(factor).isGreaterThan(0);
            Balance limit = held.loadsTimes(factor).balance("board");
            assertThat(limit.holdBack()).hasValueCloseTo(pull, within(1e-6));
            assertThat(limit.overturning()).isCloseTo(pull * at.y(), within(1e-5));
        }
    }

    @Test
    void the_load_that_one_nail_holds_down_needs_just_that_nail() {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            String shelf = String.format(
                    Locale.ROOT,
                    "name: shelf, section: [out %.4f, up %.4f], back: -4, bottom: 0",
                    8 + 6 * random.nextDouble(),
                    0.5 + random.nextDouble());
            Held held = Held.of(
                            Bench.loose("name: ledge, kind: framing, section: [out 4, up 4], face: 0, top: 0", shelf))
                    .load("shelf", 3, 3 + 5 * random.nextDouble());
            Point down = held.balanceOn("ledge").downAt();
            double pull = 2 + 10 * random.nextDouble();
            double factor = held.nail("hold-down", "shelf", "ledge", new Point(down.x(), 0), -90, pull, 0)
                    .factor();
            Balance limit = held.loadsTimes(factor).balanceOn("ledge");
            assertThat(limit.holdDown()).hasValueCloseTo(pull, within(1e-6));
            assertThat(limit.leans()).isTrue();
        }
    }

    @Test
    void a_nail_weaker_than_the_hold_back_lets_the_piece_tip_by_itself() {
        Held bare = Held.of(Bench.loose(
                        "name: post, kind: framing, section: [out 1, up 14], face: 0, top: 12",
                        "name: base, kind: framing, section: [out 9, up 1], back: 0, top: 0",
                        "name: board, section: [out 1, chamfer 8 x 3], back: 0, bottom: 0"))
                .free();
        Balance balance = bare.balance("board");
        double pull = balance.holdBack().orElseThrow();
        assertThat(bare.nail("n", "board", "post", balance.holdAt(), 180, pull * 0.999, 0)
                        .limit())
                .isEmpty();
        assertThat(bare.nail("n", "board", "post", balance.holdAt(), 180, pull * 1.001, 0)
                        .limit())
                .isPresent();
    }
}
