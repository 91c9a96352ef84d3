package buildup.cli.drawing.job;

import buildup.cli.table.Table;
import buildup.cli.table.TableCell;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.section.compose.Body;
import buildup.engine.section.compose.Reveal;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The pieces as they are read at the wall: from below up, with heights, reveals, wood and nails. */
record PieceHeights(Section section, List<Fixed> fixed, FigurePrinter printer) {
    private static final String BEYOND = "-";

    List<Table> tables() {
        List<Integer> upward = IntStream.range(0, section.bodies().size())
                .filter(number -> section.body(number).piece())
                .boxed()
                .sorted(Comparator.comparingDouble(
                                (Integer number) -> box(number).bottom())
                        .thenComparingDouble(number -> box(number).back()))
                .toList();
        return List.of(places(upward), makings(upward));
    }

    private Table places(List<Integer> upward) {
        OptionalDouble floor = section.stack().space().floor();
        return new Table(
                "Where the pieces sit, from below up; heights are of the lower and the upper edge, back and front from the wall"
                        + " plane",
                Table.columns(
                        "",
                        "piece",
                        ">size",
                        ">bottom",
                        ">top",
                        ">bottom over floor",
                        ">top over floor",
                        ">back",
                        ">front"),
                upward.stream()
                        .map(number -> {
                            Box box = box(number);
                            return cells(
                                    Section.letter(number),
                                    section.name(number),
                                    size(section.body(number)),
                                    length(box.bottom()),
                                    length(box.top()),
                                    floor.isPresent() ? length(box.bottom() - floor.getAsDouble()) : BEYOND,
                                    floor.isPresent() ? length(box.top() - floor.getAsDouble()) : BEYOND,
                                    length(box.back()),
                                    length(box.face()));
                        })
                        .toList());
    }

    private Table makings(List<Integer> upward) {
        return new Table(
                "What they are, what they show, where they are fixed",
                Table.columns("", "piece", "profile", "wood", "shows", "fixed with"),
                upward.stream()
                        .map(number -> cells(
                                Section.letter(number),
                                section.name(number),
                                section.body(number)
                                        .placed()
                                        .orElseThrow()
                                        .piece()
                                        .stock()
                                        .name(),
                                section.body(number)
                                        .placed()
                                        .orElseThrow()
                                        .piece()
                                        .wood()
                                        .name(),
                                shows(number),
                                nails(number)))
                        .toList());
    }

    private static List<TableCell> cells(String... texts) {
        List<TableCell> cells = new ArrayList<>();
        for (String text : texts) {
            cells.add(TableCell.of(text));
        }
        return cells;
    }

    private Box box(int number) {
        return section.body(number).outline().box();
    }

    private String length(double inches) {
        return printer.bare(Figure.length(inches));
    }

    /** Nobody cuts what stands there already. */
    private String size(Body body) {
        return body.framing()
                ? "stands"
                : body.placed()
                        .map(placed -> length(placed.blankThickness()) + " x " + length(placed.blankWidth()))
                        .orElse("");
    }

    private String shows(int number) {
        return section.reveals().stream()
                .filter(reveal -> reveal.piece() == number)
                .map(this::shows)
                .collect(Collectors.joining("; "));
    }

    private String shows(Reveal reveal) {
        return length(reveal.amount()) + " past " + section.name(reveal.over());
    }

    private String nails(int number) {
        return fixed.stream()
                .filter(nail -> nail.piece() == number)
                .map(nail -> nail.fastening().name() + ", "
                        + printer.print(nail.fastening().use().phrase()) + ", "
                        + length(nail.head().x()) + " out, "
                        + length(nail.head().y()) + " up")
                .collect(Collectors.joining("; "));
    }
}
