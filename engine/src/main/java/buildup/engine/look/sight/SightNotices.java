package buildup.engine.look.sight;

import buildup.engine.section.stack.StackNotices;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the eyes give cause to say. */
final class SightNotices {
    static final Kind EYE_IN_WOOD = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            "Eye '{eye}' ({out} out, {up} up) is inside the {body}.",
            "Stand it in the room: a distance of {distance} and a height of floor + {height}, say.");
    static final Kind EYE_IN_THE_WALL = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            "Eye '{eye}' is behind the wall plane, at {out}.", "Give its distance out from the wall, as {distance}.");
    static final Kind NO_WAY = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            "Approach '{approach}' does not say from where to where.",
            "Give 'from:' and 'to:', each with distance and height.");

    private static final Code RAW_WOOD = Code.of("nailer-shows", "Raw wood of a nailer is on the room side.");
    static final Kind NO_EYE =
            RAW_WOOD.note("{amount} of raw '{piece}' lies on the room side; no eye is given.", Words.FINISH_IT);
    static final Kind NO_EYE_SEES_IT = RAW_WOOD.note(
            "{amount} of raw '{piece}' lies on the room side; no eye of the stack sees it.", Words.FINISH_IT);
    static final Kind NAILER_SHOWS = RAW_WOOD.problem("From '{eye}' you see {amount} of raw '{piece}'.", "");
    static final Kind SHOWS_ON_THE_WAY = RAW_WOOD.note(
            "Walking up '{approach}' you see up to {amount} of raw '{piece}', from {first} off the wall on.",
            "Finish it, or cover it, if people come that near.");
    static final Phrase COVER_IT = Phrase.of("Finish it, or cover it.");
    static final Phrase DROP =
            Phrase.of("Finish it, or bring the lower edge of '{other}' down to {to} (needs {needs}).");
    static final Phrase RAISE =
            Phrase.of("Finish it, or bring the upper edge of '{other}' up to {to} (needs {needs}).");

    static final Phrase WIDER_DOWN = Phrase.of(
            "Finish it, or make '{other}' {size} wide: its lower edge then comes down to {to} (needs {needs}).");
    static final Phrase WIDER_UP = Phrase.of(
            "Finish it, or make '{other}' {size} wide: its upper edge then comes up to {to} (needs {needs}).");

    private static final class Words {
        private static final String FINISH_IT = "Finish it, if someone may stand closer or lower.";
    }

    private SightNotices() {}
}
