package buildup.engine.room.plan;

import java.util.Optional;

/**
 * The room along a stretch as it was measured; what is absent is taken as drawn.
 *
 * @param ceiling, floor heights over the datum, in
 * @param wall how far it stands out from the wall plane, in; negative where it is hollow
 */
public record MeasuredRoom(Optional<Measured> ceiling, Optional<Measured> floor, Optional<Measured> wall) {
    /** Nothing was measured. */
    public static final MeasuredRoom AS_DRAWN = new MeasuredRoom(Optional.empty(), Optional.empty(), Optional.empty());
}
