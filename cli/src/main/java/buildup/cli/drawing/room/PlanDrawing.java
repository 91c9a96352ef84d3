package buildup.cli.drawing.room;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Scale;
import buildup.cli.drawing.label.Caption;
import buildup.cli.drawing.label.PlanPlaces;
import buildup.cli.drawing.label.PlanPlaces.Place;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.room.plan.Opening;
import buildup.engine.room.plan.Stretch;
import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.plan.WallRun;
import buildup.engine.room.run.Course;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Frame;
import buildup.engine.room.run.Job;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** The plan of a job from above: each run whole, and below it every kind of corner and end with all its courses. */
public final class PlanDrawing {
    /** A run's share of the sheet, in. */
    private static final double WIDEST = 8.5;

    private static final double HIGHEST = 5;

    /** What names may take at the ends of a run. */
    private static final double NAMES_BESIDE = 1;

    /** Thickness of a wall on the sheet, in. */
    private static final double WALL = 0.14;

    /** A ring moved farther than this from behind its corner is led to it, in. */
    private static final double RING_UNLED = 2.5 * Drafting.SMALL_RING;

    private static final double GAP = 0.45;
    private static final double MARGIN = 0.3;

    private final Job job;
    private final TextMeasure measure;
    private final List<Place> places;

    private final double widest;

    /** @param widest a run is on the sheet, in of paper */
    private PlanDrawing(Job job, TextMeasure measure, double widest) {
        this.job = job;
        this.measure = measure;
        this.widest = widest;
        this.places = PlanPlaces.of(job);
    }

    /**
     * The plan of a room: its runs, their corners and their pieces.
     *
     * @param job with at least one run
     */
    public static Scene of(Job job, TextMeasure measure) {
        return new PlanDrawing(job, measure, WIDEST).scene();
    }

    /** The same on pages. */
    public static List<PaperPage> pages(Job job, PageFrame frame) {
        PlanDrawing drawing =
                new PlanDrawing(job, frame.measure(), Math.min(WIDEST, Paper.width(frame) - NAMES_BESIDE));
        return Paper.flowing(frame, "Plan", "as told", flow -> {
            flow.blocks(List.of(Block.of(drawing.legend())), GAP);
            for (int run = 0; run < job.plan().runs().size(); run++) {
                flow.blocks(List.of(Paper.fitted(frame, Block.of(drawing.whole(run)))), GAP);
            }
            flow.blocks(
                    drawing.details().stream()
                            .map(block -> Paper.fitted(frame, block))
                            .toList(),
                    GAP);
        });
    }

    private Scene scene() {
        List<SceneItem> items = new ArrayList<>();
        Group legend = legend();
        items.add(legend);
        double top = legend.box().bottom() - GAP;
        for (int run = 0; run < job.plan().runs().size(); run++) {
            Block block = Block.of(whole(run));
            items.add(block.at(0, top));
            top -= block.height() + GAP;
        }
        double left = 0;
        double lowest = top;
        for (Block block : details()) {
            if (left > 0 && left + block.width() > WIDEST + 1.5) {
                left = 0;
                top = lowest - GAP;
            }
            items.add(block.at(left, top));
            left += block.width() + GAP;
            lowest = Math.min(lowest, top - block.height());
        }
        String title = job.section().stack().title();
        return PictureSheet.around(
                title + ", plan",
                roundOpenings()
                        ? "Front view of what runs round openings, with every piece at every corner."
                        : "Plan of " + job.plan().runs().size()
                                + " runs from above, the room below the wall, with every piece at every corner.",
                items,
                MARGIN);
    }

    /** Whether all runs go round openings, in the plane of the wall, so that nothing is seen from above. */
    private boolean roundOpenings() {
        return job.plan().runs().stream().allMatch(WallRun::opening);
    }

