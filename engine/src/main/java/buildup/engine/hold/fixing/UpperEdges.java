package buildup.engine.hold.fixing;

import buildup.engine.hold.nail.Drive;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.placing.SprungBack;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Cure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Looks whether sprung moldings, which stand on two edges, can be held and are held at the upper one. */
final class UpperEdges {
    /** Where along the back, from the edge at the wall, the other edge is looked for. */
    private static final List<Double> UPPER = List.of(0.6, 0.7, 0.8, 0.9);

    /** More air than this between back and block holds nothing, in; as much wood is wanted behind it. */
    private static final double MOST_AIR = 1.0 / 4;

    private static final double LEAST_WOOD = 1.0 / 2;

    /** Nails are followed from so far before the face, in. */
    private static final double FRONT = 4;

    /** A block that is farther behind the back was put there for something else, in: common practice, no source. */
    private static final double FOR_IT = 2;

    /** A block and how far it is behind the back, in. */
    private record Near(int block, double air) {}

    private final Nailing nailing;
    private final Timber timber;
    private final BlockEdits blocks;
    private final List<Fixed> fixed;
    private final Notices notices;

    private UpperEdges(Nailing nailing, List<Fixed> fixed, Notices notices) {
        this.nailing = nailing;
        this.timber = nailing.timber();
        this.blocks = new BlockEdits(nailing);
        this.fixed = fixed;
        this.notices = notices;
    }

    static void say(Nailing nailing, List<Fixed> fixed, Notices notices) {
        UpperEdges edges = new UpperEdges(nailing, fixed, notices);
        for (int piece = 0; piece < nailing.timber().count(); piece++) {
            int number = piece;
            nailing.timber().body(piece).placed().flatMap(SprungBack::of).ifPresent(back -> edges.say(number, back));
        }
    }

    private void say(int piece, Line back) {
        if (off(piece, back).y() < 0) {
            turnedOver(piece, back.reversed());
        } else if (timber.section().footInTheAir(piece)) {
            add(FixingNotices.FOOT_IN_THE_AIR.notice(), piece);
        }
        if (driven(piece, back)) {
            return;
        }
        Optional<Integer> behind = behind(piece, back);
        boolean given = fixed.stream().anyMatch(nail -> nail.piece() == piece);
        if (behind.isEmpty()) {
            add(noBlock(piece, back, given), piece);
        } else if (given) {
            add(FixingNotices.UPPER_EDGE_LOOSE.with("body", timber.quoted(behind.get())), piece);
        }
    }

    /**
     * A molding whose back faces down, as in a base, stands away from the wall with its lower edge: that wants wood behind or
     * under it as the upper edge of one that hangs does (common practice, no source).
     *
     * @param back from the edge at the wall down
     */
    private void turnedOver(int piece, Line back) {
        Point under = back.to().plus(new Point(Tolerance.SAW_CUT, -2 * Tolerance.TOUCHING));
        boolean stands = IntStream.range(0, timber.count())
                .anyMatch(body -> timber.body(body).outline().holds(under));
        if (!stands && !driven(piece, back) && behind(piece, back).isEmpty()) {
            boolean given = fixed.stream().anyMatch(nail -> nail.piece() == piece);
            add(noBlock(piece, back, given), piece);
        }
    }

    /** Whether some row crosses from or into the piece in the half toward the end of its back. */
    private boolean driven(int piece, Line back) {
        Point middle = back.at(0.5);
        return fixed.stream()
                .filter(nail -> nail.joints().stream()
                        .anyMatch(joint -> joint.pull() > 0 && (joint.near() == piece || joint.far() == piece)))
                .flatMap(nail -> nail.drive().crossings().stream()
                        .filter(crossing -> crossing.body().orElse(-1) == piece)
                        .map(crossing -> nail.drive().at((crossing.from() + crossing.to()) / 2)))
                .anyMatch(place -> place.minus(middle).dot(back.direction(0)) > 0);
    }

    /** Square off the back to what is behind it, a unit step: a molding that is turned end for end has that farther out. */
    private Point off(int piece, Line back) {
        Point left = back.direction(0).left();
        Point beside = back.at(0.5).plus(left.times(Tolerance.SAW_CUT));
        return timber.body(piece).outline().holds(beside) ? left.times(-1) : left;
    }

