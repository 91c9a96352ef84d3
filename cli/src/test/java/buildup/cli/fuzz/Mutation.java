package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import buildup.cli.Ran;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Changes documents without regard to what they mean: tokens and lines, or bytes. */
final class Mutation {
    private static final Pattern TOKEN =
            Pattern.compile("[\\p{L}_][\\p{L}\\d_-]*|\\d[\\d./'-]*|\\s+|.", Pattern.DOTALL);
    private static final Pattern QUOTED = Pattern.compile("`([^`\\n]+)`");

    private static final String SIGNS = "0123456789-/.,:[]{}'\" \n&*!|>%@`#?~";

    /** Every word of the guide's list of keys, so that what a new capability reads is here as soon as it is listed. */
    private static final List<String> KEYS = keys();

    private final Chance chance;

    Mutation(Chance chance) {
        this.chance = chance;
    }

    private static List<String> keys() {
        Matcher quoted = QUOTED.matcher(Ran.read(Path.of("guide/keys.md")));
        return quoted.results()
                .flatMap(one -> Stream.of(one.group(1).split("[.\\s{}\\[\\],:]+")))
                .filter(word -> !word.isBlank())
                .distinct()
                .sorted()
                .toList();
    }

    /** A few tokens or lines dropped, doubled, swapped, or in each other's place. */
    String tokens(String text) {
        List<String> tokens = new ArrayList<>(
                TOKEN.matcher(text).results().map(found -> found.group()).toList());
        for (int i = 1 + chance.below(4); i > 0 && !tokens.isEmpty(); i--) {
            int at = chance.below(tokens.size());
            int other = chance.below(tokens.size());
            switch (chance.below(8)) {
                case 0 -> tokens.remove(at);
                case 1 -> tokens.add(at, tokens.get(other));
                case 2 -> tokens.set(at, tokens.get(other));
                case 3 -> tokens.set(at, chance.any(KEYS));
                case 4 -> tokens.add(at, " " + chance.any(KEYS) + ": " + chance.size(0, 9) + ", ");
                case 5 -> tokens.set(at, tokens.set(other, tokens.get(at)));
                case 6 -> number(tokens, at);
                default -> {
                    return lines(String.join("", tokens));
                }
            }
        }
        return String.join("", tokens);
    }

    /** The next number from there on becomes another. */
    private void number(List<String> tokens, int from) {
        for (int at = from; at < tokens.size(); at++) {
            if (Character.isDigit(tokens.get(at).charAt(0))) {
                tokens.set(at, chance.any(chance.size(0, 20), chance.size(-1, 1), chance.odd("0")));
                return;
            }
        }
    }

    private String lines(String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = chance.below(lines.size());
        int other = chance.below(lines.size());
        switch (chance.below(4)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(other));
            case 2 -> lines.set(at, lines.set(other, lines.get(at)));
            default -> lines.set(at, " ".repeat(chance.below(6)) + lines.get(at).strip());
        }
        return String.join("\n", lines);
    }

    /** A few bytes changed, dropped, doubled or taken from elsewhere; or the end cut off. */
    byte[] bytes(byte[] sound) {
        StringBuilder text = new StringBuilder(new String(sound, ISO_8859_1));
        for (int i = 1 + chance.below(4); i > 0 && !text.isEmpty(); i--) {
            int at = chance.below(text.length());
            int end = Math.min(text.length(), at + 1 + chance.below(8));
            switch (chance.below(7)) {
                case 0 -> text.setCharAt(at, (char) chance.below(256));
                case 1 -> text.delete(at, end);
                case 2 -> text.insert(at, text.substring(at, end));
                case 3 -> text.insert(chance.below(text.length()), text.substring(at, end));
                case 4 -> text.setCharAt(at, SIGNS.charAt(chance.below(SIGNS.length())));
                case 5 -> text.setLength(chance.of(0.2) ? at : text.length());
                default -> text.setCharAt(at, (char) (text.charAt(at) ^ 1 << chance.below(8)));
            }
        }
        return text.toString().getBytes(ISO_8859_1);
    }
}
