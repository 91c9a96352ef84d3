package buildup.engine.judge.verdict;

import buildup.engine.hold.order.PutUp;
import buildup.engine.judge.clearance.KeepClearRow;
import buildup.engine.judge.must.MustResult;
import buildup.engine.judge.verdict.Ruling.Reply;
import buildup.engine.look.light.Darkness;
import buildup.engine.look.light.Lighting;
import buildup.engine.look.light.Shadow;
import buildup.engine.look.sight.Approaches;
import buildup.engine.room.surface.GapAlong;
import buildup.engine.room.surface.SlopedCrown;
import buildup.engine.room.surface.Surface;
import buildup.engine.section.compose.ClosedVoid;
import buildup.engine.section.compose.Member;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.PieceBlank;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** The rows on room, wood, sight, light, reveals and rules, as far as nothing was said against them. */
final class LookingRows {
    /** A longer list of reveals is not read. */
    private static final int MOST_REVEALS = 8;

    private final Facts facts;
    private final Section section;

    LookingRows(Facts facts) {
        this.facts = facts;
        this.section = facts.section();
    }

    List<Ruling> rulings() {
        List<Ruling> rulings = new ArrayList<>(List.of(fits(), wood()));
        seen().ifPresent(rulings::add);
        light().ifPresent(rulings::add);
        reveals().ifPresent(rulings::add);
        rulings.add(order());
        must().ifPresent(rulings::add);
        return rulings;
    }

    /** How far end grain stands proud of the casings that pieces butt: whoever looks along the wall sees it. */
    private List<Notice> proud() {
        return facts.notices().stream()
                .filter(notice -> notice.code().equals("end-shows"))
                .toList();
    }

    private Ruling fits() {
        List<Ruling> left = new ArrayList<>();
        for (Surface surface : List.of(Surface.CEILING, Surface.FLOOR)) {
            facts.surfaces().tightest(surface).map(this::along).ifPresent(left::add);
        }
        if (facts.surfaces().tightest(Surface.CEILING).isEmpty()) {
            section.ceilingLeft()
                    .ifPresent(room ->
                            left.add(Ruling.yes(Topic.FITS, VerdictWords.CEILING_LEFT.with("left", Figure.atMost(room)))
                                    .figure(Figure.atMost(room))));
        }
        section.projectionLeft()
                .ifPresent(room -> left.add(Ruling.yes(
                                Topic.FITS,
                                VerdictWords.PROJECTION_LEFT
                                        .with("left", Figure.atMost(room))
                                        .with(
                                                "allowed",
                                                Figure.length(
                                                        room + section.totals().projection())))
                        .figure(Figure.atMost(room))));
        facts.clearance().kept().stream()
                .min(Comparator.comparingDouble(KeepClearRow::margin))
                .ifPresent(row -> left.add(Ruling.yes(
                                Topic.FITS,
                                VerdictWords.AIR_LEFT
                                        .with("air", Figure.atMost(row.margin()))
                                        .with("place", row.place().name()))
                        .figure(Figure.atMost(row.margin()))));
        return left.stream().reduce(LookingRows::both).orElse(Ruling.yes(Topic.FITS, VerdictWords.NO_LIMIT));
    }

    /** The least decides, and one that is to be looked at has the whole row looked at. */
    private static Ruling both(Ruling one, Ruling other) {
        Figure least = Stream.of(one, other)
                .flatMap(ruling -> ruling.figure().stream())
                .min(Comparator.comparingDouble(Figure::amount))
                .orElseThrow();
        boolean look = one.answer() == Reply.LOOK || other.answer() == Reply.LOOK;
        Phrase because = VerdictWords.BOTH_LEFT.with("one", one.because()).with("other", other.because());
        Ruling ruling =
                Ruling.of(Topic.FITS, look ? Reply.LOOK : Reply.YES, because).figure(least);
        return one.cure().or(other::cure).map(ruling::cure).orElse(ruling);
    }

