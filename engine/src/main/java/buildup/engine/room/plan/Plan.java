package buildup.engine.room.plan;

import buildup.engine.section.stack.Stack;
import buildup.shared.document.Fields;
import buildup.shared.notice.Notices;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The runs of a job; none when the document holds no plan. */
public record Plan(List<WallRun> runs) {
    public Plan {
        runs = List.copyOf(runs);
    }

    /** Reads {@code plan:}; what cannot be read is refused and left out. */
    public static Plan read(Stack stack, Fields root, Notices notices) {
        return new Plan(new PlanReader(stack, notices).read(root));
    }

    /** Those of some pieces that run along a stretch whose wall is masonry. */
    public Set<String> onMasonry(Collection<String> pieces) {
        return pieces.stream()
                .filter(piece -> runs.stream()
                        .filter(run -> !run.opening())
                        .flatMap(run -> run.stretches().stream())
                        .filter(stretch -> stretch.carries(piece))
                        .anyMatch(stretch -> stretch.framing().masonry()))
                .collect(Collectors.toSet());
    }

    /** Whether no run was given. */
    public boolean isEmpty() {
        return runs.isEmpty();
    }
}
