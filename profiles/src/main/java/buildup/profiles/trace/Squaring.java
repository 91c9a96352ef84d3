package buildup.profiles.trace;

import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.fit.Bond;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns a ring that stands about upright to where it stands so exactly, and binds what is level or upright. */
final class Squaring {
    /** A line this near to level or upright is looked at. */
    private static final double NEARLY = Math.toRadians(15);

    /** Standard deviations within which a line may be level or upright. */
    private static final double WITHIN = 3.5;

    /** Angles at which sprung moldings commonly stand, degrees; common practice, no source. */
    private static final List<Double> SPRINGS = List.of(30.0, 38.0, 45.0, 52.0, 60.0);

    private static final double QUARTER = Math.PI / 2;

    /** Lines are voted with that stand no farther from each other than this, degrees. */
    private static final double VOTED = 0.5;

    /** Means taken one after another, each of the lines that agree with the one before. */
    private static final int MEANS = 2;

    /** Where the back of a sprung molding looks that stands upright, and how far it may be from there, radians. */
    private static final Point LEANING = new Point(-1, 1).unit();

    private static final double LEANS = Math.toRadians(30);

    /** What it may cost in (distance / noise)^2 that faces of a sprung molding are parallel and its edges square. */
    private static final double SPRUNG = 9;

    private Squaring() {}

    /**
     * A turn.
     *
     * @param degrees counterclockwise
     * @param unsure its standard deviation, degrees; infinite when nothing is level or upright
     */
    record Turn(double degrees, double unsure) {}

    /** The turn to where most of what is about level or upright is so, no farther than {@code most} degrees. */
    static Turn turn(Fitting fitting, double most) {
        Turn flat = flatTurn(fitting, Math.toRadians(most));
        Turn spring = springTurn(fitting.moved(Motion.turn(flat.degrees())), Math.toRadians(flat.unsure()));
        return new Turn(flat.degrees() + spring.degrees(), Math.min(flat.unsure(), spring.unsure()));
    }

    /**
     * By the lines that agree best: each votes with its length for every turn that it does not contradict. A short line
     * contradicts little, so it may vote for many turns; but it is asked as a voter only, or it would elect a turn that
     * lies between two that exclude each other.
     */
    private static Turn flatTurn(Fitting fitting, double most) {
        double votes = 0;
        double elected = 0;
        for (int i : lines(fitting)) {
            double off = off(fitting, i);
            double mine = Math.abs(off) <= most ? votes(fitting, off) : 0;
            if (mine > votes) {
                votes = mine;
                elected = off;
            }
        }
        Turn turn = new Turn(0, Double.POSITIVE_INFINITY);
        for (int round = 0; votes > 0 && round < MEANS; round++) {
            turn = mean(fitting, elected);
            elected = -Math.toRadians(turn.degrees());
        }
        return turn;
    }

    private static double votes(Fitting fitting, double turn) {
        return lines(fitting).stream()
                .filter(line -> agrees(fitting, line, turn))
                .mapToDouble(fitting::span)
                .sum();
    }

    /** The mean of all lines that agree with a turn, each weighed by how well it knows its own. */
    private static Turn mean(Fitting fitting, double about) {
        double sum = 0;
        double weight = 0;
        for (int i : lines(fitting)) {
            double slack = Flats.slack(fitting, i);
            if (agrees(fitting, i, about)) {
                sum += off(fitting, i) / (slack * slack);
                weight += 1 / (slack * slack);
            }
        }
        return weight > 0
                ? new Turn(-Math.toDegrees(sum / weight), Math.toDegrees(1 / Math.sqrt(weight)))
                : new Turn(-Math.toDegrees(about), Double.POSITIVE_INFINITY);
    }

    private static boolean agrees(Fitting fitting, int line, double turn) {
        double within = WITHIN * Flats.slack(fitting, line) + Math.toRadians(VOTED) / 2;
        return Math.abs(off(fitting, line) - turn) < Math.min(NEARLY, within);
    }

