package buildup.cli.drawing.label;

import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.SceneItem;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What lies on a plan so far: what is set on it keeps clear of walls, of wood and of all that was set before. */
public final class FreePlaces {
    /** Between names and rings, in. */
    private static final double AIR = 0.05;

    private static final double STEP = 0.08;

    /** Far enough to come past any wall and ring; a name further off would belong to nothing. */
    private static final int STEPS = 12;

    /** Going aside is the lesser evil: the name still stands by its wall. */
    private static final double ASIDE = 0.7;

    private final List<ChordRing> solid;
    private final List<Box> taken = new ArrayList<>();

    public FreePlaces(List<SceneItem> drawn) {
        this.solid = drawn.stream()
                .filter(Area.class::isInstance)
                .map(item -> ChordRing.of(((Area) item).ring(), AIR))
                .toList();
    }

    /**
     * Takes the place of the first that is free and can be seen from where it belongs, or else of the first.
     *
     * @param from where it belongs
     * @param tries at least one
     */
    public <T> T take(Point from, List<T> tries, Function<T, Box> box) {
        T chosen = tries.stream()
                .filter(one -> isFree(box.apply(one)) && isSeen(from, box.apply(one)))
                .findFirst()
                .orElse(tries.get(0));
        taken.add(box.apply(chosen));
        return chosen;
    }

    private boolean isFree(Box box) {
        Box wide = box.grown(AIR);
        return taken.stream().noneMatch(other -> Boxes.overlap(other, wide))
                && solid.stream().noneMatch(ring -> ring.meets(wide));
    }

    /** On the other side of the wood it would be taken for something else's; what it begins in hides nothing. */
    private boolean isSeen(Point from, Box box) {
        Line sight = new Line(from, new Point((box.back() + box.face()) / 2, (box.bottom() + box.top()) / 2));
        return sight.length() <= 0
                || solid.stream()
                        .filter(ring -> ring.box().near(sight.box(), 0) && !ring.holds(from))
                        .flatMap(ring -> ring.chords().stream())
                        .noneMatch(chord -> apart(sight, chord) && apart(chord, sight));
    }

    private static boolean apart(Line line, Line other) {
        Point step = line.to().minus(line.from());
        return step.cross(other.from().minus(line.from()))
                        * step.cross(other.to().minus(line.from()))
                < 0;
    }

    /** Ways to move from a place, the least first: away from the wall, and to both sides along it. */
    public static List<Point> moves(Point along, Point away) {
        record Move(int aside, int off) {
            double far() {
                return ASIDE * Math.abs(aside) + off;
            }
        }
        return IntStream.rangeClosed(-STEPS, STEPS)
                .boxed()
                .flatMap(aside -> IntStream.rangeClosed(0, STEPS).mapToObj(off -> new Move(aside, off)))
                .sorted(Comparator.comparingDouble(Move::far).thenComparingInt(Move::aside))
                .map(move -> along.times(STEP * move.aside()).plus(away.times(STEP * move.off())))
                .toList();
    }
}
