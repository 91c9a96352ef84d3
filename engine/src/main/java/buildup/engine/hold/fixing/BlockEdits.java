package buildup.engine.hold.fixing;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.ClosedVoid;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Wedges of wood behind a piece as ways out: in words, and as pieces that a person adds to the document. */
final class BlockEdits {
    /** A wedge is set this far off the back of the piece, in: common practice, no source. */
    private static final double CLEAR = 1.0 / 8;

    /** A wedge smaller than this splits, in: common practice, no source. */
    private static final double LEAST_LEG = 1.0 / 4;

    /** What is narrower at its foot, in, is told as a wedge. */
    private static final double LEAST_FOOT = 1.0 / 16;

    private static final String BLOCK = "pieces";

    private static final Phrase FACE_ALONE = Phrase.of("chamfer {height} x {run}");

    private static final Phrase FOOT_AND_FACE = Phrase.of("out {foot}, chamfer {height} x {run}");

    private final Timber timber;

    BlockEdits(Nailing nailing) {
        this.timber = nailing.timber();
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

        boolean whole() {
            return foot < LEAST_FOOT;
        }

        int behind() {
            return first.segment() instanceof Line line && line.direction(0).cross(upright.direction(0)) == 0
                    ? first.outline()
                    : second.outline();
        }

        int above() {
            return behind() == first.outline() ? second.outline() : first.outline();
        }

        /** Whether it hangs under the level side and stands before the upright one, as one drawn in words does. */
        boolean under() {
            return upright.direction(0).y() < 0 && level.direction(0).x() > 0;
        }
    }

    /**
     * The largest wedge that fills a square corner of a hollow, {@link #CLEAR} off the back of a piece.
     *
     * @param words with places for {@code height} and {@code width}
     */
    Optional<Cure> wedge(ClosedVoid hollow, int piece, Phrase words) {
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
        return wedges.stream()
                .filter(Wedge::serves)
                .max(Comparator.comparingDouble(Wedge::area))
                .map(best -> new Cure(said(best, words), best.under() ? changes(best, piece) : List.of()));
    }

    private static Phrase said(Wedge wedge, Phrase words) {
        Phrase said = words.with("height", Figure.atMost(wedge.height())).with("width", Figure.atMost(wedge.width()));
        return wedge.whole()
                ? said
                : FixingNotices.WITH_A_FOOT.with("block", said).with("foot", Figure.atMost(wedge.foot()));
    }

    /** What is cut off a block's face, and how wide it is at its foot. */
    private static Phrase section(Wedge wedge) {
        Phrase words = wedge.whole() ? FACE_ALONE : FOOT_AND_FACE;
        return words.with("height", Figure.atMost(wedge.height()))
                .with("foot", Figure.atMost(wedge.foot()))
                .with("run", Figure.atMost(wedge.whole() ? wedge.width() : wedge.width() - wedge.foot()));
    }

    /** The wedge as a nailer, put up before the piece that it is behind; none where no name says the place. */
    private List<Change> changes(Wedge wedge, int piece) {
        Body behind = timber.body(wedge.behind());
        Body above = timber.body(wedge.above());
        Point corner = wedge.upright().from();
        Optional<String> back = side(behind, corner.x(), behind.outline().box().face(), "face", "wall");
        Optional<String> top = side(above, corner.y(), above.outline().box().bottom(), "bottom", "ceiling");
        if (back.isEmpty() || top.isEmpty()) {
            return List.of();
        }
        String name = "block behind " + timber.body(piece).name();
        String place = BLOCK + "." + name + ".";
        return List.of(
                Change.entry(BLOCK, piece + 1, name),
                new Change(place + "kind", Phrase.of("nailer")),
                new Change(place + "section", section(wedge)),
                new Change(place + "back", Phrase.of("{side}").with("side", back.get())),
                new Change(place + "top", Phrase.of("{side}").with("side", top.get())));
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
        // a side that runs away from the back bounds wood, not the hollow; and where the level side ends before the
        // face
        // meets it, as at a sloped ceiling, no wedge with that bevel fills the corner
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