    /** The body that a nail square through the upper part of the back would bite in; of one turned over, the lower part. */
    private Optional<Integer> behind(int piece, Line back) {
        Point off = off(piece, back);
        return UPPER.stream()
                .flatMap(share -> {
                    // from the air before the face: the nail meets the piece first
                    Drive drive = nailing.shots()
                            .follow(
                                    back.at(share).minus(off.times(FRONT)),
                                    off,
                                    FRONT + MOST_AIR + LEAST_WOOD,
                                    timber.count());
                    return drive.crossings().stream()
                            .filter(crossing -> crossing.holds()
                                    && crossing.body().orElseThrow() != piece
                                    && crossing.from() >= FRONT
                                    && crossing.from() <= FRONT + MOST_AIR
                                    && crossing.length() >= LEAST_WOOD - MOST_AIR)
                            .map(crossing -> crossing.body().orElseThrow());
                })
                .findFirst();
    }

    /** Said of a block that was put there for it and is too small; nothing where there is none, or none larger fits. */
    private Optional<Notice> small(int piece, Line back) {
        Point off = off(piece, back);
        Figure bevel = Figure.angle(SprungBack.spring(back)).rounded(Rounding.decimals(1));
        return UPPER.stream()
                .flatMap(share -> nailing
                        .shots()
                        .follow(back.at(share).minus(off.times(FRONT)), off, FRONT + FOR_IT, timber.count())
                        .crossings()
                        .stream()
                        .filter(crossing -> crossing.from() >= FRONT - Tolerance.TOUCHING)
                        .filter(crossing -> crossing.body().isPresent()
                                && timber.body(crossing.body().getAsInt()).nailer())
                        .map(crossing -> new Near(crossing.body().getAsInt(), crossing.from() - FRONT)))
                .min(Comparator.comparingDouble(Near::air))
                .flatMap(near -> blocks.larger(near.block(), back, FixingNotices.LARGER_BLOCK.with("bevel", bevel))
                        .map(cure -> (near.air() > MOST_AIR
                                        ? FixingNotices.UPPER_EDGE_SHORT
                                        : FixingNotices.UPPER_EDGE_THIN)
                                .with("edge", edge(back))
                                .with("block", timber.body(near.block()).name())
                                .amount(Figure.length(near.air()))
                                .cure(cure)));
    }

    private static String edge(Line back) {
        return back.direction(0).y() > 0 ? "upper" : "lower";
    }

    /** A block that would serve in the hollow behind; else the one that is there, larger; else one in the open. */
    private Notice noBlock(int piece, Line back, boolean given) {
        Figure bevel = Figure.angle(SprungBack.spring(back)).rounded(Rounding.decimals(1));
        Phrase words = FixingNotices.BLOCK_WITH_SIZE.with("bevel", bevel);
        Notice nothing = FixingNotices.UPPER_EDGE.with("edge", edge(back));
        return block(piece, back, given, words)
                .map(nothing::cure)
                .or(() -> small(piece, back))
                .orElseGet(() -> nothing.cure(
                        blocks.open(piece, back, words, FixingNotices.BLOCK_UNDER_A_SLOPE.with("bevel", bevel))
                                .orElseGet(() -> Cure.of(FixingNotices.BLOCK.with("bevel", bevel)))));
    }

    /**
     * The block that would serve: in the corner of the hollow behind, its face as steep as the back.
     *
     * @param given whether rows are given for the piece: a block without one into it holds nothing then
     */
    private Optional<Cure> block(int piece, Line back, boolean given, Phrase words) {
        Point inside = back.at(0.75).plus(off(piece, back).times(MOST_AIR));
        return nailing.shots()
                .hollow(inside)
                .flatMap(hollow -> Cure.firstOf(Stream.concat(
                        given ? blocks.nailedWedge(hollow, piece, back, words) : Stream.empty(),
                        blocks.wedge(hollow, piece, words).stream())));
    }

    private void add(Notice notice, int piece) {
        notices.add(notice.of(timber.body(piece).name())
                .at(timber.body(piece).placed().orElseThrow().piece().mark()));
    }
}
