package buildup.shared.document;

import buildup.shared.notice.Mark;
import java.util.List;

/** A list, in the order of the file. */
public record Sequence(List<Node> items, Mark mark) implements Node {

    public Sequence {
        items = List.copyOf(items);
    }
}
