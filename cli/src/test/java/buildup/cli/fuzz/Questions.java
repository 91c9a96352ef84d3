package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The questions of a campaign: its seed and a number give one, the same every time. Most are small, so that many can be asked. */
final class Questions {
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private final long seed;

    Questions(long seed) {
        this.seed = seed;
    }

    /** The question of that number. */
    Asked question(long number) {
        Chance chance = new Chance(mixed(seed * 1_000_003 + number));
        Asked asked = CommandWords.any(chance);
        return spoiled(chance.of(0.02) ? mistyped(asked, chance) : asked, chance);
    }

    private static long mixed(long value) {
        long mixed = value * SPREAD;
        mixed = (mixed ^ mixed >>> 32) * SPREAD;
        return mixed ^ mixed >>> 29;
    }

    /** Whether a question is asked twice, to see whether the answer is the same. */
    boolean twice(long number) {
        return mixed(seed ^ number * 31) % 25 == 0;
    }

    private static Asked spoiled(Asked asked, Chance chance) {
        Asked spoiled = asked;
        for (Map.Entry<String, byte[]> part : asked.parts().entrySet()) {
            if (part.getValue().length > 0 && chance.of(0.25)) {
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

    /** Something that a hand mistypes in a word, or a word too few, too many or in another's place. */
    private static Asked mistyped(Asked asked, Chance chance) {
        List<String> words = new ArrayList<>(asked.words());
        int at = chance.below(words.size());
        int other = chance.below(words.size());
        switch (chance.below(5)) {
            case 0 -> words.remove(at);
            case 1 -> words.add(at, words.get(other));
            case 2 -> words.set(at, words.set(other, words.get(at)));
            case 3 -> words.set(at, chance.odd(words.get(at) + chance.any("s", "=", " ", "-", "=x")));
            default -> words.set(at, words.get(at).substring(chance.below(2)));
        }
        return leadsOut(words) ? asked : new Asked(words, asked.input(), asked.files());
    }

    /** Whether something could be written elsewhere than in the folder of the question. */
    private static boolean leadsOut(List<String> words) {
        return IntStream.range(0, words.size())
                .filter(at -> words.get(at).startsWith("-o"))
                .anyMatch(at -> !words.get(at).equals("-o")
                        || at + 1 == words.size()
                        || !words.get(at + 1).startsWith(Asked.FOLDER));
    }
}
