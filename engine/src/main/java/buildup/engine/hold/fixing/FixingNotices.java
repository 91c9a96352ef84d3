package buildup.engine.hold.fixing;

import buildup.engine.section.stack.StackNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/**
 * What may be said of nails and screws. In all of them {@code nail} is the row with what is driven, as {@code 'top row' (15
 * ga x 2)}.
 */
final class FixingNotices {
    static final Kind TOO_MANY = Code.of(
                    "too-many-fastenings", "A stack holds more rows of fastenings than a section can.")
            .refusal(
                    "The stack holds {rows} rows of fastenings; at most {most} are looked at.",
                    "Give each row once, with its spacing.");

    static final Kind NO_PLACE =
            DocumentCodes.MISSING_KEY.refusal("A fastening has no place.", "Add 'at: {{ up: PLACE }'.");

    static final Kind NO_PIECE = DocumentCodes.MISSING_KEY.refusal("A fastening names no {key}.", "Add '{key}:'.");

    static final Kind NO_USE =
            DocumentCodes.MISSING_KEY.refusal("A fastening does not name its nail or screw.", "Add 'use: 15 ga x 2'.");

    static final Kind NO_SUCH_PIECE =
            DocumentCodes.UNKNOWN_NAME.refusal("No piece called '{word}' to be fastened.", "{nearest}");

    static final Kind NO_SUCH_PLACE = DocumentCodes.UNKNOWN_NAME.refusal("No piece called '{word}'.", "{nearest}");

    static final Kind NO_SUCH_EDGE = DocumentCodes.UNKNOWN_NAME.refusal(
            "'{other}' has no one straight, level or upright edge called '{word}'.", "{nearest}");

    static final Kind BEFORE_ITS_PIECE = Code.of(
                    "nail-before-its-piece", "A fastening is to be driven before the piece under its head is up.")
            .refusal(
                    "'{piece}' cannot be fastened after '{after}': it is not up yet.",
                    "Name '{piece}' or a later piece, or leave 'after:' out.");

    static final Kind BY_TOUCH =
            StackNotices.NOT_A_PLACE.refusal("A nail cannot be placed by touch.", "Give a height or a projection.");

    static final Kind OTHER_WAY =
            StackNotices.NOT_A_PLACE.refusal("'{other}.{edge}' is {found}, not {asked}.", "Name a {low} or a {high}.");

    static final Kind TOO_FLAT = DocumentCodes.NOT_AN_ANGLE.refusal(
            "A nail cannot go in {angle} off square.", "Measure from square to the face, at most {most}.");

    static final Kind NO_SPACING =
            DocumentCodes.NOT_A_SIZE.refusal("A row cannot be spaced {size} apart.", "Write it as 16.");

    static final Kind NO_FIRST = DocumentCodes.NOT_A_SIZE.refusal(
            "The first of a row cannot stand {size} along the run.", "Give a length from 0 up to the spacing.");

    static final Kind NOT_HOW_MANY = DocumentCodes.NOT_A_NUMBER.refusal(
            "'{word}' is not how many nails go in at a place.", "Write 1 to {most}.");

    static final Kind OFF_ITS_PIECE = Code.of("nail-off-its-piece", "A fastening is placed where its piece is not.")
            .problem("{nail} is {amount} off '{piece}', at {out} out, {up} up.", "");

    static final Phrase ONE_COORDINATE =
            Phrase.of("Give its height or its projection alone: the other is found on the face.");

    static final Phrase RUNS = Phrase.of("It runs from {low} to {high}.");

    /** {@code ends}: ends in, or goes through and out; {@code where}: in which air. */
    static final Kind IN_AIR = Code.of("nail-in-air", "A fastening leaves its piece and meets nothing.")
            .problem("{nail} {ends} {where} {body}{out}.", "");

    /** {@code height}, {@code width}: of what a hollow takes. */
    static final Phrase LONGER_WILL_NOT_HELP = Phrase.of("Longer will not help: add a wedge about {height} x {width}.");

    private static final Code OUT = Code.of("nail-breaks-out", "The point of a fastening comes out of the wood.");

