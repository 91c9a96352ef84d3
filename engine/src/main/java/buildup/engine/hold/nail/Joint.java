package buildup.engine.hold.nail;

import java.util.List;

/**
 * Two bodies that follow each other along a nail, held together by it; lb for one nail.
 *
 * @param near the one toward the head
 * @param far the one toward the point
 * @param gap air and covering between them, in
 * @param bite inches of the nail in the far body
 * @param withdrawal what all bodies beyond hold along the nail
 * @param head what the side of the head holds along the nail: where the head pulls through the outer piece, wood between
 *     gripping the shank besides; of a pin without a head, what grips its shank
 * @param lateral allowable load across the nail, bodies in contact on either side bearing together: the lesser of the
 *     two published figures
 * @param across what the lateral load was reduced by
 * @param otherLateral the greater of the two
 * @param slip whether the figure used is the load at a small slip, and not the yield limit
 * @param byItsPoint whether what is beyond would be too little for a row of its own: a piece in between does not hang by
 *     that (common practice, no source); of the first joint it is a check of the row
 * @param perFoot nails in a foot of run
 */
public record Joint(
        int near,
        int far,
        double gap,
        double bite,
        double withdrawal,
        double head,
        double lateral,
        double otherLateral,
        boolean slip,
        List<Factor> across,
        boolean byItsPoint,
        double perFoot) {
    /** Copies the list. */
    public Joint {
        across = List.copyOf(across);
    }

    /** The same of so large a share of the row's nails. */
    public Joint of(double share) {
        return new Joint(
                near,
                far,
                gap,
                bite,
                withdrawal,
                head,
                lateral,
                otherLateral,
                slip,
                across,
                byItsPoint,
                perFoot * share);
    }

    /** Whether nothing is published of what it holds across, as in a panel or in masonry: it counts as nothing then. */
    public boolean unpublishedAcross() {
        return across.stream().map(Factor::why).anyMatch(why -> why == Factor.Why.PANEL || why == Factor.Why.MASONRY);
    }

    /** Allowable pull apart along the nail: the weaker side. */
    public double pull() {
        return Math.min(withdrawal, head);
    }

    /** Whether the side of the head gives first. */
    public boolean headGoverns() {
        return head < withdrawal;
    }

    /** The same, lb in a foot of run. */
    public double pullPerFoot() {
        return pull() * perFoot;
    }

    /** What the side of the head holds, lb in a foot of run. */
    public double headPerFoot() {
        return head * perFoot;
    }

    /** What the bodies beyond hold, lb in a foot of run. */
    public double withdrawalPerFoot() {
        return withdrawal * perFoot;
    }

    /** Allowable load across, lb in a foot of run. */
    public double lateralPerFoot() {
        return lateral * perFoot;
    }
}
