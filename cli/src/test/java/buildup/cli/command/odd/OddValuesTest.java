package buildup.cli.command.odd;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.Ran;
import buildup.shared.text.Marks;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever stands behind a key, the answer is words that say where, and the same words again. Every key of the guide's
 * list is tried, so that a new one is with the day on which it is listed: some of them in the build, each with some values
 * in the long run, and with all by {@code -Dbuildup.odd.values=1000}, others by {@code -Dbuildup.odd.seed=N}.
 */
@Tag("sampled")
class OddValuesTest {
    /** How many values each key is tried with; 0 tries a sixth of the keys with one, and a third as they are. */
    private static final int VALUES = Integer.getInteger("buildup.odd.values", 0);

    private static final long SEED = Long.getLong("buildup.odd.seed", 1);

    /** Seconds within which every one of these small documents is answered, also where others keep the machine busy. */
    private static final double MOST_SECONDS = 20;

    @TempDir
    private Path folder;

    private final Random random = new Random(SEED);
    private final List<String> faults = new ArrayList<>();
    private int asked;

    private record Try(String key, SmallDocument document, boolean stack) {}

    private static List<Try> all() {
        List<Try> all = new ArrayList<>();
        EveryKey.listedOfAStack().forEach(key -> all.add(new Try(key, SmallDocument.ofAStack(key), true)));
        EveryKey.listedOfAnOrder().forEach(key -> all.add(new Try(key, SmallDocument.ofAnOrder(key), false)));
        return all;
    }

    /** The words of a command; those of a report most often, since it asks everything. */
    private List<List<String>> commands(Try one) {
        if (!one.stack) {
            return List.of(List.of("quote", "-"), List.of("quote", "-", "--format", "json"));
        }
        List<List<String>> commands = new ArrayList<>(List.of(
                List.of("report", "-"),
                List.of("report", "-", "--format", "json"),
                List.of("check", "-"),
                List.of("report", "-", "--format", "html"),
                List.of("draw", "-", "-o", folder.resolve("out.svg").toString())));
        if (one.document.planned()) {
            commands.add(List.of("cuts", "-"));
            commands.add(List.of("cuts", "-", "--format", "csv"));
        }
        return commands;
    }

    /** All keys, or in the build one of so many. */
    private List<Try> some(int share) {
        List<Try> some = new ArrayList<>(all());
        Collections.shuffle(some, random);
        return VALUES > 0 ? some : some.subList(0, some.size() / share);
    }

    @Test
    void every_key_stands_in_a_small_document_that_is_answered() {
        assertThat(EveryKey.listedOfAStack()).hasSizeGreaterThan(200);
        assertThat(EveryKey.listedOfAnOrder()).hasSizeGreaterThan(25);
        List<String> refused = new ArrayList<>();
        some(3).stream()
                .filter(one -> !one.key.equals("catalog"))
                .map(one -> new Try(one.document.text(), one.document, one.stack))
                .distinct()
                .forEach(one -> {
                    for (List<String> words :
                            commands(one).subList(0, VALUES > 0 ? commands(one).size() : 1)) {
                        Ran ran = Ran.with(one.key.getBytes(UTF_8), words.toArray(String[]::new));
                        if (ran.code() > 1) {
                            refused.add(words + "\n" + ran.err() + one.key);
                        }
                    }
                });
        assertThat(refused).isEmpty();
    }

    @Test
    void whatever_stands_behind_a_key_is_answered_in_words_that_say_where() {
        List<Try> some = some(6);
        for (Try one : some) {
            List<String> values = new ArrayList<>(OddValue.all());
            Collections.shuffle(values, random);
            List<List<String>> commands = commands(one);
            values.stream()
                    .limit(Math.max(1, VALUES))
                    .forEach(odd -> ask(one, odd, commands.get(asked % commands.size())));
        }
        assertThat(faults).as("of %s questions", asked).isEmpty();
    }

    private void ask(Try one, String odd, List<String> command) {
        asked++;
        byte[] document = one.document.with(odd).getBytes(UTF_8);
        String[] words = command.toArray(String[]::new);
        String which = one.key + ": " + (odd.length() > 80 ? odd.substring(0, 80) : odd) + " " + command + ": ";
        try {
            long before = System.nanoTime();
            Ran ran = Ran.with(document, words);
            double seconds = (System.nanoTime() - before) / 1e9;
            fault(ran).ifPresent(fault -> faults.add(which + fault));
            if (seconds > MOST_SECONDS) {
                faults.add(which + "took " + seconds);
            }
            if (asked % 5 == 0 && !Ran.with(document, words).equals(ran)) {
                faults.add(which + "other words the second time");
            }
        } catch (RuntimeException | AssertionError thrown) {
            faults.add(which + thrown);
        }
    }

    private static Optional<String> fault(Ran ran) {
        String said = ran.err() + ran.out();
        if (said.contains("went wrong inside") || said.contains("too little memory")) {
            return Optional.of(ran.err());
        }
        if (ran.code() < 0 || ran.code() > 3) {
            return Optional.of("exit code " + ran.code());
        }
        if (!Marks.none(said)) {
            return Optional.of("a mark that nobody sees");
        }
        if (ran.code() > 0 && said.isBlank()) {
            return Optional.of("not a word");
        }
        return ran.err()
                .lines()
                .filter(line -> line.startsWith("refusal  ") && !line.matches("refusal  stdin:\\d+:\\d+  .*"))
                .findFirst()
                .map(line -> "does not say where: " + line);
    }

    /** On a screen, in a table, in a file that another program reads, on a page. */
    @Test
    void marks_that_nobody_sees_reach_nothing_that_is_written_whatever_key_they_stand_behind() throws IOException {
        String marks = String.join("", OddValue.marks()).replaceAll("\\\\uD[8C]00", "");
        for (Try one : some(50)) {
            byte[] document = one.document.with("\"ze" + marks + "bra\"").getBytes(UTF_8);
            for (List<String> words : commands(one)) {
                Ran ran = Ran.with(document, words.toArray(String[]::new));
                if (!Marks.none(ran.out()) || !Marks.none(ran.err())) {
                    faults.add(one.key + " " + words);
                }
            }
            for (String kind : one.stack ? List.of("svg", "dxf") : List.<String>of()) {
                Path out = folder.resolve("out." + kind);
                Ran.with(document, "draw", "-", "-o", out.toString());
                Charset letters = kind.equals("svg") ? UTF_8 : Charset.forName("windows-1252");
                if (Files.exists(out) && !Marks.none(Files.readString(out, letters))) {
                    faults.add(one.key + " " + kind);
                }
                Files.deleteIfExists(out);
            }
        }
        assertThat(faults).isEmpty();
    }
}
