package buildup.engine.judge.clearance;

import buildup.engine.section.compose.Mending;
import buildup.engine.section.compose.Section;
import buildup.engine.section.stack.Axis;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Cure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Ways to bring a piece out of the clearances of all rules at once. Each is tried on the stack before it is told. */
final class FireCures {
    /** What has to remain of a board that is ripped, in: less is no board; shop practice. */
    private static final double LEAST_BOARD = 1;

    private final Section section;
    private final Firebox firebox;
    private final List<FireRow> before;

    FireCures(Section section, Firebox firebox, List<FireRow> before) {
        this.section = section;
        this.firebox = firebox;
        this.before = before;
    }

    private record Way(Phrase words, Optional<Mending> mending) {}

    /** @param wrong the rows in which the piece does not keep its rules */
    Cure of(String piece, List<FireRow> wrong) {
        FireRow first = wrong.get(0);
        OptionalDouble raise = raise(wrong);
        Phrase farther = raise.isPresent()
                ? ClearanceNotices.FARTHER.with("by", Figure.atLeast(raise.getAsDouble()))
                : ClearanceNotices.LESS_DEEP;
        if (!first.ofStack()) {
            return Cure.of(farther);
        }
        List<Cure> cures = ways(piece, raise, back(wrong))
                .filter(way -> way.mending()
                        .flatMap(Mending::section)
                        .filter(after -> clears(piece, after) && Carried.asBefore(section, after))
                        .isPresent())
                .map(way -> new Cure(way.words(), way.mending().orElseThrow().changes()))
                .toList();
        return cures.isEmpty() ? Cure.of(farther) : cures.get(0).or(cures.subList(1, cures.size()));
    }

    /** How far it has to go up for all rules; absent when no height is enough. */
    private static OptionalDouble raise(List<FireRow> wrong) {
        double most = 0;
        for (FireRow row : wrong) {
            if (row.spare().isEmpty()) {
                return OptionalDouble.empty();
            }
            // where just so much is not enough, a saw's cut more is
            most = Math.max(most, -row.spare().getAsDouble() + (row.past() ? Tolerance.SAW_CUT : 0));
        }
        return OptionalDouble.of(most);
    }

    private static double back(List<FireRow> wrong) {
        return wrong.stream().mapToDouble(row -> -row.margin().orElse(0)).max().orElse(0);
    }

    private Stream<Way> ways(String piece, OptionalDouble raise, double back) {
        Mending asDrawn = Mending.of(section.stack());
        Box box = section.pieces().stream()
                .filter(body -> body.name().equals(piece))
                .findFirst()
                .orElseThrow()
                .outline()
                .box();
        Figure off = Figure.atLeast(back);
        Stream<Way> level = box.width() - back < LEAST_BOARD / 2
                ? Stream.of()
                : Stream.of(
                        new Way(
                                ClearanceNotices.RIP_FACE.with("by", off),
                                asDrawn.ripped(piece, Axis.OUT, true, back, off)),
                        new Way(
                                ClearanceNotices.LESS_WIDE.with("size", Figure.atMost(box.width() - back)),
                                asDrawn.wide(piece, box.width() - back, Figure.atMost(box.width() - back))));
        if (raise.isEmpty()) {
            return level;
        }
        double by = raise.getAsDouble();
        Figure up = Figure.atLeast(by);
        Stream<Way> shorter = box.height() - by < LEAST_BOARD
                ? Stream.of()
                : Stream.of(
                        new Way(
                                ClearanceNotices.RIP_BOTTOM.with("by", up),
                                asDrawn.ripped(piece, Axis.UP, false, by, up)),
                        new Way(
                                ClearanceNotices.LESS_HIGH.with("size", Figure.atMost(box.height() - by)),
                                asDrawn.wide(piece, box.height() - by, Figure.atMost(box.height() - by))));
        double whole = raise(before.stream()
                        .filter(row -> row.ofStack() && !row.clear())
                        .toList())
                .orElse(by);
        Stream<Way> higher = Stream.of(
                new Way(ClearanceNotices.RAISE.with("by", up), asDrawn.moved(piece, Axis.UP, by, up)),
                new Way(
                        ClearanceNotices.RAISE_ALL.with("by", Figure.atLeast(whole)),
                        asDrawn.wholeMoved(Axis.UP, whole, Figure.atLeast(whole))));
        return Stream.of(shorter, higher, level).flatMap(all -> all);
    }

    /** Whether the piece keeps all rules afterwards, and no piece leaves one that kept it before. */
    private boolean clears(String piece, Section after) {
        return FireRows.of(after, firebox).stream()
                .filter(row -> !row.clear())
                .allMatch(row -> !row.piece().equals(piece)
                        && before.stream()
                                .anyMatch(was -> !was.clear()
                                        && was.piece().equals(row.piece())
                                        && was.rule().equals(row.rule())));
    }
}
