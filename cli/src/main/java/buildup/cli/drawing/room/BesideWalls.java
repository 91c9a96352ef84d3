package buildup.cli.drawing.room;

import buildup.cli.drawing.label.BestPlace;
import buildup.cli.drawing.label.Clearances;
import buildup.cli.drawing.label.Leaders;
import buildup.cli.scene.SceneItem;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Sets names and rings beside the walls of a plan, each as near as can be to the place that it belongs to. */
final class BesideWalls {
    private static final double STEP = 0.08;

    /** Far enough to come past any wall and ring; a name farther off needs a leader to belong to something. */
    private static final int NEAR = 12;

    private static final int FAR = 72;

    /** A name moved no farther than this from its own place needs no leader, in. */
    static final double UNLED = (NEAR + 1) * STEP;

    /** Going aside is the lesser evil: the name still stands by its wall. */
    private static final double ASIDE = 0.7;

    private final Clearances clearances;

    /** @param drawn the walls and the wood, which names keep clear of */
    BesideWalls(List<SceneItem> drawn) {
        this.clearances = Clearances.of(drawn);
    }

    /**
     * Where something belongs.
     *
     * @param seen the place from which it is to be seen
     * @param end of its leader
     * @param unled how far it may be moved from its own place without one, in; below 0: it always has one
     */
    record Home(Point seen, Point end, double unled) {}

    /** What found its place, and the leader to it from where it belongs when it is far off. */
    record Taken<T>(T what, List<SceneItem> leader) {
        Taken {
            leader = List.copyOf(leader);
        }
    }

    /** A place that is tried; one far off needs a leader. */
    private record Try<T>(T what, double cost, boolean far) {}

    /**
     * Takes the first place that is free and seen from where it belongs; where none is, the first free one farther off.
     *
     * @param at the ways to set it after a move from its own place; at least one
     * @param moves along the wall and away from it, from {@link #moves}
     */
    <T> Taken<T> take(Home home, List<Point> moves, Function<Point, List<T>> at, Function<T, Box> box) {
        List<Try<T>> tries = new ArrayList<>();
        for (Point move : moves) {
            at.apply(move).forEach(what -> tries.add(new Try<>(what, tries.size(), move.length() > home.unled())));
        }
        Try<T> chosen = BestPlace.<Try<T>, Try<T>>among(
                        tries, Double.MAX_VALUE, Try::cost, (one, known) -> free(one, home, box))
                .map(BestPlace::place)
                .orElse(tries.get(0));
        clearances.addText(box.apply(chosen.what()));
        if (!chosen.far()) {
            return new Taken<>(chosen.what(), List.of());
        }
        Line leader = Leaders.to(box.apply(chosen.what()), home.end());
        clearances.addLine(leader);
        return new Taken<>(chosen.what(), Leaders.drawn(leader));
    }

    /** Takes a place if it is free. */
    boolean takes(Box place) {
        boolean free = clearances.takesText(place);
        if (free) {
            clearances.addText(place);
        }
        return free;
    }

    private <T> Optional<BestPlace<Try<T>>> free(Try<T> one, Home home, Function<T, Box> box) {
        Box place = box.apply(one.what());
        boolean good = clearances.takesText(place)
                && (one.far() ? takes(Leaders.to(place, home.end())) : clearances.isSeen(home.seen(), place));
        return good ? Optional.of(new BestPlace<>(one, one.cost())) : Optional.empty();
    }

    private boolean takes(Line leader) {
        return clearances.takesLine(leader) && clearances.crossedLines(leader) == 0;
    }

    /** Ways to move from a place, the least first: away from the wall, and to both sides along it. */
    static List<Point> moves(Point along, Point away) {
        record Move(int aside, int off) {
            double far() {
                return ASIDE * Math.abs(aside) + off;
            }
        }
        Stream<Move> near = IntStream.rangeClosed(-NEAR, NEAR)
                .boxed()
                .flatMap(aside -> IntStream.rangeClosed(0, NEAR).mapToObj(off -> new Move(aside, off)))
                .sorted(Comparator.comparingDouble(Move::far).thenComparingInt(Move::aside));
        // farther off every third step is enough
        Stream<Move> far = IntStream.rangeClosed(-FAR / 3, FAR / 3)
                .boxed()
                .flatMap(
                        aside -> IntStream.rangeClosed(-FAR / 3, FAR / 3).mapToObj(off -> new Move(3 * aside, 3 * off)))
                .filter(move -> Math.hypot(move.aside(), move.off()) > NEAR * Math.sqrt(2) + 1)
                .sorted(Comparator.comparingDouble((Move move) -> Math.hypot(move.aside(), move.off()))
                        .thenComparingInt(Move::aside));
        return Stream.concat(near, far)
                .map(move -> along.times(STEP * move.aside()).plus(away.times(STEP * move.off())))
                .toList();
    }
}
