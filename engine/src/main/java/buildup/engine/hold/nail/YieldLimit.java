package buildup.engine.hold.nail;

/**
 * The lateral load at which a dowel-like fastener between two members yields, by statics of plastic bearing and plastic
 * hinges; inches, lb, psi.
 *
 * <p>Without a gap the modes are those of NDS 2018, equations 12.3-1 to 12.3-6. A gap between the members adds its
 * length to the arm of the couple: P = (-B + sqrt(B² - 4AC)) / 2A, the form in which the American Wood Council's
 * Technical Report 12 puts the same statics (from memory; derived again and tested here).
 *
 * @param near, far bearing load a running inch in the two members: bearing strength times diameter
 * @param nearLength, farLength inches in the two members
 * @param gap between them
 * @param moment of a plastic hinge: bending yield strength times D³/6
 */
public record YieldLimit(double near, double nearLength, double far, double farLength, double gap, double moment) {
    /** Bearing strength of wood under a fastener thinner than 1/4 in: 16600 G^1.84 psi (NDS 2018, Table 12.3.3 note 2). */
    public static double bearing(double gravity) {
        return 16600 * Math.pow(gravity, 1.84);
    }

    /**
     * Bending yield strength, psi (NDS 2018, Table I1). The table begins at 0.099; thinner nails are taken as that one,
     * though thin wire is harder.
     */
    public static double bending(double diameter) {
        return diameter <= 0.142 ? 100_000 : diameter <= 0.177 ? 90_000 : 80_000;
    }

    /** What the yield load is divided by (NDS 2018, Table 12.3.1B, K_D). */
    public static double divisor(double diameter) {
        return diameter <= 0.17 ? 2.2 : 10 * diameter + 0.5;
    }

    /** The least of the modes, lb. */
    public double least() {
        double crushing = Math.min(near * nearLength, far * farLength);
        double nearEnd = near * nearLength * nearLength / 4;
        double farEnd = far * farLength * farLength / 4;
        double both = root(1 / (4 * near) + 1 / (4 * far), nearLength / 2 + gap + farLength / 2, nearEnd + farEnd);
        double hingeNear = root(1 / (2 * near) + 1 / (4 * far), gap + farLength / 2, moment + farEnd);
        double hingeFar = root(1 / (4 * near) + 1 / (2 * far), nearLength / 2 + gap, nearEnd + moment);
        double hinges = root(1 / (2 * near) + 1 / (2 * far), gap, 2 * moment);
        return Math.min(Math.min(crushing, both), Math.min(Math.min(hingeNear, hingeFar), hinges));
    }

    /** The positive P with a P² + b P = c. */
    private static double root(double a, double b, double c) {
        return (Math.sqrt(b * b + 4 * a * c) - b) / (2 * a);
    }
}
