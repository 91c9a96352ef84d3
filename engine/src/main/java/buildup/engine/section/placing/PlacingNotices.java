package buildup.engine.section.placing;

import buildup.catalog.entry.CatalogNotices;
import buildup.engine.section.stack.StackNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What placing the pieces gives cause to say. */
public final class PlacingNotices {
    /** A size that no wood has. */
    public static final Code NO_THICKNESS = CatalogNotices.THICKNESS_ZERO_OR_NEGATIVE;

    private static final Code NO_PLACE =
            Code.of("circular-or-missing-placing", "Nothing says where a piece is, or its place hangs on itself.");
    static final Kind CIRCLE = NO_PLACE.refusal("{steps}.", "Place one of them on the wall, the floor or the datum.");
    static final Phrase STEP = Phrase.of("{from} is placed on {to}");
    static final Phrase ON_ITSELF = Phrase.of("{from} is placed on itself");
    static final Kind MISSING =
            NO_PLACE.refusal("'{piece}' has no place: nothing says {measure}.", "Give '{low}:' or '{high}:'.");
    static final Kind MEETS_NOTHING =
            NO_PLACE.refusal("'{piece}' meets nothing on its way.", "Give '{edge}:' a place.");

    static final Kind DOUBLED = StackNotices.DOUBLED_RULE.refusal(
            "'{piece}' has two rules for {measure}; only a board or plain blocking is ripped to fit.",
            "Keep '{low}:' or '{high}:'.");
    static final Kind NOTHING_LEFT = NO_THICKNESS.refusal(
            "'{piece}' is left {size} between its {low} and its {high}.", "Move one of the two, or take it out.");

    private static final Code TOO_SMALL = Code.of("board-too-small", "A piece ripped to fit is larger than its board.");
    static final Kind BOARD_TOO_SMALL = TOO_SMALL.problem("'{piece}' needs {size}, but {stock} gives {has}.", "");
    static final Phrase TAKE_A_WIDER = Phrase.of("Take a board {needs} wide, or glue one up.");
    static final Phrase TAKE_A_THICKER = Phrase.of("Take a board {needs} thick, or glue one up.");

    private static final Code LARGE_REVEAL =
            Code.of("reveal-larger-than-its-piece", "A rule measures farther into a piece than the piece goes.");
    static final Kind REVEAL_TOO_LARGE =
            LARGE_REVEAL.problem("'{piece}' stands {reveal} from the {edge} of '{other}', which is only {size}.", "");
    static final Phrase MEASURE_LESS = Phrase.of("Measure from its other edge, or make it {most} or less.");
    static final Phrase BELOW_AN_EDGE = Phrase.of("{other}.{edge} - {most}");
    static final Phrase ABOVE_AN_EDGE = Phrase.of("{other}.{edge} + {most}");

    static final Kind WRONG_AXIS =
            StackNotices.NOT_A_PLACE.refusal("{place} is {found}, not {asked}.", "Name a {low} or a {high}.");
    static final Phrase PLACE_OF_THE_ROOM = Phrase.of("A place of the room");
    static final Phrase EDGE_OF_A_PIECE = Phrase.of("'{other}.{edge}'");
    static final Kind TOUCHES_ELSEWHERE = StackNotices.NOT_A_PLACE.refusal(
            "'{piece}' touches by back, bottom or top alone.", "Give a place here, as 'frieze.top'.");
    static final Kind TOUCHING_FACE = StackNotices.NOT_A_PLACE.refusal(
            "A face touches nothing: pieces come in from the room.", "Write 'back: touch'.");
    static final Kind TWO_TOUCHES = StackNotices.NOT_A_PLACE.refusal(
            "'{piece}' has two touches: it would never stop in the same place.", "Give one of them a place.");

    static final Kind UNKNOWN_PIECE = DocumentCodes.UNKNOWN_NAME.refusal("No piece called '{word}'.", "");
    static final Phrase DID_YOU_MEAN = Phrase.of("Did you mean {near} ({projection} projection x {height} height)?");
    static final Phrase DID_YOU_MEAN_OF_TWO = Phrase.of(DID_YOU_MEAN.template() + " There is 1 other.");
    static final Phrase DID_YOU_MEAN_OF_SEVERAL = Phrase.of(DID_YOU_MEAN.template() + " There are {others} others.");
    static final Kind UNKNOWN_EDGE = DocumentCodes.UNKNOWN_NAME.refusal(
            "'{other}' has no one straight, level or upright edge called '{word}'.", "");

    private PlacingNotices() {}
}
