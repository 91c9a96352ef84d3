package buildup.engine.hold.fixing;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.ClosedVoid;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Wedges of wood behind a piece as ways out: in words, and as pieces that a person adds to the document. */
final class BlockEdits {
    /** A wedge is set this far off the back of the piece, in: common practice, no source. */
    private static final double CLEAR = 1.0 / 8;

    /** A wedge smaller than this splits, in: common practice, no source. */
    private static final double LEAST_LEG = 1.0 / 4;

    /** What is narrower at its foot, in, is told as a wedge. */
    private static final double LEAST_FOOT = 1.0 / 16;

    /** A ceiling so near over the head of a molding, in, still covers its block: a reveal is left open there. */
    private static final double NEAR = 0.5;

    private static final String BLOCK = "pieces";

    private static final Phrase FACE_ALONE = Phrase.of("chamfer {height} x {run}");

    private static final Phrase FOOT_AND_FACE = Phrase.of("out {foot}, chamfer {height} x {run}");

    private final Timber timber;
    private final WedgeNails nails;

    BlockEdits(Nailing nailing) {
        this.timber = nailing.timber();
        this.nails = new WedgeNails(nailing);
    }

    /**
     * A wedge in a square corner of a hollow.
     *
     * @param height, width its legs, in
     * @param foot how wide it still is where the upright side ends before its face meets that; 0 for a whole wedge
     * @param upright, level the sides of the corner, from the corner on
     * @param first, second the same where they are said whose they are
     */
    private record Wedge(
            double height, double width, double foot, Line upright, Line level, Bound first, Bound second) {
        boolean serves() {
            return Math.min(height, width) >= LEAST_LEG;
        }

        double area() {
            return height * (width + foot);
        }

        int behind() {
            return first.segment() instanceof Line line && line.direction(0).cross(upright.direction(0)) == 0
                    ? first.outline()
                    : second.outline();
        }

        int above() {
            return behind() == first.outline() ? second.outline() : first.outline();
        }

        /** From the corner of the hollow down, along its face and back. */
        List<Point> corners() {
            Point corner = upright.from();
            return List.of(
                    corner,
                    corner.plus(upright.direction(0).times(height)),
                    corner.plus(upright.direction(0).times(height))
                            .plus(level.direction(0).times(foot)),
                    corner.plus(level.direction(0).times(width)));
        }

        /** Whether it hangs under the level side, as one drawn in words does. */
        boolean under() {
            return upright.direction(0).y() < 0;
        }

        /** Whether it stands on the wall side of the upright side: one drawn in words is turned end for end for it. */
        boolean turned() {
            return level.direction(0).x() < 0;
        }
    }

    /**
     * The largest wedge that fills a square corner of a hollow, {@link #CLEAR} off the back of a piece.
     *
     * @param words with places for {@code height} and {@code width}
     */
    Optional<Cure> wedge(ClosedVoid hollow, int piece, Phrase words) {
        return largest(hollow, piece).map(best -> new Cure(said(best, words), changes(best, piece)));
    }

    /** The same, and a row of nails through the piece into it: one way out for each place where such a row could go. */
    Stream<Cure> nailedWedge(ClosedVoid hollow, int piece, Line back, Phrase words) {
        return largest(hollow, piece)
                .filter(wedge -> wedge.under() == back.direction(0).y() > 0)
                .map(best -> {
                    List<Change> block = changes(best, piece);
                    return block.isEmpty()
                            ? Stream.<Cure>empty()
                            : nails.into(best.corners(), piece, back)
                                    .map(row -> new Cure(
                                            FixingNotices.BLOCK_AND_ROW
                                                    .with("block", said(best, words))
                                                    .with("row", row.words()),
                                            Stream.concat(block.stream(), row.changes().stream())
                                                    .toList()));
                })
                .orElse(Stream.empty());
    }

