package buildup.engine.section.compose;

import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;

/** What a section as it stands gives cause to say. */
final class ComposeNotices {
    static final Code OVERLAP_CODE = Code.of("overlap", "Two pieces, or a piece and the room, fill the same place.");
    static final Kind OVERLAP = OVERLAP_CODE.problem("'{piece}' cuts {amount} into {other} ({area}).", "");
    static final Phrase OUT_OF_THE_ROOM = Phrase.of("Move it {way} {by}.");
    static final Phrase RIP_FOR_THE_ROOM = Phrase.of("Rip {by} off its {edge}.");
    static final Phrase MOVE_IT = Phrase.of("Rabbet it, or move it {way} {by}.");
    static final Phrase MOVE_THE_OTHER = Phrase.of("Rabbet it, or move '{mover}' {way} {by}.");
    static final Phrase RIP_IT = Phrase.of("Rabbet it, or rip {by} off its {edge}.");
    static final Phrase RIP_THE_OTHER = Phrase.of("Rabbet it, or rip {by} off the {edge} of '{mover}'.");
    static final Phrase MAKE_SMALLER = Phrase.of("Make it smaller, or make room for it.");
    static final Phrase MOVE_ONE = Phrase.of("Rabbet one into the other, or move one of them.");

    static final Code THIN_OVERLAP_CODE = Code.of(
            "overlap-thinner-than-touching", "Two pieces lap by less than 1/256 in, which is taken as touching.");
    static final Kind THIN_OVERLAP = THIN_OVERLAP_CODE.note(
            "'{later}' laps {other} by {lap}: so little is taken as touching.", "Nothing needs doing.");

    static final Code FIXED_CODE = Code.of(
            "counts-as-fixed", "A back lies flat on framing or wall and is assumed fixed: no fastenings are given.");
    static final Kind FIXED = FIXED_CODE.note(
            "'{piece}' lies flat on the {on}: it counts as fixed there until fastenings are given.",
            "Give its fastenings.");

    static final Code HANGING_SUPPORT_CODE =
            Code.of("support-that-only-hangs", "What a piece bears on is itself held by nails only.");
    static final Kind HANGING_SUPPORT = HANGING_SUPPORT_CODE.note(
            "'{piece}' bears on {hanging}, {only} {counted}",
            "Give {hanging} something to stand on, or trust the rest.");
    static final Phrase HANGS = Phrase.of("which only hangs by its fastenings.");
    static final Phrase HANG = Phrase.of("which only hang by their fastenings.");
    static final Phrase NOTHING_ELSE = Phrase.of("Nothing else carries it.");
    static final Phrase COUNTING = Phrase.of("Counting {sides} alone: {bearing}.");

    static final Code HANGS_CODE =
            Code.of("hangs-on-its-fastenings", "A piece that nothing carries is held by nails only.");
    static final Kind HANGS_ON_NAILS =
            HANGS_CODE.note("'{piece}' is held by nails only; nothing carries it.", "Nail it to what is behind it.");

    static final Code CORNER_CODE = Code.of("touches-on-a-corner-only", "A piece touches others at points only.");
    static final Kind ON_A_CORNER =
            CORNER_CODE.problem("'{piece}' rests on {other} by a point.", "It needs a flat: lap it at least {flat}.");

    static final Code FLOATING_CODE = Code.of("floating-piece", "A piece touches nothing.");
    static final Kind FLOATING = FLOATING_CODE.problem("'{piece}' touches nothing: {amount} of air {side} it.", "");
    static final Phrase MOVE_TO_CONTACT = Phrase.of("Move it {way} {by}, or add a block.");
    static final Phrase PLACE_IT = Phrase.of("Place it on a piece, or add a block.");
    static final Kind FLOATING_FREE =
            FLOATING_CODE.problem("'{piece}' touches nothing, and nothing is below, behind or above it.", "");

