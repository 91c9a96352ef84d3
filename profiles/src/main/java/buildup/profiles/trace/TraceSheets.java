package buildup.profiles.trace;

import buildup.profiles.ProfileSheets;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A tracing as sheets: the profile that it has become, and how well it fits. */
public final class TraceSheets {
    /** As a tracing is judged by, finer than steel is ground. */
    private static final Rounding FINER = Rounding.decimals(4);

    private static final Phrase WHERE = Phrase.of("{out} out, {up} up");

    /** The profile, as a catalog of one's own calls it, and the words that draw it. */
    public record Named(String name, String kind, Traced traced, List<String> words, List<String> back) {
        /** Copies the lists. */
        public Named {
            words = List.copyOf(words);
            back = List.copyOf(back);
        }
    }

    /** One stroke with how well it fits. */
    private record Member(Traced.Fit fit, Segment segment) {}

    private TraceSheets() {}

    /**
     * Its sheets.
     *
     * @param traced absent for the columns alone
     */
    public static List<Sheet> of(Optional<Named> traced) {
        return List.of(facts(traced), members(traced), words(traced));
    }

    private static Sheet facts(Optional<Named> traced) {
        return Sheet.single("", traced.map(Named::name).orElse(""), traced)
                .words("name", "name", Named::name)
                .json()
                .words("kind", "kind", Named::kind)
                .length(
                        "projection",
                        "projection",
                        one -> one.traced().outline().box().width())
                .length("height", "height", one -> one.traced().outline().box().height())
                .measure(
                        "area",
                        "area",
                        Quantity.AREA,
                        Rounding.decimals(3),
                        one -> one.traced().outline().area())
                .count("points", "points", one -> one.traced().points().size())
                .measure(
                        "largest",
                        "largest deviation",
                        Quantity.LENGTH,
                        FINER,
                        one -> one.traced().largest())
                .place(
                        "at",
                        "where it is",
                        one -> one.traced().farthest().x(),
                        one -> one.traced().farthest().y())
                .json()
                .saying(
                        "where",
                        "where it is",
                        one -> WHERE.with(
                                        "out",
                                        Figure.fine(one.traced().farthest().x()))
                                .with("up", Figure.fine(one.traced().farthest().y())))
                .measure(
                        "rms",
                        "root mean square",
                        Quantity.LENGTH,
                        FINER,
                        one -> one.traced().rms())
                .measure(
                        "noise",
                        "scatter of the points",
                        Quantity.LENGTH,
                        FINER,
                        one -> one.traced().noise().scatter())
                .sheet();
    }

    private static Sheet members(Optional<Named> traced) {
        List<Member> rows = traced.map(Named::traced)
                .map(found -> IntStream.range(0, found.members().size())
                        .mapToObj(i -> new Member(
                                found.members().get(i),
                                found.outline().strokes().get(i).segment()))
                        .toList())
                .orElse(List.of());
        return Sheet.of("members", "MEMBERS, with the points that lie nearest to each and how far off they lie", rows)
                .name("member", "member", row -> row.fit().member())
                .words("shape", "shape", row -> ProfileSheets.shape(row.segment()))
                .lengthIf("radius", "radius", row -> ProfileSheets.radius(row.segment()))
                .length("length", "length", row -> row.segment().length())
                .place(
                        "from",
                        "from",
                        row -> row.segment().from().x(),
                        row -> row.segment().from().y())
                .place(
                        "to",
                        "to",
                        row -> row.segment().to().x(),
                        row -> row.segment().to().y())
                .count("points", "points", row -> row.fit().points())
                .measure(
                        "largest",
                        "largest",
                        Quantity.LENGTH,
                        FINER,
                        row -> row.fit().largest())
                .measure("rms", "rms", Quantity.LENGTH, FINER, row -> row.fit().rms())
                .table(
                        "MEMBERS, with the points that lie nearest to each and how far off they lie",
                        "member",
                        "shape",
                        "radius",
                        "length",
                        "points",
                        "largest",
                        "rms")
                .sheet();
    }

    private static Sheet words(Optional<Named> traced) {
        return Sheet.single("", "PROFILE WORDS", traced)
                .names("words", "walk", Named::words)
                .names("back", "back", Named::back)
                .sheet();
    }
}
