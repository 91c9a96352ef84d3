package buildup.cli.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.cli.command.CommandTree;
import buildup.cli.command.files.Streams;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Whatever is asked, the program answers in words. Twenty questions in the build; {@code mvn -P fuzz} asks ten
 * thousand, more with {@code -Dbuildup.fuzz.runs=1000000}, others from {@code -Dbuildup.fuzz.seed=N}, for so long with
 * {@code -Dbuildup.fuzz.minutes=60}. What is found lies in {@code target/fuzz}.
 */
class FuzzTest {
    private static final long RUNS = Long.getLong("buildup.fuzz.runs", 20);
    private static final long FROM = Long.getLong("buildup.fuzz.from", 0);
    private static final long SEED = Long.getLong("buildup.fuzz.seed", 1);
    private static final double MINUTES = Double.parseDouble(System.getProperty("buildup.fuzz.minutes", "1e6"));

    @TempDir
    private Path folder;

    @Test
    void no_question_brings_it_out_of_its_words() throws IOException {
        Campaign campaign = new Campaign(new Questions(SEED), folder, Path.of("target/fuzz"));
        Thread told = new Thread(() -> System.out.println(campaign.told()));
        if (RUNS > 1000) {
            // also of a run that is ended early
            Runtime.getRuntime().addShutdownHook(told);
        }
        campaign.run(FROM, RUNS, MINUTES);
        assertThat(campaign.faults()).as(campaign.told()).isEmpty();
    }

    @Test
    void the_same_seed_asks_the_same_and_another_seed_something_else() {
        List<String> once = asked(5);
        assertThat(asked(5)).isEqualTo(once);
        // a demo, or a schema, may be asked for as it stands by both
        assertThat(asked(6).stream().filter(once::contains).count()).isLessThan(100);
    }

    /** A new command, a new view, a new form fails here until it is asked; {@link Values} holds what words can stand for. */
    @Test
    void every_command_option_view_and_form_is_asked() {
        CommandTree.commands().forEach((name, command) -> {
            Set<String> wanted = name.equals("watch") ? Set.of(Runner.SAVES) : offered(command);
            Set<String> asked = new TreeSet<>();
            for (long seed = 0; seed < 20_000 && !asked.containsAll(wanted); seed++) {
                asked.addAll(pairs(CommandWords.of(new Chance(seed), name).words()));
            }
            assertThat(asked).as(name).containsAll(wanted);
        });
    }

    /** Its options, and each with all that it may be where the help lists it; what it reads is asked with them. */
    private static Set<String> offered(CommandSpec command) {
        Set<String> offered = new TreeSet<>(Set.of(command.name()));
        command.options().stream()
                .filter(option -> !option.usageHelp() && !option.versionHelp())
                .forEach(option -> {
                    offered.add(option.longestName());
                    CommandWords.choices(option).forEach(choice -> offered.add(option.longestName() + " " + choice));
                });
        command.positionalParameters().forEach(parameter -> offered.addAll(CommandWords.choices(parameter)));
        return offered;
    }

    /** The words, and each with the one behind it. */
    private static Set<String> pairs(List<String> words) {
        Set<String> pairs = new TreeSet<>(words);
        IntStream.range(1, words.size()).forEach(at -> pairs.add(words.get(at - 1) + " " + words.get(at)));
        return pairs;
    }

    @Test
    void a_few_files_are_checked_and_two_stacks_set_beside_each_other() {
        List<Asked> checks = LongStream.range(0, 200)
                .mapToObj(seed -> CommandWords.of(new Chance(seed), "check"))
                .toList();
        assertThat(checks).anyMatch(asked -> asked.parts().size() == 3);
        assertThat(LongStream.range(0, 200).mapToObj(seed -> CommandWords.of(new Chance(seed), "report")))
                .anyMatch(asked ->
                        asked.words().size() > 2 && asked.words().get(2).startsWith(Asked.FOLDER));
    }

