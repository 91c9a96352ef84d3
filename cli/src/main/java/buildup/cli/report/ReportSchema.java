package buildup.cli.report;

import buildup.catalog.Catalog;
import buildup.cli.tell.FileSchema;
import buildup.cli.tell.Json;
import buildup.cli.tell.Schema;
import buildup.engine.Answer;
import buildup.engine.Sheets;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.notice.Notices;
import buildup.shared.sheet.Sheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The schema of what {@link JsonReport} writes. */
public final class ReportSchema {
    /** Asked for by its name. */
    public static final Schema SCHEMA = new Schema("report", ReportSchema::schema);

    /** A stack that asks for as little as can be: every report holds what is known of it. */
    private static final String LEAST = "pieces: [{ name: board, profile: board 3/4 x 3-1/2, back: wall, bottom: 0 }]";

    private ReportSchema() {}

    private static Json schema() {
        return FileSchema.of(SCHEMA.name(), "Report of one stack", content());
    }

    /** The same for a report that lies within another file. */
    public static Json content() {
        return FileSchema.content(blocks(), notices());
    }

    private static List<Sheet> blocks() {
        return least().known().map(Sheets::of).orElseThrow();
    }

    private static Sheet notices() {
        return NoticeSheet.of(List.of(), Optional.empty());
    }

    private static Answer least() {
        Notices notices = new Notices();
        return DocumentReader.read("least.yaml", LEAST.getBytes(StandardCharsets.UTF_8), notices)
                .map(document -> Answer.of(document, Catalog.builtIn()))
                .orElseThrow();
    }
}
