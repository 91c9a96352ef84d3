package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import buildup.cli.Ran;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The questions of a campaign: its seed and a number give one, the same every time. Most are small, so that many can be asked. */
final class Questions {
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private static final List<String> DEMOS = List.of(
            Ran.read(Ran.demo("reading-room-cornice.yaml")),
            Ran.read(Ran.demo("reading-room-door-head.yaml")),
            Ran.read(Ran.demo("reading-room-wainscot-cap.yaml")),
            Ran.read(Ran.demo("reading-room-mantel.yaml")),
            Ran.read(Ran.demo("reading-room-case.yaml")));
    private static final String ORDER = Ran.read(Ran.demo("reading-room-order.yaml"));
    private static final String TRACING = thinned(Ran.read(Ran.demo("reading-room-shelf-edge.csv")));

    private final long seed;

    Questions(long seed) {
        this.seed = seed;
    }

    /** The question of that number. */
    Asked question(long number) {
        Chance chance = new Chance(mixed(seed * 1_000_003 + number));
        Asked asked = new Asking(chance).asked();
        return spoiled(asked, chance);
    }

    private static long mixed(long value) {
        long mixed = value * SPREAD;
        mixed = (mixed ^ mixed >>> 32) * SPREAD;
        return mixed ^ mixed >>> 29;
    }

    /** Whether a question is asked twice, to see whether the answer is the same. */
    boolean twice(long number) {
        return mixed(seed ^ number * 31) % 12 == 0;
    }

    /** Every eighth point: the whole takes as long as a hundred other questions. */
    private static String thinned(String csv) {
        StringBuilder text = new StringBuilder();
        List<String> lines = csv.lines().toList();
        for (int i = 0; i < lines.size(); i += i < 2 ? 1 : 8) {
            text.append(lines.get(i)).append('\n');
        }
        return text.toString();
    }

    private static Asked spoiled(Asked asked, Chance chance) {
        Asked spoiled = asked;
        for (Map.Entry<String, byte[]> part : asked.parts().entrySet()) {
            if (part.getValue().length > 0 && chance.of(0.4)) {
                Mutation mutation = new Mutation(chance);
                byte[] bytes = part.getValue();
                if (chance.of(0.75)) {
                    bytes = mutation.tokens(new String(bytes, UTF_8)).getBytes(UTF_8);
                }
                if (chance.of(0.3)) {
                    bytes = mutation.bytes(bytes);
                }
                spoiled = spoiled.with(part.getKey(), bytes);
            }
        }
        return spoiled;
    }

    /** One command with what it reads. */
    private record Asking(Chance chance) {
        Asked asked() {
            int kind = chance.below(1000);
            Asked asked = kind < 250
                    ? report("text", "text", "json", "csv")
                    : kind < 300
                            ? report("html")
                            : kind < 340
                                    ? two()
                                    : kind < 440
                                            ? on(stack(false), "check", "-", "--format", chance.any("text", "json"))
                                            : kind < 510
                                                    ? cuts()
                                                    : kind < 610
                                                            ? draw()
                                                            : kind < 700
                                                                    ? set()
                                                                    : kind < 760
                                                                            ? on(
                                                                                    chance.of(0.7)
                                                                                            ? stack(false)
                                                                                            : Papers.order(chance),
                                                                                    "fmt",
                                                                                    "-")
                                                                            : kind < 830
                                                                                    ? quote()
                                                                                    : kind < 910
                                                                                            ? trace()
                                                                                            : kind < 965
                                                                                                    ? profile()
                                                                                                    : kind < 985
                                                                                                            ? saves()
                                                                                                            : kind < 992
                                                                                                                    ? of(
                                                                                                                            "schema",
                                                                                                                            chance
                                                                                                                                    .any(
                                                                                                                                            "report",
                                                                                                                                            "comparison",
                                                                                                                                            "cuts",
                                                                                                                                            "profile",
                                                                                                                                            "quote",
                                                                                                                                            "trace",
                                                                                                                                            "x"))
                                                                                                                    : of(
                                                                                                                            "new",
                                                                                                                            chance
                                                                                                                                    .any(
                                                                                                                                            "cornice",
                                                                                                                                            "door-head",
                                                                                                                                            "cap",
                                                                                                                                            "x"),
                                                                                                                            "-o",
                                                                                                                            "@/new.yaml");
            return catalogued(asked);
        }

        /** A demo now and then, mostly a small one of its own. */
        private String stack(boolean planned) {
            return chance.of(0.06) ? chance.any(DEMOS) : Stacks.of(chance, planned);
        }

        private Asked report(String... formats) {
            return on(stack(false), "report", "-", "--format", chance.any(formats));
        }

        private Asked two() {
            Asked asked = on(
                    stack(false),
                    chance.any("report", "cuts"),
                    "-",
                    "@/other.yaml",
                    "--format",
                    chance.any("text", "json", "csv", "html"));
            return asked.words().get(0).equals("cuts")
                    ? with(asked, "other.yaml", stack(true), "--steps", "300")
                    : with(asked, "other.yaml", stack(false));
        }

