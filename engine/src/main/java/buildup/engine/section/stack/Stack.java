package buildup.engine.section.stack;

import buildup.shared.document.Fields;
import buildup.shared.length.LengthReader;
import buildup.shared.length.LengthUnit;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A stack document, read.
 *
 * @param unit of bare numbers, and of what is told about it
 * @param boardList the list that nominal sizes are taken from
 * @param lengths reads lengths in the document's unit and with its named sizes; questions read their own blocks with it
 * @param onMasonry names of the pieces behind which the plan has masonry, along one stretch or more
 */
public record Stack(
        String title,
        LengthUnit unit,
        String boardList,
        Space space,
        List<Eye> eyes,
        List<Light> lights,
        List<Piece> pieces,
        LengthReader lengths,
        Set<String> onMasonry) {
    /** The same in a job of which no plan is known. */
    public Stack(
            String title,
            LengthUnit unit,
            String boardList,
            Space space,
            List<Eye> eyes,
            List<Light> lights,
            List<Piece> pieces,
            LengthReader lengths) {
        this(title, unit, boardList, space, eyes, lights, pieces, lengths, Set.of());
    }

    /** Reads a height of a question's own block: a length over the datum, or from floor or ceiling. */
    public OptionalDouble level(Fields fields, String key, Notices notices) {
        return new RuleReader(space.floor(), space.ceiling(), notices).level(fields, key, Axis.UP);
    }

    /** Reads a rule of a question's own block: a place on an axis, which may hang on an edge of a piece. */
    public Optional<Rule> rule(Fields fields, String key, Axis axis, Notices notices) {
        return new RuleReader(space.floor(), space.ceiling(), notices).rule(fields, key, axis);
    }

    /** The same with these pieces. */
    public Stack with(List<Piece> others) {
        return new Stack(title, unit, boardList, space, eyes, lights, others, lengths, onMasonry);
    }

    /** The same, with masonry behind these pieces. */
    public Stack onMasonry(Set<String> names) {
        return new Stack(title, unit, boardList, space, eyes, lights, pieces, lengths, names);
    }

    public Stack {
        eyes = List.copyOf(eyes);
        lights = List.copyOf(lights);
        pieces = List.copyOf(pieces);
        onMasonry = Set.copyOf(onMasonry);
    }
}
