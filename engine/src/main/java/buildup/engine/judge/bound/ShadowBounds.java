package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.must.AskedFigure;
import buildup.engine.look.light.Lights;
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
 * highest ({@link Thrown}). The face is the stretch between the pieces that lie flat on it ({@link UprightFace}). Of a molding
 * the members that nothing touches are known as they are, curved ones too ({@link MemberShade}).
 */
final class ShadowBounds {
    /** A shadow that is shorter is not reckoned with: welding may close it. */
    private static final double SLACK = UprightFace.SLACK;

    private final List<PlacedForms> pieces;
    private final List<Light> lights;
    private final Space space;

    /** @param lights some; what one leaves dark that cannot shine is not known, and no bound speaks of it */
    ShadowBounds(List<PlacedForms> pieces, List<Light> lights, Space space) {
        this.pieces = pieces;
        this.space = space;
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
        if ((!share && !figure.column().equals("dark")) || on.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> member = Optional.ofNullable(named.get("member"));
        Optional<UprightFace> face = UprightFace.of(on.get(), member, pieces, space);
        Optional<WholeMembers> whole = WholeMembers.of(on.get(), member, pieces, space);
        List<Bounder> all = new ArrayList<>();
        for (Light light : lights) {
            if (named.get("light") == null || named.get("light").equals(light.name())) {
                face.ifPresent(upright -> all.add(new InLight(upright, light, share)));
                whole.ifPresent(members -> all.add(new MemberShade(members, pieces, light, share)));
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

    /** An upright face in a light. */
    private final class InLight implements Bounder {
        private final UprightFace face;
        private final boolean share;
        private final Thrown own;
        /** By the numbers of the pieces. */
        private final List<Thrown> thrown;

        InLight(UprightFace face, Light light, boolean share) {
            this.face = face;
            this.share = share;
            this.own = Thrown.of(face.piece(), light, face.line(), face.foot());
            this.thrown = pieces.stream()
                    .map(piece -> Thrown.of(piece, light, face.line(), face.foot()))
                    .toList();
        }

        @Override
        public FigureBound of(ChoiceBox box) {
            FigureBound bound = FigureBound.UNKNOWN;
            Optional<UprightFace.Open> open = face.open(box).filter(any -> own.shines(box));
            boolean shines = open.isPresent()
                    && open.get().inFront().stream()
                            .allMatch(other -> thrown.get(other.number()).shines(box));
            if (shines) {
                for (UprightFace.Stretch stretch : open.get().stretches()) {
                    bound = bound.and(
                            dark(stretch.from(), stretch.to(), open.get().inFront(), box));
                }
            }
            return bound;
        }

        /** Whether a piece is a board through the plane of the face: what of it stands before the face is a board too. */
        private static boolean crosses(UprightFace.Other other, ChoiceBox box) {
            return other.piece().box() && other.before().over(box).least() > SLACK;
        }

        private FigureBound dark(SizeSum from, SizeSum to, List<UprightFace.Other> inFront, ChoiceBox box) {
            Range length = to.minus(from).over(box);
            Spans fromFoot = new Spans();
            Spans fromHead = new Spans();
            double slope = 0;
            for (UprightFace.Other other : inFront) {
                Thrown its = thrown.get(other.number());
                boolean there = other.piece().piece().surely(box);
                boolean wholly = other.behind().over(box).least() >= -Tolerance.COINCIDENT;
                boolean surely = there && wholly;
                fromFoot.add(its.above(from, false, box), its.above(from, true, box), surely);
                fromHead.add(
                        its.above(to, true, box).times(-1),
                        its.above(to, false, box).times(-1),
                        surely);
                if (there && !wholly && its instanceof Thrown.Parallel && crosses(other, box)) {
                    fromFoot.add(
                            its.above(from, false, box), other.top().minus(from).over(box), true);
                    fromHead.add(
                            to.minus(other.top()).over(box),
                            its.above(to, false, box).times(-1),
                            true);
                }
                slope = Math.max(slope, its.steepest(box));
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
