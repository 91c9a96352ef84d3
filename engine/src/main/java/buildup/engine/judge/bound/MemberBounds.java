package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Space;
import java.util.List;
import java.util.Optional;

/**
 * Bounds of the sizes of one member on the walk along the room side: of an upright front face, which goes from the piece that
 * lies on it to the next ({@link UprightFace}), and of members that nothing touches ({@link WholeMembers}).
 */
final class MemberBounds {
    private final List<PlacedForms> pieces;
    private final Space space;

    MemberBounds(List<PlacedForms> pieces, Space space) {
        this.pieces = pieces;
        this.space = space;
    }

    /** A column of the members of a piece; absent where nothing is known of it. */
    Optional<Bounder> of(String column, String name, Optional<String> member) {
        if (!List.of("length", "bottom", "top", "projection").contains(column)) {
            return Optional.empty();
        }
        Optional<PlacedForms> piece =
                pieces.stream().filter(one -> one.name().equals(name)).findFirst();
        Optional<UprightFace> face = piece.flatMap(one -> UprightFace.of(one, member, pieces, space));
        Optional<WholeMembers> whole = piece.flatMap(one -> WholeMembers.of(one, member, pieces, space));
        return face.isEmpty() && whole.isEmpty()
                ? Optional.empty()
                : Optional.of(box -> {
                    FigureBound bound = FigureBound.UNKNOWN;
                    if (face.isPresent()) {
                        bound = bound.and(of(column, face.get(), box));
                    }
                    return whole.isPresent()
                            ? bound.and(whole.get().over(box, (row, around, any) -> of(column, row, around)))
                            : bound;
                });
    }

    private static FigureBound of(String column, UprightFace face, ChoiceBox box) {
        FigureBound bound = FigureBound.UNKNOWN;
        Optional<UprightFace.Open> open = face.open(box);
        if (open.isPresent()) {
            for (UprightFace.Stretch stretch : open.get().stretches()) {
                SizeSum size = switch (column) {
                    case "length" -> stretch.to().minus(stretch.from());
                    case "bottom" -> face.foot().plus(stretch.from());
                    case "top" -> face.foot().plus(stretch.to());
                    default -> face.line();
                };
                bound = bound.and(about(size.over(box)));
            }
        }
        return bound;
    }

    private static FigureBound of(String column, OwnMember row, WholeMembers.Surroundings around) {
        return switch (column) {
            case "length" -> about(new Range(row.length(), row.length()));
            case "bottom" ->
                about(around.up().plus(new Range(row.box().bottom(), row.box().bottom())));
            case "top" ->
                about(around.up().plus(new Range(row.box().top(), row.box().top())));
            default ->
                about(around.out().plus(new Range(row.box().face(), row.box().face())));
        };
    }

    /** Welding may move an end of a row. */
    private static FigureBound about(Range range) {
        return new FigureBound(range.least() - UprightFace.SLACK, range.most() + UprightFace.SLACK);
    }
}
