package buildup.cli;

import java.math.BigDecimal;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The metric twin of a document in inches: each bare size as its exact millimeter value. */
public final class Twin {
    /** A bare number, fraction, mixed number or number of feet. */
    private static final Pattern SIZE =
            Pattern.compile("(?<=[ \\[])(\\d+-\\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?)('?)(?=[ ,\\]}]|$)");

    /** What stands before a number that is no size: counts, angles, prices, feet to run, days. */
    private static final Pattern NO_SIZE = Pattern.compile(
            "(?:price: |outside |inside |feet: |quantities: \\[.*|valid-until: .*|joints: .*|azimuth: |altitude: )$");

    /** A number of things before their size. */
    private static final Pattern COUNT = Pattern.compile("^ x \\d+");

    private Twin() {}

    /** The twin; comments are left out, and {@code units: mm} is added. */
    public static String of(String inches) {
        return "units: mm\n"
                + inches.lines()
                        .filter(line -> !line.startsWith("units:"))
                        // nails are called by their trade sizes, and lengths are cut without them
                        .filter(line -> !line.startsWith("fastenings:") && !line.contains(" use: "))
                        .map(line -> line.replaceFirst("(^| )#.*$", ""))
                        .map(Twin::line)
                        .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String line(String line) {
        StringBuilder twin = new StringBuilder();
        Matcher size = SIZE.matcher(line);
        int end = 0;
        while (size.find()) {
            String before = line.substring(0, size.start());
            boolean count = line.contains("on-hand")
                    && size.group(1).length() == 1
                    && COUNT.matcher(line.substring(size.end())).find();
            twin.append(line, end, size.start());
            twin.append(
                    count || NO_SIZE.matcher(before).find()
                            ? size.group()
                            : millimeters(size.group(1), !size.group(2).isEmpty()));
            end = size.end();
        }
        return twin.append(line.substring(end)).toString();
    }

    private static String millimeters(String size, boolean feet) {
        BigDecimal inches = BigDecimal.ZERO;
        for (String part : List.of(size.split("-"))) {
            String[] fraction = part.split("/");
            BigDecimal whole = new BigDecimal(fraction[0]);
            inches = inches.add(fraction.length == 1 ? whole : whole.divide(new BigDecimal(fraction[1])));
        }
        return inches.multiply(new BigDecimal(feet ? "304.8" : "25.4"))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Every number of a JSON text by its place, to five decimals. */
    public static SortedMap<String, Double> numbers(String json) {
        SortedMap<String, Double> numbers = new TreeMap<>();
        collect(new JsonMapper().readTree(json), "", numbers);
        return numbers;
    }

    private static void collect(JsonNode node, String place, SortedMap<String, Double> numbers) {
        if (node.isNumber()) {
            numbers.put(place, Math.rint(node.doubleValue() * 1e5) / 1e5 + 0.0);
        }
        if (node.isObject()) {
            node.properties().forEach(entry -> collect(entry.getValue(), place + "/" + entry.getKey(), numbers));
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), place + "/" + i, numbers);
        }
    }
}
