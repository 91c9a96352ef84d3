package buildup.profiles.trace;

import buildup.profiles.outline.OutlineCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What tracings have said of them. */
public final class TraceNotices {
    /** The unit of a tracing is not known, or not believed. */
    public static final Code MISSING_UNIT = Code.of(
            "missing-unit", "A tracing states no unit, one that is not known, or one in which it is too large.");

    private static final Code OUTLINE_BESIDE =
            Code.of("outline-beside", "A tracing holds other lines beside the outline.");
    private static final Code OUTLINE_OPEN =
            Code.of("outline-open", "The outline of a tracing does not close by itself, or is made of several lines.");
    private static final Code SCALE_DISAGREES =
            Code.of("scale-disagrees", "A size taken by calipers and the scale of a tracing do not agree.");
    private static final Code SCALE_CHECKED =
            Code.of("scale-checked", "A size taken by calipers and the scale of a tracing agree.");
    private static final Code TRACE_UNCLEAR =
            Code.of("trace-unclear", "No outline of lines and arcs follows a tracing.");
    private static final Code TRACE_DEVIATES =
            Code.of("trace-deviates", "Somewhere the outline stays farther from the tracing than its points scatter.");

    static final Kind DROPPED =
            OutlineCodes.DOUBLED_POINTS.note("Dropped {doubled} doubled and {stray} stray points.", "");
    static final Kind TURNED_ROUND = OutlineCodes.CLOCKWISE.note("The tracing runs clockwise; turned round.", "");
    static final Kind NO_AREA =
            OutlineCodes.NO_AREA.refusal("The tracing encloses no area.", "Trace the outline once round.");
    static final Kind MIRRORED =
            OutlineCodes.MIRRORED.problem("The back of this profile is on the room side.", "Turn it end for end.");
    static final Kind CROSSES_ITSELF = OutlineCodes.CROSSES_ITSELF.refusal(
            "Outline crosses itself near {place}, between points {first} and {second}.", "Traced twice?");

    static final Kind NO_LINE =
            OutlineCodes.NO_OUTLINE.refusal("The tracing holds no line.", "Trace the outline once round.");
    static final Kind ONE_BESIDE = OUTLINE_BESIDE.problem(
            "The tracing holds {others} other line beside the largest closed one, which is taken.",
            "Leave only the outline in the file.");
    static final Kind SEVERAL_BESIDE = OUTLINE_BESIDE.problem(
            "The tracing holds {others} other lines beside the largest closed one, which is taken.",
            "Leave only the outline in the file.");

    static final Kind JOINED =
            OUTLINE_OPEN.note("Joined {lines} lines at their nearest ends; the widest gap was {amount}.", "");
    static final Kind CLOSED = OUTLINE_OPEN.note(
            "Last point is {amount} short of the first. Closed it, or was a piece lost?", "Trace it again if so.");
    static final Kind CLOSED_AT_BACK = OUTLINE_OPEN.note(
            "Last point is {amount} short of the first. Closed it straight: that line is taken for the back.",
            "Trace the back too if it is not plain.");
    static final Kind LEFT_OPEN = OUTLINE_OPEN.refusal(
            "Last point is {amount} short of the first. Was a piece lost?",
            "Trace the outline once round, or from end to end of its back.");

    static final Kind TOO_LARGE = MISSING_UNIT.problem(Words.TOO_LARGE, Words.STATE_THE_UNIT);
    static final Kind WHICH_UNIT = MISSING_UNIT.refusal(Words.TOO_LARGE, Words.STATE_THE_UNIT);

    static final Phrase BY_UNIT = Phrase.of("the stated unit");
    static final Phrase BY_FIRST_SIZE = Phrase.of("the first size");
    static final Kind DISAGREES = SCALE_DISAGREES.problem(
            "By {by} the {across} comes out at {outline}; the calipers say {calipers}: {amount} apart.",
            "Measure both again, and trace square to the piece.");
    static final Kind AGREES =
            SCALE_CHECKED.note("By {by} the {across} comes out at {outline}; the calipers say {calipers}.", "");

    static final Kind UNCLEAR = TRACE_UNCLEAR.refusal(
            "No outline of lines and arcs follows this tracing.",
            "Trace it again with more points, or allow a greater deviation.");
    static final Kind DEVIATES = TRACE_DEVIATES.problem(
            "The outline stays {amount} from the tracing near {place}.",
            "Look at that place in the drawing, and trace it again if it is a slip.");

    private static final class Words {
        private static final String TOO_LARGE =
                "The outline is {size} {across}. As inches that is {feet} of {kind}: {unit}?";
        private static final String STATE_THE_UNIT = "State the unit of the tracing, or one caliper size.";
    }

    private TraceNotices() {}
}
