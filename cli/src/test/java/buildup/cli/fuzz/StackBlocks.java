package buildup.cli.fuzz;

import buildup.catalog.Catalog;
import buildup.catalog.wood.Wood;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** The blocks of a stack document beside its pieces. Each stands in few documents, so that most are small and soon answered. */
final class StackBlocks {
    static final List<String> WOODS =
            Catalog.builtIn().woods().stream().map(Wood::name).toList();

    private final Chance chance;
    private final int pieces;

    /** @param pieces how many there are, called p0, p1 and so on */
    StackBlocks(Chance chance, int pieces) {
        this.chance = chance;
        this.pieces = pieces;
    }

    /** What usually stands before the pieces. */
    List<String> before() {
        List<String> lines = new ArrayList<>();
        some(lines, 0.2, () -> "title: " + chance.odd("A stack"));
        some(lines, 0.98, () -> "units: " + chance.odd(chance.of(0.97) ? "in" : chance.any("mm", "cm", "ft")));
        some(lines, 0.95, () -> "wood: " + chance.odd(chance.any(WOODS)));
        some(lines, 0.05, () -> "boards: " + chance.odd(chance.any("softwood", "softwood-green", "hardwood")));
        some(lines, 0.2, () -> "sizes: { lip: " + chance.size(0.1, 1) + ", lap: " + chance.size(0, 1) + " }");
        some(lines, 0.5, this::space);
        some(lines, 0.15, () -> "eyes: [" + eye() + (chance.of(0.3) ? ", " + eye() : "") + "]");
        some(lines, 0.2, () -> "lights: [" + light() + (chance.of(0.2) ? ", " + light() : "") + "]");
        return lines;
    }

    /** What usually stands behind them. */
    List<String> after() {
        List<String> lines = new ArrayList<>();
        some(lines, 0.15, () -> "fastenings: [" + (chance.of(0.2) ? "" : several(this::fastening)) + "]");
        some(lines, 0.05, this::load);
        some(lines, 0.03, () -> "friction: " + chance.number(0, 1, 2));
        some(lines, 0.03, this::approach);
        some(lines, 0.08, () -> "must: [" + several(this::must) + "]");
        some(lines, 0.06, this::seasons);
        some(lines, 0.03, this::tolerance);
        some(lines, 0.03, () -> "bench: { top: [" + piece() + ", " + piece() + "] }");
        some(lines, 0.02, this::cove);
        return lines;
    }

    /** The runs along the walls, and what they are cut from. */
    List<String> plan() {
        List<String> lines = new ArrayList<>();
        lines.add("plan: [{ " + end("left") + end("right") + (chance.of(0.2) ? "inside: cope, " : "")
                + (chance.of(0.1) ? "grain: " + piece() + ", " : "") + "stretches: ["
                + (chance.of(0.6) ? stretch("first", true) + ", " : "")
                + stretch("last", chance.of(0.03)) + "] }]");
        some(lines, 0.7, this::stock);
        return lines;
    }

    private void some(List<String> lines, double share, Supplier<String> line) {
        if (chance.of(share)) {
            lines.add(line.get());
        }
    }

    private String several(Supplier<String> one) {
        return one.get() + (chance.of(0.4) ? ", " + one.get() : "");
    }

    private String piece() {
        return chance.odd("p" + chance.below(pieces));
    }

    private String load() {
        return "loads: [{ name: books, on: " + piece() + ", out: " + chance.size(0, 4) + ", load: "
                + chance.odd(chance.any("20 lb/ft", "300 N/m", "5 lb/ft")) + " }]";
    }

    private String approach() {
        return "approach: [{ name: door, from: " + spot(40, 200) + ", to: " + spot(1, 40) + " }]";
    }

    private String spot(double least, double most) {
        return "{ distance: " + chance.size(least, most) + ", height: " + chance.size(30, 70) + " }";
    }

    private String cove() {
        return "table-saw-cove: [{ name: c, width: " + chance.size(1, 4) + ", depth: " + chance.size(0.1, 1)
                + ", blade: " + chance.size(7, 12) + " }]";
    }

    private String seasons() {
        return "seasons: [{ name: built, moisture: " + chance.number(4, 20, 0) + " % }, "
                + several(() -> "{ name: " + chance.odd(chance.any("winter", "summer")) + ", "
                        + (chance.of(0.5)
                                ? "moisture: " + chance.odd(chance.any("6 %", "12 %", "14"))
                                : "temperature: " + chance.odd(chance.any("68 F", "20 C", "68")) + ", humidity: "
                                        + chance.odd(chance.any("25 %", "60 %", "0.5")))
                        + " }")
                + "]";
    }

    /** Few builds: ten thousand, as when they are left out, take as long as a hundred other questions. */
    private String tolerance() {
        return "tolerance: { builds: " + chance.any("1", "20", "200")
                + (chance.of(0.3) ? ", seed: " + chance.number(0, 9, 0) : "")
                + (chance.of(0.3) ? ", shape: " + chance.odd(chance.any("uniform", "normal")) : "")
                + (chance.of(0.2) ? ", ceiling: " + chance.size(0, 1) : "")
                + (chance.of(0.2) ? ", plumb: { out: " + chance.size(0, 1) + ", over: 32 }" : "") + " }";
    }

