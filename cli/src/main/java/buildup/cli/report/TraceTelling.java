package buildup.cli.report;

import buildup.catalog.words.OutlineWords;
import buildup.cli.tell.FileSchema;
import buildup.cli.tell.Schema;
import buildup.cli.tell.Telling;
import buildup.profiles.trace.TraceSheets;
import buildup.profiles.trace.Traced;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Optional;

/** A tracing that has become a profile, ready to be written. */
public final class TraceTelling {
    /** Of what programs are told, asked for by its name. */
    public static final Schema SCHEMA = new Schema(
            "trace",
            () -> FileSchema.of(
                    "trace",
                    "A tracing as a profile, and how well it fits",
                    TraceSheets.of(Optional.empty()),
                    NoticeSheet.of(List.of(), Optional.empty())));

    private TraceTelling() {}

    /**
     * The profile, and how well it fits.
     *
     * @param name, kind as the catalog is to call it
     * @param unit in which it is told, also the sizes in its words
     */
    public static Telling of(String name, String kind, Traced traced, LengthUnit unit) {
        OutlineWords.Said said = OutlineWords.of(traced.outline(), unit);
        List<Sheet> sheets =
                TraceSheets.of(Optional.of(new TraceSheets.Named(name, kind, traced, said.front(), said.back())));
        return new Telling(
                name,
                unit,
                List.of(),
                sheets,
                List.of(Phrase.of(new FigurePrinter(unit).legend())),
                sheets.stream().filter(sheet -> sheet.key().equals("members")).findFirst());
    }
}
