package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.trace.fit.Curve;
import buildup.profiles.trace.fit.Fitting;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds which side of a tracing is the back, and turns it to the left. By itself a tracing is taken as it was drawn:
 * upright, the back on the left. It is turned or doubted where flats, calipers or both say otherwise.
 */
final class Siding {
    /** A tracing lies no more askew than this on its sheet, degrees. */
    private static final double ASKEW = 20;

    /** The side that is asked for is at most so far from where it is said to be, degrees. */
    private static final double ASKED = 44;

    /** A face that is longer than the back by this is none. */
    private static final double MIRRORED = 1.25;

    /** Another side that is flatter than the left one by this share of the size may be the back. */
    private static final double FLATTER = 0.45;

    /** A side that is so many times as long as the left one may be the back as well. */
    private static final double LONGER = 1.1;

    /** Sine of twice the angle of a line that stands neither level nor upright. */
    private static final double SLOPED = 0.7;

    /** Of two sides that differ by less than this share of the size, the one across from the left is mirrored. */
    private static final double NEARLY = 0.1;

    /** Calipers and outline agree to this share. */
    private static final double FITS = 0.03;

    private final TracingOptions options;
    private final Notices notices;

    private Siding(TracingOptions options, Notices notices) {
        this.options = options;
        this.notices = notices;
    }

    /** The ring with its back upright on the left, as far as anything tells. */
    static Fitting upright(Fitting fitting, TracingOptions options, Notices notices) {
        return new Siding(options, notices).upright(fitting);
    }

    private Fitting upright(Fitting drawn) {
        if (options.back().isPresent()) {
            return asked(drawn, options.back().get());
        }
        Squaring.Turn turn = Squaring.turn(drawn, ASKEW);
        Fitting square = drawn.moved(Motion.turn(turn.degrees()));
        Flats flats = new Flats(square);
        if (!Double.isFinite(turn.unsure())
                || Stream.of(TracedSide.values()).allMatch(side -> flats.length(side.outward()) <= 0)) {
            return byLongest(drawn);
        }
        unsure(square, turn, flats.size());
        return sided(square, flats);
    }

    private Fitting asked(Fitting drawn, TracedSide side) {
        Fitting turned = drawn.moved(turned(side));
        Squaring.Turn turn = Squaring.turn(turned, ASKEW);
        if (Double.isFinite(turn.unsure())) {
            return turned.moved(Motion.turn(turn.degrees()));
        }
        // so far askew that nothing stands about upright: by the side itself
        double askew = new Flats(turned)
                .towards(TracedSide.LEFT.outward(), Math.toRadians(ASKED))
                .map(back -> Math.toDegrees(Math.IEEEremainder(back.angle() - Math.PI, 2 * Math.PI)))
                .orElse(0.0);
        Fitting about = turned.moved(Motion.turn(-askew));
        return about.moved(Motion.turn(Squaring.turn(about, ASKEW).degrees()));
    }

    /** The turn that brings a side to the left. */
    private static Motion turned(TracedSide side) {
        return Motion.turn(Math.rint(Math.toDegrees(Math.PI - side.outward().angle())));
    }

    /** Nothing is level or upright as drawn: the longest flat is the back, with a doubt. */
    private Fitting byLongest(Fitting drawn) {
        Optional<Flats.Flat> longest = new Flats(drawn).longest();
        if (longest.isEmpty()) {
            notices.add(TraceNotices.NO_FLAT.notice());
            return drawn;
        }
        double turn = -Math.toDegrees(Math.IEEEremainder(longest.get().angle() - Math.PI, 2 * Math.PI));
        notices.add(TraceNotices.LEANS
                .with("side", Figure.fine(longest.get().span()))
                .with("turn", Figure.angle(Math.abs(turn)))
                .with("way", turn > 0 ? "counterclockwise" : "clockwise"));
        Fitting turned = drawn.moved(Motion.turn(turn));
        return turned.moved(Motion.turn(Squaring.turn(turned, ASKEW).degrees()));
    }

    private void unsure(Fitting square, Squaring.Turn turn, double size) {
        double off = Math.toRadians(turn.unsure()) * size / 2;
        if (off > square.noise().scatter()) {
            notices.add(TraceNotices.TURN_UNSURE
                    .with("angle", Figure.angle(2 * turn.unsure()))
                    .amount(Figure.fine(2 * off)));
        }
    }

    /** How much flatter a side is than the one across from it. */
    private static double strength(Flats flats, TracedSide side) {
        return flats.length(side.outward()) - flats.length(side.outward().times(-1));
    }

    /** The flatter of the two sides on which it would lie. */
    private static TracedSide lying(Flats flats) {
        return strength(flats, TracedSide.UP) > strength(flats, TracedSide.DOWN) ? TracedSide.UP : TracedSide.DOWN;
    }

