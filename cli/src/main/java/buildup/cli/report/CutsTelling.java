package buildup.cli.report;

import buildup.cli.tell.FileSchema;
import buildup.cli.tell.Schema;
import buildup.cli.tell.SheetCsv;
import buildup.cli.tell.Telling;
import buildup.engine.Cuts;
import buildup.engine.buy.BuySheets;
import buildup.engine.hold.framing.FramingSheets;
import buildup.engine.room.run.CutSheets;
import buildup.engine.room.sticks.CutList;
import buildup.engine.room.sticks.LengthSheets;
import buildup.engine.room.sticks.StickSheets;
import buildup.engine.room.surface.SurfaceSheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cuts of a stack, ready to be written. */
public final class CutsTelling {
    /** Of what programs are told of one stack; asked for by its name. */
    public static final Schema SCHEMA = new Schema(
            "cuts",
            () -> FileSchema.ofOneOrTwo(
                    "cuts",
                    "Cuts of one stack, or of two beside each other",
                    FileSchema.content(sheets(Optional.empty()), NoticeSheet.of(List.of(), Optional.empty()))));

    private CutsTelling() {}

    /** Lengths, saw settings, sticks and cost; none of them when the cuts are not known. */
    public static Telling of(Cuts cuts) {
        String title = cuts.answer().title();
        return cuts.known()
                .map(known -> new Telling(
                        title,
                        cuts.answer().unit(),
                        List.of(Phrase.of(new FigurePrinter(cuts.answer().unit()).legend())),
                        sheets(Optional.of(known)),
                        CutSheets.cautions(known.covings()),
                        Optional.of(LengthSheets.cutList(title, list(known)))))
                .orElseGet(() -> Telling.refused(title, cuts.answer().unit()));
    }

    /** What is bought, for a spreadsheet, under its title; nothing where no more than sticks are asked for. */
    public static String shopping(Cuts cuts) {
        return cuts.known()
                .map(known -> new SheetCsv(new FigurePrinter(cuts.answer().unit()))
                        .write(List.of(BuySheets.shopping(Optional.of(known.shopping())))))
                .orElse("");
    }

    private static CutList list(Cuts.Known known) {
        return known.lengths();
    }

    /** @param known absent for the columns alone */
    private static List<Sheet> sheets(Optional<Cuts.Known> known) {
        List<Sheet> sheets = new ArrayList<>(CutSheets.of(
                known.map(Cuts.Known::job), known.map(Cuts.Known::covings).orElse(List.of())));
        sheets.add(FramingSheets.cuts(
                known.map(one -> one.job().section()),
                known.map(Cuts.Known::blocks).orElse(List.of())));
        sheets.addAll(SurfaceSheets.sloped(known.map(Cuts.Known::sloped).orElse(List.of())));
        sheets.add(LengthSheets.labels(known.map(CutsTelling::list)).askedIf(known.isPresent()));
        sheets.addAll(StickSheets.of(known.flatMap(Cuts.Known::list)));
        sheets.addAll(BuySheets.of(known.map(Cuts.Known::shopping)));
        return List.copyOf(sheets);
    }
}
