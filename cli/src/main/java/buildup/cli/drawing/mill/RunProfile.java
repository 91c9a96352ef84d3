package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.DimensionAxis;
import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Grid;
import buildup.cli.scene.Area;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.mill.milling.Groove;
import buildup.engine.mill.milling.Milled;
import buildup.profiles.Profile;
import buildup.profiles.outline.Arc;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A profile as it is run, full size, on a grid: its two sizes, its radii, where its kerfs lie and, of a sprung molding, the
 * angles of its flats.
 *
 * @param room from side to side, in
 */
public record RunProfile(Profile profile, Milled milled, double room, TextMeasure measure, FigurePrinter printer) {
    private static final double AWAY = 0.4;

    /** At the wall edge of a sprung molding, which lies on the right or stands below, its spring is told too. */
    private static final double BESIDE_SPRUNG = 1.15;

    private static final double BELOW_SPRUNG = 0.8;

    /** From the wood to the first dimension of a kerf, and from one to the next. */
    private static final double KERF = 0.25;

    private static final double KERF_LANE = 0.36;

    /** Grid beyond the wood. */
    private static final double BEYOND = 0.25;

    private static final Phrase SPRUNG =
            Phrase.of("Sprung {spring} from the wall: sits {height} high and {projection} out.");
    private static final Phrase RADII = Phrase.of("Radii: {radii}.");
    private static final Phrase RADIUS = Phrase.of("{member} {radius}");
    private static final Phrase GROOVE =
            Phrase.of("Groove {width} wide, {depth} deep, {from} to {to} from the {side}.");

    /** The picture, its lower left corner near the origin. */
    public List<SceneItem> items() {
        Motion laid = laid();
        Outline outline = milled.stick().outline().moved(laid);
        Box box = outline.box();
        RunDimensions dimensions = new RunDimensions(measure, printer);
        List<SceneItem> sizes = new ArrayList<>();
        int under = 0;
        int over = 0;
        for (Kerf kerf : kerfs(laid)) {
            boolean level = kerf.axis == DimensionAxis.LEVEL;
            int lane = !level ? 0 : kerf.onMore ? over++ : under++;
            sizes.addAll(kerf.dimension(dimensions, box, KERF + KERF_LANE * lane));
        }
        boolean sprung = profile.stick() instanceof Profile.Spring;
        boolean lies = box.width() > box.height();
        double lowest = box.bottom() - (sprung && !lies ? BELOW_SPRUNG : AWAY) - KERF_LANE * under;
        double beside = box.face() + (sprung && lies ? BESIDE_SPRUNG : AWAY);
        sizes.addAll(dimensions.of(DimensionAxis.LEVEL, box.back(), box.face(), lowest, box.bottom()));
        sizes.addAll(dimensions.of(DimensionAxis.UPRIGHT, box.bottom(), box.top(), beside, box.face()));
        if (sprung) {
            sizes.addAll(new SpringAngles(outline, measure, printer).items(List.copyOf(sizes)));
        }
        List<SceneItem> radii = new RadiusPlaces(outline, measure, printer).items(sizes);
        List<Box> texts =
                radii.stream().map(SceneItem::box).map(text -> text.grown(0.02)).toList();
        List<Segment> ring = outline.segments();
        List<SceneItem> items = new ArrayList<>();
        items.add(new Area(Optional.empty(), Optional.of(profile.name()), ring, Tone.TRIM));
        items.addAll(Grid.of(printer.metric()).over(box.grown(BEYOND), texts));
        items.add(new Path(ring, true, LineStyle.OUTLINE));
        items.addAll(sizes);
        items.addAll(radii);
        return items;
    }

