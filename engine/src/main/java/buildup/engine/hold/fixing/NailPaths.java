package buildup.engine.hold.fixing;

import buildup.engine.hold.nail.Crossing;
import buildup.engine.hold.nail.Crossing.Stuff;
import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Drive.BreakOut;
import buildup.engine.section.compose.ClosedVoid;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Follows nails through what stands in a step. */
final class NailPaths {
    /** Shares of a crossing at which the wood beside the nail is measured; its ends lie in the faces themselves. */
    private static final List<Double> STATIONS = List.of(0.1, 0.3, 0.5, 0.7, 0.9);

    /** A face that leans less than this off the way of the nail looks aside: the cosine of 60 degrees. */
    private static final double LOOKS_ASIDE = 0.5;

    /** A face that a nail meets flatter than this lies beside it from end to end: the sine of 10 degrees; no source. */
    private static final double RUNS_ALONG = 0.1736;

    private static final int TRIED_ON_A_FACE = 8;

    /** A measure across a body goes on this far, in: nobody asks whether more wood than that stands beside a nail. */
    private static final double ACROSS = 6;

    private final Timber timber;

    NailPaths(Timber timber) {
        this.timber = timber;
    }

    Drive follow(Point head, Point way, double length, int step) {
        Ray ray = new Ray(head, way, length);
        List<Crossing> solid = new ArrayList<>();
        for (int i = 0; i < timber.count(); i++) {
            if (timber.up(i, step) && ray.passes(timber.solid(i).outline().box())) {
                solids(i, ray, solid);
            }
        }
        solid.sort(Comparator.comparingDouble(Crossing::from)
                .thenComparingInt(c -> c.body().orElse(-1)));
        joistsFirst(solid);
        List<Crossing> crossings = new ArrayList<>(solid.size() + 2);
        double at = 0;
        for (Crossing next : solid) {
            // where two bodies overlap the nail is counted in the first alone
            double from = Math.max(at, next.from());
            if (next.to() - from > Tolerance.TOUCHING) {
                air(at, from, crossings);
                crossings.add(new Crossing(next.body(), next.stuff(), from, next.to()));
                at = next.to();
            }
        }
        double out = length - at;
        if (out <= Tolerance.TOUCHING || crossings.isEmpty()) {
            return new Drive(head, way, length, crossings, Optional.empty());
        }
        return new Drive(
                head,
                way,
                length,
                crossings,
                Optional.of(breakOut(ray.line(), at, crossings.get(crossings.size() - 1))));
    }

    /** Where a joist is given as a piece over the ceiling, what is known there is the joist. */
    private void joistsFirst(List<Crossing> solid) {
        for (int i = 0; i < solid.size(); i++) {
            Crossing ceiling = solid.get(i);
            if (!timber.holds(ceiling.body().orElseThrow())) {
                double to = solid.stream()
                        .filter(next -> next.from() > ceiling.from()
                                && timber.holds(next.body().orElseThrow()))
                        .mapToDouble(Crossing::from)
                        .min()
                        .orElse(ceiling.to());
                solid.set(i, new Crossing(ceiling.body(), ceiling.stuff(), ceiling.from(), Math.min(ceiling.to(), to)));
            }
        }
    }

    private static void air(double from, double to, List<Crossing> out) {
        if (to - from > Tolerance.TOUCHING) {
            out.add(new Crossing(OptionalInt.empty(), Stuff.AIR, from, to));
        }
    }

    private void solids(int body, Ray ray, List<Crossing> out) {
        if (!timber.holds(body)) {
            runs(body, Stuff.COVERING, ray.inside(timber.solid(body)), out);
            return;
        }
        double[] wood = ray.inside(timber.wood(body));
        runs(body, Stuff.WOOD, wood, out);
        if (timber.covering(body) > 0) {
            double[] all = ray.inside(timber.solid(body));
            for (int i = 0; i < all.length; i += 2) {
                // the covering is what of the wall is not wood
                double to = all[i + 1];
                for (int j = wood.length - 2; j >= 0; j -= 2) {
                    to = wood[j] >= all[i] ? Math.min(to, wood[j]) : to;
                }
                if (to > all[i]) {
                    out.add(new Crossing(OptionalInt.of(body), Stuff.COVERING, all[i], to));
                }
            }
        }
    }

