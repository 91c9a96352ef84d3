package buildup.engine.judge.verdict;

import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.support.FallWords;
import buildup.engine.hold.support.Support;
import buildup.engine.hold.support.Support.Whole;
import buildup.engine.hold.support.Ties;
import buildup.engine.hold.support.Trust;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The rows on standing and on being held, as far as nothing was said against them. */
final class HoldingRows {
    private final Facts facts;
    private final Support support;

    HoldingRows(Facts facts) {
        this.facts = facts;
        this.support = facts.support();
    }

    List<Ruling> rulings() {
        return List.of(stands(), held());
    }

    private Ruling stands() {
        Whole whole = support.whole();
        Phrase factor = factor(whole);
        return switch (whole.answer()) {
            case TRUST ->
                Ruling.of(
                        Topic.STANDS,
                        Reply.TRUST,
                        VerdictWords.STANDS_AFTER
                                .with(
                                        "motion",
                                        FallWords.closing(
                                                facts.section(), whole.closing().orElseThrow()))
                                .with("factor", factor));
            case NO ->
                Ruling.of(
                        Topic.STANDS,
                        Reply.NO,
                        FallWords.of(facts.section(), whole.falls().get(0)));
            case STANDS -> {
                List<String> hanging = names(Set.of(Trust.Why.HANGS, Trust.Why.FALLS_UNLESS_FIXED));
                Ruling ruling = hanging.isEmpty()
                        ? Ruling.yes(Topic.STANDS, factor)
                        : Ruling.of(
                                Topic.STANDS,
                                Reply.TRUST,
                                (hanging.size() == 1 ? VerdictWords.HANGS : VerdictWords.HANG)
                                        .with("pieces", VerdictWords.names(hanging)));
                yield whole.factor().isPresent() ? ruling.figure(times(whole)) : ruling;
            }
        };
    }

    private static Figure times(Whole whole) {
        return Figure.of(Quantity.TIMES, whole.factor().orElse(0)).rounded(Rounding.TIMES);
    }

    private Phrase factor(Whole whole) {
        if (whole.factor().isEmpty()) {
            return support.loads().isEmpty() ? VerdictWords.CARRIED : VerdictWords.CARRIED_LOADED;
        }
        Phrase first = whole.governs()
                .map(governs -> VerdictWords.GIVES_FIRST.with("first", governs.first()))
                .orElse(Phrase.of(""));
        return (whole.loadFactor().isPresent() ? VerdictWords.TAKES : VerdictWords.CARRIES)
                .with("times", times(whole))
                .with("first", first);
    }

    private Ruling held() {
        Set<Integer> fastened = Ties.nailed(facts.section(), facts.fixed());
        List<String> open = new ArrayList<>();
        for (int i = 0; i < facts.section().bodies().size(); i++) {
            if (facts.section().body(i).trim() && !fastened.contains(i)) {
                open.add(facts.section().name(i));
            }
        }
        List<Fixed> plugged = facts.fixed().stream().filter(Fixed::inMasonry).toList();
        Phrase said = VerdictWords.IN_MASONRY.with(
                "rows",
                VerdictWords.names(
                        plugged.stream().map(row -> row.fastening().name()).toList()));
        Optional<Fixed> least = facts.fixed().stream()
                .filter(row -> !plugged.contains(row))
                .min(Comparator.comparingDouble(HoldingRows::spare));
        if (least.isEmpty()) {
            return Ruling.of(Topic.HELD, Reply.TRUST, plugged.isEmpty() ? VerdictWords.HELD_UNASKED : said);
        }
        Figure bite = Figure.atMost(least.get().bite());
        Phrase held = VerdictWords.HELD
                .with("fastening", least.get().fastening().name())
                .with("bite", bite)
                .with("wanted", Figure.atLeast(least.get().biteCheck().needs()));
        Phrase all = plugged.isEmpty()
                ? held
                : VerdictWords.HELD_TOO.with("held", held).with("more", said);
        Ruling ruling = !open.isEmpty()
                ? Ruling.of(
                        Topic.HELD,
                        Reply.TRUST,
                        VerdictWords.HELD_OPEN.with("held", all).with("pieces", VerdictWords.names(open)))
                : plugged.isEmpty() ? Ruling.yes(Topic.HELD, all) : Ruling.of(Topic.HELD, Reply.TRUST, all);
        return ruling.figure(bite);
    }

    private static double spare(Fixed fixed) {
        return fixed.bite() - fixed.biteCheck().needs();
    }

    private List<String> names(Set<Trust.Why> whys) {
        return support.trust().stream()
                .filter(trust -> whys.contains(trust.why()))
                .map(trust -> facts.section().name(trust.piece()))
                .distinct()
                .toList();
    }

    /** What the answers rest on, the pieces held to one body together. */
    List<Phrase> trusted() {
        Map<String, List<String>> nailed = new LinkedHashMap<>();
        Map<String, List<String>> said = new LinkedHashMap<>();
        Map<String, List<String>> unnailed = new LinkedHashMap<>();
        for (Trust trust : support.trust()) {
            String on = trust.on().isPresent() ? facts.section().name(trust.on().getAsInt()) : "";
            boolean counted = trust.why() == Trust.Why.COUNTS_AS_FIXED || trust.why() == Trust.Why.FALLS_UNLESS_FIXED;
            Map<String, List<String>> to = !counted ? said : nothingToNailInto(trust.piece()) ? unnailed : nailed;
            if (counted || trust.why() == Trust.Why.SAID) {
                to.computeIfAbsent(on, other -> new ArrayList<>())
                        .add(facts.section().name(trust.piece()));
            }
        }
        List<Phrase> phrases = new ArrayList<>();
        nailed.forEach((on, pieces) -> phrases.add(
                VerdictWords.FIXED_TO.with("pieces", VerdictWords.names(pieces)).with("other", on)));
        unnailed.forEach((on, pieces) -> phrases.add(
                VerdictWords.UNNAILED.with("pieces", VerdictWords.names(pieces)).with("other", on)));
        said.forEach((on, pieces) -> phrases.add((on.isEmpty() ? VerdictWords.SAID_FIXED : VerdictWords.SAID_FIXED_TO)
                .with("pieces", VerdictWords.names(pieces))
                .with("other", on)));
        if (facts.fixed().stream().anyMatch(this::needsStuds)) {
            phrases.add(VerdictWords.A_STUD_THERE);
        }
        return phrases;
    }

    /** Whether a row goes into the wall where no plan says what stands behind it. */
    private boolean needsStuds(Fixed row) {
        return row.drive().held().stream()
                        .map(facts.section()::body)
                        .anyMatch(body -> !body.piece() && body.name().equals("wall"))
                && facts.landings().stream()
                        .noneMatch(landing -> landing.fixed().fastening().equals(row.fastening()));
    }

    /** Whether it was said of a piece that nothing is there to nail it into: then nobody is to read that it is nailed. */
    private boolean nothingToNailInto(int piece) {
        return facts.notices().stream()
                .anyMatch(notice -> notice.code().equals("no-backing")
                        && notice.piece().equals(Optional.of(facts.section().name(piece))));
    }
}