    private Fitting sided(Fitting square, Flats flats) {
        Optional<TracedSide> measured = measured(square, flats);
        if (measured.isPresent()) {
            return square.moved(turned(measured.get()));
        }
        double size = flats.size();
        double left = flats.length(TracedSide.LEFT.outward());
        double right = flats.length(TracedSide.RIGHT.outward());
        TracedSide lying = lying(flats);
        double flat = flats.length(lying.outward());
        double flatter = strength(flats, lying) - strength(flats, TracedSide.LEFT);
        double longest = Math.max(flats.length(TracedSide.UP.outward()), flats.length(TracedSide.DOWN.outward()));
        if (right > MIRRORED * left && strength(flats, TracedSide.RIGHT) > strength(flats, lying) - NEARLY * size) {
            notices.add(TraceNotices.MIRRORED.notice());
        } else if (left <= 0 && right <= 0 && sloped(square, flats) && lying == TracedSide.UP) {
            secondBest(TraceNotices.SECOND_BEST, lying, left, flat);
        } else if (left <= 0 && right <= 0) {
            notices.add(TraceNotices.LIES.with("side", word(lying)).with("flat", Figure.fine(flat)));
            return square.moved(turned(lying));
        } else if (flatter > FLATTER * size || (longest > LONGER * left && flat > LONGER * left)) {
            secondBest(TraceNotices.SECOND_BEST, lying, left, flat);
        } else if (right > MIRRORED * left || (right > left / LONGER && curvedBehind(square))) {
            notices.add(TraceNotices.MIRRORED.notice());
        } else if (hangsUpsideDown(square, flats)) {
            secondBest(TraceNotices.SECOND_BEST, TracedSide.DOWN, left, flats.length(TracedSide.DOWN.outward()));
        } else if (flat > left) {
            secondBest(TraceNotices.ABOUT_AS_LONG, lying, left, flat);
        }
        return square;
    }

    private void secondBest(Kind kind, TracedSide side, double left, double flat) {
        notices.add(kind.with("side", word(side))
                .with("flat", Figure.fine(flat))
                .with("left", Figure.fine(left))
                .with("option", "--back " + side.name().toLowerCase(Locale.ROOT)));
    }

    /** Whether the curves are on the left: knives shape the face. */
    private static boolean curvedBehind(Fitting square) {
        Optional<Box> box = Placing.box(square);
        if (box.isEmpty()) {
            return false;
        }
        double middle = (box.get().back() + box.get().face()) / 2;
        double behind = 0;
        double front = 0;
        for (int i = 0; i < square.curves().size(); i++) {
            if (square.curves().get(i) instanceof Curve.Round) {
                List<Point> on = square.points().get(i);
                double length = square.span(i);
                if (on.get(on.size() / 2).x() < middle) {
                    behind += length;
                } else {
                    front += length;
                }
            }
        }
        return behind > 2 * front;
    }

    /** A sprung molding bears on the wall and on the ceiling; one that bears on the wall and on a floor is seldom. */
    private static boolean hangsUpsideDown(Fitting square, Flats flats) {
        return sloped(square, flats)
                && flats.length(TracedSide.DOWN.outward()) > 0
                && !(flats.length(TracedSide.UP.outward()) > flats.length(TracedSide.DOWN.outward()) / 2);
    }

    /** Whether a long face stands neither level nor upright, as that of a sprung molding does. */
    private static boolean sloped(Fitting square, Flats flats) {
        for (int i = 0; i < square.curves().size(); i++) {
            if (square.curves().get(i) instanceof Curve.Straight line
                    && Math.abs(Math.sin(2 * line.angle())) > SLOPED
                    && square.span(i) > flats.size() / 2) {
                return true;
            }
        }
        return false;
    }

    private static String word(TracedSide side) {
        return side == TracedSide.UP
                ? "above"
                : side == TracedSide.DOWN ? "below" : side == TracedSide.LEFT ? "on the left" : "on the right";
    }

    /** The side that calipers tell, when the sizes do not fit the tracing as it was drawn but do when it is turned. */
    private Optional<TracedSide> measured(Fitting square, Flats flats) {
        Optional<Box> box = Placing.box(square);
        if (box.isEmpty()
                || fits(box.get().width(), box.get().height())
                || !fits(box.get().height(), box.get().width())) {
            return Optional.empty();
        }
        TracedSide side = lying(flats);
        if (strength(flats, side) < strength(flats, TracedSide.LEFT)) {
            notices.add(TraceNotices.EXCHANGED.with("side", word(side)));
            return Optional.empty();
        }
        notices.add(TraceNotices.FITS_LYING.with("side", word(side)));
        return Optional.of(side);
    }

    /** Whether the calipers' width and height go with those of an outline; true when they cannot tell. */
    private boolean fits(double width, double height) {
        Optional<Double> across = Caliper.overall(options.calipers(), Caliper.Across.WIDTH);
        Optional<Double> up = Caliper.overall(options.calipers(), Caliper.Across.HEIGHT);
        if (across.isPresent() && up.isPresent()) {
            return Math.abs(across.get() / up.get() / (width / height) - 1) < FITS;
        }
        return options.unit().isEmpty()
                || ((across.isEmpty() || Math.abs(width / across.get() - 1) < FITS)
                        && (up.isEmpty() || Math.abs(height / up.get() - 1) < FITS));
    }
}
