package buildup.cli.drawing.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.cli.command.Typed;
import buildup.cli.drawing.job.ShopDrawings;
import buildup.cli.drawing.job.ShopSheet;
import buildup.cli.drawing.job.Since;
import buildup.cli.drawing.look.ElevationDrawing;
import buildup.cli.drawing.section.Drawn;
import buildup.cli.drawing.section.SectionDrawing;
import buildup.cli.drawing.sheet.Pages;
import buildup.cli.scene.Area;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Tone;
import buildup.cli.write.PdfWriter;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Cuts;
import buildup.engine.room.sticks.Limit;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts of a picture are printed, laid together by their crosses, and give the picture. */
class PutTogetherTest {
    private static final int DPI = 300;

    /** Half the length of a cross's arm and a little more, in. */
    private static final double CROSS = 0.2;

    @TempDir
    private java.nio.file.Path folder;

    private static PageFrame letter() {
        return new PageFrame(
                Pages.named("letter").orElseThrow(),
                new TitleStrip(List.of(List.of(new TitleCell("stack", "A stack", 2)))),
                Drawn.FONT,
                false);
    }

    /** Where each part lies, its upper left corner in dots from that of the first part, by the crosses that they share. */
    private static List<Point> laid(List<Printed> parts, int columns) {
        List<List<Point>> crosses = parts.stream().map(Printed::crosses).toList();
        assertThat(crosses).allSatisfy(four -> assertThat(four).hasSize(4));
        List<Point> corners = new ArrayList<>(List.of(Point.ORIGIN));
        for (int i = 1; i < parts.size(); i++) {
            boolean below = i % columns == 0;
            int other = below ? i - columns : i - 1;
            // upper left, upper right, lower left, lower right
            int[] theirs = below ? new int[] {2, 3} : new int[] {1, 3};
            int[] own = below ? new int[] {0, 1} : new int[] {0, 2};
            Point first = crosses.get(other).get(theirs[0]).minus(crosses.get(i).get(own[0]));
            Point second =
                    crosses.get(other).get(theirs[1]).minus(crosses.get(i).get(own[1]));
            assertThat(first.near(second, 1))
                    .as("both crosses of part %d", i + 1)
                    .isTrue();
            corners.add(corners.get(other).plus(first));
        }
        return corners;
    }

    @Tag("long")
    @Test
    void parts_laid_together_by_their_crosses_give_the_picture_dot_by_dot_within_one() throws Exception {
        Scene whole = Drawn.of(Drawn.CORNICE).scene();
        List<SceneItem> picture = whole.items().stream()
                .filter(item -> item instanceof Group group && group.id().equals("section"))
                .toList();
        assertThat(picture).hasSize(1);
        assertGiveThePicture(picture, 4);
    }

    @Tag("long")
    @Test
    void so_do_the_parts_of_a_front_wider_and_higher_than_a_page() throws Exception {
        assertGiveThePicture(front(12), 4);
    }

    @Tag("long")
    @Test
    void and_those_of_the_strip_to_tape_up() throws Exception {
        assertGiveThePicture(front(3.2), 2);
    }

    private static List<SceneItem> front(double wide) {
        Answers known = Typed.of(Drawn.CORNICE).known().orElseThrow();
        return ElevationDrawing.stretch(known.section(), known.lights().get(0), Drawn.FONT, wide);
    }

