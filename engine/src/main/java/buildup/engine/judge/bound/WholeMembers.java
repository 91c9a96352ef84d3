package buildup.engine.judge.bound;

import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PieceForms;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Piece;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The members of a molding that nothing touches. Each of them is a row of the walk along the room side as it is in the
 * outline of the piece, whatever the sizes of a box are: it lies clear of every other piece and of the room, so that it is a
 * part of the edge of all the wood, and a level line from some place of it meets nothing, so that it is a part of the walk,
 * which goes from the lowest place to the highest round the front. Of a piece that may have several outlines a bound is the
 * weakest of those in the box.
 */
final class WholeMembers {
    private static final double SLIT = UprightFace.SLIT;

    /** Of a piece that may have more outlines in a box nothing is said. */
    private static final int MOST = 24;

    /**
     * Another piece, seen from the lower corner of the box of this one.
     *
     * @param number its place among all pieces
     * @param reach for each outline of this piece and each of its members, how far the other piece reaches along that
     *     member's normal, from the lower corner of its own box, whichever outline it has; none where it is its box
     */
    private record Other(
            int number,
            PlacedForms piece,
            SizeSum back,
            SizeSum face,
            SizeSum bottom,
            SizeSum top,
            List<List<Double>> reach) {}

    /** Where another piece may lie in the stacks of a box, seen from the lower corner of the box of this one, in. */
    record Around(int number, PlacedForms piece, boolean surely, Range back, Range face, Range bottom, Range top) {}

    /** Where the piece may lie, and all others. */
    record Surroundings(Range out, Range up, List<Around> others) {}

    /** Tells what is known of a member that is surely a row. */
    interface RowBounder {
        /** Between what its figure lies in the stacks of a box. */
        FigureBound of(OwnMember member, Surroundings around, ChoiceBox box);
    }

    private final PlacedForms piece;
    private final Space space;
    private final List<Other> others = new ArrayList<>();
    /** By the numbers of the readings of the shape; none where there is no such stack. */
    private final List<List<OwnMember>> members;

    private WholeMembers(PlacedForms piece, List<List<OwnMember>> members, List<PlacedForms> pieces, Space space) {
        this.piece = piece;
        this.space = space;
        this.members = members;
        for (int i = 0; i < pieces.size(); i++) {
            PlacedForms other = pieces.get(i);
            if (!other.name().equals(piece.name())) {
                others.add(new Other(
                        i,
                        other,
                        other.out().low().minus(piece.out().low()),
                        other.out().high().minus(piece.out().low()),
                        other.up().low().minus(piece.up().low()),
                        other.up().high().minus(piece.up().low()),
                        other.box() ? List.of() : reaches(other)));
            }
        }
    }

    private List<List<Double>> reaches(PlacedForms other) {
        List<Piece> shapes = other.piece().shape().pieces().stream()
                .flatMap(Optional::stream)
                .toList();
        return shapes.size() > MOST
                ? List.of()
                : members.stream()
                        .map(own -> own.stream()
                                .map(member -> shapes.stream()
                                        .mapToDouble(shape -> OwnMember.reach(shape.shape(), member.normal()))
                                        .max()
                                        .orElse(Double.POSITIVE_INFINITY))
                                .toList())
                        .toList();
    }

    /**
     * The members of a piece that is no board.
     *
     * @param name of the member that is asked about; absent for all of them
     */
    static Optional<WholeMembers> of(PlacedForms piece, Optional<String> name, List<PlacedForms> pieces, Space space) {
        List<Optional<Piece>> shapes = piece.piece().shape().pieces();
        if (piece.box() || !piece.inStack() || shapes.size() > 4 * MOST || space.slope() != 0) {
            return Optional.empty();
        }
        List<List<OwnMember>> members = shapes.stream()
                .map(shape -> shape.map(read -> OwnMember.of(read.shape()).stream()
                                .filter(member -> name.isEmpty() || name.get().equals(member.name()))
                                .toList())
                        .orElse(List.of()))
                .toList();
        return members.stream().allMatch(List::isEmpty)
                ? Optional.empty()
                : Optional.of(new WholeMembers(piece, members, pieces, space));
    }

