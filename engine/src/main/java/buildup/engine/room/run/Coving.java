package buildup.engine.room.run;

import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Tolerance;
import buildup.shared.document.Fields;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.length.Length;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A cove run over the table-saw blade along a fence that is clamped at an angle to it.
 *
 * <p>With blade radius R, final depth d, cove width W and kerf k: the chord of the blade at the table is
 * L = 2 sqrt(2 R d - d^2). A thin blade wants sin(angle) = W / L. A blade with a kerf cuts wider: with b = L/2 and
 * w = W/2, w = b sin(angle) + (k/2) cos(angle), so angle = atan2(w, F) - atan2(k/2, b), F = sqrt(b^2 + k^2/4 - w^2).
 * The hollow is a part of an ellipse with half-axes R sin(angle), level, and R, upright.
 *
 * @param name of the cove
 * @param diameter of the blade, in
 * @param kerf width of the cut, 0 for a thin blade, in
 */
public record Coving(String name, double width, double depth, double diameter, double kerf) {
    private static final String OWN_KEY = "table-saw-cove";

    /** What a pass takes: about 1/16, as shop articles on coving have it. */
    public static final double PASS = 1.0 / 16;

    /** The blade and the kerf when none is given: the common ten-inch table saw. */
    static final double USUAL_BLADE = 10;

    static final double USUAL_KERF = 0.125;

    /** So much of a blade's radius is under the arbor's washers and the table: shop practice, no source. */
    private static final double MOST_OF_RADIUS = 0.7;

    /** {@link #PASS} without a mark: it is about so much in either unit. */
    static Figure aPass() {
        return Figure.contact(PASS);
    }

    /** Goes with every setting of it. */
    public static final Phrase CAUTION = Phrase.of(
                    "A cove over the blade: clamp a fence before and one behind the stick, take about {pass} a pass, keep"
                            + " the blade under wood, push with blocks and never with hands, use every guard that can stay"
                            + " on. Some makers forbid it: the saw's manual decides.")
            .with("pass", aPass());

    /** Length of the blade's slot in the plane of the table at full depth, in. */
    public double chord() {
        return 2 * Math.sqrt(2 * radius() * depth - depth * depth);
    }

    private double radius() {
        return diameter / 2;
    }

    /** Angle of the fence from the plane of the blade, kerf counted, degrees. */
    public double angle() {
        double b = chord() / 2;
        double w = width / 2;
        double half = kerf / 2;
        double f = Math.sqrt(Math.max(0, b * b + half * half - w * w));
        return Math.toDegrees(Math.atan2(w, f) - Math.atan2(half, b));
    }

    /** The same, cut by a blade without width. */
    public Coving thin() {
        return new Coving(name, width, depth, diameter, 0);
    }

    /** Passes at {@link #PASS} each. */
    public int passes() {
        return (int) Math.ceil(depth / PASS - Tolerance.COINCIDENT);
    }

    /** Radius of the hollow at its deepest, in: R sin^2(angle). */
    public double bottomRadius() {
        double sin = Math.sin(Math.toRadians(angle()));
        return radius() * sin * sin;
    }

    /** Radius of the circular arc of the same width and depth, in: what a scraper is ground to. */
    public double circularRadius() {
        return (width * width / 4 + depth * depth) / (2 * depth);
    }

    /** Area of the hollow, thin blade, sq in. */
    public double area() {
        double r = radius();
        double segment = r * r * Math.acos((r - depth) / r) - (r - depth) * chord() / 2;
        return Math.sin(Math.toRadians(angle())) * segment;
    }

    /** The entries under {@code table-saw-cove:}; one that no blade cuts is refused and left out. */
    public static List<Coving> read(Stack stack, Fields root, Notices notices) {
        List<Coving> covings = new ArrayList<>();
        int number = 0;
        for (Fields entry :
                root.withReader(stack.lengths()).renamed("coving", OWN_KEY).list(OWN_KEY)) {
            number++;
            String name = entry.text("name").orElse("cove " + number);
            Optional<Double> width = size(entry, "width", notices);
            Optional<Double> depth = size(entry, "depth", notices);
            Optional<Double> blade = entry.has("blade") ? size(entry, "blade", notices) : Optional.of(USUAL_BLADE);
            Optional<Double> kerf = entry.has("kerf")
                    ? entry.length("kerf").map(Length::toInches).filter(found -> notNegative(found, entry, notices))
                    : Optional.of(USUAL_KERF);
            if (width.isPresent() && depth.isPresent() && blade.isPresent() && kerf.isPresent()) {
                Coving coving = new Coving(name, width.get(), depth.get(), blade.get(), kerf.get());
                Optional<Notice> fault = coving.fault(entry.mark());
                fault.ifPresent(notices::add);
                if (fault.isEmpty()) {
                    covings.add(coving);
                }
            }
        }
        return List.copyOf(covings);
    }

    private static Optional<Double> size(Fields entry, String key, Notices notices) {
        Optional<Double> size = entry.length(key).map(Length::toInches);
        if (!entry.has(key)) {
            notices.add(RunNotices.COVE_WITHOUT_SIZE.with("key", key).at(entry.mark()));
        }
        if (size.filter(inches -> inches <= 0).isPresent()) {
            notices.add(RunNotices.COVE_OF_NOTHING
                    .with("key", key)
                    .with("size", Figure.length(size.get()))
                    .at(entry.mark(key)));
            return Optional.empty();
        }
        return size;
    }

    private static boolean notNegative(double kerf, Fields entry, Notices notices) {
        if (kerf < 0) {
            notices.add(RunNotices.KERF_BELOW_NOTHING
                    .with("size", Figure.length(kerf))
                    .with("example", Figure.atLeast(USUAL_KERF))
                    .at(entry.mark("kerf")));
        }
        return kerf >= 0;
    }

    private Optional<Notice> fault(Mark mark) {
        double most = MOST_OF_RADIUS * radius();
        if (depth > most) {
            return Optional.of(RunNotices.COVE_TOO_DEEP
                    .with("cove", name)
                    .with("depth", Figure.length(depth))
                    .with("blade", Figure.length(diameter))
                    .with("most", Figure.atMost(most))
                    .at(mark)
                    .amount(Figure.length(depth - most)));
        }
        if (width > chord()) {
            double half = width / 2;
            boolean reachable = half < radius();
            double needed = reachable ? radius() - Math.sqrt(radius() * radius() - half * half) : most;
            // rounded up to a sixteenth it must still be within what the blade stands out
            boolean deeper = needed <= most - PASS;
            return Optional.of(RunNotices.COVE_TOO_WIDE
                    .with("cove", name)
                    .with("width", Figure.length(width))
                    .with("chord", Figure.atMost(chord()))
                    .at(mark)
                    .amount(Figure.length(width - chord()))
                    .cure(
                            deeper
                                    ? RunNotices.MAKE_IT_DEEPER.with("depth", Figure.atLeast(needed))
                                    : RunNotices.LARGER_BLADE));
        }
        return Optional.empty();
    }
}
