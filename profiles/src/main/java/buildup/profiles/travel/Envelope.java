package buildup.profiles.travel;

import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The highest (or lowest) wood of an outline at each x, from left to right. */
record Envelope(List<Span> spans) {
    /** A stretch on which one piece is outermost. */
    record Span(double from, double to, SegmentPart piece) {}

    static Envelope upper(Outline outline) {
        return of(outline, true);
    }

    static Envelope lower(Outline outline) {
        return of(outline, false);
    }

    private static Envelope of(Outline outline, boolean up) {
        List<SegmentPart> pieces = new ArrayList<>();
        for (Stroke stroke : outline.strokes()) {
            pieces.addAll(SegmentPart.of(stroke.segment()));
        }
        List<Double> cuts = cuts(pieces);
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double from = cuts.get(i);
            double to = cuts.get(i + 1);
            double middle = (from + to) / 2;
            // pieces of one outline do not cross, so the one outermost halfway is so on the whole stretch
            outermost(pieces, middle, up).ifPresent(piece -> spans.add(new Span(from, to, piece)));
        }
        return new Envelope(spans);
    }

    private static Optional<SegmentPart> outermost(List<SegmentPart> pieces, double x, boolean up) {
        Optional<SegmentPart> best = Optional.empty();
        double far = Double.NEGATIVE_INFINITY;
        for (SegmentPart piece : pieces) {
            if (piece.left().x() < x && x < piece.right().x()) {
                double height = up ? piece.height(x) : -piece.height(x);
                if (height > far) {
                    far = height;
                    best = Optional.of(piece);
                }
            }
        }
        return best;
    }

    /** All ends of pieces, those nearer than coincident taken as one. */
    private static List<Double> cuts(List<SegmentPart> pieces) {
        List<Double> ends = new ArrayList<>();
        for (SegmentPart piece : pieces) {
            ends.add(piece.left().x());
            ends.add(piece.right().x());
        }
        ends.sort(Comparator.naturalOrder());
        List<Double> cuts = new ArrayList<>();
        for (double end : ends) {
            if (cuts.isEmpty() || end - cuts.get(cuts.size() - 1) > Tolerance.COINCIDENT) {
                cuts.add(end);
            }
        }
        return cuts;
    }

    /** Where the envelope begins, ends, or changes its height by more than touching at once. */
    List<Double> jumps() {
        List<Double> jumps = new ArrayList<>(List.of(spans.get(0).from()));
        for (int i = 0; i + 1 < spans.size(); i++) {
            double x = spans.get(i).to();
            double step =
                    spans.get(i + 1).piece().height(x) - spans.get(i).piece().height(x);
            if (Math.abs(step) > Tolerance.TOUCHING) {
                jumps.add(x);
            }
        }
        jumps.add(spans.get(spans.size() - 1).to());
        return jumps;
    }
}