    private static List<String> asked(long seed) {
        Questions questions = new Questions(seed);
        return LongStream.range(0, 1000)
                .mapToObj(number -> questions.question(number).written())
                .toList();
    }

    @Test
    void a_question_is_kept_as_it_was_whatever_bytes_are_in_it() {
        byte[] all = new byte[256];
        for (int i = 0; i < all.length; i++) {
            all[i] = (byte) i;
        }
        Asked asked = new Asked(
                List.of("set", "-", "a\nb ü \\x41"), all, Map.of("a.yaml", "== x\n\n".getBytes(), "b", new byte[0]));
        Asked read = Asked.read("# why\n" + asked.written());
        assertThat(read.words()).isEqualTo(asked.words());
        assertThat(read.input()).isEqualTo(all);
        assertThat(read.files().keySet()).containsExactly("a.yaml", "b");
        assertThat(new String(read.files().get("a.yaml"))).isEqualTo("== x\n\n");
    }

    /** A program with a fault that only a colon after "boom" wakes: it is seen, and all else is taken away from it. */
    @Test
    void what_goes_wrong_is_seen_and_made_small() {
        Runner runner = new Runner(folder);
        Runner.Program broken = FuzzTest::broken;
        Asked asked = new Asked(
                List.of("report", "-", "--format", "json"),
                ("title: a\n" + "pieces: []\n".repeat(20) + "wood: boom: x\n").getBytes(),
                Map.of());
        Optional<String> fault = Oracle.fault(asked, runner.run(asked, broken));
        assertThat(fault).contains("inside: java.lang.IllegalStateException at Broken.java:7");
        Asked small = Minimizer.smallest(
                asked, one -> Oracle.fault(one, runner.run(one, broken)).equals(fault));
        assertThat(small.words()).containsExactly("report");
        assertThat(small.input()).asString().isEqualTo("boom:");
    }

    private static int broken(Streams streams, String... words) {
        try {
            if (new String(streams.in().readAllBytes()).contains("boom:")) {
                streams.err()
                        .print(
                                "buildup: something went wrong inside: java.lang.IllegalStateException: x at Broken.java:7\n");
            }
            streams.flush();
            return 2;
        } catch (IOException unread) {
            throw new IllegalStateException(unread);
        }
    }

    @Test
    void each_thing_that_must_not_be_is_called_by_its_name() throws IOException {
        Asked asked = new Asked(List.of("draw", "-", "-o", "@/x.svg"), new byte[0], Map.of());
        assertThat(fault(asked, 9, "x", Map.of())).contains("exit code 9, draw");
        assertThat(fault(asked, 0, "refusal  x  no\n", Map.of())).contains("exit code 0 beside what is said, draw");
        assertThat(fault(asked, 2, "", Map.of())).contains("exit code 2 and not a word, draw");
        assertThat(fault(asked, 0, "", Map.of("x.svg", "<svg><g></svg>".getBytes())))
                .contains("half of svg, draw");
        assertThat(fault(asked, 0, "", Map.of("x.pdf", "%PDF-1.7".getBytes()))).contains("half of pdf, draw");
        assertThat(fault(asked, 0, "", Map.of(".buildup-1.part", new byte[0]))).contains("a part left behind, draw");
        assertThat(fault(asked, 2, "x\n\tat a.B.c(B.java:3)\n", Map.of())).contains("trace: ");
        assertThat(fault(asked, 0, "", Map.of("x.svg", "<svg/>".getBytes()))).isEmpty();
        Outcome one = new Outcome(0, new byte[] {1}, "", Map.of(), 0, 0);
        Outcome two = new Outcome(0, new byte[] {2}, "", Map.of(), 0, 0);
        assertThat(Oracle.difference(asked, one, one)).isEmpty();
        assertThat(Oracle.difference(asked, one, two)).contains("other bytes the second time, draw");
        assertThat(Files.exists(folder)).isTrue();
    }

    private static Optional<String> fault(Asked asked, int code, String err, Map<String, byte[]> files) {
        return Oracle.fault(asked, new Outcome(code, new byte[0], err, files, 0, 0));
    }
}
