package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.Grid;
import buildup.cli.drawing.draft.Words;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.sheet.Block;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.SceneItem;
import buildup.engine.room.run.Fit;
import buildup.engine.room.run.Job;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Line;
import buildup.profiles.outline.Motion;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Stroke;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notices;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The returns of a job from above, each shape once with how many of each hand are made, as many on a page as it holds. */
record ReturnTemplates(Job job, String title, FigurePrinter printer, Notices notices) {
    /** The narrowest that the words under a small one are set, in. */
    private static final double WORDS = 2.2;

    private static final double AROUND = 0.25;

    /** What is so much alike is one template. */
    private static final int MOST_LINES = 6;

    private static final int MOST_NAMED = 4;

    /** A shape and whose it is; {@code mirrored} those that are its mirror image. */
    private record Kind(Outline outline, List<String> made, List<String> mirrored) {}

    List<PaperPage> pages(PageFrame frame) {
        List<Block> blocks = new ArrayList<>();
        for (Kind kind : kinds()) {
            if (!Paper.tooMany(frame, kind.outline().box(), notices)) {
                blocks.add(block(frame, kind));
            }
        }
        return blocks.isEmpty()
                ? List.of()
                : Paper.fullSizeBlocks(frame, ShopSheet.TEMPLATES.title(), blocks, flow -> {
                    flow.lines(title, Drafting.TITLE);
                    flow.lines(
                            "Templates of returns, full size, from above, the wall below; "
                                    + (printer.metric() ? "millimeters" : "inches")
                                    + ". Glue them to thin stock, saw outside the line and file to it.",
                            Drafting.TEXT);
                });
    }

    private List<Kind> kinds() {
        List<Kind> kinds = new ArrayList<>();
        for (Fit fit : job.fits()) {
            if (fit.selfReturn() && fit.outline().size() > 2) {
                Outline outline = outline(
                        fit.outline(), Math.toDegrees(fit.frame().along().angle()));
                add(kinds, outline, fit.course().name());
            }
        }
        return kinds;
    }

    private static void add(List<Kind> kinds, Outline outline, String name) {
        for (Kind kind : kinds) {
            if (same(kind.outline(), outline)) {
                kind.made().add(name);
                return;
            }
            if (same(mirrored(kind.outline()), outline)) {
                kind.mirrored().add(name);
                return;
            }
        }
        kinds.add(new Kind(outline, new ArrayList<>(List.of(name)), new ArrayList<>()));
    }

    /** Its stretch level, its lower left corner at the origin. */
    private static Outline outline(List<Point> corners, double turned) {
        List<Point> level = corners.stream().map(Motion.turn(-turned)::apply).toList();
        List<Stroke> strokes = Line.ring(level).stream()
                .map(line -> new Stroke(line, "return"))
                .toList();
        return atOrigin(Outline.closed(strokes));
    }

    private static Outline mirrored(Outline outline) {
        return atOrigin(outline.moved(Motion.ENDS));
    }

    private static Outline atOrigin(Outline outline) {
        Box box = outline.box();
        return outline.moved(Motion.shift(-box.back(), -box.bottom()));
    }

    /** Whether every corner of one lies on a corner of the other. */
    private static boolean same(Outline a, Outline b) {
        return meets(a, b) && meets(b, a);
    }

    private static boolean meets(Outline a, Outline b) {
        return a.segments().stream()
                .allMatch(one ->
                        b.segments().stream().anyMatch(other -> one.from().near(other.from(), Tolerance.TOUCHING)));
    }

    private Block block(PageFrame frame, Kind kind) {
        Box around = kind.outline().box().grown(AROUND);
        List<SceneItem> items = new ArrayList<>(Grid.of(printer.metric()).over(around, List.of()));
        items.add(new Path(kind.outline().segments(), true, LineStyle.OUTLINE));
        double y = around.bottom();
        String said = named(Stream.concat(kind.made().stream(), kind.mirrored().stream())
                        .toList()) + ", return: make " + kind.made().size();
        if (!kind.mirrored().isEmpty()) {
            said += "; turned over, other hand: make " + kind.mirrored().size();
        }
        for (String line :
                Words.lines(frame.measure(), said, Drafting.TEXT, Math.max(WORDS, around.width()), MOST_LINES)) {
            y -= 1.45 * Drafting.TEXT;
            Point at = new Point(around.back(), y);
            items.add(Label.of(frame.measure(), line, at, Drafting.TEXT, Label.Anchor.START));
        }
        return Block.of(new Group("return", items));
    }

    private static String named(List<String> names) {
        List<String> each = names.stream().distinct().toList();
        int rest = each.size() - MOST_NAMED;
        return rest <= 1
                ? String.join(", ", each)
                : String.join(", ", each.subList(0, MOST_NAMED)) + " and " + rest + " more";
    }
}