    private void assertGiveThePicture(List<SceneItem> picture, int count) throws Exception {
        Box box = Box.around(picture.stream().map(SceneItem::box).toList());
        List<PaperPage> pages = Paper.fullSize(letter(), "Section", picture, flow -> {});
        List<Printed> parts = Printed.of(
                folder, PdfWriter.write(PaperPage.scenes("A stack", pages.subList(1, pages.size())), Drawn.FONT), DPI);
        assertThat(parts).hasSize(count);
        Tiling tiling =
                TiledPicture.tiling(letter(), PageFrame.Use.PART, box, TiledPicture.drawn(Scene.leaves(picture)));
        List<Point> laid = laid(parts, tiling.columns().count());
        // the whole picture on one page, as far from its corner as on the first part and 4 in more, so that dots fall
        // alike
        Box window = letter().window(PageFrame.Use.PART);
        double right = window.back() - tiling.window(0, 0).back() + 4;
        double up = window.top() - tiling.window(0, 0).top() + 4 + 9;
        Scene large = new Scene(
                "Whole",
                "",
                24,
                24,
                picture.stream().map(item -> item.moved(right, up)).toList());
        Printed one =
                Printed.of(folder, PdfWriter.write(large, Drawn.FONT), DPI).get(0);
        for (int i = 0; i < parts.size(); i++) {
            Box part = tiling.window(
                    i % tiling.columns().count(), i / tiling.columns().count());
            List<Box> cut = Scene.leaves(picture).stream()
                    .filter(Label.class::isInstance)
                    .filter(text -> text.box().near(part, 0) && !WholeTextsTest.whole(text.box(), part))
                    .map(text -> text.moved(window.back() - part.back(), window.top() - part.top())
                            .box())
                    .toList();
            assertAlike(parts.get(i), one, window, laid.get(i).plus(new Point(4 * DPI, 0)), cut);
        }
    }

    /**
     * Every dot of one within the window has one of the other beside it, but where a cross lies.
     *
     * @param cut texts that the edge would cut: they are left off the part, in of its page
     */
    private static void assertAlike(Printed part, Printed one, Box window, Point corner, List<Box> cut) {
        int right = (int) Math.round(corner.x());
        int down = (int) Math.round(corner.y());
        List<Point> crosses = part.crosses();
        int looked = 0;
        List<String> faults = new ArrayList<>();
        for (int y = (int) ((11 - window.top()) * DPI) + 2; y < (11 - window.bottom()) * DPI - 2; y++) {
            for (int x = (int) (window.back() * DPI) + 2; x < window.face() * DPI - 2; x++) {
                Point at = new Point(x, y);
                if (crosses.stream().anyMatch(cross -> cross.near(at, CROSS * DPI))) {
                    continue;
                }
                if (part.ink(x, y)) {
                    looked++;
                    if (!one.near(x + right, y + down)) {
                        faults.add("only on the part: " + at);
                    }
                } else if (one.ink(x + right, y + down)
                        && !part.near(x, y)
                        && cut.stream().noneMatch(text -> text.holds(inches(at), 0.02))) {
                    faults.add("only on the whole: " + at);
                }
            }
        }
        assertThat(looked).as("dots with ink").isGreaterThan(10_000);
        assertThat(faults).isEmpty();
    }

    private static Point inches(Point dots) {
        return new Point(dots.x() / DPI, 11 - dots.y() / DPI);
    }

