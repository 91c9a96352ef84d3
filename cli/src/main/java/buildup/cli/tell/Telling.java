package buildup.cli.tell;

import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/**
 * An answer before it is written in one format or another.
 *
 * @param title over all of it; empty where its first table says what it is about
 * @param unit of its document
 * @param before sentences that stand before its tables
 * @param sheets the answer itself; none when it was refused
 * @param after sentences that stand behind its tables
 * @param list what a spreadsheet gets: its rows, with all that people read of them
 */
public record Telling(
        String title,
        LengthUnit unit,
        List<Phrase> before,
        List<Sheet> sheets,
        List<Phrase> after,
        Optional<Sheet> list) {
    /** Copies the lists. */
    public Telling {
        before = List.copyOf(before);
        sheets = List.copyOf(sheets);
        after = List.copyOf(after);
    }

    /** An answer that was refused. */
    public static Telling refused(String title, LengthUnit unit) {
        return new Telling(title, unit, List.of(), List.of(), List.of(), Optional.empty());
    }

    /** Figures in the unit of its document. */
    public FigurePrinter printer() {
        return new FigurePrinter(unit);
    }

    /**
     * As an object.
     *
     * @param notices what was said
     * @param file what is named where a notice has no place of its own
     */
    public Json json(List<Notice> notices, Optional<String> file) {
        Json json = new Json().put("title", title).put("units", unit.symbol());
        SheetJson written = new SheetJson(printer());
        written.put(json, sheets);
        return json.put("notices", written.rows(NoticeSheet.of(notices, file)));
    }
}
