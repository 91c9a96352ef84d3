package buildup.engine.judge.bound;

import buildup.engine.judge.must.AskedFigure;
import buildup.engine.look.light.Lights;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Light;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Bounds of how much of an upright front face lies in shadow. The shadow of a piece that stands wholly in front of the face
 * is one stretch of it, since an outline is in one: from where the light throws its lowest place to where it throws its
 * highest ({@link Thrown}). The face is the stretch between the pieces that lie flat on it.
 */
final class ShadowBounds {
    /** A stretch or a shadow that is shorter is not reckoned with: welding may close it. */
    private static final double SLACK = 2 * Tolerance.TOUCHING;

    private final List<PlacedForms> pieces;
    private final List<Light> lights;

    /** @param lights some; what one leaves dark that cannot shine is not known, and no bound speaks of it */
    ShadowBounds(List<PlacedForms> pieces, List<Light> lights, Space space) {
        this.pieces = pieces;
        this.lights = lights.stream().filter(light -> shines(light, space)).toList();
    }

    private static boolean shines(Light light, Space space) {
        if (light instanceof Light.Lamp lamp) {
            double height = lamp.at().y();
            return space.slope() == 0
                    && height > space.floor().orElse(Double.NEGATIVE_INFINITY) + Tolerance.TOUCHING
                    && height < space.ceiling().orElse(Double.POSITIVE_INFINITY) - Tolerance.TOUCHING;
        }
        return Lights.fromAfar(light);
    }

    /** A column of how much of each member is dark; absent where nothing is known of it. */
    Optional<Bounder> of(AskedFigure figure) {
        Map<String, String> named = figure.named();
        boolean share = figure.column().equals("share");
        Optional<PlacedForms> on = pieces.stream()
                .filter(piece -> piece.name().equals(named.get("on")))
                .findFirst();
        Optional<Extent> face = on.flatMap(piece -> piece.flat(Axis.OUT, true));
        boolean member = named.get("member") == null
                || on.flatMap(piece -> piece.member(Axis.OUT, true))
                        .filter(name -> name.equals(named.get("member")))
                        .isPresent();
        if ((!share && !figure.column().equals("dark")) || face.isEmpty() || !member) {
            return Optional.empty();
        }
        List<Bounder> all = new ArrayList<>();
        for (Light light : lights) {
            boolean asked = named.get("light") == null || named.get("light").equals(light.name());
            if (asked) {
                all.add(new Face(on.get(), face.get(), light, share));
            }
        }
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(box -> {
                    // whatever the sizes are, a shadow takes no less than 0 and no more than the whole
                    FigureBound bound = new FigureBound(0, share ? 1 : Double.POSITIVE_INFINITY);
                    for (Bounder one : all) {
                        bound = bound.and(one.of(box));
                    }
                    return bound;
                });
    }

    /** What another piece does to the face. */
    private record Other(
            PlacedForms piece,
            SizeSum behind,
            SizeSum before,
            Optional<Extent> flat,
            SizeSum bottom,
            SizeSum top,
            Thrown thrown) {}

    /** An upright face in a light, all heights from the foot of it. */
    private final class Face implements Bounder {
        private final PlacedForms piece;
        private final SizeSum height;
        private final boolean share;
        private final Thrown own;
        private final List<Other> others = new ArrayList<>();

        Face(PlacedForms piece, Extent face, Light light, boolean share) {
            this.piece = piece;
            this.share = share;
            this.height = face.high().minus(face.low());
            SizeSum line = piece.out().high();
            this.own = Thrown.of(piece, light, line, face.low());
            for (PlacedForms other : pieces) {
                if (!other.name().equals(piece.name())) {
                    others.add(new Other(
                            other,
                            other.out().low().minus(line),
                            other.out().high().minus(line),
                            other.flat(Axis.OUT, false)
                                    .map(flat -> new Extent(
                                            flat.low().minus(face.low()),
                                            flat.high().minus(face.low()))),
                            other.up().low().minus(face.low()),
                            other.up().high().minus(face.low()),
                            Thrown.of(other, light, line, face.low())));
                }
            }
        }

