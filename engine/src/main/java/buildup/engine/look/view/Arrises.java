package buildup.engine.look.view;

import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Crossings;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The corners and tangent points at which the bodies of a section throw their rays, seen from one viewpoint. */
public final class Arrises {
    /** A casting arris: the body, the place, and the key of the ray it throws. */
    public record Arris(int body, Point at, double key) {}

    /** A run of facing stretches of one body, from its greatest key to its least. */
    private record Run(int body, List<Sweep> sweeps) {
        double high() {
            return sweeps.get(0).high();
        }

        double low() {
            return sweeps.get(sweeps.size() - 1).low();
        }

        boolean inFrontOf(double key, double depth) {
            return sweeps.stream()
                    .anyMatch(sweep ->
                            sweep.low() < key && key < sweep.high() && sweep.depth(key) < depth - Tolerance.SNAP);
        }

        Arris arris(boolean high) {
            Sweep sweep = high ? sweeps.get(0) : sweeps.get(sweeps.size() - 1);
            return new Arris(
                    body, sweep.segment().at(high ? sweep.start() : sweep.end()), high ? sweep.high() : sweep.low());
        }
    }

    private final Viewpoint view;
    private final List<Run> runs;

    private Arrises(Viewpoint view, List<Run> runs) {
        this.view = view;
        this.runs = runs;
    }

    /** The arrises of all pieces. */
    public static Arrises of(Viewpoint view, Section section) {
        List<Run> runs = new ArrayList<>();
        for (int body = 0; body < section.bodies().size(); body++) {
            if (section.body(body).piece()) {
                runs(view, body, section.body(body).outline().strokes(), runs);
            }
        }
        return new Arrises(view, runs);
    }

    /** None, for whoever does not ask what casts a shadow. */
    public static Arrises none(Viewpoint view) {
        return new Arrises(view, List.of());
    }

    private static void runs(Viewpoint view, int body, List<Stroke> strokes, List<Run> out) {
        List<Sweep> all = new ArrayList<>();
        strokes.forEach(stroke -> all.addAll(Sweep.facing(view, stroke.segment(), body)));
        List<List<Sweep>> runs = new ArrayList<>();
        for (Sweep sweep : all) {
            List<Sweep> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (!last.isEmpty() && follows(last.get(last.size() - 1), sweep)) {
                last.add(sweep);
            } else {
                runs.add(new ArrayList<>(List.of(sweep)));
            }
        }
        // the ring's first stroke may go on from its last
        if (runs.size() > 1) {
            List<Sweep> last = runs.get(runs.size() - 1);
            if (follows(last.get(last.size() - 1), runs.get(0).get(0))) {
                last.addAll(runs.remove(0));
            }
        }
        runs.forEach(run -> out.add(new Run(body, run)));
    }

    private static boolean follows(Sweep before, Sweep after) {
        return before.segment().at(before.end()).near(after.segment().at(after.start()), Tolerance.COINCIDENT)
                && Math.abs(before.low() - after.high()) <= Tolerance.COINCIDENT;
    }

    /**
     * The same for a member that is dark from end to end: as {@link #casting}, and then farther along the line of the
     * member as long as what stands above (for light from above) keeps it dark without a break.
     *
     * @param line the member's line, through {@code p}
     */
    public Optional<Arris> castingBeyond(Point p, Line line, boolean high) {
        Optional<Arris> best = casting(p, high);
        Optional<Arris> farther = best;
        while (farther.isPresent()) {
            best = farther;
            farther = farther(p, line, high, best.get());
        }
        return best;
    }

    private Optional<Arris> farther(Point p, Line line, boolean high, Arris now) {
        double key = now.key();
        Line ray = view.ray(key);
        Optional<Point> on = Crossings.ofLines(line, ray);
        if (on.isEmpty()) {
            return Optional.empty();
        }
        double depth = view.depth(on.get());
        return runs.stream()
                .filter(run -> run.low() <= key && key <= run.high())
                .filter(run -> high ? run.high() > key : run.low() < key)
                .filter(run -> run.inFrontOf(key, depth))
                .map(run -> run.arris(high))
                .filter(arris -> high ? arris.at().y() > p.y() : arris.at().y() < p.y())
                .filter(arris -> Math.abs(arris.key() - key) > Tolerance.EDGE_ON)
                .max((a, b) -> high ? Double.compare(a.key(), b.key()) : Double.compare(b.key(), a.key()));
    }

    /**
     * Of the arrises of what stands between a place and the viewpoint, the one that throws its ray farthest across the
     * view.
     *
     * @param p the place
     * @param high whether farthest means the greatest key (for light from above: lowest) or the least
     */
    public Optional<Arris> casting(Point p, boolean high) {
        double key = view.key(p);
        double depth = view.depth(p);
        Optional<Arris> best = Optional.empty();
        for (Run run : runs) {
            if (run.low() < key && key < run.high() && run.inFrontOf(key, depth)) {
                Arris arris = run.arris(high);
                if (best.isEmpty()
                        || (high
                                ? arris.key() > best.get().key()
                                : arris.key() < best.get().key())) {
                    best = Optional.of(arris);
                }
            }
        }
        return best;
    }
}
