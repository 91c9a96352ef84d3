package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Scale;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.Caption;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Area;
import buildup.cli.scene.Group;
import buildup.cli.scene.Hatch;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Pattern;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.mill.milling.Milled;
import buildup.engine.mill.milling.Pass;
import buildup.engine.mill.milling.Passes;
import buildup.engine.mill.milling.Side;
import buildup.profiles.Profile;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.profiles.region.Carving;
import buildup.profiles.travel.Access;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The stick in its blank as it is run: where each pass comes in, what no listed cutter makes, what is left, and the
 * undercuts.
 */
public final class MillingDrawing {
    /** Small moldings are drawn larger, up to about this size. */
    private static final double GOOD_SIZE = 3;

    private static final double AWAY = 0.45;
    private static final double APART = 0.24;
    private static final Pattern LEFT = new Pattern(45, 0.07, true, 0.007, List.of());

    private static final Phrase PASS =
            Phrase.of("{cutter} from the {side}: depth {depth}, fence on the {bearing} {fence}");
    private static final Phrase PASSES =
            Phrase.of("{cutter} from the {side}: depth {depth}, fence on the {bearing} {fence}, {times} passes");

    private final Profile profile;
    private final Milled milled;
    private final TextMeasure measure;
    private final FigurePrinter printer;
    private final double scale;
    private final double size = Drafting.TEXT;

    private MillingDrawing(Profile profile, Milled milled, TextMeasure measure, FigurePrinter printer) {
        this.profile = profile;
        this.milled = milled;
        this.measure = measure;
        this.printer = printer;
        Box box = milled.stick().box();
        double large = Math.max(box.width(), box.height());
        this.scale = large > GOOD_SIZE / 2 ? 1 : large > GOOD_SIZE / 4 ? 2 : 4;
    }

    /** The passes that make a profile, each with its cutter, small moldings enlarged. */
    public static Scene of(Profile profile, Milled milled, TextMeasure measure, FigurePrinter printer) {
        return new MillingDrawing(profile, milled, measure, printer).scene();
    }

