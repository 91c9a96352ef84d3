package buildup.profiles.outline;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Code;

/** What notices say of outlines, whether they are drawn in words or traced. */
public final class OutlineCodes {
    /** There is none, or more than one. */
    public static final Code NO_OUTLINE =
            Code.of("no-outline", "A piece, an item or a tracing has no outline, or two.");

    /** Nothing lies within the outline. */
    public static final Code NO_AREA = Code.of("no-area", "An outline or a tracing encloses no area.");

    /** It runs clockwise. */
    public static final Code CLOCKWISE =
            Code.of("outline-clockwise", "An outline or a tracing runs clockwise and has been turned round.");

    /** Points stand in it twice. */
    public static final Code DOUBLED_POINTS =
            Code.of("doubled-points", "Points that an outline or a tracing holds twice, or by a slip, are left out.");

    /** Its back is where its face should be. */
    public static final Code MIRRORED =
            Code.of("outline-mirrored", "The back of a profile is on the room side: it may be drawn end for end.");

    /** It crosses itself. */
    public static final Code CROSSES_ITSELF = Code.of(
            "outline-crosses-itself", "An outline or a tracing crosses itself, so nobody can say what is wood.");

    private static final Phrase PLACE = Phrase.of("({x}, {y})");

    private OutlineCodes() {}

    /** Where something is on a profile, to a hundredth of the unit of the document. */
    public static Phrase place(Point at) {
        return PLACE.with("x", hundredths(at.x())).with("y", hundredths(at.y()));
    }

    private static Figure hundredths(double inches) {
        return new Figure(Quantity.LENGTH, inches, Rounding.decimals(2));
    }
}
