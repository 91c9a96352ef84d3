package buildup.engine.room.run;

import buildup.engine.room.plan.WallCorner;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;

/**
 * The settings of a saw for a cut in an upright plane through a corner.
 *
 * <p>With C the angle between the two walls and S the spring (the angle of the stick's flat from upright), the stick flat
 * on the table: miter M = atan(sin S / tan(C/2)), bevel B = asin(cos S cos(C/2)). Derivation: the trace of the miter
 * plane on the flat stands at M to the square line, and sin B is the part of the miter plane's normal that is square to
 * the table. Hence cos M cos B = sin(C/2) and tan B = sin M / tan S. A corner past 180 degrees is one taken from the
 * other side: the same figures with both signs turned.
 *
 * <p>Hands and edges hold for a saw whose blade tilts to the left, the stick face up; they follow from the same
 * geometry: tilted so, what lies left of the blade keeps the shorter face, which an inside corner wants.
 */
public final class Saw {
    /** Shop practice, no source: enough for the face edge alone to touch, little enough to leave the back strong. */
    public static final double BACK_CUT = 5;

    /** Twice the angle of a scarf from the run, degrees: it is cut as half of a square corner, through the thickness. */
    private static final double SCARF = 90;

    public static final String CAUTION =
            "Cut short pieces from a long stick, hands clear of the blade and the guard in place; try the setting on"
                    + " scrap first. The saw maker's manual rules.";

    private static final String BACK = "back";
    private static final Phrase SIDE = Phrase.of("{angles}, {edge} at fence, keep {keep}");
    private static final Phrase BACK_SIDE = Phrase.of("{angles}, keep {keep}");
    private static final Phrase MITER = Phrase.of("{miter} {swing}");
    private static final Phrase BEVEL = Phrase.of("bevel {bevel}");
    private static final Phrase BOTH = Phrase.of("{miter}, {bevel}");
    private static final Phrase SETTING = Phrase.of("{position}; miter {miter}{swing}, bevel {bevel}; keep the {keep}");
    private static final Phrase LYING_TOP_UP = Phrase.of("top up, {edge} edge at the fence");
    private static final Phrase TOP_UP = LYING_TOP_UP.with("edge", BACK);
    private static final Phrase FACE_UP = Phrase.of("flat, face up, {edge} edge at the fence");
    private static final Phrase UPRIGHT = Phrase.of("upright, back at the fence");
    private static final Phrase UPSIDE_DOWN =
            Phrase.of("upside down, wall side at the fence, ceiling side on the table");
    private static final Phrase RIGHT_WAY_UP =
            Phrase.of("right way up, wall side at the fence, ceiling side on the table");

    private Saw() {}

    /** Which way the saw's table is swung to cut, from square. */
    public enum Swing {
        LEFT("left"),
        RIGHT("right"),
        NONE("none");

        private final String word;

        Swing(String word) {
            this.word = word;
        }

        /** As it is called in a table. */
        public String word() {
            return word;
        }
    }

    /** Which end of a stick, seen from the room as it is put up. */
    public enum Hand {
        LEFT("left"),
        RIGHT("right");

        private final String word;

        Hand(String word) {
            this.word = word;
        }

        /** As it is called in a table. */
        public String word() {
            return word;
        }
    }

    /**
     * Miter and bevel in degrees; positive at an outside corner, negative when the corner is taken from the other side.
     *
     * @param miter from square, -90 to 90
     * @param bevel from upright, -90 to 90
     */
    public record Flat(double miter, double bevel) {}

    /**
     * A position of the stick on the saw.
     *
     * @param miter from square, 0 to 90 degrees
     * @param bevel from upright, 0 to 90 degrees
     * @param edge of the stick that lies against the fence
     * @param keep the side of the blade on which the piece lies that is kept
     * @param position how the stick lies or stands, with the edge at the fence
     */
    public record Setting(double miter, double bevel, Swing swing, String edge, Hand keep, Phrase position) {
        /** The same for what lies flat with its face up and its inner edge at the fence: casings. */
        Setting inner() {
            return faceUp("inner");
        }

        private Setting faceUp(String other) {
            return new Setting(miter, bevel, swing, other, keep, FACE_UP.with("edge", other));
        }

        private Setting topUp(String other) {
            return new Setting(miter, bevel, swing, other, keep, LYING_TOP_UP.with("edge", other));
        }

        /** The angles that are not 0 as they stand on a label: the miter with the side to which the saw is swung. */
        public Phrase angles() {
            Phrase turned = MITER.with("miter", Figure.angle(miter)).with("swing", swing.word());
            Phrase tilted = BEVEL.with("bevel", Figure.angle(bevel));
            if (bevel < WallCorner.SQUARE_WITHIN) {
                return turned;
            }
            return swing == Swing.NONE ? tilted : BOTH.with("miter", turned).with("bevel", tilted);
        }

        /** The saw's side of a cut in as few words as a table of many pieces takes; its back at the fence goes unsaid. */
        public Phrase side() {
            return (edge.equals(BACK) ? BACK_SIDE : SIDE)
                    .with("angles", angles())
                    .with("edge", edge)
                    .with("keep", keep.word());
        }

