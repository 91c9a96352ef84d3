package buildup.engine.section.stack;

import buildup.profiles.outline.Box;
import java.util.Set;

/** The two directions in which a piece is placed. */
public enum Axis {
    /** Out from the wall: back and face. */
    OUT("back", "face", Set.of("wall")),
    /** Height: bottom and top. */
    UP("bottom", "top", Set.of("floor", "ceiling", "datum"));

    private final String low;
    private final String high;
    private final Set<String> landmarks;

    Axis(String low, String high, Set<String> landmarks) {
        this.low = low;
        this.high = high;
        this.landmarks = landmarks;
    }

    /** The edge of a piece with the least coordinate: back or bottom. */
    public String low() {
        return low;
    }

    /** The edge of a piece with the greatest coordinate: face or top. */
    public String high() {
        return high;
    }

    Set<String> landmarks() {
        return landmarks;
    }

    /** The lesser edge of a box along this axis: its back or its bottom, in. */
    public double low(Box box) {
        return this == OUT ? box.back() : box.bottom();
    }

    /** The greater edge of a box along this axis: its face or its top, in. */
    public double high(Box box) {
        return this == OUT ? box.face() : box.top();
    }

    /** The axis square to it. */
    public Axis other() {
        return this == OUT ? UP : OUT;
    }

    /** What a coordinate on this axis is called. */
    public String measure() {
        return this == OUT ? "a projection" : "a height";
    }
}
