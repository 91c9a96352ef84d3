package buildup.cli.tell;

import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Value;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Type;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * Whether two answers say the same in a cell: sizes to what a saw can cut, other figures to what is printed of them in
 * US units, whatever the unit of the document.
 */
final class Alike {
    private static final double INCHES_PER_FOOT = 12;

    private Alike() {}

    /** Whether the cells of a column say the same. */
    static boolean cells(Type type, Cell a, Cell b) {
        if (a instanceof Cell.Decimal one && b instanceof Cell.Decimal other && type instanceof Type.Measure measure) {
            return figures(measure, one.amount(), other.amount());
        }
        if (a instanceof Cell.Amount one && b instanceof Cell.Amount other) {
            return values(one.figure(), other.figure());
        }
        if (a instanceof Cell.Place one && b instanceof Cell.Place other) {
            return near(one.x(), other.x(), Tolerance.SAW_CUT) && near(one.y(), other.y(), Tolerance.SAW_CUT);
        }
        if (a instanceof Cell.Numbers one
                && b instanceof Cell.Numbers other
                && type instanceof Type.Measures measures) {
            Type.Measure each = new Type.Measure(measures.quantity(), measures.rounding());
            return all(one.amounts(), other.amounts(), (x, y) -> figures(each, x, y));
        }
        if (a instanceof Cell.Saying one && b instanceof Cell.Saying other) {
            return values(one.phrase(), other.phrase());
        }
        if (a instanceof Cell.Sayings one && b instanceof Cell.Sayings other) {
            return all(one.phrases(), other.phrases(), Alike::values);
        }
        if (a instanceof Cell.Called one && b instanceof Cell.Called other && type instanceof Type.Called called) {
            Type.Measure each = new Type.Measure(called.quantity(), called.rounding());
            return one.names().equals(other.names())
                    && all(one.rows(), other.rows(), (x, y) -> all(x, y, (m, n) -> figures(each, m, n)));
        }
        if (a instanceof Cell.Rows one && b instanceof Cell.Rows other && type instanceof Type.Nested nested) {
            return all(one.rows(), other.rows(), (x, y) -> rows(nested.columns(), x, y));
        }
        return a.equals(b);
    }

    private static boolean rows(List<Column> columns, Row a, Row b) {
        return IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).compared())
                .allMatch(i ->
                        cells(columns.get(i).type(), a.cells().get(i), b.cells().get(i)));
    }

    private static boolean values(Value a, Value b) {
        if (a instanceof Figure one && b instanceof Figure other) {
            return one.quantity() == other.quantity()
                    && figures(new Type.Measure(one.quantity(), one.rounding()), one.amount(), other.amount());
        }
        if (a instanceof Phrase one && b instanceof Phrase other) {
            return one.template().equals(other.template())
                    && all(
                            one.values(),
                            other.values(),
                            (x, y) -> x.name().equals(y.name()) && values(x.value(), y.value()));
        }
        if (a instanceof Listing one && b instanceof Listing other) {
            return all(one.values(), other.values(), Alike::values);
        }
        return a.equals(b);
    }

    private static <T> boolean all(List<T> a, List<T> b, BiPredicate<T, T> alike) {
        return a.size() == b.size() && IntStream.range(0, a.size()).allMatch(i -> alike.test(a.get(i), b.get(i)));
    }

    private static boolean figures(Type.Measure measure, double a, double b) {
        return near(a, b, least(measure));
    }

    private static boolean near(double a, double b, double least) {
        // computing may blur a difference that stands on the step itself
        return Math.abs(a - b) < least - Tolerance.COINCIDENT;
    }

    /** The least difference that counts, in the unit of the quantity. */
    private static double least(Type.Measure measure) {
        Quantity quantity = measure.quantity();
        Rounding rounding = measure.rounding();
        boolean shop = rounding.step() == Rounding.Step.SHOP || rounding.step() == Rounding.Step.CONTACT;
        if (quantity == Quantity.LENGTH && shop) {
            return Tolerance.SAW_CUT;
        }
        if (quantity == Quantity.RUN) {
            return Tolerance.SAW_CUT / INCHES_PER_FOOT;
        }
        double printed = quantity.shown(1, false);
        return Math.pow(10, -places(quantity, rounding)) / printed / 2;
    }

    private static int places(Quantity quantity, Rounding rounding) {
        return switch (rounding.step()) {
            case DECIMALS -> rounding.places();
            case FINE -> FigurePrinter.FINE_PLACES;
            default -> quantity.places(false);
        };
    }
}
