package buildup.profiles.trace;

import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.trace.ring.Trail;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Brings a tracing to inches. */
final class Scaling {
    /** Nobody runs a molding so many times as large as is usual for its kind. */
    private static final double TOO_LARGE = 3;

    /** The largest moldings of any kind, in; common practice, no source. */
    private static final double LARGEST = 12;

    /** And the outline is told as well as so many standard deviations of its points. */
    private static final double AS_TOLD = 2;

    /**
     * Sizes of members and a fitted outline agree within this, else one of them is wrong, in; small ones within less. Where
     * a member ends is told less well than where the whole does.
     */
    private static final double AGREE = 1.0 / 64;

    /** The size of a member is measured within this share of itself, or a little, in. */
    private static final double AGREE_SHARE = 0.01;

    private static final double AGREE_LEAST = 1.0 / 128;

    /** A size that is off by more than this share of itself was not taken where it is said to have been. */
    private static final double CONTRADICTED = 0.15;

    /** As large as a molding commonly is, in. */
    private static final double USUAL = 3;

    private Scaling() {}

    /** The box round all points of a tracing; empty without any. */
    static Optional<Box> box(List<Trail> trails) {
        return trails.stream()
                .flatMap(trail -> trail.points().stream())
                .map(p -> Box.of(p, p))
                .reduce(Box::with);
    }

    /** Inches in one unit of the tracing, as far as is known before it is fitted. */
    static double first(Box raw, TracingOptions options) {
        if (options.unit().isPresent()) {
            return options.unit().get().of(1).toInches();
        }
        return overall(options)
                .map(caliper -> caliper.size() / caliper.across().of(raw))
                .filter(Double::isFinite)
                .orElse(1.0);
    }

    /** Inches in one unit of a tracing that is as large as moldings commonly are. */
    static double usual(Box raw) {
        double size = Math.max(raw.width(), raw.height());
        return size > 0 ? USUAL / size : 1;
    }

    /** The largest size of the whole: calipers are off by as much on a small one, which is a larger share of it. */
    private static Optional<Caliper> overall(TracingOptions options) {
        return options.calipers().stream().filter(Caliper::isOverall).max(Comparator.comparingDouble(Caliper::size));
    }

    /** By how much a fitted outline is to be enlarged, so that it is as large as the largest size of the whole says. */
    static double second(Box fitted, TracingOptions options) {
        return overall(options)
                .map(caliper -> caliper.size() / caliper.across().of(fitted))
                .orElse(1.0);
    }

    /** By how much an outline is to be enlarged by the first size that one of its members has; refuses names it has not. */
    static Optional<Double> byFirst(Outline outline, List<Caliper> calipers, Notices notices) {
        Caliper first = calipers.get(0);
        Optional<Double> found = first.on(outline).filter(size -> size > 0);
        if (found.isEmpty()) {
            unknown(first, outline, notices);
        }
        return found.map(size -> first.size() / size);
    }

    private static void unknown(Caliper caliper, Outline outline, Notices notices) {
        notices.add(TraceNotices.NOT_MEASURED
                .with("what", caliper.words())
                .with("members", Listing.names(outline.members())));
    }

    /** Says by how much the tracing was enlarged, and where the other calipers disagree with the first. */
    static void check(Traced traced, double scale, double enlarged, TracingOptions options, Notices notices) {
        if (options.calipers().isEmpty()) {
            return;
        }
        boolean byUnit = options.unit().isPresent();
        if (byUnit && overall(options).isEmpty()) {
            options.calipers().forEach(caliper -> check(caliper, traced, TraceNotices.BY_UNIT, notices));
            return;
        }
        Caliper first = overall(options).orElse(options.calipers().get(0));
        notices.add((byUnit ? TraceNotices.SCALED_OF_UNIT : TraceNotices.SCALED)
                .with("what", first.words())
                .with("scale", factor(byUnit ? enlarged : scale * enlarged)));
        if (byUnit) {
            disagreement(first, first.size() * (1 - 1 / enlarged), traced, TraceNotices.BY_UNIT, notices);
        }
        for (Caliper caliper : options.calipers()) {
            if (!caliper.equals(first)) {
                check(caliper, traced, TraceNotices.BY_SIZE.with("what", first.words()), notices);
            }
        }
    }

    private static void check(Caliper caliper, Traced traced, Phrase by, Notices notices) {
        caliper.on(traced.outline())
                .ifPresentOrElse(
                        size -> disagreement(caliper, caliper.size() - size, traced, by, notices),
                        () -> unknown(caliper, traced.outline(), notices));
    }

    private static Figure factor(double scale) {
        return Figure.of(Quantity.COUNT, scale).rounded(Rounding.decimals(5));
    }

    private static void disagreement(Caliper caliper, double off, Traced traced, Phrase by, Notices notices) {
        double agree = caliper.isOverall()
                ? Math.max(Tolerance.CALIPERS_READ, AS_TOLD * traced.noise().scatter())
                : Math.min(AGREE, Math.max(AGREE_LEAST, AGREE_SHARE * caliper.size()));
        boolean wrong = Math.abs(off) > CONTRADICTED * caliper.size() && Math.abs(off) > 4 * AGREE;
        Notice said = (wrong
                        ? TraceNotices.CALIPERS_CONTRADICT
                        : Math.abs(off) > agree ? TraceNotices.DISAGREES : TraceNotices.AGREES)
                .with("by", by)
                .with("across", caliper.words())
                .with("outline", Figure.fine(caliper.size() - off))
                .with("calipers", Figure.fine(caliper.size()));
        notices.add(Math.abs(off) > agree ? said.amount(Figure.fine(Math.abs(off))) : said);
    }

    /** Whether the size is one that is run; says so when it is not. A stated unit or a caliper size is believed. */
    static boolean plausible(Box inches, TracingOptions options, Notices notices) {
        double size = Math.max(inches.width(), inches.height());
        double usual = options.usual().map(TracingOptions.Usual::largest).orElse(LARGEST);
        boolean stated = options.unit().isPresent() || !options.calipers().isEmpty();
        // without a word of its unit a large molding may as well be a small one in millimeters
        double largest = stated ? TOO_LARGE * usual : Math.min(TOO_LARGE * usual, Math.max(usual, LARGEST));
        if (size <= largest) {
            return true;
        }
        boolean wide = inches.width() >= inches.height();
        String unit = List.of(LengthUnit.MILLIMETER, LengthUnit.CENTIMETER).stream()
                .filter(other -> other.of(size).toInches() <= largest)
                .map(LengthUnit::symbol)
                .reduce((first, last) -> first)
                .orElse("what unit");
        notices.add((stated ? TraceNotices.TOO_LARGE : TraceNotices.WHICH_UNIT)
                .with("size", bare(size))
                .with("across", wide ? "wide" : "high")
                .with("feet", Figure.of(Quantity.RUN, Math.min(size, MOST_SAID) / 12))
                .with("kind", options.usual().map(TracingOptions.Usual::kind).orElse("molding"))
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
