package buildup.cli.drawing.paper;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.drawing.sheet.DrawingNotices;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.NumberedList;
import buildup.cli.drawing.sheet.PageFlow;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Group;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.TextMeasure;
import buildup.profiles.outline.Box;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Puts pictures and text on pages of one size, however large the picture and long the text. */
public final class Paper {
    /** A wall of 20 ft by 20 ft on letter, and more. */
    private static final int MOST_PAGES = 1_000;

    /** Scales of shop drawings that an inch rule reads, and smaller ones for what is very large. */
    private static final List<Integer> SCALES = List.of(1, 2, 3, 4, 6, 8, 12, 16, 24, 48, 96);

    private static final double LEGEND_GAP = 0.2;

    /** From one row of small pictures to the next. */
    private static final double BETWEEN = 0.3;

    private Paper() {}

    /** A picture at full size with its legend: on one page where both fit, else in parts, the legend before them. */
    public static List<PaperPage> fullSize(PageFrame frame, String view, Scene scene) {
        return pages(frame, PaperSet.atFullSize(view), scene);
    }

    /**
     * A picture that is not at full size, or not all of it, as it is drawn: on one page, or in parts; none where those would
     * be more than anybody puts together.
     *
     * @param notices told then
     */
    public static List<PaperPage> asDrawn(PageFrame frame, String view, Scene scene, Notices notices) {
        return tooMany(frame, scene.box(), DrawingNotices.MANY_PARTS.with("view", view), notices)
                ? List.of()
                : pages(frame, PaperSet.asDrawn(view), scene);
    }

    /**
     * The same.
     *
     * @param inParts how it is drawn where it does not fit on a page
     */
    public static List<PaperPage> fullSize(PageFrame frame, String view, Scene scene, Supplier<Scene> inParts) {
        PaperSet set = PaperSet.atFullSize(view);
        boolean fits = whole(frame, set, scene)
                .or(() -> whole(frame, set, picture(scene)))
                .isPresent();
        return pages(frame, set, fits ? scene : inParts.get());
    }

    private static List<PaperPage> pages(PageFrame frame, PaperSet set, Scene scene) {
        return whole(frame, set, scene)
                .orElseGet(() -> apart(
                        frame,
                        set,
                        picture(scene),
                        flow -> flow.blocks(
                                legends(scene).stream()
                                        .map(legend -> fitted(frame, legend))
                                        .toList(),
                                LEGEND_GAP)));
    }

    private static Optional<List<PaperPage>> whole(PageFrame frame, PaperSet set, Scene scene) {
        return whole(frame, set, scene.items()).or(() -> whole(frame, set, beside(picture(scene), legends(scene))));
    }

    private static List<Block> legends(Scene scene) {
        return scene.items().stream()
                .filter(Paper::isLegend)
                .map(item -> Block.of((Group) item))
                .toList();
    }

    private static List<SceneItem> picture(Scene scene) {
        return scene.items().stream().filter(item -> !isLegend(item)).toList();
    }

    /** The legends to the right of the picture, one below the other: a page has room there that it lacks below. */
    private static List<SceneItem> beside(List<SceneItem> picture, List<Block> legends) {
        Box box = Box.around(picture.stream().map(SceneItem::box).toList());
        List<SceneItem> items = new ArrayList<>(picture);
        double top = box.top();
        for (Block legend : legends) {
            items.add(legend.at(box.face() + LEGEND_GAP, top));
            top -= legend.height() + LEGEND_GAP;
        }
        return items;
    }

    /** A picture that fits once its texts are before it stays whole: it needs no plan of parts and no crosses. */
    private static List<PaperPage> apart(
            PageFrame frame, PaperSet set, List<SceneItem> picture, Consumer<PageFlow> front) {
        return whole(frame, set, picture)
                .map(page -> Stream.concat(flowing(frame, set.view(), PaperPage.AS_TOLD, front).stream(), page.stream())
                        .toList())
                .orElseGet(() -> TiledPicture.pages(frame, set, picture, front));
    }

    private static boolean isLegend(SceneItem item) {
        return item instanceof Group group
                && (group.id().equals(Legend.GROUP) || group.id().startsWith(NumberedList.GROUP));
    }