    /**
     * A block that is there already, made as large as the back of a piece lets it be from its own upper back corner on, its lower one where the
     * piece is turned over.
     *
     * @param words with places for {@code wedge}, {@code height} and {@code width}
     */
    Optional<Cure> larger(int block, Line back, Phrase words) {
        Body body = timber.body(block);
        Box box = body.outline().box();
        Piece piece = body.placed().orElseThrow().piece();
        Point corner =
                new Point(toHead(back) > 0 ? box.back() : box.face(), toEnd(back) > 0 ? box.top() : box.bottom());
        Line level = new Line(corner, corner.plus(new Point(toHead(back), 0)));
        Line upright = new Line(corner, corner.plus(new Point(0, -toEnd(back))));
        if (!meets(level, back) || !meets(upright, back)) {
            return Optional.empty();
        }
        double whole = free(upright, back);
        double width = free(level, back);
        double height =
                (toEnd(back) > 0 ? piece.rules().low(Axis.UP) : piece.rules().high(Axis.UP)).isPresent()
                        ? Math.min(whole, box.height())
                        : whole;
        double foot = Math.max(0, width * (1 - height / whole));
        boolean larger = width > box.width() + Tolerance.TOUCHING || height > box.height() + Tolerance.TOUCHING;
        if (!larger || Math.min(height, width) < LEAST_LEG) {
            return Optional.empty();
        }
        List<Change> changes = piece.stock().profileKind().equals("section")
                ? List.of(new Change(piece.place("section"), section(height, width, foot)))
                : List.of();
        return Optional.of(
                new Cure(said(height, width, foot, toEnd(back) > 0, words.with("wedge", body.name())), changes));
    }

    /**
     * Where no square corner is closed behind a piece: the wedge between the upright through the foot of its back and the level
     * through the head of that, or the slope of the ceiling that the head lies under, for a person to fix; nothing where wood is
     * there already.
     *
     * @param words, sloped with places for {@code height} and {@code width}, the latter for {@code top} too
     */
    Optional<Cure> open(int piece, Line back, Phrase words, Phrase sloped) {
        double rise = rise(back);
        double out = back.to().x() - back.from().x();
        Point corner = new Point(back.from().x(), back.to().y() - rise * out);
        Line above = new Line(corner, corner.plus(new Point(toHead(back), rise * toHead(back))));
        Line upright = new Line(corner, corner.plus(new Point(0, -toEnd(back))));
        if (!meets(above, back) || !meets(upright, back)) {
            return Optional.empty();
        }
        double height = free(upright, back);
        double width = free(above, back) / Math.hypot(1, rise);
        Point end = new Point(toHead(back) * width, rise * toHead(back) * width);
        List<Point> ends = List.of(corner, corner.plus(new Point(0, -toEnd(back) * height)), corner.plus(end));
        Point middle = ends.stream().reduce(Point.ORIGIN, Point::plus).times(1.0 / ends.size());
        boolean taken = Stream.concat(
                        Stream.of(middle),
                        ends.stream().map(place -> place.plus(middle).times(0.5)))
                .anyMatch(place -> IntStream.range(0, timber.count())
                        .anyMatch(body -> timber.body(body).outline().holds(place)));
        if (taken || Math.min(height, width) < LEAST_LEG) {
            return Optional.empty();
        }
        return Optional.of(
                rise == 0
                        ? Cure.of(said(height, width, 0, toEnd(back) > 0, words))
                        : new Cure(
                                sloped.with("height", Figure.atMost(height))
                                        .with("width", Figure.atMost(width))
                                        .with(
                                                "top",
                                                Figure.angle(Math.toDegrees(Math.atan(Math.abs(rise))))
                                                        .rounded(Rounding.decimals(1))),
                                underSlope(piece, corner, height, width, rise)));
    }

    /** How much what the head of a back lies under rises for each inch out: the slope of a ceiling that is there, else none. */
    private double rise(Line back) {
        Space space = timber.section().stack().space();
        boolean under = toEnd(back) > 0
                && toHead(back) > 0
                && space.ceilingAt(back.to().x()).orElse(Double.POSITIVE_INFINITY)
                                - back.to().y()
                        <= NEAR;
        return under ? space.slope() : 0;
    }

