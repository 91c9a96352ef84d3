package buildup.cli.drawing.room;

import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.Tone;
import buildup.engine.room.block.LooseBlocks;
import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.Opening;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Frame;
import buildup.engine.room.run.Job;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The wood and the walls of a plan, laid on a sheet.
 *
 * @param onto from the plan to the sheet
 * @param window what lies outside is cut off
 */
record PlanShape(Job job, UnaryOperator<Point> onto, Box window) {
    private static final Pattern WALL = new Pattern(45, 0.06, false, 0.005, List.of());

    /** The courses of a run from above: the fill of all that is trim, then every outline. */
    List<SceneItem> courses(int run, boolean nailers) {
        List<SceneItem> items = new ArrayList<>();
        List<Segment> edges = new ArrayList<>();
        List<Segment> hidden = new ArrayList<>();
        for (Fit fit : job.fits()) {
            if (fit.run() != run || !(fit.course().trim() || nailers)) {
                continue;
            }
            List<Point> outline = fit.outline().stream().map(onto).toList();
            if (fit.course().trim()) {
                area(outline, Tone.TRIM).ifPresent(items::add);
            }
            edges(outline, fit.course().trim() ? edges : hidden);
        }
        path(hidden, LineStyle.EXTENSION).ifPresent(lines -> items.add(new About(Subject.NAILER, List.of(lines))));
        path(edges, LineStyle.ARRIS).ifPresent(items::add);
        return items;
    }

    /** What stands at the corners and under the legs of a run round an opening: rosettes and plinth blocks. */
    List<SceneItem> blocks(int number) {
        WallRun run = job.plan().runs().get(number);
        List<Frame> frames = job.frames().get(number);
        List<SceneItem> items = new ArrayList<>();
        int last = frames.size() - 1;
        Stretch end = run.stretches().get(last);
        run.left()
                .flatMap(PlanShape::block)
                .ifPresent(covers -> LooseBlocks.across(
                                job, number, run.stretches().get(0))
                        .ifPresent(
                                across -> items.addAll(block(frames.get(0), 0, covers, across.from(), across.to()))));
        run.right()
                .flatMap(PlanShape::block)
                .ifPresent(covers -> LooseBlocks.across(job, number, end)
                        .ifPresent(across -> items.addAll(block(
                                frames.get(last), end.length() - covers, end.length(), across.from(), across.to()))));
        for (int i = 0; i <= last; i++) {
            Stretch stretch = run.stretches().get(i);
            double length = stretch.length();
            Frame frame = frames.get(i);
            if (stretch.block().isPresent()) {
                double covers = stretch.block().getAsDouble();
                LooseBlocks.across(job, number, stretch).ifPresent(across -> {
                    double past = across.to() + covers;
                    items.addAll(block(frame, length - covers, length + past, -covers, past));
                });
            }
        }
        return items;
    }

    /** What runs along a run, as it runs there: round an opening out and up have changed places. */
    static List<Course> courses(Job job, int run) {
        return job.fits().stream()
                .filter(fit -> fit.run() == run)
                .map(Fit::course)
                .distinct()
                .toList();
    }

    private static Optional<Double> block(Ending ending) {
        return ending.kind() == Ending.Kind.BLOCK && ending.block().isPresent()
                ? Optional.of(ending.block().getAsDouble())
                : Optional.empty();
    }

    private List<SceneItem> block(Frame frame, double from, double to, double near, double far) {
        List<Point> outline = Stream.of(
                        frame.at(from, near), frame.at(to, near), frame.at(to, far), frame.at(from, far))
                .map(onto)
                .toList();
        List<Segment> lines = new ArrayList<>();
        edges(outline, lines);
        return Stream.of(area(outline, Tone.TRIM), path(lines, LineStyle.ARRIS))
                .flatMap(Optional::stream)
                .toList();
    }

