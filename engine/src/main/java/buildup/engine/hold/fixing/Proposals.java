package buildup.engine.hold.fixing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Check;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Hiding;
import buildup.engine.hold.nail.Proposal;
import buildup.engine.hold.nail.Spacings;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Rule;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Mark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Looks for places to fix a piece: along each of its faces, at a few angles, the first fastener of the shop's
 * list that does.
 */
final class Proposals {
    /** Proposals for one piece, and how far their heads lie apart, in. */
    private static final int MOST = 3;

    private static final double DISTINCT = 1.0 / 2;

    /**
     * Thicker than this share of the piece a nail splits it, a screw bored for asks less. The nail's is the rule of a
     * penny for each eighth of the board (seen in print), as a diameter; the screw's is common practice.
     */
    private static final double NAIL_SHARE = 1.0 / 7;

    private static final double SCREW_SHARE = 1.0 / 4;

    /** A proposed nail crosses no more air than this and keeps so much wood before its point: common practice, no source. */
    private static final double MOST_AIR = 1.0 / 4;

    /** Wood beside a nail where none of its faces is near, in. */
    private static final double MOST_WOOD = 100;

    static final double BEFORE_POINT = 1.0 / 8;

    /**
     * One length of a fastener of the list, with what is asked of it time and again, in.
     *
     * @param order of the fastener in the list
     * @param thinnest piece that it does not split
     */
    private record Choice(
            Fastener.Cut cut, int order, double length, double bite, double thinnest, boolean headless, String tool) {}

    private final Nailing nailing;
    private final Timber timber;
    private final List<Choice> choices = new ArrayList<>();
    private final double longest;

    Proposals(Nailing nailing, List<Fastener> fasteners) {
        this.nailing = nailing;
        this.timber = nailing.timber();
        double length = 0;
        for (int i = 0; i < fasteners.size(); i++) {
            Fastener one = fasteners.get(i);
            for (Fastener.Cut cut : one.cuts()) {
                length = Math.max(length, cut.length().toInches());
                choices.add(new Choice(
                        cut,
                        i,
                        cut.length().toInches(),
                        Nailing.needed(one),
                        one.diameter().toInches() / share(one),
                        one.headless(),
                        one.tool()));
            }
        }
        this.longest = length;
    }

    /** @param order of the fastener in the list */
    private record Candidate(Fixed fixed, int order) {
        boolean longEnough() {
            return fixed.check(Check.Rule.THRICE_THE_PIECE).orElseThrow().met();
        }

        /** A pin without a head holds a piece until the glue has set, and little after. */
        boolean headless() {
            return fixed.fastening().use().fastener().headless();
        }
    }

    private static final Comparator<Candidate> BEST = Comparator.comparing(
                    (Candidate one) -> one.fixed().hiding().grade())
            .thenComparing(Candidate::headless)
            .thenComparing(one -> !one.longEnough())
            .thenComparing(one -> Math.abs(one.fixed().fastening().angle()))
            .thenComparing(Candidate::order)
            // the middle of a face is better than its edge; cut sizes decide, not rounding
            .thenComparing(one -> -Math.rint(one.fixed().edge().orElse(MOST_WOOD) / Tolerance.TOUCHING));

    /**
     * The best places of a piece, as {@link #all} would sort them. A nail on a worse place is followed through the wood
     * only when the better ones have not given enough.
     */
    List<Proposal> of(int piece) {
        Map<Hiding.Grade, List<Seat>> seats = Seat.of(nailing, piece).stream()
                .collect(Collectors.groupingBy(
                        seat -> seat.hiding().grade(), () -> new EnumMap<>(Hiding.Grade.class), Collectors.toList()));
        List<Proposal> chosen = new ArrayList<>();
        for (List<Seat> alike : seats.values()) {
            List<Candidate> lesser = new ArrayList<>();
            for (int tier = 0; tier < Seat.TIERS; tier++) {
                if (chosen.size() < MOST) {
                    List<Candidate> found = candidates(alike, tier);
                    found.sort(BEST);
                    for (Candidate one : found) {
                        if (one.longEnough() && !one.headless()) {
                            choose(one, chosen);
                        } else {
                            lesser.add(one);
                        }
                    }
                }
            }
            lesser.sort(Comparator.comparing(Candidate::headless).thenComparing(one -> !one.longEnough()));
            lesser.forEach(one -> choose(one, chosen));
        }
        return chosen;
    }

    private static final Comparator<Candidate> STRONGEST = Comparator.comparing(
                    (Candidate one) -> Math.abs(one.fixed().fastening().angle()))
            .thenComparing(one -> -Math.rint(one.fixed().allowable()));

    /** What is thinner, in, is a pin, which no nailer is hung on: 18 gauge and up; common practice, no source. */
    private static final double THINNEST = 0.047;

