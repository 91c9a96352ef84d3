package buildup.cli.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * So many questions, one after the other, and what was wrong with the answers. A question that does not end is found by a
 * watcher, which ends the whole after it has kept it.
 */
final class Campaign {
    /** Seconds of the processor after which a question counts as one without end. */
    private static final double PATIENCE_S = 60;

    private static final int MOST_CALLS = 20;

    /** A long run tells how far it is, so that it can go on from there another day. */
    private static final int TOLD_EVERY = 10_000;

    private final Thread asking = Thread.currentThread();
    private final Questions questions;
    private final Runner runner;
    private final Path findings;
    private final Map<String, Integer> faults = new TreeMap<>();
    private final Map<String, int[]> codes = new TreeMap<>();
    private final Map<String, Long> times = new TreeMap<>();
    private long runs;
    private long twice;
    private long longest;
    private long largest;
    private long most;
    private volatile Optional<Begun> now = Optional.empty();

    private record Begun(long number, Asked asked, long since) {}

    /**
     * @param folder for the files of each question
     * @param findings where what is found is kept, in one file a fault
     */
    Campaign(Questions questions, Path folder, Path findings) {
        this.questions = questions;
        this.runner = new Runner(folder);
        this.findings = findings;
    }

    /** The faults found, with how often. */
    Map<String, Integer> faults() {
        return Map.copyOf(faults);
    }

    /** Asks the questions of those numbers, or until the time is over. */
    void run(long from, long count, double minutes) throws IOException {
        Files.createDirectories(findings);
        Thread watcher = watcher();
        long end = System.nanoTime() + (long) (minutes * 60e9);
        for (long number = from; number < from + count && System.nanoTime() < end; number++) {
            Asked asked = questions.question(number);
            now = Optional.of(new Begun(number, asked, Runner.nanos(asking)));
            one(number, asked);
            if (runs % TOLD_EVERY == 0) {
                System.out.println("asked up to question " + number + "; " + faults.size() + " kinds of fault");
            }
        }
        now = Optional.empty();
        watcher.interrupt();
    }

    private void one(long number, Asked asked) throws IOException {
        Outcome outcome = runner.run(asked);
        count(asked, outcome);
        Optional<String> fault = Oracle.fault(asked, outcome);
        if (fault.isEmpty() && questions.twice(number)) {
            twice++;
            fault = Oracle.difference(asked, outcome, runner.run(asked));
        }
        if (fault.isPresent() && faults.merge(fault.get(), 1, Integer::sum) == 1) {
            keep(number, asked, fault.get());
        }
    }

    private void count(Asked asked, Outcome outcome) {
        runs++;
        String command = Oracle.command(asked);
        if (outcome.code() >= 0 && outcome.code() <= 3) {
            codes.computeIfAbsent(command, any -> new int[4])[outcome.code()]++;
        }
        times.merge(command, outcome.nanos(), Long::sum);
        longest = Math.max(longest, outcome.nanos());
        largest = Math.max(largest, outcome.size());
        most = Math.max(most, outcome.allocated());
    }

    private void keep(long number, Asked asked, String fault) throws IOException {
        write(number, asked, fault);
        now = Optional.empty();
        boolean slow = fault.contains("too long") || fault.contains("too much") || fault.startsWith("memory");
        if (!slow) {
            write(number, Minimizer.smallest(asked, other -> same(other, fault)), fault);
        }
    }

    private boolean same(Asked asked, String fault) {
        Outcome outcome = runner.run(asked);
        Optional<String> found = Oracle.fault(asked, outcome);
        return found.or(() -> fault.startsWith("other bytes")
                        ? Oracle.difference(asked, outcome, runner.run(asked))
                        : Optional.empty())
                .filter(fault::equals)
                .isPresent();
    }

    private void write(long number, Asked asked, String fault) throws IOException {
        String name = fault.replaceAll("[^\\w.]+", "-").replaceAll("^-|-$", "").toLowerCase(Locale.ROOT);
        Files.writeString(
                findings.resolve(name.substring(0, Math.min(90, name.length())) + ".txt"),
                "# " + fault + " (question " + number + ")\n" + asked.written());
    }

    private Thread watcher() {
        Thread thread = new Thread(
                () -> {
                    try {
                        while (true) {
                            Thread.sleep(1000);
                            endless();
                        }
                    } catch (InterruptedException done) {
                        Thread.currentThread().interrupt();
                    }
                },
                "watcher");
        thread.setDaemon(true);
        thread.start();
        return thread;
    }

    private void endless() {
        Optional<Begun> begun = now;
        if (begun.isPresent() && Runner.nanos(asking) - begun.get().since() > PATIENCE_S * 1e9) {
            try {
                write(begun.get().number(), begun.get().asked(), "without end");
            } catch (IOException unkept) {
                System.err.println(unkept);
            }
            System.err.println("question " + begun.get().number() + " does not end");
            Stream.of(asking.getStackTrace()).limit(MOST_CALLS).forEach(call -> System.err.println("    at " + call));
            Runtime.getRuntime().halt(1);
        }
    }

    /** What was asked and what came of it. */
    String told() {
        String byCommand = codes.entrySet().stream()
                .map(entry -> String.format(
                        Locale.ROOT,
                        "%-9s %8d  exit 0: %d, 1: %d, 2: %d, 3: %d; %.1f ms each",
                        entry.getKey(),
                        Arrays.stream(entry.getValue()).sum(),
                        entry.getValue()[0],
                        entry.getValue()[1],
                        entry.getValue()[2],
                        entry.getValue()[3],
                        times.get(entry.getKey())
                                / 1e6
                                / Math.max(1, Arrays.stream(entry.getValue()).sum())))
                .collect(Collectors.joining("\n"));
        String found = faults.entrySet().stream()
                .map(fault -> String.format(Locale.ROOT, "%6d  %s", fault.getValue(), fault.getKey()))
                .collect(Collectors.joining("\n"));
        return String.format(
                Locale.ROOT,
                "%d questions, %d of them asked twice; the longest took %.1f s, the largest answer %.1f MB, the most"
                        + " memory asked for %.1f GB%n%s%n%s",
                runs,
                twice,
                longest / 1e9,
                largest / 1e6,
                most / 1e9,
                byCommand,
                found.isEmpty() ? "nothing found" : found);
    }
}
