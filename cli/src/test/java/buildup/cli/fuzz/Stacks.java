package buildup.cli.fuzz;

import buildup.catalog.Catalog;
import buildup.catalog.family.Family;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Stack documents by the grammar of the stack, of one to a few pieces. */
final class Stacks {
    private static final List<Family> FAMILIES = Catalog.builtIn().families();

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
        pieces = chance.of(0.9) ? 1 + chance.below(3) : 4 + chance.below(6);
        StackBlocks blocks = new StackBlocks(chance, pieces);
        lines.addAll(blocks.before());
        lines.add("pieces:");
        for (int i = 0; i < pieces; i++) {
            lines.add("  - { name: " + name(i) + ", " + what() + ", " + place(i) + more(i) + " }");
        }
        lines.addAll(blocks.after());
        if (planned || chance.of(0.04)) {
            lines.addAll(blocks.plan());
        }
        return String.join("\n", lines) + "\n";
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

    private String what() {
        return switch (chance.below(13)) {
            case 0, 1, 2 -> "profile: " + chance.odd("board " + chance.size(0.25, 2) + " x " + chance.size(0.5, 8));
            case 3, 4 -> "profile: board " + chance.size(0.25, 1.5) + " x " + chance.size(1, 8) + ", lay: flat";
            case 5 ->
                "profile: " + chance.odd(chance.any("1x4", "1x6", "2x4", "5/4x4", "1x3"))
                        + (chance.of(0.4) ? ", lay: flat" : "");
            case 6, 7, 8, 9 -> "profile: " + chance.odd(call(chance));
            case 10 ->
                (pieces > 1 ? "kind: framing" : "kind: trim") + ", section: [out " + chance.size(1, 14) + ", up "
                        + chance.size(1, 12) + "]";
            case 11 -> "kind: nailer, section: [out " + chance.size(0.2, 3) + ", up " + chance.size(0.2, 3) + "]";
            default -> "section: [" + words() + "]";
        };
    }

    /** A profile of the catalog, mostly in a size that is commonly run. */
    static String call(Chance chance) {
        Family family = chance.any(FAMILIES);
        List<String> sizes = new ArrayList<>();
        if (!family.usual().isEmpty() && chance.of(0.9)) {
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
        add(more, 0.05, "wood", chance.any(StackBlocks.WOODS));
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
        add(more, 0.02, "cut", chance.any("flat", "quartered"));
        add(more, 0.02, "spread", chance.any("1/32", "{ width: 1/32, thickness: 1/64 }", chance.size(0.01, 0.1)));
        return more.toString();
    }

    private void add(StringBuilder to, double share, String key, String value) {
        if (chance.of(share)) {
            to.append(", ").append(chance.of(0.002) ? "kidn" : key).append(": ").append(chance.odd(value));
        }
    }
}
