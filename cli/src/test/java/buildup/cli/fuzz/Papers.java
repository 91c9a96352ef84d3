package buildup.cli.fuzz;

import buildup.cli.Ran;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The documents other than stacks: orders, catalogs, tracings, each by its grammar. */
final class Papers {
    /** The entries of the lists that come with the program, by list; as text, since a shop begins with a copy. */
    private static final SortedMap<String, List<String>> LISTS = lists();

    private Papers() {}

    private static SortedMap<String, List<String>> lists() {
        SortedMap<String, List<String>> lists = new TreeMap<>();
        for (String file : List.of("boards", "woods", "spreads", "fasteners", "cutters", "rates")) {
            Pattern.compile("(?m)^([a-z]+):.*\n((?:(?: .*)?\n)+)")
                    .matcher(Ran.read(Path.of("../catalog/src/main/resources/buildup/catalog", file + ".yaml")))
                    .results()
                    .forEach(list ->
                            lists.put(list.group(1), List.of(list.group(2).split("(?m)^(?=  - )"))));
        }
        return lists;
    }

    /** What a mill is asked to run. */
    static String order(Chance chance) {
        List<String> lines = new ArrayList<>();
        lines.add("title: " + chance.odd("An order"));
        lines.add("rates: " + chance.odd("example"));
        lines.add(chance.of(0.5) ? "mill: " + chance.odd("usual") : "valid-until: " + chance.odd("May"));
        lines.add("wood: " + chance.odd(chance.any("white-oak", "yellow-poplar", "mahogany")));
        lines.add("quantities: [" + chance.number(10, 900, 0) + ", " + chance.number(10, 900, 0) + "]");
        lines.add("items:");
        for (int i = 0; i <= chance.below(2); i++) {
            String what = chance.of(0.4)
                    ? "section: [" + Stacks.words(chance, 1 + chance.below(5)) + "]"
                    : "profile: " + chance.odd(Stacks.call(chance));
            lines.add("  - { name: i" + i + ", " + what + ", feet: " + chance.number(5, 800, 0)
                    + (chance.of(0.2) ? ", knife: " + chance.odd(chance.any("new", "on-hand")) : "")
                    + (chance.of(0.2) ? ", waste: " + chance.odd("matched") : "")
                    + (chance.of(0.2) ? ", finish: " + chance.odd("sanded") : "")
                    + (chance.of(0.2) ? ", lengths: [" + chance.odd("12'") + "]" : "") + " }");
        }
        return String.join("\n", lines) + "\n";
    }

    /** Lists of a shop: a few of its own entries. */
    static String catalog(Chance chance) {
        List<String> lines = new ArrayList<>();
        if (chance.of(0.7)) {
            lines.add("profiles:");
            lines.add("  - { name: " + chance.odd(chance.any("own", "cove", "plain-crown")) + ", kind: "
                    + chance.odd("trim")
                    + ", sizes: [" + chance.any("thickness, width", "width", "projection, height") + "], "
                    + (chance.of(0.7)
                            ? "words: [" + Stacks.words(chance, 1 + chance.below(5)) + "]"
                            : "sprung: { spring: " + chance.number(20, 70, 0) + ", wall-edge: " + chance.size(0, 1)
                                    + " }")
                    + (chance.of(0.5) ? ", usual: [" + chance.size(0.3, 2) + " x " + chance.size(0.3, 4) + "]" : "")
                    + (chance.of(0.2) ? ", let: { d: " + chance.odd("1/3 of width") + " }" : "") + " }");
        }
        for (String list : LISTS.keySet()) {
            if (chance.of(0.15)) {
                lines.add(list + ":");
                lines.add(chance.any(LISTS.get(list)));
            }
        }
        return lines.isEmpty() ? "units: mm\n" : String.join("\n", lines) + "\n";
    }

    /** Points round a section, as a hand or an instrument gives them. */
    static String csv(Chance chance) {
        List<double[]> points = between(points(chance));
        String between = chance.any(",", ";", "\t", ", ");
        StringBuilder text = new StringBuilder(chance.of(0.7) ? "# units: mm\n" : "");
        text.append(chance.of(0.5) ? "x" + between + "y\n" : "");
        for (double[] point : points) {
            text.append(coordinate(chance, point[0]))
                    .append(between)
                    .append(coordinate(chance, point[1]))
                    .append('\n');
        }
        return text.toString();
    }

