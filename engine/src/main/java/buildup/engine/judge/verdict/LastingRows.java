package buildup.engine.judge.verdict;

import buildup.engine.hold.season.Effect;
import buildup.engine.hold.season.Held;
import buildup.engine.hold.season.Year;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The row on the seasons, as far as nothing was said against them. */
final class LastingRows {
    private final Section section;
    private final Year year;

    LastingRows(Facts facts) {
        this.section = facts.section();
        this.year = facts.year();
    }

    List<Ruling> rulings() {
        List<Ruling> rulings = new ArrayList<>();
        if (year.asked()) {
            rulings.add(season());
        }
        return rulings;
    }

    private Ruling season() {
        Optional<Effect> farthest = year.farthest();
        Figure most =
                Figure.fine(farthest.map(effect -> Math.abs(effect.amount())).orElse(0.0));
        Phrase because = farthest.filter(effect -> most.amount() > Tolerance.COINCIDENT)
                .map(effect -> VerdictWords.MOVES
                        .with("name", effect.name())
                        .with("amount", most)
                        .with("way", effect.result())
                        .with("season", year.seasons().get(effect.season()).name()))
                .orElse(VerdictWords.STILL);
        if (!year.unknown().isEmpty()) {
            List<String> pieces = year.unknown().stream().map(section::name).toList();
            return Ruling.of(
                            Topic.SEASON,
                            Reply.TRUST,
                            VerdictWords.MOVES_UNKNOWN
                                    .with("pieces", Listing.names(pieces))
                                    .with("rest", because))
                    .figure(most);
        }
        Reply reply = most.amount() >= Tolerance.SAW_CUT ? Reply.LOOK : Reply.YES;
        return Ruling.of(Topic.SEASON, reply, because).figure(most);
    }

    /** What the row rests on. */
    List<Phrase> trusted() {
        List<String> resting = year.held().stream()
                .filter(held -> held.how() == Held.How.RESTS)
                .map(held -> section.name(held.body()))
                .toList();
        return resting.isEmpty() ? List.of() : List.of(VerdictWords.MOVES_FROM.with("pieces", Listing.names(resting)));
    }
}
