package buildup.cli.page;

import buildup.cli.drawing.section.ScreenDrawing;
import buildup.cli.scene.TextMeasure;
import buildup.cli.table.Html;
import buildup.engine.Answer;
import buildup.shared.length.LengthUnit;

/**
 * One stack on the page.
 *
 * @param key that begins every id of the part: a small letter, one of its own for each part of a document
 * @param title of the stack, as text
 * @param unit in which its document counts
 * @param body what is seen, as markup
 * @param data what the page's script works with, as JSON that may stand in markup; empty when no figures are known
 */
public record PageParts(String key, String title, LengthUnit unit, String body, String data) {
    /**
     * The part for an answer; when it holds no figures, what is wrong and nothing else.
     *
     * @param measure of the letters in the drawings; measuring is quick, making one is not
     */
    public static PageParts of(Answer answer, String key, TextMeasure measure) {
        String head = Heading.of(answer, key).html();
        return answer.known()
                .map(known -> {
                    ScreenDrawing drawing = ScreenDrawing.of(known.section(), measure);
                    String body = head
                            + new Figures(known, key).html()
                            + new Bench(known, key, measure).html(drawing)
                            + new Curves(known, key).html()
                            + new Judged(known, key, measure).html()
                            + new Tables(known, key).html();
                    return new PageParts(key, answer.title(), answer.unit(), body, StackData.of(known, drawing));
                })
                .orElseGet(() -> new PageParts(key, answer.title(), answer.unit(), head, ""));
    }

    /** The part as it stands in the document, and as it is exchanged. */
    public String html() {
        return "<article class=\"stack\" id=\"" + key + "\" aria-labelledby=\"" + key + "-title\">\n" + body
                + (data.isEmpty() ? "" : "<script type=\"application/json\" class=\"data\">" + data + "</script>\n")
                + "</article>\n";
    }

    /** The title as markup. */
    public String heading() {
        return Html.name(title);
    }
}
