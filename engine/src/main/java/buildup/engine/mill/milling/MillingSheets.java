package buildup.engine.mill.milling;

import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How a profile is cut, as sheets; places are on the stick as it is run. */
public final class MillingSheets {
    /** No round cutter is smaller, radius, in. */
    private static final double LEAST_CUTTER = 1.0 / 64;

    private MillingSheets() {}

    /**
     * All that is known, in the order of a report.
     *
     * @param milled absent for the columns alone
     */
    public static List<Sheet> of(Optional<Milled> milled) {
        List<Sheet> sheets = new ArrayList<>(List.of(
                sides(milled), reach(milled), undercuts(milled), corners(milled), hollows(milled), grooves(milled)));
        sheets.addAll(PassSheets.of(milled));
        sheets.addAll(HeadSheets.of(milled));
        return List.copyOf(sheets);
    }

    static <T> List<T> all(Optional<Milled> milled, Function<Milled, List<T>> rows) {
        return milled.map(rows).orElse(List.of());
    }

    private static Sheet sides(Optional<Milled> milled) {
        String title = "MILLING, the stick square to the heads, its back toward the inside head";
        Columns<Milled> columns = Sheet.single("milling", title, milled)
                .length("width", "width", one -> one.stick().box().width())
                .json()
                .length("height", "height", one -> one.stick().box().height())
                .json()
                .wordsIf(
                        "plain",
                        "milled",
                        one -> one.isPlain() ? Optional.of("S4S; no profile to cut.") : Optional.empty())
                .text();
        for (Side side : milled.map(Milled::sides).orElse(Side.SQUARE)) {
            columns.wordsIf(
                            "by-" + side.word(),
                            "reached by the " + side.word() + " head",
                            one -> Optional.of(members(one, side)))
                    .text();
        }
        return columns.wordsIf("by-none", "reached by no head", one -> Optional.of(unreached(one)))
                .text()
                .sayingIf(
                        "needs",
                        "passes",
                        one -> one.isPlain() ? Optional.empty() : one.passes().map(PassSheets::needs))
                .sheet();
    }

    /** Members reached from a side, those in part marked; planed ones are no question. */
    private static String members(Milled milled, Side side) {
        Set<String> words = new LinkedHashSet<>();
        for (String member : milled.stick().outline().members()) {
            List<Reached> parts = milled.reached().stream()
                    .filter(part ->
                            part.member().equals(member) && !milled.stick().isPlaned(part.segment()))
                    .toList();
            long seen =
                    parts.stream().filter(part -> part.sides().contains(side)).count();
            if (seen > 0) {
                words.add(seen == parts.size() ? member : member + " (part)");
            }
        }
        return String.join(", ", words);
    }

    private static String unreached(Milled milled) {
        return milled.reached().stream()
                .filter(part -> part.sides().isEmpty())
                .map(Reached::member)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static Sheet reach(Optional<Milled> milled) {
        return Sheet.of(
                        "milling.reach",
                        "The outline in walking order, and the heads that reach it",
                        all(milled, Milled::reached))
                .name("member", "member", Reached::member)
                .place(
                        "from",
                        "from",
                        part -> part.segment().from().x(),
                        part -> part.segment().from().y())
                .place(
                        "to",
                        "to",
                        part -> part.segment().to().x(),
                        part -> part.segment().to().y())
                .names("sides", "heads that reach it", part -> words(part.sides()))
                .silent()
                .sheet();
    }

    private static List<String> words(List<Side> sides) {
        return sides.stream().map(Side::word).toList();
    }

    private static Sheet undercuts(Optional<Milled> milled) {
        return Sheet.of(
                        "milling.undercuts",
                        "Lines that the outside head does not reach",
                        all(milled, Milled::undercuts))
                .place(
                        "from",
                        "from",
                        undercut -> undercut.from().x(),
                        undercut -> undercut.from().y())
                .place(
                        "to",
                        "to",
                        undercut -> undercut.to().x(),
                        undercut -> undercut.to().y())
                .measure("area", "air that the wood hides", Quantity.AREA, Undercut::area)
                .names("passes", "heads that reach it together", undercut -> words(undercut.passes()))
                .measureIf(
                        "tilt",
                        "tilt that reaches it",
                        Quantity.ANGLE,
                        Rounding.NEAREST,
                        undercut -> undercut.tilt()
                                .map(tilt -> OptionalDouble.of(tilt.degrees()))
                                .orElse(OptionalDouble.empty()))
                .silent()
                .sheet();
    }

    private static Sheet corners(Optional<Milled> milled) {
        return Sheet.of("milling.corners", "Sharp inside corners", all(milled, Milled::corners))
                .place(
                        "at",
                        "at",
                        corner -> corner.at().x(),
                        corner -> corner.at().y())
                .measure("angle", "angle through the air", Quantity.ANGLE, SharpCorner::degrees)
                .length("radius", "radius that the cutter leaves", SharpCorner::radius)
                .measure("left", "wood that the cutter leaves", Quantity.AREA, SharpCorner::left)
                .silent()
                .sheet();
    }

    private static Sheet hollows(Optional<Milled> milled) {
        String title = "HOLLOWS, and the largest round cutter that follows each";
        return Sheet.of("milling.hollows", title, all(milled, Milled::hollows))
                .name("member", "member", Hollow::member)
                .length("radius", "radius", Hollow::radius)
                .length("largestCutter", "largest cutter, radius", Hollow::largest)
                .json()
                .lengthIf(
                        "cutter",
                        "largest cutter, radius",
                        hollow -> hollow.largest() > LEAST_CUTTER
                                ? OptionalDouble.of(hollow.largest())
                                : OptionalDouble.empty())
                .text()
                .wordsIf(
                        "none",
                        "",
                        hollow -> hollow.largest() > LEAST_CUTTER ? Optional.empty() : Optional.of("no cutter"))
                .text()
                .sheet();
    }

    private static Sheet grooves(Optional<Milled> milled) {
        return Sheet.of("milling.grooves", "Square grooves", all(milled, Milled::grooves))
                .name("member", "floor", Groove::member)
                .length("width", "width", Groove::width)
                .length("depth", "depth", Groove::depth)
                .length("behind", "wood behind it", Groove::behind)
                .length("beside", "least wood outside it", Groove::beside)
                .silent()
                .sheet();
    }
}
