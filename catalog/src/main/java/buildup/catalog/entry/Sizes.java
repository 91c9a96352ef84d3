package buildup.catalog.entry;

import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.length.Length;
import buildup.shared.length.LengthUnit;
import buildup.shared.length.LengthWriter;
import java.util.List;
import java.util.stream.Collectors;

/** Sizes as the catalog prints and compares them. */
public final class Sizes {

    /** Two sizes nearer than this are one: above rounding, below any tool. */
    public static final Length SAME = Length.inches(Tolerance.COINCIDENT);

    private static final Phrase BY = Phrase.of("{first} x {then}");

    private Sizes() {}

    /** {@code 3/4 x 5-1/2}, as a call in a document of that unit holds it. */
    public static String call(List<Length> sizes, LengthUnit unit) {
        return sizes.stream().map(size -> LengthWriter.in(unit, size)).collect(Collectors.joining(" x "));
    }

    /** A size that can be typed back as it is printed. */
    public static Figure figure(Length size) {
        return Figure.contact(size.toInches());
    }

    /** A size as a list names it. */
    public static Figure listed(Length size) {
        return Figure.length(size.toInches()).rounded(Rounding.LISTED);
    }

    /** {@code 3/4 x 5-1/2} as figures. */
    public static Phrase figures(List<Length> sizes) {
        return sizes.stream()
                .map(size -> Phrase.of("{size}").with("size", figure(size)))
                .reduce((first, then) -> BY.with("first", first).with("then", then))
                .orElse(Phrase.of(""));
    }

    /** {@code thickness x width}. */
    public static String names(List<String> sizes) {
        return String.join(" x ", sizes);
    }
}
