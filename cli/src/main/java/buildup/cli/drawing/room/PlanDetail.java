package buildup.cli.drawing.room;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.label.Caption;
import buildup.cli.drawing.label.PlanPlaces.Place;
import buildup.cli.drawing.label.Spread;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.room.plan.Ending;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Job;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

/** One corner or end of a plan, large: every course with its outline, its name and its projection. */
final class PlanDetail {
    /** Across the panel, in. */
    private static final double WIDE = 3;

    /** Around the place, in greatest projections: away along the wall, past the place, out and back. */
    private static final double ALONG = 1.5;

    private static final double PAST = 1.3;
    private static final double OUT = 1.12;
    private static final double BACK = 0.4;

    /** The same where a wall comes out into the room, and where one goes back from it. */
    private static final double FAR_OUT = 1.45;

    private static final double FAR_BACK = 1;

    /** From one line of its words to the next, in sizes of the text. */
    private static final double LINE = 1.6;

    /** Walls behind the place, in greatest projections. */
    private static final double WALL = 0.3;

    /** A casing whose thickness is not known, and how wide one is shown, in. */
    private static final double CASING = 0.75;

    private static final double CASING_WIDE = 3.5;

    private final Job job;
    private final Place place;
    private final TextMeasure measure;
    private final double reach;
    private final double scale;
    private final boolean opening;

    PlanDetail(Job job, Place place, TextMeasure measure) {
        this.job = job;
        this.place = place;
        this.measure = measure;
        this.reach = Math.max(
                1,
                PlanShape.courses(job, place.run()).stream()
                        .mapToDouble(Course::face)
                        .max()
                        .orElse(1));
        this.opening = job.plan().runs().get(place.run()).opening();
        this.scale = WIDE / ((ALONG + PAST) * reach);
    }

    Group group(String id) {
        Box window = window();
        PlanShape shape = new PlanShape(job, onto(), window);
        List<SceneItem> items = new ArrayList<>();
        if (opening) {
            items.addAll(shape.courses(place.run(), true));
            items.addAll(shape.blocks(place.run()));
        } else {
            items.addAll(shape.walls(place.run(), WALL * reach));
            items.addAll(shape.courses(place.run(), true));
            // over the wood: what returns into a wall or a casing is seen to end in it
            place.endings().forEach(ending -> items.addAll(against(ending, shape)));
        }
        items.addAll(About.of(Subject.DIMENSIONS, names(window)));
        double size = Drafting.TEXT;
        Point middle = new Point(window.middle().x(), window.bottom() - 2 * size);
        String first = place.words().get(0);
        for (int i = 0; i < place.words().size(); i++) {
            Point line = middle.plus(new Point(i == 0 ? size : 0, -LINE * i * size));
            items.add(Label.centered(measure, place.words().get(i), line, size, false));
        }
        double half = measure.width(first, size) / 2;
        items.addAll(About.of(
                Subject.LETTERS,
                Caption.ringed(
                        measure, String.valueOf(place.number()), middle.minus(new Point(half + size, 0)), false)));
        return new Group(id, items);
    }

    private Box window() {
        double past = place.left() ? ALONG : PAST;
        double along = place.left() ? PAST : ALONG;
        double r = scale * reach;
        if (opening) {
            // as it hangs: legs go down, a head goes to either side
            double down = place.corner().isPresent() ? ALONG : BACK;
            double up = place.corner().isPresent() ? PAST : PAST + ALONG;
            return new Box(-(PAST + ALONG) / 2 * r, -down * r, (PAST + ALONG) / 2 * r, up * r);
        }
        boolean inside = place.corner().filter(WallCorner::inside).isPresent()
                || place.endings().stream().anyMatch(end -> end.kind() == Ending.Kind.DIE);
        boolean outside = place.corner().filter(corner -> !corner.inside()).isPresent();
        return new Box(-along * r, -(inside ? FAR_OUT : OUT) * r, past * r, (outside ? FAR_BACK : BACK) * r);
    }

    /** The stretch that it is seen along lies level, the room below it, the place itself at the origin. */
    private UnaryOperator<Point> onto() {
        if (opening) {
            Point at = place.frame().start();
            Motion hung = Motion.shift(-at.x(), -at.y()).then(Motion.SWAP);
            return p -> hung.apply(p).times(scale);
        }
        double turn = Math.toDegrees(place.frame().along().angle());
        Motion level = Motion.shift(
                        -place.frame().start().x(), -place.frame().start().y())
                .then(Motion.turn(-turn));
        return p -> level.apply(p).times(scale);
    }

    /** What the run ends against. */
    private List<SceneItem> against(Ending ending, PlanShape shape) {
        double side = place.left() ? -1 : 1;
        List<SceneItem> items = new ArrayList<>();
        List<Segment> edges = new ArrayList<>();
        if (ending.kind() == Ending.Kind.DIE) {
            double angle = Math.toRadians(ending.corner());
            // back along the wall, turned through the room
            Point out = new Point(-side * Math.cos(angle), -Math.sin(angle));
            Point away = new Point(side * Math.sin(angle), -Math.cos(angle)).times(WALL * reach);
            Point far = out.times(2 * FAR_OUT * reach);
            List<Point> wall = scaled(List.of(Point.ORIGIN, far, far.plus(away), away));
            items.addAll(shape.standing(wall));
            shape.edges(wall.subList(0, 2), edges);
        } else if (ending.kind() == Ending.Kind.BUTT) {
            double thick = ending.casing().orElse(CASING);
            double wide = side * CASING_WIDE;
            List<Point> casing =
                    scaled(List.of(Point.ORIGIN, new Point(0, -thick), new Point(wide, -thick), new Point(wide, 0)));
            items.addAll(shape.standing(casing));
            shape.edges(casing, edges);
        }
        PlanShape.path(edges, LineStyle.STANDING).ifPresent(items::add);
        return items;
    }

    private List<Point> scaled(List<Point> points) {
        return points.stream().map(p -> p.times(scale)).toList();
    }

    /** Round an opening names stand over the leg's or the head's outer side, which is up on both sides of a head. */
    private List<SceneItem> hung(Box window, List<Spread.Wish> wishes, double gap) {
        if (place.corner().isEmpty()) {
            return List.of();
        }
        List<Spread.Wish> up = wishes.stream()
                .map(wish -> new Spread.Wish(wish.text(), -wish.high(), -wish.low()))
                .sorted(Comparator.comparingDouble(Spread.Wish::low))
                .toList();
        // behind a leg the head runs to the right, along a head it comes from the left
        return Math.abs(place.frame().along().x())
                        > Math.abs(place.frame().along().y())
                ? Spread.labels(measure, up, window.face() + gap, 1, Drafting.TEXT)
                : Spread.labels(measure, up, window.back() - gap, -1, Drafting.TEXT);
    }

    /** Trim by its face, beside the side on which the stretch runs level. */
    private List<SceneItem> names(Box window) {
        List<Spread.Wish> wishes = PlanShape.courses(job, place.run()).stream()
                .filter(Course::trim)
                .sorted(Comparator.comparingDouble(Course::face).reversed())
                .map(course -> new Spread.Wish(
                        course.name() + " " + Drafting.size(job.section().stack(), course.face()),
                        -scale * course.face(),
                        -scale * course.face()))
                .toList();
        double gap = 0.06;
        if (opening) {
            return hung(window, wishes, gap);
        }
        return place.left()
                ? Spread.labels(measure, wishes, window.face() + gap, 1, Drafting.TEXT)
                : Spread.labels(measure, wishes, window.back() - gap, -1, Drafting.TEXT);
    }
}
