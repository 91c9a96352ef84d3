package buildup.cli.page;

import buildup.cli.drawing.judge.ClearanceDrawing;
import buildup.cli.drawing.judge.ProportionDrawing;
import buildup.cli.scene.Scene;
import buildup.cli.scene.TextMeasure;
import buildup.engine.Answers;
import buildup.engine.judge.clearance.Clearance;
import java.util.Optional;

/** The stack beside the books, and what it keeps clear of, where the document asks. */
record Judged(Answers known, String key, TextMeasure measure) {
    String html() {
        return picture(
                        "proportion",
                        "Beside the books",
                        ProportionDrawing.of(known.section(), known.proportion(), measure),
                        "A reading beside the books, no judgment of taste.")
                + picture(
                        "clearance",
                        "What stays clear",
                        ClearanceDrawing.of(known.section(), known.clearance(), measure),
                        known.clearance().firebox().isPresent()
                                ? Clearance.CAUTION
                                : "Places that are to be kept clear.");
    }

    private String picture(String kind, String title, Optional<Scene> scene, String caption) {
        return scene.map(found ->
                        "<section class=\"judged\" aria-labelledby=\"" + key + "-" + kind + "-title\">\n<h2 id=\""
                                + key + "-" + kind + "-title\">" + title + "</h2>\n<figure class=\"" + kind
                                + "\"><div class=\"drawing\">"
                                + new PagePicture(key + "-" + kind).svg(found) + "</div>\n<figcaption>" + caption
                                + "</figcaption></figure>\n</section>\n")
                .orElse("");
    }
}