    private Group legend() {
        if (roundOpenings()) {
            return new Legend(measure, Drafting.TEXT)
                    .title(job.section().stack().title())
                    .text("Front view from the room. Lengths are those of the opening's edges, in "
                            + Drafting.units(job.section().stack())
                            + "; names of pieces stand with how far they reach from it.")
                    .group();
        }
        return new Legend(measure, Drafting.TEXT)
                .title(job.section().stack().title())
                .text("Plan from above: the wall hatched, the room on the other side of the pieces. Lengths are those"
                        + " of the wall, in " + Drafting.units(job.section().stack())
                        + "; names of pieces stand with their projections. Thin lines: nailers."
                        + (job.plan().runs().stream().anyMatch(WallRun::opening)
                                ? " What runs round an opening is seen from the room."
                                : ""))
                .group();
    }

    /** One of each kind, in the order of their numbers. */
    private List<Block> details() {
        int kinds = places.stream().mapToInt(Place::number).max().orElse(0);
        return IntStream.rangeClosed(1, kinds)
                .mapToObj(number -> places.stream()
                        .filter(place -> place.number() == number)
                        .findFirst()
                        .orElseThrow())
                .map(place -> Block.of(new PlanDetail(job, place, measure).group("place-" + place.number())))
                .toList();
    }

