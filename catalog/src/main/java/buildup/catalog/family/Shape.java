package buildup.catalog.family;

import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.length.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * A family with the words that draw it, not yet walked.
 *
 * @param derived lengths that follow from its sizes, in order, each usable in the next
 * @param words of the whole outline, or of a sprung molding's face; a plain face has none
 * @param unit of bare numbers in the words
 * @param builtIn whether its words are tested: what goes wrong is then the size asked for
 */
public record Shape(Family family, List<Derived> derived, Optional<Node> words, LengthUnit unit, boolean builtIn) {

    /** A length under {@code let}. */
    public record Derived(String name, Scalar text) {}
}
