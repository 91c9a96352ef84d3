package buildup.shared.notice;

import buildup.shared.edit.Edit;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.length.LengthUnit;
import java.util.List;

/**
 * Notices as words, in the unit of the document. Only the edge of the program calls it.
 *
 * @param printer of the figures in them
 */
public record NoticeWords(FigurePrinter printer) {
    /** Reads inches. */
    public static final NoticeWords INCHES = new NoticeWords(FigurePrinter.INCHES);

    /** For a document in that unit. */
    public static NoticeWords in(LengthUnit unit) {
        return new NoticeWords(new FigurePrinter(unit));
    }

    /** What is the matter, in a sentence. */
    public String message(Notice notice) {
        return printer.print(notice.sentence());
    }

    /** One way out; empty when nothing needs doing. */
    public String cure(Notice notice) {
        return notice.cure().map(printer::print).orElse("");
    }

    /** The way out as edits of the document, sizes as they are told; none where a person has to decide. */
    public List<Edit> edits(Notice notice) {
        return notice.changes().stream().map(change -> change.edit(printer)).toList();
    }
}
