package buildup.engine.hold.fixing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.fixing.Hiding.Grade;
import buildup.shared.length.Length;
import buildup.shared.length.LengthPrinter;

/** Nails in words. A bite rounds down and what is needed rounds up: the safe side. */
final class Wording {
    /** The names that fastenings without one are given. */
    private static final String BY_NUMBER = "(?:nail|screw) \\d+";

    private Wording() {}

    /** At the beginning of a sentence: {@code Nail 4 (15 ga x 2)}, or {@code 'top row' (15 ga x 2)}. */
    static String label(Fastening fastening) {
        return begin(within(fastening));
    }

    /** Within a sentence. */
    static String within(Fastening fastening) {
        String name = fastening.name();
        return (name.matches(BY_NUMBER) ? name : "'" + name + "'") + " ("
                + fastening.use().call() + ")";
    }

    static String begin(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    static String kind(Fastener.Cut use) {
        return use.fastener().kind() == Fastener.Kind.NAIL ? "nail" : "screw";
    }

    static String least(double inches) {
        return LengthPrinter.sixteenths(LengthPrinter.roundDown(Length.inches(inches), 16));
    }

    static String most(double inches) {
        return LengthPrinter.sixteenths(LengthPrinter.roundUp(Length.inches(inches), 16));
    }

    static String near(double inches) {
        return LengthPrinter.sixteenths(Length.inches(inches));
    }

    static String angle(double degrees) {
        String written = LengthPrinter.decimals(Length.inches(Math.abs(degrees)), 1);
        return (written.endsWith(".0") ? written.substring(0, written.length() - 2) : written) + "°";
    }

    /** Up or down; on a level face toward the wall or away from it. */
    static String tilt(Spot spot, double degrees) {
        boolean level = Math.abs(spot.inward().x()) <= Math.abs(spot.inward().y());
        String way = level ? degrees > 0 ? "toward the wall" : "toward the room" : degrees > 0 ? "up" : "down";
        return way + " " + angle(degrees);
    }

    static String hiding(Hiding hiding, Timber timber) {
        return hiding.grade() == Grade.COVERED
                ? "covered later by " + timber.quoted(hiding.coveredBy().orElseThrow())
                : switch (hiding.grade()) {
                    case COVERED, BEHIND -> "off the room side";
                    case QUIRK -> "in the quirk";
                    case UNSEEN -> "no eye sees it";
                    case SHADOW -> "in shadow";
                    case SHOWS -> "shows: set it and fill";
                };
    }
}
