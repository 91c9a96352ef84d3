package buildup.catalog.family;

import buildup.shared.length.Angle;
import buildup.shared.length.Length;
import java.util.List;
import java.util.Optional;

/**
 * One shape in any size.
 *
 * @param kind the trade's word for it ("crown", "bed")
 * @param about one line for a list
 * @param sizes what its sizes are called, in the order in which they are asked for ("projection", "height")
 * @param usual the sizes that are commonly run, each as long as {@code sizes}
 * @param spring for a sprung molding, how it stands
 */
public record Family(
        String name, String kind, String about, List<String> sizes, List<List<Length>> usual, Optional<Spring> spring) {

    /**
     * How a sprung molding stands in the corner of wall and ceiling.
     *
     * @param angle between its back and the wall
     * @param wallEdge square edge at the wall, measured square to the face
     * @param ceilingEdge square edge at the ceiling
     */
    public record Spring(Angle angle, Length wallEdge, Length ceilingEdge) {}

    public Family {
        sizes = List.copyOf(sizes);
        usual = usual.stream().map(List::copyOf).toList();
    }
}
