package buildup.engine.hold.fixing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.nail.Fastening;
import buildup.engine.hold.nail.Hiding;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;

/** Nails in words. */
final class NailWords {
    /** The names that fastenings without one are given. */
    private static final String BY_NUMBER = "(?:nail|screw) \\d+";

    private NailWords() {}

    /** At the beginning of a sentence: {@code Nail 4 (15 ga x 2)}, or {@code 'top row' (15 ga x 2)}. */
    static Phrase label(Fastening fastening) {
        return called(begin(named(fastening)), fastening);
    }

    /** Within a sentence. */
    static Phrase within(Fastening fastening) {
        return called(named(fastening), fastening);
    }

    private static Phrase called(String name, Fastening fastening) {
        return Phrase.of("{name} ({use})")
                .with("name", name)
                .with("use", fastening.use().phrase());
    }

    private static String named(Fastening fastening) {
        String name = fastening.name();
        return name.matches(BY_NUMBER) ? name : "'" + name + "'";
    }

    /** What it is called in the places of a document: its name, else its number. */
    static String place(Fastening fastening) {
        String name = fastening.name();
        return name.matches(BY_NUMBER) ? name.substring(name.indexOf(' ') + 1) : name;
    }

    static String begin(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    static String kind(Fastener.Cut use) {
        return use.fastener().kind() == Fastener.Kind.NAIL ? "nail" : "screw";
    }

    /** How far from square, either way. */
    static Figure angle(double degrees) {
        return typed(Math.abs(degrees));
    }

    /** The angle as a row has it, with its sign. */
    static Figure typed(double degrees) {
        boolean whole = Math.abs(degrees - Math.rint(degrees)) < 0.05;
        return Figure.angle(degrees).rounded(Rounding.decimals(whole ? 0 : 1));
    }

    /** Up or down; on a level face toward the wall or away from it. */
    static Phrase tilt(Spot spot, double degrees) {
        boolean level = Math.abs(spot.inward().x()) <= Math.abs(spot.inward().y());
        String way = level ? degrees > 0 ? "toward the wall" : "toward the room" : degrees > 0 ? "up" : "down";
        return Phrase.of("{angle} {way}").with("way", way).with("angle", angle(degrees));
    }

    static Phrase hiding(Hiding hiding, Timber timber) {
        return switch (hiding.grade()) {
            case COVERED ->
                Phrase.of("covered later by {body}")
                        .with("body", timber.quoted(hiding.coveredBy().orElseThrow()));
            case BEHIND -> Phrase.of("off the room side");
            case QUIRK -> Phrase.of("in the quirk");
            case UNSEEN -> Phrase.of("no eye sees it");
            case SHADOW -> Phrase.of("in shadow");
            case SHOWS -> Phrase.of("shows: set it and fill");
        };
    }
}
