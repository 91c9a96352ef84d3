package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Form;
import buildup.shared.document.edit.TextPart.Group;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A list or mapping in lines, and those round it.
 *
 * @param depth how many are round it
 * @param column where it stands in the text as it is
 */
record Nest(Group group, Optional<Nest> outer, int depth, int column) {

    /** Where it is to stand. */
    int tidyColumn() {
        return 2 * depth;
    }

    /** Where what an entry of it holds begins, when it is in the same line or in brackets. */
    int contentColumn() {
        return tidyColumn() + (group.mapping() ? 0 : 2);
    }

    /** This one and those round it, from within. */
    Stream<Nest> outward() {
        return Stream.iterate(Optional.of(this), Optional::isPresent, nest -> nest.flatMap(Nest::outer))
                .map(Optional::get);
    }

    /** The innermost of them round each token; round a comment it is that of the next token, if one follows. */
    static List<Optional<Nest>> round(List<Token> tokens, ParsedText source) {
        Iterator<Group> groups = source.root()
                .all()
                .filter(part -> part instanceof Group group && group.form() == Form.BLOCK)
                .map(Group.class::cast)
                .iterator();
        List<Optional<Nest>> round = new ArrayList<>();
        List<Integer> comments = new ArrayList<>();
        Optional<Nest> open = Optional.empty();
        Optional<Group> next = next(groups);
        for (Token token : tokens) {
            if (token.sort() == Token.Sort.COMMENT) {
                comments.add(round.size());
                round.add(Optional.empty());
                continue;
            }
            int at = token.from();
            while (open.isPresent()
                    && open.get().group().end() <= at
                    && open.get().depth() > 0) {
                open = open.get().outer();
            }
            while (next.isPresent() && next.get().start() <= at) {
                Group group = next.get();
                int depth = open.map(nest -> nest.depth() + 1).orElse(0);
                open = Optional.of(new Nest(group, open, depth, source.column(group.start())));
                next = next(groups);
            }
            Optional<Nest> now = open;
            comments.forEach(comment -> round.set(comment, now));
            comments.clear();
            round.add(open);
        }
        return round;
    }

    private static Optional<Group> next(Iterator<Group> groups) {
        return groups.hasNext() ? Optional.of(groups.next()) : Optional.empty();
    }
}
