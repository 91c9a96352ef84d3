package buildup.engine.judge.bound;

import buildup.engine.judge.bound.form.ChoiceBox;
import buildup.engine.judge.bound.form.PlacedForms;
import buildup.engine.judge.bound.form.PlacedForms.Extent;
import buildup.engine.judge.bound.form.Range;
import buildup.engine.judge.bound.form.SizeSum;
import buildup.engine.section.stack.Axis;
import buildup.engine.section.stack.Space;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The upright front face of a piece, all heights from the foot of it, and the stretches of it that lie open between the
 * pieces that lie flat on it: each of them is a row of the walk along the room side in every stack of a box.
 */
final class UprightFace {
    /** A stretch that is shorter is not reckoned with: welding may close it, and may move its ends by so much. */
    static final double SLACK = 2 * Tolerance.TOUCHING;

    /** What is no wider is closed to the room: what lies behind it is no row, in. */
    static final double SLIT = Tolerance.CLOSED_TO_THE_ROOM + SLACK;

    /**
     * What another piece does to the face.
     *
     * @param number its place among all pieces
     * @param behind from the face to its back
     * @param before from the face to its own face
     * @param flat the straight edge along its back, where there is one
     */
    record Other(
            int number,
            PlacedForms piece,
            SizeSum behind,
            SizeSum before,
            Optional<Extent> flat,
            SizeSum bottom,
            SizeSum top) {}

    /** A stretch of the face that nothing lies on. */
    record Stretch(SizeSum from, SizeSum to) {}

    /** What is known of the face in every stack of a box: some of its open stretches, and the pieces that stand before it. */
    record Open(List<Stretch> stretches, List<Other> inFront) {}

    private final PlacedForms piece;
    private final Extent face;
    private final SizeSum line;
    private final SizeSum height;
    private final SizeSum underSlope;
    private final Space space;
    private final List<Other> others = new ArrayList<>();

    private UprightFace(PlacedForms piece, Extent face, List<PlacedForms> pieces, Space space) {
        this.piece = piece;
        this.face = face;
        this.space = space;
        this.line = piece.out().high();
        this.height = face.high().minus(face.low());
        this.underSlope = face.high().minus(line.times(space.slope()));
        for (int i = 0; i < pieces.size(); i++) {
            PlacedForms other = pieces.get(i);
            if (!other.name().equals(piece.name())) {
                others.add(new Other(
                        i,
                        other,
                        other.out().low().minus(line),
                        other.out().high().minus(line),
                        other.flat(Axis.OUT, false)
                                .map(flat -> new Extent(
                                        flat.low().minus(face.low()),
                                        flat.high().minus(face.low()))),
                        other.up().low().minus(face.low()),
                        other.up().high().minus(face.low())));
            }
        }
    }

    /**
     * The front face of a piece.
     *
     * @param member the name that it has to have; absent where any will do
     */
    static Optional<UprightFace> of(PlacedForms piece, Optional<String> member, List<PlacedForms> pieces, Space space) {
        // framing is walked over and gives no row
        boolean named = piece.inStack()
                && (member.isEmpty() || piece.member(Axis.OUT, true).equals(member));
        return piece.flat(Axis.OUT, true).filter(any -> named).map(face -> new UprightFace(piece, face, pieces, space));
    }

    /** Its x. */
    SizeSum line() {
        return line;
    }

    /** The height of its foot. */
    SizeSum foot() {
        return face.low();
    }

    PlacedForms piece() {
        return piece;
    }

    /** Absent where something may lie flush with it, so that it is not known what of it is its own. */
    Optional<Open> open(ChoiceBox box) {
        if (!piece.piece().surely(box) || !isInTheRoom(box)) {
            return Optional.empty();
        }
        List<Extent> covers = new ArrayList<>();
        List<Other> inFront = new ArrayList<>();
        for (Other other : others) {
            boolean behindIt = other.before.over(box).most() <= Tolerance.COINCIDENT;
            if (!other.piece.piece().maybe(box) || (behindIt && isOff(other, box))) {
                continue;
            }
            if (behindIt) {
                return Optional.empty();
            }
            Range behind = other.behind.over(box);
            boolean beside = other.bottom.minus(height).over(box).least() >= -Tolerance.COINCIDENT
                    || other.top.over(box).most() <= Tolerance.COINCIDENT;
            boolean lies =
                    behind.isZero(Tolerance.COINCIDENT) && other.piece.piece().surely(box) && other.flat.isPresent();
            if (lies && !beside) {
                covers.add(other.flat.get());
            } else if (!beside && behind.least() <= SLIT) {
                return Optional.empty();
            }
            inFront.add(other);
        }
        return Optional.of(new Open(stretches(covers, inFront, box), inFront));
    }

    /** Whether no wall, floor or ceiling takes any of it. */
    private boolean isInTheRoom(ChoiceBox box) {
        return line.over(box).least() > SLACK
                && face.low().over(box).least() >= space.floor().orElse(Double.NEGATIVE_INFINITY) - Tolerance.COINCIDENT
                && underSlope.over(box).most()
                        <= space.ceiling().orElse(Double.POSITIVE_INFINITY) + Tolerance.COINCIDENT;
    }

    /** Whether a piece that comes no farther out than the face is not flush with any of it, so that none of it is its own. */
    private boolean isOff(Other other, ChoiceBox box) {
        return other.before.over(box).most() < -SLACK
                || other.top.over(box).most() <= Tolerance.COINCIDENT
                || other.bottom.minus(height).over(box).least() >= -Tolerance.COINCIDENT;
    }

    private List<Stretch> stretches(List<Extent> covers, List<Other> inFront, ChoiceBox box) {
        List<Stretch> stretches = new ArrayList<>();
        SizeSum foot = height.minus(height);
        for (int i = -1; i < covers.size(); i++) {
            for (int j = -1; j < covers.size(); j++) {
                if (i < 0 || i != j) {
                    SizeSum from = i < 0 ? foot : covers.get(i).high();
                    SizeSum to = j < 0 ? height : covers.get(j).low();
                    if (isStretch(from, to, covers, i, j, box) && isOpen(from, to, inFront, box)) {
                        stretches.add(new Stretch(from, to));
                    }
                }
            }
        }
        return stretches;
    }

    /** Whether between two ends there is a stretch in every stack of a box, and nothing lies on it. */
    private boolean isStretch(SizeSum from, SizeSum to, List<Extent> covers, int i, int j, ChoiceBox box) {
        boolean free = to.minus(from).over(box).least() > SLIT
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
                    && (other.bottom.minus(from).over(box).least() > SLIT
                            || other.top.minus(from).over(box).most() <= Tolerance.COINCIDENT);
            below = below
                    && (other.top.minus(to).over(box).most() < -SLIT
                            || other.bottom.minus(to).over(box).least() >= -Tolerance.COINCIDENT);
        }
        return above || below;
    }
}
