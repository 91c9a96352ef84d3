package buildup.cli.tell;

import buildup.cli.table.TableCell;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Type;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Changes of figures in words.
 *
 * @param printer in the unit of the document
 */
public record FigureChange(FigurePrinter printer) {
    /** Decimals more, where two figures would be printed alike. */
    private static final int FINER = 2;

    /** Without its sign, and without a mark behind that could be taken for one. */
    String amount(Figure figure) {
        boolean shop = figure.quantity() == Quantity.LENGTH && figure.rounding().step() == Rounding.Step.SHOP;
        String bare = printer.bare(
                new Figure(figure.quantity(), Math.abs(figure.amount()), shop ? Rounding.CONTACT : figure.rounding()));
        return figure.quantity() == Quantity.SHARE ? bare + " %" : bare;
    }

    /** A length without its sign, with its unit as in a sentence. */
    public String length(double inches) {
        return printer.print(Figure.contact(Math.abs(inches)));
    }

    /** What a cell says, with its unit as in a sentence. */
    public String told(Column column, Cell cell) {
        return figure(column, cell).map(printer::print).orElseGet(() -> words(column, cell));
    }

    /** From one cell to another, the unit said once; finer where both would be printed alike. */
    public String change(Column column, Cell from, Cell to) {
        Optional<Figure> first = figure(column, from);
        Optional<Figure> second = figure(column, to);
        if (first.isEmpty() || second.isEmpty()) {
            return or(told(column, from)) + " -> " + or(told(column, to));
        }
        boolean alike = printer.print(first.get()).equals(printer.print(second.get()));
        return printer.bare(alike ? finer(first.get()) : first.get()) + " -> "
                + printer.print(alike ? finer(second.get()) : second.get());
    }

    private static String or(String told) {
        return told.isEmpty() ? "none" : told;
    }

    private static Optional<Figure> figure(Column column, Cell cell) {
        if (cell instanceof Cell.Decimal number && column.type() instanceof Type.Measure measure) {
            return Optional.of(new Figure(measure.quantity(), number.amount(), measure.rounding()));
        }
        return cell instanceof Cell.Amount amount ? Optional.of(amount.figure()) : Optional.empty();
    }

    private Figure finer(Figure figure) {
        return figure.rounded(
                figure.quantity() == Quantity.LENGTH
                        ? Rounding.FINE
                        : Rounding.decimals(figure.quantity().places(printer.metric()) + FINER));
    }

    private String words(Column column, Cell cell) {
        return new Cells(printer).cells(column, cell).map(TableCell::text).collect(Collectors.joining(", "));
    }
}