    private static List<Integer> lines(Fitting fitting) {
        List<Integer> lines = new ArrayList<>();
        for (int i = 0; i < fitting.curves().size(); i++) {
            if (fitting.curves().get(i) instanceof Curve.Straight) {
                lines.add(i);
            }
        }
        return lines;
    }

    /** How far a line stands from level or upright, radians. */
    private static double off(Fitting fitting, int line) {
        return Math.IEEEremainder(((Curve.Straight) fitting.curves().get(line)).angle(), QUARTER);
    }

    /**
     * A sprung molding bears on short flats, which say little of its turn; its long faces say all once one knows at
     * which of the trade's angles they stand.
     *
     * @param known how well the flats know the turn, radians; infinite when there are none
     */
    private static Turn springTurn(Fitting fitting, double known) {
        int longest = -1;
        for (int i : lines(fitting)) {
            boolean leans = Math.abs(off(fitting, i)) >= NEARLY;
            longest = leans && (longest < 0 || Flats.slack(fitting, i) < Flats.slack(fitting, longest)) ? i : longest;
        }
        if (longest < 0 || Double.isInfinite(known)) {
            return new Turn(0, Double.POSITIVE_INFINITY);
        }
        double own = Flats.slack(fitting, longest);
        double lean = Math.toDegrees(((Curve.Straight) fitting.curves().get(longest)).angle());
        double off = SPRINGS.stream()
                .map(spring -> Math.IEEEremainder(lean - spring, 90))
                .min(Comparator.comparingDouble(Math::abs))
                .orElse(0.0);
        // worth it only where the faces know better than the flats
        return own * 2 < known && Math.abs(Math.toRadians(off)) < WITHIN * Math.hypot(own, known)
                ? new Turn(-off, Math.toDegrees(own))
                : new Turn(0, Double.POSITIVE_INFINITY);
    }

    /** Lines that are level or upright within what the points allow, exactly so. */
    static Fitting squared(Fitting fitting) {
        Fitting squared = fitting;
        List<Integer> longestFirst = lines(fitting);
        longestFirst.sort(Comparator.comparingDouble(i -> Flats.slack(fitting, i)));
        for (int i : longestFirst) {
            double off = off(fitting, i);
            if (Math.abs(off) < NEARLY) {
                double angle = ((Curve.Straight) fitting.curves().get(i)).angle();
                squared = squared.tried(new Bond.Angle(i, angle - off), Fitting.MEANT);
            }
        }
        return sprung(squared);
    }

    /** Whether it is bound as a sprung molding is. */
    static boolean isSprung(Fitting fitting) {
        return fitting.bonds().stream()
                .anyMatch(bond -> bond instanceof Bond.Angle angle
                        && Math.abs(Math.IEEEremainder(angle.angle(), QUARTER)) > Tolerance.SAME_DIRECTION);
    }

    /** The short faces and square edges of a sprung molding, parallel or square to the long back that leans. */
    private static Fitting sprung(Fitting fitting) {
        Flats flats = new Flats(fitting);
        Optional<Flats.Flat> leaning = flats.towards(LEANING, LEANS)
                .filter(back -> fitting.curves().get(back.curve()) instanceof Curve.Straight)
                .filter(back -> fitting.span(back.curve()) > flats.size() / 2);
        if (leaning.isEmpty()) {
            return fitting;
        }
        int back = leaning.get().curve();
        double lean = ((Curve.Straight) fitting.curves().get(back)).angle();
        Fitting sprung = fitting.tried(new Bond.Angle(back, lean), SPRUNG);
        for (int i : lines(fitting)) {
            double angle = ((Curve.Straight) sprung.curves().get(i)).angle();
            double off = Math.IEEEremainder(angle - lean, QUARTER);
            if (i != back && Math.abs(off) < NEARLY && Math.abs(off(fitting, i)) > NEARLY) {
                sprung = sprung.tried(new Bond.Angle(i, angle - off), SPRUNG);
            }
        }
        return sprung;
    }
}
