package buildup.engine.mill.nearest;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Difference;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds out what the bench can make of one profile, laid as it fits best and gaping so far there. */
record Advising(Outline wanted, Outline stick, Pose pose, Gap gap) {

    Advice advice() {
        if (pose.isScaled()) {
            return new Advice.Anew(pose.scale(), gap.most());
        }
        Outline laid = pose.apply(stick);
        if (gap.most() <= Tolerance.TOUCHING) {
            return new Advice.AsItIs(gap.most());
        }
        Optional<Advice.Plane> plane = planed(laid);
        if (plane.isPresent()) {
            return plane.get();
        }
        Optional<Outline> covering = corners(laid)
                .filter(one -> Gap.between(wanted, one).missing() <= Tolerance.TOUCHING)
                .findFirst();
        if (covering.isEmpty()) {
            return gap.most() <= Advice.ACCURATE
                    ? new Advice.AsItIs(gap.most())
                    : new Advice.TooSmall(gap.missing(), gap.missingAt());
        }
        Gap over = Gap.between(wanted, covering.get());
        return new Advice.Covers(
                Difference.from(wanted).to(Difference.from(covering.get())), over.spare(), over.spareAt());
    }

    /** As it lies, and with two sides flush: the places in which a larger one may cover all round. */
    private Stream<Outline> corners(Outline laid) {
        Box a = wanted.box();
        Box b = laid.box();
        List<Outline> places = new ArrayList<>(List.of(laid));
        for (double dx : List.of(a.back() - b.back(), a.face() - b.face())) {
            for (double dy : List.of(a.bottom() - b.bottom(), a.top() - b.top())) {
                places.add(pose.shifted(new Point(dx, dy)).apply(stick));
            }
        }
        return places.stream();
    }

    /** The cuts that leave least, off one side or off two that meet. */
    private Optional<Advice.Plane> planed(Outline laid) {
        Box a = wanted.box();
        Box b = laid.box();
        double wide = b.width() - a.width();
        double high = b.height() - a.height();
        if (wide < -Tolerance.TOUCHING || high < -Tolerance.TOUCHING) {
            return Optional.empty();
        }
        List<Advice.Plane> ways = new ArrayList<>();
        for (Rip.Side across : List.of(Rip.Side.BACK, Rip.Side.FACE)) {
            for (Rip.Side along : List.of(Rip.Side.TOP, Rip.Side.BOTTOM)) {
                List<Advice.Off> cuts = new ArrayList<>();
                Outline left = cut(cut(laid, across, wide, cuts), along, high, cuts);
                // the cut sides and those that were not cut lie flush with the wanted one
                Box c = left.box();
                double dx = across == Rip.Side.BACK ? a.face() - c.face() : a.back() - c.back();
                double dy = along == Rip.Side.TOP ? a.bottom() - c.bottom() : a.top() - c.top();
                double off =
                        Gap.between(wanted, left.moved(Motion.shift(dx, dy))).most();
                if (!cuts.isEmpty() && off <= Advice.ACCURATE) {
                    ways.add(new Advice.Plane(cuts, off));
                }
            }
        }
        return ways.stream()
                .min(Comparator.comparingDouble(Advice.Plane::off)
                        .thenComparing(way -> way.cuts().size()));
    }

    private Outline cut(Outline outline, Rip.Side side, double amount, List<Advice.Off> cuts) {
        if (amount <= Tolerance.TOUCHING) {
            return outline;
        }
        List<Outline> left = Rip.off(outline, side, amount);
        if (left.size() != 1) {
            return outline;
        }
        cuts.add(new Advice.Off(pose.own(side), amount / pose.scale()));
        return left.get(0);
    }
}
