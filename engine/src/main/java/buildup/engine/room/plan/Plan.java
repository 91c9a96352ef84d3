package buildup.engine.room.plan;

import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.util.List;

/** The runs of a job; none when the document holds no plan. */
public record Plan(List<WallRun> runs) {
    public Plan {
        runs = List.copyOf(runs);
    }

    /** Reads {@code plan:}; what cannot be read is refused and left out. */
    public static Plan read(Stack stack, Fields root, Notices notices) {
        return new Plan(new PlanReader(stack, notices).read(root));
    }

    /** Whether no run was given. */
    public boolean isEmpty() {
        return runs.isEmpty();
    }
}
