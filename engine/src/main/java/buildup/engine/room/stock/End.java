package buildup.engine.room.stock;

import buildup.engine.room.run.Course;
import buildup.engine.room.run.EndCut;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Saw;
import buildup.engine.room.run.Saw.Hand;
import buildup.profiles.outline.Point;
import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.Optional;

/**
 * A cut at one end of a piece.
 *
 * @param slant how much longer the room side is than the back at this end, seen from above, in; negative when shorter
 * @param miter, bevel with the stick flat on the table, degrees
 * @param setting how the stick lies or stands on the saw; none for a square cut
 * @param how what to do, in a few words: those of the table of cuts
 */
public record End(EndJoint joint, double slant, double miter, double bevel, Optional<Saw.Setting> setting, Phrase how) {
    private static final double FLATTEST = 0.1;
    private static final Phrase SIDE = Phrase.of("{joint} {side}");

    /** Square to the stick. */
    public static final End SQUARE = new End(EndJoint.SQUARE, 0, 0, 0, Optional.empty(), Phrase.of("square"));

    /** What it is cut for and at which side of the saw, in as few words as a table of many pieces takes. */
    public Phrase side() {
        return setting.map(own -> SIDE.with("joint", joint.word()).with("side", own.side()))
                .orElseGet(() -> Phrase.plain(joint.word()));
    }

    /**
     * What a saw takes along the stick at this end, in: its kerf is wider along the stick when it cuts aslant, by the
     * secants of miter and bevel. Cuts so flat that no saw makes them are counted as 84 degrees.
     */
    public double kerf(Shop shop) {
        double aslant = Math.cos(Math.toRadians(miter)) * Math.cos(Math.toRadians(bevel));
        return LengthSteps.inches(shop.kerf()) / Math.max(aslant, FLATTEST);
    }

    /**
     * Half of a scarf of 45 degrees through the thickness.
     *
     * @param slant as far as the two halves overlap, in; negative where the half is shorter on the side that lies up
     */
    public static End scarf(double slant, Hand end, Course course) {
        Saw.Setting setting = Saw.scarf(slant > 0, end, course);
        return new End(EndJoint.SCARF, slant, setting.miter(), setting.bevel(), Optional.of(setting), setting.words());
    }

    /** The cut at one end of a fit, by the hand on which it lies. */
    public static End of(Fit fit, Hand hand) {
        EndCut cut = fit.cut(hand);
        List<Point> outline = fit.outline();
        Point along = fit.frame().along();
        boolean left = hand == Hand.LEFT;
        Point back = outline.get(left ? 0 : 3);
        Point face = outline.get(left ? 1 : 2);
        double slant = face.minus(back).dot(along) * (left ? -1 : 1);
        return new End(EndJoint.of(cut.kind()), slant, cut.miter(), cut.bevel(), cut.setting(), cut.words());
    }
}
