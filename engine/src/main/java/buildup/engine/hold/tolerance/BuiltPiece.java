package buildup.engine.hold.tolerance;

import buildup.profiles.outline.Point;

/**
 * A piece of one build: its own sizes strayed, and placed anew. Changed in place, for there are very many builds; one
 * thread holds it.
 */
final class BuiltPiece {
    /** Least and greatest place out and up, in. */
    double back;

    double face;
    double bottom;
    double top;

    /** How its shape has grown: out for an inch out, out for an inch up and back, up for an inch up. */
    double out = 1;

    double both;
    double up = 1;

    /** Least place out and up of the grown shape, from the place that it grows from. */
    double lowOut;

    double lowUp;

    /** Greatest place of it. */
    double highOut;

    double highUp;

    void take(BuiltPiece other) {
        back = other.back;
        face = other.face;
        bottom = other.bottom;
        top = other.top;
        out = other.out;
        both = other.both;
        up = other.up;
        lowOut = other.lowOut;
        lowUp = other.lowUp;
        highOut = other.highOut;
        highUp = other.highUp;
    }

    /** Where a place of the piece is now. */
    double x(Point fromHome) {
        return back + out * fromHome.x() + both * fromHome.y() - lowOut;
    }

    double y(Point fromHome) {
        return bottom + both * fromHome.x() + up * fromHome.y() - lowUp;
    }
}
