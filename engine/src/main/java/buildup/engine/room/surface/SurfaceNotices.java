package buildup.engine.room.surface;

import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What the room as it is gives cause to say. */
final class SurfaceNotices {
    private static final Code CEILING_CODE =
            Code.of("ceiling-too-low", "The ceiling, as measured along a stretch, comes down into the stack.");
    static final Kind CEILING_TOO_LOW = CEILING_CODE.problem(
            "'{piece}' on '{stretch}': the ceiling comes down {amount} into it, most at {along} along, over a length of"
                    + " {over}.",
            "");
    static final Phrase LOWER = Phrase.of(
            "Lower the stack by {by} and close what stays open by a strip, or scribe its top to the ceiling.");
    static final Phrase SCRIBE_TOP = Phrase.of("Scribe its top to the ceiling.");
    private static final Code FLOOR_CODE =
            Code.of("floor-too-high", "The floor, as measured along a stretch, rises into the stack.");
    static final Kind FLOOR_TOO_HIGH = FLOOR_CODE.problem(
            "'{piece}' on '{stretch}': the floor rises {amount} into it, most at {along} along, over a length of {over}.",
            "");
    static final Phrase RAISE = Phrase.of("Raise the stack by {by}, or scribe its bottom to the floor.");
    static final Phrase SCRIBE_BOTTOM = Phrase.of("Scribe its bottom to the floor.");
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
