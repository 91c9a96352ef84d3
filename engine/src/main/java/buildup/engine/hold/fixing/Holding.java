package buildup.engine.hold.fixing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Factor;
import buildup.engine.hold.nail.Factor.Why;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Grip;
import buildup.engine.hold.nail.Joint;
import buildup.engine.hold.nail.Strength;
import buildup.engine.hold.nail.YieldLimit;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** What the bodies along one nail hold, by {@link Strength}. */
final class Holding {
    /** A screw is threaded over the two thirds at its point (NDS 2018, Table L3 note 3). */
    private static final double PLAIN_SHARE = 1.0 / 3;

    private final Timber timber;
    private final Fastening fastening;
    private final Drive drive;
    private final Fastener fastener;
    private final double diameter;
    private final boolean slant;
    /** The bodies that hold it, from head to point. */
    private final List<Integer> held;

    Holding(Timber timber, Fastening fastening, Drive drive) {
        this.timber = timber;
        this.fastening = fastening;
        this.drive = drive;
        this.fastener = fastening.use().fastener();
        this.diameter = fastener.diameter().toInches();
        this.slant = slant(fastening);
        this.held = drive.held();
    }

    static boolean slant(Fastening fastening) {
        return Math.abs(fastening.angle()) > Strength.SLANT;
    }

    List<Grip> grips() {
        List<Grip> grips = new ArrayList<>(held.size());
        for (int body : held) {
            grips.add(grip(body));
        }
        return grips;
    }

    private Grip grip(int body) {
        double bite = 0;
        for (Crossing crossing : drive.crossings()) {
            bite += crossing.holds() && crossing.in(body) ? holding(crossing) : 0;
        }
        double gravity = masonry(body) ? 0 : timber.gravity(body);
        boolean endGrain = timber.endGrain(body, drive.way());
        return new Grip(
                body,
                bite,
                gravity,
                endGrain,
                bite * Strength.designWithdrawal(fastener.kind(), gravity, diameter),
                bite * Strength.testWithdrawal(fastener.kind(), gravity, diameter),
                bite * Strength.otherTestWithdrawal(fastener.kind(), gravity, diameter),
                factors(body, endGrain));
    }

    /** A toe-nail's bite counts square to the joint, and that at 0.67; the rule for nails is not one for screws. */
    private List<Factor> factors(int body, boolean endGrain) {
        boolean nail = fastener.kind() == Fastener.Kind.NAIL;
        List<Factor> factors = new ArrayList<>();
        if (masonry(body)) {
            factors.add(new Factor(Why.MASONRY, 0));
        } else if (timber.panel(body)) {
            factors.add(new Factor(Why.PANEL, 0));
        } else if (endGrain) {
            factors.add(new Factor(nail ? Why.END_GRAIN_WITHDRAWAL : Why.END_GRAIN_THREAD, 0));
        }
        if (slant) {
            double square = Math.cos(Math.toRadians(fastening.angle()));
            factors.add(new Factor(nail ? Why.SLANTED_BITE : Why.SLANTED_THREAD, square));
            if (nail) {
                factors.add(new Factor(Why.TOE_WITHDRAWAL, Strength.TOE_WITHDRAWAL));
            }
        }
        return factors;
    }

    private boolean masonry(int body) {
        return timber.masonry(body, fastening.piece());
    }

    private double holding(Crossing crossing) {
        double thread = fastener.kind() == Fastener.Kind.SCREW ? drive.length() * PLAIN_SHARE : 0;
        return Math.max(0, crossing.to() - Math.max(crossing.from(), thread));
    }

    List<Joint> joints(List<Grip> grips) {
        List<Joint> joints = new ArrayList<>();
        for (int i = 0; i + 1 < grips.size(); i++) {
            joints.add(joint(grips, i));
        }
        return joints;
    }

    private Joint joint(List<Grip> grips, int i) {
        int near = grips.get(i).body();
        int far = grips.get(i + 1).body();
        double beyond = allowable(grips.subList(i + 1, grips.size()));
        double head = fastener.headless()
                ? allowable(grips.subList(0, i + 1))
                : headPull(grips.get(0)) + allowable(grips.subList(1, i + 1));
        double gap = gap(near, far);
        double limit = limit(near, far, gap);
        double slip = Math.min(slip(near), slip(far));
        List<Factor> across = across(grips.get(i), grips.get(i + 1));
        double factor = Factor.product(across);
        // no table holds panels, and a slip value is for pieces in contact: a gap leaves the yield limit alone
        boolean bySlip = slip < limit && gap <= Tolerance.TOUCHING;
        double other = gap > Tolerance.TOUCHING ? limit : Math.max(slip, limit);
        return new Joint(
                near,
                far,
                gap,
                drive.in(far),
                beyond,
                head,
                factor * (bySlip ? slip : limit),
                factor * other,
                bySlip,
                across,
                byItsPoint(grips, i),
                fastening.perFoot());
    }

