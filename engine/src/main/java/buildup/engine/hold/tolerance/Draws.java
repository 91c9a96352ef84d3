package buildup.engine.hold.tolerance;

/**
 * Random numbers that are known by their place alone: the same for a seed, a build and a source, whoever asks and in
 * whatever order. A counter is stirred by the finishing steps of SplitMix64 (Steele, Lea, Flood, Fast splittable
 * pseudorandom number generators, OOPSLA 2014).
 */
final class Draws {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1p-53;

    private final long key;
    private final boolean normal;

    Draws(long seed, boolean normal) {
        this.key = stirred(seed + GOLDEN);
        this.normal = normal;
    }

    private static long stirred(long counter) {
        long z = counter;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** A number from 0 up to 1. */
    private double unit(long build, int number) {
        return (stirred(stirred(key + build * GOLDEN) + (number + 1) * GOLDEN) >>> 11) * UNIT;
    }

    /**
     * How far a source strays in a build, as a share of its spread: each share from -1 to 1 as likely, or normal with the
     * spread as three standard deviations (by the method of Box and Muller).
     */
    double strays(long build, int source) {
        if (!normal) {
            return 2 * unit(build, 2 * source) - 1;
        }
        double length = Math.sqrt(-2 * Math.log(1 - unit(build, 2 * source)));
        return length * Math.cos(2 * Math.PI * unit(build, 2 * source + 1)) / 3;
    }
}