    private String space() {
        return "space: { floor: " + chance.size(-90, 0) + ", ceiling: "
                + (chance.of(0.9)
                        ? chance.size(4, 40)
                        : "{ height: " + chance.size(4, 40) + ", slope: " + chance.size(-12, 12) + " in 12 }")
                + (chance.of(0.4) ? ", projection: " + chance.size(1, 8) : "")
                + (chance.of(0.4)
                        ? ", wall: { solid: " + chance.any("yes", "no")
                                + (chance.of(0.3) ? ", covering: " + chance.size(0.2, 1) : "")
                                + (chance.of(0.3) ? ", from: " + chance.size(-60, 2) : "")
                                + (chance.of(0.3) ? ", to: " + chance.size(1, 9) : "") + " }"
                        : "")
                + " }";
    }

    private String eye() {
        return "{ name: " + chance.any("standing", "seated", "e") + ", distance: " + chance.size(1, 90) + ", height: "
                + (chance.of(0.04) ? "floor + " : "") + chance.size(-60, 70) + " }";
    }

    private String light() {
        return switch (chance.below(5)) {
            case 0 ->
                "{ name: lamp, at: { distance: " + chance.size(0, 60) + ", height: " + chance.size(-40, 60) + " }"
                        + (chance.of(0.5) ? ", width: " + chance.size(0.1, 12) : "") + " }";
            case 1 ->
                "{ name: sun, "
                        + (chance.of(0.2) ? "utc-offset: -5, longitude: -75, " : "") + "latitude: "
                        + chance.number(-66, 66, 1) + ", day: "
                        + chance.odd(chance.any("21 June", "21 December", "2026-03-20", "1")) + ", hour: "
                        + chance.odd(chance.any("9", "12", "15:30", "18")) + ", faces: "
                        + chance.odd(chance.any("180", "90"))
                        + " }";
            default ->
                "{ name: l, altitude: " + chance.number(-10, 90, 1) + ", azimuth: " + chance.number(-90, 90, 1) + " }";
        };
    }

    private String fastening() {
        return "{ piece: " + piece() + ", use: "
                + chance.odd(chance.any("15 ga x 2", "18 ga x 1-1/4", "8d finish", "screw 8 x 2", "23 ga x 1"))
                + ", at: { " + chance.any("up", "out") + ": " + chance.size(-1, 8) + " }"
                + (chance.of(0.2) ? ", angle: " + chance.number(-60, 60, 0) : "")
                + (chance.of(0.2) ? ", spacing: " + chance.size(2, 24) : "")
                + (chance.of(0.1) ? ", first: " + chance.size(0, 8) : "") + " }";
    }

    private String must() {
        return chance.odd(chance.any(
                "height <= " + chance.size(1, 12),
                "projection = " + chance.size(1, 8) + " within 1/16",
                "reveal of " + piece() + " over " + piece() + " >= 1/4",
                "seen of " + piece() + " from seated = 0",
                "dark of " + piece() + ".face in l <= 50 %"));
    }

    private String end(String side) {
        return chance.of(0.96) ? side + ": " + chance.odd(chance.any("return", "die", "butt", "square")) + ", " : "";
    }

    private String stretch(String name, boolean corner) {
        return "{ name: " + name + ", length: " + chance.size(4, 200)
                + (corner
                        ? ", corner: " + chance.odd(chance.any("outside 90", "inside 90", "outside 135", "inside 88.5"))
                        : "")
                + (chance.of(0.1)
                        ? ", openings: [{ from: " + chance.size(1, 3) + ", to: " + chance.size(30, 60) + " }]"
                        : "")
                + (chance.of(0.1)
                        ? ", plumb: { out: " + chance.size(-1, 1) + ", over: " + chance.size(20, 96) + " }"
                        : "")
                + measured("ceiling", 4, 40)
                + measured("floor", -90, 0)
                + measured("wall", -1, 1)
                + " }";
    }

    private String measured(String key, double least, double most) {
        return chance.of(0.05)
                ? ", " + key + ": [[0, " + chance.size(least, most) + "], [" + chance.size(1, 120) + ", "
                        + chance.size(least, most) + "]]"
                : "";
    }

    private String stock() {
        return "stock: { " + (chance.of(0.4) ? "kerf: " + chance.size(0.05, 0.3) + ", " : "")
                + (chance.of(0.3) ? "trim: " + chance.size(0, 1) + ", " : "")
                + (chance.of(0.2) ? "aim: " + chance.odd(chance.any("cheapest", "fewest")) + ", " : "")
                + "sticks: [{ of: " + chance.odd(chance.any("1x4", "1x6", Stacks.call(chance))) + ", buy: [8', "
                + chance.size(60, 200)
                + "]" + (chance.of(0.6) ? ", price: " + chance.number(0.5, 9, 2) : "")
                + (chance.of(0.3) ? ", on-hand: [" + chance.size(20, 100) + ", " + chance.odd("2 x 30") + "]" : "")
                + " }] }";
    }
}
