package buildup.engine.judge.clearance;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Mark;
import java.util.Optional;

/**
 * A place that trim has to keep out of.
 *
 * @param region the place, in; a side that is not bounded is infinite
 * @param center of a place that is round and has no size of its own, as a sprinkler
 * @param clear air that has to be left round it, in
 */
public record KeepClear(String name, Kind kind, Box region, Optional<Point> center, double clear, Mark mark) {
    /** What is kept clear. */
    public enum Kind {
        /** Any place. */
        BOX("box"),
        /** The roll and the cloth of a shade. */
        SHADE("shade"),
        /** The leaf of a door that swings out from the wall. */
        DOOR("door"),
        /** A wall that trim turns towards at the end of its run. */
        SIDE_WALL("side-wall"),
        /** A sprinkler's head. */
        SPRINKLER("sprinkler");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** Its word in documents and reports. */
        public String word() {
            return word;
        }
    }
}
