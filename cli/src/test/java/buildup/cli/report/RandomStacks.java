package buildup.cli.report;

import java.util.List;
import java.util.Random;

/** Stacks as nobody would build them, in names of many scripts; the same for the same seed. */
public final class RandomStacks {
    private static final List<String> NAMES = List.of(
            "frieze",
            "飾り縁",
            "карниз верхний",
            "a name of many letters that is there to be wrapped soon",
            "Zierleistenhalterungsbefestigungsklotz",
            "كورنيش",
            "e\u0301tage\u0300re",
            "\uD83E\uDEB5 block",
            "크라운");

    private static final List<String> PROFILES = List.of(
            "board 3/4 in x 5-1/2 in",
            "1x4",
            "cove-bed 1-1/4 in x 1-3/8 in",
            "plain-crown 3-1/4 in",
            "cove 3/4 in x 3/4 in",
            "board 25.4 mm x 100 mm",
            "board 0.7071 in x 3.1416 in");

    private RandomStacks() {}

    public static String of(long seed) {
        Random random = new Random(seed);
        StringBuilder yaml = new StringBuilder(
                        "title: \"" + "A stack of chance ".repeat(random.nextInt(8)) + seed + "\"\n")
                .append(random.nextBoolean() ? "units: mm\n" : "")
                .append("space: { floor: -84 in, ceiling: 12 in, projection: 4 in }\n")
                .append("pieces:\n");
        int count = 1 + random.nextInt(12);
        for (int i = 0; i < count; i++) {
            yaml.append("  - { name: \"")
                    .append(any(random, NAMES))
                    .append(' ')
                    .append(i)
                    .append("\", profile: ")
                    .append(any(random, PROFILES));
            yaml.append(random.nextInt(4) == 0 ? ", kind: nailer" : "");
            yaml.append(", back: ")
                    .append(place(random))
                    .append(", bottom: ")
                    .append(place(random))
                    .append(" }\n");
        }
        return yaml.toString();
    }

    private static String place(Random random) {
        return random.nextInt(6) + " in + " + random.nextInt(16) + "/16 in";
    }

    private static String any(Random random, List<String> words) {
        return words.get(random.nextInt(words.size()));
    }
}