    static final Code TOO_TALL_CODE = Code.of("too-tall", "The stack is higher than the room up to the ceiling.");
    static final Kind TOO_TALL =
            TOO_TALL_CODE.problem("The stack is {height} in a space of {space}: over by {amount}.", "");
    static final Kind THROUGH_THE_SLOPE =
            TOO_TALL_CODE.problem("'{piece}' goes {amount} through the ceiling, which {way} {by} in {over}.", "");
    static final Phrase RISES = Phrase.of("rises");
    static final Phrase FALLS = Phrase.of("falls");
    static final Phrase COULD_BE = Phrase.of("'{board}' could be {size}.");
    static final Phrase RIP_TOP = Phrase.of("Rip {by} off the top of '{board}'.");
    static final Phrase MAKE_LOWER = Phrase.of("Take {by} out of its height.");
    static final Phrase LOWER = Phrase.of("Lower the stack by {by}.");

    static final Code UNDER_THE_SLOPE_CODE =
            Code.of("short-of-the-ceiling", "A piece is to reach a ceiling that has risen where the piece stands.");
    static final Kind UNDER_THE_SLOPE = UNDER_THE_SLOPE_CODE.problem(
            "'{piece}' is to reach the ceiling and ends {amount} under it: it rises {by} in {over}.", "");
    static final Phrase UP_TO_IT = Phrase.of("Put it up to the ceiling: 'top: {place}'.");
    static final Phrase CEILING_AND = Phrase.of("ceiling + {up}");

    static final Code OUTSIDE_CODE =
            Code.of("outside-the-room", "The whole stack is above the ceiling or below the floor.");
    static final Kind ABOVE_CEILING = OUTSIDE_CODE.problem(
            "The whole stack is above the ceiling, at {ceiling}: it begins at {bottom}. That ceiling is left out.", "");
    static final Kind BELOW_FLOOR = OUTSIDE_CODE.problem(
            "The whole stack is below the floor, at {floor}: it ends at {top}. That floor is left out.", "");
    static final Phrase LARGER_UNIT = Phrase.of("{number} read as {unit}: {meant} meant?");
    static final Phrase GIVE_CEILING = Phrase.of("Heights count up from the datum: give that of the ceiling.");
    static final Phrase SIGN = Phrase.of("Heights count up from the datum: -{number} meant?");
    static final Phrase GIVE_FLOOR = Phrase.of("Heights count up from the datum: give that of the floor.");

    static final Code POINT_VOID_CODE = Code.of(
            "void-closed-by-a-point", "What closes a void is a corner, or a round that is tangent: glue may not.");
    static final Kind POINT_VOID = POINT_VOID_CODE.note(
            "The void of {amount} is closed only by points: {meetings}.", "Lap them, if it has to be tight.");
    static final Phrase MEETING = Phrase.of("{bodies} at {out} out, {up} up");

    static final Code TOO_FAR_CODE = Code.of("projects-too-far", "The stack projects more than its space allows.");
    static final Kind TOO_FAR =
            TOO_FAR_CODE.problem("The stack projects {projection}, {amount} more than allowed.", "");
    static final Phrase RIP_FACE = Phrase.of("Rip {by} off the face of '{board}'.");
    static final Phrase COULD_BE_WIDE = Phrase.of("'{board}' could be {size} wide.");
    static final Phrase BRING_BACK = Phrase.of("Bring '{board}' back {by}.");
    static final Phrase STACK_BACK = Phrase.of("Bring the stack back {by}.");
    static final Phrase MAKE_SHALLOWER = Phrase.of("Take {by} out of its projection.");
    static final Phrase TOGETHER = Phrase.of("{one} {then}");

    static final Code UPSIDE_DOWN_CODE =
            Code.of("upside-down", "A crown, bed or cove, commonly run narrow side down, widens downward.");
    static final Kind UPSIDE_DOWN = UPSIDE_DOWN_CODE.problem(
            "'{piece}': the {molding} widens downward.",
            "If you mean it, say 'flip: over'; otherwise turn it the other way.");

    /** A piece. */
    static final Phrase QUOTED = Phrase.of("'{name}'");
    /** Wall, floor or ceiling. */
    static final Phrase OF_THE_ROOM = Phrase.of("the {name}");

    private ComposeNotices() {}

    /** Whether a notice says that wood cuts into wall, floor or ceiling. */
    static boolean cutsIntoTheRoom(Notice notice) {
        return notice.kind().equals(OVERLAP)
                && notice.values().stream()
                        .anyMatch(named -> named.value() instanceof Phrase other
                                && other.template().equals(OF_THE_ROOM.template()));
    }
}