    /** The block under a slope as a nailer that is pushed up to the ceiling; none where no name says its back. */
    private List<Change> underSlope(int piece, Point corner, double height, double width, double rise) {
        Point behind = corner.plus(new Point(-2 * Tolerance.TOUCHING, -height / 2));
        Optional<String> back = IntStream.range(0, timber.count())
                .filter(body -> timber.body(body).outline().holds(behind))
                .mapToObj(body -> side(
                        timber.body(body),
                        corner.x(),
                        timber.body(body).outline().box().face(),
                        "face",
                        "wall"))
                .flatMap(Optional::stream)
                .findFirst();
        if (back.isEmpty()) {
            return List.of();
        }
        String name = "block behind " + timber.body(piece).name();
        String place = BLOCK + "." + name + ".";
        Phrase section = Phrase.of("chamfer {up} x {out}, chamfer in " + (rise < 0 ? "up" : "down") + " {rest} x {out}")
                .with("up", Figure.atMost(height + rise * width))
                .with("rest", Figure.length(Math.abs(rise) * width))
                .with("out", Figure.atMost(width));
        return List.of(
                Change.entry(BLOCK, piece + 1, name),
                new Change(place + "kind", Phrase.of("nailer")),
                new Change(place + "section", section),
                new Change(place + "back", Phrase.of("{side}").with("side", back.get())),
                new Change(place + "top", Phrase.of("touch")));
    }

    /** 1 where a molding comes farther out from its foot to its head, -1 where it is turned end for end. */
    private static double toHead(Line back) {
        return Math.signum(back.to().x() - back.from().x());
    }

    /** 1 where a back is told from below up, -1 where it is told down, as of a molding turned over. */
    private static double toEnd(Line back) {
        return Math.signum(back.to().y() - back.from().y());
    }

