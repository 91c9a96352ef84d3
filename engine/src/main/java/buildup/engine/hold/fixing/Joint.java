package buildup.engine.hold.fixing;

/**
 * Two bodies that follow each other along a nail, held together by it; lb for one nail.
 *
 * @param near the one toward the head
 * @param far the one toward the point
 * @param gap air and covering between them, in
 * @param bite inches of the nail in the far body
 * @param withdrawal allowable pull apart along the nail: what all bodies beyond hold, and without a head no more than
 *     those before
 * @param lateral allowable load across the nail, bodies in contact on either side bearing together: the lesser of the
 *     two published figures
 * @param otherLateral the greater of the two
 * @param slip whether the figure used is the load at a small slip, and not the yield limit
 * @param perFoot nails in a foot of run
 */
public record Joint(
        int near,
        int far,
        double gap,
        double bite,
        double withdrawal,
        double lateral,
        double otherLateral,
        boolean slip,
        double perFoot) {
    /** Allowable pull apart, lb in a foot of run. */
    public double withdrawalPerFoot() {
        return withdrawal * perFoot;
    }

    /** Allowable load across, lb in a foot of run. */
    public double lateralPerFoot() {
        return lateral * perFoot;
    }
}
