package buildup.engine.mill.milling;

import buildup.catalog.words.WordNotices;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What cutting a profile gives cause to say. */
public final class MillingNotices {
    /** Not reached by the outside head. */
    public static final Code UNDERCUT =
            Code.of("undercut", "The outside head does not reach a part of a profile, or no straight pass does.");

    /** Too little wood round a kerf. */
    public static final Code THIN_WEB = Code.of("thin-web", "Too little wood is left behind or outside a kerf.");

    /** A knife would cut deeper than its head. */
    public static final Code TOO_DEEP =
            Code.of("profile-too-deep", "A knife would have to cut deeper than the head allows.");

    private static final Code MANY_MEMBERS =
            Code.of("many-members", "An outline has so many members that router bits are not looked for.");
    static final Kind TOO_MANY_FOR_BITS = MANY_MEMBERS.note(
            "An outline of {members} members: bits are not looked for past {most}.", "Fit fewer lines and arcs to it.");

    static final Kind NEEDS_PASSES =
            UNDERCUT.problem(Words.NOT_FROM_THE_FRONT + "it needs the {sides}.", Words.RUN_IT_ONCE_MORE);
    static final Kind NOT_REACHED =
            UNDERCUT.problem(Words.NOT_FROM_THE_FRONT + "no straight pass reaches it.", "Make it of two pieces.");

    static final Kind SLOT_NEEDS_PASSES = UNDERCUT.problem(
            "The slot {width} wide and {depth} deep at {at} is not open to the outside head; it needs the {sides}.",
            "Run it from that side, or leave it out.");
    static final Kind SLOT_NOT_REACHED = UNDERCUT.problem(
            "No straight pass reaches the slot {width} wide and {depth} deep at {at}.", "Make it of two pieces.");

    static final Kind NOTHING_BEHIND = WordNotices.KERF_THROUGH.problem(
            "Kerf is {depth} deep in a {board} board.", "Cut it less deep: leave {least}.");
    static final Kind THIN_BEHIND =
            THIN_WEB.problem("Only {left} left behind the kerf '{kerf}'; wants {wanted}.", "Cut it {by} less deep.");
    static final Kind THIN_OUTSIDE = THIN_WEB.problem(
            "Only {left} left outside the kerf '{kerf}'; wants {wanted}.", "Move it {by} in, or leave it out.");

    private static final Code INSIDE_CORNER =
            Code.of("inside-corner", "An inside corner is sharper than the cutter that makes it.");
    static final Kind CORNER = INSIDE_CORNER.problem(
            "Inside corner at {place} is {shape}; the cutter leaves a {radius} radius ({left}).", Words.DRAW_IT);
    static final Kind CORNERS = INSIDE_CORNER.problem(
            "{corners} inside corners, the first at {place}, are {shape}; the cutter leaves a {radius} radius in each"
                    + " ({left}).",
            Words.DRAW_IT);
    static final Phrase PLACE = Phrase.of("({x}, {y})");

    /** A knife wider than any head. */
    public static final Code WIDE_KNIFE = Code.of("knife-too-wide", "No listed head takes so wide a knife.");

    static final Kind KNIFE_TOO_WIDE = WIDE_KNIFE.problem(
            "Knife is {width} wide; the {head} takes {widest}.",
            "Run it in two pieces, or list a wider head under 'heads:' in a catalog file.");
    static final Kind KNIFE_TOO_DEEP = TOO_DEEP.problem(
            "A knife would cut {depth} deep; the head takes {deepest}.",
            "Rip the deepest waste off first, or run it in two pieces.");

    private static final class Words {
        private static final String NOT_FROM_THE_FRONT =
                "The outside head does not reach the line between {from} and {to}; ";
        private static final String RUN_IT_ONCE_MORE = "Run it once more that way, or draw it open to the front.";
        private static final String DRAW_IT = "Draw it {drawn} or accept.";
    }

    private MillingNotices() {}
}
