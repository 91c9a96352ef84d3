package buildup.engine.room.plan;

import buildup.catalog.entry.CatalogNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the words of a plan give cause to say. */
final class PlanNotices {
    private static final Code PLAN_TOO_LONG = Code.of("plan-too-long", "A plan holds more than the trim of a house.");
    static final Kind MANY_RUNS =
            PLAN_TOO_LONG.refusal("The plan holds {runs} runs; at most {most} are fitted.", "Make several jobs of it.");
    static final Kind MANY_STRETCHES = PLAN_TOO_LONG.refusal(
            "Run '{run}' holds {stretches} stretches; at most {most} are fitted.", "Make several runs of it.");

    static final Kind LONG_STRETCH = CatalogNotices.MM_READ_AS_INCHES.problem(
            "Stretch '{stretch}' of run '{run}' is {length} long: that is {feet}. mm?", CatalogNotices.WRITE_THE_UNIT);

    private static final Code STRETCH_MISSING =
            Code.of("stretch-missing", "A run has no stretch of wall, too few to close, or one without a length.");
    static final Kind NO_STRETCH = STRETCH_MISSING.refusal(
            "Run '{run}' has no stretch of wall.", "Add 'stretches: [{{ name: front, length: {example} }]'.");
    static final Kind NO_LENGTH = STRETCH_MISSING.refusal(
            "Stretch '{stretch}' of '{run}' has no length.",
            "Add 'length:', measured on the wall from corner to corner.");
    static final Kind TOO_FEW_TO_CLOSE = STRETCH_MISSING.refusal(
            "Run '{run}' closes with {stretches} of the three stretches that it takes at least.",
            "Add the others, or give it two ends.");
    static final Kind NOTHING_LONG = DocumentCodes.NOT_A_SIZE.refusal(
            "Stretch '{stretch}' of '{run}' is {length} long.", "Give it more than 0, or leave it out.");

    static final Kind OPENING_WITHOUT_PLACE = DocumentCodes.MISSING_KEY.refusal(
            "Opening '{opening}' of '{stretch}' does not say where it begins and ends.",
            "Add 'from:' and 'to:', measured from the left end of its stretch.");
    private static final Code OPENING_MISPLACED =
            Code.of("opening-misplaced", "An opening lies beyond its stretch of wall, or over another one.");
    static final Kind MISPLACED = OPENING_MISPLACED.refusal(
            "Opening '{opening}' from {from} to {to} does not lie between {taken} and {length} of '{stretch}'.",
            "Measure from the left end of the stretch, and list openings from left to right.");
    private static final Code OPENING_TAKES_ALL =
            Code.of("opening-takes-all", "An opening is as wide as its stretch of wall.");
    static final Kind NO_WALL_LEFT = OPENING_TAKES_ALL.note(
            "Opening '{opening}' takes all of '{stretch}': no wall is left for trim.",
            "Leave the stretch out, or measure the opening again.");

    private static final Code CORNER_MISSING =
            Code.of("corner-missing", "Two stretches meet, and nothing says at what corner.");
    static final Kind NO_CORNER = CORNER_MISSING.refusal(
            "Between '{stretch}' and '{next}' of '{run}' no corner is given.",
            "Add 'corner: outside 90' or 'corner: inside 90' to the first.");
    private static final Code NOT_A_CORNER =
            Code.of("not-a-corner", "A corner does not say which it is, or has an angle that no corner has.");
    static final Kind WHICH_CORNER =
            NOT_A_CORNER.refusal("'{word}' does not say which corner it is.", "Write 'outside 90' or 'inside 90'.");
    static final Kind STRAIGHT_ON = NOT_A_CORNER.refusal(
            "{corner} is not a corner: the wall runs straight on.", "Make one stretch of the two.");
    static final Kind SHUT =
            NOT_A_CORNER.refusal("{corner} is not a corner: one wall would lie on the other.", Words.MEASURE_THROUGH);
    static final Kind WRONG_SIDE =
            NOT_A_CORNER.refusal("{corner} is not a corner: it was measured on the wrong side.", Words.MEASURE_THROUGH);
    static final Kind NO_ANGLE =
            DocumentCodes.NOT_AN_ANGLE.refusal("'{word}' is not an angle.", "Write degrees, as 38 or 22.5.");