    /** @param runs where each begins and ends, one after the other */
    private static void runs(int body, Stuff stuff, double[] runs, List<Crossing> out) {
        for (int i = 0; i < runs.length; i += 2) {
            out.add(new Crossing(OptionalInt.of(body), stuff, runs[i], runs[i + 1]));
        }
    }

    /** A straight way from a place, in plain numbers: thousands are followed for each stack. */
    private static final class Ray {
        private final Point from;
        private final Point way;
        private final double length;
        private final double slack;
        private Optional<Line> line = Optional.empty();

        /** @param way unit step */
        Ray(Point from, Point way, double length) {
            this.from = from;
            this.way = way;
            this.length = length;
            this.slack = Tolerance.SNAP * (Math.abs(way.x()) + Math.abs(way.y()));
        }

        /** The same as a line, for what is not plain. */
        Line line() {
            Line known = line.orElseGet(() -> new Line(from, from.plus(way.times(length))));
            line = Optional.of(known);
            return known;
        }

        /** How far a place lies to the left of it, in. */
        private double side(double x, double y) {
            return way.x() * (y - from.y()) - way.y() * (x - from.x());
        }

        /** How far along it a place lies, in. */
        private double along(double x, double y) {
            return way.x() * (x - from.x()) + way.y() * (y - from.y());
        }

        /** Whether it may meet what lies in a box. */
        boolean passes(Box box) {
            return passes(box, Tolerance.SNAP);
        }

        /** @param within how near to the box it has to come, in */
        private boolean passes(Box box, double within) {
            double halfX = box.width() / 2;
            double halfY = box.height() / 2;
            double x = box.back() + halfX;
            double y = box.bottom() + halfY;
            double wide = Math.abs(way.x()) * halfY + Math.abs(way.y()) * halfX + within;
            double deep = Math.abs(way.x()) * halfX + Math.abs(way.y()) * halfY + within;
            double middle = along(x, y);
            return Math.abs(side(x, y)) <= wide && middle >= -deep && middle <= length + deep;
        }

        /**
         * How far along it meets a segment of an outline, in; not a number where it does not. A second meeting, which only an
         * arc has, follows.
         */
        private void meet(Timber.Solid solid, int i, double[] met) {
            met[0] = Double.NaN;
            met[1] = Double.NaN;
            Segment segment = solid.segment(i);
            if (segment instanceof Line) {
                double first = side(solid.x(i), solid.y(i));
                double last = side(solid.x(i + 1), solid.y(i + 1));
                if ((first > slack && last > slack) || (first < -slack && last < -slack)) {
                    return;
                }
                if (Math.abs(first) > slack && Math.abs(last) > slack) {
                    double share = first / (first - last);
                    double x = solid.x(i) + share * (solid.x(i + 1) - solid.x(i));
                    double y = solid.y(i) + share * (solid.y(i + 1) - solid.y(i));
                    double along = along(x, y);
                    if (along >= -Tolerance.SNAP && along <= length + Tolerance.SNAP) {
                        met[0] = along;
                    }
                    return;
                }
            }
            // what meets it within a slack at either end lies within three of them
            if (!passes(solid.box(i), 3 * Tolerance.SNAP)) {
                return;
            }
            List<Point> places = Crossings.of(line(), segment, Tolerance.SNAP);
            for (int k = 0; k < places.size(); k++) {
                met[k] = along(places.get(k).x(), places.get(k).y());
            }
        }

