package buildup.cli.tell;

import buildup.cli.table.Display;
import buildup.cli.table.Table;
import buildup.cli.table.TextTable;
import buildup.shared.figure.Phrase;
import java.util.List;

/** An answer as plain text. */
public final class TellText {
    /** Columns that a text never exceeds. */
    public static final int WIDTH = 80;

    private final Telling telling;
    private final StringBuilder text = new StringBuilder();

    private TellText(Telling telling) {
        this.telling = telling;
    }

    /** The text, nothing when the answer was refused; a title that its first table bears is not said twice. */
    public static String write(Telling telling) {
        return telling.sheets().isEmpty() ? "" : new TellText(telling).written();
    }

    private String written() {
        List<Table> tables = new SheetTables(telling.printer()).of(telling.sheets());
        boolean said = !tables.isEmpty() && tables.get(0).title().equals(telling.title());
        if (!telling.title().isBlank() && !said) {
            line(telling.title());
        }
        telling.before().forEach(this::sentence);
        tables.forEach(table -> {
            gap();
            text.append(TextTable.write(table, WIDTH));
        });
        gap();
        telling.after().forEach(this::sentence);
        return text.toString();
    }

    private void gap() {
        if (!text.isEmpty()) {
            text.append('\n');
        }
    }

    private void sentence(Phrase phrase) {
        line(telling.printer().print(phrase));
    }

    private void line(String words) {
        Display.wrap(words, WIDTH).forEach(line -> text.append(line).append('\n'));
    }
}
