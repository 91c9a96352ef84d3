package buildup.engine.judge.verdict;

import buildup.catalog.book.EntablaturePart;
import buildup.catalog.fire.FireRule;
import buildup.engine.judge.clearance.Clearance;
import buildup.engine.judge.clearance.FireRow;
import buildup.engine.judge.clearance.Firebox;
import buildup.engine.judge.proportion.OrderRow;
import buildup.engine.judge.proportion.PartShare;
import buildup.engine.judge.proportion.Proportion;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows on proportion and on fire, as far as nothing was said against them. */
final class JudgingRows {
    private final Proportion proportion;
    private final Clearance clearance;

    JudgingRows(Facts facts) {
        this.proportion = facts.proportion();
        this.clearance = facts.clearance();
    }

    List<Ruling> rulings() {
        List<Ruling> rulings = new ArrayList<>();
        if (!proportion.parts().isEmpty()) {
            rulings.add(proportion());
        }
        clearance.firebox().map(this::fire).ifPresent(rulings::add);
        return rulings;
    }

    /** A reading beside the books is for a person to look at, whatever it reads. */
    private Ruling proportion() {
        long remarks = proportion.remarks();
        Phrase none = Phrase.of("");
        Ruling look = Ruling.of(
                Topic.PROPORTION,
                Reply.LOOK,
                VerdictWords.READS
                        .with(
                                "shares",
                                Listing.commas(proportion.parts().stream()
                                        .map(JudgingRows::share)
                                        .toList()))
                        .with("nearest", proportion.nearest().map(this::nearest).orElse(none))
                        .with(
                                "projects",
                                proportion.projectionToHeight().isPresent()
                                        ? VerdictWords.PROJECTS.with("ratio", ratio())
                                        : none)
                        .with(
                                "remarks",
                                remarks == 0
                                        ? none
                                        : remarks == 1
                                                ? VerdictWords.ONE_REMARK
                                                : VerdictWords.REMARKS.with("count", Figure.count(remarks))));
        return proportion
                .part(EntablaturePart.CORNICE)
                .map(cornice -> look.figure(Figure.percent(cornice.share())))
                .orElse(look);
    }

    private Figure ratio() {
        return Figure.of(Quantity.RATIO, proportion.projectionToHeight().orElse(0))
                .rounded(Rounding.decimals(2));
    }

    private static Phrase share(PartShare part) {
        return VerdictWords.SHARE_OF.with("part", part.part().word()).with("share", whole(part.share()));
    }

    /** A proportion is read in whole percent. */
    private static Figure whole(double share) {
        return Figure.share(share);
    }

    private Phrase nearest(OrderRow row) {
        List<Phrase> shares = proportion.parts().stream()
                .map(part -> Phrase.of("{share}")
                        .with("share", whole(row.height(part.part()).orElse(0) / proportion.height())))
                .toList();
        return VerdictWords.NEAREST_ORDER.with("order", row.order().name()).with("shares", Listing.commas(shares));
    }

    /** That rules are kept is no leave to build: it rests on what the authority and the label say. */
    private Ruling fire(Firebox firebox) {
        Optional<FireRow> tightest = clearance.tightest();
        if (tightest.isEmpty()) {
            return Ruling.of(Topic.FIRE, Reply.TRUST, VerdictWords.NOTHING_BURNS);
        }
        FireRow row = tightest.get();
        Figure spare = Figure.atMost(row.spare().orElse(0));
        return Ruling.of(
                        Topic.FIRE,
                        Reply.TRUST,
                        VerdictWords.KEEPS
                                .with(
                                        "rules",
                                        VerdictWords.names(firebox.rules().stream()
                                                .map(FireRule::name)
                                                .toList()))
                                .with("piece", row.piece())
                                .with("spare", spare))
                .figure(spare);
    }

    /** What is told of fire rests on what was not given. */
    List<Phrase> trusted() {
        List<Phrase> trusted = new ArrayList<>();
        clearance.firebox().ifPresent(firebox -> {
            List<String> stone = firebox.noncombustible().stream().sorted().toList();
            if (!stone.isEmpty()) {
                trusted.add((stone.size() == 1 ? VerdictWords.NONCOMBUSTIBLE : VerdictWords.NONCOMBUSTIBLES)
                        .with("pieces", VerdictWords.names(stone)));
            }
            trusted.add(VerdictWords.FIRE_DECIDES);
        });
        return trusted;
    }
}