    /** The worst place along the measured room, not the mean; a gap that varies round the room is for a person to judge. */
    private Ruling along(GapAlong gap) {
        Figure least = Figure.atMost(gap.least().amount());
        GapAlong widest = facts.surfaces().widest(gap);
        double variation = widest.most().amount() - gap.least().amount();
        boolean even = variation <= Tolerance.TOUCHING;
        boolean elsewhere = !widest.run().equals(gap.run()) || !widest.stretch().equals(gap.stretch());
        Phrase because = (even ? VerdictWords.EVEN_ALONG : VerdictWords.UNEVEN_ALONG)
                .with("piece", gap.fit().course().name())
                .with("side", gap.surface() == Surface.CEILING ? "over" : "under")
                .with("left", least)
                .with("most", Figure.length(widest.most().amount()))
                .with("stretch", gap.stretch())
                .with("along", Figure.length(gap.least().along()))
                .with("far", Figure.length(widest.most().along()))
                .with("on", elsewhere ? VerdictWords.ALONG.with("stretch", widest.stretch()) : Phrase.of(""));
        if (even) {
            return Ruling.yes(Topic.FITS, because).figure(least);
        }
        return Ruling.of(Topic.FITS, Reply.LOOK, because)
                .figure(least)
                .cure(VerdictWords.SCRIBE_ALONG.with("by", Figure.length(variation)));
    }

    /** The way that has the least to spare decides. */
    private Ruling order() {
        Optional<PutUp> tightest = facts.order().steps().stream()
                .filter(step -> step.needs().isPresent() && step.has().isPresent())
                .min(Comparator.comparingDouble(LookingRows::spare));
        if (tightest.isEmpty()) {
            boolean bent =
                    facts.order().steps().stream().anyMatch(step -> step.needs().isPresent());
            return Ruling.yes(Topic.ORDER, bent ? VerdictWords.GOES_IN : VerdictWords.GOES_STRAIGHT);
        }
        PutUp step = tightest.get();
        Figure needs = Figure.atLeast(step.needs().orElseThrow());
        return Ruling.yes(
                        Topic.ORDER,
                        VerdictWords.TIGHTEST
                                .with("unit", step.unit().name(section))
                                .with("move", step.way().orElseThrow().move())
                                .with("needs", needs)
                                .with("has", Figure.atMost(step.has().orElseThrow())))
                .figure(needs);
    }

    private static double spare(PutUp step) {
        return step.has().orElseThrow() - step.needs().orElseThrow();
    }

    private Ruling wood() {
        Optional<ClosedVoid> largest = section.voids().stream().max(Comparator.comparingDouble(ClosedVoid::area));
        Phrase hollow = largest.map(found -> (section.voids().size() == 1 ? VerdictWords.ONE_VOID : VerdictWords.VOIDS)
                        .with("count", Figure.count(section.voids().size()))
                        .with("area", Figure.area(found.area())))
                .orElse(VerdictWords.NO_VOID);
        Set<String> boards = new TreeSet<>();
        section.pieces()
                .forEach(body -> body.placed()
                        .filter(placed -> placed.piece().stock().rips())
                        .flatMap(placed -> PieceBlank.stock(
                                placed, facts.catalog(), section.stack().boardList()))
                        .ifPresent(name -> boards.add(name.replaceFirst(" \\(.*", ""))));
        return boards.isEmpty()
                ? Ruling.yes(Topic.WOOD, VerdictWords.WOOD_ALONE.with("void", hollow))
                : Ruling.yes(
                        Topic.WOOD,
                        VerdictWords.WOOD
                                .with("void", hollow)
                                .with(
                                        "boards",
                                        Listing.commas(
                                                boards.stream().map(Text::new).toList())));
    }

    /** Something that is seen of a piece and for a person to judge, by how much of it. */
    private record Look(String piece, Phrase said, double seen, Optional<Phrase> cure) {}

