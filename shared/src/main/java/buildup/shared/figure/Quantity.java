package buildup.shared.figure;

/**
 * What a number counts, and the unit in which the engine and JSON hold it whatever the unit of the document.
 *
 * <p>Metric factors are exact by definition: 25.4 mm to the inch, 0.45359237 kg to the pound, 9.80665 m/s2 of standard
 * gravity (NIST Special Publication 811, 2008 edition, Appendix B.8).
 */
public enum Quantity {
    /** Inches. */
    LENGTH("length", "in", "mm", 25.4, 1, 1),
    /** A long length, in feet. */
    RUN("length", "ft", "m", 0.3048, 1, 2),
    /** Square inches. */
    AREA("area", "sq in", "sq cm", 6.4516, 2, 2),
    /** Degrees. */
    ANGLE("angle", "degrees", "degrees", 1, 1, 1),
    /** Pounds of force. */
    FORCE("force", "lb", "N", Factors.NEWTONS, 2, 1),
    /** Pounds of force along a foot of the run. */
    LINE_FORCE("force", "lb a foot", "N a meter", Factors.NEWTONS / 0.3048, 2, 1),
    /** Pounds of force along an inch of a nail. */
    FORCE_PER_INCH("force", "lb an inch", "N a millimeter", Factors.NEWTONS / 25.4, 2, 2),
    /** Inch-pounds along a foot of the run. */
    LINE_MOMENT("force", "inch-pounds a foot", "N m a meter", Factors.NEWTONS * 0.0254 / 0.3048, 2, 2),
    /** Pounds as a weight of wood. */
    WEIGHT("force", "lb", "kg", Factors.KILOGRAMS, 2, 2),
    /** Pounds as a weight of wood along a foot of the run. */
    LINE_WEIGHT("force", "lb a foot", "kg a meter", Factors.KILOGRAMS / 0.3048, 2, 2),
    /** Pounds of wood in a cubic foot. */
    DENSITY("force", "lb a cubic foot", "kg a cubic meter", Factors.KILOGRAMS / 0.028316846592, 1, 0),
    /** A part of one; printed in percent. */
    SHARE("share", "%", "%", 100, 0, 0),
    /** Percent of water by the weight of the dry wood; kept in percent. */
    MOISTURE("count", "%", "%", 1, 1, 1),
    /** How many times. */
    TIMES("count", "times", "times", 1, 1, 1),
    /** One thing as so many of another like it. */
    RATIO("count", "", "", 1, 3, 3),
    /** A whole number of things. */
    COUNT("count", "", "", 1, 0, 0),
    /** An amount of money, of no currency. */
    MONEY("count", "", "", 1, 2, 2),
    /** Money for each foot of the run. */
    MONEY_PER_RUN("count", "a foot", "a meter", 1 / 0.3048, 2, 2),
    /** Money for each board foot of lumber. */
    MONEY_PER_BOARD_FOOT("count", "a board foot", "a cubic meter", 1 / 0.002359737216, 2, 2),
    /** Money for each inch. */
    MONEY_PER_INCH("count", "an inch", "a centimeter", 1 / 2.54, 2, 2),
    /** Money for each square foot. */
    MONEY_PER_SURFACE("count", "a square foot", "a square meter", 1 / 0.09290304, 2, 2),
    /** A large area, in square feet. */
    SURFACE("area", "sq ft", "sq m", 0.09290304, 2, 2),
    /** A volume of what is poured, in US fluid ounces: 231 cubic inches have 128 of them. */
    VOLUME("count", "fl oz", "mL", 29.5735295625, 1, 0),
    /** Board feet of lumber. */
    BOARD_FEET("count", "board feet", "cubic meters", 0.002359737216, 2, 4),
    /** Feet of feed in a minute. */
    FEED("count", "feet a minute", "meters a minute", 0.3048, 0, 1),
    /** Turns in a minute. */
    RPM("count", "rpm", "rpm", 1, 0, 0),
    /** Knife marks in an inch. */
    MARKS("count", "marks an inch", "marks a centimeter", 1 / 2.54, 1, 1),
    /** Hours since midnight, which people read as a time of day. */
    CLOCK("count", "", "", 1, 4, 4),
    /** Hours of work. */
    HOURS("count", "hours", "hours", 1, 2, 2);

    private static final class Factors {
        private static final double KILOGRAMS = 0.45359237;
        private static final double NEWTONS = KILOGRAMS * 9.80665;
    }

    private final String kind;
    private final String customary;
    private final String metric;
    private final double factor;
    private final int places;
    private final int metricPlaces;

    Quantity(String kind, String customary, String metric, double factor, int places, int metricPlaces) {
        this.kind = kind;
        this.customary = customary;
        this.metric = metric;
        this.factor = factor;
        this.places = places;
        this.metricPlaces = metricPlaces;
    }

    /** What JSON calls it in the values of a notice: length, angle, force, area, share or count. */
    public String kind() {
        return kind;
    }

    /** The unit as printed behind a number, or over a column; empty for bare numbers. */
    public String unit(boolean inMetric) {
        return inMetric ? metric : customary;
    }

    /** The number in the unit that people read, of one in the unit of the engine. */
    public double shown(double amount, boolean inMetric) {
        return this == SHARE || inMetric ? amount * factor : amount;
    }

    /** The number in the unit of the engine, of one that people write. */
    public double held(double amount, boolean inMetric) {
        return this == SHARE || inMetric ? amount / factor : amount;
    }

    /** Decimals that people read where nothing else is said. */
    public int places(boolean inMetric) {
        return inMetric ? metricPlaces : places;
    }
}