        /**
         * The stretches of it inside an outline, where each begins and where it ends: cut at every crossing, each stretch
         * judged at its middle.
         */
        double[] inside(Timber.Solid solid) {
            if (!passes(solid.outline().box())) {
                return new double[0];
            }
            double[] cuts = new double[2 * solid.count() + 2];
            int count = 1;
            cuts[count++] = length;
            double[] met = new double[2];
            for (int i = 0; i < solid.count(); i++) {
                meet(solid, i, met);
                for (double along : met) {
                    if (!Double.isNaN(along)) {
                        cuts[count++] = Math.max(0, Math.min(length, along));
                    }
                }
            }
            Arrays.sort(cuts, 0, count);
            double[] runs = new double[2 * count];
            int ends = 0;
            double begun = -1;
            for (int i = 0; i + 1 < count; i++) {
                double a = cuts[i];
                double b = cuts[i + 1];
                if (b - a > Tolerance.SNAP) {
                    boolean in = solid.holds(from.plus(way.times((a + b) / 2)));
                    if (in && begun < 0) {
                        begun = a;
                    } else if (!in && begun >= 0) {
                        runs[ends++] = begun;
                        runs[ends++] = a;
                        begun = -1;
                    }
                }
            }
            if (begun >= 0) {
                runs[ends++] = begun;
                runs[ends++] = length;
            }
            return Arrays.copyOf(runs, ends);
        }

        /** The nearest meeting with an outline: how far from the start of the ray, and with which segment; none beyond a limit. */
        Optional<Meeting> first(Timber.Solid solid, double limit) {
            double least = limit;
            int nearest = -1;
            double[] met = new double[2];
            for (int i = 0; i < solid.count(); i++) {
                meet(solid, i, met);
                for (double along : met) {
                    if (Math.abs(along) < least) {
                        least = Math.abs(along);
                        nearest = i;
                    }
                }
            }
            return nearest < 0 ? Optional.empty() : Optional.of(new Meeting(least, solid.segment(nearest)));
        }
    }

    private record Meeting(double away, Segment segment) {}

    private BreakOut breakOut(Line axis, double at, Crossing last) {
        int body = last.body().orElseThrow();
        Point out = axis.at(at / axis.length());
        Spot spot = Spot.nearest(body, timber.body(body).outline(), out);
        return new BreakOut(
                body, axis.length() - at, out, spot.side(), hollow(axis.to()).isPresent());
    }

    /**
     * Where a nail that goes on into something shows on its way: it comes out of a piece by a face on the room side of the
     * finished section, and not by one that looks toward the wall, which hides it.
     */
    Optional<BreakOut> open(Drive drive) {
        List<Crossing> crossings = drive.crossings();
        for (int i = 1; i < crossings.size(); i++) {
            Crossing air = crossings.get(i);
            OptionalInt left = crossings.get(i - 1).body();
            if (air.stuff() == Stuff.AIR && left.isPresent()) {
                Point at = drive.at(air.from());
                int body = left.getAsInt();
                String side =
                        Spot.nearest(body, timber.body(body).outline(), at).side();
                if (!side.equals("back") && shown(body, at)) {
                    return Optional.of(new BreakOut(body, air.length(), at, side, false));
                }
            }
        }
        return Optional.empty();
    }

    private boolean shown(int body, Point at) {
        return timber.section().members().stream()
                .filter(member -> member.body() == body)
                .flatMap(member -> member.segments().stream())
                .anyMatch(segment -> segment.distance(at) <= Tolerance.TOUCHING);
    }

    /** The closed hollow of the finished section that a place lies in. */
    Optional<ClosedVoid> hollow(Point p) {
        return timber.section().voids().stream()
                .filter(hollow -> holds(hollow, p))
                .findFirst();
    }

    private static boolean holds(ClosedVoid hollow, Point p) {
        List<Point> ring = new ArrayList<>();
        for (Bound bound : hollow.ring().bounds()) {
            ring.addAll(bound.segment().flattened(Tolerance.CHORD));
        }
        return Outline.isInside(ring, p);
    }

    /**
     * Least wood to either side of a nail in any of the pieces that it crosses, the faces by which it goes in and out
     * not counted; nothing where no face lies beside it, and 0 where it runs in a face. Measured at several depths, from
     * the nail to the nearest place of each face that lies beside it.
     */
    OptionalDouble edge(Drive drive) {
        return edge(drive, 0);
    }