    /**
     * Raw wood that shows to whoever walks up, trim that no eye sees, end grain beside a casing and joints that a sloped
     * ceiling opens are for a person to judge, the most of it first; without eyes the last two alone are asked. Raw wood
     * that an eye sees where it stands is a problem of its own; beside that only what shows more is told.
     */
    private Optional<Ruling> seen() {
        OptionalDouble wrong = facts.notices().stream()
                .filter(notice -> notice.level() == Level.PROBLEM && Topic.of(notice.code()) == Topic.SEEN)
                .mapToDouble(notice -> notice.amount().map(Figure::amount).orElse(Double.POSITIVE_INFINITY))
                .max();
        List<Look> looks = Stream.of(proudEnds(), openUnderTheSlope(), onTheWay())
                .flatMap(Function.identity())
                .filter(look -> look.seen() > wrong.orElse(0))
                .sorted(Comparator.comparingDouble(look -> -look.seen()))
                .toList();
        List<Value> said = new ArrayList<>(looks.stream()
                .limit(wrong.isPresent() ? 1 : looks.size())
                .map(Look::said)
                .toList());
        if (wrong.isEmpty()) {
            said.addAll(ofNoSize());
        } else if (looks.size() > 1) {
            said.add(VerdictWords.MORE_SHOW.with("count", Figure.count(looks.size() - 1)));
        }
        if (said.isEmpty()) {
            return facts.sights().isEmpty()
                    ? Optional.empty()
                    : Optional.of(Ruling.yes(
                            Topic.SEEN, openIsSeen() ? VerdictWords.HIDDEN_BUT_JOINTS : VerdictWords.HIDDEN));
        }
        Ruling look = Ruling.of(Topic.SEEN, Reply.LOOK, VerdictWords.REVEALS.with("all", Listing.commas(said)));
        return Optional.of(looks.stream()
                .findFirst()
                .map(worst -> worst.cure()
                        .map(cure -> said.size() > 1 || wrong.isPresent()
                                ? VerdictWords.CURE_OF
                                        .with("piece", worst.piece())
                                        .with("cure", cure)
                                : cure)
                        .map(look::cure)
                        .orElse(look)
                        .figure(Figure.length(worst.seen())))
                .orElse(look));
    }

    private boolean openIsSeen() {
        return facts.joints().open().stream().anyMatch(joint -> !joint.eyes().isEmpty());
    }

    private List<Phrase> ofNoSize() {
        List<Phrase> said = new ArrayList<>();
        facts.notices().stream()
                .filter(notice -> notice.code().equals("raw-end-shows"))
                .flatMap(notice -> notice.values().stream())
                .filter(named -> named.name().equals("names"))
                .forEach(named -> said.add(VerdictWords.RAW_END.with("names", named.value())));
        List<String> unseen =
                facts.joints().unseen().stream().map(section::name).toList();
        if (!unseen.isEmpty()) {
            said.add(VerdictWords.UNSEEN.with("pieces", VerdictWords.names(unseen)));
        }
        return said;
    }

    private Stream<Look> proudEnds() {
        return proud().stream()
                .map(notice -> new Look(
                        notice.piece().orElseThrow(),
                        VerdictWords.END_GRAIN
                                .with("piece", notice.piece().orElseThrow())
                                .with("by", notice.amount().orElseThrow()),
                        notice.amount().orElseThrow().amount(),
                        notice.cure()));
    }

    private Stream<Look> openUnderTheSlope() {
        return opened().stream()
                .map(open -> new Look(
                        open.course().name(),
                        VerdictWords.OPEN_UNDER_SLOPE
                                .with("piece", open.course().name())
                                .with("by", Figure.fine(open.offCeiling())),
                        open.offCeiling(),
                        Optional.empty()));
    }

    /** What shows to whoever walks up, and more of it than to whoever stands. */
    private Stream<Look> onTheWay() {
        return Approaches.showing(facts.approaches(), facts.sights()).stream()
                .map(one -> new Look(
                        section.name(one.showing().body()),
                        VerdictWords.RAW_ON_THE_WAY
                                .with("piece", section.name(one.showing().body()))
                                .with("approach", one.way().name())
                                .with("most", Figure.length(one.showing().most()))
                                .with(
                                        "first",
                                        Figure.length(one.showing().first().orElseThrow())),
                        one.showing().most(),
                        Optional.of(VerdictWords.FINISH_IT)));
    }

    /** Each crown whose upper flat, as drawn, stands open under a ceiling that slopes; a crown below it is clear of it. */
    private List<SlopedCrown> opened() {
        Map<String, SlopedCrown> found = new LinkedHashMap<>();
        facts.surfaces().sloped().stream()
                .filter(crown -> crown.tilt() == SlopedCrown.Tilt.NONE && crown.offCeiling() > Tolerance.TOUCHING)
                .filter(crown -> meetsCeiling(crown.course().body()))
                .forEach(crown -> found.putIfAbsent(crown.course().name(), crown));
        return List.copyOf(found.values());
    }

    private boolean meetsCeiling(int body) {
        Space space = section.stack().space();
        return space.ceiling().isPresent()
                && Math.abs(space.ceiling().getAsDouble()
                                - space.reach(section.body(body).outline()))
                        <= Tolerance.TOUCHING;
    }

