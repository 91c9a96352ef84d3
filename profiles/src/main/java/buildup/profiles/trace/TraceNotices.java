package buildup.profiles.trace;

import buildup.profiles.outline.OutlineCodes;
import buildup.profiles.trace.ring.RingNotices;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What tracings have said of them. */
public final class TraceNotices {
    /** The unit of a tracing is not known, or not believed. */
    public static final Code MISSING_UNIT = Code.of(
            "missing-unit", "A tracing states no unit, one that is not known, or one in which it is too large.");

    private static final Code SCALE_DISAGREES =
            Code.of("scale-disagrees", "A size taken by calipers and the scale of a tracing do not agree.");
    private static final Code SCALE_CHECKED =
            Code.of("scale-checked", "A size taken by calipers and the scale of a tracing agree.");
    private static final Code BACK_UNSURE =
            Code.of("back-unsure", "It is not plain which side of a tracing is the back, or how it stands.");
    private static final Code TRACE_GRAIN =
            Code.of("trace-grain", "How far the points of a tracing scatter, and what that hides.");
    private static final Code TRACE_UNCLEAR =
            Code.of("trace-unclear", "No outline of lines and arcs follows a tracing.");
    private static final Code TRACE_DEVIATES =
            Code.of("trace-deviates", "Somewhere the outline stays farther from the tracing than its points scatter.");

    static final Kind NO_AREA =
            OutlineCodes.NO_AREA.refusal("The tracing encloses no area.", "Trace the outline once round.");
    static final Kind MIRRORED = OutlineCodes.MIRRORED.problem(
            "The back of this profile is on the room side.",
            "Turn it end for end, or say where its back is as it is drawn: --back right.");
    static final Kind NO_FLAT = BACK_UNSURE.problem(
            "No side of this tracing is flat: it stands as it was drawn.", "Say where its back is: --back left.");
    static final Kind LEANS = BACK_UNSURE.problem(
            "Nothing in this tracing stands level or upright as drawn. Its longest straight side, {side}, is taken for the"
                    + " back: turned by {turn} {way}.",
            "Turn it upright first: --rotate, or say where its back is.");
    static final Kind LIES = BACK_UNSURE.problem(
            "Drawn lying: the straight side {side}, {flat} long, is taken for the back.",
            "Say where its back is as it is drawn, if that is wrong: --back left.");
    static final Kind SECOND_BEST = BACK_UNSURE.problem(
            "The back is taken to be on the left, {left} high as drawn; it may just as well be the long side {side}, {flat}.",
            "Say which: --back left, or {option}.");
    static final Kind ABOUT_AS_LONG = BACK_UNSURE.note(
            "The back is taken to be on the left, {left} high as drawn; the side {side} is about as long, {flat}.",
            "Where that is the back: {option}.");
    static final Kind FITS_LYING = BACK_UNSURE.problem(
            "The sizes fit if the back is the long side {side}; it is taken so.",
            "Say where its back is as it is drawn, if that is wrong: --back left.");
    static final Kind EXCHANGED = SCALE_DISAGREES.refusal(
            "The sizes fit if width and height are exchanged, or if the back is the side {side}.",
            "Measure from back to face for the width, or say where the back is.");
    static final Kind TURN_UNSURE = BACK_UNSURE.problem(
            "What is straight in this tracing tells its turn only to {angle}: over its size that comes to {amount}.",
            "Trace the whole back, and more of what is level.");
    static final Kind MANY_MEMBERS = TRACE_UNCLEAR.refusal(
            "It would take more than {most} lines and arcs to follow this tracing.",
            "Allow a greater deviation, or look whether it is a section.");
    static final Kind CROSSES_ITSELF = OutlineCodes.CROSSES_ITSELF.refusal(
            "Outline crosses itself near {place}, between points {first} and {second}.", "Traced twice?");

    static final Kind CLOSED_AT_BACK = RingNotices.OUTLINE_OPEN.note(
            "Of the back, {amount} were not traced: it is taken to be plain.",
            "Trace the back too if it is not plain.");
    static final Kind UNSEEN = RingNotices.OUTLINE_OPEN.problem(
            "Near {place}, {amount} of the {member} were not traced: it is taken to go on.",
            "Trace that stretch, or compare it with the piece.");
    static final Kind NO_POINTS_ON = TRACE_DEVIATES.problem(
            "No point lies on the {member} near {place}, {amount} long.",
            "Look at that place in the drawing, and trace it again.");

    static final Kind HARDLY_ANY_ON = TRACE_DEVIATES.problem(
            "Hardly a point lies on the {member} near {place}, {amount} long: it may be a slip of the hand.",
            "Look at that place of the piece.");

    static final Kind BEYOND_POINTS = TRACE_DEVIATES.problem(
            "The corner of the {member} near {place} stands {amount} beyond every point.",
            "Look at that corner of the piece, or trace closer to it.");

    static final Kind CUT_CORNER = TRACE_DEVIATES.problem(
            "Points {first} and {second}, {amount} apart, may have a corner between them: it is drawn cut off, straight from one"
                    + " to the other.",
            "Look at that corner of the piece, and trace closer to it.");

