package buildup.cli.fuzz;

import buildup.catalog.Catalog;
import buildup.catalog.family.Family;
import buildup.catalog.wood.Wood;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Stack documents by the grammar of the stack, of one to a few pieces. */
final class Stacks {
    private static final List<Family> FAMILIES = Catalog.builtIn().families();
    private static final List<String> WOODS =
            Catalog.builtIn().woods().stream().map(Wood::name).toList();

    private final Chance chance;
    private final List<String> lines = new ArrayList<>();
    private int pieces;

    private Stacks(Chance chance) {
        this.chance = chance;
    }

    /** A stack, with a plan now and then; always with one where asked. */
    static String of(Chance chance, boolean planned) {
        return new Stacks(chance).text(planned);
    }

    private String text(boolean planned) {
        some(0.4, () -> "title: " + chance.odd("A stack"));
        some(0.98, () -> "units: " + chance.odd(chance.of(0.92) ? "in" : chance.any("mm", "cm", "ft")));
        some(0.95, () -> "wood: " + chance.odd(chance.any(WOODS)));
        some(0.1, () -> "boards: " + chance.odd(chance.any("softwood", "softwood-green", "hardwood")));
        some(0.3, () -> "sizes: { lip: " + chance.size(0.1, 1) + ", lap: " + chance.size(0, 1) + " }");
        some(0.7, this::space);
        some(0.3, () -> "eyes: [" + eye() + (chance.of(0.3) ? ", " + eye() : "") + "]");
        some(0.3, () -> "lights: [" + light() + (chance.of(0.2) ? ", " + light() : "") + "]");
        pieces = 1 + chance.below(chance.of(0.8) ? 4 : 9);
        lines.add("pieces:");
        for (int i = 0; i < pieces; i++) {
            lines.add("  - { name: " + name(i) + ", " + what() + ", " + place(i) + more(i) + " }");
        }
        some(
                0.25,
                () -> "fastenings: [" + (chance.of(0.2) ? "" : fastening() + (chance.of(0.4) ? ", " + fastening() : ""))
                        + "]");
        some(
                0.1,
                () -> "loads: [{ name: books, on: " + any() + ", out: " + chance.size(0, 4) + ", load: "
                        + chance.odd(chance.any("20 lb/ft", "300 N/m", "5 lb/ft")) + " }]");
        some(0.05, () -> "friction: " + chance.number(0, 1, 2));
        some(
                0.05,
                () -> "approach: [{ name: door, from: { distance: " + chance.size(40, 200) + ", height: "
                        + chance.size(30, 70) + " }, to: { distance: " + chance.size(1, 40) + ", height: "
                        + chance.size(30, 70) + " } }]");
        some(0.15, () -> "must: [" + must() + (chance.of(0.5) ? ", " + must() : "") + "]");
        if (planned || chance.of(0.08)) {
            lines.add("plan: [{ " + end("left") + end("right") + (chance.of(0.2) ? "inside: cope, " : "")
                    + "stretches: [" + (chance.of(0.6) ? stretch("first", true) + ", " : "")
                    + stretch("last", chance.of(0.03)) + "] }]");
            some(0.7, this::stock);
        }
        some(
                0.03,
                () -> "table-saw-cove: [{ name: c, width: " + chance.size(1, 4) + ", depth: " + chance.size(0.1, 1)
                        + ", blade: " + chance.size(7, 12) + " }]");
        return String.join("\n", lines) + "\n";
    }

    private void some(double share, java.util.function.Supplier<String> line) {
        if (chance.of(share)) {
            lines.add(line.get());
        }
    }

    private String name(int i) {
        return chance.of(0.02) ? chance.odd("p0") : "p" + i;
    }

    private String any() {
        return chance.odd("p" + chance.below(Math.max(1, pieces)));
    }