    private static Optional<Wedge> largest(ClosedVoid hollow, int piece) {
        List<Bound> ring = hollow.ring().bounds();
        List<Line> backs = ring.stream()
                .filter(bound -> bound.outline() == piece)
                .map(Bound::segment)
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .toList();
        List<Wedge> wedges = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Bound first = ring.get(i);
            Bound second = ring.get((i + 1) % ring.size());
            if (first.outline() != piece && second.outline() != piece) {
                backs.forEach(back -> wedge(first, second, back).ifPresent(wedges::add));
            }
        }
        return wedges.stream().filter(Wedge::serves).max(Comparator.comparingDouble(Wedge::area));
    }

    private static Phrase said(Wedge wedge, Phrase words) {
        return said(wedge.height(), wedge.width(), wedge.foot(), wedge.under(), words);
    }

    private static Phrase said(double height, double width, double foot, boolean under, Phrase words) {
        Phrase said = words.with("height", Figure.atMost(height))
                .with("width", Figure.atMost(width))
                .with("wide", under ? "top" : "foot");
        return foot < LEAST_FOOT
                ? said
                : FixingNotices.WITH_A_FOOT
                        .with("block", said)
                        .with("end", under ? "foot" : "top")
                        .with("foot", Figure.atMost(foot));
    }

    /** What is cut off a block's face, and how wide it is at its foot. */
    private static Phrase section(double height, double width, double foot) {
        boolean whole = foot < LEAST_FOOT;
        Phrase words = whole ? FACE_ALONE : FOOT_AND_FACE;
        return words.with("height", Figure.atMost(height))
                .with("foot", Figure.atMost(foot))
                .with("run", Figure.atMost(whole ? width : width - foot));
    }

    /** The wedge as a nailer, put up before the piece that it is behind; none where no name says the place. */
    private List<Change> changes(Wedge wedge, int piece) {
        Body behind = timber.body(wedge.behind());
        Body above = timber.body(wedge.above());
        Point corner = wedge.upright().from();
        Box its = behind.outline().box();
        Optional<String> back = wedge.turned()
                ? side(behind, corner.x(), its.back(), "back", "")
                : side(behind, corner.x(), its.face(), "face", "wall");
        Box other = above.outline().box();
        Optional<String> top = wedge.under()
                ? side(above, corner.y(), other.bottom(), "bottom", "ceiling")
                : side(above, corner.y(), other.top(), "top", "floor");
        if (back.isEmpty() || top.isEmpty()) {
            return List.of();
        }
        String name = "block behind " + timber.body(piece).name();
        String place = BLOCK + "." + name + ".";
        List<Change> changes = new ArrayList<>(List.of(
                Change.entry(BLOCK, piece + 1, name),
                new Change(place + "kind", Phrase.of("nailer")),
                new Change(place + "section", section(wedge.height(), wedge.width(), wedge.foot()))));
        if (wedge.turned() && !wedge.under()) {
            changes.add(new Change(place + "turn", Phrase.of("180")));
        } else if (wedge.turned() || !wedge.under()) {
            changes.add(new Change(place + "flip", Phrase.of(wedge.turned() ? "ends" : "over")));
        }
        changes.add(new Change(
                place + (wedge.turned() ? "face" : "back"), Phrase.of("{side}").with("side", back.get())));
        changes.add(new Change(
                place + (wedge.under() ? "top" : "bottom"), Phrase.of("{side}").with("side", top.get())));
        return changes;
    }

    private static Optional<String> side(Body body, double at, double side, String edge, String room) {
        if (!body.piece()) {
            return Optional.of(room).filter(body.name()::equals);
        }
        return Optional.of(body.name() + "." + edge).filter(name -> Tolerance.same(at, side));
    }

    private static Optional<Wedge> wedge(Bound first, Bound second, Line back) {
        if (!(first.segment() instanceof Line a) || !(second.segment() instanceof Line b)) {
            return Optional.empty();
        }
        Line upright = Math.abs(a.direction(0).x()) < Tolerance.SAME_DIRECTION ? a.reversed() : b;
        Line level = upright.equals(b) ? a.reversed() : b;
        boolean square = Math.abs(upright.direction(0).x()) < Tolerance.SAME_DIRECTION
                && Math.abs(level.direction(0).y()) < Tolerance.SAME_DIRECTION;
        // a side that runs away from the back bounds wood, not the hollow; and at a sloped ceiling the level side
        // may end before the face meets it: no wedge with that bevel fills the corner
        boolean closes = square
                && meets(upright, back)
                && meets(level, back)
                && free(level, back) <= level.length() + Tolerance.TOUCHING;
        return closes
                ? Optional.of(new Wedge(
                        leg(upright, back),
                        leg(level, back),
                        foot(upright, level, back),
                        upright,
                        level,
                        first,
                        second))
                : Optional.empty();
    }

    /** How wide a wedge still is where its upright side ends: its face runs on to where it would meet that. */
    private static double foot(Line upright, Line level, Line back) {
        double high = free(upright, back);
        double wide = free(level, back);
        boolean cut = high > upright.length() && wide <= level.length() + Tolerance.TOUCHING;
        return cut ? wide * (1 - upright.length() / high) : 0;
    }

    /** How far a wedge runs from the corner along one side: to the back less the clearance, at most to the side's end. */
    private static double leg(Line side, Line back) {
        return Math.min(side.length(), free(side, back));
    }

    /** How far from its start a side that meets the back is clear of it. */
    private static double free(Line side, Line back) {
        return (Math.abs(away(side, back)) - CLEAR) / Math.abs(toward(side, back));
    }

    private static boolean meets(Line side, Line back) {
        double toward = toward(side, back);
        return Math.abs(toward) > Tolerance.SAME_DIRECTION && away(side, back) / toward > 0;
    }

    private static double toward(Line side, Line back) {
        return side.direction(0).dot(back.direction(0).left());
    }

    private static double away(Line side, Line back) {
        return back.from().minus(side.from()).dot(back.direction(0).left());
    }
}
