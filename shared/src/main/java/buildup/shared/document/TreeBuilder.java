package buildup.shared.document;

import buildup.shared.figure.Figure;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import buildup.shared.text.Marks;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/**
 * Builds the tree from the parser's events, without recursion: the library's own composer recurses and has no limit of
 * depth to set.
 */
final class TreeBuilder {

    private static final int DEEPEST_NEST = 50;
    private static final int MOST_ALIASES = 50;

    /** Nodes that aliases may stand for in all; a stack written by hand repeats a few dozen. */
    private static final long MOST_ALIASED_NODES = 50_000;

    /** @param size nodes in it, aliases counted in full */
    private record Anchored(Node node, long size) {}

    private record Open(Unfinished unfinished, Optional<Anchor> anchor, long nodesBefore) {}

    private final String file;
    private final Notices notices;
    private final Deque<Open> open = new ArrayDeque<>();
    private final Map<String, Anchored> anchors = new HashMap<>();
    private Optional<Node> root = Optional.empty();
    private long nodes;
    private int aliases;
    private long aliasedNodes;
    private int unseen;
    private Optional<Mark> firstUnseen = Optional.empty();

    TreeBuilder(String file, Notices notices) {
        this.file = file;
        this.notices = notices;
    }

    void take(Event event) throws DocumentRefused {
        Mark mark =
                event.getStartMark().map(place -> YamlFault.mark(file, place)).orElseGet(() -> new Mark(file, 1, 1));
        if (event instanceof DocumentStartEvent && root.isPresent()) {
            throw new DocumentRefused(DocumentNotices.SECOND_DOCUMENT.notice().at(mark));
        } else if (event instanceof CollectionStartEvent start) {
            begin(start, mark);
        } else if (event instanceof CollectionEndEvent) {
            Open done = open.pop();
            add(done.unfinished().node(), done.anchor(), nodes - done.nodesBefore());
        } else if (event instanceof AliasEvent alias) {
            repeat(alias.getAlias().getValue(), mark);
        } else if (event instanceof ScalarEvent scalar) {
            nodes++;
            add(new Scalar(seen(scalar.getValue(), mark), mark), scalar.getAnchor(), 1);
        }
    }

    /** The text without marks that nobody sees, which are counted. */
    private String seen(String text, Mark mark) {
        if (Marks.none(text)) {
            return text;
        }
        unseen++;
        firstUnseen = firstUnseen.or(() -> Optional.of(mark));
        return Marks.keepingLines(text);
    }

    private void begin(CollectionStartEvent start, Mark mark) throws DocumentRefused {
        if (open.size() >= DEEPEST_NEST) {
            throw new DocumentRefused(DocumentNotices.DEEP
                    .with("most", Figure.count(DEEPEST_NEST))
                    .at(mark));
        }
        Unfinished unfinished = start instanceof MappingStartEvent
                ? new Unfinished.OfMapping(mark, notices)
                : new Unfinished.OfSequence(mark, notices);
        open.push(new Open(unfinished, start.getAnchor(), nodes));
        nodes++;
    }

    private void add(Node node, Optional<Anchor> anchor, long size) throws DocumentRefused {
        anchor.ifPresent(name -> anchors.put(name.getValue(), new Anchored(node, size)));
        if (open.isEmpty()) {
            root = Optional.of(node);
        } else {
            open.element().unfinished().add(node);
        }
    }

    private void repeat(String name, Mark mark) throws DocumentRefused {
        Anchored anchored = anchors.get(name);
        if (anchored == null) {
            throw new DocumentRefused(
                    DocumentNotices.UNKNOWN_ALIAS.with("name", name).at(mark));
        }
        nodes += anchored.size();
        aliasedNodes += anchored.size();
        aliases++;
        if (aliases > MOST_ALIASES || aliasedNodes > MOST_ALIASED_NODES) {
            throw new DocumentRefused(DocumentNotices.REPEATS
                    .with("name", name)
                    .with("most", Figure.count(MOST_ALIASES))
                    .with("entries", Figure.count(MOST_ALIASED_NODES))
                    .at(mark));
        }
        add(anchored.node(), Optional.empty(), anchored.size());
    }

    /** The whole document, which must be a mapping. */
    Mapping root() throws DocumentRefused {
        firstUnseen.ifPresent(mark -> notices.add(
                DocumentNotices.UNSEEN.with("count", Figure.count(unseen)).at(mark)));
        Node node = root.orElseGet(() -> new Scalar("", new Mark(file, 1, 1)));
        if (node instanceof Mapping mapping) {
            return mapping;
        }
        if (node instanceof Scalar scalar && scalar.text().isBlank()) {
            throw new DocumentRefused(DocumentNotices.EMPTY.with("file", file).at(new Mark(file, 1, 1)));
        }
        throw new DocumentRefused(DocumentNotices.NO_KEYS.with("file", file).at(node.mark()));
    }
}
