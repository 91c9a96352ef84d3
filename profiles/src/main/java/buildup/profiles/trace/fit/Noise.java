package buildup.profiles.trace.fit;

/**
 * How traced points stray from the true curve.
 *
 * @param scatter standard deviation of the distance of one point, in
 * @param alike so many points in a row stray about as one; 1 for points that know nothing of each other
 */
public record Noise(double scatter, double alike) {

    /**
     * What the scatter would be if the points strayed alone and told as much of the curve: a hand that shakes says the
     * same over and over. This is the root of the variance of a long mean times the number of its points.
     */
    public double weighed() {
        return scatter * Math.sqrt(alike);
    }

    /** The same, a scatter below {@code least} raised to it. */
    public Noise atLeast(double least) {
        return scatter < least ? new Noise(least, Math.max(1, alike * scatter * scatter / (least * least))) : this;
    }

    /** So many points that stray alone tell as much as these. */
    public double worth(int points) {
        return points / alike;
    }
}
