package buildup.cli.tell;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The schema (JSON Schema, draft 2020-12) of the JSON that {@link SheetJson} writes, made from the same columns. */
public final class SheetSchema {
    private SheetSchema() {}

    /** A property for each block of these sheets, those that a document may leave unasked included. */
    public static void put(Json properties, List<Sheet> sheets) {
        Map<String, Json> objects = new LinkedHashMap<>();
        for (Sheet sheet : sheets) {
            int dot = sheet.key().indexOf('.');
            if (dot >= 0) {
                Json object = objects.computeIfAbsent(sheet.key().substring(0, dot), key -> new Json());
                object.put(sheet.key().substring(dot + 1), block(sheet));
            } else if (sheet.single()) {
                columns(objects.computeIfAbsent(sheet.key(), key -> new Json()), sheet.columns());
            } else {
                properties.put(sheet.key(), block(sheet));
            }
        }
        objects.forEach((key, inner) -> properties.put(
                key,
                new Json()
                        .put("type", "object")
                        .put("additionalProperties", false)
                        .put("properties", inner)));
    }

    private static Json block(Sheet sheet) {
        Json object = object(sheet.columns());
        String title = FigurePrinter.INCHES.print(sheet.title());
        return sheet.single()
                ? object
                : new Json().put("type", "array").put("description", title).put("items", object);
    }

    private static Json object(List<Column> columns) {
        return new Json()
                .put("type", "object")
                .put("additionalProperties", false)
                .put("properties", columns(new Json(), columns));
    }

    private static Json columns(Json properties, List<Column> columns) {
        for (Column column : columns) {
            if (column.shown() != Column.Shown.TEXT) {
                properties.put(column.key(), property(column));
            }
        }
        return properties;
    }

    private static Json property(Column column) {
        Type type = column.type();
        if (type instanceof Type.Nested nested) {
            Json object = object(nested.columns());
            return nested.many()
                    ? new Json()
                            .put("type", "array")
                            .put("description", column.heading())
                            .put("items", object)
                    : object.put("description", column.heading());
        }
        if (type instanceof Type.Place) {
            return new Json()
                    .put("type", "array")
                    .put("description", column.heading() + "; [x, y] in inches: projection and height")
                    .put("items", new Json().put("type", "number"))
                    .put("minItems", 2)
                    .put("maxItems", 2);
        }
        if (type instanceof Type.Measure measure) {
            return new Json().put("type", "number").put("description", described(column, measure));
        }
        if (type instanceof Type.Amount) {
            return new Json()
                    .put("type", "number")
                    .put("description", column.heading() + "; in the unit of what is asked for");
        }
        if (type instanceof Type.Measures) {
            return list(column, "number");
        }
        if (type instanceof Type.Names) {
            return list(column, "string");
        }
        return new Json()
                .put("type", type instanceof Type.Flag ? "boolean" : "string")
                .put("description", column.heading());
    }

    private static Json list(Column column, String items) {
        return new Json()
                .put("type", "array")
                .put("description", column.heading())
                .put("items", new Json().put("type", items));
    }

    private static String described(Column column, Type.Measure measure) {
        String unit = switch (measure.quantity()) {
            case SHARE -> "a part of one, 0 to 1";
            case LENGTH -> "inches";
            default -> measure.quantity().unit(false);
        };
        String quantity = measure.quantity().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String heading = column.heading().isEmpty() ? quantity : column.heading();
        return unit.isEmpty() ? heading : heading + "; " + unit;
    }
}
