package buildup.engine.hold.tolerance;

import buildup.profiles.outline.Point;

/**
 * Where an edge goes, made ready to be asked very often.
 *
 * @param target number of the piece on which it hangs; -1 for a level
 * @param edge which of its edges; of a level it means nothing
 * @param member a place on the member, from the home of the target; the origin for other edges
 * @param at the level, or what is added to the edge, in
 * @param sway how far it moves with one inch of lean of the wall, in
 * @param ceiling whether it moves with the ceiling
 */
record PlaceRule(int target, Edge edge, Point member, double at, double sway, boolean ceiling) {
    /** What of the target it hangs on. */
    enum Edge {
        LOW,
        HIGH,
        MEMBER
    }

    static PlaceRule level(double at, double sway, boolean ceiling) {
        return new PlaceRule(-1, Edge.LOW, Point.ORIGIN, at, sway, ceiling);
    }
}
