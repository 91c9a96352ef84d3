package buildup.engine.judge.clearance;

import buildup.shared.document.DocumentCodes;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What clearances give cause to say. */
final class ClearanceNotices {
    private static final String DECIDE = " The local authority and the appliance's label decide.";

    // Of the opening as it is described.

    static final Kind NO_TOP = DocumentCodes.MISSING_KEY.refusal(
            "The firebox has no top.", "Add 'top: {example}', the height of its upper edge over the datum.");

    static final Kind ONE_SIDE = DocumentCodes.MISSING_KEY.refusal(
            "The firebox has a {there} side and no {missing} one.",
            "Give both, 'left:' and 'right:', where they are along the run.");

    static final Kind SIDES_CROSSED = DocumentCodes.NOT_A_SIZE.refusal(
            "The firebox's right side, at {right}, is not to the right of its left side, at {left}.",
            "Count both from the left end of the run.");

    static final Kind UNDER_THE_FLOOR = DocumentCodes.NOT_A_SIZE.refusal(
            "The top of the fire opening, at {top}, is not above the floor, at {floor}.",
            "Give 'top:' as the height of the opening's upper edge over the datum.");

    static final Kind NO_SUCH_RULES = DocumentCodes.UNKNOWN_NAME.refusal("No clearances are called '{rules}'.", "");

    static final Kind NO_SUCH_EDITION = DocumentCodes.UNKNOWN_NAME.refusal(
            "{set} is not listed in the edition '{edition}'.",
            "Listed: {listed}. List another under 'clearances:' in a catalog file.");

    static final Kind NEWEST_EDITION = Code.of(
                    "newest-edition", "Rules are named without their edition; the newest that is listed is taken.")
            .note("'{set}' is read as {name}, the newest edition that is listed.", "");

    static final Kind NO_SUCH_PIECE = DocumentCodes.UNKNOWN_NAME.refusal("No piece is called '{name}'.", "");

    static final Kind MISSING_SIZE =
            DocumentCodes.MISSING_KEY.refusal("'{name}' has no {key}.", "Add '{key}:', a length.");

    static final Kind NO_LEG = DocumentCodes.NOT_A_SIZE.refusal(
            "'{name}' beside the opening has no width or does not stand out.",
            "Let 'to:' be greater than 'from:', and 'out:' more than 0.");

    static final Kind BESIDE_WHAT = DocumentCodes.MISSING_KEY.refusal(
            "'{name}' stands beside an opening whose sides are not given.",
            "Add 'left:' and 'right:' to the firebox, where its sides are along the run.");

    static final Kind BEFORE_THE_OPENING = DocumentCodes.NOT_A_SIZE.refusal(
            "'{name}' stands {amount} in front of the opening.",
            "Let it end before the left side, or begin behind the right one.");

    static final Kind OPENING_ABOVE = Code.of(
                    "opening-above-the-stack", "The top of the fire opening is above the whole stack.")
            .problem(
                    "The top of the fire opening, at {opening}, is above the whole stack, which ends at {top}.",
                    "Give 'top:' as the height of the opening's upper edge over the datum.");

    // Of fire.

    static final Kind CAUTION = Code.of("fire-caution", "Something is told of fire: it is never a leave to build.")
            .note("What is told of fire are rules beside each other, of the editions named." + DECIDE, "");

    private static final Code TOO_NEAR_FIRE = Code.of(
            "too-near-fire", "Wood is inside the clearance that a rule asks for round the opening of a fireplace.");

    static final Kind TOO_NEAR = TOO_NEAR_FIRE.problem(
            "'{piece}' is only {away} {where} the fire opening and projects {has}; there {rule} allows"
                    + " {allowed}.{others}",
            "");

    static final Kind WITHIN = TOO_NEAR_FIRE.problem(
            "'{piece}' is only {away} {where} the fire opening, where {rule} allows nothing.{others}", "");

