package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Locale;

/** Brings a tracing to inches. */
final class Scaling {
    /** Nobody runs a molding so many times as large as is usual for its kind. */
    private static final double TOO_LARGE = 3;

    /** The largest moldings of any kind, in; common practice, no source. */
    private static final double LARGEST = 12;

    /** Calipers and a fitted outline agree within this, else one of them is wrong, in. */
    private static final double AGREE = 1.0 / 64;

    private Scaling() {}

    /** Inches in one unit of the tracing, as far as is known before it is fitted. */
    static double first(Box raw, Wish wish) {
        if (wish.unit().isPresent()) {
            return wish.unit().get().of(1).toInches();
        }
        return wish.calipers().stream()
                .findFirst()
                .map(caliper -> caliper.size() / caliper.across().of(raw))
                .filter(Double::isFinite)
                .orElse(1.0);
    }

    /** By how much a fitted outline is to be enlarged, so that it is as large as the calipers say. */
    static double second(Box fitted, List<Caliper> calipers) {
        return calipers.stream()
                .findFirst()
                .map(caliper -> caliper.size() / caliper.across().of(fitted))
                .orElse(1.0);
    }

    /** Says where the other calipers disagree with the first, or the unit with all of them. */
    static void check(Box scaled, double enlarged, Wish wish, Notices notices) {
        if (wish.unit().isPresent() && !wish.calipers().isEmpty()) {
            double off = wish.calipers().get(0).size() * (1 - 1 / enlarged);
            disagreement(wish.calipers().get(0), off, TraceNotices.BY_UNIT, notices);
        }
        for (Caliper caliper : wish.calipers().stream().skip(1).toList()) {
            disagreement(caliper, caliper.size() - caliper.across().of(scaled), TraceNotices.BY_FIRST_SIZE, notices);
        }
    }

    private static void disagreement(Caliper caliper, double off, Phrase by, Notices notices) {
        Notice said = (Math.abs(off) > AGREE ? TraceNotices.DISAGREES : TraceNotices.AGREES)
                .with("by", by)
                .with("across", caliper.across().name().toLowerCase(Locale.ROOT))
                .with("outline", Figure.fine(caliper.size() - off))
                .with("calipers", Figure.fine(caliper.size()));
        notices.add(Math.abs(off) > AGREE ? said.amount(Figure.fine(Math.abs(off))) : said);
    }

    /** Whether the size is one that is run; says so when it is not. A stated unit or a caliper size is believed. */
    static boolean plausible(Box inches, Wish wish, Notices notices) {
        double size = Math.max(inches.width(), inches.height());
        double largest = wish.usual().map(usual -> TOO_LARGE * usual.largest()).orElse(TOO_LARGE * LARGEST);
        if (size <= largest) {
            return true;
        }
        boolean wide = inches.width() >= inches.height();
        String unit = List.of(LengthUnit.MILLIMETRE, LengthUnit.CENTIMETRE).stream()
                .filter(other -> other.of(size).toInches() <= largest)
                .map(LengthUnit::symbol)
                .reduce((first, last) -> first)
                .orElse("what unit");
        boolean stated = wish.unit().isPresent() || !wish.calipers().isEmpty();
        notices.add((stated ? TraceNotices.TOO_LARGE : TraceNotices.WHICH_UNIT)
                .with("size", bare(size))
                .with("across", wide ? "wide" : "high")
                .with("feet", Figure.of(Quantity.RUN, Math.min(size, MOST_SAID) / 12))
                .with("kind", wish.usual().map(Wish.Usual::kind).orElse("molding"))
                .with("unit", unit));
        return stated;
    }

    private static final double MOST_SAID = 120_000;

    /** A size in a unit that nobody knows yet. */
    private static Figure bare(double size) {
        double tenths = Math.rint(size * 10);
        return Figure.of(Quantity.COUNT, size).rounded(Rounding.decimals(tenths % 10 == 0 ? 0 : 1));
    }
}