    /** An earlier piece; now and then any. */
    private String earlier(int i) {
        return chance.of(0.97) ? chance.odd("p" + chance.below(i)) : any();
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
                "{ name: sun, latitude: " + chance.number(-66, 66, 1) + ", day: "
                        + chance.odd(chance.any("21 June", "21 December", "2026-03-20", "1")) + ", hour: "
                        + chance.odd(chance.any("9", "12", "15:30", "18")) + ", faces: "
                        + chance.odd(chance.any("180", "90"))
                        + " }";
            default ->
                "{ name: l, altitude: " + chance.number(-10, 90, 1) + ", azimuth: " + chance.number(-90, 90, 1) + " }";
        };
    }

    private String what() {
        return switch (chance.below(12)) {
            case 0, 1, 2 -> "profile: " + chance.odd("board " + chance.size(0.25, 2) + " x " + chance.size(0.5, 8));
            case 3, 4 -> "profile: board " + chance.size(0.25, 1.5) + " x " + chance.size(1, 8) + ", lay: flat";
            case 5 ->
                "profile: " + chance.odd(chance.any("1x4", "1x6", "2x4", "5/4x4", "1x3"))
                        + (chance.of(0.4) ? ", lay: flat" : "");
            case 6, 7, 8 -> "profile: " + chance.odd(call(chance));
            case 9 -> "kind: framing, section: [out " + chance.size(1, 14) + ", up " + chance.size(1, 12) + "]";
            case 10 -> "kind: nailer, section: [out " + chance.size(0.2, 3) + ", up " + chance.size(0.2, 3) + "]";
            default -> "section: [" + words() + "]";
        };
    }

    /** A profile of the catalog, mostly in a size that is commonly run. */
    static String call(Chance chance) {
        Family family = chance.any(FAMILIES);
        List<String> sizes = new ArrayList<>();
        if (!family.usual().isEmpty() && chance.of(0.7)) {
            chance.any(family.usual()).forEach(size -> sizes.add(chance.odd(size.toInches() + " in")));
        } else {
            family.sizes().forEach(any -> sizes.add(chance.size(0.3, 4)));
        }
        return chance.odd(family.name()) + " " + String.join(" x ", sizes);
    }

    /** Profile words, mostly outward and up. */
    private String words() {
        return words(chance, 1 + chance.below(7));
    }

    static String words(Chance chance, int count) {
        List<String> words = new ArrayList<>(List.of("out " + chance.size(0.25, 3)));
        for (int i = 0; i < count; i++) {
            String two = chance.size(0.06, 1.5) + " x " + chance.size(0.06, 1.5);
            words.add(
                    switch (chance.below(10)) {
                        case 0, 1 -> chance.any("up", "up", "out", "in", "down") + " " + chance.size(0.06, 2);
                        case 2 -> chance.any("up to", "out to") + " " + chance.size(0.5, 4);
                        case 3 ->
                            chance.any("bead", "torus", "astragal", "bead up", "fillet") + " " + chance.size(0.1, 1);
                        case 4 -> chance.any("quirk", "drip", "relief", "rabbet", "chamfer") + " " + two;
                        case 5 -> chance.any("hollow", "round") + " " + two + " x " + chance.size(0.2, 3);
                        default ->
                            chance.any(
                                            "cove",
                                            "ovolo",
                                            "cyma recta",
                                            "cyma reversa",
                                            "scotia",
                                            "greek cove",
                                            "cove in",
                                            "ovolo in",
                                            "cove down",
                                            "greek ovolo")
                                    + " " + two + (chance.of(0.1) ? " as " + chance.odd("m") : "");
                    });
        }
        return chance.odd(String.join(", ", words));
    }

    private String place(int i) {
        boolean touching = chance.of(0.06);
        String x = chance.of(0.01)
                ? ""
                : switch (i == 0 ? 0 : chance.below(5)) {
                    case 0 -> chance.any("back: wall", "back: wall", "back: 0", "back: " + chance.size(-1, 4));
                    case 1, 2 -> "back: " + earlier(i) + ".face" + off();
                    case 3 -> "face: " + earlier(i) + ".face" + off();
                    default -> "back: " + earlier(i) + "." + chance.any("back", "face") + off();
                };
        String y = chance.of(0.01)
                ? ""
                : switch (i == 0 ? 0 : chance.below(5)) {
                    case 0 ->
                        chance.any(
                                "bottom: 0",
                                "bottom: datum",
                                "bottom: " + chance.size(-10, 10),
                                "top: " + chance.size(0, 9));
                    case 1, 2 -> "bottom: " + earlier(i) + ".top" + off();
                    case 3 -> "top: " + earlier(i) + "." + chance.any("top", "bottom") + off();
                    default -> "bottom: " + chance.size(-2, 10);
                };
        if (touching && i > 0) {
            boolean out = chance.of(0.5);
            x = out ? "back: touch" : x;
            y = out ? y : chance.any("bottom: touch", "top: touch");
        }
        return Stream.of(x, y)
                .filter(rule -> !rule.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElse("wood: white-oak");
    }

    private String off() {
        return chance.of(0.6) ? "" : chance.any(" + ", " - ") + chance.size(0, chance.of(0.6) ? 0.5 : 2);
    }

    private String more(int i) {
        StringBuilder more = new StringBuilder();
        add(more, 0.08, "kind", chance.any("nailer", "trim", "framing"));
        add(more, 0.05, "wood", chance.any(WOODS));
        add(more, 0.05, "fixed", i == 0 ? "wall" : "p" + chance.below(i));
        add(more, 0.05, "flip", chance.any("over", "ends"));
        add(more, 0.03, "turn", chance.number(-180, 180, 1));
        add(
                more,
                0.03,
                "rip",
                "{ " + chance.any("top", "bottom", "back", "face") + ": " + chance.size(0.05, 0.4) + " }");
        add(more, 0.004, "spring", chance.any("38", "45", "52"));
        add(more, 0.015, chance.any("top", "face"), chance.size(1, 8));
        add(more, 0.02, "grain", chance.any("run", "out", "up"));
        return more.toString();
    }

    private void add(StringBuilder to, double share, String key, String value) {
        if (chance.of(share)) {
            to.append(", ").append(chance.of(0.002) ? "kidn" : key).append(": ").append(chance.odd(value));
        }
    }

    private String fastening() {
        return "{ piece: " + any() + ", use: "
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
                "reveal of " + any() + " over " + any() + " >= 1/4",
                "seen of " + any() + " from seated = 0",
                "dark of " + any() + ".face in l <= 50 %"));
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
        return chance.of(0.15)
                ? ", " + key + ": [[0, " + chance.size(least, most) + "], [" + chance.size(1, 120) + ", "
                        + chance.size(least, most) + "]]"
                : "";
    }

    private String stock() {
        return "stock: { " + (chance.of(0.4) ? "kerf: " + chance.size(0.05, 0.3) + ", " : "")
                + (chance.of(0.3) ? "trim: " + chance.size(0, 1) + ", " : "")
                + (chance.of(0.2) ? "aim: " + chance.odd(chance.any("cheapest", "fewest")) + ", " : "")
                + "sticks: [{ of: " + chance.odd(chance.any("1x4", "1x6", call(chance))) + ", buy: [8', "
                + chance.size(60, 200)
                + "]" + (chance.of(0.6) ? ", price: " + chance.number(0.5, 9, 2) : "")
                + (chance.of(0.3) ? ", on-hand: [" + chance.size(20, 100) + ", " + chance.odd("2 x 30") + "]" : "")
                + " }] }";
    }
}