    /** A drawing with paths, lines, circles. */
    static String svg(Chance chance) {
        StringBuilder text = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\""
                + (chance.of(0.6) ? " width=\"" + chance.number(1, 90, 0) + chance.any("mm", "in", "") + "\"" : "")
                + (chance.of(0.6) ? " viewBox=\"0 0 90 90\"" : "") + ">\n");
        List<double[]> points = points(chance);
        String transform = chance.of(0.3)
                ? " transform=\""
                        + chance.odd(chance.any("scale(1,-1)", "rotate(30)", "matrix(1 0 0 1 5 5)", "skewX(20)")) + "\""
                : "";
        if (chance.of(0.4)) {
            text.append("<polygon").append(transform).append(" points=\"");
            points.forEach(p -> text.append(coordinate(chance, p[0]))
                    .append(',')
                    .append(coordinate(chance, p[1]))
                    .append(' '));
            text.append("\"/>\n");
        } else {
            text.append("<path").append(transform).append(" d=\"M 0 0");
            for (double[] p : points) {
                String to = coordinate(chance, p[0]) + " " + coordinate(chance, p[1]);
                text.append(
                        switch (chance.below(24)) {
                            case 0 ->
                                " A 5 " + chance.number(0, 9, 1) + " 0 " + chance.below(2) + " " + chance.below(2) + " "
                                        + to;
                            case 1 -> " C 1 2 3 " + chance.number(0, 9, 1) + " " + to;
                            case 2 -> " Q 3 4 " + to;
                            case 3 ->
                                chance.of(0.5) ? " h " + chance.number(-5, 5, 1) : " v " + chance.number(-5, 5, 1);
                            default -> " L " + to;
                        });
            }
            text.append(chance.of(0.7) ? " Z\"/>\n" : "\"/>\n");
        }
        return text + (chance.of(0.2) ? "<g><use href=\"#a\"/></g>\n" : "") + "</svg>\n";
    }

    /** A drawing of entities. */
    static String dxf(Chance chance) {
        StringBuilder text = new StringBuilder();
        if (chance.of(0.5)) {
            pairs(
                    text,
                    "0",
                    "SECTION",
                    "2",
                    "HEADER",
                    "9",
                    "$INSUNITS",
                    "70",
                    chance.any("4", "4", "1", "0", "5"),
                    "0",
                    "ENDSEC");
        }
        pairs(text, "0", "SECTION", "2", "ENTITIES");
        List<double[]> points = points(chance);
        switch (chance.below(4)) {
            case 0 -> {
                for (int i = 0; i < points.size(); i++) {
                    double[] to = points.get((i + 1) % points.size());
                    pairs(
                            text,
                            "0",
                            "LINE",
                            "10",
                            coordinate(chance, points.get(i)[0]),
                            "20",
                            coordinate(chance, points.get(i)[1]));
                    pairs(text, "11", coordinate(chance, to[0]), "21", coordinate(chance, to[1]));
                }
            }
            case 1 -> {
                pairs(text, "0", "SPLINE", "71", chance.odd("3"), "70", chance.any("8", "1", "11"));
                for (int i = 0; i < points.size() + 4; i++) {
                    pairs(text, "40", Integer.toString(Math.max(0, Math.min(i - 3, points.size() - 3))));
                }
                points.forEach(p -> pairs(text, "10", coordinate(chance, p[0]), "20", coordinate(chance, p[1])));
            }
            case 2 ->
                pairs(
                        text,
                        "0",
                        chance.any("ARC", "CIRCLE", "ELLIPSE"),
                        "10",
                        chance.number(0, 9, 1),
                        "20",
                        chance.number(0, 9, 1),
                        "11",
                        "3",
                        "21",
                        "1",
                        "40",
                        chance.number(0, 2, 1),
                        "50",
                        chance.number(0, 360, 0),
                        "51",
                        chance.number(0, 360, 0),
                        "41",
                        "0",
                        "42",
                        "6.28");
            default -> {
                pairs(text, "0", "LWPOLYLINE", "90", Integer.toString(points.size()), "70", chance.any("1", "0"));
                for (double[] p : points) {
                    pairs(text, "10", coordinate(chance, p[0]), "20", coordinate(chance, p[1]));
                    if (chance.of(0.2)) {
                        pairs(text, "42", chance.number(-1, 1, 2));
                    }
                }
            }
        }
        pairs(text, "0", "ENDSEC", "0", "EOF");
        return text.toString();
    }

    private static void pairs(StringBuilder text, String... pairs) {
        for (String one : pairs) {
            text.append(one).append('\n');
        }
    }

    /** Corners of a body with a step in it, or points round one by a hand that shakes; few, so that fitting is soon done. */
    private static List<double[]> points(Chance chance) {
        List<double[]> points = new ArrayList<>();
        if (chance.of(0.6)) {
            double[] out = {20 + chance.below(20), 5 + chance.below(14)};
            double[] up = {5 + chance.below(20), 30 + chance.below(40)};
            points.add(new double[] {0, 0});
            points.add(new double[] {out[0], 0});
            points.add(new double[] {out[0], up[0]});
            points.add(new double[] {out[1], up[0]});
            points.add(new double[] {out[1], up[1]});
            points.add(new double[] {0, up[1]});
            return points;
        }
        int count = 3 + chance.below(30);
        double shake = chance.of(0.7) ? 0.02 : 2;
        int tall = 1 + chance.below(3);
        for (int i = 0; i < count; i++) {
            double way = 2 * Math.PI * i / count;
            double far = 8 + shake * chance.below(100) / 100;
            points.add(
                    new double[] {10 + far * Math.cos(way), 10 + far * Math.sin(way) * (chance.of(0.02) ? 2 : tall)});
        }
        return points;
    }

    /** As an instrument gives them: also between the corners. */
    private static List<double[]> between(List<double[]> corners) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            double[] from = corners.get(i);
            double[] to = corners.get((i + 1) % corners.size());
            int parts = corners.size() > 6 ? 1 : 8;
            for (int part = 0; part < parts; part++) {
                double share = (double) part / parts;
                points.add(new double[] {from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])});
            }
        }
        return points;
    }

    private static String coordinate(Chance chance, double amount) {
        return chance.odd(String.format(Locale.ROOT, "%.3f", amount));
    }
}
