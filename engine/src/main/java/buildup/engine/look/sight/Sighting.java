package buildup.engine.look.sight;

import buildup.engine.section.stack.Eye;
import java.util.List;
import java.util.Set;

/**
 * What one eye sees: one row for each member of the walk and one for each nailer.
 *
 * @param beyond the pieces of trim of which it sees something that is not on the walk
 */
public record Sighting(Eye eye, List<SeenMember> members, Set<Integer> beyond, List<Coverage> coverage) {
    public Sighting {
        members = List.copyOf(members);
        beyond = Set.copyOf(beyond);
        coverage = List.copyOf(coverage);
    }
}
