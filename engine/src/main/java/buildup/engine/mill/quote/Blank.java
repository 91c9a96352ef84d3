package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.profiles.Profile;
import buildup.profiles.outline.Tolerance;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The stick that a profile is run from, and how boards of each width are ripped into it.
 *
 * @param thickness, width finished, in
 * @param quarter rough stock that it is planed from
 * @param layers glued one on the other; 1 when a quarter is thick enough
 * @param blank width before it is run, in
 * @param plies glued edge to edge; 1 when enough boards are wide enough
 * @param strip width of one ply, its share of the glue lines included, in
 * @param ripped the boards that are wide enough for a strip, their shares of the wood adding up to 1; none when none is
 * @param enough share of all wood that comes in so wide
 */
public record Blank(
        double thickness,
        double width,
        Mill.Quarter quarter,
        int layers,
        double blank,
        int plies,
        double strip,
        List<Ripping> ripped,
        double enough) {
    /** No blank is glued up of more: what asks for it was not meant. */
    static final int MOST_PLIES = 40;

    /**
     * Where less of the wood than this is wide enough for a strip, the blank is glued up of narrower ones: nobody turns over
     * four piles for one. Common practice, no source.
     */
    static final double LEAST_ENOUGH = 0.25;

    private static final double INCHES_PER_FOOT = 12;

    /**
     * How boards of one width are ripped.
     *
     * @param board its width, in
     * @param share of the wood that is ripped, more than 0 to 1
     * @param strips that it gives
     * @param drop width that is left beside them, in
     * @param kept whether the drop is wide enough to be taken back
     */
    public record Ripping(double board, double share, int strips, double drop, boolean kept) {}

    /** Copies the list. */
    public Blank {
        ripped = List.copyOf(ripped);
    }

    static Blank of(Profile profile, Mill mill) {
        double thickness = profile.thickness();
        double greatest = mill.quarters().stream()
                .mapToDouble(quarter -> quarter.finished().toInches())
                .max()
                .orElseThrow();
        int layers = (int) Math.ceil(thickness / greatest - Tolerance.COINCIDENT);
        Mill.Quarter quarter = least(mill.quarters(), thickness / layers);
        double blank = profile.width() + mill.allowance().toInches();
        int plies = 1;
        while (plies < MOST_PLIES && enough(strip(blank, plies, mill), mill) < LEAST_ENOUGH) {
            plies++;
        }
        double strip = strip(blank, plies, mill);
        double enough = enough(strip, mill);
        List<Ripping> ripped = mill.widths().stream()
                .filter(width -> strips(width, strip, mill) >= 1)
                .map(width -> ripping(width, strip, enough, mill))
                .toList();
        return new Blank(thickness, profile.width(), quarter, layers, blank, plies, strip, ripped, enough);
    }

    private static Mill.Quarter least(List<Mill.Quarter> quarters, double finished) {
        return quarters.stream()
                .filter(quarter -> quarter.finished().toInches() >= finished - Tolerance.COINCIDENT)
                .min(Comparator.comparing(Mill.Quarter::finished))
                .orElseThrow();
    }

    private static double strip(double blank, int plies, Mill mill) {
        return (blank + (plies - 1) * mill.joint().toInches()) / plies;
    }

    private static double enough(double strip, Mill mill) {
        return mill.widths().stream()
                .filter(width -> strips(width, strip, mill) >= 1)
                .mapToDouble(width -> width.share().doubleValue())
                .sum();
    }

    /** After the edge is straightened, each strip but the last takes a kerf with it. */
    private static int strips(Mill.Width board, double strip, Mill mill) {
        double kerf = mill.kerf().toInches();
        double room = board.width().toInches() - mill.edge().toInches() + kerf;
        return (int) Math.floor(room / (strip + kerf) + Tolerance.COINCIDENT);
    }

    /** What is left beside the last strip, its kerf taken off too. */
    private static Ripping ripping(Mill.Width board, double strip, double enough, Mill mill) {
        int strips = strips(board, strip, mill);
        double used = mill.edge().toInches() + strips * (strip + mill.kerf().toInches());
        double drop = Math.max(0, board.width().toInches() - used);
        boolean kept = mill.drops()
                .filter(drops -> drop >= drops.least().toInches() - Tolerance.COINCIDENT)
                .isPresent();
        return new Ripping(board.width().toInches(), board.share().doubleValue() / enough, strips, drop, kept);
    }

    /** Whether the mill's boards hold even a ply of it. */
    boolean canBeCut() {
        return !ripped.isEmpty();
    }

    boolean gluedUp() {
        return layers > 1 || plies > 1;
    }

    /** Strips beside and over each other in the blank. */
    public int pieces() {
        return layers * plies;
    }

    private double average(ToDoubleFunction<Ripping> share) {
        return ripped.stream()
                .mapToDouble(board -> board.share() * share.applyAsDouble(board))
                .sum();
    }

    /** Share of the boards' width that goes into strips. */
    public double inStrips() {
        return average(board -> board.strips() * strip / board.board());
    }

    /** Share of the boards' width that falls off beside the strips and is taken back. */
    double kept() {
        return average(board -> board.kept() ? board.drop() / board.board() : 0);
    }

    /**
     * Board feet in a foot of the blank, at the thickness by which rough stock is paid; under an inch it is paid as an inch:
     * common practice, no source.
     */
    double boardFeetInAFoot() {
        return Math.max(1, quarter.rough().toInches()) * pieces() * strip / INCHES_PER_FOOT;
    }

    /** Feet of strip that a board foot gives. */
    double stripsInABoardFoot() {
        return inStrips() * pieces() / boardFeetInAFoot();
    }

    /**
     * Board feet to buy.
     *
     * @param feet of blank to be run
     * @param sound share of the wood that is free of defects
     */
    double boardFeet(double feet, double sound) {
        return feet * boardFeetInAFoot() / inStrips() / sound;
    }

    /** Square feet of glue line in a foot of the blank: edges joined as thick as a layer, layers as wide as the blank. */
    double jointInAFoot() {
        double edges = layers * (plies - 1) * (thickness / layers);
        double faces = (layers - 1) * blank;
        return (edges + faces) / INCHES_PER_FOOT;
    }
}
