package buildup.shared.length;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An angle. Stored in degrees, always finite. {@link #equals} is exact. */
public final class Angle implements Comparable<Angle> {

    /** One full turn: nothing on a bench is set further. */
    private static final double GREATEST_READ = 360;

    private static final Pattern WRITTEN = Pattern.compile(
            "(?<sign>[+-]?)(?<whole>\\d+\\.?\\d*|\\.\\d+)(?:[ -](?<num>\\d+)/(?<den>2|4|8))?"
                    + " ?(?:°|º|deg\\.?|degrees?)?",
            Pattern.CASE_INSENSITIVE);

    private final double degrees;

    private Angle(double degrees) {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("An angle must be finite, not " + degrees);
        }
        this.degrees = degrees + 0.0; // turns -0.0 into 0.0
    }

    /**
     * An angle of so many degrees.
     *
     * @throws IllegalArgumentException when not finite
     */
    public static Angle degrees(double degrees) {
        return new Angle(degrees);
    }

    /** Reads {@code 38}, {@code 38°}, {@code 38 deg}, {@code 45.5}, {@code 22-1/2°}; empty past one full turn. */
    public static Optional<Angle> read(String text) {
        Matcher written = WRITTEN.matcher(Spelling.plain(Spelling.tidy(text)));
        if (!written.matches()) {
            return Optional.empty();
        }
        double degrees = Double.parseDouble(written.group("whole"));
        if (written.group("num") != null) {
            degrees += Double.parseDouble(written.group("num")) / Double.parseDouble(written.group("den"));
        }
        return degrees > GREATEST_READ
                ? Optional.empty()
                : Optional.of(new Angle(written.group("sign").equals("-") ? -degrees : degrees));
    }

    /** In degrees, as it was given. */
    public double toDegrees() {
        return degrees;
    }

    /** In radians. */
    public double toRadians() {
        return Math.toRadians(degrees);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Angle angle && Double.compare(degrees, angle.degrees) == 0;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(degrees);
    }

    @Override
    public String toString() {
        return degrees + "°";
    }
}
