package buildup.engine.section.compose;

/**
 * The figures of the whole stack, framing left out; inches, square inches, pounds per foot of run.
 *
 * @param height top less bottom
 * @param projection greatest x
 * @param trimHeight, trimProjection the same of the trim alone, nailers left out
 * @param area exact area of the union
 * @param weightPerFoot sum of each piece's area times its own wood's density / 144, nailers in
 */
public record Totals(
        double height,
        double projection,
        double bottom,
        double top,
        double trimHeight,
        double trimProjection,
        double area,
        double weightPerFoot) {}
