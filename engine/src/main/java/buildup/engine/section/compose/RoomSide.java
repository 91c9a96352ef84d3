package buildup.engine.section.compose;

import buildup.engine.section.compose.Section.Beyond;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import buildup.profiles.region.Part;
import buildup.profiles.region.Pockets;
import buildup.profiles.region.Pockets.Stretch;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The room-side walk: along the outer ring of everything solid, wood on the left, once for each separate part of the
 * stack, lowest first. What lies behind a slit into which nobody sees or reaches is left out.
 */
final class RoomSide {
    private final List<Body> bodies;
    private final List<Part> skin;
    private final List<List<Integer>> parts;
    private final List<Beyond> beyond = new ArrayList<>();
    private final IdentityHashMap<Part, List<Stretch>> rings = new IdentityHashMap<>();

    /**
     * @param skin the union of all bodies
     * @param parts the bodies of each separate part of the stack
     */
    RoomSide(List<Body> bodies, List<Part> skin, List<List<Integer>> parts) {
        this.bodies = bodies;
        this.skin = skin;
        this.parts = parts;
    }

    List<Member> walk() {
        List<Member> members = new ArrayList<>();
        for (int part = 0; part < parts.size(); part++) {
            walk(part, members);
        }
        return members;
    }

    /** What of the pieces lies open on the same rings but not on the walk; known once it has been walked. */
    List<Beyond> beyond() {
        return List.copyOf(beyond);
    }

    private void walk(int part, List<Member> out) {
        BitSet own = new BitSet(bodies.size());
        parts.get(part).forEach(own::set);
        List<Stretch> whole = ring(own);
        if (whole.isEmpty()) {
            return;
        }
        Point end = wallSideEnd(whole, own, true);
        List<Stretch> ring = cut(cut(whole, end), wallSideEnd(whole, own, false));
        int start = start(ring, own);
        List<Bound> path = new ArrayList<>();
        int behind = ring.size();
        boolean begun = false;
        for (int k = 0; k < ring.size(); k++) {
            Stretch stretch = ring.get((start + k) % ring.size());
            Bound bound = stretch.bound();
            behind = k;
            Body body = bodies.get(bound.outline());
            if (!body.piece() && begun && !body.name().equals("floor") && !stretch.hidden()) {
                break;
            }
            if (own.get(bound.outline())) {
                // framing may cover the level up to its end
                if (begun && bound.segment().from().near(end, Tolerance.SNAP)) {
                    break;
                }
                begun = true;
                if (!stretch.hidden()) {
                    path.add(bound);
                }
                behind = k + 1;
                if (bound.segment().to().near(end, Tolerance.SNAP)) {
                    break;
                }
            }
        }
        for (int k = behind; k < ring.size(); k++) {
            Stretch stretch = ring.get((start + k) % ring.size());
            int body = stretch.bound().outline();
            if (own.get(body) && bodies.get(body).inStack() && !stretch.hidden()) {
                beyond.add(new Beyond(body, stretch.bound().segment()));
            }
        }
        members(path, part, out);
    }

    /** The outer ring that the part's pieces lie on, or nothing when they are enclosed all round. */
    private List<Stretch> ring(BitSet own) {
        for (Part part : skin) {
            for (Bound bound : part.outer().bounds()) {
                if (own.get(bound.outline())) {
                    return rings.computeIfAbsent(
                            part, each -> Pockets.of(each.outer().bounds(), this::inWood));
                }
            }
        }
        return List.of();
    }

    private boolean inWood(Point p) {
        return bodies.stream().anyMatch(body -> body.outline().holds(p));
    }

    /** The ring with an arc that runs through {@code p} cut there: the apex of a round is no vertex. */
    private static List<Stretch> cut(List<Stretch> ring, Point p) {
        List<Stretch> cut = new ArrayList<>(ring.size() + 1);
        for (int i = 0; i < ring.size(); i++) {
            Stretch stretch = ring.get(i);
            Bound bound = stretch.bound();
            if (bound.segment() instanceof Arc arc
                    && !p.near(arc.from(), Tolerance.SNAP)
                    && !p.near(arc.to(), Tolerance.SNAP)
                    && arc.at(arc.nearest(p)).near(p, Tolerance.SNAP)) {
                double t = arc.nearest(p);
                Bound before = new Bound(bound.outline(), bound.stroke(), arc.part(0, t));
                Bound after = new Bound(bound.outline(), bound.stroke(), arc.part(t, 1));
                cut.add(new Stretch(before, stretch.hidden()));
                cut.add(new Stretch(after, stretch.hidden()));
            } else {
                cut.add(stretch);
            }
        }
        return cut;
    }

