package buildup.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.notice.Notices;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The same stack in millimeters: every bare size of a document in inches becomes its exact number of millimeters. */
public final class MetricTwin {
    private static final BigDecimal MILLIMETERS = new BigDecimal("25.4");
    private static final BigDecimal INCHES_PER_FOOT = BigDecimal.valueOf(12);
    private static final BigDecimal METERS_PER_FOOT = new BigDecimal("0.3048");

    /** Keys whose numbers are no lengths, or whose words are names. */
    private static final Set<String> OTHER = Set.of(
            "name",
            "title",
            "valid-until",
            "work",
            "waste",
            "boards",
            "wood",
            "kind",
            "lay",
            "flip",
            "turn",
            "spring",
            "fixed",
            "grain",
            "cut",
            "moisture",
            "builds",
            "seed",
            "shape",
            "temperature",
            "humidity",
            "altitude",
            "azimuth",
            "latitude",
            "longitude",
            "day",
            "hour",
            "faces",
            "window",
            "utc-offset",
            "corner",
            "angle",
            "per",
            "price",
            "load",
            "left",
            "right",
            "inside",
            "ends",
            "joints",
            "on",
            "solid",
            "rules",
            "noncombustible",
            "parts");

    /** A bare size: a mixed number, a fraction or a decimal. */
    private static final Pattern SIZE = Pattern.compile("(-?)(?:(\\d+)-)?(\\d+)(?:/(\\d+)|(\\.\\d+))?");

    private record Change(int at, String from, String to) {}

    private final String text;
    private final List<Integer> lines = new ArrayList<>();
    private final List<Change> changes = new ArrayList<>();

    private MetricTwin(String text) {
        this.text = text;
        lines.add(0);
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n') {
                lines.add(i + 1);
            }
        }
    }

    /** The twin of a document that counts in inches. */
    public static String of(String yaml) {
        Document document = DocumentReader.read("twin.yaml", yaml.getBytes(UTF_8), new Notices())
                .orElseThrow();
        MetricTwin twin = new MetricTwin(yaml);
        twin.node(document.root(), "");
        StringBuilder metric = new StringBuilder(yaml);
        twin.changes.stream()
                .sorted(Comparator.comparingInt(Change::at).reversed())
                .forEach(change ->
                        metric.replace(change.at(), change.at() + change.from().length(), change.to()));
        String twinned = metric.toString();
        // at the end, so that every line keeps its number
        return yaml.matches("(?s)(.*\n)?units: .*")
                ? twinned.replaceFirst("(?m)^units: in", "units: mm")
                : twinned + "units: mm\n";
    }

    private void node(Node node, String key) {
        if (node instanceof Mapping mapping) {
            for (Entry entry : mapping.entries()) {
                String inner = entry.key().text();
                if (inner.equals("supplies")) {
                    supplies(entry.value());
                    continue;
                }
                // what stands below a named size is a size, whatever its name
                if (key.equals("sizes")
                        || key.equals("at")
                        || key.equals("firebox") && isSide(inner)
                        || !OTHER.contains(inner)) {
                    node(entry.value(), inner);
                }
            }
        } else if (node instanceof Sequence sequence) {
            sequence.items().forEach(item -> node(item, key));
        } else if (node instanceof Scalar scalar) {
            int at = lines.get(scalar.mark().line() - 1) + scalar.mark().column() - 1;
            if (text.startsWith(scalar.text(), at)) {
                changes.add(new Change(at, scalar.text(), told(scalar.text(), key)));
                if (key.equals("feet")) {
                    changes.add(new Change(text.lastIndexOf("feet:", at), "feet:", "meters:"));
                }
            }
        }
    }

    /** Of what is bought only the fasteners and the bead of an adhesive are called by lengths. */
    private void supplies(Node node) {
        if (node instanceof Mapping mapping) {
            for (Entry entry : mapping.entries()) {
                switch (entry.key().text()) {
                    case "of" -> node(entry.value(), "use");
                    case "bead" -> node(entry.value(), "bead");
                    default -> supplies(entry.value());
                }
            }
        } else if (node instanceof Sequence sequence) {
            sequence.items().forEach(this::supplies);
        }
    }

    /** Of an opening these are places; of a plan they are its ends. */
    private static boolean isSide(String key) {
        return key.equals("left") || key.equals("right");
    }

    private static String told(String words, String key) {
        if (key.equals("feet") || key.equals("quantities")) {
            String meters = new BigDecimal(words)
                    .multiply(METERS_PER_FOOT)
                    .stripTrailingZeros()
                    .toPlainString();
            return key.equals("feet") ? meters : meters + " m";
        }
        if (words.endsWith("'")) {
            return size(words.substring(0, words.length() - 1), INCHES_PER_FOOT, false);
        }
        List<String> told = new ArrayList<>();
        String[] parts = words.split(" ", -1);
        for (int i = 0; i < parts.length; i++) {
            boolean gauge = key.equals("use") && (i == 0 || !parts[i - 1].equals("x"));
            boolean count = key.equals("on-hand") && i + 1 < parts.length && parts[i + 1].equals("x");
            boolean plain = key.equals("must") && words.startsWith("load factor");
            told.add(gauge || count || plain ? parts[i] : size(parts[i], BigDecimal.ONE, key.equals("use")));
        }
        return String.join(" ", told);
    }

    private static String size(String part, BigDecimal scale, boolean withUnit) {
        Matcher size = SIZE.matcher(part);
        if (!size.matches()) {
            return part;
        }
        BigDecimal inches = size.group(5) != null
                ? new BigDecimal(size.group(3) + size.group(5))
                : size.group(4) == null
                        ? new BigDecimal(size.group(3))
                        : new BigDecimal(size.group(3)).divide(new BigDecimal(size.group(4)));
        if (size.group(2) != null) {
            inches = inches.add(new BigDecimal(size.group(2)));
        }
        String millimeters = inches.multiply(scale)
                .multiply(MILLIMETERS)
                .stripTrailingZeros()
                .toPlainString();
        return size.group(1) + millimeters + (withUnit ? " mm" : "");
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