    static final Kind NOTHING_TO_COPE = NOT_A_CORNER.refusal(
            "At the right end of '{stretch}' there is no inside corner to cope.",
            "Write 'cope:' on the stretch to the left of an inside corner.");
    private static final Code ENTRY_CODE = Code.of("entry-misplaced", "An entry lies beyond its stretch of wall.");
    static final Kind ENTRY_BEYOND = ENTRY_CODE.refusal(
            "The entry at {along} is not on '{stretch}', which is {length} long.",
            "Measure from the left end of the stretch.");
    private static final Code ENDS_CONTRADICT =
            Code.of("ends-contradict", "What is said of the ends of a run does not agree.");
    static final Kind CLOSES_WITH_AN_END = ENDS_CONTRADICT.refusal(
            "Run '{run}' closes: its last stretch meets the first at a corner. Yet it has an end.", Words.OPEN_IT);
    static final Kind CLOSES_WITH_TWO_ENDS = ENDS_CONTRADICT.refusal(
            "Run '{run}' closes: its last stretch meets the first at a corner. Yet it has two ends.", Words.OPEN_IT);
    static final Kind OF_ANOTHER_END = ENDS_CONTRADICT.refusal(
            "An end that is '{kind}' has no '{key}': that is of '{owner}'.",
            "Take '{key}:' out, or write 'end: {owner}'.");
    static final Kind ENDS_FOR_OTHERS = ENDS_CONTRADICT.refusal(
            "On the {side} several ends name no piece.", "Name the pieces of all but one, as 'pieces: [shelf]'.");
    static final Kind OPENING_UPSIDE_DOWN = OPENING_MISPLACED.refusal(
            "The top of opening '{opening}' is not over its bottom.", "Give both as heights over the datum.");
    private static final Code END_MISSING = Code.of("end-missing", "A run does not say how it ends.");
    static final Kind NO_RIGHT_END = END_MISSING.refusal("Run '{run}' has no right end.", Words.GIVE_AN_END);
    static final Kind NO_LEFT_END = END_MISSING.refusal("Run '{run}' has no left end.", Words.GIVE_AN_END);
    static final Kind NO_ENDS = END_MISSING.refusal("Run '{run}' has no left and no right end.", Words.GIVE_AN_END);
    static final Kind NO_END_FOR_OTHERS = END_MISSING.refusal(
            "On the {side} nothing is said of the pieces that are not named.",
            "Add the end of all others to the list, as 'butt'.");
    static final Kind END_WITHOUT_KIND =
            DocumentCodes.MISSING_KEY.refusal("This end has no kind.", "Add 'end: return'.");
    static final Kind UNKNOWN_END = DocumentCodes.UNKNOWN_NAME.refusal(
            "No end is called '{word}'.", "Write return, die, butt, block or square.");
    static final Kind UNKNOWN_SIDE = DocumentCodes.UNKNOWN_NAME.refusal(
            "No end beside an opening is called '{word}'.", "Write butt, return or square.");
    static final Kind UNKNOWN_INSIDE = DocumentCodes.UNKNOWN_NAME.refusal(
            "No way to cut an inside corner is called '{word}'.", "Write miter or cope.");
    static final Kind UNKNOWN_COPE =
            DocumentCodes.UNKNOWN_NAME.refusal("No end to cope is called '{word}'.", "Write left, right or no.");
    static final Kind NO_SUCH_ENTRY = DocumentCodes.UNKNOWN_NAME.refusal(
            "No stretch called '{word}' to come in by.",
            "Name the stretch with the door, as 'entry: {{ stretch: south }'.");
    static final Kind UNKNOWN_GRAIN =
            DocumentCodes.UNKNOWN_NAME.refusal("No piece called '{word}' whose grain could run round.", "");
    static final Kind UNKNOWN_PIECE =
            DocumentCodes.UNKNOWN_NAME.refusal("No piece called '{word}' that could run here.", "");
    static final Kind UNKNOWN_AROUND =
            DocumentCodes.UNKNOWN_NAME.refusal("No run goes around '{word}'.", "Write room or opening.");
    static final Kind TWICE =
            DocumentCodes.SAME_NAME_TWICE.refusal("'{name}' twice in the plan.", "Call one '{name} 2'.");
    static final Kind LESS_THAN_NOTHING =
            DocumentCodes.NOT_A_SIZE.refusal("'{key}' is {size}.", "Give nothing less than 0.");