    private Scene scene() {
        List<Segment> wood = ring(milled.stick().outline());
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group(
                "blank", List.of(new Path(ring(Outline.rectangle(milled.stick().box())), true, LineStyle.STANDING))));
        items.add(new Group(
                "wood",
                WoodDrawing.Look.TRIM.fill(Optional.of("stick"), Optional.of(profile.name()), wood, Point.ORIGIN)));
        List<SceneItem> left = left();
        if (!left.isEmpty()) {
            items.add(new Group("left", left));
        }
        items.add(new Group("edges", List.of(WoodDrawing.Look.TRIM.edge(wood, true))));
        List<SceneItem> marks = new ArrayList<>();
        milled.passes()
                .ifPresent(passes -> passes.unmade()
                        .forEach(unmade ->
                                marks.add(new Path(List.of(unmade.segment().scaled(scale)), false, LineStyle.CAST))));
        milled.undercuts()
                .forEach(undercut -> marks.add(new Path(Scale.of(undercut.line(), scale), false, LineStyle.BEARING)));
        milled.passes().ifPresent(passes -> marks.addAll(passes(passes)));
        if (!marks.isEmpty()) {
            items.add(new Group("marks", marks));
        }
        items.add(PictureSheet.below(items, legend(), 2 * size));
        return PictureSheet.around(
                profile.name() + ", how it is milled",
                "The stick in its blank with the passes that make it. " + Milled.CAUTION,
                items,
                2 * size);
    }

    private List<SceneItem> left() {
        List<SceneItem> items = new ArrayList<>();
        for (Carving.Left left : milled.passes().map(Passes::left).orElse(List.of())) {
            List<Segment> ring = Scale.of(left.ring(), scale);
            items.add(new Area(Optional.empty(), Optional.of("left"), ring, Tone.NAILER));
            items.add(new Hatch(ring, LEFT, Point.ORIGIN));
            items.add(new Path(ring, true, LineStyle.NAILER));
        }
        return items;
    }

    /** The middle line of each cutter, from its point out past the blank, with its number at the end. */
    private List<SceneItem> passes(Passes passes) {
        List<SceneItem> items = new ArrayList<>();
        for (Side side : Side.SQUARE) {
            List<Integer> here = new ArrayList<>();
            for (int i = 0; i < passes.inOrder().size(); i++) {
                if (passes.inOrder().get(i).side().equals(side)) {
                    here.add(i);
                }
            }
            here.sort(Comparator.comparingDouble(i -> passes.inOrder().get(i).fence()));
            double free = Double.NEGATIVE_INFINITY;
            for (int i : here) {
                double along = passes.inOrder().get(i).fence() * scale;
                double place = Math.max(along, free);
                free = place + APART;
                items.addAll(pass(i, passes.inOrder().get(i), place));
            }
        }
        return items;
    }

    private List<SceneItem> pass(int number, Pass pass, double place) {
        Box box = milled.stick().box();
        Point out = Point.towards(Math.toRadians(pass.side().degrees()));
        double reach = pass.side().equals(Side.FRONT) || pass.side().equals(Side.BACK) ? box.width() : box.height();
        boolean far = pass.side().equals(Side.FRONT) || pass.side().equals(Side.ABOVE);
        double surface = (far ? reach : 0) * scale;
        double end = surface + (far ? AWAY : -AWAY);
        boolean level = pass.fencedByBack();
        double span = level ? box.width() : box.height();
        boolean beside = pass.fence() < 0 || pass.fence() > span;
        Point from = pass.through() || beside
                ? middle(pass).times(scale)
                : at(level, surface - (far ? 1 : -1) * pass.depth() * scale, pass.fence() * scale);
        double along = pass.through() || !beside ? pass.fence() * scale : level ? from.x() : from.y();
        Point knee = at(level, surface + (far ? AWAY / 3 : -AWAY / 3), along);
        Point to = at(level, end, place);
        Point ring = to.plus(out.times(Drafting.SMALL_RING));
        List<SceneItem> items = new ArrayList<>();
        items.add(new Path(List.of(new Line(from, knee), new Line(knee, to)), false, LineStyle.CASING));
        items.add(new Path(List.of(new Line(from, knee), new Line(knee, to)), false, LineStyle.LEADER));
        items.addAll(Caption.ringed(measure, Integer.toString(number + 1), ring, false));
        return items;
    }

    /** Halfway along what a pass makes: where a blade parts wood off, or the middle of the bit runs beside the stick. */
    private Point middle(Pass pass) {
        Access.Stretch made = pass.makes().get(0);
        return milled.stick().outline().strokes().get(made.stroke()).segment().at((made.from() + made.to()) / 2);
    }

    private static Point at(boolean level, double deep, double along) {
        return level ? new Point(along, deep) : new Point(deep, along);
    }

    private Group legend() {
        String drawn = scale > 1 ? Math.round(scale) + " times full size." : "Full size.";
        Legend legend = new Legend(measure, size)
                .title(profile.name())
                .text("How it is milled. " + drawn + " Its back is on the left; sizes in "
                        + (printer.metric() ? "millimeters." : "inches."));
        milled.passes().ifPresent(passes -> {
            int number = 0;
            for (Pass pass : passes.inOrder()) {
                number++;
                legend.text(number + "  " + printer.bare(setting(pass)));
            }
            if (passes.leftArea() > 0) {
                legend.sample("left when these are run", at -> {
                    List<Segment> ring = Outline.rectangle(new Box(at.x(), at.y(), at.x() + 3 * size, at.y() + size))
                            .segments();
                    return List.of(
                            new Area(Optional.empty(), Optional.empty(), ring, Tone.NAILER),
                            new Hatch(ring, LEFT, at),
                            new Path(ring, true, LineStyle.NAILER));
                });
            }
            if (!passes.unmade().isEmpty()) {
                legend.line("made by no listed bit or blade", LineStyle.CAST);
            }
        });
        if (!milled.undercuts().isEmpty()) {
            legend.line("undercut: not reached by the outside head", LineStyle.BEARING);
        }
        return legend.text(Milled.CAUTION).group();
    }

    private static Phrase setting(Pass pass) {
        return (pass.times() > 1 ? PASSES : PASS)
                .with("cutter", pass.cutter())
                .with("side", pass.side().word())
                .with("depth", Figure.length(pass.depth()))
                .with("bearing", pass.fencedByBack() ? "back" : "bottom")
                .with("fence", Figure.length(pass.fence()))
                .with("times", Figure.count(pass.times()));
    }

    private List<Segment> ring(Outline outline) {
        return Scale.of(outline.segments(), scale);
    }
}
