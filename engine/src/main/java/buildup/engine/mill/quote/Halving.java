package buildup.engine.mill.quote;

import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Rip;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * A straight cut along which a molding is run as two pieces and glued. Places are those of the outline as it is run.
 *
 * @param level whether it lies level, at a height; else it stands upright, at a place out from the back
 * @param at in
 */
public record Halving(boolean level, double at) {
    /** Neither piece is thinner: it is to be clamped; in. Common practice, no source. */
    private static final double LEAST = 0.375;

    private static final double ON_RULE = 16;

    /** Edges of less than this are feathers, radians. Common practice, no source. */
    private static final double FEATHER = Math.toRadians(30);

    /** Places looked at beyond which no more are: a molding has few corners. */
    private static final int MOST_TRIED = 24;

    /**
     * One of the two pieces, and the joint between them.
     *
     * @param whole what both are glued to
     * @param beside the other piece; empty for the first
     * @param joint width of the joint, in; that of the first counts for nothing
     */
    public record Half(String whole, String beside, double joint) {
        boolean isLast() {
            return !beside.isEmpty();
        }
    }

    /** The two pieces of a molding, the one nearer to the bottom or the back first; none when it does not come in two. */
    static List<Profile> of(Profile profile, Halving cut) {
        Outline outline = profile.asRun();
        Box box = outline.box();
        List<Outline> first = cut.level()
                ? Rip.off(outline, Rip.Side.TOP, box.top() - cut.at())
                : Rip.off(outline, Rip.Side.FACE, box.face() - cut.at());
        List<Outline> second = cut.level()
                ? Rip.off(outline, Rip.Side.BOTTOM, cut.at() - box.bottom())
                : Rip.off(outline, Rip.Side.BACK, cut.at() - box.back());
        boolean two = first.size() == 1
                && second.size() == 1
                && first.get(0).area() < outline.area() - Tolerance.TOUCHING
                && second.get(0).area() < outline.area() - Tolerance.TOUCHING
                && least(first.get(0)) >= LEAST - Tolerance.COINCIDENT
                && least(second.get(0)) >= LEAST - Tolerance.COINCIDENT;
        return two ? List.of(piece(profile, first.get(0)), piece(profile, second.get(0))) : List.of();
    }

    private static double least(Outline outline) {
        return Math.min(outline.box().width(), outline.box().height());
    }

    private static Profile piece(Profile profile, Outline outline) {
        Motion home = Motion.shift(-outline.box().back(), -outline.box().bottom());
        return new Profile(profile.name(), profile.kind(), outline.moved(home), new Profile.Milled());
    }

    /** What the two are called behind the name of the whole. */
    List<String> names() {
        return level ? List.of("lower", "upper") : List.of("back", "front");
    }

    /** Width of the joint, in: what the first piece has along the cut, less what of that was its surface before. */
    static double joint(Profile profile, Halving cut) {
        Outline outline = profile.asRun();
        Outline first = of(profile, cut).get(0).outline();
        double edge = cut.level() ? first.box().top() : first.box().face();
        return lying(first, cut.level(), edge) - lying(outline, cut.level(), cut.at());
    }

    /** Length of all that lies along a cut with its wood on the side of the first piece; outlines are walked counterclockwise. */
    private static double lying(Outline outline, boolean level, double at) {
        double sum = 0;
        for (Stroke stroke : outline.strokes()) {
            Point way = stroke.segment().to().minus(stroke.segment().from());
            Point from = stroke.segment().from();
            boolean along =
                    level ? way.x() < 0 && Tolerance.same(way.y(), 0) : way.y() > 0 && Tolerance.same(way.x(), 0);
            boolean there = Tolerance.same(level ? from.y() : from.x(), at);
            sum += along && there && stroke.segment() instanceof Line
                    ? stroke.segment().length()
                    : 0;
        }
        return sum;
    }

    /** Whether an edge is so thin that it breaks before it is glued. */
    private static boolean isFeathered(Outline outline) {
        List<Stroke> strokes = outline.strokes();
        for (int i = 0; i < strokes.size(); i++) {
            Point in = strokes.get(i).segment().direction(1);
            Point out = strokes.get((i + 1) % strokes.size()).segment().direction(0);
            if (Math.atan2(in.cross(out), in.dot(out)) > Math.PI - FEATHER) {
                return true;
            }
        }
        return false;
    }

    /** Level and upright cuts through the corners of a molding, on the rule, that leave two pieces without thin edges. */
    static List<Halving> through(Profile profile) {
        return cuts(profile, places -> places);
    }

    /**
     * The same halfway between corners, where all that they cross is straight and square to them: a slot that is deep is shallow
     * in either piece, and a joint in a curve would show (common practice, no source).
     */
    static List<Halving> between(Profile profile) {
        Outline outline = profile.asRun();
        return cuts(
                        profile,
                        places -> IntStream.range(1, places.size())
                                .mapToObj(i -> onRule((places.get(i - 1) + places.get(i)) / 2))
                                .filter(place -> !places.contains(place))
                                .toList())
                .stream()
                .filter(cut -> outline.segments().stream().filter(cut::crosses).allMatch(cut::isSquareTo))
                .toList();
    }

    private boolean crosses(Segment segment) {
        Box box = segment.box();
        return level
                ? box.bottom() < at - Tolerance.TOUCHING && box.top() > at + Tolerance.TOUCHING
                : box.back() < at - Tolerance.TOUCHING && box.face() > at + Tolerance.TOUCHING;
    }

    private boolean isSquareTo(Segment segment) {
        Point way = segment.direction(0);
        return segment instanceof Line && Math.abs(level ? way.x() : way.y()) < Tolerance.SAME_DIRECTION;
    }

    private static List<Halving> cuts(Profile profile, UnaryOperator<List<Double>> chosen) {
        Outline outline = profile.asRun();
        List<Halving> cuts = new ArrayList<>();
        for (boolean level : List.of(true, false)) {
            List<Double> places = outline.strokes().stream()
                    .map(stroke -> stroke.segment().from())
                    .map(p -> onRule(level ? p.y() : p.x()))
                    .distinct()
                    .sorted()
                    .toList();
            chosen.apply(places).stream()
                    .map(at -> new Halving(level, at))
                    .filter(cut -> !of(profile, cut).isEmpty())
                    .filter(cut -> of(profile, cut).stream().noneMatch(piece -> isFeathered(piece.outline())))
                    .forEach(cuts::add);
        }
        return cuts.subList(0, Math.min(cuts.size(), MOST_TRIED));
    }

    private static double onRule(double size) {
        return Math.rint(size * ON_RULE) / ON_RULE + 0.0;
    }
}
