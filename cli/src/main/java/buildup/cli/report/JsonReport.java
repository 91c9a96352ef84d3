package buildup.cli.report;

import buildup.cli.tell.Json;
import buildup.cli.tell.SheetJson;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Sheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeSheet;
import java.util.List;
import java.util.Optional;

/**
 * Everything known of one stack, for other programs: inches, square inches, degrees, pounds per foot, points as
 * {@code [x, y]}. {@link ReportSchema} says what each key means.
 */
public final class JsonReport {
    private JsonReport() {}

    /** The report; title, unit and notices alone when no figures are known. */
    public static String write(Answer answer) {
        return object(answer).written() + "\n";
    }

    /** The same as an object, to be put into another. */
    public static Json object(Answer answer) {
        Json json = new Json()
                .put("title", answer.title())
                .put("units", answer.unit().symbol());
        answer.known().ifPresent(known -> figures(json, known, answer.unit()));
        return json.put("notices", notices(answer.notices(), Optional.of(answer.file()), answer.unit()));
    }

    private static void figures(Json json, Answers known, LengthUnit unit) {
        new SheetJson(new FigurePrinter(unit)).put(json, Sheets.of(known));
    }

    /**
     * One object for each notice.
     *
     * @param file what is named where a notice has no place of its own
     */
    public static List<Json> notices(List<Notice> notices, Optional<String> file, LengthUnit unit) {
        return new SheetJson(new FigurePrinter(unit)).rows(NoticeSheet.of(notices, file));
    }
}
