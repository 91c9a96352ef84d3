package buildup.engine.judge.proportion;

import buildup.shared.document.DocumentCodes;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What parts and proportions give cause to say. */
final class ProportionNotices {
    private static final Code PARTS = Code.of(
            "parts-do-not-fit", "Architrave, frieze and cornice overlap, leave out trim, or hold what is not trim.");

    static final Kind NO_PARTS = PARTS.refusal(
            "No part is named.", "Name pieces under architrave, frieze or cornice, or leave 'parts:' out.");

    static final Kind IN_TWO_PARTS =
            PARTS.refusal("'{name}' is in the {first} and in the {part}.", "Leave it in one of the two.");

    static final Kind FRAMING =
            PARTS.refusal("'{name}' in the {part} is framing, which is not part of the trim.", "Take it out.");

    static final Kind LEFT_OUT =
            PARTS.refusal("The parts leave out {pieces}.", "Put it into the architrave, the frieze or the cornice.");

    static final Kind OVERLAP = PARTS.problem(
            "The parts overlap: '{piece}' of the {lower} is seen above '{other}' of the {upper}.",
            "Put one of the two into the part of the other.");

    static final Kind NO_HEIGHT = PARTS.problem(
            "Seen from the room, the part above the {part} begins no higher than it.",
            "Name the pieces of each part from below, or leave 'parts:' out.");

    static final Kind NO_SUCH_PIECE =
            DocumentCodes.UNKNOWN_NAME.refusal("No piece is called '{name}', which the {part} holds.", "");

    static final Kind NO_SUCH_ORDER = DocumentCodes.UNKNOWN_NAME.refusal("No order is called '{name}'.", "");

    static final Kind NO_SIZE =
            DocumentCodes.NOT_A_SIZE.refusal("'{key}' has to be more than 0.", "Give it a length, as 96 or 8'.");

    private ProportionNotices() {}
}