    /** A run, its longest stretch level. */
    private Group whole(int number) {
        WallRun run = job.plan().runs().get(number);
        // round an opening the first stretch is a leg, its foot down, and what projects from it lies outward
        Motion level = run.opening()
                ? Motion.SWAP
                : Motion.turn(-Math.toDegrees(longest(number).along().angle()));
        Box extent = extent(number, level);
        double scale = Math.min(1, Math.min(widest / extent.width(), HIGHEST / extent.height()));
        UnaryOperator<Point> onto = p -> level.apply(p).times(scale);
        PlanShape shape = new PlanShape(job, onto, Scale.of(extent, scale).grown(1));
        List<SceneItem> items = new ArrayList<>(run.opening() ? List.of() : shape.walls(number, WALL / scale));
        items.addAll(shape.courses(number, false));
        if (run.opening()) {
            items.addAll(shape.blocks(number));
        }
        BesideWalls free = new BesideWalls(items);
        double aside = (WALL + 1.6 * Drafting.SMALL_RING) / scale;
        for (Place place : places) {
            if (place.run() == number) {
                items.addAll(About.of(Subject.LETTERS, ring(place, onto, aside, free)));
            }
        }
        // the longest first: it has its name in its middle, and the short ones find a place beside it
        IntStream.range(0, run.stretches().size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        (Integer i) -> -run.stretches().get(i).length()))
                .forEach(i -> items.addAll(About.of(
                        Subject.DIMENSIONS,
                        words(run.stretches().get(i), job.frames().get(number).get(i), onto, scale, free))));
        Box drawn = Box.around(items.stream().map(SceneItem::box).toList());
        Point title = new Point(drawn.back(), drawn.top() + 2 * Drafting.TEXT);
        String text = run.name() + ", drawn 1 : " + Math.max(1, Math.round(1 / scale));
        items.add(Label.of(measure, text, title, 1.2 * Drafting.TEXT, Label.Anchor.START));
        return new Group("run-" + (number + 1), items);
    }

    private Frame longest(int number) {
        List<Stretch> stretches = job.plan().runs().get(number).stretches();
        int longest = 0;
        for (int i = 1; i < stretches.size(); i++) {
            if (stretches.get(i).length() > stretches.get(longest).length()) {
                longest = i;
            }
        }
        return job.frames().get(number).get(longest);
    }

    private Box extent(int number, Motion level) {
        List<Stretch> stretches = job.plan().runs().get(number).stretches();
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            Frame frame = job.frames().get(number).get(i);
            boxes.add(Box.of(
                    level.apply(frame.at(0, 0)),
                    level.apply(frame.at(stretches.get(i).length(), 0))));
        }
        job.fits().stream()
                .filter(fit -> fit.run() == number)
                .map(Fit::outline)
                .flatMap(List::stream)
                .map(level::apply)
                .forEach(p -> boxes.add(Box.of(p, p)));
        return Box.around(boxes);
    }

    /** Name and length of a stretch, and names of its openings, behind its wall. */
    private List<SceneItem> words(
            Stretch stretch, Frame frame, UnaryOperator<Point> onto, double scale, BesideWalls free) {
        List<SceneItem> items = new ArrayList<>();
        double behind = -(WALL + 3.6 * Drafting.SMALL_RING) / scale;
        String name = stretch.name() + " " + Drafting.size(job.section().stack(), stretch.length());
        Point back = onto.apply(frame.at(stretch.length() / 2, behind));
        Point wall = onto.apply(frame.at(stretch.length() / 2, -WALL / scale));
        // beside a wall shorter than its name other walls are as near: a leader tells whose it is
        boolean beside = stretch.length() * scale >= measure.width(name, Drafting.TEXT);
        BesideWalls.Home home = new BesideWalls.Home(
                wall, onto.apply(frame.at(stretch.length() / 2, 0)), beside ? BesideWalls.UNLED : -1);
        items.addAll(named(free, name, home, back, way(frame, onto, 1, 0), way(frame, onto, 0, -1)));
        double before = face() + 0.9 * Drafting.TEXT / scale;
        for (Opening opening : stretch.openings()) {
            double middle = (opening.from() + opening.to()) / 2;
            Point along = way(frame, onto, 1, 0);
            Point out = way(frame, onto, 0, 1);
            // between the courses; where they come too near, before them
            Label between = Label.centered(
                    measure, opening.name(), onto.apply(frame.at(middle, before / 2)), Drafting.TEXT, isUpright(along));
            if (free.takes(between.box())) {
                items.add(between);
            } else {
                Point front = onto.apply(frame.at(middle, before));
                BesideWalls.Home own = new BesideWalls.Home(front, front, BesideWalls.UNLED);
                items.addAll(named(free, opening.name(), own, front, along, out));
            }
        }
        return items;
    }

    /** A name at a place, its near side as far from the wall whether it is set along the wall or not; or farther off. */
    private List<SceneItem> named(
            BesideWalls free, String name, BesideWalls.Home home, Point place, Point along, Point away) {
        double longer = (measure.width(name, Drafting.TEXT) - Drafting.TEXT * Label.CAPITALS) / 2;
        boolean upright = isUpright(along);
        BesideWalls.Taken<Label> set = free.take(
                home,
                BesideWalls.moves(along, away),
                move -> List.of(
                        Label.centered(measure, name, place.plus(move), Drafting.TEXT, upright),
                        Label.centered(
                                measure, name, place.plus(move).plus(away.times(longer)), Drafting.TEXT, !upright)),
                Label::box);
        List<SceneItem> items = new ArrayList<>(set.leader());
        items.add(set.what());
        return items;
    }

    private static boolean isUpright(Point along) {
        return Math.abs(along.y()) > Math.abs(along.x());
    }

    /** A way along a wall and out from it, on the sheet, 1 in long. */
    private static Point way(Frame frame, UnaryOperator<Point> onto, double along, double out) {
        return onto.apply(frame.at(along, out))
                .minus(onto.apply(frame.at(0, 0)))
                .unit();
    }

    private double face() {
        return job.courses().stream().mapToDouble(Course::face).max().orElse(0);
    }

    /** Its number in a ring behind the wall, where the backs of two walls meet, or near by. */
    private List<SceneItem> ring(Place place, UnaryOperator<Point> onto, double aside, BesideWalls free) {
        double past = place.corner().map(WallCorner::slope).orElse(0.0);
        Point at = onto.apply(place.frame().at(-past * aside, -aside));
        Point along = way(place.frame(), onto, 1, 0);
        Point corner = onto.apply(place.frame().at(0, 0));
        BesideWalls.Taken<Point> set = free.take(
                new BesideWalls.Home(at, corner, RING_UNLED),
                BesideWalls.moves(along, way(place.frame(), onto, 0, -1)),
                move -> List.of(at.plus(move)),
                center -> Box.of(center, center).grown(Drafting.SMALL_RING));
        List<SceneItem> items = new ArrayList<>(set.leader());
        items.addAll(Caption.ringed(measure, String.valueOf(place.number()), set.what(), false));
        return items;
    }
}