    static final Kind BREAKS_OUT = OUT.problem("{nail} comes out of {body} by {by}, at its {side}.", "");

    static final Kind BREAKS_OUT_HIDDEN =
            OUT.note("{nail} comes out of {body} by {by}, at its {side}, into a closed hollow.", "");

    static final Kind CROSSES_THE_OPEN = OUT.problem(
            "{nail} comes out of {body} at its {side}: {by} of it shows before it goes into wood again.", "");

    private static final Code AT_FACE = Code.of(
            "nail-at-the-far-face", "The point of a fastening ends on, or just under, the far face of the wood.");

    static final Kind AT_THE_FAR_FACE = AT_FACE.problem(
            "{nail} ends {left} from the {side} of {body}. Wants {wanted}: nails do not go as straight as drawn.", "");

    static final Kind AT_A_HIDDEN_FACE =
            AT_FACE.note("{nail} ends {left} from the {side} of {body}, in a closed hollow.", "Nothing needs doing.");

    /** {@code left}: what there is; {@code needs}; {@code rule}: of how many diameters. */
    static final Kind SHORT = FixingCodes.TOO_SHORT.problem("{nail}: {left} Needs {needs} ({rule} diameters).", "");

    static final Phrase NOT_AT_ALL = Phrase.of("it does not go into {body} at all.");

    static final Phrase IN_WHAT_HOLDS_NOTHING = Phrase.of("it ends in {body}, where nothing is known to hold.");

    static final Phrase MOVE_ROW = Phrase.of("Move '{row}' to {to} {way}.");

    static final Phrase BOTH = Phrase.of("{one} {other}");

    static final Phrase IN_ITS_PIECE = Phrase.of("it ends in {body} itself.");

    static final Phrase ONLY_LEFT = Phrase.of("only {bite} left in {bodies}.");

    private static final Code END_OR_EDGE = Code.of(
            "nail-in-end-grain-or-near-an-edge",
            "A fastening runs with the grain, where it holds nothing, or too near an edge.");

    static final Kind END_GRAIN_NOTE = END_OR_EDGE.note(
            "'{piece}' is held in end grain of {body} by {nail}: counts as nothing.",
            "Glue and pin it, or turn the block.");

    static final Kind END_GRAIN = END_OR_EDGE.problem(
            "'{piece}' is held in end grain of {body} by {nail}: counts as nothing.",
            "Glue and pin it, or turn the block.");

    static final Kind NEAR_AN_EDGE =
            END_OR_EDGE.problem("{nail} runs {has} from an edge. Needs {needs} ({rule}).", "Move it in.");

    private static final Code NO_VALUE =
            Code.of("no-published-value", "A fastening bites in something for which no strength is published.");

    static final Kind NO_VALUE_NOTE = NO_VALUE.note(
            "'{piece}' is held in {body} by {nail}: no value for nails in panels is known here, so it counts as nothing.",
            "Nail into wood, or glue it.");

    static final Kind NO_VALUE_PROBLEM = NO_VALUE.problem(
            "'{piece}' is held in {body} by {nail}: no value for nails in panels is known here, so it counts as nothing.",
            "Nail into wood, or glue it.");

    static final Kind MASONRY = NO_VALUE.problem(
            "'{piece}' is held in masonry by {nail}: no value for nails and wood screws there is known here, so it counts as"
                    + " nothing.",
            "Plug it and screw it by the maker's label, and give '{piece}' 'fixed: wall'.");

    static final Kind MASONRY_AS_SAID = NO_VALUE.note(
            "'{piece}' is held in masonry by {nail}: no value for nails and wood screws there is known here; it counts as"
                    + " fixed, as said.",
            "Plug it and screw it by the maker's label.");

    static final Kind THROUGH_A_PANEL = NO_VALUE.note(
            "'{piece}' is a panel, and no value across is known here for nails through one: {nail} counts as nothing across.",
            "Let a ledge or a block carry it.");

    static final Phrase PLUG_IT =
            Phrase.of("Plug it and screw it by the maker's label, and give '{of}' 'fixed: wall'.");

