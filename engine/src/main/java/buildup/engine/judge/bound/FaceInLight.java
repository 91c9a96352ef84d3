package buildup.engine.judge.bound;

import buildup.engine.judge.bound.UprightFace.Other;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Tolerance;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a light throws each piece upon an upright face. The shadow of a piece that stands wholly before the face is one
 * stretch of it, since an outline is in one: from where the light throws its lowest place to where it throws its highest
 * ({@link Thrown}). A board that runs on through the plane of the face stands before it as a board that begins there.
 */
final class FaceInLight {
    private final UprightFace face;
    private final Thrown own;
    /** By the numbers of the pieces. */
    private final List<Thrown> thrown;

    FaceInLight(UprightFace face, Light light, List<PlacedForms> pieces) {
        this.face = face;
        this.own = Thrown.of(face.piece(), light, face.line(), face.foot());
        this.thrown = pieces.stream()
                .map(piece -> Thrown.of(piece, light, face.line(), face.foot()))
                .toList();
    }

    /** What is known of the face; absent where the light is not known to shine on it and on all that stands before it. */
    Optional<UprightFace.Open> open(ChoiceBox box) {
        return face.open(box)
                .filter(open -> own.shines(box)
                        && open.inFront().stream().allMatch(other -> of(other).shines(box)));
    }

    private Thrown of(Other other) {
        return thrown.get(other.number());
    }

    /** How far parallel rays fall for each inch that they come nearer to the wall; absent where it is a lamp that shines. */
    OptionalDouble slope() {
        return own instanceof Thrown.Parallel rays ? OptionalDouble.of(rays.slope()) : OptionalDouble.empty();
    }

    /** Whether a piece is a board through the plane of the face, or behind it, in every stack of a box. */
    private boolean isThrough(Other other, ChoiceBox box) {
        return slope().isPresent()
                && other.piece().box()
                && other.behind().over(box).most() <= Tolerance.COINCIDENT;
    }

    /** Whether a piece stands wholly before the face in every stack of a box. */
    static boolean isBefore(Other other, ChoiceBox box) {
        return other.behind().over(box).least() >= -Tolerance.COINCIDENT;
    }

    /** Whether in every stack of a box all is dark between where a piece is thrown lowest and where highest. */
    boolean surely(Other other, ChoiceBox box) {
        boolean stands = isBefore(other, box)
                || (isThrough(other, box) && other.before().over(box).least() > UprightFace.SLACK);
        return stands && other.piece().piece().surely(box);
    }

    /** How far over a place of the face a piece is thrown lowest, in. */
    Range lowest(Other other, SizeSum from, ChoiceBox box) {
        return of(other).above(from, false, box);
    }

    /** How far over a place of the face a piece is thrown highest, in: what of a board lies behind the face throws nothing. */
    Range highest(Other other, SizeSum from, ChoiceBox box) {
        return isThrough(other, box)
                ? other.top().minus(from).over(box)
                : of(other).above(from, true, box);
    }

    /** What welding may move the ends of a shadow by, in: a shadow that is shorter is not reckoned with. */
    double blur(List<Other> inFront, ChoiceBox box) {
        double steepest = 0;
        for (Other other : inFront) {
            Range slopes = slopes(other, box);
            steepest = Math.max(steepest, Math.max(Math.abs(slopes.least()), Math.abs(slopes.most())));
        }
        return UprightFace.SLACK * (1 + steepest);
    }

    /** How far a ray that meets a piece falls for each inch that it comes nearer to the wall. */
    Range slopes(Other other, ChoiceBox box) {
        return of(other).slopes(box);
    }
}