        @Override
        public FigureBound of(ChoiceBox box) {
            if (!piece.piece().surely(box) || !own.shines(box)) {
                return FigureBound.UNKNOWN;
            }
            List<Extent> covers = new ArrayList<>();
            List<Other> inFront = new ArrayList<>();
            for (Other other : others) {
                boolean behindIt = other.before.over(box).most() <= Tolerance.COINCIDENT;
                if (!other.piece.piece().maybe(box)) {
                    continue;
                }
                if (!other.thrown.shines(box) || (behindIt && !isOff(other, box))) {
                    return FigureBound.UNKNOWN;
                }
                if (behindIt) {
                    continue;
                }
                Range behind = other.behind.over(box);
                boolean beside = other.bottom.minus(height).over(box).least() > SLACK
                        || other.top.over(box).most() < -SLACK;
                boolean lies = behind.isZero(Tolerance.COINCIDENT)
                        && other.piece.piece().surely(box)
                        && other.flat.isPresent();
                if (lies && !beside) {
                    covers.add(other.flat.get());
                } else if (!beside && behind.least() <= SLACK) {
                    return FigureBound.UNKNOWN;
                }
                inFront.add(other);
            }
            return stretches(covers, inFront, box);
        }

        /** Whether a piece that comes no farther out than the face is not flush with any of it, so that none of it is its own. */
        private boolean isOff(Other other, ChoiceBox box) {
            return other.before.over(box).most() < -SLACK
                    || other.top.over(box).most() <= Tolerance.COINCIDENT
                    || other.bottom.minus(height).over(box).least() >= -Tolerance.COINCIDENT;
        }

        private FigureBound stretches(List<Extent> covers, List<Other> inFront, ChoiceBox box) {
            FigureBound bound = FigureBound.UNKNOWN;
            SizeSum foot = height.minus(height);
            List<Extent> all = new ArrayList<>(covers);
            for (int i = -1; i < all.size(); i++) {
                for (int j = -1; j < all.size(); j++) {
                    if (i < 0 || i != j) {
                        SizeSum from = i < 0 ? foot : all.get(i).high();
                        SizeSum to = j < 0 ? height : all.get(j).low();
                        if (isStretch(from, to, all, i, j, box) && isOpen(from, to, inFront, box)) {
                            bound = bound.and(dark(from, to, inFront, box));
                        }
                    }
                }
            }
            return bound;
        }

        /** Whether between two ends there is a stretch in every stack of a box, and nothing lies on it. */
        private boolean isStretch(SizeSum from, SizeSum to, List<Extent> covers, int i, int j, ChoiceBox box) {
            boolean free = to.minus(from).over(box).least() > SLACK
                    && from.over(box).least() >= -Tolerance.COINCIDENT
                    && to.minus(height).over(box).most() <= Tolerance.COINCIDENT;
            for (int k = 0; free && k < covers.size(); k++) {
                free = k == i
                        || k == j
                        || covers.get(k).high().minus(from).over(box).most() <= Tolerance.COINCIDENT
                        || covers.get(k).low().minus(to).over(box).least() >= -Tolerance.COINCIDENT;
            }
            return free;
        }

        /** Whether a level line leaves the stretch at one of its ends and meets nothing. */
        private boolean isOpen(SizeSum from, SizeSum to, List<Other> inFront, ChoiceBox box) {
            boolean above = true;
            boolean below = true;
            for (Other other : inFront) {
                above = above
                        && (other.bottom.minus(from).over(box).least() > SLACK
                                || other.top.minus(from).over(box).most() <= Tolerance.COINCIDENT);
                below = below
                        && (other.top.minus(to).over(box).most() < -SLACK
                                || other.bottom.minus(to).over(box).least() >= -Tolerance.COINCIDENT);
            }
            return above || below;
        }

        private FigureBound dark(SizeSum from, SizeSum to, List<Other> inFront, ChoiceBox box) {
            Range length = to.minus(from).over(box);
            Spans fromFoot = new Spans();
            Spans fromHead = new Spans();
            double slope = 0;
            for (Other other : inFront) {
                boolean surely = other.behind.over(box).least() >= -Tolerance.COINCIDENT
                        && other.piece.piece().surely(box);
                fromFoot.add(other.thrown.above(from, false, box), other.thrown.above(from, true, box), surely);
                fromHead.add(
                        other.thrown.above(to, true, box).times(-1),
                        other.thrown.above(to, false, box).times(-1),
                        surely);
                slope = Math.max(slope, other.thrown.steepest(box));
            }
            double surely = Math.max(fromFoot.longest(length, share), fromHead.longest(length, share));
            double blur = SLACK * (1 + slope);
            double slack = share ? blur / length.least() : blur;
            double most = Math.min(fromFoot.most(length, share), fromHead.most(length, share));
            // a stretch that no shadow reaches has its row too
            return new FigureBound(Math.max(0, surely - slack), most + slack);
        }
    }
}