        /** All of it in one line. */
        public Phrase words() {
            return SETTING.with("position", position)
                    .with("miter", Figure.angle(miter))
                    .with("swing", swing == Swing.NONE ? "" : " " + swing.word())
                    .with("bevel", Figure.angle(bevel))
                    .with("keep", keep.word());
        }
    }

    /**
     * Settings with the stick flat on the table.
     *
     * @param corner degrees, more than 0 and less than 360; an inside corner of C is 360 - C
     * @param spring degrees from the wall, -90 to 90
     */
    public static Flat flat(double corner, double spring) {
        double half = Math.toRadians(corner / 2);
        double s = Math.toRadians(spring);
        // cos/sin in place of 1/tan: exact zero at a straight corner is out of reach either way, but no infinity
        double miter = Math.atan(Math.sin(s) * Math.cos(half) / Math.sin(half));
        double bevel = Math.asin(Math.cos(s) * Math.cos(half));
        return new Flat(Math.toDegrees(miter), Math.toDegrees(bevel));
    }

    /** Miter with the stick held against the fence as it stands on the wall, bevel 0; signs as {@link #flat}. */
    public static double nested(double corner) {
        return 90 - corner / 2;
    }

    /** How the stick lies flat, face up, for a cut at one of its ends; a board that lies, top up. */
    public static Setting flat(double corner, double spring, Hand end) {
        Flat flat = flat(corner, spring);
        if (Math.abs(spring) > 90 - WallCorner.SQUARE_WITHIN) {
            return level(corner, end, TOP_UP, "back");
        }
        boolean outside = flat.bevel() > 0;
        boolean keepsLeft = !outside;
        // uncut stick as on the wall: top edge away from the user; the kept piece is cut at the side of the blade
        boolean turned = (end == Hand.RIGHT) != keepsLeft;
        String edge = turned ? "bottom" : "top";
        double lean = outside ? flat.miter() : -flat.miter();
        // the edge that is longer at an outside corner, shorter at an inside one, is the top of a stick that leans out
        Swing swing = swing(lean * (turned ? -1 : 1));
        Hand keep = keepsLeft ? Hand.LEFT : Hand.RIGHT;
        return setting(flat, swing, edge, keep, FACE_UP.with("edge", edge));
    }

    /** How the stick stands against the fence for a cut at one of its ends; one that leans out stands upside down. */
    public static Setting nested(double corner, double spring, Hand end) {
        if (Math.abs(spring) < WallCorner.SQUARE_WITHIN) {
            return level(corner, end, UPRIGHT, "back");
        }
        if (Math.abs(spring) > 90 - WallCorner.SQUARE_WITHIN) {
            return level(corner, end, TOP_UP, "back");
        }
        return spring > 0
                ? level(corner, end == Hand.LEFT ? Hand.RIGHT : Hand.LEFT, UPSIDE_DOWN, "bottom")
                : level(corner, end, RIGHT_WAY_UP, "top");
    }

    /** A plain miter: an outside corner leaves the room side long. */
    private static Setting level(double corner, Hand end, Phrase position, String edge) {
        double miter = nested(corner);
        Hand keep = end == Hand.RIGHT ? Hand.LEFT : Hand.RIGHT;
        Swing swing = swing(end == Hand.RIGHT ? miter : -miter);
        return setting(new Flat(miter, 0), swing, edge, keep, position);
    }

    private static Swing swing(double toTheRight) {
        return Math.abs(toTheRight) < WallCorner.SQUARE_WITHIN ? Swing.NONE : toTheRight > 0 ? Swing.RIGHT : Swing.LEFT;
    }

    private static Setting setting(Flat flat, Swing swing, String edge, Hand keep, Phrase position) {
        double miter = Math.abs(flat.miter());
        double bevel = Math.abs(flat.bevel());
        return new Setting(miter, bevel, swing, edge, keep, position);
    }

    /**
     * Half of a scarf of 45 degrees through the thickness: the stick lies on its wide side and the blade is tilted.
     *
     * @param longSideUp whether the side that lies up is the longer one at this end
     * @param end of the piece as it is put up
     */
    public static Setting scarf(boolean longSideUp, Hand end, Course course) {
        // a casing is seen from its outer edge: left and right change places
        Hand seen = course.turned() == (end == Hand.LEFT) ? Hand.RIGHT : Hand.LEFT;
        Setting setting = flat(longSideUp ? SCARF : 360 - SCARF, 0, seen);
        boolean top = setting.edge().equals("top");
        if (course.turned()) {
            return setting.faceUp(top ? "inner" : "outer");
        }
        return course.lies() ? setting.topUp(top ? "back" : "front") : setting;
    }

    /**
     * How much shorter the back becomes under a back-cut, so that only the face edge meets the wall and can be scribed
     * to it: thickness x tan of the angle.
     */
    public static double backCut(double thickness) {
        return thickness * Math.tan(Math.toRadians(BACK_CUT));
    }
}
