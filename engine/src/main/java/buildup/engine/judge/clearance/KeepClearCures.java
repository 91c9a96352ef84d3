package buildup.engine.judge.clearance;

import buildup.engine.section.compose.Mending;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Box;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Cure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Ways to bring a piece out of a place that is kept clear. Each is tried on the stack before it is told. */
final class KeepClearCures {
    /** What has to remain of a board that is ripped, in: less is no board; shop practice. */
    private static final double LEAST_BOARD = 1;

    private KeepClearCures() {}

    private record Way(Phrase words, Optional<Mending> mending) {}

    static Cure of(Section section, KeepClearRow row, List<KeepClear> places) {
        double by = -row.margin();
        Figure told = Figure.atLeast(by);
        String piece = section.name(row.body());
        Box box = section.body(row.body()).outline().box();
        Mending asDrawn = Mending.of(section.stack());
        Figure left = Figure.atMost(box.width() - by);
        boolean rips = box.width() - by >= LEAST_BOARD;
        Stream<Way> ripped = rips
                ? Stream.of(
                        new Way(
                                ClearanceNotices.RIP_FACE.with("by", told),
                                asDrawn.ripped(piece, Axis.OUT, true, by, told)),
                        new Way(
                                ClearanceNotices.LESS_WIDE.with("size", left),
                                asDrawn.wide(piece, box.width() - by, left)))
                : Stream.of();
        Stream<Way> moved = Stream.of(
                new Way(ClearanceNotices.MOVE_BACK.with("by", told), asDrawn.moved(piece, Axis.OUT, -by, told)),
                new Way(ClearanceNotices.MOVE_UP.with("by", told), asDrawn.moved(piece, Axis.UP, by, told)),
                new Way(ClearanceNotices.MOVE_DOWN.with("by", told), asDrawn.moved(piece, Axis.UP, -by, told)));
        List<Cure> cures = Stream.concat(ripped, moved)
                .filter(way -> way.mending()
                        .flatMap(Mending::section)
                        .filter(after ->
                                after.overlaps().size() <= section.overlaps().size())
                        .filter(after -> clears(after, piece, row, places))
                        .isPresent())
                .map(way -> new Cure(way.words(), way.mending().orElseThrow().changes()))
                .toList();
        return cures.isEmpty()
                ? Cure.of(ClearanceNotices.KEEP_OUT.with("by", told))
                : cures.get(0).or(cures.subList(1, cures.size()));
    }

    private static boolean clears(Section after, String piece, KeepClearRow row, List<KeepClear> places) {
        return KeepClearRows.of(after, places).stream()
                .filter(KeepClearRows::tooNear)
                .noneMatch(still -> still.place().equals(row.place())
                        && after.name(still.body()).equals(piece));
    }
}