    /** Bars of wood 1/16 thick at known places: their middles are measured on the parts laid together. */
    @Tag("long")
    @Test
    void distances_across_the_borders_of_parts_are_true_within_two_in_a_thousand() throws Exception {
        List<SceneItem> bars = new ArrayList<>();
        double[] places = {0, 2.5, 5, 6, 6.75, 7.5, 9, 10.25, 11.5, 13, 14};
        for (double place : places) {
            bars.add(bar(new Box(place - 1.0 / 32, -3, place + 1.0 / 32, 16)));
            bars.add(bar(new Box(-3, place - 1.0 / 32, 16, place + 1.0 / 32)));
        }
        List<PaperPage> pages = Paper.fullSize(letter(), "Bars", bars, flow -> {});
        List<Printed> parts = Printed.of(
                folder, PdfWriter.write(PaperPage.scenes("Bars", pages.subList(1, pages.size())), Drawn.FONT), DPI);
        Tiling tiling =
                TiledPicture.tiling(letter(), PageFrame.Use.PART, new Box(-3, -3, 16, 16), TiledPicture.drawn(bars));
        int columns = tiling.columns().count();
        List<Point> laid = laid(parts, columns);
        Box window = letter().window(PageFrame.Use.PART);
        // scans through the air beyond the last bar and before the first one
        int beyond = (int) ((11 - window.top() + tiling.window(0, 0).top() - 15) * DPI);
        int before = (int) ((window.back() - 1.5 - tiling.window(0, 0).back()) * DPI);
        for (boolean level : new boolean[] {true, false}) {
            List<Double> middles = new ArrayList<>();
            for (int i = 0; i < parts.size(); i++) {
                if (level ? i < columns : i % columns == 0) {
                    middles.addAll(middles(parts.get(i), window, laid.get(i), level, level ? beyond : before));
                }
            }
            middles.sort(null);
            List<Double> one = new ArrayList<>();
            for (double middle : middles) {
                if (one.isEmpty() || middle - one.get(one.size() - 1) > DPI / 8.0) {
                    one.add(middle);
                }
            }
            assertThat(one).hasSize(places.length);
            for (int i = 1; i < places.length; i++) {
                double known = places[i] - places[0];
                double measured = level
                        ? (one.get(i) - one.get(0)) / DPI
                        : (one.get(places.length - 1) - one.get(places.length - 1 - i)) / DPI;
                assertThat(measured).as("%s to %s", places[0], places[i]).isCloseTo(known, within(0.002 * known));
            }
        }
    }

    /** A pole of 8 ft and more on letter, as a carpenter lays it together: every line across it is where it belongs. */
    @Tag("long")
    @Test
    void the_lines_of_a_story_pole_laid_together_are_true_within_two_in_a_thousand() throws Exception {
        assertAcross(
                "title: A pole\nwood: red-oak\nspace: { floor: -92 }\npieces:\n"
                        + "  - { name: chair rail, profile: board 3/4 x 3, back: wall, bottom: -60 }\n"
                        + "  - { name: picture rail, profile: board 3/4 x 2, back: wall, bottom: -24 }\n"
                        + "  - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }\n"
                        + "  - { name: shelf, profile: board 3/4 x 6, lay: flat, back: wall, bottom: frieze.top }\n",
                ShopSheet.STORY_POLE,
                10,
                0,
                32,
                35,
                68,
                70,
                92,
                97.5,
                98.25);
    }

    /** The front of four boards one above another, 20 in high: their edges across the strip. */
    @Tag("long")
    @Test
    void the_lines_of_the_strip_to_tape_up_laid_together_are_true_within_two_in_a_thousand() throws Exception {
        assertAcross(
                "title: A strip\nwood: red-oak\nspace: { floor: -92 }\npieces:\n"
                        + "  - { name: base, profile: board 3/4 x 5-1/2, back: wall, bottom: 0 }\n"
                        + "  - { name: field, profile: board 1/2 x 9-1/4, back: wall, bottom: base.top }\n"
                        + "  - { name: band, profile: board 1 x 4-1/2, back: wall, bottom: field.top }\n"
                        + "  - { name: cap, profile: board 3/4 x 3, lay: flat, back: wall, bottom: band.top }\n",
                ShopSheet.STRIP,
                3,
                0,
                5.5,
                14.75,
                19.25,
                20);
    }

