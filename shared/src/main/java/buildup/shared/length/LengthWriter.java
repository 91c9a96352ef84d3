package buildup.shared.length;

/**
 * Sizes in the language of documents: in profile words that are written out, and in the calls by which the trade knows
 * boards, nails and moldings. Where a size is told to somebody, give a figure in its place: it is worded at the edge, in
 * the unit of the document.
 */
public final class LengthWriter {
    /** The finest step of a rule. */
    private static final int FINEST = 64;

    private LengthWriter() {}

    /** The nearest 64th of an inch, {@code +} or {@code -} behind it when the true size is more or less. */
    public static String inches(Length length) {
        return LengthPrinter.fraction(length, FINEST);
    }

    /** As a call holds it in a document of that unit, where a metric size has to name its unit beside others. */
    public static String in(LengthUnit unit, Length length) {
        return unit.isMetric() ? LengthPrinter.trimmed(length.toMillimeters(), 4) + " mm" : inches(length);
    }
}