    /** The walls of a run, so thick in plan, behind its wall plane. */
    List<SceneItem> walls(int number, double thick) {
        WallRun run = job.plan().runs().get(number);
        List<Frame> frames = job.frames().get(number);
        List<SceneItem> items = new ArrayList<>();
        List<Segment> planes = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            Stretch stretch = run.stretches().get(i);
            double slope = run.cornerBefore(i).map(WallCorner::slope).orElse(0.0);
            double right = stretch.corner().map(WallCorner::slope).orElse(0.0);
            double from = 0;
            for (Opening opening : stretch.openings()) {
                items.addAll(wall(frames.get(i), from, slope, opening.from(), 0, thick));
                items.addAll(jambs(frames.get(i), opening, thick));
                edges(onWall(frames.get(i), from, opening.from()), planes);
                from = opening.to();
                slope = 0;
            }
            items.addAll(wall(frames.get(i), from, slope, stretch.length(), right, thick));
            edges(onWall(frames.get(i), from, stretch.length()), planes);
        }
        path(planes, LineStyle.STANDING).ifPresent(items::add);
        return items;
    }

    /** Wall from one place to another, its ends cut as those of a course behind the wall plane. */
    private List<SceneItem> wall(Frame frame, double from, double left, double to, double right, double thick) {
        return standing(Stream.of(
                        frame.at(from, 0),
                        frame.at(to, 0),
                        frame.at(to - thick * right, -thick),
                        frame.at(from + thick * left, -thick))
                .map(onto)
                .toList());
    }

    private List<Point> onWall(Frame frame, double from, double to) {
        return List.of(onto.apply(frame.at(from, 0)), onto.apply(frame.at(to, 0)));
    }

    private List<SceneItem> jambs(Frame frame, Opening opening, double thick) {
        List<Segment> jambs = new ArrayList<>();
        for (double at : List.of(opening.from(), opening.to())) {
            edges(List.of(onto.apply(frame.at(at, -thick)), onto.apply(frame.at(at, 0))), jambs);
        }
        return path(jambs, LineStyle.STANDING).stream().toList();
    }

    /** Something that stands there already. */
    List<SceneItem> standing(List<Point> outline) {
        List<Point> clipped = clipped(outline);
        if (clipped.size() < 3) {
            return List.of();
        }
        List<Segment> ring = List.copyOf(Line.ring(clipped));
        return List.of(
                new Area(Optional.empty(), Optional.empty(), ring, Tone.STANDING), new Hatch(ring, WALL, Point.ORIGIN));
    }

    Optional<SceneItem> area(List<Point> outline, Tone tone) {
        List<Point> clipped = clipped(outline);
        return clipped.size() < 3
                ? Optional.empty()
                : Optional.of(new Area(Optional.empty(), Optional.empty(), List.copyOf(Line.ring(clipped)), tone));
    }

    /** Adds what lies in the window of the lines from point to point; of more than two points, closed. */
    void edges(List<Point> outline, List<Segment> edges) {
        int count = outline.size() == 2 ? 1 : outline.size();
        for (int i = 0; i < count; i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            double[] stretch = {0, 1};
            clip(stretch, a.x(), b.x() - a.x(), window.back(), window.face());
            clip(stretch, a.y(), b.y() - a.y(), window.bottom(), window.top());
            if (stretch[0] < stretch[1]) {
                edges.add(new Line(a.towards(b, stretch[0]), a.towards(b, stretch[1])));
            }
        }
    }

    private static void clip(double[] stretch, double start, double run, double least, double most) {
        if (Math.abs(run) > 0) {
            double p = (least - start) / run;
            double q = (most - start) / run;
            stretch[0] = Math.max(stretch[0], Math.min(p, q));
            stretch[1] = Math.min(stretch[1], Math.max(p, q));
        } else if (start < least || start > most) {
            stretch[1] = -1;
        }
    }

    static Optional<SceneItem> path(List<Segment> lines, LineStyle style) {
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Path(lines, false, style));
    }

    /** A convex outline cut to the window, side by side (Sutherland and Hodgman, 1974; from memory). */
    private List<Point> clipped(List<Point> outline) {
        List<Point> left = outline;
        left = beyond(left, new Point(window.back(), 0), new Point(1, 0));
        left = beyond(left, new Point(window.face(), 0), new Point(-1, 0));
        left = beyond(left, new Point(0, window.bottom()), new Point(0, 1));
        return beyond(left, new Point(0, window.top()), new Point(0, -1));
    }

    private static List<Point> beyond(List<Point> outline, Point on, Point inward) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point a = outline.get(i);
            Point b = outline.get((i + 1) % outline.size());
            double from = a.minus(on).dot(inward);
            double to = b.minus(on).dot(inward);
            if (from >= 0) {
                kept.add(a);
            }
            if (from < 0 != to < 0) {
                kept.add(a.towards(b, from / (from - to)));
            }
        }
        return kept;
    }
}
