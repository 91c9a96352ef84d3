package buildup.profiles.outline;

/**
 * A rigid motion of the section, mirror images included: (x, y) goes to (a x + b y + e, c x + d y + f), where
 * {@code ((a, b), (c, d))} is orthogonal.
 */
public record Motion(double a, double b, double c, double d, double e, double f) {
    public static final Motion NONE = new Motion(1, 0, 0, 1, 0, 0);
    /** Upside down: the face stays to the room. */
    public static final Motion OVER = new Motion(1, 0, 0, -1, 0, 0);
    /** End for end: the back becomes the face. */
    public static final Motion ENDS = new Motion(-1, 0, 0, 1, 0, 0);
    /** Exchanges x and y. */
    public static final Motion SWAP = new Motion(0, 1, 1, 0, 0, 0);

    /** A move without a turn, in: {@code dx} out from the wall, {@code dy} up. */
    public static Motion shift(double dx, double dy) {
        return new Motion(1, 0, 0, 1, dx, dy);
    }

    /** A turn about the origin, degrees counterclockwise; whole quarters are exact. */
    public static Motion turn(double degrees) {
        double quarters = degrees / 90;
        if (Math.abs(quarters - Math.rint(quarters)) < Tolerance.ROUNDING) {
            int q = Math.floorMod((int) Math.rint(quarters), 4);
            int cos = q == 0 ? 1 : q == 2 ? -1 : 0;
            int sin = q == 1 ? 1 : q == 3 ? -1 : 0;
            return new Motion(cos, -sin, sin, cos, 0, 0);
        }
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return new Motion(cos, -sin, sin, cos, 0, 0);
    }

    /** Where a point comes to lie, in. */
    public Point apply(Point p) {
        return new Point(a * p.x() + b * p.y() + e, c * p.x() + d * p.y() + f);
    }

    /** This motion first, then {@code next}. */
    public Motion then(Motion next) {
        Point origin = next.apply(new Point(e, f));
        return new Motion(
                next.a * a + next.b * c,
                next.a * b + next.b * d,
                next.c * a + next.d * c,
                next.c * b + next.d * d,
                origin.x(),
                origin.y());
    }

    /** Whether a counterclockwise walk comes out clockwise. */
    public boolean mirrors() {
        return a * d - b * c < 0;
    }
}
