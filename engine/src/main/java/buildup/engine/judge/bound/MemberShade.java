package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.PlacedForms.Extent;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.look.light.Lights;
import buildup.engine.look.light.Sunlight;
import buildup.engine.look.view.Viewpoint;
import buildup.engine.look.view.Visibility;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Bounds of how much of a member that nothing touches ({@link WholeMembers}) a light leaves dark, curved members among them.
 * The member is cut into short parts. A part is dark in every stack of a box where it turns away from the light whatever the
 * sizes are, or where all its rays meet another piece that is surely there and stands wholly before it; of parallel rays it
 * is known besides which parts the piece itself leaves dark. It may be dark where a ray of it may meet some piece. An outline
 * is in one, so that it meets every line between the outermost ones that meet it.
 */
final class MemberShade implements Bounder {
    /** So many parts are made of a segment, and some more where its own shadow begins. */
    private static final int PARTS = 12;

    /** What welding may move an edge by, and with it a shadow. */
    private static final double SLACK = UprightFace.SLACK;

    /** Rays that are steeper than this are not reckoned with. */
    private static final double STEEP = 1e3;

    /** A lamp has to stand farther out than every piece by so much, in. */
    private static final double CLEAR = 1;

    /**
     * A part of a member.
     *
     * @param box true for arcs
     * @param first normal at its start
     * @param last normal at its end, less than half a turn from the first
     * @param ray of parallel rays that meet it, the heights at which they pass the lower corner of the outline's box
     * @param lit whether the piece by itself leaves it in light; of a lamp's rays that is not known
     */
    private record Part(Box box, double length, Point first, Point last, Range ray, boolean lit) {
        /** Whether it turns away from all directions between two. */
        boolean isAway(Point one, Point other) {
            return first.dot(one) <= 0 && first.dot(other) <= 0 && last.dot(one) <= 0 && last.dot(other) <= 0;
        }
    }

    private final WholeMembers whole;
    private final Optional<Light.Lamp> lamp;
    private final double slope;
    private final boolean share;
    private final IdentityHashMap<OwnMember, List<Part>> parts = new IdentityHashMap<>();
    /** By the numbers of the pieces, in parallel rays: how high over that of the lower corner their lowest and highest ray lies. */
    private final List<Extent> rays = new ArrayList<>();

    MemberShade(WholeMembers whole, List<PlacedForms> pieces, Light light, boolean share) {
        this.whole = whole;
        this.share = share;
        this.lamp = light instanceof Light.Lamp one ? Optional.of(one) : Optional.empty();
        this.slope = lamp.isPresent() ? 0 : slope(light);
        boolean parallel = lamp.isEmpty() && slope >= 0 && slope <= STEEP;
        for (OwnMember member : whole.all()) {
            parts.put(member, parallel || lamp.isPresent() ? parts(member) : List.of());
        }
        if (parallel) {
            PlacedForms own = whole.piece();
            SizeSum corner = own.up().low().minus(own.out().low().times(slope));
            pieces.forEach(piece -> rays.add(new Extent(
                    Thrown.Parallel.ray(piece, slope, false).minus(corner),
                    Thrown.Parallel.ray(piece, slope, true).minus(corner))));
        }
    }

    private static double slope(Light light) {
        Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
        return Math.tan(Math.toRadians(Lights.sectionAngle(distant.altitude(), distant.azimuth())));
    }

    private List<Part> parts(OwnMember member) {
        Optional<Visibility> alone = lamp.isPresent() ? Optional.empty() : Optional.of(alone(member));
        List<Part> parts = new ArrayList<>();
        for (Segment segment : member.segments()) {
            TreeSet<Double> cuts = new TreeSet<>();
            for (int i = 0; i <= PARTS; i++) {
                cuts.add((double) i / PARTS);
            }
            List<Visibility.Stretch> lit = alone.map(view -> view.seen(segment)).orElse(List.of());
            lit.forEach(stretch -> {
                cuts.add(Math.max(0, stretch.start()));
                cuts.add(Math.min(1, stretch.end()));
            });
            double from = 0;
            for (double to : cuts) {
                if (to > from) {
                    double middle = (from + to) / 2;
                    boolean own = lit.stream().anyMatch(one -> one.start() <= middle && middle <= one.end());
                    parts.add(part(segment.part(from, to), own));
                    from = to;
                }
            }
        }
        return parts;
    }

    /** What parallel rays see of the piece by itself. */
    private Visibility alone(OwnMember member) {
        List<Visibility.Surface> surfaces = member.outline().segments().stream()
                .map(segment -> new Visibility.Surface(segment, 0))
                .toList();
        return Visibility.of(Viewpoint.FarAway.at(Math.atan(slope)), surfaces);
    }