    /**
     * Where the ring leaves solid wall, framing or floor that reaches below the part; else the wall-side end of its
     * lowest level. Framing that does not reach below is only met on the way.
     */
    private int start(List<Stretch> ring, BitSet own) {
        double bottom = Double.POSITIVE_INFINITY;
        for (int body = own.nextSetBit(0); body >= 0; body = own.nextSetBit(body + 1)) {
            bottom = Math.min(bottom, bodies.get(body).outline().box().bottom());
        }
        int best = -1;
        Point lowest = new Point(0, 0);
        for (int i = 0; i < ring.size(); i++) {
            Body before = bodies.get(
                    ring.get(Math.floorMod(i - 1, ring.size())).bound().outline());
            boolean leaves = before.standing() && before.outline().box().bottom() < bottom - Tolerance.SNAP;
            Point at = ring.get(i).bound().segment().from();
            if (leaves && own.get(ring.get(i).bound().outline()) && (best < 0 || lower(at, lowest))) {
                best = i;
                lowest = at;
            }
        }
        if (best >= 0) {
            return best;
        }
        Point low = wallSideEnd(ring, own, false);
        for (int i = 0; i < ring.size(); i++) {
            if (own.get(ring.get(i).bound().outline())
                    && ring.get(i).bound().segment().from().near(low, Tolerance.SNAP)) {
                return i;
            }
        }
        return 0;
    }

    private static boolean lower(Point a, Point b) {
        return a.y() < b.y() - Tolerance.COINCIDENT
                || (a.y() < b.y() + Tolerance.COINCIDENT && a.x() < b.x() - Tolerance.COINCIDENT);
    }

    /** The point of least x on the part's highest (or lowest) level. */
    private Point wallSideEnd(List<Stretch> ring, BitSet own, boolean highest) {
        double level = highest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            Bound bound = ring.get(i).bound();
            if (own.get(bound.outline())) {
                double reach = reach(bound.segment(), highest);
                level = highest ? Math.max(level, reach) : Math.min(level, reach);
            }
        }
        Point best = new Point(Double.POSITIVE_INFINITY, level);
        for (int i = 0; i < ring.size(); i++) {
            Bound bound = ring.get(i).bound();
            if (own.get(bound.outline()) && Math.abs(reach(bound.segment(), highest) - level) <= Tolerance.SNAP) {
                for (Point p : extremes(bound.segment())) {
                    if (Math.abs(p.y() - level) <= Tolerance.SNAP && p.x() < best.x()) {
                        best = p;
                    }
                }
            }
        }
        return best;
    }

    private static double reach(Segment segment, boolean highest) {
        Box box = segment.box();
        return highest ? box.top() : box.bottom();
    }

    /** Vertices of the walk and the axis extremes of its arcs. */
    private static List<Point> extremes(Segment segment) {
        return segment.flattened(Tolerance.CHORD);
    }

    /** One row for each run of one member of one piece. */
    private void members(List<Bound> path, int part, List<Member> out) {
        int i = 0;
        int before = -1;
        while (i < path.size()) {
            int body = path.get(i).outline();
            String member = member(path.get(i));
            List<Segment> segments = new ArrayList<>();
            while (i < path.size()
                    && path.get(i).outline() == body
                    && member(path.get(i)).equals(member)
                    && (segments.isEmpty()
                            || follows(
                                    segments.get(segments.size() - 1),
                                    path.get(i).segment()))) {
                segments.add(path.get(i).segment());
                i++;
            }
            OptionalDouble step = before >= 0 && before != body
                    ? OptionalDouble.of(projection(body) - projection(before))
                    : OptionalDouble.empty();
            out.add(new Member(body, member, part, segments, step));
            before = body;
        }
    }

    private static boolean follows(Segment before, Segment after) {
        return before.to().near(after.from(), 2 * Tolerance.TOUCHING);
    }

    private String member(Bound bound) {
        return bodies.get(bound.outline())
                .outline()
                .strokes()
                .get(bound.stroke())
                .member();
    }

    private double projection(int body) {
        return bodies.get(body).outline().box().face();
    }
}
