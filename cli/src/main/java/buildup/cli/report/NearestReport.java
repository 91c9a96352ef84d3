package buildup.cli.report;

import buildup.cli.table.Cell;
import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.cli.tell.Json;
import buildup.engine.mill.nearest.Advice;
import buildup.engine.mill.nearest.Neighbour;
import buildup.engine.mill.nearest.Neighbours;
import buildup.engine.mill.nearest.Wording;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The profiles that come nearest to one, and what to do with each. */
public final class NearestReport {
    private static final String LEGEND =
            "Area between: what lies in one of the two alone. Largest gap: the farthest that a point of either outline"
                    + " lies from the other. Sides are those of the profile as the catalog draws it. A sprung molding is"
                    + " compared as it is run, flat on its back. Boards are left out. Sizes in decimal inches.";

    private NearestReport() {}

    /** As text of at most 80 columns. */
    public static String text(String name, Neighbours nearest) {
        StringBuilder text = new StringBuilder();
        lines(text, FigurePrinter.INCHES.print(Wording.answer(nearest)));
        text.append('\n');
        text.append(TextTable.write(table(name, nearest), TextReport.WIDTH)).append('\n');
        lines(text, LEGEND);
        return text.toString();
    }

    private static void lines(StringBuilder text, String sentence) {
        Display.wrap(sentence, TextReport.WIDTH)
                .forEach(line -> text.append(line).append('\n'));
    }

    /** As an object; inches, square inches, degrees, points as {@code [x, y]}. */
    public static String json(String name, Neighbours nearest, List<Notice> notices) {
        return new Json()
                        .put("name", name)
                        .put("answer", FigurePrinter.INCHES.print(Wording.answer(nearest)))
                        .put("use", nearest.use().map(one -> one.profile().name()))
                        .put(
                                "nearest",
                                nearest.list().stream().map(NearestReport::row).toList())
                        .put("notices", JsonReport.notices(notices, Optional.empty(), LengthUnit.INCH))
                        .written()
                + "\n";
    }

    private static Json row(Neighbour one) {
        return new Json()
                .put("profile", one.profile().name())
                .put("kind", one.profile().kind())
                .put("over", one.pose().over())
                .put("turn", one.pose().turn())
                .put("scale", one.pose().scale())
                .put("areaBetween", one.apart())
                .put("gap", one.gap())
                .put("gapAt", one.gapAt())
                .put("advice", advice(one.advice()))
                .put("sentence", FigurePrinter.INCHES.print(Wording.sentence(one.advice())));
    }

    private static Json advice(Advice advice) {
        if (advice instanceof Advice.AsItIs asItIs) {
            return new Json().put("do", "as-it-is").put("off", asItIs.off());
        }
        if (advice instanceof Advice.Plane plane) {
            return new Json()
                    .put("do", "plane")
                    .put(
                            "cuts",
                            plane.cuts().stream()
                                    .map(cut ->
                                            new Json().put("side", side(cut)).put("amount", cut.amount()))
                                    .toList())
                    .put("off", plane.off());
        }
        if (advice instanceof Advice.Covers covers) {
            return new Json()
                    .put("do", "run")
                    .put("area", covers.area())
                    .put("deepest", covers.deepest())
                    .put("at", covers.at());
        }
        Advice.TooSmall small = (Advice.TooSmall) advice;
        return new Json().put("do", "leave").put("tooSmallBy", small.by()).put("at", small.at());
    }

    private static Table table(String name, Neighbours nearest) {
        return new Table(
                "NEAREST to " + name,
                Table.columns("profile", "laid", ">area between, sq in", ">largest gap", "what to do"),
                nearest.list().stream()
                        .map(one -> List.of(
                                Cell.of(one.profile().name()),
                                Cell.of(FigurePrinter.INCHES.print(Wording.laid(one.pose()))),
                                Printed.figure(one.apart(), 4),
                                Printed.figure(one.gap(), 3),
                                Cell.of(FigurePrinter.INCHES.print(Wording.sentence(one.advice())))))
                        .toList());
    }

    private static String side(Advice.Off cut) {
        return cut.side().name().toLowerCase(Locale.ROOT);
    }
}
