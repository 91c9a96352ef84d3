package buildup.engine.hold.fixing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.nail.Proposal;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Looks for the smallest change with which a nail does hold. Each is tried, not guessed. */
final class Cures {
    /** Degrees between the angles tried, and the farthest off square. */
    private static final int STEP = 5;

    private static final int FARTHEST = 45;

    /** Places along a face that are tried: four to the inch, at most so many. */
    private static final double APART = 1.0 / 4;

    private static final int MOST_SPOTS = 48;

    private final Nailing nailing;
    private final boolean asked;
    private final Map<Wanted, List<Proposal>> offered = new HashMap<>();

    /** A screw is not replaced by a nail. */
    private record Wanted(int piece, Fastener.Kind kind) {}

    /** @param asked whether cures are told at all: else the long way to one is not gone */
    Cures(Nailing nailing, boolean asked) {
        this.nailing = nailing;
        this.asked = asked;
    }

    /**
     * The nearest of the places where a nail could go in its piece, with what goes in there: what the report offers under
     * one heading is tried before another says that nothing helps.
     */
    Optional<Fixed> offered(Fixed row) {
        if (!asked || !nailing.timber().body(row.piece()).inStack()) {
            return Optional.empty();
        }
        Fastener.Kind kind = row.fastening().use().fastener().kind();
        return offered.computeIfAbsent(new Wanted(row.piece(), kind), this::sought).stream()
                .map(Proposal::fixed)
                .filter(nail -> !nail.fastening().use().fastener().headless())
                .min(Comparator.comparingDouble(
                        nail -> Math.rint(nail.head().distance(row.head()) / Tolerance.TOUCHING)));
    }

    private List<Proposal> sought(Wanted wanted) {
        List<Fastener> alike = nailing.fasteners().stream()
                .filter(fastener -> fastener.kind() == wanted.kind())
                .toList();
        return nailing.timber().body(wanted.piece()).nailer()
                ? Proposals.ofBacking(nailing, alike, wanted.piece())
                : new Proposals(nailing, alike).of(wanted.piece());
    }

    /** The length as sold, nearest to the one given, with which it holds. */
    Optional<Fastener.Cut> length(Spot spot, Fixed fixed) {
        double now = fixed.drive().length();
        return fixed.fastening().use().fastener().cuts().stream()
                .sorted(Comparator.comparingDouble(cut -> Math.abs(cut.length().toInches() - now)))
                .filter(cut -> cures(fixed, fixed(spot, fixed.fastening().with(cut), fixed.after())))
                .findFirst();
    }

    /** Whether another nail holds, and in what the one at hand ends in, if that ends in anything beyond its piece. */
    private boolean cures(Fixed fixed, Fixed other) {
        OptionalInt meant = fixed.drive().last().map(Crossing::body).orElse(OptionalInt.empty());
        boolean elsewhere = meant.isPresent()
                && meant.getAsInt() != fixed.piece()
                && other.drive().in(meant.getAsInt())
                        < Math.max(Tolerance.TOUCHING, fixed.drive().in(meant.getAsInt()) - Tolerance.SNAP);
        return safely(other) && !elsewhere;
    }

    /**
     * A cure has a little wood or plaster before its point, since nails do not go as straight as drawn, and none goes into
     * masonry.
     */
    private boolean safely(Fixed other) {
        return other.holds()
                && !other.intoMasonry()
                && nailing.shots().ahead(other.drive(), Proposals.BEFORE_POINT, other.after())
                        >= Proposals.BEFORE_POINT - Tolerance.SNAP;
    }

    /** The first fastener of the shop, thin enough for the piece, with which it holds, and no less than it does now. */
    Optional<Fastener.Cut> other(Spot spot, Fixed fixed) {
        double thickness = fixed.drive().in(fixed.piece());
        return nailing.fasteners().stream()
                .filter(fastener -> !Proposals.splits(fastener, thickness))
                .flatMap(fastener -> fastener.cuts().stream())
                .filter(cut -> {
                    Fixed other = fixed(spot, fixed.fastening().with(cut), fixed.after());
                    return cures(fixed, other) && noWeaker(fixed, other);
                })
                .findFirst();
    }