    static final Kind TOO_LARGE = MISSING_UNIT.problem(Words.TOO_LARGE, Words.STATE_THE_UNIT);
    static final Kind WHICH_UNIT = MISSING_UNIT.refusal(Words.TOO_LARGE, Words.STATE_THE_UNIT);

    static final Phrase BY_UNIT = Phrase.of("the stated unit");
    static final Phrase BY_SIZE = Phrase.of("the {what}");
    static final Kind DISAGREES = SCALE_DISAGREES.problem(
            "By {by} the {across} comes out at {outline}; the calipers say {calipers}: {amount} apart.",
            "Measure both again, and trace square to the piece.");
    static final Kind AGREES =
            SCALE_CHECKED.note("By {by} the {across} comes out at {outline}; the calipers say {calipers}.", "");

    static final Kind CALIPERS_CONTRADICT = SCALE_DISAGREES.refusal(
            "By {by} the {across} comes out at {outline}; the calipers say {calipers}: {amount} apart.",
            "Measure both again, and look whether the right back and the right outline were taken.");
    static final Kind SCALED = SCALE_CHECKED.note("Scaled by the {what}: one unit of the tracing is {scale} in.", "");
    static final Kind SCALED_OF_UNIT =
            SCALE_CHECKED.note("Scaled by the {what}: enlarged {scale} times from the stated unit.", "");
    static final Kind NOT_MEASURED =
            SCALE_DISAGREES.refusal("The traced outline has no {what} to measure.", "Its members are {members}.");

    static final Kind UNCLEAR = TRACE_UNCLEAR.refusal(
            "No outline of lines and arcs follows this tracing.",
            "Trace it again with more points, or allow a greater deviation.");
    static final Kind DEVIATES = TRACE_DEVIATES.problem(
            "The outline stays {amount} from the tracing near {place}.",
            "Look at that place in the drawing, and trace it again if it is a slip.");

    static final Kind CONTRADICTED = TRACE_UNCLEAR.refusal(
            "The best outline of lines and arcs stays {amount} from the tracing near {place}.",
            "Look at that place in the drawing, and trace it again.");
    static final Kind AGAIN_ELSEWHERE = TRACE_DEVIATES.problem(
            "The second round of the tracing lies up to {amount} from the first.", "Trace it again, once round.");
    static final Kind GRAIN = TRACE_GRAIN.note(
            "The points scatter {scatter}: members under {least} cannot be told. Taken: --deviation {deviation}.", "");
    static final Kind GRAIN_HIDES = TRACE_GRAIN.problem(
            "The points scatter {scatter}: members under {least} cannot be told, and some may be missing. Taken:"
                    + " --deviation {deviation}.",
            "Trace it again with a steadier hand or a finer scan; state the deviation if there are none.");

    static final Kind SIZE_UNSURE = TRACE_GRAIN.problem(
            "The points tell the {across}, {size}, only to {amount}.", "Measure it with calipers, and state it.");
    static final Kind RADIUS_UNSURE = TRACE_GRAIN.problem(
            "The points tell the radius near {place}, {radius}, only to {amount}.",
            "Hold a radius gauge to the piece there, or trace more closely.");
    static final Kind RIVAL_READING = TRACE_GRAIN.problem(
            "The points are nearly as likely with two members more or fewer than these {members}.",
            "Trace it again, or take more off: --deviation {deviation}.");

    static final Kind ONE_MORE = TRACE_GRAIN.problem(
            "Near {place} the points are nearly as likely with one member more.",
            "Look at the piece there; --deviation {deviation} takes smaller members.");

    static final Kind ONE_LESS = TRACE_GRAIN.problem(
            "Near {place} the points are nearly as likely with one member less.",
            "Look at the piece there; --deviation {deviation} leaves smaller members out.");

    static final Kind SLIGHT_CORNER = TRACE_GRAIN.problem(
            "Near {place} the points are nearly as likely with a slight corner; none is drawn.",
            "Look at the piece there: a corner changes the radius beside it.");

    static final Kind SLIGHT_BEND = TRACE_GRAIN.problem(
            "Near {place} a flat side bends by {angle}: it may be straight, and a sway of the hand.",
            "Hold a straightedge to the piece there.");

    static final Kind UNLIKE_ARCS = TRACE_GRAIN.problem(
            "The two arcs that go over into each other near {place} come out unlike, {first} and {second}; mostly they are"
                    + " alike.",
            "Hold a radius gauge to both.");

    static final Kind SLOPE_UNSURE = TRACE_GRAIN.problem(
            "The points do not tell whether the slope near {place}, {amount} long, is straight: it may be a cyma.",
            "Look at the piece there, or trace it more closely.");

    private static final class Words {
        private static final String TOO_LARGE =
                "The outline is {size} {across}. As inches that is {feet} of {kind}: {unit}?";
        private static final String STATE_THE_UNIT = "State the unit of the tracing, or one caliper size.";
    }

    private TraceNotices() {}
}
