package buildup.cli.drawing.sheet;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.draft.WoodDrawing;
import buildup.cli.drawing.draft.Words;
import buildup.cli.scene.About;
import buildup.cli.scene.Group;
import buildup.cli.scene.Label;
import buildup.cli.scene.SceneItem;
import buildup.cli.scene.Subject;
import buildup.cli.scene.TextMeasure;
import buildup.engine.section.stack.Stack;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Title, notes, what the hatches mean, and the level line by which full size is checked. */
public final class TitleBlock {
    private static final double WIDTH = 4.3;
    private static final double LINE = 0.19;
    private static final double SWATCH_WIDE = 0.34;
    private static final double SWATCH_HIGH = 0.16;

    private final TextMeasure measure;
    private final List<SceneItem> items = new ArrayList<>();
    private double y;

    private TitleBlock(TextMeasure measure) {
        this.measure = measure;
    }

    /**
     * The title block of a stack, with what each look stands for and the notes.
     *
     * @param check whether it holds the level line by which full size is checked
     */
    public static Block of(
            TextMeasure measure, Stack stack, Map<WoodDrawing.Look, String> looks, List<String> notes, boolean check) {
        TitleBlock block = new TitleBlock(measure);
        block.lines(stack.title().isBlank() ? "Untitled stack" : stack.title(), Drafting.TITLE, 0.3, 3);
        block.lines("Section, full size. Sizes in " + Drafting.units(stack) + ".", Drafting.TEXT, LINE, 2);
        if (check) {
            block.y -= 0.38;
            block.items.addAll(FullSize.of(Drafting.printer(stack).metric()).level(measure, new Point(0.02, block.y)));
            block.y -= 0.14;
        }
        block.key(looks);
        notes.forEach(note -> block.lines(note, Drafting.TEXT, LINE, 3));
        return Block.of(new Group("title", block.items));
    }

    private void lines(String text, double size, double pitch, int most) {
        for (String line : Words.lines(measure, text, size, WIDTH, most)) {
            y -= pitch;
            items.add(Label.of(measure, line, new Point(0, y), size, Label.Anchor.START));
        }
    }

    private void key(Map<WoodDrawing.Look, String> looks) {
        double x = 0;
        y -= SWATCH_HIGH + 0.06;
        for (Map.Entry<WoodDrawing.Look, String> entry : looks.entrySet()) {
            WoodDrawing.Look look = entry.getKey();
            String word = entry.getValue();
            double width = SWATCH_WIDE + 0.07 + measure.width(word, Drafting.TEXT);
            if (x > 0 && x + width > WIDTH) {
                x = 0;
                y -= SWATCH_HIGH + 0.08;
            }
            List<Segment> ring = Outline.rectangle(new Box(x, y, x + SWATCH_WIDE, y + SWATCH_HIGH))
                    .segments();
            items.addAll(look.fill(Optional.empty(), Optional.empty(), ring, new Point(x, y)));
            items.add(new About(Subject.NOTES, List.of(look.edge(ring, true))));
            items.add(Label.of(
                    measure, word, new Point(x + SWATCH_WIDE + 0.07, y + 0.035), Drafting.TEXT, Label.Anchor.START));
            x += width + 0.2;
        }
        y -= 0.02;
    }
}
