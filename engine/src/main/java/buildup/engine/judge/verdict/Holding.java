package buildup.engine.judge.verdict;

import buildup.engine.hold.fixing.Fixed;
import buildup.shared.figure.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The rows on standing and on being held, as far as nothing was said against them. */
final class Holding {
    private final Facts facts;

    Holding(Facts facts) {
        this.facts = facts;
    }

    List<Ruling> rulings() {
        List<Ruling> rulings = new ArrayList<>();
        rulings.add(Ruling.yes(Topic.STANDS, VerdictWords.STANDS));
        rulings.add(held());
        return rulings;
    }

    private Ruling held() {
        Optional<Fixed> least = facts.fixed().stream().min(Comparator.comparingDouble(Fixed::bite));
        return least.map(fixed -> Ruling.yes(
                                Topic.HELD,
                                VerdictWords.HELD
                                        .with("bite", Figure.atMost(fixed.bite()))
                                        .with(
                                                "wanted",
                                                Figure.atLeast(fixed.biteCheck().needs())))
                        .figure(Figure.atMost(fixed.bite())))
                .orElse(Ruling.yes(Topic.HELD, VerdictWords.HELD_UNASKED));
    }
}
