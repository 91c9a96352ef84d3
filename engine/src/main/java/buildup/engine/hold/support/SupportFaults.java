package buildup.engine.hold.support;

import buildup.engine.hold.backing.JoistEdits;
import buildup.engine.hold.backing.Packing;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.statics.FirstToGive;
import buildup.engine.hold.support.Support.Answer;
import buildup.engine.hold.support.Support.Whole;
import buildup.engine.section.compose.Mending;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Value;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** Says what falls: each group that leans and that nothing keeps, and what moves without leaning. */
final class SupportFaults {
    /** So far inside its bearing a weight is brought, in: as near as a piece is set by hand; common practice, no source. */
    private static final double WELL_ON = 1.0 / 8;

    private final Section section;
    private final Support support;

    private final Optional<List<Fixed>> searched;

    private SupportFaults(Section section, Support support, Optional<List<Fixed>> searched) {
        this.section = section;
        this.support = support;
        this.searched = searched;
    }

    /** @param searched the rows of the document, if others were looked for beside them that hold it */
    static void say(Section section, Support support, Optional<List<Fixed>> searched, Notices notices) {
        SupportFaults faults = new SupportFaults(section, support, searched);
        Whole whole = support.whole();
        if (whole.answer() == Answer.NO && support.whole().underLoad() && partly(whole)) {
            notices.add(faults.tooMuch(whole));
        } else if (whole.answer() == Answer.NO) {
            faults.told(whole).forEach(motion -> notices.add(faults.falls(motion)));
        }
        whole.closing().ifPresent(motion -> notices.add(faults.closes(motion)));
    }

    /** The motions that say something new: what only came along with others and falls too once those are held, does not. */
    private List<Fall> told(Whole whole) {
        List<Fall> told = new ArrayList<>();
        Set<Integer> pieces = new HashSet<>();
        for (Fall fall : whole.falls()) {
            if (!pieces.containsAll(fall.first().pieces())) {
                told.add(fall);
                pieces.addAll(fall.first().pieces());
            }
        }
        return told;
    }

    /** What was found to hold a fall: nothing, a row, or two that only together do. */
    private List<LeastRow> rows(Fall fall) {
        return support.proposed().stream()
                .filter(row -> support.whole().falls().get(row.fall()).equals(fall))
                .toList();
    }

    /** Whether it takes a part of its loads by fastenings: what to say then is how much, and what gives. */
    private static boolean partly(Whole whole) {
        return whole.governs()
                .filter(governs -> governs.mode() != FirstToGive.Mode.CONTACT)
                .isPresent();
    }

    private Notice tooMuch(Whole whole) {
        Figure share = Figure.of(Quantity.TIMES, whole.loadFactor().orElse(0)).rounded(Rounding.TIMES);
        Notice notice = SupportNotices.LOAD_TOO_MUCH
                .with("share", share)
                .with("first", whole.governs().map(FirstToGive::first).orElse(Phrase.of("")));
        if (searched.isEmpty()) {
            return notice;
        }
        return notice.cure(
                support.cured()
                        ? cure(rows(whole.falls().get(support.proposed().get(0).fall())))
                        : Cure.of(SupportNotices.NO_ROW_FOR_ITS_LOADS));
    }

    /** A group that leans is told with its balance, anything else with its motion. */
    private Notice falls(Fall motion) {
        Fall.Part first = motion.first();
        Optional<Balance> balance = support.balances().stream()
                .filter(one -> one.group().equals(first.pieces()) && one.leans() && !one.stands())
                .findFirst();
        Notice notice = balance.map(this::leans)
                .orElseGet(() -> (support.whole().underLoad() ? SupportNotices.FALLS_UNDER_LOAD : SupportNotices.FALLS)
                        .with("motion", FallWords.of(section, motion)));
        Notice told =
                about(notice, balance.map(Balance::piece).orElse(first.pieces().get(0)));
        List<LeastRow> rows = rows(motion);
        if (!rows.isEmpty()) {
            return told.cure(cure(rows));
        }
        return searched.isPresent() ? told.cure(without(first, balance)) : told;
    }

    /** What falls no more once the rows for the others are driven has none of its own. */
    private Cure without(Fall.Part falling, Optional<Balance> balance) {
        return support.cured()
                ? new RowCures(section, searched.orElseThrow()).all(support.proposed())
                : otherwise(falling, balance);
    }

