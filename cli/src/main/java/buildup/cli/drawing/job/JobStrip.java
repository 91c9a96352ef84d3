package buildup.cli.drawing.job;

import buildup.cli.drawing.paper.TitleCell;
import buildup.cli.drawing.paper.TitleStrip;
import buildup.engine.section.heading.JobSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The title strip of a job: as many rows as there is something to say. */
record JobStrip(String stack, JobSheet job) {
    TitleStrip strip() {
        List<List<TitleCell>> rows = new ArrayList<>();
        List<TitleCell> whose = new ArrayList<>();
        add(whose, "job", job.name(), 2.2);
        add(whose, "client", job.client(), 1.8);
        add(whose, "address", job.address(), 2.4);
        List<TitleCell> which = new ArrayList<>();
        add(which, "number", job.number(), 1);
        add(which, "revision", job.inForce(), 0.7);
        add(which, "date", job.date(), 1.2);
        add(which, "drawn by", job.drawnBy(), 1.2);
        add(which, "checked by", job.checkedBy(), 1.2);
        add(which, "note", job.scaleNote(), 2.4);
        for (List<TitleCell> row : List.of(whose, which)) {
            if (!row.isEmpty()) {
                rows.add(row);
            }
        }
        rows.add(List.of(new TitleCell("stack", stack, 2.4)));
        return new TitleStrip(rows);
    }

    private static void add(List<TitleCell> row, String caption, Optional<String> text, double share) {
        text.ifPresent(words -> row.add(new TitleCell(caption, words, share)));
    }
}
