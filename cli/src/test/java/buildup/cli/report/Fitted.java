package buildup.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.room.plan.Plan;
import buildup.engine.room.run.Coving;
import buildup.engine.room.run.Job;
import buildup.engine.room.run.Runs;
import buildup.engine.section.compose.Composer;
import buildup.engine.section.compose.Section;
import buildup.engine.section.placing.StackPlacing;
import buildup.engine.section.stack.Stack;
import buildup.engine.section.stack.StackReader;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A stack document taken round the corners of its plan. */
public record Fitted(Job job, List<Coving> covings) {
    public static Fitted of(String yaml) {
        Notices notices = new Notices();
        Document document = DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow();
        Stack stack = StackReader.read(document, Catalog.builtIn(), new Claims(), notices);
        Section section = Composer.compose(stack, StackPlacing.place(stack, notices), notices);
        Fields root = Fields.of(document, new Claims(), notices, stack.lengths());
        Job job = Runs.of(section, Plan.read(stack, root, notices), notices);
        List<Coving> covings = Coving.read(stack, root, notices);
        assertThat(notices.refused()).as(notices.sorted().toString()).isFalse();
        return new Fitted(job, covings);
    }
}
