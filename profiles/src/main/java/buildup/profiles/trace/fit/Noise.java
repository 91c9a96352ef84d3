package buildup.profiles.trace.fit;

/**
 * How traced points stray from the true curve.
 *
 * @param scatter standard deviation of the distance of one point, in
 * @param alike so many points in a row stray about as one; 1 for points that know nothing of each other
 * @param unsure standard deviation of the weighed noise itself, as a share of it; 0 where it is known
 */
public record Noise(double scatter, double alike, double unsure) {
    /** Noise that is known, as that of a scanner's dots. */
    public Noise(double scatter, double alike) {
        this(scatter, alike, 0);
    }

    /**
     * Noise that was measured on so many points. How many stray as one is known to a share of {@code sqrt(2 (2 M + 1) / n)}
     * with a window M of three times as many (N. Madras, A. Sokal, J. Stat. Phys. 50 (1988) 109, from memory), and the
     * noise that is weighed to half of that.
     */
    static Noise measured(double scatter, double alike, int points) {
        return new Noise(scatter, alike, alike > 1 ? Math.sqrt(2 * (6 * alike + 1) / points) / 2 : 0);
    }

    /**
     * What the scatter would be if the points strayed alone and told as much of the curve: a hand that shakes says the
     * same over and over. This is the root of the variance of a long mean times the number of its points.
     */
    public double weighed() {
        return scatter * Math.sqrt(alike);
    }

    /** The same, a scatter below {@code least} raised to it. */
    public Noise atLeast(double least) {
        return scatter < least
                ? new Noise(least, Math.max(1, alike * scatter * scatter / (least * least)), unsure)
                : this;
    }

    /** So many points that stray alone tell as much as these. */
    public double worth(int points) {
        return points / alike;
    }
}
