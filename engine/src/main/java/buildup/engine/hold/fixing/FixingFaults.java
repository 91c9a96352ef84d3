package buildup.engine.hold.fixing;

import buildup.engine.hold.backing.JoistEdits;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Check.Rule;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Drive.BreakOut;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Grip;
import buildup.engine.section.compose.ClosedVoid;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Text;
import buildup.shared.figure.Value;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Says what is wrong with a nail, how much, and one cure. */
final class FixingFaults {
    /** Wood this near ahead of where a nail leaves its piece was meant, in: common practice, no source. */
    private static final double AHEAD = 2;

    private final Nailing nailing;
    private final Timber timber;
    private final Cures cures;
    private final BlockEdits blocks;
    private final Notices notices;

    /** @param curing whether the cures are told */
    FixingFaults(Nailing nailing, boolean curing, Notices notices) {
        this.nailing = nailing;
        this.timber = nailing.timber();
        this.cures = new Cures(nailing, curing);
        this.blocks = new BlockEdits(nailing);
        this.notices = notices;
    }

    void say(Spot spot, Fixed fixed) {
        bite(spot, fixed);
        if (fixed.drive().breakOut().isEmpty()) {
            fixed.beyond().forEach(grip -> countsAsNothing(fixed, grip));
            throughPanel(fixed);
            edge(spot, fixed);
        }
        reach(spot, fixed);
    }

    private void bite(Spot spot, Fixed fixed) {
        Optional<BreakOut> out = fixed.drive().breakOut();
        if (out.isPresent()) {
            boolean pieceAlone = fixed.drive().held().equals(List.of(fixed.piece()));
            Optional<ClosedVoid> hollow = nailing.shots().hollow(past(fixed, out.get()));
            if (pieceAlone && (hollow.isPresent() || woodAhead(spot, fixed, out.get()))) {
                inAir(spot, fixed, out.get(), hollow);
            } else {
                breaksOut(spot, fixed, out.get());
            }
            return;
        }
        Optional<BreakOut> open = nailing.shots().open(fixed.drive());
        if (open.isPresent()) {
            crossesTheOpen(spot, fixed, open.get());
            return;
        }
        if (!fixed.biteCheck().met() && fixed.beyond().stream().allMatch(grip -> grip.factor() > 0)) {
            tooShort(spot, fixed, fixed.biteCheck());
        }
        fixed.check(Rule.POINT).filter(check -> !check.met()).ifPresent(check -> atTheFarFace(spot, fixed, check));
    }

    /** Just past where it comes out. */
    private static Point past(Fixed fixed, BreakOut out) {
        return out.at().plus(fixed.way().times(2 * Tolerance.TOUCHING));
    }

    private boolean woodAhead(Spot spot, Fixed fixed, BreakOut out) {
        double leaves = fixed.drive().length() - out.by();
        return nailing.shots()
                        .follow(spot.at(), fixed.way(), leaves + AHEAD, fixed.after())
                        .held()
                        .size()
                > 1;
    }

    private void inAir(Spot spot, Fixed fixed, BreakOut out, Optional<ClosedVoid> hollow) {
        String where = switch (out.side()) {
            case "top" -> "over";
            case "bottom" -> "under";
            case "front" -> "before";
            default -> "behind";
        };
        boolean through = hollow.isPresent() && !out.hidden();
        add(
                FixingNotices.IN_AIR
                        .with("ends", through ? "goes through" : "ends in")
                        .with("where", (hollow.isPresent() ? "the hollow " : "the air ") + where)
                        .with("body", timber.quoted(fixed.piece()))
                        .with("out", through ? " and out of it" : "")
                        .amount(Figure.length(out.by()))
                        .cure(airCure(spot, fixed, hollow)),
                fixed);
    }

    private Cure airCure(Spot spot, Fixed fixed, Optional<ClosedVoid> hollow) {
        Supplier<Stream<Cure>> wedge = () -> hollow.stream()
                .flatMap(found -> blocks.wedge(found, fixed.piece(), FixingNotices.LONGER_WILL_NOT_HELP).stream());
        return Cure.firstOf(ways(
                        () -> later(spot, fixed),
                        () -> length(spot, fixed),
                        wedge,
                        () -> place(spot, fixed),
                        () -> laterTilted(spot, fixed),
                        () -> offered(fixed)))
                .orElse(Cure.of(FixingNotices.NO_WOOD_IN_REACH));
    }