    private Part part(Segment segment, boolean lit) {
        double one = segment.from().y() - slope * segment.from().x();
        double other = segment.to().y() - slope * segment.to().x();
        // an arc lies beyond the line between its ends by no more than its rise
        double rise = segment instanceof Arc arc ? arc.radius() * (1 - Math.cos(arc.sweep() / 2)) : 0;
        double more = rise * Math.hypot(1, slope) + Tolerance.COINCIDENT;
        return new Part(
                segment.box(),
                segment.length(),
                OwnMember.normal(segment, 0),
                OwnMember.normal(segment, 1),
                new Range(Math.min(one, other) - more, Math.max(one, other) + more),
                lit);
    }

    @Override
    public FigureBound of(ChoiceBox box) {
        return whole.over(
                box,
                (member, around, over) -> lamp.isPresent()
                        ? inLamp(member, around)
                        : rays.isEmpty() ? FigureBound.UNKNOWN : inRays(member, around, over));
    }

    private List<Part> of(OwnMember member) {
        return Optional.ofNullable(parts.get(member)).orElse(List.of());
    }

    private FigureBound inRays(OwnMember member, WholeMembers.Surroundings all, ChoiceBox box) {
        double blur = SLACK * (1 + slope);
        double surely = 0;
        double maybe = 0;
        List<Range> lowest = new ArrayList<>();
        List<Range> highest = new ArrayList<>();
        for (WholeMembers.Around other : all.others()) {
            lowest.add(rays.get(other.number()).low().over(box));
            highest.add(rays.get(other.number()).high().over(box));
        }
        for (Part part : of(member)) {
            boolean dark = !part.lit;
            boolean some = !part.lit;
            for (int i = 0; !dark && i < all.others().size(); i++) {
                WholeMembers.Around other = all.others().get(i);
                boolean before = other.surely() && other.back().least() >= part.box.face();
                dark = before
                        && lowest.get(i).most() + blur <= part.ray.least()
                        && part.ray.most() <= highest.get(i).least() - blur;
                some |= other.face().most() > part.box.back() - SLACK
                        && lowest.get(i).least() - blur <= part.ray.most()
                        && part.ray.least() <= highest.get(i).most() + blur;
            }
            surely += dark ? part.length : 0;
            maybe += dark || some ? part.length : 0;
        }
        double of = share ? member.length() : 1;
        return new FigureBound(surely / of - Tolerance.SNAP, maybe / of + Tolerance.SNAP);
    }

    private FigureBound inLamp(OwnMember member, WholeMembers.Surroundings all) {
        Light.Lamp from = lamp.orElseThrow();
        double near = from.left().x() - CLEAR;
        boolean clear = near > 0 && all.out().most() + member.box().face() < near;
        for (WholeMembers.Around other : all.others()) {
            clear = clear && all.out().most() + other.face().most() < near;
        }
        if (!clear) {
            return FigureBound.UNKNOWN;
        }
        double surely = 0;
        for (Part part : of(member)) {
            Range rise = new Range(
                    from.at().y() - all.up().most() - part.box.top(),
                    from.at().y() - all.up().least() - part.box.bottom());
            Range way = new Range(
                    from.at().x() - all.out().most() - part.box.face(),
                    from.at().x() - all.out().least() - part.box.back());
            Range slopes = rise.times(new Range(1 / way.most(), 1 / way.least()));
            boolean dark = part.isAway(new Point(1, slopes.least()), new Point(1, slopes.most()));
            for (int i = 0; !dark && i < all.others().size(); i++) {
                WholeMembers.Around other = all.others().get(i);
                dark = other.surely() && hides(other, part.box, slopes);
            }
            surely += dark ? part.length : 0;
        }
        return new FigureBound(surely / (share ? member.length() : 1) - Tolerance.SNAP, Double.POSITIVE_INFINITY);
    }

    /**
     * Whether every ray from a part meets another piece, whatever the sizes are and whatever its slope s within the range is:
     * at its back, a before the part, the ray has risen by s a, at its face by s b. It meets a box from c to d high if the
     * higher of these is not under c and the lower not over d; any outline in that box, which touches all four sides of it,
     * if the lower is not under c and the higher not over d.
     */
    private static boolean hides(WholeMembers.Around other, Box part, Range slopes) {
        Range a = new Range(other.back().least() - part.face(), other.back().most() - part.back());
        Range b = new Range(other.face().least() - part.face(), other.face().most() - part.back());
        double bottom = other.bottom().most() - part.bottom();
        double top = other.top().least() - part.top();
        double blur = SLACK * (1 + Math.max(Math.abs(slopes.least()), Math.abs(slopes.most())));
        if (a.least() < 0) {
            return false;
        }
        boolean board = other.piece().box();
        double high = slopes.least() * (slopes.least() >= 0 ? (board ? b : a).least() : (board ? a : b).most());
        double low = slopes.most() * (slopes.most() >= 0 ? (board ? a : b).most() : (board ? b : a).least());
        return high >= bottom + blur && low <= top - blur;
    }
}
