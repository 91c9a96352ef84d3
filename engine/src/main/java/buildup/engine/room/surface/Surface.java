package buildup.engine.room.surface;

import java.util.Locale;

/** A surface of the room that a stack comes near to. */
public enum Surface {
    /** Over it. */
    CEILING,
    /** Below it. */
    FLOOR,
    /** Behind it. */
    WALL;

    /** Its word in a table. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