    /** The same; where it is less than {@code enough}, something less than that. */
    OptionalDouble edge(Drive drive, double enough) {
        double least = ACROSS;
        List<Crossing> crossings = drive.crossings();
        for (int i = 0; i < crossings.size() && least >= enough; i++) {
            if (crossings.get(i).holds()) {
                boolean last = i == crossings.size() - 1 && drive.last().isPresent();
                least = Math.min(least, edge(drive, crossings.get(i), last, enough));
            }
        }
        return least < ACROSS ? OptionalDouble.of(least) : OptionalDouble.empty();
    }

    private double edge(Drive drive, Crossing crossing, boolean last, double enough) {
        Timber.Solid wood = timber.wood(crossing.body().orElseThrow());
        // the face that the point looks at lies ahead, not beside
        double ahead = last ? left(drive).orElse(0) : 0;
        Point in = drive.at(crossing.from());
        Point out = drive.at(crossing.to() + ahead);
        double least = ACROSS;
        for (double share : STATIONS) {
            Point station = drive.at(crossing.from() + share * crossing.length());
            least = Math.min(least, nearestBeside(station, drive.way().left(), wood, in, out));
            least = Math.min(least, nearestBeside(station, drive.way().right(), wood, in, out));
            if (least < enough) {
                break;
            }
        }
        return least;
    }

    /**
     * Distance to the face that a line across the nail meets first, when that is one beside it: neither that by which the
     * nail comes in nor that by which it goes out. A face that it runs along it may touch, but neither comes in nor goes out
     * by.
     *
     * @param across unit step square to the nail
     */
    private static double nearestBeside(Point station, Point across, Timber.Solid wood, Point in, Point out) {
        Optional<Meeting> met = new Ray(station, across, ACROSS).first(wood, ACROSS);
        if (met.isEmpty()) {
            return ACROSS;
        }
        Segment first = met.get().segment();
        // what runs along the nail is square to the way across
        boolean along = Math.abs(first.direction(first.nearest(station)).dot(across)) < RUNS_ALONG;
        boolean beside = along || (first.distance(in) > Tolerance.TOUCHING && first.distance(out) > Tolerance.TOUCHING);
        return beside ? asideTo(first, station, across, met.get().away()) : ACROSS;
    }

    /**
     * Distance to the nearest place of a face at which it looks aside rather than along the nail: where a molding begins in
     * line with the face by which the nail goes in, it only goes on with that.
     *
     * @param away how far off a line across the nail meets the face
     */
    private static double asideTo(Segment face, Point station, Point across, double away) {
        double near = face.nearest(station);
        double met = face.nearest(station.plus(across.times(away)));
        double least = away;
        for (int i = 0; i <= TRIED_ON_A_FACE; i++) {
            double t = near + (met - near) * i / TRIED_ON_A_FACE;
            // wood lies on the left of an outline
            if (face.direction(t).right().dot(across) >= LOOKS_ASIDE) {
                least = Math.min(least, face.at(t).distance(station));
            }
        }
        return least;
    }

    /** How far the point could go on before it meets air, at most so far: bodies that follow each other count together. */
    double ahead(Drive drive, double most, int step) {
        Drive longer = follow(drive.head(), drive.way(), drive.length() + most, step);
        double to = drive.length();
        for (Crossing crossing : longer.crossings()) {
            boolean goesOn = crossing.from() <= to + Tolerance.TOUCHING && crossing.to() > to;
            to = goesOn && crossing.stuff() != Stuff.AIR ? crossing.to() : to;
        }
        return Math.min(most, to - drive.length());
    }

    /** How far the point could go on along the nail before it comes out of what it ends in; absent in the open. */
    OptionalDouble left(Drive drive) {
        Optional<Crossing> last =
                drive.last().filter(crossing -> crossing.body().isPresent());
        if (last.isEmpty()) {
            return OptionalDouble.empty();
        }
        Timber.Solid wood = timber.wood(last.get().body().orElseThrow());
        Box box = wood.outline().box();
        return new Ray(drive.point(), drive.way(), box.width() + box.height())
                .first(wood, Double.POSITIVE_INFINITY)
                .map(met -> OptionalDouble.of(met.away()))
                .orElse(OptionalDouble.empty());
    }
}
