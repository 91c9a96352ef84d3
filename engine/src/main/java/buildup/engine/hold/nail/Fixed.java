package buildup.engine.hold.nail;

import buildup.catalog.fastener.Fastener;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One fastening in the section. Its strength figures are those of {@link Strength}, with the formulas and the cautions
 * that stand there.
 *
 * @param piece number of the body on which the heads sit
 * @param after number of the body after which it is driven
 * @param grips the bodies that hold it, from head to point
 * @param joints each two bodies that follow each other along it
 * @param edge least wood to either side of the nail, in; absent when no face lies beside it
 * @param slant whether it counts as a toe-nail
 */
public record Fixed(
        Fastening fastening,
        int piece,
        int after,
        Drive drive,
        List<Grip> grips,
        List<Joint> joints,
        List<Check> checks,
        OptionalDouble edge,
        boolean slant,
        Hiding hiding,
        Reach reach) {
    public Fixed {
        grips = List.copyOf(grips);
        joints = List.copyOf(joints);
        checks = List.copyOf(checks);
    }

    /** The same row, held together by other joints. */
    public Fixed with(List<Joint> others) {
        return new Fixed(fastening, piece, after, drive, grips, others, checks, edge, slant, hiding, reach);
    }

    /** The same nail as one of a row that stands otherwise along the run. */
    public Fixed as(Fastening other) {
        return new Fixed(other, piece, after, drive, grips, joints, checks, edge, slant, hiding, reach);
    }

    /** Where the head of the nail sits, in. */
    public Point head() {
        return drive.head();
    }

    /** Where the point of the nail ends, in. */
    public Point point() {
        return drive.point();
    }

    /** Unit step from head to point. */
    public Point way() {
        return drive.way();
    }

    /** Inches spent before the first wood beyond the piece, the piece itself and the gaps. */
    public double spent() {
        return drive.crossings().stream()
                .filter(crossing -> crossing.holds() && crossing.body().orElseThrow() != piece)
                .mapToDouble(Crossing::from)
                .findFirst()
                .orElse(drive.length());
    }

    /** The bodies beyond the piece that hold it. */
    public List<Grip> beyond() {
        return grips.stream().filter(grip -> grip.body() != piece).toList();
    }

    /** Whether its point goes on into masonry, where no nail and no wood screw is driven, only a plug set. */
    public boolean intoMasonry() {
        return beyond().stream().anyMatch(Grip::inMasonry);
    }

    /** Whether it is by masonry that it would hold, of which nothing is published for it. */
    public boolean inMasonry() {
        return !biteCheck().met() && beyond().stream().anyMatch(Grip::inMasonry);
    }

    /** Inches of bite in all bodies beyond the piece. */
    public double bite() {
        return beyond().stream().mapToDouble(Grip::bite).sum();
    }

    /** Design value of that bite for one nail before any reduction, lb. */
    public double design() {
        return beyond().stream().mapToDouble(Grip::design).sum();
    }

    /** Value at which it came out in tests, for one nail, lb. */
    public double test() {
        return beyond().stream().mapToDouble(Grip::test).sum();
    }

    /** What one nail may hold its piece with, lb: that bite with its reductions, or where its head pulls through. */
    public double allowable() {
        return joints.stream()
                .filter(joint -> joint.near() == piece)
                .mapToDouble(Joint::pull)
                .findFirst()
                .orElse(0);
    }

    /** The check by one rule, where it applies. */
    public Optional<Check> check(Check.Rule rule) {
        return checks.stream().filter(check -> check.rule() == rule).findFirst();
    }

    /**
     * The bite in one body at which the row holds a pull of so many lb in a foot of run, in; absent when no bite there
     * would, as in end grain.
     */
    public OptionalDouble biteFor(int body, double perFoot) {
        return grips.stream()
                .filter(grip -> grip.body() == body && grip.allowable() > 0)
                .mapToDouble(grip -> perFoot / fastening.perFoot() * grip.bite() / grip.allowable())
                .findFirst();
    }

    /** The check that decides whether the bite is enough: 12 diameters for a nail, 6 for a screw. */
    public Check biteCheck() {
        boolean nail = fastening.use().fastener().kind() == Fastener.Kind.NAIL;
        return check(nail ? Check.Rule.TWELVE_DIAMETERS : Check.Rule.SIX_DIAMETERS)
                .orElseThrow();
    }

    /** The check of the wood beside it, by whether it is bored for; absent where there is none to measure. */
    public Optional<Check> edgeCheck() {
        return check(Check.Rule.EDGE).or(() -> check(Check.Rule.EDGE_BORED));
    }

    /** Whether it is by this rule that the nail holds or does not; the others are good practice. */
    public boolean decides(Check check) {
        return check.rule() == biteCheck().rule()
                || check.rule() == Check.Rule.POINT
                || check.rule() == Check.Rule.EDGE
                || check.rule() == Check.Rule.EDGE_BORED
                || check.rule() == Check.Rule.OPEN_AIR;
    }

    /** Whether it bites enough, ends inside with some before its point, clears the edges and the room, and holds a pull. */
    public boolean holds() {
        return drive.last().isPresent()
                && biteCheck().met()
                && check(Check.Rule.POINT).map(Check::met).orElse(true)
                && edgeCheck().map(Check::met).orElse(true)
                && check(Check.Rule.OPEN_AIR).map(Check::met).orElse(true)
                && joints.stream().findFirst().filter(joint -> joint.pull() > 0).isPresent();
    }

    /** Whether it holds and can be driven. */
    public boolean sound() {
        return holds() && reach.free();
    }
}