    PlacedForms piece() {
        return piece;
    }

    /** The members that may be rows. */
    List<OwnMember> all() {
        return members.stream().flatMap(List::stream).toList();
    }

    /** What is known of the figures of the rows that are surely there. */
    FigureBound over(ChoiceBox box, RowBounder rows) {
        List<Integer> shapes = piece.piece().shape().in(box);
        if (!piece.piece().surely(box) || shapes.size() > MOST || shapes.isEmpty()) {
            return FigureBound.UNKNOWN;
        }
        List<Around> around = new ArrayList<>();
        for (Other other : others) {
            PieceForms forms = other.piece.piece();
            if (forms.maybe(box)) {
                around.add(new Around(
                        other.number,
                        other.piece,
                        forms.surely(box),
                        other.back.over(box),
                        other.face.over(box),
                        other.bottom.over(box),
                        other.top.over(box)));
            }
        }
        Surroundings all =
                new Surroundings(piece.out().low().over(box), piece.up().low().over(box), around);
        FigureBound weakest = new FigureBound(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
        for (int shape : shapes) {
            FigureBound bound = FigureBound.UNKNOWN;
            for (int i = 0; i < members.get(shape).size(); i++) {
                OwnMember member = members.get(shape).get(i);
                if (isClear(member, shape, i, all) && isOpen(member, all)) {
                    bound = bound.and(rows.of(member, all, box));
                }
            }
            weakest = new FigureBound(
                    Math.min(weakest.greatest(), bound.greatest()), Math.max(weakest.least(), bound.least()));
        }
        return weakest;
    }

    private boolean isClear(OwnMember member, int shape, int number, Surroundings all) {
        boolean clear = all.out.least() + member.box().back() > SLIT
                && all.up.least() + member.box().bottom() > space.floor().orElse(Double.NEGATIVE_INFINITY) + SLIT
                && all.up.most() + member.box().top() < space.ceiling().orElse(Double.POSITIVE_INFINITY) - SLIT;
        int at = 0;
        for (int i = 0; clear && i < all.others.size(); i++) {
            Around other = all.others.get(i);
            while (others.get(at).number != other.number) {
                at++;
            }
            clear = other.back.least() > member.box().face() + SLIT
                    || other.face.most() < member.box().back() - SLIT
                    || other.bottom.least() > member.box().top() + SLIT
                    || other.top.most() < member.box().bottom() - SLIT
                    || farthest(other, others.get(at), member, shape, number) < member.least() - SLIT;
        }
        return clear;
    }

    /** How far along the normal of a member another piece reaches at most. */
    private static double farthest(Around around, Other other, OwnMember member, int shape, int number) {
        Point normal = member.normal();
        if (other.reach.isEmpty()) {
            return Math.max(normal.x() * around.back.least(), normal.x() * around.face.most())
                    + Math.max(normal.y() * around.bottom.least(), normal.y() * around.top.most());
        }
        return other.reach.get(shape).get(number)
                + Math.max(normal.x() * around.back.least(), normal.x() * around.back.most())
                + Math.max(normal.y() * around.bottom.least(), normal.y() * around.bottom.most());
    }

    /** Whether a level line from some place of a member meets nothing. */
    private static boolean isOpen(OwnMember member, Surroundings all) {
        for (Point place : member.looking()) {
            boolean free = true;
            for (int i = 0; free && i < all.others.size(); i++) {
                Around other = all.others.get(i);
                free = other.bottom.least() > place.y() + SLIT
                        || other.top.most() < place.y() - SLIT
                        || other.face.most() < place.x() - SLIT;
            }
            if (free) {
                return true;
            }
        }
        return false;
    }
}
