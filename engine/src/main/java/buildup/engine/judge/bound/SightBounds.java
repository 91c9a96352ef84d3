package buildup.engine.judge.bound;

import buildup.engine.judge.bound.FigureBound.Bounder;
import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.PlacedForms.Extent;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Eye;
import buildup.engine.section.stack.PieceKind;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Bounds of what an eye sees of a nailer whose outline is a box. From the eye each other piece hides a stretch of an edge;
 * what none can hide, wherever the sizes let it stand, is seen.
 */
final class SightBounds {
    /** What welding of pieces that nearly touch may hide of an edge, and what of it is seen through a slit that counts as closed. */
    private static final double SLACK = 2 * Tolerance.CLOSED_TO_THE_ROOM + 4 * Tolerance.TOUCHING;

    private final List<PlacedForms> pieces;
    private final List<Eye> eyes;
    private final Space space;

    SightBounds(List<PlacedForms> pieces, List<Eye> eyes, Space space) {
        this.pieces = pieces;
        this.eyes = eyes;
        this.space = space;
    }

    /** A column of the coverage; absent where nothing is known of it. */
    Optional<Bounder> of(String column, Map<String, String> named) {
        Optional<PlacedForms> nailer = pieces.stream()
                .filter(piece -> piece.name().equals(named.get("piece")))
                .filter(piece -> piece.kind() == PieceKind.NAILER && piece.box())
                .findFirst();
        if (nailer.isEmpty() || !List.of("seen", "exposed", "hiddenShare").contains(column)) {
            return Optional.empty();
        }
        List<Look> looks = eyes.stream()
                .filter(eye -> named.get("eye") == null || named.get("eye").equals(eye.name()))
                .map(eye -> new Look(nailer.get(), eye))
                .toList();
        return looks.isEmpty()
                ? Optional.empty()
                : Optional.of(box -> {
                    FigureBound bound = FigureBound.UNKNOWN;
                    for (Look look : looks) {
                        bound = bound.and(look.over(box, column));
                    }
                    return bound;
                });
    }

    /** How one eye looks at a nailer. */
    private final class Look {
        private final PlacedForms nailer;
        private final Eye eye;
        private final SizeSum width;
        private final SizeSum height;
        private final List<Edge> edges;

        Look(PlacedForms nailer, Eye eye) {
            this.nailer = nailer;
            this.eye = eye;
            this.width = nailer.out().high().minus(nailer.out().low());
            this.height = nailer.up().high().minus(nailer.up().low());
            this.edges = List.of(
                    new Edge(nailer, Axis.UP, false, eye.height(), eye.distance()),
                    new Edge(nailer, Axis.UP, true, eye.height(), eye.distance()),
                    new Edge(nailer, Axis.OUT, true, eye.distance(), eye.height()));
        }

        FigureBound over(ChoiceBox box, String column) {
            double all = 2 * (width.over(box).most() + height.over(box).most());
            if (!nailer.piece().surely(box) || !stands(box)) {
                return FigureBound.UNKNOWN;
            }
            double seen = 0;
            for (Edge edge : edges) {
                seen += edge.seen(box);
            }
            return column.equals("hiddenShare")
                    ? new FigureBound(0, 1 - Math.min(1, seen / all))
                    : new FigureBound(seen, all);
        }

        /** Whether the eye stands in the room before all pieces, and the nailer in the room too. */
        private boolean stands(ChoiceBox box) {
            boolean stands = eye.height() > space.floor().orElse(Double.NEGATIVE_INFINITY)
                    && eye.height() < space.ceiling().orElse(Double.POSITIVE_INFINITY)
                    && nailer.up().low().over(box).least() >= space.floor().orElse(Double.NEGATIVE_INFINITY)
                    && nailer.up().high().over(box).most() <= space.ceiling().orElse(Double.POSITIVE_INFINITY)
                    && (!space.wall().solid() || nailer.out().low().over(box).least() >= -Tolerance.COINCIDENT);
            for (PlacedForms piece : pieces) {
                stands = stands && piece.out().high().over(box).most() < eye.distance() - 1;
            }
            return stands;
        }
    }

    /** Another piece before an edge: how far in front of it it reaches, and where along it. */
    private record Blocker(
            PlacedForms piece,
            SizeSum nearest,
            SizeSum farthest,
            SizeSum low,
            SizeSum high,
            SizeSum lowFromEye,
            SizeSum highFromEye) {}

    /** One edge of a nailer, places along it counted from its lesser end. */
    private final class Edge {
        private final SizeSum length;
        private final SizeSum eyeBefore;
        private final List<Blocker> blockers = new ArrayList<>();

        /**
         * @param across axis square to the edge
         * @param depth of the eye on that axis
         * @param along of the eye on the other
         */
        Edge(PlacedForms nailer, Axis across, boolean high, double depth, double along) {
            double sign = high ? 1 : -1;
            SizeSum line = nailer.side(across, high);
            Extent own = nailer.extent(across.other());
            this.length = own.high().minus(own.low());
            this.eyeBefore = line.times(-sign).plus(sign * depth);
            for (PlacedForms other : pieces) {
                if (!other.name().equals(nailer.name())) {
                    Extent its = other.extent(across.other());
                    blockers.add(new Blocker(
                            other,
                            other.side(across, !high).minus(line).times(sign),
                            other.side(across, high).minus(line).times(sign),
                            its.low().minus(own.low()),
                            its.high().minus(own.low()),
                            its.low().plus(-along),
                            its.high().plus(-along)));
                }
            }
        }

        /** How much of it is seen in every stack of a box, in. */
        double seen(ChoiceBox box) {
            Range before = eyeBefore.over(box);
            Range whole = length.over(box);
            if (before.least() <= 1) {
                return 0;
            }
            Spans fromLow = new Spans();
            Spans fromHigh = new Spans();
            for (Blocker blocker : blockers) {
                // what lies flush with the edge may be what is seen in its place
                Range far = blocker.farthest.over(box);
                if (blocker.piece.piece().maybe(box) && far.most() > -SLACK) {
                    if (far.most() >= before.least() - 1) {
                        return 0;
                    }
                    hide(blocker, before, far, box, fromLow, fromHigh);
                }
            }
            return Math.max(0, Math.max(fromLow.free(whole), fromHigh.free(whole)) - SLACK);
        }

        /** A place so far in front of the edge is seen before one that lies farther from the eye by this share of its way. */
        private void hide(Blocker blocker, Range before, Range far, ChoiceBox box, Spans fromLow, Spans fromHigh) {
            double near = Math.max(0, blocker.nearest.over(box).least());
            Range share =
                    new Range(near / (before.most() - near), Math.max(0, far.most()) / (before.least() - far.most()));
            double low = least(blocker.lowFromEye.over(box).least(), share);
            double high = most(blocker.highFromEye.over(box).most(), share);
            Range fromOne = blocker.low.over(box);
            Range toOne = blocker.high.over(box);
            fromLow.add(
                    new Range(fromOne.least() + low, fromOne.most()),
                    new Range(toOne.least(), toOne.most() + high),
                    false);
            Range fromOther = length.minus(blocker.high).over(box);
            Range toOther = length.minus(blocker.low).over(box);
            fromHigh.add(
                    new Range(fromOther.least() - high, fromOther.most()),
                    new Range(toOther.least(), toOther.most() - low),
                    false);
        }

        private static double least(double from, Range share) {
            return Math.min(from * share.least(), from * share.most());
        }

        private static double most(double from, Range share) {
            return Math.max(from * share.least(), from * share.most());
        }
    }
}
