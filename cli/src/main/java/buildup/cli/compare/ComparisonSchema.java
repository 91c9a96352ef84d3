package buildup.cli.compare;

import buildup.cli.report.ReportSchema;
import buildup.cli.tell.FileSchema;
import buildup.cli.tell.Json;
import buildup.cli.tell.Schema;

/** The schema of what {@link ComparisonJson} writes. */
public final class ComparisonSchema {
    /** Asked for by its name. */
    public static final Schema SCHEMA = new Schema("comparison", ComparisonSchema::schema);

    private ComparisonSchema() {}

    private static Json schema() {
        return FileSchema.ofTwo(SCHEMA.name(), "Report of two stacks beside each other", ReportSchema.content());
    }
}
