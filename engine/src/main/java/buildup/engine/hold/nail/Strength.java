package buildup.engine.hold.nail;

import buildup.catalog.fastener.Fastener;
import buildup.catalog.wood.Wood;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import java.util.List;
import java.util.Optional;

/**
 * Published strength of nails and screws; inches and lb. Every figure of a {@link Grip} or a {@link Joint} is one of
 * these, with its edition and safety factor.
 */
public enum Strength {
    NAIL_DESIGN(
            "W = 1380 G^2.5 D lb per inch of bite",
            "NDS 2018, eq. 12.2-3",
            "5 on the test maximum, 6900; G there is on ovendry volume, the G used is on volume at 12 %, which is"
                    + " less: the safe side. Its tables begin at D = 0.092; thinner nails are beyond them"),
    NAIL_TEST(
            "p = 7850 G^2.5 D L",
            "Wood Handbook, FPL-GTR-190 (2010), ch. 8; G on volume at 12 %",
            "none: the mean at which nails came out just after driving"),
    NAIL_TEST_OTHER(
            "p = 6900 G^2.5 D L",
            "FPL-093 (1965), revision of Technical Note 236; G on ovendry volume, here with the smaller G at 12 %",
            "none"),
    HEAD_PULL(
            "W = 690 pi D_H G^2 t lb, at most 1725 pi D_H^2 G^2: D_H of the head, t of wood under it, G of that wood",
            "NDS 2018, eq. 12.2-6a and 12.2-6b, from memory, and head sizes too; a nail is set {set}",
            "in the equation: it is an allowable value"),
    SCREW_DESIGN("W = 2850 G^2 D lb per inch of thread", "NDS 2018, eq. 12.2-2", "about 5.5, from memory"),
    SCREW_TEST("p = 15700 G^2 D L, L of thread", "Wood Handbook, FPL-GTR-190 (2010), ch. 8, from memory", "none"),
    NAIL_SLIP(
            "p = K D^1.5, K by group of woods",
            "Wood Handbook, FPL-GTR-190 (2010), Table 8-4, the method before 1991",
            "none: the load at a slip of 0.015 in (the slip from memory)"),
    SCREW_SLIP(
            "p = C D^2, C by group of woods",
            "allowable loads before 1991, in a construction handbook",
            "in C; not said there"),
    YIELD(
            "the least of the yield modes over K_D; a gap lengthens the arm",
            "NDS 2018, eq. 12.3-1 to 12.3-6, Tables 12.3.1B and 12.3.3; its bending strengths begin at D = 0.099",
            "2.2 and more (K_D) on the load of first yield"),
    BOTH_AT_ONCE(
            "share of what it holds drawn + share of what it holds across, at most 1",
            "NDS 2018, 12.4.2, from memory; for screws 12.4.1 allows more",
            "that of the two values");

    /** What no figure here accounts for. */
    public static final List<String> NOT_CHECKED = List.of(
            "splitting",
            "wood that dries or swells after nailing, which takes most of a smooth nail's hold",
            "how long the load lasts",
            "rings, coatings and glue",
            "the fastener's own steel",
            "whether a stud stands at the spot: the wall is taken as framing of spruce-pine-fir, G 0.42, where the plan has"
                    + " no masonry");

    /** Stands with every figure of strength. */
    public static final String CAUTION = "A bench check for trim, not engineering: local code, the makers' labels and a"
            + " licensed person decide.";

    /** Studs of spruce-pine-fir (NDS 2018, Table 12.3.3A); {@code framing} in the stack can name another wood. */
    public static final double STUD_GRAVITY = 0.42;

    /** Steeper than this off square a nail counts as a toe-nail: halfway to the 30 degrees of NDS 2018, 12.1.6.3. */
    public static final double SLANT = 15;

    /** NDS 2018, 12.5.4: what is left of a toe-nail's withdrawal and of its lateral value. */
    public static final double TOE_WITHDRAWAL = 0.67;

