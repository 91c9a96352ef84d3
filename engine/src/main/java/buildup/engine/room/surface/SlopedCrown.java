package buildup.engine.room.surface;

import buildup.engine.room.run.Course;
import buildup.engine.room.run.Saw;

/**
 * A sprung molding under a ceiling that slopes as it comes out from the wall, at one kind of corner.
 *
 * @param tilt how much of the slope it takes
 * @param spring of it then, degrees from the wall
 * @param height, projection of it then, in: what it covers of the wall and of the ceiling's plan; against the fence its
 *     height stands on the fence, its projection on the table
 * @param offWall, offCeiling how far the flats that lay on wall and ceiling then stand open at most, in; tilted, the molding
 *     is put up until it touches
 * @param inside, corner the corner of the walls, degrees; 0 where the molding goes round none
 * @param flat settings of the saw for that corner, flat on the table
 */
public record SlopedCrown(
        Course course,
        Tilt tilt,
        double spring,
        double height,
        double projection,
        double offWall,
        double offCeiling,
        boolean inside,
        double corner,
        Saw.Flat flat) {
    /** How much of the ceiling's slope the molding takes. */
    public enum Tilt {
        /** Its flat lies on the wall, and its top stands open. */
        NONE("as drawn", 0),
        /** Both flats stand open alike. */
        HALF("halfway", 0.5),
        /** Its flat lies on the ceiling, and its foot stands open. */
        WHOLE("to the ceiling", 1);

        private final String word;
        private final double share;

        Tilt(String word, double share) {
            this.word = word;
            this.share = share;
        }

        /** As it is called in a table. */
        public String word() {
            return word;
        }

        double share() {
            return share;
        }
    }
}
