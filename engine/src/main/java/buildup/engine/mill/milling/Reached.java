package buildup.engine.mill.milling;

import buildup.profiles.outline.Segment;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.travel.Access;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of the outline and the sides from which a cutter reaches all of it.
 *
 * @param stroke counted from 0
 * @param from, to shares of the stroke
 * @param sides none where no straight way leads in
 */
public record Reached(int stroke, String member, double from, double to, Segment segment, List<Side> sides) {
    public Reached {
        sides = List.copyOf(sides);
    }

    /** In walking order, as long as can be. */
    static List<Reached> of(MillStick stick, List<Side> sides) {
        List<List<Access.Stretch>> bySide = sides.stream()
                .map(side -> Access.of(stick.outline(), side.degrees()).reached())
                .toList();
        List<Reached> all = new ArrayList<>();
        for (int i = 0; i < stick.count(); i++) {
            int stroke = i;
            List<List<Access.Stretch>> here = bySide.stream()
                    .map(stretches -> stretches.stream()
                            .filter(stretch -> stretch.stroke() == stroke)
                            .toList())
                    .toList();
            stroke(stick, stroke, sides, here, all);
        }
        return List.copyOf(all);
    }

    private static void stroke(
            MillStick stick, int stroke, List<Side> sides, List<List<Access.Stretch>> here, List<Reached> all) {
        Segment segment = stick.segment(stroke);
        double least = 10 * Tolerance.SNAP / segment.length();
        int first = all.size();
        List<Double> cuts = cuts(here, least);
        for (int k = 0; k + 1 < cuts.size(); k++) {
            double a = cuts.get(k);
            double b = cuts.get(k + 1);
            List<Side> from = new ArrayList<>();
            for (int s = 0; s < sides.size(); s++) {
                if (holds(here.get(s), (a + b) / 2)) {
                    from.add(sides.get(s));
                }
            }
            int last = all.size() - 1;
            boolean goesOn = last >= first && all.get(last).sides.equals(from);
            double start = goesOn ? all.remove(last).from : a;
            all.add(new Reached(stroke, stick.member(stroke), start, b, segment.part(start, b), from));
        }
    }

    private static boolean holds(List<Access.Stretch> stretches, double t) {
        return stretches.stream().anyMatch(stretch -> stretch.from() <= t && t <= stretch.to());
    }

    private static List<Double> cuts(List<List<Access.Stretch>> here, double least) {
        List<Double> ends = new ArrayList<>(List.of(0.0, 1.0));
        here.forEach(stretches -> stretches.forEach(stretch -> {
            ends.add(stretch.from());
            ends.add(stretch.to());
        }));
        ends.sort(Comparator.naturalOrder());
        List<Double> cuts = new ArrayList<>(List.of(0.0));
        for (double end : ends) {
            if (end - cuts.get(cuts.size() - 1) > least && 1 - end > least) {
                cuts.add(end);
            }
        }
        cuts.add(1.0);
        return cuts;
    }
}