    private void breaksOut(Spot spot, Fixed fixed, BreakOut out) {
        boolean harmless = out.hidden() && fixed.biteCheck().met();
        add(
                (harmless ? FixingNotices.BREAKS_OUT_HIDDEN : FixingNotices.BREAKS_OUT)
                        .with("body", timber.quoted(out.body()))
                        .with("by", Figure.atLeast(out.by()))
                        .with("side", out.side())
                        .amount(Figure.length(out.by()))
                        .cure(staysInside(spot, fixed)),
                fixed);
    }

    private Cure staysInside(Spot spot, Fixed fixed) {
        return Cure.firstOf(ways(
                        () -> later(spot, fixed),
                        () -> length(spot, fixed),
                        () -> tilt(spot, fixed),
                        () -> place(spot, fixed),
                        () -> laterTilted(spot, fixed),
                        () -> offered(fixed)))
                .orElse(Cure.of(FixingNotices.NOT_INSIDE));
    }

    private void crossesTheOpen(Spot spot, Fixed fixed, BreakOut out) {
        add(
                FixingNotices.CROSSES_THE_OPEN
                        .with("body", timber.quoted(out.body()))
                        .with("by", Figure.atLeast(out.by()))
                        .with("side", out.side())
                        .amount(Figure.length(out.by()))
                        .cure(staysInside(spot, fixed)),
                fixed);
    }

    private void tooShort(Spot spot, Fixed fixed, Check bite) {
        Cure cure = Cure.firstOf(ways(
                        () -> later(spot, fixed),
                        () -> length(spot, fixed),
                        () -> place(spot, fixed),
                        () -> joist(fixed, bite.needs()),
                        () -> cures.other(spot, fixed).map(edits(fixed)::other).stream(),
                        () -> tilt(spot, fixed),
                        () -> offered(fixed)))
                .orElse(Cure.of(FixingNotices.NO_BITE));
        add(
                FixingNotices.SHORT
                        .with("left", left(fixed, bite))
                        .with("needs", Figure.atLeast(bite.needs()))
                        .with("rule", bite.rule() == Rule.TWELVE_DIAMETERS ? "12" : "6")
                        .amount(Figure.length(bite.needs() - bite.has()))
                        .cure(cure),
                fixed);
    }

    /** The joist over its point; with the next length that goes so far into it, where this one ends in what covers it. */
    private Stream<Cure> joist(Fixed fixed, double needs) {
        Stream<Cure> joists = JoistEdits.over(
                timber.section(), fixed.point(), timber.body(fixed.piece()).name());
        double beyond = fixed.drive().crossings().stream()
                .filter(crossing -> crossing.body().isPresent()
                        && timber.body(crossing.body().getAsInt()).name().equals("ceiling"))
                .mapToDouble(Crossing::length)
                .sum();
        double square = Math.max(Math.abs(fixed.way().y()), Tolerance.COINCIDENT);
        double covered = timber.section().stack().space().wall().covering() / square;
        double more = covered + needs - beyond;
        if (more <= Tolerance.SNAP) {
            return joists;
        }
        double wanted = fixed.drive().length() + more - Tolerance.SNAP;
        return joists.flatMap(joist -> fixed.fastening().use().fastener().cuts().stream()
                .filter(cut -> cut.length().toInches() >= wanted)
                .min(Comparator.comparingDouble(cut -> cut.length().toInches()))
                .map(edits(fixed)::other)
                .map(longer -> new Cure(
                        FixingNotices.BOTH.with("one", joist.words()).with("other", longer.words()),
                        Stream.concat(joist.changes().stream(), longer.changes().stream())
                                .toList()))
                .stream());
    }

    private Phrase left(Fixed fixed, Check bite) {
        Optional<Crossing> last = fixed.drive().last();
        int body = last.flatMap(crossing -> crossing.body().stream().boxed().findFirst())
                .orElse(fixed.piece());
        if (last.isEmpty()) {
            return FixingNotices.NOT_AT_ALL.with("body", timber.quoted(body));
        }
        if (last.filter(Crossing::holds).isEmpty()) {
            String name = timber.covering(body) > 0
                    ? "the covering of the " + (timber.wall(body) ? "wall" : "ceiling")
                    : timber.quoted(body);
            return FixingNotices.IN_WHAT_HOLDS_NOTHING.with("body", name);
        }
        if (body == fixed.piece()) {
            return FixingNotices.IN_ITS_PIECE.with("body", timber.quoted(body));
        }
        List<Integer> held =
                nailing.judged(fixed.piece(), fixed.fastening().use().fastener(), fixed.drive());
        return FixingNotices.ONLY_LEFT
                .with("bite", Figure.atMost(bite.has()))
                .with(
                        "bodies",
                        Listing.and(held.stream()
                                .<Value>map(one -> new Text(timber.quoted(one)))
                                .toList()));
    }

