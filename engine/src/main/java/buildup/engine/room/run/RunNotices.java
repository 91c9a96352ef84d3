package buildup.engine.room.run;

import buildup.engine.section.placing.PlacingNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the runs round the corners of a plan and coves over the blade give cause to say. */
public final class RunNotices {
    /** A kerf that nothing cuts. */
    public static final Code NEGATIVE_KERF = Code.of("negative-kerf", "A kerf is less than 0.");

    private static final Code PLAN_OPEN =
            Code.of("plan-does-not-close", "The lengths and corners of a closed run do not lead back to its start.");
    static final Kind DOES_NOT_CLOSE = PLAN_OPEN.problem(
            "Run '{run}' comes back {amount} beside where it began, after turning {turned} of {round}.",
            "Measure its lengths and corners again, or give it two ends.");

    private static final Code LONG_RETURN = Code.of(
            "return-longer-than-its-wall", "A return, or a piece between two ends, needs more wall than there is.");
    static final Kind NO_ROOM_ON_ITS_WALL = LONG_RETURN.problem(
            "'{piece}' needs {needs} on '{stretch}' to come round its ends, the wall ends at {wall}.",
            "Shorten the projection, or end the run before this wall.");
    static final Kind RETURN_TOO_LONG = LONG_RETURN.problem(
            "'{piece}': return needs {needs}, wall ends at {wall}.",
            "Shorten the projection by {by} or die into the wall.");
    static final Kind RETURNS_INTO_A_WALL = LONG_RETURN.problem(
            "'{piece}' returns {amount} past the {hand} end, into the wall that '{other}' dies on.",
            "Let both die there, or return both and end the wall before it.");
    static final Kind RETURNS_ON_A_CASING = LONG_RETURN.problem(
            "'{piece}' returns at the {hand} end, on the casing that '{other}' butts; how far that stands out is not given.",
            "Write 'casing:' behind 'butt'.");
    static final Kind CASING_COVERS = LONG_RETURN.problem(
            "'{piece}' returns at the {hand} end, where a casing that stands {casing} out covers its whole end.",
            "Let it butt the casing.");
    private static final Code COLLIDE =
            Code.of("returns-collide", "Two returns, or two lengths of one piece, want the same place.");
    static final Kind RUNS_INTO_ITSELF = COLLIDE.problem(
            "'{piece}' on '{stretch}' runs into itself on '{other}'.",
            "Shorten the projection of {amount}, or end the run between them.");
    static final Kind RETURNS_MEET = COLLIDE.problem(
            "'{piece}': its returns on both sides of '{opening}' need {needs}, and there is {has}.",
            "Shorten the projection by {by}, or carry the piece across.");
    private static final Code END_SHOWS = Code.of("end-shows", "A piece stands proud of the casing that it butts.");
    static final Kind END_GRAIN_SHOWS = END_SHOWS.note(
            "'{piece}' stands {amount} proud of the casing that it butts: its end grain shows.",
            "Return it, or thicken the casing with a backband.");
    static final Phrase THICKEN = Phrase.of("Thicken the casing with a backband.");
    private static final Code RAW_END =
            Code.of("raw-end-shows", "A run that is cut square in the open shows the raw end of a nailer.");
    static final Kind RAW_END_SHOWS = RAW_END.note(
            "'{run}' is cut square: its end shows the raw wood of {names}, and any hollow beside it.",
            "Return the trim there, or stop them short and close the end.");
    private static final Code SHORT_RETURN = Code.of(
            "self-return-shorter-than-its-thickness", "A return is shorter than its stick is thick: it has no miter.");
    static final Kind CANNOT_BE_MITERED = SHORT_RETURN.problem(
            "'{piece}': return {length} long and {thickness} thick: cannot be mitered.",
            "Plant it: cut the piece square and glue the return across its end.");
    private static final Code UNNAILED =
            Code.of("return-too-short-to-nail", "A return is so short that a nail would split it.");
    static final Kind GLUED = UNNAILED.note(
            "The returns of {names} are shorter than {amount}: a nail would split them, and end grain holds none.",
            "Glue them, and pin at most.");
    private static final Code SHORT = Code.of(
            "piece-too-short-to-hold", "A piece is so short that a hand would come too near the blade of the saw.");
    static final Kind TOO_SHORT_TO_HOLD = SHORT.note(
            "{pieces} cannot be held for sawing: a hand stays {hand} from either side of the blade.",
            "Cut the end on a long stick that is clamped, and the piece off it last; else saw it by hand, or in a jig. The"
                    + " saw maker's manual rules.");
    static final Phrase SHORT_PIECE = Phrase.of("'{piece}' on {stretch}, {length} long");
    static final Phrase QUOTED = Phrase.of("'{piece}'");

    static final Kind COVE_WITHOUT_SIZE =
            DocumentCodes.MISSING_KEY.refusal("A cove over the blade has no {key}.", "Add '{key}:'.");
    static final Kind COVE_OF_NOTHING = PlacingNotices.NO_THICKNESS.refusal(
            "The {key} of a cove over the blade is {size}.", "Give it more than 0.");
    static final Kind KERF_BELOW_NOTHING = NEGATIVE_KERF.refusal(
            "A kerf cannot be {size} wide.", "Measure the cut, as {example}; 0 stands for a blade without width.");
    private static final Code BEYOND_THE_BLADE =
            Code.of("cove-beyond-the-blade", "A cove is deeper or wider than the blade of a table saw cuts.");
    static final Kind COVE_TOO_DEEP = BEYOND_THE_BLADE.refusal(
            "'{cove}' is {depth} deep; a {blade} blade does not stand that far out of the table.",
            "Make it {most} or less, or take a larger blade.");
    static final Kind COVE_TOO_WIDE =
            BEYOND_THE_BLADE.refusal("'{cove}' is {width} wide; at that depth the blade is {chord} long.", "");
    static final Phrase MAKE_IT_DEEPER = Phrase.of("Make it {depth} deep, or narrower.");
    static final Phrase LARGER_BLADE = Phrase.of("Take a larger blade, or run it in two stands.");

    private RunNotices() {}
}
