package buildup.engine.hold.backing;

import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A nailer between a piece and what stands behind it, as a way out: in words, and as a piece added to the document. */
public final class Packing {
    /** Deeper than this it is no packing but another part of the case, in: common practice, no source. */
    private static final double DEEPEST = 6;

    /** As high as blocking is cut, in: common practice, no source. */
    private static final double HIGH = 1.5;

    private Packing() {}

    /** Nailers that would fill the air behind a piece, at its top and over its whole height. */
    public static Stream<Cure> behind(Section section, int piece) {
        Box box = section.body(piece).outline().box();
        return Stream.of(Math.min(HIGH, box.height()), box.height())
                .distinct()
                .flatMap(height -> behind(section, piece, box, height).stream());
    }

    private static Optional<Cure> behind(Section section, int piece, Box box, double height) {
        Optional<Integer> next = IntStream.range(0, section.bodies().size())
                .filter(body ->
                        body != piece && reaches(section.body(body).outline().box(), box, height))
                .boxed()
                .max(Comparator.comparingDouble(body -> face(section.body(body))));
        return next.filter(body -> section.body(body).standing())
                .filter(body -> box.back() - face(section.body(body)) > Tolerance.TOUCHING)
                .filter(body -> box.back() - face(section.body(body)) <= DEEPEST)
                .map(body -> cure(section, piece, section.body(body), height));
    }

    /** Whether a body stands behind the upper part of a piece. */
    private static boolean reaches(Box body, Box piece, double height) {
        return body.face() <= piece.back() + Tolerance.TOUCHING
                && body.top() > piece.top() - height + Tolerance.TOUCHING
                && body.bottom() < piece.top() - Tolerance.TOUCHING;
    }

    private static double face(Body body) {
        return body.outline().box().face();
    }

    private static Cure cure(Section section, int piece, Body behind, double height) {
        String name = section.name(piece);
        String block = "block behind " + name;
        String place = "pieces." + block + ".";
        double depth = section.body(piece).outline().box().back() - face(behind);
        return new Cure(
                Phrase.of(
                                "Add a nailer {depth} x {height} between '{piece}' and '{behind}', its top level with the piece.")
                        .with("depth", Figure.atLeast(depth))
                        .with("height", Figure.atLeast(height))
                        .with("behind", behind.name())
                        .with("piece", name),
                List.of(
                        Change.entry("pieces", piece + 1, block),
                        new Change(place + "kind", Phrase.of("nailer")),
                        new Change(
                                place + "profile",
                                Phrase.of("board {depth} x {height}")
                                        .with("depth", Figure.atLeast(depth))
                                        .with("height", Figure.atLeast(height))),
                        new Change(
                                place + "back",
                                behind.piece()
                                        ? Phrase.of("{behind}.face").with("behind", behind.name())
                                        : Phrase.of("wall")),
                        new Change(place + "face", Phrase.of("{piece}.back").with("piece", name)),
                        new Change(place + "top", Phrase.of("{piece}.top").with("piece", name))));
    }
}
