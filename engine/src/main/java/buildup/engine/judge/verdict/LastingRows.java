package buildup.engine.judge.verdict;

import buildup.engine.hold.season.Effect;
import buildup.engine.hold.season.Held;
import buildup.engine.hold.season.Year;
import buildup.engine.hold.tolerance.ErrorFigure;
import buildup.engine.hold.tolerance.ErrorSource;
import buildup.engine.hold.tolerance.ErrorStudy;
import buildup.engine.hold.tolerance.Tolerances;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows on the seasons and on the errors of sizes, as far as nothing was said against them. */
final class LastingRows {
    /** More than one build in a hundred is worth a look. */
    private static final double LOOKED_AT = 0.01;

    /** Standards for walls count over so much height, in. */
    private static final double PLUMB_OVER = 32;

    private final Section section;
    private final Year year;
    private final ErrorStudy errors;

    LastingRows(Facts facts) {
        this.section = facts.section();
        this.year = facts.year();
        this.errors = facts.errors();
    }

    List<Ruling> rulings() {
        List<Ruling> rulings = new ArrayList<>();
        if (year.asked()) {
            rulings.add(season());
        }
        if (errors.asked()) {
            rulings.add(tolerance());
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

    /** The figure that fails most often decides. */
    private Ruling tolerance() {
        Optional<Integer> deciding = errors.deciding();
        if (deciding.isEmpty()) {
            ErrorFigure height = errors.figures().get(0);
            return Ruling.yes(
                            Topic.TOLERANCE,
                            VerdictWords.STRAYS.with("figure", height.name()).with("by", Figure.fine(height.rss())))
                    .figure(Figure.fine(height.rss()));
        }
        ErrorFigure figure = errors.figures().get(deciding.get());
        double chance = figure.chance().orElse(0);
        Figure right = Figure.of(Quantity.SHARE, 1 - chance)
                .rounded(Rounding.decimals(1).to(Rounding.Side.DOWN));
        Phrase rest = VerdictWords.RIGHT.with("right", right).with("figure", figure.name());
        List<String> wrong = errors.figures().stream()
                .filter(one -> one.chance().isPresent() && !one.sound())
                .map(ErrorFigure::name)
                .toList();
        Phrase because = wrong.isEmpty()
                ? rest
                : VerdictWords.WRONG_AS_DRAWN
                        .with("wrong", Listing.names(wrong))
                        .with("right", rest);
        boolean often = chance > LOOKED_AT;
        Ruling ruling = Ruling.of(Topic.TOLERANCE, often || !wrong.isEmpty() ? Reply.LOOK : Reply.YES, because)
                .figure(right);
        return errors.advice().stream()
                .filter(advice -> advice.figure() == deciding.get())
                .findFirst()
                .filter(advice -> often)
                .map(advice -> ruling.cure(VerdictWords.TRIED.with("cure", Tolerances.words(section, errors, advice))))
                .orElse(ruling);
    }

    /** What the rows rest on. */
    List<Phrase> trusted() {
        List<Phrase> trusted = new ArrayList<>(resting());
        boolean wall = errors.sources().stream().anyMatch(source -> source.what() == ErrorSource.What.WALL);
        boolean ceiling = errors.sources().stream().anyMatch(source -> source.what() == ErrorSource.What.CEILING);
        if (wall && !errors.settings().plumbGiven()) {
            trusted.add(VerdictWords.PLUMB
                    .with("out", Figure.length(errors.settings().plumb() * PLUMB_OVER))
                    .with("over", Figure.length(PLUMB_OVER)));
        }
        if (ceiling && !errors.settings().levelGiven()) {
            trusted.add(VerdictWords.LEVEL.with(
                    "by", Figure.length(errors.settings().level())));
        }
        return trusted;
    }

    private List<Phrase> resting() {
        List<String> resting = year.held().stream()
                .filter(held -> held.how() == Held.How.RESTS)
                .map(held -> section.name(held.body()))
                .toList();
        return resting.isEmpty() ? List.of() : List.of(VerdictWords.MOVES_FROM.with("pieces", Listing.names(resting)));
    }
}
