package buildup.engine.bench;

import buildup.catalog.Catalog;
import buildup.engine.Searched;
import buildup.engine.judge.choice.StackJudge;
import buildup.engine.judge.choice.StackJudgment;
import buildup.engine.judge.search.StackSearch;
import buildup.engine.section.free.FreeSize;
import buildup.engine.section.free.FreeSizes;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.io.InputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLongArray;
import java.util.stream.IntStream;

/**
 * A space of two million stacks of twelve pieces with rules of light, sight, bearing and reveals: how many are judged in a
 * second of one thread's time, and of how many the whole had to be composed; beside composing some of them, whose figures
 * have to be the same.
 */
public final class SearchBench {
    private static final double SAME = 1e-9;

    /** So many stacks beside each other are judged before others are, all over the space. */
    private static final int WINDOW = 8192;

    /** The two ways of judging, by how many rules may be missed: until the first is, and with all figures. */
    private static final int[] UNMET = {0, Integer.MAX_VALUE};

    private SearchBench() {}

    /** @param arguments how many are judged (default 200000), and how many composed (default 20000) */
    public static void main(String[] arguments) throws IOException {
        int judged = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 200_000;
        int whole = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 20_000;
        Document document = DocumentReader.read("million-stacks.yaml", text(), new Notices())
                .orElseThrow();
        Catalog catalog = Catalog.builtIn();
        List<FreeSize> sizes =
                FreeSizes.read(document, catalog::usualCalls, new Notices()).sizes();
        StackJudge judge = Searched.judge(document, catalog).orElseThrow();
        long space = StackSearch.count(sizes).longValueExact();
        long stride = Math.max(1, space / judged);
        // much code takes long to be compiled
        judge(judge, sizes, judged, stride);
        long before = judge.composed();
        double[] each = judge(judge, sizes, judged, stride);
        double dropped = each[0];
        double told = each[1];
        print("%d stacks of %d free sizes", space, sizes.size());
        print("judged until a rule is not met: %.0f a second and thread, %.1f us each", 1e6 / dropped, dropped);
        print("judged with all figures:        %.0f a second and thread, %.1f us each", 1e6 / told, told);
        print("composed whole: %d of %d", judge.composed() - before, judged);
        print("most memory: %.0f MB", memory() / 1e6);
        beside(judge, sizes, whole, space);
    }

    private static byte[] text() throws IOException {
        try (InputStream in = SearchBench.class.getResourceAsStream("/million-stacks.yaml")) {
            return in.readAllBytes();
        }
    }

    /**
     * Microseconds of one thread's time for each of some stacks all over the space, neighbors first as a search takes them,
     * one half judged in one way and the other half in the other. The two take turns, so that neither has what is read for
     * the first time, nor the code that is not compiled yet, to itself.
     */
    private static double[] judge(StackJudge judge, List<FreeSize> sizes, int count, long stride) {
        int threads = Runtime.getRuntime().availableProcessors();
        int chunk = 256;
        AtomicLongArray took = new AtomicLongArray(UNMET.length);
        AtomicLongArray judged = new AtomicLongArray(UNMET.length);
        IntStream.range(0, threads).parallel().forEach(thread -> {
            int turn = 0;
            for (int from = thread * chunk; from < count; from += threads * chunk) {
                int way = (turn++ + from / WINDOW) % UNMET.length;
                int to = Math.min(count, from + chunk);
                long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                for (int i = from; i < to; i++) {
                    // windows lie all over the space, their stacks beside each other
                    long number = i / WINDOW * WINDOW * stride + i % WINDOW;
                    judge.judge(StackSearch.texts(sizes, BigInteger.valueOf(number)), UNMET[way]);
                }
                took.addAndGet(way, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began);
                judged.addAndGet(way, to - from);
            }
        });
        return IntStream.range(0, UNMET.length)
                .mapToDouble(way -> took.get(way) / 1e3 / judged.get(way))
                .toArray();
    }

    private static double memory() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(usage -> usage.getUsed())
                .sum();
    }

    private static void beside(StackJudge judge, List<FreeSize> sizes, int count, long space) {
        SplittableRandom random = new SplittableRandom(20);
        double apart = 0;
        long quick = 0;
        long slow = 0;
        for (int i = 0; i < count; i++) {
            List<String> texts = StackSearch.texts(sizes, BigInteger.valueOf(random.nextLong(space)));
            long first = System.nanoTime();
            StackJudgment one = judge.judge(texts);
            long second = System.nanoTime();
            StackJudgment other = judge.whole(texts);
            slow += System.nanoTime() - second;
            quick += second - first;
            apart = Math.max(apart, apart(one, other));
        }
        if (apart > SAME) {
            throw new IllegalStateException("figures differ by " + apart);
        }
        print(
                "%d of them composed whole: %.0f us each, judged %.0f us each: %.0f times as fast; figures apart by %.1e"
                        + " at most",
                count, slow / 1e3 / count, quick / 1e3 / count, (double) slow / quick, apart);
    }

    private static double apart(StackJudgment one, StackJudgment other) {
        double apart = one.built() == other.built() ? 0 : Double.POSITIVE_INFINITY;
        for (int i = 0; i < other.musts().size(); i++) {
            apart = Math.max(
                    apart,
                    apart(one.musts().get(i).figure(), other.musts().get(i).figure()));
        }
        for (int i = 0; i < other.wishes().size(); i++) {
            apart = Math.max(apart, apart(one.wishes().get(i), other.wishes().get(i)));
        }
        return apart;
    }

    private static double apart(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() == other.isPresent()
                ? Math.abs(one.orElse(0) - other.orElse(0))
                : Double.POSITIVE_INFINITY;
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