    /** For each light, how much of the longest shaded face lies in the dark. */
    private Optional<Ruling> light() {
        List<Value> said = facts.lights().stream().<Value>map(this::shade).toList();
        if (said.isEmpty()) {
            return Optional.empty();
        }
        Phrase all = VerdictWords.REVEALS.with("all", new Listing(said, ""));
        boolean dark = facts.lights().stream()
                .anyMatch(lighting -> onLongestFace(lighting).isPresent());
        return Optional.of(dark ? Ruling.of(Topic.LIGHT, Reply.LOOK, all) : Ruling.yes(Topic.LIGHT, all));
    }

    private Optional<Shadow> onLongestFace(Lighting lighting) {
        return lighting.shadows().stream()
                .filter(shadow -> shadow.caster().isPresent())
                .max(Comparator.comparingDouble(
                        shadow -> section.members().get(shadow.member()).length()));
    }

    private Phrase shade(Lighting lighting) {
        Optional<Shadow> longest = onLongestFace(lighting);
        if (longest.isEmpty()) {
            return VerdictWords.LIT.with("light", lighting.light().name());
        }
        Shadow shadow = longest.get();
        Member member = section.members().get(shadow.member());
        Darkness dark = lighting.of(shadow);
        boolean all = isAll(dark);
        boolean whole = lighting.darkness().stream()
                .filter(other -> section.members().get(other.member()).body() == member.body())
                .allMatch(LookingRows::isAll);
        return (all ? whole ? VerdictWords.ALL_DARK : VerdictWords.MEMBER_DARK : VerdictWords.SHADED)
                .with("light", lighting.light().name())
                .with("piece", section.name(member.body()))
                .with("member", member.member())
                .with("dark", Figure.length(dark.dark()))
                .with("length", Figure.length(member.length()));
    }

    private static boolean isAll(Darkness dark) {
        return dark.share() > 1 - Tolerance.TOUCHING;
    }

    private Optional<Ruling> reveals() {
        List<Value> said = section.reveals().stream()
                .filter(Reveal::compares)
                .limit(MOST_REVEALS)
                .<Value>map(this::reveal)
                .toList();
        return said.isEmpty()
                ? Optional.empty()
                : Optional.of(Ruling.yes(Topic.REVEALS, VerdictWords.REVEALS.with("all", Listing.commas(said))));
    }

    private Phrase reveal(Reveal reveal) {
        return VerdictWords.REVEAL
                .with("piece", section.name(reveal.piece()))
                .with("amount", Figure.length(reveal.amount()));
    }

    private Optional<Ruling> must() {
        if (facts.must().isEmpty()) {
            return Optional.empty();
        }
        long met = facts.must().stream().filter(MustResult::met).count();
        Optional<MustResult> worst =
                facts.must().stream().filter(one -> !one.met()).max(Comparator.comparingDouble(LookingRows::lacks));
        if (worst.isPresent()) {
            return worst.map(one -> notMet(one, met));
        }
        return facts.must().stream()
                .filter(MustResult::met)
                .min(Comparator.comparingDouble(one -> one.spare().orElse(Double.MAX_VALUE)))
                .map(nearest -> Ruling.yes(
                        Topic.MUST,
                        VerdictWords.MUST_MET
                                .with("met", Figure.count(met))
                                .with("all", Figure.count(facts.must().size()))
                                .with("rule", nearest.rule())
                                .with("spare", nearest.left().orElse(Figure.count(0)))));
    }

    /** What is missing against the figure that there is, so that inches stand beside pounds; all where there is none. */
    private static double lacks(MustResult result) {
        double missing = result.missing().orElse(1);
        return missing / (missing + Math.abs(result.figure().orElse(0)));
    }

    private Ruling notMet(MustResult worst, long met) {
        Figure missing = worst.lacks().orElse(Figure.count(0));
        Phrase because = (worst.figure().isPresent() ? VerdictWords.MUST_NOT_MET : VerdictWords.MUST_UNKNOWN)
                .with("met", Figure.count(met))
                .with("all", Figure.count(facts.must().size()))
                .with("rule", worst.rule())
                .with("figure", worst.told().orElse(Figure.count(0)))
                .with("missing", missing);
        Ruling ruling = Ruling.of(Topic.MUST, Reply.NO, because);
        return worst.figure().isPresent() ? ruling.figure(missing) : ruling;
    }
}
