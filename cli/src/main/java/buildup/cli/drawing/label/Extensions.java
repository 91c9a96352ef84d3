package buildup.cli.drawing.label;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** Extension lines of several dimensions that lie on one another are drawn once. */
final class Extensions {
    private Extensions() {}

    static List<Line> merged(List<Line> lines) {
        List<Line> merged = new ArrayList<>();
        for (Line line : lines) {
            Line whole = line;
            for (int i = merged.size() - 1; i >= 0; i--) {
                if (overlap(whole, merged.get(i))) {
                    whole = joined(whole, merged.remove(i));
                }
            }
            merged.add(whole);
        }
        return merged;
    }

    private static boolean overlap(Line a, Line b) {
        DimensionAxis run = DimensionAxis.of(a);
        return DimensionAxis.of(b) == run
                && Math.abs(run.across(a.from()) - run.across(b.from())) < Tolerance.TOUCHING
                && run.least(a.box()) <= run.most(b.box())
                && run.least(b.box()) <= run.most(a.box());
    }

    private static Line joined(Line a, Line b) {
        DimensionAxis run = DimensionAxis.of(a);
        return run.line(
                Math.min(run.least(a.box()), run.least(b.box())),
                Math.max(run.most(a.box()), run.most(b.box())),
                run.across(a.from()));
    }
}