    /**
     * A picture at full size: on one page where it fits, under what is said of it where there is room for both, else in parts.
     *
     * @param front what is said of it; where there are parts, before their plan
     */
    public static List<PaperPage> fullSize(
            PageFrame frame, String view, List<SceneItem> items, Consumer<PageFlow> front) {
        PaperSet set = PaperSet.atFullSize(view);
        return Stream.of(frame, frame.turned())
                .flatMap(way -> under(way, set, items, front).stream())
                .findFirst()
                .map(List::of)
                .orElseGet(() -> apart(frame, set, items, front));
    }

    /** The picture and above it what is said of it, where both fit on the page. */
    private static Optional<PaperPage> under(
            PageFrame frame, PaperSet set, List<SceneItem> items, Consumer<PageFlow> front) {
        Block block = Block.of(new Group("picture", items));
        Box window = frame.window(set.whole());
        double room = window.height() - block.height() - LEGEND_GAP;
        if (room < 0 || block.width() > window.width()) {
            return Optional.empty();
        }
        PageFlow flow = new PageFlow(frame.measure(), window.width(), room);
        front.accept(flow);
        if (!flow.fits() || flow.pages().size() > 1) {
            return Optional.empty();
        }
        List<SceneItem> content = new ArrayList<>();
        double top = window.top();
        for (SceneItem item : flow.pages().get(0)) {
            SceneItem placed = item.moved(window.back(), window.top());
            content.add(placed);
            top = Math.min(top, placed.box().bottom() - LEGEND_GAP);
        }
        content.addAll(centered(new Box(window.back(), window.bottom(), window.face(), top), block));
        return Optional.of(new PaperPage(frame, set.whole(), set.view(), Optional.empty(), set.scale(), content));
    }

    /**
     * Small pictures at full size, as many on a page as it holds; those that are larger than a page come in parts together.
     *
     * @param front what is said of them, above the first
     */
    public static List<PaperPage> fullSizeBlocks(
            PageFrame frame, String view, List<Block> blocks, Consumer<PageFlow> front) {
        PaperSet set = PaperSet.atFullSize(view);
        Box window = frame.window(set.whole());
        PageFlow flow = new PageFlow(frame.measure(), window.width(), window.height());
        front.accept(flow);
        flow.gap(LEGEND_GAP);
        List<Block> large = new ArrayList<>();
        List<Block> small = new ArrayList<>();
        blocks.forEach(block ->
                (block.width() > window.width() || block.height() > window.height() ? large : small).add(block));
        flow.blocks(small, BETWEEN);
        List<PaperPage> pages = new ArrayList<>();
        for (List<SceneItem> items : flow.pages()) {
            pages.add(new PaperPage(
                    frame,
                    set.whole(),
                    view,
                    Optional.empty(),
                    set.scale(),
                    items.stream()
                            .map(item -> item.moved(window.back(), window.top()))
                            .toList()));
        }
        List<SceneItem> under = new ArrayList<>();
        for (Block block : large) {
            under.add(under.isEmpty() ? block.group() : PictureSheet.below(under, block.group(), BETWEEN));
        }
        if (!under.isEmpty()) {
            pages.addAll(fullSize(frame, view, under, unsaid -> {}));
        }
        return pages;
    }

    private static Optional<List<PaperPage>> whole(PageFrame frame, PaperSet set, List<SceneItem> items) {
        Block block = Block.of(new Group("picture", items));
        return whole(frame, set.whole(), block)
                .map(page -> List.of(new PaperPage(
                        page,
                        set.whole(),
                        set.view(),
                        Optional.empty(),
                        set.scale(),
                        centered(page.window(set.whole()), block))));
    }

    /**
     * Whether a picture of that size takes more pages than anybody puts together.
     *
     * @param notices told then
     */
    public static boolean tooMany(PageFrame frame, Box box, Notices notices) {
        return tooMany(frame, box, DrawingNotices.MANY_PAGES.notice(), notices);
    }

    private static boolean tooMany(PageFrame frame, Box box, Notice told, Notices notices) {
        double pages = pages(frame, box);
        if (pages > MOST_PAGES) {
            notices.add(told.with("pages", Figure.count((long) pages))
                    .with("page", frame.paper().name())
                    .with("most", Figure.count(MOST_PAGES)));
        }
        return pages > MOST_PAGES;
    }