    static final Kind BEFORE_THE_FIRE = TOO_NEAR_FIRE.problem(
            "'{piece}' hangs {away} in front of the fire opening, where {rule} allows nothing.{others}", "");

    static final Phrase ABOVE = Phrase.of("above");
    static final Phrase LEFT = Phrase.of("to the left of");
    static final Phrase RIGHT = Phrase.of("to the right of");

    static final Phrase ALSO_REFUSE = Phrase.of(" Nor does it keep {rules}.");
    static final Phrase ALLOW = Phrase.of(" It keeps {rules}.");

    static final Phrase FARTHER = Phrase.of("Bring it {by} farther from the opening." + DECIDE);
    static final Phrase LESS_DEEP = Phrase.of("No distance is enough: let it project less." + DECIDE);
    static final Phrase RAISE = Phrase.of("Raise it by {by}." + DECIDE);
    static final Phrase RAISE_ALL = Phrase.of("Raise the whole stack by {by}." + DECIDE);
    static final Phrase RIP_BOTTOM = Phrase.of("Rip {by} off its bottom." + DECIDE);
    static final Phrase LESS_HIGH = Phrase.of("Make it {size} wide." + DECIDE);

    // Of what is kept clear.

    static final Kind NO_SUCH_KIND = DocumentCodes.UNKNOWN_NAME.refusal(
            "Nothing to keep clear of is called '{word}'.", "Write box, shade, door, side-wall or sprinkler.");

    static final Kind PLACE_TWICE =
            DocumentCodes.SAME_NAME_TWICE.refusal("'{name}' is kept clear twice.", "Call one {name}-2.");

    static final Kind NO_PLACE = DocumentCodes.MISSING_KEY.refusal(
            "'{name}' is kept clear nowhere.", "Give at least one of back, face, bottom and top.");

    static final Kind NEGATIVE_AIR = DocumentCodes.NOT_A_SIZE.refusal(
            "The air round '{name}' is less than 0.", "Give 'clear:' a length, or leave it out.");

    static final Kind TURNED_BOX = DocumentCodes.NOT_A_SIZE.refusal(
            "'{name}' has no inside: its face is not before its back, or its top not above its bottom.",
            "Count out from the wall plane and up from the datum.");

    static final Kind INSIDE_THE_WALL = Code.of(
                    "box-inside-the-wall", "A place to keep clear lies inside the wall, where no trim comes.")
            .refusal(
                    "'{name}' lies inside the wall, {amount} behind its plane or on it: no trim comes there.",
                    "Count out from the wall plane.");

    private static final Code IN_THE_WAY =
            Code.of("in-the-way", "A piece reaches into a place that is to be kept clear, or comes too near it.");

    static final Kind REACHES_IN = IN_THE_WAY.problem("'{piece}' reaches {amount} into '{other}' ({kind}).", "");

    static final Kind TOO_LITTLE_AIR = IN_THE_WAY.problem(
            "'{piece}' leaves {has} of air to '{other}' ({kind}), which wants {clear}: {amount} too little.", "");

    static final Phrase RIP_FACE = Phrase.of("Rip {by} off its face.");
    static final Phrase LESS_WIDE = Phrase.of("Make it {size} wide.");
    static final Phrase MOVE_BACK = Phrase.of("Move it back {by}.");
    static final Phrase MOVE_UP = Phrase.of("Move it up {by}.");
    static final Phrase MOVE_DOWN = Phrase.of("Move it down {by}.");
    static final Phrase STACK_UP = Phrase.of("Raise the stack by {by}.");
    static final Phrase STACK_DOWN = Phrase.of("Lower the stack by {by}.");
    static final Phrase END_BEFORE = Phrase.of("End the run before it.");
    static final Phrase END_BEFORE_DOOR = Phrase.of("End the run before the leaf's swing.");
    static final Phrase END_BEFORE_WALL = Phrase.of("End the run {by} farther from it.");
    static final Phrase HANG_FARTHER = Phrase.of("Hang it {by} farther out.");

    private ClearanceNotices() {}
}
