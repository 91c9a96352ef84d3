package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;
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
            disagreement(wish.calipers().get(0), off, "the stated unit", notices);
        }
        for (Caliper caliper : wish.calipers().stream().skip(1).toList()) {
            disagreement(caliper, caliper.size() - caliper.across().of(scaled), "the first size", notices);
        }
    }

    private static void disagreement(Caliper caliper, double off, String by, Notices notices) {
        String size = String.format(
                Locale.ROOT,
                "By %s the %s comes out at %.3f; the calipers say %.3f",
                by,
                caliper.across().name().toLowerCase(Locale.ROOT),
                caliper.size() - off,
                caliper.size());
        if (Math.abs(off) > AGREE) {
            notices.add(Notice.problem(
                            "scale-disagrees", String.format(Locale.ROOT, "%s: %.3f apart.", size, Math.abs(off)))
                    .amount(Length.inches(Math.abs(off)))
                    .cure("Measure both again, and trace square to the piece."));
        } else {
            notices.add(Notice.note("scale-checked", size + "."));
        }
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
        String kind = wish.usual().map(usual -> " " + usual.kind()).orElse(" molding");
        String message = String.format(
                Locale.ROOT,
                "The outline is %s %s. As inches that is %s ft of%s: %s?",
                plain(size),
                wide ? "wide" : "high",
                LengthPrinter.fraction(Length.inches(Math.min(size, MOST_SAID) / 12), 2)
                        .replaceFirst("[+-]$", ""),
                kind,
                unit);
        boolean stated = wish.unit().isPresent() || !wish.calipers().isEmpty();
        Notice notice = stated ? Notice.problem("missing-unit", message) : Notice.refusal("missing-unit", message);
        notices.add(notice.cure("State the unit of the tracing, or one caliper size."));
        return stated;
    }

    private static final double MOST_SAID = 120_000;

    private static String plain(double size) {
        return String.format(Locale.ROOT, "%.1f", size).replaceFirst("\\.0$", "");
    }
}
