package buildup.engine.room.plan;

import java.util.Optional;

/**
 * What stands behind wall and ceiling along a stretch; what is absent is not known.
 *
 * @param studs of the wall
 * @param joists of the ceiling
 */
public record Framing(Optional<Studs> studs, Optional<Joists> joists) {
    /** Nothing is known. */
    public static final Framing UNKNOWN = new Framing(Optional.empty(), Optional.empty());

    /**
     * Behind a wall.
     *
     * @param row absent: masonry, which takes a plug anywhere
     * @param topPlate, bottomPlate how high the plates are that run along under the ceiling and on the floor, in; 0: none
     *     that is counted
     */
    public record Studs(Optional<FramingRow> row, double topPlate, double bottomPlate) {}

    /**
     * Over a ceiling.
     *
     * @param along whether they run along the wall: their places are then distances out from it; else they run out into
     *     the room, and their places lie along the stretch
     */
    public record Joists(FramingRow row, boolean along) {}

    /** Whether it is known that the wall is masonry. */
    public boolean masonry() {
        return studs.filter(known -> known.row().isEmpty()).isPresent();
    }

    /** The same, and where it knows nothing what is known of the whole run. */
    Framing or(Framing other) {
        return new Framing(studs.or(other::studs), joists.or(other::joists));
    }
}
