package buildup.profiles.trace;

import buildup.profiles.outline.Tolerance;
import java.util.List;

/**
 * The sizes in which a shop draws a molding, from the coarsest step of its rule on, and how many of all sizes are of just
 * these; the others are of none. Common practice, no source: moldings in inches are drawn in sixteenths, mostly, those in
 * millimeters in whole ones, and where an arc has to fit between two such sizes its radius is of no step at all.
 */
enum ShopRule {
    /** Sixteenths of an inch, thirty-seconds, sixty-fourths. */
    INCHES(List.of(new Step(16, 0.6), new Step(32, 0.15), new Step(64, 0.05)), 1.25),
    /** Whole millimeters, half ones. */
    MILLIMETERS(List.of(new Step(25.4, 0.65), new Step(50.8, 0.15)), 3);

    /** The share of sizes that are of no step. */
    static final double OF_NONE = 0.2;

    private final List<Step> steps;
    private final double farthestRadius;

    ShopRule(List<Step> steps, double farthestRadius) {
        this.steps = steps;
        this.farthestRadius = farthestRadius;
    }

    /**
     * So many standard deviations radii are drawn at most: where an arc has to fit between two sizes of the rule, its radius is
     * none. In inches steps lie near enough to take those for a size; in millimeters 20 tracings of one molding, at each of
     * four scatters, are all read rightly or not at all.
     */
    double farthestRadius() {
        return farthestRadius;
    }

    /** The divisions of the rule, the coarsest first. */
    List<Step> steps() {
        return steps;
    }

    /** How common one size of a step is, per inch: what lies on a coarser one counts there, so the others are half as many. */
    double each(Step step) {
        return step.share() / step.toInch() * (step.equals(steps.get(0)) ? 1 : 2);
    }

    /**
     * How many times as likely it is that a size was meant to be on the rule as that it is of no step.
     *
     * @param size on the rule, in
     * @param own where the points alone put it, in
     * @param unsure standard deviation of that, in
     * @return infinite when the points leave no play
     */
    double odds(double size, double own, double unsure) {
        double none = OF_NONE * Math.sqrt(2 * Math.PI) * unsure;
        double away = (size - own) / unsure;
        return steps.stream()
                .filter(step -> Tolerance.same(step.nearest(size), size))
                .findFirst()
                .map(step -> each(step) * Math.exp(-away * away / 2) / none)
                .orElse(0.0);
    }

    /** A division of the rule, so many to an inch, and the share of sizes that are of it and no coarser one. */
    record Step(double toInch, double share) {
        /** The size of this step that is nearest, in. */
        double nearest(double size) {
            return Math.rint(size * toInch) / toInch;
        }
    }
}