    /** The best places of a nailer: for screws, and where none goes in for nails, the stoutest first. */
    static List<Proposal> ofBacking(Nailing nailing, List<Fastener> fasteners, int piece) {
        return Stream.of(Fastener.Kind.SCREW, Fastener.Kind.NAIL)
                .map(kind -> fasteners.stream()
                        .filter(fastener -> fastener.kind() == kind)
                        .filter(fastener -> fastener.diameter().toInches() >= THINNEST)
                        .sorted(Comparator.comparingDouble(
                                fastener -> -fastener.diameter().toInches()))
                        .toList())
                .map(alike -> new Proposals(nailing, alike).strongest(piece))
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    /** The best places of a piece that others hang on, wherever they are hidden or not: square and strong. */
    private List<Proposal> strongest(int piece) {
        List<Seat> seats = Seat.of(nailing, piece);
        List<Candidate> found = new ArrayList<>();
        for (int tier = 0; tier < Seat.TIERS; tier++) {
            found.addAll(candidates(seats, tier));
        }
        found.sort(STRONGEST.thenComparing(BEST));
        List<Proposal> chosen = new ArrayList<>();
        found.forEach(one -> choose(one, chosen));
        return chosen;
    }

    private void choose(Candidate one, List<Proposal> chosen) {
        boolean apart = chosen.stream()
                .allMatch(other -> other.fixed().head().distance(one.fixed().head()) >= DISTINCT);
        if (apart && chosen.size() < MOST) {
            chosen.add(new Proposal(one.fixed(), reason(one.fixed())));
        }
    }

    /** All of some seats of a piece where some fastener does, best first; at each at its best angle. */
    List<Fixed> all(List<Seat> seats) {
        List<Candidate> found = new ArrayList<>();
        for (int tier = 0; tier < Seat.TIERS; tier++) {
            found.addAll(candidates(seats, tier));
        }
        found.sort(BEST);
        List<Fixed> all = new ArrayList<>();
        for (Candidate one : found) {
            boolean apart = all.stream()
                    .noneMatch(other -> other.head().distance(one.fixed().head()) <= Tolerance.TOUCHING);
            if (apart) {
                all.add(one.fixed());
            }
        }
        return all;
    }

    /**
     * A spot where a head can sit.
     *
     * @param hiding how well it is hidden there
     * @param angles degrees off square to try, those that are as good as each other together, the best first
     */
    record Seat(Spot spot, Hiding hiding, List<List<Double>> angles) {
        private static final List<List<Double>> ANGLES =
                List.of(List.of(0.0), List.of(15.0, -15.0), List.of(30.0, -30.0));

        /** The same on a curve: square to it means little to a hand, and the band that a tool gets into is narrow. */
        private static final List<List<Double>> ANGLES_ON_A_CURVE = List.of(
                List.of(0.0),
                List.of(5.0, -5.0, 10.0, -10.0, 15.0, -15.0),
                List.of(20.0, -20.0, 25.0, -25.0, 30.0, -30.0));

        /** How many lots of angles there are. */
        static final int TIERS = 3;

        /** Spots along a face: four to the inch, at most so many. */
        private static final int MOST_SPOTS = 12;

        private static final double APART = 1.0 / 4;

        /** All of a piece that nothing covers. */
        static List<Seat> of(Nailing nailing, int piece) {
            List<Seat> seats = new ArrayList<>();
            for (Stroke stroke : nailing.timber().body(piece).outline().strokes()) {
                int spots = (int) Math.max(
                        1, Math.min(MOST_SPOTS, Math.rint(stroke.segment().length() / APART)));
                for (int i = 0; i < spots; i++) {
                    Spot spot = nailing.timber().onTheTape(piece, stroke, (i + 0.5) / spots);
                    if (nailing.reaching().covering(spot, piece).isEmpty()) {
                        seats.add(new Seat(
                                spot,
                                nailing.hidings().of(spot, piece),
                                stroke.segment() instanceof Arc ? ANGLES_ON_A_CURVE : ANGLES));
                    }
                }
            }
            return seats;
        }
    }

    private List<Candidate> candidates(List<Seat> seats, int tier) {
        List<Candidate> found = new ArrayList<>();
        for (Seat seat : seats) {
            for (double angle : seat.angles().get(tier)) {
                candidate(seat.spot(), seat.hiding(), angle).ifPresent(found::add);
            }
        }
        return found;
    }

    /** Nails square to a face of a piece or nearly so that would hold it, if their tool got in; one of each tool a place. */
    Stream<Fixed> outOfReach(int piece) {
        return Seat.of(nailing, piece).stream()
                .flatMap(seat -> Stream.concat(seat.angles().get(0).stream(), seat.angles().get(1).stream())
                        .flatMap(angle -> outOfReach(seat.spot(), angle)));
    }

    private Stream<Fixed> outOfReach(Spot spot, double angle) {
        Drive far = nailing.shots().follow(spot.at(), spot.way(angle), longest, spot.body());
        Set<String> tools = new HashSet<>();
        return able(spot, far).stream()
                .filter(choice -> tools.add(choice.tool))
                .map(choice -> nailing.fixed(spot, fastening(spot, choice.cut, angle), spot.body()))
                .filter(nail -> nail.holds() && !nail.reach().free());
    }

    private Optional<Candidate> candidate(Spot spot, Hiding hiding, double angle) {
        Drive far = nailing.shots().follow(spot.at(), spot.way(angle), longest, spot.body());
        return first(spot, hiding, far, angle, able(spot, far));
    }

    /** The fasteners that may do: nails with a head before pins, and of each those long enough before the others. */
    private List<Choice> able(Spot spot, Drive far) {
        double thickness = far.in(spot.body());
        double solid = solidTo(far);
        double thrice = 3 * thickness - Tolerance.SNAP;
        // nails that are long enough, others, pins that are, others
        List<List<Choice>> ranks = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (Choice choice : choices) {
            if (solid >= choice.length + BEFORE_POINT
                    && thickness >= choice.thinnest
                    && couldHold(far, choice, spot.body())) {
                ranks.get((choice.headless ? 2 : 0) + (choice.length < thrice ? 1 : 0))
                        .add(choice);
            }
        }
        List<Choice> able = new ArrayList<>();
        ranks.forEach(able::addAll);
        return able;
    }

    /**
     * The first of some fasteners that does.
     *
     * @param far the way of the longest
     */
    private Optional<Candidate> first(Spot spot, Hiding hiding, Drive far, double angle, List<Choice> able) {
        // tools that do not get in; a longer nail only asks for more room
        Set<String> blocked = new HashSet<>();
        for (Choice choice : able) {
            if (!blocked.contains(choice.tool)) {
                Optional<Fixed> next = nailing.sound(
                        spot,
                        hiding,
                        choice.cut,
                        far.endingAt(choice.length),
                        blocked,
                        () -> fastening(spot, choice.cut, angle));
                if (next.filter(nail -> !nail.intoMasonry()).isPresent()) {
                    return Optional.of(new Candidate(next.get(), choice.order));
                }
            }
        }
        return Optional.empty();
    }

    static boolean splits(Fastener fastener, double thickness) {
        return fastener.diameter().toInches() / share(fastener) > thickness;
    }

    /** The greatest share of the piece's thickness that its diameter may be. */
    private static double share(Fastener fastener) {
        return fastener.kind() == Fastener.Kind.NAIL ? NAIL_SHARE : SCREW_SHARE;
    }

    /** Cheap and strict: ends in wood beyond the piece, deep enough, with little air on its way. */
    private static boolean couldHold(Drive far, Choice choice, int piece) {
        double bite = 0;
        double air = 0;
        boolean inside = false;
        for (Crossing crossing : far.crossings()) {
            double to = Math.min(choice.length, crossing.to());
            if (to > crossing.from()) {
                boolean beyond = crossing.holds() && !crossing.in(piece);
                bite += beyond ? to - crossing.from() : 0;
                air += crossing.stuff() == Crossing.Stuff.AIR ? to - crossing.from() : 0;
                inside = beyond && crossing.to() >= choice.length;
            }
        }
        return inside && air <= MOST_AIR && bite >= choice.bite;
    }

    /** How far a line goes before it leaves all wood for good, or meets more air than a nail may cross. */
    private static double solidTo(Drive far) {
        double to = 0;
        for (Crossing crossing : far.crossings()) {
            if (crossing.stuff() == Crossing.Stuff.AIR && crossing.length() > MOST_AIR) {
                return to;
            }
            to = crossing.stuff() == Crossing.Stuff.AIR ? to : crossing.to();
        }
        // a line that is inside at its end goes on there
        return far.breakOut().isPresent() ? to : Double.MAX_VALUE;
    }

    private Fastening fastening(Spot spot, Fastener.Cut cut, double angle) {
        Mark mark = timber.body(spot.body()).placed().orElseThrow().piece().mark();
        return new Fastening(
                NailWords.kind(cut) + " 1",
                timber.body(spot.body()).name(),
                cut,
                Optional.of(new Rule.Level(spot.at().x(), Optional.of(Axis.OUT), mark)),
                Optional.of(new Rule.Level(spot.at().y(), Optional.of(Axis.UP), mark)),
                angle,
                Spacings.usual(cut),
                0,
                1,
                Optional.empty(),
                false,
                mark);
    }

    private Phrase reason(Fixed fixed) {
        List<String> held =
                fixed.beyond().stream().map(grip -> timber.quoted(grip.body())).toList();
        boolean thrice = fixed.check(Check.Rule.THRICE_THE_PIECE).orElseThrow().met();
        return Phrase.of("bites {bite} into {held}; {hiding}{pin}{thrice}")
                .with("bite", Figure.length(fixed.bite()))
                .with("held", Listing.names(held))
                .with("hiding", NailWords.hiding(fixed.hiding(), timber))
                .with("pin", fixed.fastening().use().fastener().headless() ? "; a headless pin, so glue it too" : "")
                .with("thrice", thrice ? "" : "; under 3 times the piece, for no longer one fits");
    }
}