    /** What the picture shows, in sentences: spring, radii, grooves and the spacing of the grid. */
    public List<Phrase> words() {
        List<Phrase> words = new ArrayList<>();
        if (profile.stick() instanceof Profile.Spring spring) {
            Box sits = profile.outline().box();
            words.add(SPRUNG.with("spring", Figure.angle(spring.sprung().spring()))
                    .with("height", Figure.length(sits.height()))
                    .with("projection", Figure.length(sits.width())));
        }
        Map<String, Phrase> radii = new LinkedHashMap<>();
        milled.stick().outline().strokes().forEach(stroke -> {
            if (stroke.segment() instanceof Arc arc) {
                Phrase radius = RADIUS.with("member", stroke.member()).with("radius", Figure.length(arc.radius()));
                radii.putIfAbsent(printer.print(radius), radius);
            }
        });
        if (!radii.isEmpty()) {
            words.add(RADII.with("radii", Listing.commas(List.copyOf(radii.values()))));
        }
        milled.grooves().forEach(groove -> words.add(words(groove)));
        words.add(Phrase.of(Grid.of(printer.metric()).words()));
        return words;
    }

    private Phrase words(Groove groove) {
        Groove.Place place = groove.place(milled.stick());
        return GROOVE.with("width", Figure.length(groove.width()))
                .with("depth", Figure.length(groove.depth()))
                .with("from", Figure.length(place.from()))
                .with("to", Figure.length(place.to()))
                .with("side", place.fromBack() ? "back" : "bottom");
    }

    /** Lays the longer side level, the face up, unless the page is too narrow for it. */
    private Motion laid() {
        Outline run = milled.stick().outline();
        boolean high = run.box().height() > run.box().width();
        double more = profile.stick() instanceof Profile.Spring ? BESIDE_SPRUNG : AWAY;
        boolean level = Math.max(run.box().width(), run.box().height()) + more + 2 * BEYOND + 0.3 <= room;
        Motion turn = high == level ? Motion.turn(90) : Motion.NONE;
        Box box = run.moved(turn).box();
        return turn.then(Motion.shift(-box.back(), -box.bottom()));
    }

    /**
     * Where a kerf lies on the picture.
     *
     * @param axis along its side of the stick
     * @param onMore whether it is open to the top or right side
     * @param from the edge that a fence runs along, on the axis
     * @param near its nearer wall
     */
    private record Kerf(DimensionAxis axis, boolean onMore, double from, double near) {
        List<SceneItem> dimension(RunDimensions dimensions, Box box, double lane) {
            double edge = onMore ? axis.other().most(box) : axis.other().least(box);
            return dimensions.of(
                    axis, Math.min(from, near), Math.max(from, near), edge + (onMore ? lane : -lane), edge);
        }

        double length() {
            return Math.abs(near - from);
        }
    }

    /** The nearest to its edge first; one that opens right at the edge needs no dimension. */
    private List<Kerf> kerfs(Motion laid) {
        Box stick = milled.stick().box();
        Point home = laid.apply(new Point(stick.back(), stick.bottom()));
        return milled.grooves().stream()
                .map(groove -> kerf(groove, laid, home))
                .filter(kerf -> kerf.length() > Drafting.AIR)
                .sorted(Comparator.comparingDouble(Kerf::length))
                .toList();
    }

    private Kerf kerf(Groove groove, Motion laid, Point home) {
        List<Segment> strokes = groove.strokes().stream()
                .map(stroke ->
                        milled.stick().outline().strokes().get(stroke).segment().moved(laid))
                .toList();
        Segment floor = strokes.get(1);
        Box across = floor.box();
        DimensionAxis axis = across.width() > across.height() ? DimensionAxis.LEVEL : DimensionAxis.UPRIGHT;
        Segment wall = strokes.get(0);
        boolean onMore = axis.across(wall.from()) > axis.across(wall.to());
        double from = axis.along(home);
        double near = Math.abs(axis.along(floor.from()) - from) < Math.abs(axis.along(floor.to()) - from)
                ? axis.along(floor.from())
                : axis.along(floor.to());
        return new Kerf(axis, onMore, from, near);
    }
}
