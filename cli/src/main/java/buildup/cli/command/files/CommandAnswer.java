package buildup.cli.command.files;

import buildup.cli.page.TellPage;
import buildup.cli.report.NoticeText;
import buildup.cli.report.TextReport;
import buildup.cli.table.Table;
import buildup.cli.tell.Json;
import buildup.cli.tell.SheetCsv;
import buildup.cli.tell.TellText;
import buildup.cli.tell.Telling;
import buildup.shared.notice.Notice;
import java.util.List;
import java.util.Optional;

/**
 * An answer with what was said of it, in the formats that every answer has.
 *
 * @param place where people look for what has no place of its own: a file, or the words of the command line
 * @param file what programs are told for it; absent when it is none
 */
public record CommandAnswer(Telling telling, String place, Optional<String> file, List<Notice> notices) {
    /** Copies the list. */
    public CommandAnswer {
        notices = List.copyOf(notices);
    }

    /** What was told of a document. */
    public static CommandAnswer of(Telling telling, String file, List<Notice> notices) {
        return new CommandAnswer(telling, file, Optional.of(file), notices);
    }

    /**
     * As text.
     *
     * @param kept in a file: what is said beside a text on the screen stands behind it there
     */
    public String text(boolean kept) {
        return TellText.write(telling)
                + (kept ? TextReport.notices(NoticeText.write(notices, place, telling.unit())) : "");
    }

    /** As an object. */
    public Json object() {
        return telling.json(notices, file);
    }

    /** As an object, written out. */
    public String json() {
        return object().written() + "\n";
    }

    /** Rows for a spreadsheet; nothing when the answer was refused. */
    public String csv() {
        return csv(List.of(this));
    }

    /** The rows of several, one below the other, in the unit of the first. */
    public static String csv(List<CommandAnswer> all) {
        return new SheetCsv(all.get(0).telling.printer())
                .rows(all.stream().flatMap(one -> one.telling.list().stream()).toList());
    }

    /** As a page. */
    public String html() {
        return html(List.of(this), List.of());
    }

    /**
     * Several beside each other.
     *
     * @param differences what stands above them
     */
    public static String html(List<CommandAnswer> all, List<Table> differences) {
        List<TellPage.Part> parts = all.stream()
                .map(one -> new TellPage.Part(
                        one.telling, one.place, NoticeText.said(one.notices, one.place, one.telling.unit())))
                .toList();
        return TellPage.of(parts, differences);
    }
}
