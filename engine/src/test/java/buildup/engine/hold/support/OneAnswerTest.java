package buildup.engine.hold.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.engine.hold.statics.Equilibrium;
import buildup.engine.hold.statics.Force;
import buildup.engine.hold.statics.Loading;
import buildup.engine.hold.statics.Mechanism;
import buildup.engine.hold.statics.Model;
import buildup.engine.hold.statics.Tie;
import buildup.engine.hold.support.Balance.Keeper;
import buildup.engine.hold.support.Support.Answer;
import buildup.engine.hold.support.Support.Whole;
import buildup.profiles.outline.Point;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is told of single groups and what is told of the whole stack never contradict each other. */
class OneAnswerTest {
    private static final int STACKS = Integer.getInteger("buildup.stacks", 500);
    private static final int PILES = Integer.getInteger("buildup.statics", 60);

    private final Map<Answer, Integer> answers = new EnumMap<>(Answer.class);
    private final Map<Keeper, Integer> keepers = new EnumMap<>(Keeper.class);

    private void all(LongFunction<Held> stack, int count) {
        for (long seed = 1; seed <= count; seed++) {
            Held held = stack.apply(seed);
            agree(held, held.support(), "seed " + seed);
        }
    }

    private void agree(Held held, Support support, String as) {
        Whole whole = support.whole();
        answers.merge(whole.answer(), 1, Integer::sum);
        support.balances().forEach(balance -> keepers.merge(balance.kept().by(), 1, Integer::sum));
        boolean falls = whole.answer() == Answer.NO;
        assertThat(whole.falls().isEmpty()).as(as + ": what falls has a motion").isEqualTo(!falls);
        assertThat(whole.closing().isPresent())
                .as(as + ": what moves first has one")
                .isEqualTo(whole.answer() == Answer.TRUST);
        assertThat(with(support, Keeper.NOTHING).isEmpty() || falls)
                .as(as + ": a group that falls, in a stack that stands")
                .isTrue();
        assertThat(with(support, Keeper.AFTER_CLOSING).isEmpty() || whole.answer() != Answer.STANDS)
                .as(as + ": a group that moves first, in a stack that does not")
                .isTrue();
        for (Balance balance : support.balances()) {
            assertThat(balance.leans() && balance.kept().by() == Keeper.WEIGHT)
                    .as(as + ": leans, and its weight keeps it: " + balance)
                    .isFalse();
            if (balance.kept().by() == Keeper.FASTENINGS && whole.stands()) {
                assertThat(balance.kept().times().orElse(1)).as(as).isGreaterThanOrEqualTo(1 - 1e-6);
            }
            assertThat(balance.kept().by() == Keeper.FASTENINGS && held.joints().isEmpty())
                    .as(as + ": held by fastenings that are not there")
                    .isFalse();
        }
        if (falls) {
            everyPieceThatFallsOffItsBearingHasItsRow(held, support, as);
        } else if (!held.joints().isEmpty() && whole.times().isPresent()) {
            assertThat(whole.times().getAsDouble()).as(as).isGreaterThanOrEqualTo(1 - 1e-6);
        }
        if (whole.loadFactor().isPresent()) {
            assertThat(whole.loadFactor().getAsDouble() < 1 - 1e-6).as(as).isEqualTo(falls);
        }
    }

    private static List<Balance> with(Support support, Keeper keeper) {
        return support.balances().stream()
                .filter(balance -> balance.kept().by() == keeper)
                .toList();
    }

    private static void everyPieceThatFallsOffItsBearingHasItsRow(Held held, Support support, String as) {
        Set<Integer> told = with(support, Keeper.NOTHING).stream()
                .flatMap(balance -> balance.group().stream())
                .collect(Collectors.toSet());
        for (Fall fall : support.whole().falls()) {
            for (Fall.Part part : fall.parts()) {
                for (int piece : part.pieces()) {
                    boolean bears = held.section().standing(piece).bearing().stream()
                            .anyMatch(bearing -> !part.pieces().contains(bearing.on()));
                    boolean fixed = held.section().standing(piece).counted();
                    assertThat(!bears || fixed || told.contains(piece))
                            .as(
                                    "%s: %s falls and no row says so",
                                    as, held.section().name(piece))
                            .isTrue();
                }
            }
        }
    }

    @Test
    @Tag("long")
    void of_stacks_with_fastenings_at_random() {
        all(seed -> RandomHeld.of(seed).decided(), STACKS / 2);
        all(seed -> RandomBridge.of(seed).decided(), STACKS / 2);
        assertThat(answers.keySet()).containsExactlyInAnyOrder(Answer.values());
        assertThat(keepers.keySet()).contains(Keeper.WEIGHT, Keeper.FASTENINGS, Keeper.NOTHING);
    }

    @Test
    @Tag("long")
    void of_the_same_stacks_without_fastenings() {
        all(seed -> bare(RandomHeld.of(seed)), STACKS / 5);
        all(seed -> bare(RandomBridge.of(seed)), STACKS / 5);
        all(RandomPile::of, STACKS / 5);
        assertThat(keepers.keySet()).doesNotContain(Keeper.FASTENINGS);
    }

    private static Held bare(Held held) {
        return new Held(held.section(), held.loads(), List.of());
    }

    @Tag("sampled")
    @Test
    void a_group_on_bearings_that_stand_falls_just_when_its_weight_is_past_them() {
        // the determinate case: one board on posts of framing, nothing beside it, no fastenings
        for (long seed = 1; seed <= PILES; seed++) {
            Held held = bare(RandomPile.of(seed));
            for (int piece = 1; piece <= 6; piece++) {
                Optional<Balance> balance = new Balances(held.section(), held.path(), held.loads()).ofPiece(piece);
                if (balance.isPresent()) {
                    Balance one = balance.get();
                    List<Integer> rest = held.model().free().stream()
                            .filter(other -> !one.group().contains(other))
                            .toList();
                    Model model = held.model()
                            .welded(rest, Force.EARTH)
                            .welded(
                                    one.group().subList(1, one.group().size()),
                                    one.group().get(0));
                    assertThat(Mechanism.falls(model, new Loading(held.all())))
                            .as("seed %d, piece %d, margin %s", seed, piece, one.margin())
                            .isEqualTo(one.margin() < 0);
                }
            }
        }
    }

    @Tag("sampled")
    @Test
    void the_hold_back_and_the_hold_down_that_are_told_are_those_of_the_whole_stack() {
        int seen = 0;
        for (long seed = 1; seed <= PILES; seed++) {
            Held held = bare(RandomPile.of(seed));
            for (Balance balance : held.support().leaning()) {
                if (balance.holdDown().isPresent() && balance.outward()) {
                    List<Integer> rest = held.model().free().stream()
                            .filter(other -> !balance.group().contains(other))
                            .toList();
                    List<Integer> others = balance.group().stream()
                            .filter(other -> other != balance.piece())
                            .toList();
                    Model model = held.model().welded(rest, Force.EARTH).welded(others, balance.piece());
                    Tie nail = new Tie(
                            "n", balance.piece(), balance.carriers().get(0), balance.downAt(), new Point(0, -1), 1, 0);
                    assertThat(Equilibrium.least(model, held.all(), List.of(nail)))
                            .as("seed %d", seed)
                            .hasValueCloseTo(balance.holdDown().getAsDouble(), within(1e-4));
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(PILES / 4);
    }
}