    /**
     * The same, of the page that a printer holds, with nothing at its foot; for a picture that is drawn on no page.
     *
     * @param notices told then
     */
    public static boolean tooMany(boolean metric, TextMeasure measure, Box box, Notices notices) {
        TitleStrip bare = new TitleStrip(List.of(List.of()));
        return tooMany(new PageFrame(Pages.ofPrinter(metric), bare, measure, metric), box, notices);
    }

    /** How many pages a picture of that size takes at full size. */
    private static double pages(PageFrame frame, Box box) {
        return whole(frame, PageFrame.Use.CHECKED, new Block(new Group("picture", List.of()), box))
                        .isPresent()
                ? 1
                : Stream.of(frame, frame.turned())
                        .map(way -> way.window(PageFrame.Use.PART))
                        .mapToDouble(window -> Tiling.count(box, window.width(), window.height()))
                        .min()
                        .orElse(1);
    }

    /** The page as it is to lie for a block to fit whole. */
    private static Optional<PageFrame> whole(PageFrame frame, PageFrame.Use use, Block block) {
        return Stream.of(frame, frame.turned())
                .filter(way -> way.window(use).width() >= block.width()
                        && way.window(use).height() >= block.height())
                .findFirst();
    }

    private static List<SceneItem> centered(Box window, Block block) {
        return List.of(block.at(
                window.middle().x() - block.width() / 2, window.middle().y() + block.height() / 2));
    }

    /**
     * Text, tables and blocks from the top down, on as many pages as they take.
     *
     * @param scale of the pictures among it, in words
     */
    public static List<PaperPage> flowing(PageFrame frame, String view, String scale, Consumer<PageFlow> written) {
        Box window = frame.window(PageFrame.Use.PLAIN);
        PageFlow flow = PageFlow.written(frame.measure(), window.width(), window.height(), written);
        List<PaperPage> pages = new ArrayList<>();
        for (List<SceneItem> items : flow.pages()) {
            pages.add(new PaperPage(
                    frame,
                    PageFrame.Use.PLAIN,
                    view,
                    Optional.empty(),
                    scale,
                    items.stream()
                            .map(item -> item.moved(window.back(), window.top()))
                            .toList()));
        }
        return pages;
    }

    /**
     * A picture made so many times smaller that it fits on a page, on a page of its own.
     *
     * @param drawn the picture with letters that are read when it is made so many times smaller
     */
    public static PaperPage scaled(PageFrame frame, String view, IntFunction<Scene> drawn) {
        PageFrame.Use use = PageFrame.Use.PLAIN;
        for (int smaller : SCALES) {
            Block block = Block.of(new Group("picture", drawn.apply(smaller).items()));
            Block shrunk = Shrunk.by(block, 1.0 / smaller);
            Optional<PageFrame> page = whole(frame, smaller == 1 ? PageFrame.Use.CHECKED : use, shrunk);
            if (page.isPresent()) {
                return smaller == 1
                        ? page(page.get(), PageFrame.Use.CHECKED, view, PaperPage.FULL_SIZE, shrunk)
                        : page(page.get(), use, view, Drafting.scale(smaller), shrunk);
            }
        }
        Block block = Block.of(new Group("picture", drawn.apply(Drafting.FITTED).items()));
        return page(frame, use, view, Drafting.scale(Drafting.FITTED), fitted(frame, block));
    }

    private static PaperPage page(PageFrame frame, PageFrame.Use use, String view, String scale, Block block) {
        return new PaperPage(frame, use, view, Optional.empty(), scale, centered(frame.window(use), block));
    }

    /** How wide text and blocks may be. */
    public static double width(PageFrame frame) {
        return frame.window(PageFrame.Use.PLAIN).width();
    }

    /** How wide a part of a picture at full size is on an upright page. */
    public static double partWidth(PageFrame frame) {
        return frame.window(PageFrame.Use.PART).width();
    }

    /** A block that is made smaller where it would not fit on a page. */
    public static Block fitted(PageFrame frame, Block block) {
        Box window = frame.window(PageFrame.Use.PLAIN);
        return Shrunk.toFit(block, window.width(), window.height());
    }
}
