package buildup.profiles.trace.ring;

import buildup.profiles.outline.OutlineCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the lines of a tracing have said of them before they are fitted. */
public final class RingNotices {
    /** Not all of the outline was drawn. */
    public static final Code OUTLINE_OPEN =
            Code.of("outline-open", "The outline of a tracing does not close by itself, or is made of several lines.");

    private static final Code OUTLINE_BESIDE =
            Code.of("outline-beside", "A tracing holds other lines beside the outline.");

    static final Kind DROPPED =
            OutlineCodes.DOUBLED_POINTS.note("Dropped {doubled} doubled and {stray} stray points.", "");
    static final Kind TURNED_ROUND = OutlineCodes.CLOCKWISE.note("The tracing runs clockwise; turned round.", "");
    static final Kind NO_LINE =
            OutlineCodes.NO_OUTLINE.refusal("The tracing holds no line.", "Trace the outline once round.");
    static final Kind BESIDE =
            OUTLINE_BESIDE.note("Taken: the outline {outline}. Beside it the drawing holds other lines: {others}.", "");
    static final Kind RIVALS = OUTLINE_BESIDE.problem(
            "Taken: the outline {outline}. It could as well be {others}.", "Leave only the outline in the file.");
    static final Kind RIVALS_ON_LAYERS = OUTLINE_BESIDE.problem(
            "Taken: the outline {outline}. It could as well be {others}.", "Say on which layer it is: --layer NAME.");
    static final Phrase SIZE = Phrase.of("{width} x {height}");
    static final Phrase SIZE_ON_LAYER = Phrase.of("{width} x {height} on layer '{layer}'");
    static final Phrase MORE = Phrase.of("{more} more");
    static final Kind DRAWN_TWICE = OutlineCodes.DOUBLED_POINTS.note("Dropped {lines} lines that lie on another.", "");
    static final Kind PEN_LINE =
            OUTLINE_BESIDE.note("The drawing holds both edges of a line {amount} wide; its middle is taken.", "");
    static final Kind TRACED_TWICE = OutlineCodes.DOUBLED_POINTS.note(
            "The tracing goes on over its beginning for {share} of the way: its first round is taken, with what lies along it.",
            "");
    static final Kind JOINED =
            OUTLINE_OPEN.note("Joined {lines} lines at their nearest ends; the widest gap was {amount}.", "");
    static final Kind CLOSED = OUTLINE_OPEN.note(
            "Last point is {amount} short of the first. Closed it, or was a piece lost?", "Trace it again if so.");
    static final Kind LEFT_OPEN = OUTLINE_OPEN.refusal(
            "Last point is {amount} short of the first. Was a piece lost?",
            "Trace the outline once round, or from end to end of its back.");

    private RingNotices() {}
}
