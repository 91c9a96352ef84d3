package buildup.cli.drawing.hold;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.Spread;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.hold.season.Effect;
import buildup.engine.hold.season.Season;
import buildup.engine.hold.season.Year;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The section, full size, as built, with the outlines of its pieces in the driest and in the dampest season. */
public final class SeasonDrawing {
    /** More words beside the picture are not read. */
    private static final int MOST_WORDS = 10;

    private final Section section;
    private final Year year;
    private final int times;
    private final TextMeasure measure;
    private final PictureView view;
    private final FigurePrinter printer;
    private final double size;
    private final int smaller;

    private SeasonDrawing(Section section, Year year, int times, int smaller, boolean screen, TextMeasure measure) {
        this.smaller = smaller;
        this.section = section;
        this.year = year;
        this.times = times;
        this.measure = measure;
        this.view = PictureView.of(section);
        this.printer = new FigurePrinter(section.stack().unit());
        this.size = screen ? view.letters() : smaller * Drafting.TEXT;
    }

    /**
     * The picture.
     *
     * @param year with at least two seasons
     * @param times so many times as far as the wood moves
     */
    public static Scene of(Section section, Year year, int times, TextMeasure measure) {
        return new SeasonDrawing(section, year, times, 1, true, measure).scene();
    }

    /** The same with letters that are read when it is made so many times smaller. */
    public static Scene forScale(Section section, Year year, int times, int smaller, TextMeasure measure) {
        return new SeasonDrawing(section, year, times, smaller, false, measure).scene();
    }

    private Scene scene() {
        WoodDrawing wood = WoodDrawing.of(section, view);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group("pieces", wood.lightly(smaller)));
        items.add(new Group("edges", wood.edges()));
        items.addAll(outlines("driest", year.driest(), LineStyle.DRY));
        items.addAll(outlines("dampest", year.dampest(), LineStyle.DAMP));
        items.addAll(About.of(Subject.SEASONS, words()));
        items.add(PictureSheet.below(items, legend(wood), size));
        return PictureSheet.around(
                section.stack().title() + ", through the year",
                "Section as built, with outlines in the driest and the dampest season. " + scale(),
                items,
                2 * size);
    }

    /** Of each piece that moves, where it is in a season; nothing of the season in which it was built. */
    private List<SceneItem> outlines(String id, int season, LineStyle style) {
        List<SceneItem> items = new ArrayList<>();
        for (int i = 0; i < section.bodies().size(); i++) {
            if (section.body(i).inStack()) {
                List<Line> ring =
                        year.moved().get(season).get(i).outline(section.body(i).outline(), times);
                items.add(new Path(List.copyOf(ring), true, style));
            }
        }
        return season == 0 || items.isEmpty() ? List.of() : List.of(new Group(id, items));
    }

    /** What opens and closes most in those two, beside the place where it does. */
    private List<Label> words() {
        List<Effect> most = year.effects().stream()
                .filter(effect -> effect.season() == year.driest() || effect.season() == year.dampest())
                .filter(effect -> Math.abs(effect.amount()) >= Tolerance.SAW_CUT)
                .sorted(Comparator.comparing(Effect::seen)
                        .thenComparingDouble(effect -> Math.abs(effect.amount()))
                        .reversed())
                .limit(MOST_WORDS)
                .toList();
        List<Spread.Wish> wishes = new ArrayList<>(most.stream()
                .map(effect -> new Spread.Wish(
                        words(effect), effect.at().y(), effect.at().y()))
                .toList());
        wishes.sort(Comparator.comparingDouble(Spread.Wish::middle));
        return wishes.isEmpty() ? List.of() : Spread.besides(measure, wishes, right() + size, size);
    }

    private double right() {
        double moved = IntStream.of(year.driest(), year.dampest())
                .boxed()
                .flatMap(season -> outlines("", season, LineStyle.DRY).stream())
                .mapToDouble(item -> item.box().face())
                .max()
                .orElse(0);
        return Math.max(moved, view.window().face());
    }

    private String words(Effect effect) {
        return effect.name() + ", " + year.seasons().get(effect.season()).name() + ": " + effect.result() + " "
                + printer.print(Figure.fine(Math.abs(effect.amount())));
    }

    private String scale() {
        return times == 1 ? "Movement at full size." : "Movement drawn " + times + " times as large as it is.";
    }

    private Group legend(WoodDrawing wood) {
        return new Legend(measure, size)
                .title(section.stack().title())
                .text("Through the year, " + Drafting.scale(smaller) + "; as built: " + said(0) + ". " + scale())
                .line("as built", LineStyle.OUTLINE)
                .line("driest: " + said(year.driest()), LineStyle.DRY)
                .line("dampest: " + said(year.dampest()), LineStyle.DAMP)
                .kinds(wood.looks(), smaller)
                .group();
    }

    private String said(int number) {
        Season season = year.seasons().get(number);
        return season.name() + ", " + printer.print(Figure.of(Quantity.MOISTURE, season.moisture())) + " moisture";
    }
}