    private static final Code REACH =
            Code.of("tool-cannot-reach", "The tool that drives a fastening does not get to its head.");

    static final Kind COVERED = REACH.problem("{body} lies over the spot of {nail} by then.", "");

    static final Kind RUNS_INTO = REACH.problem("The {tool} for {nail} runs into {body}.", "");

    private static final Code CROSS =
            Code.of("nails-that-cross", "Two rows of fastenings want the same place in the wood.");

    static final Kind NAILS_CROSS = CROSS.problem(
            "{nail} and {other} cross at {out} out, {up} up, {along} along the run.",
            "Start one row elsewhere along the run.");

    static final Kind ONE_HEAD = CROSS.problem(
            "{nail} and {other} share a place at {out} out, {up} up, {along} along the run.",
            "Start one row elsewhere along the run.");

    private static final Code UPPER = Code.of(
            "upper-edge-not-held", "A sprung molding has nothing behind its edge away from the wall to be held to.");

    /** {@code edge}: upper, or lower where the molding is turned over. */
    static final Kind UPPER_EDGE = UPPER.problem("Nothing is behind the {edge} edge of '{piece}'.", "");

    static final Kind UPPER_EDGE_SHORT = UPPER.problem(
            "Nothing is behind the {edge} edge of '{piece}' to nail into: '{block}' stands {amount} off its back.", "");

    static final Kind UPPER_EDGE_THIN = UPPER.problem(
            "Too little is behind the {edge} edge of '{piece}' to nail into: '{block}' is too small.", "");

    static final Kind FOOT_IN_THE_AIR = Code.of(
                    "foot-in-the-air", "The lower edge of a sprung molding touches nothing that it could bear on.")
            .note(
                    "The foot of '{piece}' bears on nothing.",
                    "Set it against what is behind it, or block it out there, unless the gap is meant.");

    static final Kind UPPER_EDGE_LOOSE = UPPER.problem(
            "The upper edge of '{piece}' is not fastened: no row is driven in its upper half.",
            "Add a row there, into {body}.");

    static final Phrase WITH_A_FOOT = Phrase.of("{block} At its {end} it is {foot} wide.");
    /** {@code row}: a row of nails through the molding into the block. */
    static final Phrase BLOCK_AND_ROW = Phrase.of("{block} Nail the molding into it: {row}.");

    static final Phrase BLOCK_WITH_SIZE = Phrase.of(
            "Add a block behind it, {height} high x {width} wide at the {wide}, its face beveled {bevel} off plumb.");

    static final Phrase BLOCK_UNDER_A_SLOPE = Phrase.of(
            "Add a block behind it, {height} high x {width} wide, its face beveled {bevel} off plumb, its top {top} off level as"
                    + " the ceiling.");

    static final Phrase LARGER_BLOCK =
            Phrase.of("Make '{wedge}' {height} high x {width} wide at the {wide}, its face beveled {bevel} off plumb.");

    static final Phrase BLOCK = Phrase.of("Add a block behind it, its face beveled {bevel} off plumb.");

    /** In place of cures, where ways out were looked for. */
    static final Phrase NO_WOOD_IN_REACH = Phrase.of(
            "None of the changes tried cures this: longer will not help, and no place on its face has wood behind it.");

    static final Phrase NOT_INSIDE =
            Phrase.of("None of the changes tried cures this: no length, tilt or place on its face stays inside.");

    static final Phrase NO_BITE = Phrase.of(
            "None of the changes tried cures this: no length, place or other fastener on the list bites enough.");

    static final Phrase NOT_SHORT_OF_THE_FACE = Phrase.of(
            "None of the changes tried cures this: no length, place or tilt ends short of it and bites enough.");

    static final Phrase ALL_NEAR_AN_EDGE = Phrase.of(
            "None of the changes tried cures this: no place on its face is far enough from all edges, bored for or not.");

    static final Phrase NO_ROOM_FOR_THE_TOOL =
            Phrase.of("None of the changes tried cures this: no tilt or place on its face gives the tool room.");

    private FixingNotices() {}
}