    private void atTheFarFace(Spot spot, Fixed fixed, Check ahead) {
        int body = fixed.drive()
                .last()
                .flatMap(crossing -> crossing.body().stream().boxed().findFirst())
                .orElse(fixed.piece());
        Point past = fixed.point().plus(fixed.way().times(ahead.has() + 2 * Tolerance.TOUCHING));
        String side = Spot.nearest(body, timber.wood(body).outline(), past).side();
        boolean hidden = nailing.shots().hollow(past).isPresent();
        Kind kind = hidden ? FixingNotices.AT_A_HIDDEN_FACE : FixingNotices.AT_THE_FAR_FACE;
        Notice notice = kind.with("left", Figure.length(ahead.has()))
                .with("wanted", Figure.length(ahead.needs()))
                .with("side", side)
                .with("body", timber.quoted(body))
                .amount(Figure.length(ahead.needs() - ahead.has()));
        add(
                hidden
                        ? notice
                        : notice.cure(Cure.firstOf(ways(
                                        () -> length(spot, fixed),
                                        () -> place(spot, fixed),
                                        () -> tilt(spot, fixed),
                                        () -> offered(fixed)))
                                .orElse(Cure.of(FixingNotices.NOT_SHORT_OF_THE_FACE))),
                fixed);
    }

    private void countsAsNothing(Fixed fixed, Grip grip) {
        if (grip.factor() > 0) {
            return;
        }
        if (grip.inMasonry()) {
            if (fixed.inMasonry()) {
                inMasonry(fixed);
            }
            return;
        }
        boolean enough = fixed.biteCheck().met();
        Kind kind = grip.endGrain()
                ? enough ? FixingNotices.END_GRAIN_NOTE : FixingNotices.END_GRAIN
                : enough ? FixingNotices.NO_VALUE_NOTE : FixingNotices.NO_VALUE_PROBLEM;
        notices.add(kind.with("body", timber.quoted(grip.body()))
                .with("nail", NailWords.within(fixed.fastening()))
                .at(fixed.fastening().mark())
                .of(timber.body(fixed.piece()).name()));
    }

    /** What it holds across is nothing, though it bites in wood: whoever counts on that is told. */
    private void throughPanel(Fixed fixed) {
        if (timber.panel(fixed.piece()) && fixed.beyond().stream().anyMatch(grip -> grip.factor() > 0)) {
            notices.add(FixingNotices.THROUGH_A_PANEL
                    .with("nail", NailWords.within(fixed.fastening()))
                    .at(fixed.fastening().mark())
                    .of(timber.body(fixed.piece()).name()));
        }
    }

    /** The document may say outright that a piece is fixed: a person then answers for what is plugged. */
    private void inMasonry(Fixed fixed) {
        String piece = timber.body(fixed.piece()).name();
        boolean said = timber.body(fixed.piece())
                .placed()
                .flatMap(placed -> placed.piece().fixed())
                .isPresent();
        Notice notice = (said ? FixingNotices.MASONRY_AS_SAID : FixingNotices.MASONRY)
                .with("nail", NailWords.within(fixed.fastening()))
                .at(fixed.fastening().mark())
                .of(piece);
        Change change = new Change("pieces." + piece + ".fixed", Phrase.of("wall"));
        notices.add(said ? notice : notice.cure(new Cure(FixingNotices.PLUG_IT.with("of", piece), List.of(change))));
    }

    private void edge(Spot spot, Fixed fixed) {
        fixed.edgeCheck().filter(check -> !check.met()).ifPresent(check -> {
            Notice notice = FixingNotices.NEAR_AN_EDGE
                    .with("has", Figure.atMost(check.has()))
                    .with("needs", Figure.atLeast(check.needs()))
                    .with("rule", check.rule() == Rule.EDGE ? "2.5 diameters" : "1.67 diameters, bored for")
                    .amount(Figure.length(check.needs() - check.has()));
            add(
                    notice.cure(
                            Cure.firstOf(ways(() -> place(spot, fixed), () -> bored(spot, fixed), () -> offered(fixed)))
                                    .orElse(Cure.of(FixingNotices.ALL_NEAR_AN_EDGE))),
                    fixed);
        });
    }

