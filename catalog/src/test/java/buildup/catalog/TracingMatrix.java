package buildup.catalog;

import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Stroke;
import buildup.profiles.trace.Traced;
import buildup.profiles.trace.Tracer;
import buildup.profiles.trace.TracingOptions;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Traces true outlines with known faults, and judges what comes of it. */
final class TracingMatrix {
    /** Sizes hold within so many times the noise. */
    private static final double SIZE = 2;

    /** Radii hold within so many of their standard errors. */
    private static final double RADIUS = 4;

    private TracingMatrix() {}

    /** What came of a tracing. */
    enum Outcome {
        RECOVERED,
        MARKED,
        REFUSED,
        WRONG
    }

    /** What came of it, what is wrong with it, and what was said. */
    record Judged(Outcome outcome, List<String> faults, List<String> said) {}

    static Judged judge(Outline truth, Hand.Tracing tracing) {
        Notices notices = new Notices();
        Optional<Traced> traced =
                Tracer.trace(List.of(tracing.trail()), TracingOptions.PLAIN.in(LengthUnit.INCH), notices);
        List<String> said = notices.sorted().stream()
                .map(notice -> notice.level() + " " + notice.code() + ": " + NoticeWords.INCHES.message(notice))
                .toList();
        if (traced.isEmpty()) {
            return new Judged(Outcome.REFUSED, List.of(), said);
        }
        List<String> faults = faults(truth, traced.get().outline(), tracing);
        return new Judged(
                notices.sorted().stream().anyMatch(notice -> notice.level() == Level.PROBLEM)
                        ? Outcome.MARKED
                        : faults.isEmpty() ? Outcome.RECOVERED : Outcome.WRONG,
                faults,
                said);
    }

    private static List<String> faults(Outline truth, Outline traced, Hand.Tracing tracing) {
        List<String> faults = new ArrayList<>();
        Box box = truth.box();
        Box found = traced.box();
        double width = Math.abs(found.width() - box.width());
        double height = Math.abs(found.height() - box.height());
        if (Math.max(width, height) > SIZE * tracing.noise() + 1e-9) {
            faults.add(String.format(
                    Locale.ROOT,
                    "size %.4f x %.4f for %.4f x %.4f",
                    found.width(),
                    found.height(),
                    box.width(),
                    box.height()));
        }
        Point shift = new Point(box.back(), box.bottom());
        // seen from the right back, no point of the true outline is far off
        double far = 0;
        for (Stroke stroke : truth.strokes()) {
            for (int k = 0; k <= 16; k++) {
                Point p = stroke.segment().at(k / 16.0).minus(shift);
                far = Math.max(far, traced.distance(p));
            }
        }
        for (Stroke stroke : traced.strokes()) {
            for (int k = 0; k <= 16; k++) {
                far = Math.max(far, truth.distance(stroke.segment().at(k / 16.0).plus(shift)));
            }
        }
        double reach = Math.max(0.03, 8 * tracing.noise());
        if (far > reach) {
            faults.add(String.format(Locale.ROOT, "back or shape: %.3f off", far));
        }
        List<Segment> members = TracedMembers.of(truth);
        List<Segment> others = TracedMembers.of(traced);
        if (Math.abs(members.size() - others.size()) > 1) {
            faults.add(others.size() + " members of " + members.size());
        }
        for (Segment member : members) {
            if (member instanceof Arc arc) {
                radius(arc, others, truth, tracing, shift).ifPresent(faults::add);
            }
        }
        return faults;
    }

    private static Optional<String> radius(
            Arc arc, List<Segment> others, Outline truth, Hand.Tracing tracing, Point shift) {
        double n = tracing.trail().points().size() * arc.length() / truth.perimeter() / tracing.alike();
        double error = RADIUS * TracedMembers.radiusError(arc, tracing.noise(), n);
        if (error > arc.radius() / 2) {
            return Optional.empty();
        }
        Point middle = arc.at(0.5).minus(shift);
        return others.stream()
                .filter(Arc.class::isInstance)
                .map(Arc.class::cast)
                .filter(other -> other.distance(middle) < 4 * tracing.noise() + 0.004)
                .filter(other -> other.counterclockwise() == arc.counterclockwise())
                .map(other -> Math.abs(other.radius() - arc.radius()))
                .min(Double::compare)
                .filter(off -> off > Math.max(error, 1e-9))
                .map(off ->
                        String.format(Locale.ROOT, "radius %.3f off by %.4f, allowed %.4f", arc.radius(), off, error));
    }
}
