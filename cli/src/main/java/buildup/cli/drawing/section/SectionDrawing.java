package buildup.cli.drawing.section;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Grid;
import buildup.cli.drawing.draft.PictureView;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.label.Clearances;
import buildup.cli.drawing.label.Dimensioner;
import buildup.cli.drawing.label.Tags;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.sheet.Arrangement;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.FullSize;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.drawing.sheet.PaperSize;
import buildup.cli.drawing.sheet.PieceTable;
import buildup.cli.drawing.sheet.TitleBlock;
import buildup.cli.scene.About;
import buildup.cli.scene.Area;
import buildup.cli.scene.Boxes;
import buildup.cli.scene.ChordRing;
import buildup.cli.scene.Group;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.cli.scene.Tone;
import buildup.engine.section.compose.ClosedVoid;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.profiles.region.Bound;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** The section, full size, dimensioned, with the list of its pieces: a sheet for the bench. */
public final class SectionDrawing {
    private static final double FRONT_GAP = 0.2;

    private final Section section;
    private final TextMeasure measure;
    private final PictureView view;
    private final Clearances clearances;

    private SectionDrawing(Section section, TextMeasure measure) {
        this.section = section;
        this.measure = measure;
        this.view = PictureView.of(section);
        this.clearances = Clearances.of(view);
    }

    /**
     * The drawing on one sheet: the page asked for, else the smallest that holds it, else one cut to it.
     *
     * @param notices told when it is far too large
     * @return absent when it is far too large, or larger than the page asked for
     */
    public static Optional<Scene> of(Section section, TextMeasure measure, Optional<PaperSize> page, Notices notices) {
        return new SectionDrawing(section, measure).scene(page, notices);
    }

    /**
     * The drawing on pages: its title, its notes and the list of its pieces before the picture where it takes several.
     *
     * @param notices told when it takes far too many
     * @return none then
     */
    public static List<PaperPage> pages(Section section, PageFrame frame, Notices notices) {
        return pages(section, frame, texts -> List.of(), notices);
    }

    /**
     * The same.
     *
     * @param marks laid over the picture, in the frame of the section, by the places of its texts
     */
    public static List<PaperPage> pages(
            Section section, PageFrame frame, Function<List<Box>, List<SceneItem>> marks, Notices notices) {
        SectionDrawing drawing = new SectionDrawing(section, frame.measure());
        return Paper.tooMany(frame, drawing.view.window(), notices) ? List.of() : drawing.pages(frame, marks);
    }

    private List<PaperPage> pages(PageFrame frame, Function<List<Box>, List<SceneItem>> marks) {
        Parts parts = parts(false);
        List<SceneItem> picture = new ArrayList<>(parts.picture());
        picture.addAll(marks.apply(clearances.texts()));
        Block title = TitleBlock.of(measure, section.stack(), looks(), parts.notes(), false);
        return Paper.fullSize(frame, "Section", picture, flow -> {
            flow.blocks(List.of(title), FRONT_GAP);
            flow.table(PieceTable.table(section));
        });
    }

    private Optional<Scene> scene(Optional<PaperSize> wanted, Notices notices) {
        if (Paper.tooMany(metric(), measure, view.window(), notices)) {
            // laying it out would only take time
            return Optional.empty();
        }
        List<Arrangement> arrangements = arrangements();
        List<PaperSize> pages = wanted.map(List::of).orElse(Pages.usual());
        Arrangement own = Arrangement.least(arrangements);
        return smallest(pages, arrangements)
                .or(() -> wanted.isPresent()
                        ? Optional.empty()
                        : Optional.of(new PaperSize("as large as it is", own.sheetWidth(), own.sheetHeight())))
                .map(sheet -> new Scene(
                        title(),
                        description(),
                        sheet.width(),
                        sheet.height(),
                        List.copyOf(Arrangement.best(sheet, arrangements).on(sheet))));
    }

    private String description() {
        int pieces = section.pieces().size();
        return "Full-size section of " + pieces + (pieces == 1 ? " piece, " : " pieces, ")
                + Drafting.spelled(section.stack(), section.totals().height())
                + " high, projection "
                + Drafting.spelled(section.stack(), section.totals().projection()) + ".";
    }

    private boolean metric() {
        return Drafting.printer(section.stack()).metric();
    }

    private String title() {
        return section.stack().title();
    }

    private static Optional<PaperSize> smallest(List<PaperSize> pages, List<Arrangement> arrangements) {
        return pages.stream()
                .flatMap(page -> Arrangement.fitting(page, arrangements).stream())
                .findFirst();
    }

    /**
     * The picture without its texts beside it.
     *
     * @param check the line by which full size is checked, where there was room for it within
     */
    private record Parts(List<SceneItem> picture, boolean check, List<String> notes) {}

