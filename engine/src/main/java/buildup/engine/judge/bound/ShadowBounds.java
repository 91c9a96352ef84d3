package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.judge.must.AskedFigure;
import buildup.engine.look.light.Lights;
import buildup.engine.section.stack.Light;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Bounds of what lights leave dark. An upright front face is the stretch between the pieces that lie flat on it ({@link
 * UprightFace}), and it is known where each piece is thrown upon it ({@link FaceInLight}). Of a molding the members that
 * nothing touches are known as they are, curved ones too ({@link MemberShade}).
 */
final class ShadowBounds {
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
    Optional<Bounder> ofDarkness(AskedFigure figure) {
        boolean share = figure.column().equals("share");
        if (!share && !figure.column().equals("dark")) {
            return Optional.empty();
        }
        // whatever the sizes are, a shadow takes no less than 0 and no more than the whole
        FigureBound atLeast = new FigureBound(0, share ? 1 : Double.POSITIVE_INFINITY);
        Optional<String> member = member(figure);
        return on(figure).flatMap(on -> {
            Optional<UprightFace> face = UprightFace.of(on, member, pieces, space);
            Optional<WholeMembers> whole = WholeMembers.of(on, member, pieces, space);
            List<Bounder> all = new ArrayList<>();
            for (Light light : in(figure)) {
                face.ifPresent(upright -> all.add(new DarkOfFace(new FaceInLight(upright, light, pieces), share)));
                whole.ifPresent(members -> all.add(new MemberShade(members, pieces, light, share)));
            }
            return all(all, atLeast);
        });
    }

    /** A column of the shadows on each member, one by one; absent where nothing is known of it. */
    Optional<Bounder> ofShadows(AskedFigure figure) {
        boolean depth = figure.column().equals("depth");
        if (!depth && !figure.column().equals("overhang")) {
            return Optional.empty();
        }
        boolean alone = figure.named().containsKey("light") && member(figure).isPresent();
        return on(figure)
                .flatMap(on -> UprightFace.of(on, member(figure), pieces, space))
                .flatMap(face -> all(
                        in(figure).stream()
                                .<Bounder>map(light -> new ShadowLine(
                                        new FaceInLight(face, light, pieces), face, pieces, depth, alone))
                                .toList(),
                        FigureBound.UNKNOWN));
    }

    private static Optional<String> member(AskedFigure figure) {
        return Optional.ofNullable(figure.named().get("member"));
    }

    private Optional<PlacedForms> on(AskedFigure figure) {
        return pieces.stream()
                .filter(piece -> piece.name().equals(figure.named().get("on")))
                .findFirst();
    }

    private List<Light> in(AskedFigure figure) {
        String name = figure.named().get("light");
        return lights.stream()
                .filter(light -> name == null || name.equals(light.name()))
                .toList();
    }

    private static Optional<Bounder> all(List<Bounder> all, FigureBound besides) {
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(box -> all.stream().map(one -> one.of(box)).reduce(besides, FigureBound::and));
    }

    /** How much of an upright face is dark. */
    private record DarkOfFace(FaceInLight face, boolean share) implements Bounder {
        @Override
        public FigureBound of(ChoiceBox box) {
            FigureBound bound = FigureBound.UNKNOWN;
            Optional<UprightFace.Open> open = face.open(box);
            if (open.isPresent()) {
                for (UprightFace.Stretch stretch : open.get().stretches()) {
                    bound = bound.and(dark(stretch, open.get().inFront(), box));
                }
            }
            return bound;
        }

        private FigureBound dark(UprightFace.Stretch stretch, List<UprightFace.Other> inFront, ChoiceBox box) {
            SizeSum from = stretch.from();
            SizeSum to = stretch.to();
            Range length = to.minus(from).over(box);
            Spans fromFoot = new Spans();
            Spans fromHead = new Spans();
            for (UprightFace.Other other : inFront) {
                boolean surely = face.surely(other, box);
                fromFoot.add(face.lowest(other, from, box), face.highest(other, from, box), surely);
                fromHead.add(
                        face.highest(other, to, box).times(-1),
                        face.lowest(other, to, box).times(-1),
                        surely);
            }
            double surely = Math.max(fromFoot.longest(length, share), fromHead.longest(length, share));
            double blur = face.blur(inFront, box);
            double slack = share ? blur / length.least() : blur;
            double most = Math.min(fromFoot.most(length, share), fromHead.most(length, share));
            // a stretch that no shadow reaches has its row too
            return new FigureBound(Math.max(0, surely - slack), most + slack);
        }
    }
}
