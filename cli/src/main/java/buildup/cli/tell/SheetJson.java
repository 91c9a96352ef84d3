package buildup.cli.tell;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Cell;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Row;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Sheets as JSON: decimal inches and the other units of the engine, whatever the unit of the document.
 *
 * @param printer of what is said in sentences, in the unit of the document
 */
public record SheetJson(FigurePrinter printer) {
    /**
     * Puts the blocks of these sheets. A sheet called {@code a.b} goes into the object {@code a}; an object without a key
     * is part of the whole.
     */
    public void put(Json json, List<Sheet> sheets) {
        Map<String, Json> objects = new LinkedHashMap<>();
        for (Sheet sheet : sheets) {
            if (sheet.asked() && sheet.toPrograms()) {
                block(json, objects, sheet);
            }
        }
        // an object is written once it is whole
        objects.forEach(json::put);
    }

    private void block(Json json, Map<String, Json> objects, Sheet sheet) {
        int dot = sheet.key().indexOf('.');
        if (sheet.key().isEmpty()) {
            sheet.rows().forEach(row -> fill(json, sheet.columns(), row));
        } else if (dot >= 0) {
            String own = sheet.key().substring(0, dot);
            Json object = objects.computeIfAbsent(own, key -> {
                Json made = new Json();
                json.put(key, made);
                return made;
            });
            put(object, sheet.key().substring(dot + 1), sheet);
        } else if (sheet.single() && !sheet.rows().isEmpty()) {
            Json object = objects.computeIfAbsent(sheet.key(), key -> {
                Json made = new Json();
                json.put(key, made);
                return made;
            });
            fill(object, sheet.columns(), sheet.rows().get(0));
        } else {
            put(json, sheet.key(), sheet);
        }
    }

    /** An object for each row. */
    public List<Json> rows(Sheet sheet) {
        return sheet.rows().stream().map(row -> object(sheet.columns(), row)).toList();
    }

    private void put(Json json, String key, Sheet sheet) {
        if (!sheet.single()) {
            json.put(key, rows(sheet));
        } else if (!sheet.rows().isEmpty()) {
            json.put(key, object(sheet.columns(), sheet.rows().get(0)));
        }
    }

    private Json object(List<Column> columns, Row row) {
        return fill(new Json(), columns, row);
    }

    private Json fill(Json json, List<Column> columns, Row row) {
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            if (column.shown() != Column.Shown.TEXT) {
                cell(json, column, row.cells().get(i));
            }
        }
        return json;
    }

    private void cell(Json json, Column column, Cell cell) {
        if (cell instanceof Cell.Rows rows && column.type() instanceof Type.Nested nested) {
            List<Json> objects = rows.rows().stream()
                    .map(row -> object(nested.columns(), row))
                    .toList();
            if (nested.many()) {
                json.put(column.key(), objects);
            } else if (!objects.isEmpty()) {
                json.put(column.key(), objects.get(0));
            }
        } else {
            value(json, column.key(), cell);
        }
    }

    /** A cell that holds no rows; nothing when it is empty. */
    void value(Json json, String key, Cell cell) {
        if (cell instanceof Cell.Saying saying) {
            json.put(key, printer.print(saying.phrase()));
        } else if (cell instanceof Cell.Sayings sayings) {
            json.texts(key, sayings.phrases().stream().map(printer::print).toList());
        } else if (cell instanceof Cell.Decimal number) {
            json.put(key, number.amount());
        } else if (cell instanceof Cell.Amount amount) {
            json.put(key, amount.figure().amount());
        } else if (cell instanceof Cell.Words words) {
            json.put(key, words.words());
        } else if (cell instanceof Cell.Flag flag) {
            json.put(key, flag.yes());
        } else if (cell instanceof Cell.Place place) {
            json.numbers(key, List.of(place.x(), place.y()));
        } else if (cell instanceof Cell.Names names) {
            json.texts(key, names.names());
        } else if (cell instanceof Cell.Numbers numbers) {
            json.numbers(key, numbers.amounts());
        } else if (cell instanceof Cell.Called called) {
            json.put(key, called.rows().stream().map(row -> called(called, row)).toList());
        }
    }

    private static Json called(Cell.Called cell, List<Double> row) {
        Json json = new Json();
        for (int i = 0; i < cell.names().size(); i++) {
            json.put(cell.names().get(i), row.get(i));
        }
        return json;
    }
}