    /** Where no row holds what falls, a block behind it may, or its weight brought over its bearing. */
    private Cure otherwise(Fall.Part falling, Optional<Balance> balance) {
        Stream<Cure> blocks = falling.pieces().stream()
                .flatMap(piece -> Packing.behind(section, piece))
                .limit(1);
        Stream<Cure> joists = searched.orElse(List.of()).stream()
                .filter(row -> falling.pieces().contains(row.piece()))
                .flatMap(row -> JoistEdits.over(section, row.point(), section.name(row.piece())))
                .limit(1);
        return Cure.firstOf(Stream.of(joists, blocks, balance.stream().flatMap(this::broughtBack), answeredFor(falling))
                        .flatMap(Function.identity()))
                .orElse(Cure.of(SupportNotices.NO_ROW));
    }

    /**
     * Where nothing is published of what its nails hold, a person may answer for them: all pieces that fall so, together.
     */
    private Stream<Cure> answeredFor(Fall.Part falling) {
        List<Change> changes = new ArrayList<>();
        List<Value> said = new ArrayList<>();
        for (int piece : falling.pieces()) {
            searched.orElse(List.of()).stream()
                    .filter(row -> row.piece() == piece)
                    .flatMap(row -> row.joints().stream())
                    .filter(joint -> joint.near() == piece)
                    .filter(Joint::unpublishedAcross)
                    .findFirst()
                    .ifPresent(joint -> {
                        said.add(SupportNotices.FIXED
                                .with("to", section.name(joint.far()))
                                .with("piece", section.name(piece)));
                        changes.add(new Change(
                                "pieces." + section.name(piece) + ".fixed",
                                Phrase.of("{body}").with("body", section.name(joint.far()))));
                    });
        }
        return said.isEmpty()
                ? Stream.empty()
                : Stream.of(new Cure(SupportNotices.ANSWER_FOR_IT.with("fixed", Listing.and(said)), changes));
    }

    /** A piece of a group that leans, set back or out until the weight falls on the bearing again. */
    private Stream<Cure> broughtBack(Balance balance) {
        double by = WELL_ON - balance.margin();
        Phrase words = balance.outward() ? SupportNotices.SET_BACK : SupportNotices.SET_OUT;
        Mending asDrawn = Mending.of(section.stack());
        return balance.group().stream()
                .map(section::name)
                .flatMap(piece ->
                        asDrawn.moved(piece, Axis.OUT, balance.outward() ? -by : by, Figure.atLeast(by)).stream()
                                .map(mended -> new Cure(
                                        words.with("piece", piece).with("by", Figure.atLeast(by)), mended.changes())));
    }

    /** What holds what falls; where others fall too, first all rows together with which the stack stands. */
    private Cure cure(List<LeastRow> rows) {
        RowCures cures = new RowCures(section, searched.orElseThrow());
        Cure alone = rows.size() == 1 ? cures.one(rows.get(0)) : cures.all(rows);
        boolean several = support.cured() && support.proposed().size() > rows.size();
        List<Cure> others =
                Stream.concat(Stream.of(alone), alone.others().stream()).toList();
        return several && rows.get(0).equals(support.proposed().get(0))
                ? cures.all(support.proposed()).or(others)
                : alone;
    }

    private Notice leans(Balance balance) {
        boolean hair = -balance.margin() < Tolerance.TOUCHING;
        return (hair ? SupportNotices.ON_THE_EDGE : SupportNotices.NEEDS_HOLDING)
                .with("them", balance.group().size() == 1 ? "it" : "them")
                .with("group", FallWords.names(section, balance.group()))
                .with("lean", balance.group().size() == 1 ? "leans" : "lean")
                .with("way", balance.outward() ? "out" : "back")
                .with("weight", Figure.of(Quantity.LINE_FORCE, balance.weight() + balance.load()))
                .with("carriers", names(balance.carriers()))
                .with("hold", BalanceWords.hold(balance))
                .amount(Figure.length(-balance.margin()));
    }

    private Notice closes(Fall motion) {
        return about(
                SupportNotices.GAP_CLOSES.with("motion", FallWords.closing(section, motion)),
                motion.first().pieces().get(0));
    }

    private Notice about(Notice notice, int piece) {
        return section.body(piece)
                .placed()
                .map(placed -> notice.of(placed.name()).at(placed.piece().mark()))
                .orElse(notice);
    }

    private Listing names(List<Integer> bodies) {
        return Listing.names(bodies.stream().map(section::name).toList());
    }
}