    public static final double TOE_LATERAL = 0.83;

    /** NDS 2018, 12.5.2.2: what is left of a lateral value in end grain; the Wood Handbook has two thirds. */
    public static final double END_LATERAL = 2.0 / 3;

    /** How deep a nail is set under the face, in: usual practice, from memory. */
    public static final double SET = 1.0 / 16;

    /** More wood than so many diameters of its head does not help against the head pulling through. */
    private static final double DEEP = 2.5;

    private final String formula;
    private final String edition;
    private final String safety;

    Strength(String formula, String edition, String safety) {
        this.formula = formula;
        this.edition = edition;
        this.safety = safety;
    }

    /** The formula as it is printed. */
    public String formula() {
        return formula;
    }

    /** Where it was published. */
    public Phrase edition() {
        return Phrase.of(edition).with("set", Figure.length(SET));
    }

    /** The factor between this figure and failure. */
    public String safety() {
        return safety;
    }

    /** Allowable withdrawal, lb per inch of bite (of thread, for a screw) in side grain. */
    public static double designWithdrawal(Fastener.Kind kind, double gravity, double diameter) {
        return kind == Fastener.Kind.NAIL
                ? 1380 * Math.pow(gravity, 2.5) * diameter
                : 2850 * gravity * gravity * diameter;
    }

    /** Withdrawal in tests, lb per inch of bite (of thread, for a screw) in side grain. */
    public static double testWithdrawal(Fastener.Kind kind, double gravity, double diameter) {
        return kind == Fastener.Kind.NAIL
                ? 7850 * Math.pow(gravity, 2.5) * diameter
                : 15700 * gravity * gravity * diameter;
    }

    /** The other published figure for the same: 6900 in place of 7850 for nails, none for screws. */
    public static double otherTestWithdrawal(Fastener.Kind kind, double gravity, double diameter) {
        double used = testWithdrawal(kind, gravity, diameter);
        return kind == Fastener.Kind.NAIL ? used * 6900 / 7850 : used;
    }

    /**
     * Where a head pulls through, lb: NDS 2018, eq. 12.2-6a and 12.2-6b, from memory. The two meet at 2.5 diameters of wood.
     *
     * @param gravity of the wood under the head
     * @param head its diameter, in
     * @param thickness of the wood under it, in
     */
    public static double headPull(double gravity, double head, double thickness) {
        return 690 * Math.PI * head * gravity * gravity * Math.min(thickness, DEEP * head);
    }

    /** Load across a nail at a small slip, or allowable across a screw, in side grain, lb. */
    public static double slip(Fastener.Kind kind, Optional<Wood.Group> group, double gravity, double diameter) {
        return kind == Fastener.Kind.NAIL
                ? nailCoefficient(group, gravity) * Math.pow(diameter, 1.5)
                : screwCoefficient(gravity) * diameter * diameter;
    }

    /** K of Table 8-4; 0 for panels, which it does not hold; the lower of the two when the group is not known. */
    private static double nailCoefficient(Optional<Wood.Group> group, double gravity) {
        double softwood = gravity < 0.425 ? 1440 : gravity < 0.475 ? 1800 : 2200;
        double hardwood = gravity < 0.475 ? 1440 : gravity < 0.565 ? 2000 : 2720;
        // lighter wood than the table begins with takes its first value down in proportion
        double light = Math.min(1, gravity / (group.equals(Optional.of(Wood.Group.HARDWOOD)) ? 0.33 : 0.29));
        return light
                * group.map(known -> switch (known) {
                            case SOFTWOOD -> softwood;
                            case HARDWOOD -> hardwood;
                            case PANEL -> 0.0;
                        })
                        .orElse(Math.min(softwood, hardwood));
    }

    /** Groups IV, III and II of the handbook by the gravities that it lists in them: to 0.43, to 0.50, above. */
    private static double screwCoefficient(double gravity) {
        return gravity < 0.435 ? 2520 : gravity < 0.505 ? 3240 : 3960;
    }
}
