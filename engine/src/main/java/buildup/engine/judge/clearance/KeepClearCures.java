package buildup.engine.judge.clearance;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Mending;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Cure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Ways to bring a piece out of a place that is kept clear. Each is tried on the stack before it is told. */
final class KeepClearCures {
    /** What has to remain of a board that is ripped, in: less is no board; shop practice. */
    private static final double LEAST_BOARD = 1;

    /** Farther away trim is another design, in: common practice, no source. */
    private static final double FARTHEST = 6;

    private KeepClearCures() {}

    /** @param by how far something goes, in */
    private record Way(Phrase words, double by, Optional<Mending> mending) {}

    static Cure of(Section section, KeepClearRow row, List<KeepClear> places) {
        KeepClear place = row.place();
        Outline outline = section.body(row.body()).outline();
        String piece = section.name(row.body());
        Stream<Way> moves = Stream.of(moved(section, row, true), moved(section, row, false))
                .flatMap(ways -> ways)
                .sorted(Comparator.comparingDouble(Way::by));
        List<Cure> cures = Stream.of(back(section, row), moves)
                .flatMap(all -> all)
                .filter(way -> way.mending()
                        .flatMap(Mending::section)
                        .filter(after ->
                                after.overlaps().size() <= section.overlaps().size())
                        .filter(after -> clears(after, piece, place, section, places))
                        .filter(after -> Carried.asBefore(section, after))
                        .isPresent())
                .map(way -> new Cure(way.words(), way.mending().orElseThrow().changes()))
                .toList();
        Cure byHand = Cure.of(byHand(place, outline, Figure.atLeast(-row.margin())));
        return cures.isEmpty()
                ? byHand
                : cures.get(0)
                        .or(Stream.concat(cures.stream().skip(1), Stream.of(byHand))
                                .toList());
    }

    /** What a person can do where nothing in the section helps; never a move into the wall. */
    private static Phrase byHand(KeepClear place, Outline outline, Figure missing) {
        return switch (place.kind()) {
            case DOOR -> ClearanceNotices.END_BEFORE_DOOR;
            case SIDE_WALL -> ClearanceNotices.END_BEFORE_WALL.with("by", missing);
            case SHADE ->
                ClearanceNotices.HANG_FARTHER.with(
                        "by",
                        Figure.atLeast(outline.box().face()
                                + place.clear()
                                - place.region().back()));
            case BOX, SPRINKLER -> ClearanceNotices.END_BEFORE;
        };
    }

    /** Less deep, or as a whole nearer to the wall. */
    private static Stream<Way> back(Section section, KeepClearRow row) {
        Outline outline = section.body(row.body()).outline();
        Optional<Double> least = least(List.of(outline), row.place(), new Point(-1, 0));
        if (least.isEmpty()) {
            return Stream.empty();
        }
        double by = least.get();
        Figure told = Figure.atLeast(by);
        double left = outline.box().width() - by;
        String piece = section.name(row.body());
        Mending asDrawn = Mending.of(section.stack());
        Stream<Way> less = left < LEAST_BOARD
                ? Stream.of()
                : Stream.of(
                        new Way(
                                ClearanceNotices.RIP_FACE.with("by", told),
                                by,
                                asDrawn.ripped(piece, Axis.OUT, true, by, told)),
                        new Way(
                                ClearanceNotices.LESS_WIDE.with("size", Figure.atMost(left)),
                                by,
                                asDrawn.wide(piece, left, Figure.atMost(left))));
        Way back = new Way(ClearanceNotices.MOVE_BACK.with("by", told), by, asDrawn.moved(piece, Axis.OUT, -by, told));
        return Stream.concat(less, Stream.of(back));
    }

    /** The piece alone, then the whole stack, by as little as is enough. */
    private static Stream<Way> moved(Section section, KeepClearRow row, boolean up) {
        double sign = up ? 1 : -1;
        Point way = new Point(0, sign);
        Mending asDrawn = Mending.of(section.stack());
        Optional<Way> alone = least(List.of(section.body(row.body()).outline()), row.place(), way)
                .map(by -> new Way(
                        (up ? ClearanceNotices.MOVE_UP : ClearanceNotices.MOVE_DOWN).with("by", Figure.atLeast(by)),
                        by,
                        asDrawn.moved(section.name(row.body()), Axis.UP, sign * by, Figure.atLeast(by))));
        List<Outline> all = section.bodies().stream()
                .filter(Body::inStack)
                .map(Body::outline)
                .toList();
        Optional<Way> whole = least(all, row.place(), way)
                .map(by -> new Way(
                        (up ? ClearanceNotices.STACK_UP : ClearanceNotices.STACK_DOWN).with("by", Figure.atLeast(by)),
                        by,
                        asDrawn.wholeMoved(Axis.UP, sign * by, Figure.atLeast(by))));
        return Stream.of(alone, whole).flatMap(Optional::stream);
    }

    /** How far some outlines have to go that way to be clear of a place, in; nothing when it is too far or has no end. */
    private static Optional<Double> least(List<Outline> outlines, KeepClear place, Point way) {
        if (!clear(outlines, place, way.times(FARTHEST))) {
            return Optional.empty();
        }
        double near = 0;
        double enough = FARTHEST;
        while (enough - near > Tolerance.COINCIDENT) {
            double middle = (near + enough) / 2;
            if (clear(outlines, place, way.times(middle))) {
                enough = middle;
            } else {
                near = middle;
            }
        }
        return Optional.of(enough);
    }

    private static boolean clear(List<Outline> outlines, KeepClear place, Point by) {
        return outlines.stream()
                .allMatch(outline -> KeepClearRows.air(outline.moved(Motion.shift(by.x(), by.y())), place)
                        >= place.clear() - Tolerance.SAME_SIZE);
    }

    /** Whether the piece is out of the place, and none has come too near one that it was clear of. */
    private static boolean clears(
            Section after, String piece, KeepClear place, Section before, List<KeepClear> places) {
        List<KeepClearRow> was = KeepClearRows.of(before, places).stream()
                .filter(KeepClearRows::tooNear)
                .toList();
        return KeepClearRows.of(after, places).stream()
                .filter(KeepClearRows::tooNear)
                .allMatch(still -> !(still.place().equals(place)
                                && after.name(still.body()).equals(piece))
                        && was.stream()
                                .anyMatch(one -> one.place().equals(still.place())
                                        && before.name(one.body()).equals(after.name(still.body()))));
    }
}
