package buildup.cli.tell;

import buildup.cli.table.Table;
import buildup.cli.table.Table.Align;
import buildup.cli.table.TableCell;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Cells of a sheet as cells of a table; a point takes two of them.
 *
 * @param printer in the unit of the document
 */
record Cells(FigurePrinter printer) {
    /** Between the numbers of one size, which stay in one line. */
    private static final String BY = "\u00A0x\u00A0";

    /** The columns of a table; a second place says which it is. */
    List<Table.TextColumn> columns(List<Column> all) {
        List<Table.TextColumn> columns = new ArrayList<>();
        boolean second = false;
        for (Column column : all) {
            String which = second && column.type() instanceof Type.Place ? column.heading() + " " : "";
            columns(column)
                    .map(one -> new Table.TextColumn(which + one.heading(), one.align(), one.unit()))
                    .forEach(columns::add);
            second |= column.type() instanceof Type.Place;
        }
        return columns;
    }

    /** The columns of a table for one of a sheet. */
    Stream<Table.TextColumn> columns(Column column) {
        if (column.type() instanceof Type.Place) {
            return Stream.of("out", "up").map(way -> new Table.TextColumn(way, Align.RIGHT, unit(Quantity.LENGTH)));
        }
        if (column.type() instanceof Type.Measure measure) {
            return Stream.of(measured(column.heading(), measure.quantity()));
        }
        boolean number = column.type() instanceof Type.Amount;
        return Stream.of(new Table.TextColumn(column.heading(), number ? Align.RIGHT : Align.LEFT));
    }

    /** Sizes stand bare under their heading, angles too, and a share says that it is one. */
    private Table.TextColumn measured(String heading, Quantity quantity) {
        String unit = unit(quantity);
        boolean bare = quantity == Quantity.LENGTH || quantity == Quantity.ANGLE || quantity == Quantity.SHARE;
        if (bare || unit.isEmpty() || heading.endsWith(unit)) {
            return new Table.TextColumn(heading, Align.RIGHT, bare ? unit : "");
        }
        return new Table.TextColumn(heading.isEmpty() ? unit : heading + ", " + unit, Align.RIGHT);
    }

    private String unit(Quantity quantity) {
        return quantity.unit(printer.metric());
    }

    /** What a line of a figure by itself is called. */
    String heading(Column column) {
        return columns(column).findFirst().map(Table.TextColumn::heading).orElse("");
    }

    /** All that a column takes in one cell. */
    static TableCell inOne(Stream<TableCell> cells) {
        return cells.reduce((one, other) -> TableCell.of(one.text() + ", " + other.text()))
                .orElse(TableCell.EMPTY);
    }

    /** The cells of a table for one of a sheet; as many as its column takes. */
    Stream<TableCell> cells(Column column, Cell cell) {
        if (column.type() instanceof Type.Place) {
            return cell instanceof Cell.Place place
                    ? Stream.of(figure(Figure.length(place.x())), figure(Figure.length(place.y())))
                    : Stream.of(TableCell.EMPTY, TableCell.EMPTY);
        }
        return Stream.of(cell(column.type(), cell));
    }

    private TableCell cell(Type type, Cell cell) {
        if (cell instanceof Cell.Decimal number && type instanceof Type.Measure measure) {
            return figure(new Figure(measure.quantity(), number.amount(), measure.rounding()));
        }
        if (cell instanceof Cell.Amount amount) {
            return TableCell.of(printer.print(amount.figure()));
        }
        return TableCell.of(text(type, cell));
    }

    /** Printed without its unit, which stands over it; behind it the figure in that unit. */
    private TableCell figure(Figure figure) {
        String bare = printer.bare(figure);
        return TableCell.of(
                figure.quantity() == Quantity.SHARE ? bare + " %" : bare,
                figure.quantity().shown(figure.amount(), printer.metric()));
    }

    private String text(Type type, Cell cell) {
        if (cell instanceof Cell.Words words) {
            return words.words();
        }
        if (cell instanceof Cell.Flag flag) {
            return flag.yes() ? "yes" : "no";
        }
        if (cell instanceof Cell.Names names) {
            return String.join(", ", names.names());
        }
        if (cell instanceof Cell.Saying saying) {
            return printer.bare(saying.phrase());
        }
        if (cell instanceof Cell.Sayings sayings) {
            // whole sentences, which are read without the heading of the table
            return sayings.phrases().stream().map(printer::print).collect(Collectors.joining(" "));
        }
        if (cell instanceof Cell.Called called && type instanceof Type.Called figures) {
            return called(called, figures);
        }
        if (cell instanceof Cell.Numbers numbers && type instanceof Type.Measures measures) {
            return numbers.amounts().stream()
                    .map(amount -> printer.bare(new Figure(measures.quantity(), amount, measures.rounding())))
                    .collect(Collectors.joining(", "));
        }
        if (cell instanceof Cell.Rows rows && type instanceof Type.Nested nested) {
            return rows.rows().stream().map(row -> inOneCell(nested, row)).collect(Collectors.joining(", "));
        }
        return "";
    }

    /** {@code width x height: 1 x 2, 3 x 4}. */
    private String called(Cell.Called cell, Type.Called type) {
        String sizes = cell.rows().stream()
                .map(row -> row.stream()
                        .map(amount -> printer.bare(new Figure(type.quantity(), amount, type.rounding())))
                        .collect(Collectors.joining(BY)))
                .collect(Collectors.joining(", "));
        String names = String.join(" x ", cell.names());
        return sizes.isEmpty() ? names : names + ": " + sizes;
    }

    private String inOneCell(Type.Nested nested, Row row) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < nested.columns().size(); i++) {
            Column column = nested.columns().get(i);
            if (column.shown() != Column.Shown.JSON && !Cell.isNone(row.cells().get(i))) {
                parts.add(cells(column, row.cells().get(i)).map(TableCell::text).collect(Collectors.joining(", ")));
            }
        }
        return String.join(nested.between(), parts);
    }
}
