package buildup.engine.judge.clearance;

/**
 * How one piece stands to a place that is kept clear. Inches.
 *
 * @param body number of the piece
 * @param has air between the two; negative is how far it reaches in
 */
public record KeepClearRow(KeepClear place, int body, double has) {
    /** What is left of the air that has to be there; negative when some is missing. */
    public double margin() {
        return has - place.clear();
    }
}
