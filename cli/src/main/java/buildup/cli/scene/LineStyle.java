package buildup.cli.scene;

import java.util.List;

/** What a line means, and with it how wide it is and how it is broken; inches. */
public enum LineStyle {
    /** The edge of a piece of trim. */
    OUTLINE(0.02, Tone.INK),
    /** The edge of another piece laid onto one. */
    OTHER(0.016, Tone.INK, 0.09, 0.05),
    /** The edge of blocking, which nobody sees later. */
    NAILER(0.012, Tone.INK),
    /** The edge of what stood there before: framing, wall, floor, ceiling. */
    STANDING(0.014, Tone.INK),
    /** Where something goes on beyond the picture. */
    BREAK(0.01, Tone.INK),
    /** A plane to measure from. */
    PLANE(0.008, Tone.INK, 0.3, 0.05, 0.03, 0.05),
    DIMENSION(0.008, Tone.INK),
    /** The stroke across the end of a dimension line. */
    TICK(0.016, Tone.INK),
    EXTENSION(0.005, Tone.INK),
    /** From a letter to its piece, and the ring round the letter. */
    LEADER(0.008, Tone.INK),
    /** Laid under a leader, so that it is seen on hatch. */
    CASING(0.035, Tone.PAPER),
    GRID(0.003, Tone.GRID),
    GRID_INCH(0.006, Tone.GRID_INCH),
    RULE(0.006, Tone.INK),
    /** The lines by which full size is checked. */
    CHECK(0.014, Tone.INK),
    /** Outline that light meets, that is turned away from it, and that lies in another's shadow. */
    LIT(0.045, Tone.INK),
    SHADE(0.045, Tone.INK, 0.16, 0.1),
    CAST(0.045, Tone.INK, 0.035, 0.07),
    /** A ray past a casting arris to the edge of its shadow. */
    RAY(0.012, Tone.INK, 0.1, 0.05),
    /** Outline that an eye sees, and that it does not see. */
    SEEN(0.045, Tone.INK),
    HIDDEN(0.045, Tone.INK, 0.035, 0.07),
    /** From an eye past what hides to what shows. */
    SIGHT(0.012, Tone.INK, 0.25, 0.05, 0.02, 0.05),
    /** Wood that lies on wood and carries it. */
    BEARING(0.06, Tone.INK),
    /** The line in which a weight falls. */
    FALL(0.016, Tone.INK),
    /** From the end of a bearing to where a weight falls past it. */
    PAST(0.025, Tone.INK, 0.04, 0.04),
    /** A nail or screw. */
    NAIL(0.03, Tone.INK),
    /** A stroke across a nail where it bites. */
    BITE(0.015, Tone.INK),
    /** Where one could go. */
    COULD(0.03, Tone.INK, 0.08, 0.06),
    /** An outline in the driest season, and in the dampest. */
    DRY(0.016, Tone.INK, 0.09, 0.05),
    DAMP(0.02, Tone.INK, 0.02, 0.045),
    /** Round what a revision changed. */
    CLOUD(0.014, Tone.INK),
    /** Where one member of a front view ends and the next begins. */
    ARRIS(0.012, Tone.INK);

    private final double width;
    private final Tone tone;
    private final List<Double> dash;

    LineStyle(double width, Tone tone, Double... dash) {
        this.width = width;
        this.tone = tone;
        this.dash = List.of(dash);
    }

    /** How wide it is drawn, in of paper. */
    public double width() {
        return width;
    }

    /** How dark it is drawn. */
    public Tone tone() {
        return tone;
    }

    /** Lengths of stroke and gap in turn; empty for an unbroken line. */
    public List<Double> dash() {
        return dash;
    }
}
