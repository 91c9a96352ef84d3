package buildup.engine.judge.bound;

import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.look.light.Lights;
import buildup.engine.look.light.Sunlight;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Light;
import buildup.profiles.outline.Motion;

/** Where a light throws the lowest and the highest place of a piece upon an upright line behind it. */
sealed interface Thrown permits Thrown.Parallel, Thrown.FromLamp {
    /**
     * How far over a place of the line the lowest or the highest place of the piece is thrown, in.
     *
     * @param from height of that place over the foot of the line
     */
    Range above(SizeSum from, boolean highest, ChoiceBox box);

    /** Whether the light is known to shine on the line and on the piece from the room, whatever the sizes are. */
    boolean shines(ChoiceBox box);

    /** How far a ray that meets the piece falls for each inch that it comes nearer to the wall; less than 0 where it rises. */
    Range slopes(ChoiceBox box);

    /**
     * Where a piece is thrown by a light.
     *
     * @param line the x of the upright line
     * @param foot from which heights on it are counted
     */
    static Thrown of(PlacedForms piece, Light light, SizeSum line, SizeSum foot) {
        if (light instanceof Light.Lamp lamp) {
            return new FromLamp(
                    lamp,
                    piece,
                    piece.out().low().minus(line),
                    piece.out().high().minus(line),
                    piece.up().low().minus(foot),
                    piece.up().high().minus(foot));
        }
        Light.Distant distant = light instanceof Light.Sun sun ? Sunlight.distant(sun) : (Light.Distant) light;
        double slope = Math.tan(Math.toRadians(Lights.sectionAngle(distant.altitude(), distant.azimuth())));
        SizeSum ray = foot.minus(line.times(slope));
        return new Parallel(
                slope,
                Parallel.ray(piece, slope, false).minus(ray),
                Parallel.ray(piece, slope, true).minus(ray));
    }

    /**
     * By parallel rays. Each goes by one number, the height at which it meets the plane x = 0.
     *
     * @param slope how far a ray falls for each inch that it comes nearer to the wall
     * @param lowest the lowest ray that the piece darkens, over that of the foot of the line
     * @param highest the highest one
     */
    record Parallel(double slope, SizeSum lowest, SizeSum highest) implements Thrown {
        /** Rays that are steeper than this are not reckoned with. */
        private static final double STEEP = 1e3;

        /** The lowest or highest ray that a piece darkens, by the height where it meets x = 0. */
        static SizeSum ray(PlacedForms piece, double slope, boolean highest) {
            if (piece.box()) {
                return highest
                        ? piece.up().high().minus(piece.out().low().times(slope))
                        : piece.up().low().minus(piece.out().high().times(slope));
            }
            double turn = -Math.toDegrees(Math.atan(slope));
            double stretch = Math.hypot(1, slope);
            SizeSum own = piece.own(reading -> {
                var box = reading.shape().box();
                var turned = reading.shape()
                        .moved(Motion.shift(-box.back(), -box.bottom()))
                        .moved(Motion.turn(turn))
                        .box();
                return (highest ? turned.top() : turned.bottom()) * stretch;
            });
            return piece.up().low().minus(piece.out().low().times(slope)).plus(own);
        }

        @Override
        public Range above(SizeSum from, boolean top, ChoiceBox box) {
            return (top ? highest : lowest).minus(from).over(box);
        }

        @Override
        public boolean shines(ChoiceBox box) {
            return slope >= 0 && slope <= STEEP;
        }

        @Override
        public Range slopes(ChoiceBox box) {
            return new Range(slope, slope);
        }
    }

    /**
     * By a lamp that stands farther out than all of the piece. It throws a place (x, y) upon the line at y - s (x - line),
     * where s = (lamp's height - y) / (lamp's distance - x) (similar triangles). What is thrown lies higher where the place
     * does, and along a level line it moves one way alone, so that the outermost places are corners where the piece is its
     * box. Of another piece it is known only that it touches each side of its box somewhere.
     *
     * @param behind from the line to the back of the piece
     * @param before from the line to its face
     * @param bottom over the foot of the line
     * @param top over the foot of the line
     */
    record FromLamp(Light.Lamp lamp, PlacedForms piece, SizeSum behind, SizeSum before, SizeSum bottom, SizeSum top)
            implements Thrown {
        /** The lamp has to stand farther out than every piece by so much, in. */
        private static final double CLEAR = 1;

        @Override
        public Range above(SizeSum from, boolean highest, ChoiceBox box) {
            SizeSum height = highest ? top : bottom;
            Range level = height.minus(from).over(box);
            Range back = level.plus(fall(highest, false, box).times(-1));
            Range face = level.plus(fall(highest, true, box).times(-1));
            if (!piece.box()) {
                return new Range(Math.min(back.least(), face.least()), Math.max(back.most(), face.most()));
            }
            return highest
                    ? new Range(Math.max(back.least(), face.least()), Math.max(back.most(), face.most()))
                    : new Range(Math.min(back.least(), face.least()), Math.min(back.most(), face.most()));
        }

        /** How much lower than a corner of its box a place lies where that is thrown. */
        private Range fall(boolean high, boolean front, ChoiceBox box) {
            return slope(high, front, box).times((front ? before : behind).over(box));
        }

        private Range slope(boolean high, boolean front, ChoiceBox box) {
            Range y = piece.side(Axis.UP, high).over(box);
            Range x = piece.side(Axis.OUT, front).over(box);
            Range rise = new Range(lamp.at().y() - y.most(), lamp.at().y() - y.least());
            return rise.times(
                    new Range(1 / (lamp.at().x() - x.least()), 1 / (lamp.at().x() - x.most())));
        }

        @Override
        public boolean shines(ChoiceBox box) {
            return lamp.left().x() > Math.max(0, piece.out().high().over(box).most()) + CLEAR;
        }

        @Override
        public Range slopes(ChoiceBox box) {
            Range all = slope(false, false, box);
            for (boolean high : new boolean[] {true, false}) {
                for (boolean front : new boolean[] {true, false}) {
                    Range one = slope(high, front, box);
                    all = new Range(Math.min(all.least(), one.least()), Math.max(all.most(), one.most()));
                }
            }
            return all;
        }
    }
}
