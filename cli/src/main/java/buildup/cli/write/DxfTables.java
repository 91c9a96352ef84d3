package buildup.cli.write;

import buildup.cli.scene.Scene;
import buildup.cli.scene.Subject;
import buildup.profiles.outline.Point;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What stands in front of the lines of a DXF drawing: its unit and bounds, line types, layers, a text style. */
final class DxfTables {
    /** The drawing's own release of the format, R12: later ones hold nothing that is needed here. */
    private static final String RELEASE = "AC1009";

    /** The numbers that stand for inches and for a drawing that is not metric. */
    private static final int INCHES = 1;

    private static final int NOT_METRIC = 0;

    private static final String UNBROKEN = "CONTINUOUS";

    /** Dashes, and the name of their line type, in the order in which they were met. */
    private final Map<List<Double>, String> dashes = new LinkedHashMap<>();

    /** The name of a line type. */
    String lineType(List<Double> dash) {
        return dash.isEmpty() ? UNBROKEN : dashes.computeIfAbsent(dash, one -> "DASH" + (dashes.size() + 1));
    }

    /** @param zero what is written as (0, 0) */
    void write(Scene scene, Point zero, DxfPairs out) {
        out.put(0, "SECTION").put(2, "HEADER");
        out.put(9, "$ACADVER").put(1, RELEASE);
        out.put(9, "$DWGCODEPAGE").put(3, DxfPairs.LETTERS_NAME);
        out.put(9, "$INSUNITS").put(70, INCHES);
        out.put(9, "$MEASUREMENT").put(70, NOT_METRIC);
        for (String bounds : List.of("$EXT", "$LIM")) {
            boolean sheet = bounds.equals("$LIM");
            out.put(9, bounds + "MIN").put(10, -zero.x()).put(20, -zero.y());
            if (!sheet) {
                out.put(30, 0.0);
            }
            out.put(9, bounds + "MAX").put(10, scene.width() - zero.x()).put(20, scene.height() - zero.y());
            if (!sheet) {
                out.put(30, 0.0);
            }
        }
        out.put(0, "ENDSEC");
        out.put(0, "SECTION").put(2, "TABLES");
        lineTypes(out);
        layers(out);
        style(out);
        out.put(0, "ENDSEC");
    }

    private void lineTypes(DxfPairs out) {
        out.put(0, "TABLE").put(2, "LTYPE").put(70, dashes.size() + 1);
        lineType(UNBROKEN, List.of(), out);
        dashes.forEach((dash, name) -> lineType(name, dash, out));
        out.put(0, "ENDTAB");
    }

    /** Strokes are positive and gaps negative lengths. */
    private static void lineType(String name, List<Double> dash, DxfPairs out) {
        out.put(0, "LTYPE").put(2, name).put(70, 0).put(3, "").put(72, 65).put(73, dash.size());
        out.put(40, dash.stream().mapToDouble(Double::doubleValue).sum());
        for (int i = 0; i < dash.size(); i++) {
            out.put(49, i % 2 == 0 ? dash.get(i) : -dash.get(i));
        }
    }

    private static void layers(DxfPairs out) {
        out.put(0, "TABLE").put(2, "LAYER").put(70, Subject.values().length + 1);
        layer("0", 7, out);
        for (Subject layer : Subject.values()) {
            layer(layer.name(), color(layer), out);
        }
        out.put(0, "ENDTAB");
    }

    /** One of the format's numbered colors, negative where the layer is switched off. */
    static int color(Subject layer) {
        return switch (layer) {
            case TRIM, NOTES -> 7;
            case NAILER -> 30;
            case FRAMING, HATCH, SHEET -> 8;
            case WALL, BREAK -> 9;
            case DIMENSIONS, LETTERS -> 3;
            case LIGHTS -> 40;
            case EYES -> 4;
            case BEARING, CLEARANCE -> 1;
            case WEIGHTS, SEQUENCE -> 2;
            case FASTENINGS -> 6;
            case SEASONS, PROPORTION -> 5;
            // it lies under the wood, and nothing here covers it
            case GRID -> -8;
        };
    }

    private static void layer(String name, int color, DxfPairs out) {
        out.put(0, "LAYER").put(2, name).put(70, 0).put(62, color).put(6, UNBROKEN);
    }

    private static void style(DxfPairs out) {
        out.put(0, "TABLE").put(2, "STYLE").put(70, 1);
        out.put(0, "STYLE")
                .put(2, "STANDARD")
                .put(70, 0)
                .put(40, 0.0)
                .put(41, 1.0)
                .put(50, 0.0)
                .put(71, 0);
        out.put(42, 0.125).put(3, "LiberationSans-Regular.ttf").put(4, "");
        out.put(0, "ENDTAB");
    }
}
