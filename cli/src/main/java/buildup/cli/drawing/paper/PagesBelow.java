package buildup.cli.drawing.paper;

import buildup.cli.scene.LineStyle;
import buildup.cli.scene.Path;
import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import buildup.profiles.outline.Box;
import buildup.profiles.outline.Outline;
import java.util.ArrayList;
import java.util.List;

/** Pages one below the other on one sheet, for formats that hold one picture. */
public final class PagesBelow {
    private static final double GAP = 0.25;

    private PagesBelow() {}

    /** All of them, each with its edges drawn; a single page stays as it is. */
    public static Scene of(List<Scene> pages) {
        if (pages.size() == 1) {
            return pages.get(0);
        }
        double wide = pages.stream().mapToDouble(Scene::width).max().orElse(0);
        double high = pages.stream().mapToDouble(Scene::height).sum() + GAP * (pages.size() - 1);
        List<SceneItem> items = new ArrayList<>();
        double top = high;
        for (Scene page : pages) {
            double up = top - page.height();
            items.add(new Path(
                    Outline.rectangle(new Box(0, up, page.width(), top)).segments(), true, LineStyle.RULE));
            Unnamed.of(page.items()).forEach(item -> items.add(item.moved(0, up)));
            top = up - GAP;
        }
        return new Scene(pages.get(0).title(), pages.size() + " sheets, one below the other.", wide, high, items);
    }
}
