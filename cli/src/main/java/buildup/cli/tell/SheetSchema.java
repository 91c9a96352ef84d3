package buildup.cli.tell;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Column;
import buildup.shared.sheet.Sheet;
import buildup.shared.sheet.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The schema (JSON Schema, draft 2020-12) of the JSON that {@link SheetJson} writes, made from the same columns. */
public final class SheetSchema {
    private SheetSchema() {}

    /** A property for each block of these sheets, those that a document may leave unasked included. */
    public static void put(Json properties, List<Sheet> sheets) {
        Map<String, List<Sheet>> blocks = new LinkedHashMap<>();
        sheets.stream()
                .filter(Sheet::toPrograms)
                .forEach(sheet -> blocks.computeIfAbsent(block(sheet), key -> new ArrayList<>())
                        .add(sheet));
        blocks.forEach((key, parts) -> {
            if (key.isEmpty()) {
                parts.forEach(part -> columns(properties, part.columns()));
            } else {
                properties.put(key, block(key, parts));
            }
        });
    }

    /**
     * What is always there: the blocks of those sheets that hold something, however little was asked, and the figures of
     * the whole.
     */
    public static List<String> always(List<Sheet> sheets) {
        return sheets.stream()
                .filter(SheetSchema::isAlways)
                .flatMap(sheet -> sheet.key().isEmpty() ? required(sheet.columns()).stream() : Stream.of(block(sheet)))
                .distinct()
                .toList();
    }

    private static boolean isAlways(Sheet sheet) {
        return sheet.asked()
                && sheet.toPrograms()
                && (sheet.key().isEmpty() || !sheet.single() || !sheet.rows().isEmpty());
    }

    private static String block(Sheet sheet) {
        int dot = sheet.key().indexOf('.');
        return dot < 0 ? sheet.key() : sheet.key().substring(0, dot);
    }

    /** One block: of a list its rows; of an object its own columns and the lists that lie in it. */
    private static Json block(String key, List<Sheet> parts) {
        Sheet first = parts.get(0);
        if (parts.size() == 1 && first.key().equals(key)) {
            return described(first.single() ? object(first.columns()) : list(object(first.columns())), title(first));
        }
        Json properties = new Json();
        List<String> required = new ArrayList<>();
        for (Sheet part : parts) {
            if (part.key().equals(key)) {
                columns(properties, part.columns());
                required.addAll(required(part.columns()));
            } else {
                String inner = part.key().substring(key.length() + 1);
                Json object = object(part.columns());
                properties.put(inner, described(part.single() ? object : list(object), title(part)));
                if (isAlways(part)) {
                    required.add(inner);
                }
            }
        }
        return object(properties, required);
    }

    private static String title(Sheet sheet) {
        return FigurePrinter.INCHES.print(sheet.title());
    }

    /** An object with these properties and no others. */
    public static Json object(Json properties, List<String> required) {
        return new Json()
                .put("type", "object")
                .put("properties", properties)
                .texts("required", required)
                .put("additionalProperties", false);
    }

    /** A row with these columns. */
    static Json object(List<Column> columns) {
        return object(columns(new Json(), columns), required(columns));
    }

    private static List<String> required(List<Column> columns) {
        return columns.stream()
                .filter(column -> column.always() && column.shown() != Column.Shown.TEXT)
                .map(Column::key)
                .toList();
    }

    private static Json columns(Json properties, List<Column> columns) {
        for (Column column : columns) {
            if (column.shown() != Column.Shown.TEXT) {
                properties.put(column.key(), described(property(column.type()), meaning(column)));
            }
        }
        return properties;
    }

    /** What a cell of that type is in JSON. */
    private static Json property(Type type) {
        if (type instanceof Type.Nested nested) {
            Json object = object(nested.columns());
            return nested.many() ? list(object) : object;
        }
        if (type instanceof Type.Place) {
            return list(of("number")).put("minItems", 2).put("maxItems", 2);
        }
        if (type instanceof Type.Measure measure) {
            return of(measure.quantity() == Quantity.COUNT ? "integer" : "number");
        }
        if (type instanceof Type.Amount amount) {
            return amount.words() ? new Json().texts("type", List.of("number", "string")) : of("number");
        }
        if (type instanceof Type.Measures) {
            return list(of("number"));
        }
        if (type instanceof Type.Names || type instanceof Type.Sayings) {
            return list(of("string"));
        }
        if (type instanceof Type.Called) {
            return list(of("object").put("additionalProperties", of("number")));
        }
        return of(type instanceof Type.Flag ? "boolean" : "string");
    }

    private static Json of(String type) {
        return new Json().put("type", type);
    }

    static Json list(Json items) {
        return of("array").put("items", items);
    }

    static Json described(Json schema, String meaning) {
        return schema.put("description", meaning);
    }

    /** The heading, or the key as words, and the unit. */
    private static String meaning(Column column) {
        String words = column.heading().isEmpty()
                ? column.key().replaceAll("(?=[A-Z])", " ").toLowerCase(Locale.ROOT)
                : column.heading();
        String unit = unit(column.type());
        return unit.isEmpty() || words.endsWith(unit) ? words : words + "; " + unit;
    }

    private static String unit(Type type) {
        if (type instanceof Type.Place) {
            return "[x, y], projection and height in inches";
        }
        if (type instanceof Type.Measure measure) {
            return unit(measure.quantity());
        }
        if (type instanceof Type.Amount) {
            return "in the unit of what it counts";
        }
        if (type instanceof Type.Called called) {
            return unit(called.quantity()) + ", under the names that the list gives";
        }
        if (type instanceof Type.Saying || type instanceof Type.Sayings) {
            return "in the unit of the document";
        }
        return type instanceof Type.Measures measures ? unit(measures.quantity()) : "";
    }

    private static String unit(Quantity quantity) {
        return switch (quantity) {
            case SHARE -> "a part of one, 0 to 1";
            case LENGTH -> "inches";
            case RUN -> "feet";
            default -> quantity.unit(false);
        };
    }
}
