package buildup.cli.drawing.paper;

import buildup.cli.scene.Scene;
import buildup.cli.scene.SceneItem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A page before it is known how many there are.
 *
 * @param view what it shows
 * @param part which part of a picture it is, if of one that takes several pages
 * @param scale in words
 * @param content in of paper from the lower left corner
 */
public record PaperPage(
        PageFrame frame, PageFrame.Use use, String view, Optional<String> part, String scale, List<SceneItem> content) {
    static final String FULL_SIZE = "full size";

    /** What is on the page says its scale. */
    static final String AS_TOLD = "as told";

    /** Copies the list. */
    public PaperPage {
        content = List.copyOf(content);
    }

    /**
     * The page as it is printed.
     *
     * @param number from 1
     * @param of how many there are
     */
    public Scene scene(String title, int number, int of) {
        List<TitleCell> cells = new ArrayList<>();
        cells.add(new TitleCell("drawing", part.map(one -> view + ", " + one).orElse(view), 2.4));
        cells.add(new TitleCell("scale", scale, 0.9));
        cells.add(new TitleCell("sheet", number + " of " + of, 0.7));
        List<SceneItem> items = new ArrayList<>(content);
        items.addAll(frame.items(use, cells));
        return new Scene(
                title + ", " + view,
                "Sheet " + number + " of " + of + ".",
                frame.paper().width(),
                frame.paper().height(),
                items);
    }

    /** All of them, numbered. */
    public static List<Scene> scenes(String title, List<PaperPage> pages) {
        List<Scene> scenes = new ArrayList<>();
        for (PaperPage page : pages) {
            scenes.add(page.scene(title, scenes.size() + 1, pages.size()));
        }
        return scenes;
    }
}