    /** The black lines across what is drawn on a sheet of one column, from the lowest up, in from that. */
    private void assertAcross(String stack, ShopSheet sheet, int atLeast, double... known) throws Exception {
        Answer answer = Typed.of(stack);
        List<PaperPage> pages = ShopDrawings.of(
                        answer,
                        answer.known().orElseThrow(),
                        Cuts.of(answer, Limit.usual()),
                        Since.NOTHING,
                        Pages.named("letter").orElseThrow(),
                        Drawn.FONT,
                        EnumSet.of(sheet),
                        new Notices())
                .get(0)
                .pages();
        List<Printed> parts = Printed.of(
                folder, PdfWriter.write(PaperPage.scenes("Sheet", pages.subList(1, pages.size())), Drawn.FONT), DPI);
        assertThat(parts).hasSizeGreaterThanOrEqualTo(atLeast);
        List<Point> laid = laid(parts, 1);
        List<Double> lines = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Printed part = parts.get(i);
            List<Point> crosses = part.crosses();
            int from = (int) crosses.get(0).y() + 2;
            int to = (int) crosses.get(3).y() - 2;
            // what is drawn hangs from the part above, and on the first one goes on below
            int row = i == 0 ? to - DPI / 4 : from + DPI / 4;
            int inside = edge(part, (int) crosses.get(0).x() + DPI / 4, row) + DPI / 2;
            int start = -1;
            for (int y = from - DPI / 2; y <= to + DPI / 2; y++) {
                int across = y;
                // a line across, and no mark of the paper
                boolean line = IntStream.range(0, DPI / 4).allMatch(x -> part.ink(inside + x, across));
                if (line && start < 0) {
                    start = y;
                } else if (!line && start >= 0) {
                    lines.add((start + y - 1) / 2.0 + laid.get(i).y());
                    start = -1;
                }
            }
        }
        lines.sort(null);
        List<Double> once = new ArrayList<>();
        for (double line : lines) {
            if (once.isEmpty() || line - once.get(once.size() - 1) > DPI / 8.0) {
                once.add(line);
            }
        }
        assertThat(once).hasSize(known.length);
        for (int i = 1; i < known.length; i++) {
            double measured = (once.get(known.length - 1) - once.get(known.length - 1 - i)) / DPI;
            assertThat(measured).as("line %d from the lowest", i).isCloseTo(known[i], within(0.002 * known[i]));
        }
    }

    /** The first column with ink to the right of a place. */
    private static int edge(Printed part, int from, int across) {
        return IntStream.range(from, from + 9 * DPI)
                .filter(x -> part.ink(x, across))
                .findFirst()
                .orElseThrow();
    }

    private static SceneItem bar(Box box) {
        return new Area(
                Optional.empty(), Optional.empty(), Outline.rectangle(box).segments(), Tone.INK);
    }

    /** Where a scan through the air between bars meets them, in dots from the corner of the first part. */
    private static List<Double> middles(Printed part, Box window, Point corner, boolean level, int across) {
        int from = (int) ((level ? window.back() : 11 - window.top()) * DPI) + 2;
        int to = (int) ((level ? window.face() : 11 - window.bottom()) * DPI) - 2;
        List<Double> middles = new ArrayList<>();
        int start = -1;
        for (int i = from; i <= to; i++) {
            boolean ink = level ? part.ink(i, across) : part.ink(across, i);
            if (ink && start < 0) {
                start = i;
            } else if (!ink && start >= 0) {
                if (start > from && i - start > 10) {
                    middles.add((start + i - 1) / 2.0 + (level ? corner.x() : corner.y()));
                }
                start = -1;
            }
        }
        return middles;
    }

    @Test
    void every_part_has_check_lines_both_ways_and_the_page_that_tells_how_has_none() throws Exception {
        List<PaperPage> pages = SectionDrawing.pages(Drawn.of(Drawn.CORNICE).section(), letter(), new Notices());
        List<Scene> scenes = PaperPage.scenes("A stack", pages);
        assertThat(checks(scenes.get(0))).isEmpty();
        Set<Box> pieces = scenes.get(0).leaves().stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.RULE)
                .map(SceneItem::box)
                .collect(Collectors.toSet());
        assertThat(pieces).as("the 11 pieces on the plan of the parts").hasSizeGreaterThan(11);
        for (Scene scene : scenes.subList(1, scenes.size())) {
            assertThat(checks(scene))
                    .hasSize(2)
                    .allSatisfy(line ->
                            assertThat(Math.max(line.width(), line.height())).isCloseTo(4, within(1e-9)));
        }
    }

    private static List<Box> checks(Scene scene) {
        return scene.leaves().stream()
                .filter(item -> item instanceof Path path && path.style() == LineStyle.CHECK)
                .map(SceneItem::box)
                .toList();
    }
}
