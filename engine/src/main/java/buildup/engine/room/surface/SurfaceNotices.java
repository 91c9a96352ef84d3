package buildup.engine.room.surface;

import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the room as it is gives cause to say. */
final class SurfaceNotices {
    private static final Code CEILING_CODE =
            Code.of("ceiling-too-low", "The ceiling, as measured along a stretch, comes down into the stack.");
    /** {@code others}: what else of the stack it comes into there, and how far. */
    static final Kind CEILING_TOO_LOW = CEILING_CODE.problem(
            "'{piece}' on '{stretch}': the ceiling comes down {amount} into it, most at {along} along, over a length of"
                    + " {over}{others}.",
            "");

    static final Phrase INTO_OTHERS = Phrase.of("; {into} too");
    static final Phrase INTO = Phrase.of("{by} into '{other}'");
    /** {@code what}: its top, or the tops of some pieces. */
    static final Phrase LOWER =
            Phrase.of("Lower the stack by {by} and close what stays open by a strip, or scribe {what} to the ceiling.");

    static final Phrase SCRIBE_TOP = Phrase.of("Scribe {what} to the ceiling.");
    private static final Code FLOOR_CODE =
            Code.of("floor-too-high", "The floor, as measured along a stretch, rises into the stack.");
    static final Kind FLOOR_TOO_HIGH = FLOOR_CODE.problem(
            "'{piece}' on '{stretch}': the floor rises {amount} into it, most at {along} along, over a length of"
                    + " {over}{others}.",
            "");
    static final Phrase RAISE = Phrase.of("Raise the stack by {by}, or scribe {what} to the floor.");
    static final Phrase SCRIBE_BOTTOM = Phrase.of("Scribe {what} to the floor.");
    static final Phrase ITS = Phrase.of("its {side}");
    static final Phrase SEVERAL = Phrase.of("the {side}s of {pieces}");
    private static final Code WALL_CODE =
            Code.of("wall-stands-out", "A wall, as measured along a stretch, stands out into what is to lie on it.");
    static final Kind WALL_HUMPS = WALL_CODE.note(
            "'{piece}' on '{stretch}': the wall stands {amount} out of its plane, most at {along} along.",
            "Set the stack out by {by} and shim the hollows, or scribe its back.");
    private static final Code DISAGREE = Code.of("heights-disagree", "Ceiling or floor has two heights at one corner.");
    static final Kind HEIGHTS_DISAGREE = DISAGREE.problem(
            "At the corner of '{stretch}' and '{next}' the {surface} is at {one} and at {other}, {amount} apart.",
            "Measure it again, from one level line all round.");

    private SurfaceNotices() {}
}
