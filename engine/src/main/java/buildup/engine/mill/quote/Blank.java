package buildup.engine.mill.quote;

import buildup.catalog.mill.Mill;
import buildup.profiles.Profile;
import buildup.profiles.outline.Tolerance;
import java.util.Comparator;
import java.util.List;

/**
 * The stick that a profile is run from, and how many a board gives.
 *
 * @param thickness, width finished, in
 * @param quarter rough stock that it is planed from
 * @param layers glued one on the other; 1 when a quarter is thick enough
 * @param blank width before it is run, in
 * @param plies glued edge to edge; 1 when a board is wide enough
 * @param strip width of one ply, its share of the glue lines included, in
 * @param strips that a board gives
 * @param yield share of a board's width that goes into strips
 */
public record Blank(
        double thickness,
        double width,
        Mill.Quarter quarter,
        int layers,
        double blank,
        int plies,
        double strip,
        int strips,
        double yield) {
    /** No blank is glued up of more: what asks for it was not meant. */
    static final int MOST_PLIES = 40;

    private static final double INCHES_PER_FOOT = 12;

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
        while (plies < MOST_PLIES && strips(strip(blank, plies, mill), mill) < 1) {
            plies++;
        }
        double strip = strip(blank, plies, mill);
        int strips = strips(strip, mill);
        return new Blank(
                thickness,
                profile.width(),
                quarter,
                layers,
                blank,
                plies,
                strip,
                strips,
                strips * strip / mill.board().toInches());
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

    /** After the edge is straightened, each strip but the last takes a kerf with it. */
    private static int strips(double strip, Mill mill) {
        double kerf = mill.kerf().toInches();
        double room = mill.board().toInches() - mill.edge().toInches() + kerf;
        return (int) Math.floor(room / (strip + kerf) + Tolerance.COINCIDENT);
    }

    /** Whether the mill's boards hold even a ply of it. */
    boolean canBeCut() {
        return strips >= 1;
    }

    boolean gluedUp() {
        return layers > 1 || plies > 1;
    }

    /** Board feet in a foot of the blank, at the thickness by which rough stock is paid. */
    double boardFeetInAFoot() {
        // a board foot is 144 cubic inches; under an inch thick it is paid as an inch: common practice, no source
        return Math.max(1, quarter.rough().toInches()) * layers * plies * strip / INCHES_PER_FOOT;
    }

    /**
     * Board feet to buy.
     *
     * @param feet of blank to be run
     * @param sound share of the wood that is free of defects
     */
    double boardFeet(double feet, double sound) {
        return feet * boardFeetInAFoot() / yield / sound;
    }
}
