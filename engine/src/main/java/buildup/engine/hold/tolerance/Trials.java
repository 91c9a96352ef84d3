package buildup.engine.hold.tolerance;

import java.util.List;
import java.util.stream.IntStream;

/** Builds a stack very often and keeps count of its figures. */
final class Trials {
    /** Builds are counted in blocks, which are added in order: the sums do not depend on who counted which. */
    private static final int BLOCK = 2048;

    /** From so many builds on, all processors count. */
    private static final int MANY = 65_536;

    /**
     * What became of one figure.
     *
     * @param mean of its distance from what is drawn, in
     * @param deviation standard deviation, in
     * @param farthest greatest distance from what is drawn, in
     * @param fails in how many builds it was not what is wanted
     */
    record Count(double mean, double deviation, double farthest, long fails) {}

    /** What a block has counted so far. */
    private static final class Sums {
        private final double[] sum;
        private final double[] squares;
        private final double[] farthest;
        private final long[] fails;

        Sums(int figures) {
            this.sum = new double[figures];
            this.squares = new double[figures];
            this.farthest = new double[figures];
            this.fails = new long[figures];
        }

        void add(Sums other) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += other.sum[i];
                squares[i] += other.squares[i];
                farthest[i] = Math.max(farthest[i], other.farthest[i]);
                fails[i] += other.fails[i];
            }
        }
    }

    private final Assembly assembly;
    private final double[] spreads;
    private final List<Gauged> figures;
    private final Draws draws;

    private Trials(Assembly assembly, List<ErrorSource> sources, List<Gauged> figures, ErrorSettings settings) {
        this.assembly = assembly;
        this.spreads = sources.stream().mapToDouble(ErrorSource::spread).toArray();
        this.figures = figures;
        this.draws = new Draws(settings.seed(), settings.normal());
    }

    /** One count for each figure. */
    static List<Count> run(Assembly assembly, List<ErrorSource> sources, List<Gauged> figures, ErrorSettings settings) {
        Trials trials = new Trials(assembly, sources, figures, settings);
        int builds = settings.builds();
        int blocks = (builds + BLOCK - 1) / BLOCK;
        IntStream numbers = IntStream.range(0, blocks);
        List<Sums> counted = (builds >= MANY ? numbers.parallel() : numbers)
                .mapToObj(block -> trials.block(block * (long) BLOCK, Math.min(builds, (block + 1) * (long) BLOCK)))
                .toList();
        Sums all = new Sums(figures.size());
        counted.forEach(all::add);
        return IntStream.range(0, figures.size())
                .mapToObj(i -> count(all, i, builds))
                .toList();
    }

    private static Count count(Sums all, int figure, int builds) {
        double mean = all.sum[figure] / builds;
        double spread = all.squares[figure] / builds - mean * mean;
        return new Count(mean, Math.sqrt(Math.max(0, spread)), all.farthest[figure], all.fails[figure]);
    }

    private Sums block(long from, long to) {
        Sums sums = new Sums(figures.size());
        List<BuiltPiece> pieces = assembly.fresh();
        double[] strayed = new double[spreads.length];
        for (long build = from; build < to; build++) {
            for (int source = 0; source < strayed.length; source++) {
                strayed[source] = spreads[source] * draws.strays(build, source);
            }
            assembly.build(strayed, pieces);
            double lean = assembly.lean(strayed);
            double rise = assembly.rise(strayed);
            for (int i = 0; i < figures.size(); i++) {
                double figure = figures.get(i).gauge().of(pieces, lean, rise);
                double off = figure - figures.get(i).drawn();
                sums.sum[i] += off;
                sums.squares[i] += off * off;
                sums.farthest[i] = Math.max(sums.farthest[i], Math.abs(off));
                sums.fails[i] += figures.get(i).fails(figure) ? 1 : 0;
            }
        }
        return sums;
    }
}
