package buildup.cli.drawing.job;

import buildup.cli.drawing.draft.Drafting;
import buildup.cli.drawing.judge.ClearanceDrawing;
import buildup.cli.drawing.judge.ProportionDrawing;
import buildup.cli.drawing.paper.PageFrame;
import buildup.cli.drawing.paper.Paper;
import buildup.cli.drawing.paper.PaperPage;
import buildup.cli.drawing.room.WallsDrawing;
import buildup.cli.report.TextReport;
import buildup.cli.scene.Scene;
import buildup.cli.table.Table;
import buildup.cli.tell.SheetTables;
import buildup.engine.Answers;
import buildup.engine.hold.tolerance.ToleranceSheets;
import buildup.engine.judge.clearance.ClearanceSheets;
import buildup.engine.judge.must.MustSheet;
import buildup.engine.judge.proportion.ProportionSheets;
import buildup.engine.room.surface.SurfaceSheets;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;

/** Sheets of what is judged beside the section: the room as measured, the books, fire, errors, and what has to be met. */
record JudgedPages(Answers known, FigurePrinter printer, Notices notices) {
    private static final double GAP = 0.2;

    /** The pages of one of these sheets; none where the stack does not ask. */
    List<PaperPage> pages(ShopSheet sheet, PageFrame frame) {
        List<PaperPage> pages = new ArrayList<>(pictures(sheet, frame));
        List<Table> tables = new SheetTables(printer)
                .of(sheets(sheet)).stream()
                        .filter(table -> !table.rows().isEmpty())
                        .toList();
        if (!tables.isEmpty()) {
            pages.addAll(Paper.flowing(frame, sheet.title(), "none", flow -> {
                flow.lines(sheet.title(), Drafting.TITLE);
                flow.lines(printer.legend(), Drafting.TEXT);
                flow.lines(TextReport.CAUTION, Drafting.TEXT);
                flow.gap(GAP);
                tables.forEach(table -> {
                    flow.table(table);
                    flow.gap(GAP);
                });
            }));
        }
        return pages;
    }

    private List<Sheet> sheets(ShopSheet sheet) {
        return switch (sheet) {
            case ROOM -> SurfaceSheets.of(known.surfaces());
            case PROPORTION -> ProportionSheets.of(known.section(), known.proportion());
            case CLEARANCE -> ClearanceSheets.of(known.section(), known.clearance());
            case TOLERANCE -> ToleranceSheets.of(known.section(), known.errors());
            case MUST -> List.of(MustSheet.of(known.must()));
            default -> List.of();
        };
    }

    private List<PaperPage> pictures(ShopSheet sheet, PageFrame frame) {
        return switch (sheet) {
            case ROOM ->
                WallsDrawing.of(known.section().stack(), known.surfaces(), frame.measure()).stream()
                        .flatMap(scene -> Paper.asDrawn(frame, sheet.title(), scene, notices).stream())
                        .toList();
            case PROPORTION -> proportion(frame);
            case CLEARANCE -> clearance(sheet, frame);
            default -> List.of();
        };
    }

    private List<PaperPage> clearance(ShopSheet sheet, PageFrame frame) {
        if (!ClearanceDrawing.isAsked(known.clearance())) {
            return List.of();
        }
        List<PaperPage> pages = new ArrayList<>();
        pages.add(Paper.scaled(
                frame,
                sheet.title(),
                smaller -> ClearanceDrawing.forScale(known.section(), known.clearance(), smaller, frame.measure())));
        ClearanceDrawing.front(known.section(), known.clearance(), frame.measure())
                .ifPresent(scene -> pages.addAll(Paper.asDrawn(frame, "Fire from the front", scene, notices)));
        return pages;
    }

    /** The largest picture that a page holds, else the smallest in parts. */
    private List<PaperPage> proportion(PageFrame frame) {
        List<PaperPage> pages = List.of();
        Notices said = new Notices();
        for (Scene scene : ProportionDrawing.everySize(known.section(), known.proportion(), frame.measure())
                .toList()) {
            said = new Notices();
            pages = Paper.asDrawn(frame, "Beside the books", scene, said);
            if (pages.size() == 1) {
                break;
            }
        }
        notices.addAll(said.sorted());
        return pages;
    }
}
