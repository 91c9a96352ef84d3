package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.UprightFace.Other;
import buildup.engine.judge.bound.UprightFace.Stretch;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bounds of the overhang or the depth of the shadows on an upright face: how far before the face, and how far over the end of
 * the shadow, the place lies that casts it. Where the foot of the face is surely lit and a shadow surely begins over it, the
 * piece casts it that is thrown lowest, by its lower front corner where it is a board in parallel rays; one ray goes through
 * both ends, so that the depth is the overhang times its slope.
 */
final class ShadowLine implements Bounder {
    /** Rays more level than this are not reckoned with: all of a level side is thrown upon one place. */
    private static final double LEVEL = 0.01;

    private final FaceInLight light;
    private final boolean depth;
    private final boolean alone;
    private final List<Reach> reaches;
    /** By the numbers of the pieces, how far each is off every other. */
    private final List<List<BoxGaps>> gaps = new ArrayList<>();

    /** How far a piece comes out before the face. */
    private record Reach(PlacedForms piece, SizeSum before) {}

    /**
     * @param depth whether it is asked for the depth; else for the overhang
     * @param alone whether no figure is asked for but those of this face in this light, so that all of them are of it
     */
    ShadowLine(FaceInLight light, UprightFace face, List<PlacedForms> pieces, boolean depth, boolean alone) {
        this.light = light;
        this.depth = depth;
        this.alone = alone;
        this.reaches = pieces.stream()
                .map(piece -> new Reach(piece, piece.out().high().minus(face.line())))
                .toList();
        for (PlacedForms piece : pieces) {
            gaps.add(pieces.stream()
                    .filter(beside -> !beside.name().equals(piece.name()))
                    .map(beside -> BoxGaps.of(beside, piece))
                    .toList());
        }
    }

    @Override
    public FigureBound of(ChoiceBox box) {
        FigureBound bound = alone ? farthest(box) : FigureBound.UNKNOWN;
        Optional<UprightFace.Open> open = light.open(box);
        if (open.isPresent()) {
            for (Stretch stretch : open.get().stretches()) {
                bound = bound.and(lowest(stretch, open.get().inFront(), box));
            }
        }
        return bound;
    }

    /** Nothing that casts a shadow comes out farther than the piece that comes out farthest. */
    private FigureBound farthest(ChoiceBox box) {
        double most = 0;
        for (Reach reach : reaches) {
            most = reach.piece.piece().maybe(box)
                    ? Math.max(most, reach.before.over(box).most())
                    : most;
        }
        double times = depth ? light.slope().orElse(Double.POSITIVE_INFINITY) : 1;
        return new FigureBound(Double.NEGATIVE_INFINITY, (most + UprightFace.SLACK) * times);
    }

    /** The shadow that begins lowest on a stretch of the face. */
    private FigureBound lowest(Stretch stretch, List<Other> inFront, ChoiceBox box) {
        double blur = light.blur(inFront, box);
        double length = stretch.to().minus(stretch.from()).over(box).least();
        double lit = length;
        double begins = Double.POSITIVE_INFINITY;
        List<Other> over = new ArrayList<>();
        for (Other other : inFront) {
            Range low = light.lowest(other, stretch.from(), box);
            Range high = light.highest(other, stretch.from(), box);
            if (high.most() > blur) {
                over.add(other);
                lit = Math.min(lit, low.least());
                boolean surely = light.surely(other, box) && high.least() > low.most() + 3 * blur;
                begins = surely ? Math.min(begins, low.most()) : begins;
            }
        }
        if (lit <= 3 * blur || begins >= length - 3 * blur) {
            return FigureBound.UNKNOWN;
        }
        FigureBound all = new FigureBound(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
        for (Other other : over) {
            if (light.lowest(other, stretch.from(), box).least() <= begins + blur) {
                Range figure = figure(other, box);
                boolean exact = gaps.get(other.number()).stream().allMatch(gap -> gap.areExact(box));
                all = new FigureBound(
                        Math.min(all.greatest(), exact ? figure.least() - blur : Double.NEGATIVE_INFINITY),
                        Math.max(all.least(), exact ? figure.most() + blur : Double.POSITIVE_INFINITY));
            }
        }
        return all;
    }

    /** The overhang or the depth of a shadow that a piece casts from its lowest ray. */
    private Range figure(Other other, ChoiceBox box) {
        Range slopes = light.slopes(other, box);
        Range before = other.before().over(box);
        boolean corner = light.slope().orElse(0) >= LEVEL && other.piece().box();
        Range overhang =
                corner ? before : new Range(Math.max(0, other.behind().over(box).least()), before.most());
        return depth ? overhang.times(slopes) : overhang;
    }
}