    private void reach(Spot spot, Fixed fixed) {
        if (fixed.reach().free()) {
            return;
        }
        int body = fixed.reach().inTheWay().orElseThrow();
        boolean over = timber.solid(body).holds(spot.outside(Reaching.OVER));
        boolean laterPiece = timber.body(body).inStack() && body > fixed.piece();
        Stream<Cure> ways = laterPiece
                ? Stream.of(edits(fixed).before(timber.quoted(body)))
                : ways(
                        () -> tilted(spot, fixed, cures.tilt(spot, fixed, Fixed::sound)),
                        () -> place(spot, fixed),
                        () -> offered(fixed));
        notices.add((over ? FixingNotices.COVERED : FixingNotices.RUNS_INTO)
                .with("nail", NailWords.within(fixed.fastening()))
                .with("tool", fixed.reach().tool().map(found -> found.name()).orElse("tool"))
                .with("body", over ? NailWords.begin(timber.quoted(body)) : timber.quoted(body))
                .at(fixed.fastening().mark())
                .of(timber.body(fixed.piece()).name())
                .cure(Cure.firstOf(ways).orElse(Cure.of(FixingNotices.NO_ROOM_FOR_THE_TOOL))));
    }

    /** Some ways out after one another; each is looked for only when it is its turn. */
    @SafeVarargs
    private static Stream<Cure> ways(Supplier<Stream<Cure>>... ways) {
        return Stream.of(ways).flatMap(Supplier::get);
    }

    private static RowEdits edits(Fixed fixed) {
        return new RowEdits(fixed.fastening());
    }

    private Stream<Cure> later(Spot spot, Fixed fixed) {
        return cures
                .later(spot, fixed)
                .map(body -> edits(fixed).later(timber.body(body).name(), timber.quoted(body)))
                .stream();
    }

    private Stream<Cure> laterTilted(Spot spot, Fixed fixed) {
        return cures
                .laterTilted(spot, fixed)
                .map(found -> edits(fixed)
                        .laterTilted(
                                timber.body(found.body()).name(),
                                timber.quoted(found.body()),
                                found.tilt(),
                                NailWords.tilt(spot, found.tilt())))
                .stream();
    }

    private Stream<Cure> offered(Fixed fixed) {
        return cures.offered(fixed).map(edits(fixed)::replaced).stream();
    }

    private Stream<Cure> length(Spot spot, Fixed fixed) {
        return cures.length(spot, fixed).map(edits(fixed)::other).stream();
    }

    private Stream<Cure> tilt(Spot spot, Fixed fixed) {
        return tilted(spot, fixed, cures.tilt(spot, fixed, Fixed::holds));
    }

    private static Stream<Cure> tilted(Spot spot, Fixed fixed, Optional<Double> by) {
        return by.map(degrees -> edits(fixed).tilted(degrees, NailWords.tilt(spot, degrees))).stream();
    }

    private Stream<Cure> bored(Spot spot, Fixed fixed) {
        return fixed.fastening().bored() || !cures.bored(spot, fixed)
                ? Stream.empty()
                : Stream.of(edits(fixed).bored());
    }

    /** Where else on its face it would be sound, and in which length. */
    private Stream<Cure> place(Spot spot, Fixed fixed) {
        Stroke stroke = timber.body(spot.body()).outline().strokes().stream()
                .filter(one -> one.member().equals(spot.member()))
                .min(Comparator.comparingDouble(one -> Math.rint(one.segment().distance(spot.at()) / Tolerance.SNAP)))
                .orElseThrow();
        boolean level = Math.abs(spot.inward().y()) > Math.abs(spot.inward().x());
        boolean straight =
                Math.min(Math.abs(spot.inward().y()), Math.abs(spot.inward().x())) < Tolerance.SAME_DIRECTION
                        && stroke.segment() instanceof Line;
        return cures
                .place(spot, fixed, stroke)
                .map(other -> edits(fixed)
                        .moved(
                                other.head(),
                                level,
                                straight,
                                Math.abs(other.drive().length() - fixed.drive().length()) > Tolerance.SNAP,
                                other.fastening().use()))
                .stream();
    }

    private void add(Notice notice, Fixed fixed) {
        notices.add(notice.with("nail", NailWords.label(fixed.fastening()))
                .at(fixed.fastening().mark())
                .of(timber.body(fixed.piece()).name()));
    }
}