    /** A pin in place of a screw is no cure: what the point is meant to bite in is held by no less. */
    private static boolean noWeaker(Fixed fixed, Fixed other) {
        Optional<Joint> meant = fixed.joints().stream().reduce((first, second) -> second);
        return meant.map(joint -> other.joints().stream()
                        .filter(one -> one.far() == joint.far())
                        .anyMatch(one -> one.pull() >= joint.pull() && one.lateral() >= joint.lateral()))
                .orElse(true);
    }

    /**
     * The nearest place on the same face where the same fastener is sound, in the length given or the nearest sold.
     *
     * @param stroke the face that its head sits on
     */
    Optional<Fixed> place(Spot spot, Fixed fixed, Stroke stroke) {
        double length = stroke.segment().length();
        int spots = (int) Math.min(MOST_SPOTS, Math.floor(length / APART));
        double now = fixed.drive().length();
        List<Fastener.Cut> cuts = fixed.fastening().use().fastener().cuts().stream()
                .sorted(Comparator.comparingDouble(cut -> Math.abs(cut.length().toInches() - now)))
                .toList();
        return IntStream.range(0, spots)
                .mapToObj(i -> nailing.timber().onTheTape(spot.body(), stroke, (i + 0.5) * APART / length))
                .filter(other -> other.at().distance(spot.at()) > Tolerance.TOUCHING)
                .sorted(Comparator.comparingDouble(
                        other -> Math.rint(other.at().distance(spot.at()) / Tolerance.TOUCHING)))
                .flatMap(other -> cuts.stream()
                        .map(cut -> fixed(other, fixed.fastening().with(cut).at(other.at()), fixed.after())))
                .filter(other -> other.sound() && safely(other) && noWeaker(fixed, other))
                .findFirst();
    }

    /** Whether it is sound where it is once it is bored for. */
    boolean bored(Spot spot, Fixed fixed) {
        return fixed(spot, fixed.fastening().boredFor(), fixed.after()).sound();
    }

    /** The tilt from where it is now, in degrees, the least with which it holds and passes another test too. */
    Optional<Double> tilt(Spot spot, Fixed fixed, Predicate<Fixed> also) {
        double now = fixed.fastening().angle();
        return tilts(fixed)
                .filter(tilt -> {
                    Fixed tilted = fixed(spot, fixed.fastening().tilted(now + tilt), fixed.after());
                    return safely(tilted) && also.test(tilted);
                })
                .findFirst();
    }

    /** The first piece that goes up later after which it holds. */
    Optional<Integer> later(Spot spot, Fixed fixed) {
        return IntStream.range(fixed.after() + 1, nailing.timber().count())
                .filter(i -> nailing.timber().body(i).inStack())
                .filter(i -> fixed(spot, fixed.fastening(), i).sound())
                .boxed()
                .findFirst();
    }

    /** A piece that goes up later, and the tilt in degrees from where it is now, with which it holds after that is up. */
    record LaterTilted(int body, double tilt) {}

    /** The first piece that goes up later after which it holds once it is tilted, and the least such tilt. */
    Optional<LaterTilted> laterTilted(Spot spot, Fixed fixed) {
        if (!asked) {
            return Optional.empty();
        }
        return IntStream.range(fixed.after() + 1, nailing.timber().count())
                .filter(i -> nailing.timber().body(i).inStack())
                .boxed()
                .flatMap(i -> tilts(fixed)
                        .filter(tilt -> {
                            Fastening tilted =
                                    fixed.fastening().tilted(fixed.fastening().angle() + tilt);
                            Fixed driven = fixed(spot, tilted, i);
                            return safely(driven) && driven.sound();
                        })
                        .map(tilt -> new LaterTilted(i, tilt)))
                .findFirst();
    }

    /** Tilts from where it is now, the least first, degrees. */
    private static Stream<Double> tilts(Fixed fixed) {
        double now = fixed.fastening().angle();
        return IntStream.rangeClosed(1, 2 * FARTHEST / STEP)
                .boxed()
                .flatMap(i -> Stream.of(1.0 * i * STEP, -1.0 * i * STEP))
                .filter(tilt -> Math.abs(now + tilt) <= FARTHEST);
    }

    private Fixed fixed(Spot spot, Fastening fastening, int step) {
        return nailing.fixed(spot, fastening, step);
    }
}