    private List<Arrangement> arrangements() {
        Parts parts = parts(true);
        Optional<Block> beside = parts.check()
                ? Optional.empty()
                : Optional.of(Block.of(FullSize.of(metric()).upright(measure)));
        return Arrangement.all(
                Block.of(new Group("section", parts.picture())),
                PieceTable.of(section, measure),
                TitleBlock.of(measure, section.stack(), looks(), parts.notes(), true),
                beside);
    }

    /** @param checked whether the upright check line is to lie within the picture where there is room */
    private Parts parts(boolean checked) {
        WoodDrawing wood = WoodDrawing.of(section, view);
        wood.breaks().forEach(clearances::addBreak);
        voids().forEach(clearances::addHollow);
        List<SceneItem> letters = tags().items();
        SectionDimensions measures = SectionDimensions.of(section, view);
        Dimensioner dimensioner = new Dimensioner(view, clearances, measure);
        dimensioner.lay(measures.list());
        List<SceneItem> drawn = new ArrayList<>();
        voids().forEach(ring ->
                drawn.add(new Area(Optional.empty(), Optional.of("void"), List.copyOf(ring.chords()), Tone.PAPER)));
        drawn.add(new Group("pieces", wood.areas()));
        drawn.add(new Group("hatch", wood.hatches()));
        drawn.add(new Group("edges", wood.edges()));
        drawn.add(new Group("dimensions", About.of(Subject.DIMENSIONS, dimensioner.items())));
        drawn.add(new Group("letters", About.of(Subject.LETTERS, letters)));
        Box whole = drawn.stream().map(SceneItem::box).reduce(view.window(), Box::with);
        Optional<Group> check = checked ? FullSize.of(metric()).within(whole, clearances, measure) : Optional.empty();
        check.ifPresent(drawn::add);
        List<SceneItem> items = new ArrayList<>();
        items.add(new Group("grid", Grid.of(metric()).over(view.window(), clearances.texts())));
        plane(clearances.texts()).ifPresent(items::add);
        items.addAll(drawn);
        return new Parts(items, check.isPresent(), notes(measures, dimensioner));
    }

    private Tags tags() {
        Tags tags = new Tags(clearances, measure, view.window());
        for (PictureView.Shown shown : view.shown()) {
            if (shown.body().piece() && !shown.parts().isEmpty()) {
                tags.letter(Section.letter(shown.number()), shown.parts().get(0).chords());
            }
        }
        voids().forEach(ring -> tags.word("void", ring));
        return tags;
    }

    /** Those that lie on the picture whole. */
    private List<ChordRing> voids() {
        Box window = view.window();
        return section.voids().stream()
                .map(ClosedVoid::ring)
                .map(ring ->
                        ChordRing.of(ring.bounds().stream().map(Bound::segment).toList(), Tolerance.DRAWN_CHORD))
                .filter(ring -> ring.points().stream().allMatch(p -> window.holds(p, 0)))
                .toList();
    }

    /** x = 0, where no wall shows it. */
    private Optional<SceneItem> plane(List<Box> texts) {
        Box window = view.window();
        if (window.back() > 0 || window.face() < 0) {
            return Optional.empty();
        }
        Line line = new Line(new Point(0, window.bottom()), new Point(0, window.top()));
        return Optional.of(new Path(List.copyOf(Boxes.broken(line, texts)), false, LineStyle.PLANE));
    }

    /** Every hatch on the picture and what it stands for. */
    private Map<WoodDrawing.Look, String> looks() {
        Map<WoodDrawing.Look, String> looks = new TreeMap<>();
        for (PictureView.Shown shown : view.shown()) {
            WoodDrawing.Look look = WoodDrawing.Look.of(shown.body());
            String word = look == WoodDrawing.Look.ROOM ? shown.body().name() : look.word();
            looks.merge(look, word, (known, more) -> known.equals(more) ? known : known + ", " + more);
            if (section.stack().space().wall().covering() > 0 && word.equals("wall")) {
                looks.put(WoodDrawing.Look.COVERING, WoodDrawing.Look.COVERING.word());
            }
        }
        return looks;
    }

    private List<String> notes(SectionDimensions measures, Dimensioner dimensioner) {
        List<String> notes = new ArrayList<>();
        notes.add(Grid.of(metric()).words() + " Projections are from the plane x = 0."
                + " A size with + or - is truly a little more or less.");
        measures.notes().forEach(note -> notes.add(note + "."));
        dimensioner.leftOut().forEach(left -> notes.add(left.words() + "."));
        notes.add("A drawing for the bench: check local code and makers' labels.");
        return notes;
    }
}
