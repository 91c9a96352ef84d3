package buildup.engine.look.sight;

import buildup.engine.section.stack.Eye;
import java.util.List;

/** What one eye sees: one row for each member of the walk and one for each nailer. */
public record Sighting(Eye eye, List<SeenMember> members, List<Coverage> coverage) {
    public Sighting {
        members = List.copyOf(members);
        coverage = List.copyOf(coverage);
    }
}
