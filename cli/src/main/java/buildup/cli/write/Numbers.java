package buildup.cli.write;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as the formats want them: at most five places, a point, no exponent, no minus zero. */
final class Numbers {
    private static final int PLACES = 5;

    private Numbers() {}

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
