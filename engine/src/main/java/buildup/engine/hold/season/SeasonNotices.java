package buildup.engine.hold.season;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the seasons give cause to say. In all of them {@code season} is its name. */
final class SeasonNotices {
    private static final Code NOT_A_SEASON =
            Code.of("not-a-season", "The moisture, temperature or humidity of a season cannot be read, or cannot be.");

    static final Kind NO_MOISTURE = NOT_A_SEASON.refusal(
            "Season '{season}' does not say how damp it is.",
            "Write 'moisture: 8 %', or 'temperature: 68 F' and 'humidity: 40 %'.");

    static final Kind TWO_MOISTURES = NOT_A_SEASON.refusal(
            "Season '{season}' has a moisture, and air that gives another.",
            "Keep 'moisture:', or 'temperature:' and 'humidity:'.");

    static final Kind NOT_A_MOISTURE = NOT_A_SEASON.refusal(
            "Season '{season}': '{text}' is not the moisture of seasoned wood.",
            "Write percent of the dry weight, as '8 %'; above 30 % wood is green and keeps its size.");

    static final Kind NOT_A_HUMIDITY = NOT_A_SEASON.refusal(
            "Season '{season}': '{text}' is not a relative humidity.", "Write percent from 0 to 100, as '40 %'.");

    static final Kind NOT_A_TEMPERATURE = NOT_A_SEASON.refusal(
            "Season '{season}': '{text}' is not the temperature of a place where trim hangs.",
            "Write it as '68 F' or '20 C'.");

    static final Kind TOO_MANY = NOT_A_SEASON.refusal(
            "There are {count} seasons; at most {most} are looked at.", "Keep the driest and the dampest.");

    static final Kind SAME_NAME =
            DocumentCodes.SAME_NAME_TWICE.refusal("Season '{season}' twice.", "Give each a name of its own.");

    static final Kind ONE_ALONE = Code.of("one-season", "There is one season, so that nothing changes.")
            .note(
                    "'{season}' is the only season: nothing changes in it.",
                    "Add the driest and the dampest month of the room.");

    static final Kind OTHER_EQUATION = Code.of(
                    "moisture-out-of-range",
                    "A moisture lies outside 6 to 14 %, where the coefficients of change do not hold as listed.")
            .note(
                    "Season '{season}' has {moisture} of moisture, outside 6 to 14 %. The handbook's other equation, for up"
                            + " to 30 %, is used.",
                    "");

    static final Kind BEYOND_THE_TABLE = Code.of(
                    "air-out-of-range", "Air lies outside the table that the equation of moisture was fitted to.")
            .note(
                    "Season '{season}', {air}, lies outside the handbook's table of moisture (30 to 270 °F, 5 to 95 %).",
                    "Measure the moisture of the wood, and give that.");

    static final Kind NO_COEFFICIENT = Code.of(
                    "no-coefficient", "The lists do not say how much a wood moves, so that its pieces are not moved.")
            .note(
                    "No list says how much {wood} moves {side} its rings: {pieces} {count} not moved.",
                    "Add 'radial:' and 'tangential:' to the wood in a list of your own.");

    private static final Code OPENS = Code.of("joint-opens", "In some season a joint in sight opens too far.");

    static final Kind JOINT_OPENS = OPENS.problem(
            "The {joint} opens {amount} in {season}: more than {most} is a fault (builders' warranty standard).", "");

    /** {@code mover}: of the two at the joint the one that moves more there. */
    static final Phrase NAIL_NEAR = Phrase.of("Nail '{mover}' near that joint, and let its other edge move.");

    static final Phrase LAP_IT =
            Phrase.of("Let a molding lap that joint, or take narrower or quartersawn stock for '{mover}'.");

    static final Phrase LAP_OR_NARROWER =
            Phrase.of("Let a molding lap that joint, or take narrower stock for '{mover}'.");

    static final Phrase DRIVE_NEAR =
            Phrase.of("Drive '{row}' at {to} {way}, near that joint, and let the other edge of '{mover}' move.");

    static final Phrase DRIVE_MIDWAY =
            Phrase.of("Drive '{row}' at {to} {way}, midway, so that either edge of '{mover}' moves by half.");

    static final Kind MITER_OPENS = OPENS.problem(
            "The {joint} opens {amount} in {season}, at its {point}: more than {most} is a fault (remodelers'"
                    + " standard).",
            "");

    static final Phrase QUARTERED = Phrase.of("Take quartersawn stock for '{mover}': 'cut: quartered'.");

    static final Phrase NARROWER = Phrase.of("Build the width of '{mover}' up from narrower pieces.");

    static final Phrase COPE_IT =
            Phrase.of("Cope that inside corner, or build the width of '{mover}' up from narrower pieces.");

    static final Kind REVEAL_CLOSES = Code.of("reveal-closes", "In some season nothing is left of a reveal.")
            .problem(
                    "Nothing is left of the {reveal} in {season}: it closes by {amount}.",
                    "Make it {more} or more as built.");

    static final Kind BEARING_SHORT = Code.of(
                    "bearing-falls-short", "In some season a piece no longer reaches what carries it.")
            .problem(
                    "In {season} '{piece}' no longer reaches '{other}', which carries it: the bearing shrinks by {amount}.",
                    "Let it bear {more} or more as built.");

    static final Kind LAP_FAILS = Code.of("lap-fails", "In some season a piece no longer laps the one behind it.")
            .problem(
                    "In {season} '{piece}' no longer laps '{other}': the lap shrinks by {amount}.",
                    "Let it lap {more} or more as built.");

    static final Kind SPLITS = Code.of(
                    "nails-hold-against-movement",
                    "Two rows of nails hold a piece that moves between them, so that it splits or cups.")
            .problem(
                    "'{piece}' {moves} {amount} between {nails} in {season}, and they do not give: it {breaks}.",
                    "Keep one of the rows; let the other edge lie behind a lap, in a groove or in slotted holes.");

    private static final Code PRESSES = Code.of("no-room-to-swell", "In some season a piece swells and has no room.");

    static final Kind NO_ROOM = PRESSES.problem(
            "In {season} '{piece}' and '{other}' are pressed together by {amount}.",
            "Leave that gap between them as built, behind a lap or a molding.");

    static final Kind SQUEEZED = PRESSES.problem(
            "In {season} '{piece}' swells {amount} between {ends}, and neither gives.",
            "Leave {rooms} as built, where a molding laps the gap.");
    static final Phrase ROOM_BESIDE = Phrase.of("{room} between '{piece}' and '{other}'");

    static final Kind MUST_FLOAT = PRESSES.problem(
            "In {season} '{piece}' swells {amount} between {ends}, which hold both its edges: it must float.",
            "Rip it {room} narrower, and set it without nails or glue in grooves deep enough to hide the gap.");

    static final Kind UNDER_CEILING = PRESSES.problem(
            "In {season} '{piece}' would stand {amount} into the ceiling.", "Leave {more} or more under the ceiling.");

    static final Phrase QUOTED = Phrase.of("'{name}'");

    private SeasonNotices() {}
}