    static final Kind LEAN_HALF_SAID = DocumentCodes.MISSING_KEY.refusal(
            "A wall out of plumb says how far over what height.",
            "Write 'plumb: {{ out: {out}, over: {over} }'; a wall that falls back has a negative 'out'.");
    static final Kind LEANS_TOO_FAR = DocumentCodes.NOT_A_SIZE.refusal(
            "A wall cannot lean {out} over {over}.",
            "Give the lean, at most a tenth, and the height over which it was measured.");

    private static final Code FRAMING_WRONG = Code.of(
            "framing-wrong", "Studs or joists are described in words that are not known, or cannot stand that way.");
    static final Kind NO_FRAMING = FRAMING_WRONG.refusal(
            "'{key}' does not say where they stand.",
            "Write '{key}: {{ every: {example}, first: .. }', or a list of places; for a wall of stone, 'studs: masonry'.");
    static final Kind FRAMING_WITHOUT = DocumentCodes.MISSING_KEY.refusal(
            "Studs or joists say no '{key}'.", "Add '{key}: {example}', to the middle.");
    static final Kind NO_SUCH_FRAMING = FRAMING_WRONG.refusal(
            "Studs or joists {width} wide do not stand every {every}, the first at {first}.",
            "Measure from middle to middle, and the first from the left end of the stretch.");
    static final Kind FRAMING_OUT_OF_ORDER = FRAMING_WRONG.refusal(
            "The places of '{key}' do not go up: {place}.", "List them from left to right, each once, none under 0.");
    static final Kind UNKNOWN_WAY =
            DocumentCodes.UNKNOWN_NAME.refusal("No direction of joists is called '{word}'.", "Write out or along.");

    private static final Code TOLD_OF_WALLS =
            Code.of("told-of-walls", "A run that goes round an opening is told of walls, which it does not meet.");
    static final Kind OF_WALLS = TOLD_OF_WALLS.note(
            "Run '{run}' goes round an opening: what is said of walls has no use there, as {keys}.",
            "Take it out: the rows of a casing are set out by their 'spacing'.");
    static final Phrase KEY = Phrase.of("'{key}'");

    private static final Code MEASURES_WRONG = Code.of(
            "measures-wrong",
            "What was measured along a stretch is not a list of places, is out of order, or cannot be true.");
    static final Kind NO_PAIRS = MEASURES_WRONG.refusal(
            "'{key}' of '{stretch}' is not a list of places with what was measured there.",
            "Write '{key}: [[{left}, ..], [{right}, ..]]': first how far along from the left end.");
    static final Kind MEASURED_BEYOND = MEASURES_WRONG.refusal(
            "'{key}' of '{stretch}' is measured at {along}; the stretch runs from 0 to {length}.",
            "Measure along from the left end of the stretch.");
    static final Kind MEASURED_TWICE = MEASURES_WRONG.refusal(
            "'{key}' of '{stretch}' is measured at {along} behind a place that is as far along or farther.",
            "List the places from left to right, each once.");
    static final Kind WALL_FAR_OFF = MEASURES_WRONG.refusal(
            "The wall of '{stretch}' does not stand {out} off its plane, as at {along}.",
            "Measure from the wall plane, the line that the trim is set to.");
    static final Kind NO_HEADROOM = MEASURES_WRONG.refusal(
            "On '{stretch}', {along} along, the ceiling at {ceiling} is not over the floor at {floor}.",
            "Give both as heights over the datum.");

    private static final class Words {
        private static final String MEASURE_THROUGH =
                "Measure through the room at an inside corner, through the wall or case at an outside one.";
        private static final String OPEN_IT = "Take the last 'corner:' out, or 'left:' and 'right:'.";
        private static final String GIVE_AN_END = "Write return, die, butt, block or square, as 'left: return'.";
    }

    private PlanNotices() {}
}
