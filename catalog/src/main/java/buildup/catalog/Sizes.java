package buildup.catalog;

import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
import java.util.List;
import java.util.stream.Collectors;

/** Sizes as the catalog prints and compares them. */
final class Sizes {

    /** Two sizes nearer than this are one: above rounding, below any tool. */
    static final Length SAME = Length.inches(1e-9);

    private Sizes() {}

    /** {@code 3/4 x 5-1/2}, to the 64th. */
    static String text(List<Length> sizes) {
        return sizes.stream().map(Sizes::text).collect(Collectors.joining(" x "));
    }

    static String text(Length size) {
        return LengthPrinter.fraction(size, 64);
    }
}