    /** Whether what is beyond a joint is no more than the point, by which nothing hangs. */
    private boolean byItsPoint(List<Grip> grips, int i) {
        double bite = 0;
        for (Grip grip : grips.subList(i + 1, grips.size())) {
            bite += grip.allowable() > 0 ? drive.in(grip.body()) : 0;
        }
        return i > 0 && bite < Nailing.needed(fastener) - Tolerance.SAME_SIZE;
    }

    /** Where the head pulls through the piece that it sits on; a set nail bears on what is left under it. */
    private double headPull(Grip outer) {
        double square = Math.cos(Math.toRadians(fastening.angle()));
        double set = fastener.kind() == Fastener.Kind.NAIL ? Strength.SET : 0;
        double thickness = Math.max(0, drive.in(outer.body()) * square - set);
        return Strength.headPull(outer.gravity(), fastener.head().toInches(), thickness);
    }

    private static double allowable(List<Grip> grips) {
        double sum = 0;
        for (Grip grip : grips) {
            sum += grip.allowable();
        }
        return sum;
    }

    private double gap(int near, int far) {
        double leaves = 0;
        double enters = drive.length();
        for (Crossing crossing : drive.crossings()) {
            if (crossing.holds() && crossing.in(near)) {
                leaves = crossing.to();
            }
            if (crossing.holds() && crossing.in(far)) {
                enters = Math.min(enters, crossing.from());
            }
        }
        return Math.max(0, enters - leaves);
    }

    private double slip(int body) {
        return Strength.slip(fastener.kind(), timber.group(body), timber.gravity(body), diameter);
    }

    private double limit(int near, int far, double gap) {
        double dowel = fastener.root().map(root -> root.toInches()).orElse(diameter);
        // the tapered point, two diameters long, bears as half its length (NDS 2018, 12.3.5.3)
        double bearing = Math.max(0, run(far, 1) - (runsTo(far, 1) == last() ? diameter : 0));
        if (bearing <= 0) {
            return 0;
        }
        double moment = YieldLimit.bending(diameter) * dowel * dowel * dowel / 6;
        YieldLimit modes = new YieldLimit(
                YieldLimit.bearing(lightest(near, -1)) * dowel,
                run(near, -1),
                YieldLimit.bearing(lightest(far, 1)) * dowel,
                bearing,
                gap,
                moment);
        return modes.least() / YieldLimit.divisor(dowel);
    }

    /** Bodies from one on toward the point (1) or the head (-1), as far as they follow each other without a gap. */
    private List<Integer> joined(int body, int step) {
        List<Integer> joined = new ArrayList<>(4);
        joined.add(body);
        for (int i = held.indexOf(body) + step; i >= 0 && i < held.size(); i += step) {
            int before = joined.get(joined.size() - 1);
            double gap = step > 0 ? gap(before, held.get(i)) : gap(held.get(i), before);
            if (gap > Tolerance.TOUCHING) {
                break;
            }
            joined.add(held.get(i));
        }
        return joined;
    }

    private double run(int body, int step) {
        double run = 0;
        for (int one : joined(body, step)) {
            run += drive.in(one);
        }
        return run;
    }

    /** Inches in all bodies that it meets after one. */
    private double beyond(int body) {
        return held.subList(held.indexOf(body) + 1, held.size()).stream()
                .mapToDouble(drive::in)
                .sum();
    }

    private int runsTo(int body, int step) {
        List<Integer> joined = joined(body, step);
        return joined.get(joined.size() - 1);
    }

    private double lightest(int body, int step) {
        double lightest = Double.POSITIVE_INFINITY;
        for (int one : joined(body, step)) {
            lightest = Math.min(lightest, timber.gravity(one));
        }
        return lightest;
    }

    private int last() {
        return drive.last()
                .filter(Crossing::holds)
                .map(crossing -> crossing.body().orElseThrow())
                .orElse(-1);
    }

    /**
     * Shallow bites count in proportion up to 10 diameters, under 6 nothing. All wood beyond the joint holds the shank there,
     * plaster and air in between or not: own reading, since NDS 2018 speaks of one main member.
     */
    private List<Factor> across(Grip near, Grip far) {
        double depth = beyond(near.body()) / diameter;
        List<Factor> factors = new ArrayList<>();
        if (timber.panel(near.body()) || timber.panel(far.body())) {
            factors.add(new Factor(Why.PANEL, 0));
        }
        if (masonry(near.body()) || masonry(far.body())) {
            factors.add(new Factor(Why.MASONRY, 0));
        }
        if (depth < 10) {
            factors.add(new Factor(Why.SHORT_BITE, depth < 6 ? 0 : depth / 10));
        }
        if (near.endGrain() || far.endGrain()) {
            factors.add(new Factor(Why.END_GRAIN_LATERAL, Strength.END_LATERAL));
        }
        if (slant && fastener.kind() == Fastener.Kind.NAIL) {
            factors.add(new Factor(Why.TOE_LATERAL, Strength.TOE_LATERAL));
        }
        return factors;
    }
}
