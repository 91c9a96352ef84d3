package buildup.cli.report;

import buildup.cli.tell.SheetCsv;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Sheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything known of one stack for a spreadsheet, in the unit of its document. */
public final class CsvReport {
    private CsvReport() {}

    /** All sheets, notices last; nothing when no figures are known. */
    public static String write(Answer answer) {
        return answer.known().map(known -> write(answer, known)).orElse("");
    }

    private static String write(Answer answer, Answers known) {
        List<Sheet> sheets = new ArrayList<>(Sheets.of(known));
        sheets.add(NoticeSheet.of(answer.notices(), Optional.of(answer.file())));
        return new SheetCsv(new FigurePrinter(answer.unit())).write(sheets);
    }
}