        private Asked cuts() {
            return on(
                    stack(true),
                    "cuts",
                    "-",
                    "--steps",
                    chance.any("0", "100", "1000"),
                    "--format",
                    chance.any("text", "json", "csv", "html"));
        }

        private Asked draw() {
            String to = chance.of(0.9) ? chance.any("svg", "dxf") : chance.any("pdf", "png");
            String view = chance.any("section", "section", "elevation", "rays", "holds", "plan", "walls", "sticks");
            Asked asked = on(
                    stack(List.of("plan", "walls", "sticks").contains(view)),
                    "draw",
                    "-",
                    "--view",
                    view,
                    "-o",
                    "@/out." + to);
            asked = chance.of(0.2)
                    ? with(asked, "--light", chance.any("35,45", "10,-80", "90,0", "0,0", "-5,3", "x"))
                    : asked;
            return chance.of(0.1) ? with(asked, "--page", chance.any("letter", "a4", "arch-d", "a0", "x")) : asked;
        }

        private Asked set() {
            String place = chance.odd(chance.any(
                    "title",
                    "sizes.lip",
                    "space.ceiling",
                    "p0.profile",
                    "p0.flip",
                    "p1.bottom",
                    "p0.name",
                    "p1.name",
                    "eyes.standing.height",
                    "units",
                    "p0.at",
                    "lights.l.altitude"));
            String value = chance.of(0.5)
                    ? chance.size(0, 9)
                    : chance.odd(chance.any("p0", "over", "board 1 x 3", "wall", "mm"));
            return on(stack(false), "set", "-", place, value);
        }

        private Asked quote() {
            String paper = chance.of(0.2) ? ORDER : Papers.order(chance);
            return on(paper, "quote", "-", "--to", chance.any("text", "text", "json", "csv", "html", "svg"));
        }

        private Asked trace() {
            String paper = switch (chance.below(8)) {
                case 0 -> TRACING;
                case 1, 2, 3 -> Papers.svg(chance);
                case 4, 5 -> Papers.dxf(chance);
                default -> Papers.csv(chance);
            };
            Asked asked = on(paper, "trace", "-", "--format", chance.any("yaml", "text", "json", "csv", "html", "svg"));
            asked = chance.of(0.6) ? with(asked, "--units", chance.odd(chance.any("in", "mm", "cm"))) : asked;
            asked = chance.of(0.3) ? with(asked, "--width", chance.size(0.5, 4)) : asked;
            asked = chance.of(0.2) ? with(asked, "--height", chance.size(0.5, 4)) : asked;
            asked = chance.of(0.1) ? with(asked, "--deviation", chance.size(0, 0.1)) : asked;
            asked = chance.of(0.1) ? with(asked, "--arris", chance.size(0, 0.3)) : asked;
            asked = chance.of(0.1) ? with(asked, "--paint", chance.size(0, 0.1)) : asked;
            return chance.of(0.1) ? with(asked, "--flip") : asked;
        }

        private Asked profile() {
            Asked asked = of(
                    "profile",
                    chance.odd(Stacks.call(chance)),
                    "--format",
                    chance.any("text", "text", "json", "csv", "html", "svg", "dxf"));
            if (chance.of(0.003)) {
                return with(asked, "--nearest");
            }
            asked = chance.of(0.2) ? with(asked, "--view", chance.any("outline", "milling", "knife")) : asked;
            return chance.of(0.1) ? with(asked, "--tilt", chance.number(-30, 60, 0)) : asked;
        }

        private Asked saves() {
            return with(with(on(stack(false), Runner.SAVES), "1.yaml", stack(false)), "2.yaml", stack(false));
        }

        private Asked catalogued(Asked asked) {
            boolean takesOne = !List.of("schema", "new", "fmt", Runner.SAVES)
                    .contains(asked.words().get(0));
            return takesOne && chance.of(0.12)
                    ? with(with(asked, "own.yaml", Papers.catalog(chance)), "--catalog", "@/own.yaml")
                    : asked;
        }

        private static Asked of(String... words) {
            return new Asked(List.of(words), new byte[0], Map.of());
        }

        private static Asked on(String document, String... words) {
            return new Asked(List.of(words), document.getBytes(UTF_8), Map.of());
        }

        private static Asked with(Asked asked, String... more) {
            if (more.length > 1 && more[0].endsWith(".yaml")) {
                Map<String, byte[]> files = new TreeMap<>(asked.files());
                files.put(more[0], more[1].getBytes(UTF_8));
                List<String> rest = new ArrayList<>(asked.words());
                rest.addAll(List.of(more).subList(2, more.length));
                return new Asked(rest, asked.input(), files);
            }
            List<String> words = new ArrayList<>(asked.words());
            words.addAll(List.of(more));
            return new Asked(words, asked.input(), asked.files());
        }
    }
}
