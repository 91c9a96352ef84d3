package buildup.profiles.trace;

import buildup.profiles.outline.Point;
import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import java.util.ArrayList;
import java.util.List;

/** Takes wear and paint off a squared ring. */
final class Restoring {
    private Restoring() {}

    /** Without the small round or flat members between two straight ones, which then meet in a sharp arris. */
    static Fitting arrises(Fitting fitting, double size) {
        Fitting sharp = fitting;
        for (int i = sharp.curves().size() - 1; i >= 0 && sharp.curves().size() > 3; i--) {
            if (worn(sharp, i, size)) {
                sharp = without(sharp, i);
            }
        }
        return sharp;
    }

    private static boolean worn(Fitting fitting, int i, double size) {
        int n = fitting.curves().size();
        Curve before = fitting.curves().get((i + n - 1) % n);
        Curve after = fitting.curves().get((i + 1) % n);
        if (!(before instanceof Curve.Straight a) || !(after instanceof Curve.Straight b) || i >= n) {
            return false;
        }
        boolean arris = a.normal().left().cross(b.normal().left()) > 0;
        double length = fitting.starts().get(i).distance(fitting.starts().get((i + 1) % n));
        boolean small = fitting.curves().get(i) instanceof Curve.Round round
                ? round.bend() > 0 && round.radius() <= size
                : length <= size * Math.sqrt(2)
                        && a.normal().left().dot(b.normal().left()) < 0.9;
        return arris && small;
    }

    private static Fitting without(Fitting fitting, int gone) {
        List<Curve> curves = new ArrayList<>(fitting.curves());
        List<List<Point>> points = new ArrayList<>(fitting.points());
        curves.remove(gone);
        points.remove(gone);
        int n = curves.size();
        List<Bond> bonds = new ArrayList<>();
        for (Bond bond : fitting.bonds()) {
            if (bond instanceof Bond.Tangent tangent) {
                if (tangent.first() != gone && tangent.second() != gone) {
                    int second = less(tangent.second(), gone);
                    bonds.add(new Bond.Tangent((second + n - 1) % n, second, tangent.back()));
                }
            } else if (bond instanceof Bond.Angle angle && angle.line() != gone) {
                bonds.add(new Bond.Angle(less(angle.line(), gone), angle.angle()));
            }
        }
        return Fitting.solved(curves, points, bonds, fitting.noise());
    }

    private static int less(int number, int gone) {
        return number > gone ? number - 1 : number;
    }

    /** So much further into the wood on all sides but the back, points too. */
    static Fitting stripped(Fitting fitting, double paint, double back) {
        List<Curve> curves = new ArrayList<>();
        List<List<Point>> points = new ArrayList<>();
        for (int i = 0; i < fitting.curves().size(); i++) {
            Curve curve = fitting.curves().get(i);
            boolean behind = curve instanceof Curve.Straight line
                    && line.normal().x() < -0.99
                    && Math.abs(line.offset() + back) < 4 * fitting.noise().scatter();
            double by = behind ? 0 : paint;
            curves.add(curve.inward(by));
            points.add(fitting.points().get(i).stream()
                    .map(p -> p.minus(curve.heading(p).right().times(by)))
                    .toList());
        }
        return Fitting.solved(curves, points, fitting.bonds(), fitting.noise());
    }
}
