package buildup.cli.write;

import buildup.profiles.outline.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as the formats want them: at most five places, a point, no exponent, no minus zero. */
final class Numbers {
    private static final int PLACES = 5;

    /** The step from one number that can be written to the next. */
    static final double LEAST = BigDecimal.ONE.movePointLeft(PLACES).doubleValue();

    private Numbers() {}

    /** A place as it will be written. */
    static Point rounded(Point at) {
        return new Point(Double.parseDouble(text(at.x())), Double.parseDouble(text(at.y())));
    }

    static String text(double number) {
        return BigDecimal.valueOf(number)
                .setScale(PLACES, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    static String pair(double x, double y) {
        return text(x) + " " + text(y);
    }
}
