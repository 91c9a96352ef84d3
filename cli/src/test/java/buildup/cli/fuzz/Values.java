package buildup.cli.fuzz;

import buildup.cli.Ran;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;

/** What can stand for each argument of a command: documents to read by command and label, other words also by option. */
final class Values {
    private static final List<String> DEMOS = List.of(
            Ran.read(Ran.demo("reading-room-cornice.yaml")),
            Ran.read(Ran.demo("reading-room-door-head.yaml")),
            Ran.read(Ran.demo("reading-room-wainscot-cap.yaml")),
            Ran.read(Ran.demo("reading-room-mantel.yaml")),
            Ran.read(Ran.demo("reading-room-case.yaml")));
    private static final String ORDER = Ran.read(Ran.demo("reading-room-order.yaml"));
    private static final String TRACING = thinned(Ran.read(Ran.demo("reading-room-shelf-edge.csv")));

    private final Chance chance;
    private final Map<String, Function<Boolean, String>> documents;
    private final Map<String, Supplier<String>> words;

    Values(Chance chance) {
        this.chance = chance;
        this.documents = Map.of(
                "STACK",
                this::stack,
                "OTHER",
                this::stack,
                "ORDER",
                planned -> order(),
                "--since",
                this::stack,
                "fmt FILE",
                planned -> chance.of(0.7) ? stack(planned) : order(),
                "trace FILE",
                planned -> tracing());
        this.words = Map.ofEntries(
                word("profile NAME", () -> chance.odd(Stacks.call(chance))),
                word("PLACE", this::place),
                word("VALUE", this::value),
                word("STARTER", () -> chance.odd(chance.any("cornice", "door-head", "cap", "mantel"))),
                word("--light", () -> chance.odd(chance.any("35,45", "10,-80", "80,0", "5,5", "30"))),
                word("--eye", () -> chance.odd(chance.any("standing", "seated", "eye"))),
                word("--times", () -> chance.odd(chance.any("1", "20", "100", "101"))),
                word("--page", () -> chance.odd(chance.any("letter", "a4", "arch-d", "a0"))),
                word(
                        "--only",
                        () -> chance.odd(chance.any(
                                "cover",
                                "section",
                                "pieces,lengths",
                                "room,proportion,clearance",
                                "tolerance,must",
                                "sequence",
                                "light"))),
                word(
                        "--free",
                        () -> chance.odd(chance.any(
                                "sizes.lip=between 1/8 and 1/2 by 1/8",
                                "pieces.bed.profile=any cove-bed",
                                "pieces.1.bottom=one of [0, 1/2], now 0",
                                "space.ceiling=between 8 and 20 by 4, now 12"))),
                word("--must", () -> chance.odd(chance.any("height <= 11", "projection = 6 within 1/8", "voids = 0"))),
                word("--wish", () -> chance.odd(chance.any("least weight", "projection near 6 x 2", "least change"))),
                word("--why", () -> chance.odd(chance.any("height <= 11", "projection >= 6"))),
                word("--tries", () -> chance.odd(chance.any("1", "6", "12"))),
                word("--answers", () -> chance.odd(chance.any("1", "2", "0"))),
                word("--steps", () -> chance.odd(chance.any("100", "300", "1000"))),
                word("--seconds", () -> chance.any("60", "1e9", "-1", "x")),
                word("--head", () -> chance.odd("molder head")),
                word("--tilt", () -> chance.number(-30, 60, 0)),
                word("--units", () -> chance.odd(chance.any("in", "mm", "cm", "ft"))),
                word("--width", () -> chance.size(0.5, 4)),
                word("--height", () -> chance.size(0.5, 4)),
                word("--deviation", () -> chance.size(0, 0.1)),
                word("--restore-edges", () -> chance.size(0, 0.3)),
                word("--paint", () -> chance.size(0, 0.1)),
                word("--measure", this::measure),
                word("--layer", () -> chance.odd(chance.any("0", "a", "outline"))),
                word("--rotate", () -> chance.number(-180, 180, 0)),
                word("--back", () -> chance.odd(chance.any("left", "right", "up", "down"))),
                word("--kind", () -> chance.odd(chance.any("trim", "crown", "base", "casing"))),
                word("--name", () -> chance.odd("own")));
    }

    private static Map.Entry<String, Supplier<String>> word(String argument, Supplier<String> value) {
        return Map.entry(argument, value);
    }

    /** Whether that argument names something to be read. */
    boolean isDocument(String called) {
        return documents.containsKey(called) || documents.containsKey(label(called));
    }

    /** A text that the argument may name, with a plan where one is wanted. */
    String document(String called, boolean planned) {
        return documents.getOrDefault(called, documents.get(label(called))).apply(planned);
    }

    /** A word that may stand for the argument. */
    String of(String called) {
        Supplier<String> value = words.getOrDefault(called, words.get(label(called)));
        if (value == null) {
            throw new IllegalStateException("say in Values what may stand for " + called);
        }
        return value.get();
    }

    private static String label(String called) {
        return called.substring(called.indexOf(' ') + 1);
    }

    /** A demo now and then, mostly a small one of its own. */
    private String stack(boolean planned) {
        return chance.of(0.02) ? chance.any(DEMOS) : Stacks.of(chance, planned);
    }

    private String order() {
        return chance.of(0.1) ? ORDER : Papers.order(chance);
    }

    private String tracing() {
        return switch (chance.below(24)) {
            case 0 -> TRACING;
            case 1, 2, 3, 4, 5, 6, 7, 8, 9 -> Papers.svg(chance);
            case 10, 11, 12, 13, 14, 15 -> Papers.dxf(chance);
            default -> Papers.csv(chance);
        };
    }

    /** Every sixteenth point: the whole takes as long as a hundred other questions. */
    private static String thinned(String csv) {
        StringBuilder text = new StringBuilder();
        List<String> lines = csv.lines().toList();
        for (int i = 0; i < lines.size(); i += i < 2 ? 1 : 16) {
            text.append(lines.get(i)).append('\n');
        }
        return text.toString();
    }

    private String place() {
        return chance.odd(chance.any(
                "title",
                "sizes.lip",
                "space.ceiling",
                "p0.profile",
                "p0.flip",
                "p0.bottom",
                "p0.back",
                "p0.wood",
                "p1.bottom",
                "p0.name",
                "eyes.standing.height",
                "units",
                "p0.at",
                "seasons.winter.moisture",
                "lights.l.altitude"));
    }

    private String value() {
        return chance.of(0.5) ? chance.size(0, 9) : chance.odd(chance.any("p0", "over", "board 1 x 3", "wall", "mm"));
    }

    private String measure() {
        return chance.odd(chance.any("face", "bottom to top", "cove", "bottom to cove"))
                + " "
                + chance.odd(chance.any("height", "width", "radius"))
                + " = "
                + chance.size(0.1, 3);
    }
}
