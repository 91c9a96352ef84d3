package buildup.cli.drawing.mill;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.sheet.Legend;
import buildup.cli.drawing.sheet.PictureSheet;
import buildup.cli.scene.Group;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.shared.figure.Figure;
import java.util.ArrayList;
import java.util.List;

/** The sheet of one profile for who runs it: full size, with its dimensions, and below what is said of it. */
public final class ProfileSheet {
    private ProfileSheet() {}

    /**
     * The sheet.
     *
     * @param said of it beside what the picture shows, a sentence each
     * @param margin round it, in
     */
    public static Scene of(RunProfile run, List<String> said, double margin) {
        String name = run.profile().name();
        List<SceneItem> items = new ArrayList<>(run.items());
        Legend legend = new Legend(run.measure(), Drafting.TEXT)
                .title(name)
                .text("As it is run, flat on its back, full size; sizes in "
                        + (run.printer().metric() ? "millimeters" : "inches") + ". Finished "
                        + length(run, run.profile().thickness()) + " x "
                        + length(run, run.profile().width()) + ".");
        run.words().forEach(words -> legend.text(run.printer().print(words)));
        said.forEach(legend::text);
        Group below = legend.group();
        items.add(PictureSheet.below(items, below, 0.3));
        return PictureSheet.around(name, "A profile as it is run, at full size.", items, margin);
    }

    private static String length(RunProfile run, double inches) {
        return run.printer().bare(Figure.length(inches));
    }
}
