package buildup.engine.section.stack;

import buildup.shared.document.Fields;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Sequence;
import buildup.shared.figure.Figure;
import buildup.shared.notice.Notices;
import java.util.List;

/**
 * How much a block of the document may hold. What is asked for each piece from each eye, or in each light, grows with both; a
 * page of it is to open, and a run is to end while one looks on.
 */
final class BlockBounds {
    private record Bound(String key, int most) {}

    private static final List<Bound> BOUNDS = List.of(
            new Bound("eyes", 50),
            new Bound("lights", 50),
            new Bound("approach", 50),
            new Bound("keep-clear", 100),
            new Bound("loads", 500),
            new Bound("must", 500),
            new Bound("sizes", 1000));

    private BlockBounds() {}

    /** Whether each holds so little that it is read; a refusal for each that does not. */
    static boolean hold(Fields root, Notices notices) {
        boolean hold = true;
        for (Bound bound : BOUNDS) {
            int count = root.node(bound.key()).map(BlockBounds::count).orElse(0);
            if (count > bound.most()) {
                hold = false;
                notices.add(StackNotices.MANY_ENTRIES
                        .with("key", bound.key())
                        .with("count", Figure.count(count))
                        .with("most", Figure.count(bound.most()))
                        .at(root.mark(bound.key())));
            }
        }
        return hold;
    }

    private static int count(Node node) {
        if (node instanceof Sequence list) {
            return list.items().size();
        }
        return node instanceof Mapping mapping ? mapping.entries().size() : 0;
    }
}
