package buildup.cli.command.search;

import buildup.shared.document.Document;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.notice.Mark;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Places of a document to which options of the command line have added: what stands in the file keeps its line there, and
 * what an option has given is told by the name of the option.
 */
final class OptionMarks {
    private final IdentityHashMap<Node, Node> made = new IdentityHashMap<>();

    private OptionMarks() {}

    /**
     * The document with those places.
     *
     * @param edited with what the options add, at the places that it has in a text that nobody sees
     * @param written as it stands in the file
     * @param options by a key at the root, the option that adds below it
     * @param other the option that adds anywhere else
     */
    static Document of(Document edited, Document written, Map<String, String> options, String other) {
        OptionMarks marks = new OptionMarks();
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : edited.root().entries()) {
            Mark mark = new Mark(options.getOrDefault(entry.key().text(), other), Mark.NO_LINE, Mark.NO_LINE);
            entries.add(marks.entry(entry, Optional.of(written.root()), mark));
        }
        return new Document(edited.file(), new Mapping(entries, written.root().mark()));
    }

    private Entry entry(Entry entry, Optional<Mapping> written, Mark option) {
        Optional<Entry> before = written.flatMap(keys -> keys.entries().stream()
                .filter(one -> one.key().text().equals(entry.key().text()))
                .findFirst());
        return new Entry(
                new Scalar(
                        entry.key().text(), before.map(one -> one.key().mark()).orElse(option)),
                node(entry.value(), before.map(Entry::value), option));
    }

    /** One that stands at several places of the document stays one. */
    private Node node(Node edited, Optional<Node> written, Mark option) {
        Node known = made.get(edited);
        if (known != null) {
            return known;
        }
        Node marked = marked(edited, written, option);
        made.put(edited, marked);
        return marked;
    }

    private Node marked(Node edited, Optional<Node> written, Mark option) {
        if (edited instanceof Scalar scalar) {
            Mark mark = written.filter(Scalar.class::isInstance)
                    .map(Scalar.class::cast)
                    .filter(before -> before.text().equals(scalar.text()))
                    .map(Scalar::mark)
                    .orElse(option);
            return new Scalar(scalar.text(), mark);
        }
        Mark mark = written.map(Node::mark).orElse(option);
        if (edited instanceof Sequence list) {
            List<Node> before = written.filter(Sequence.class::isInstance)
                    .map(one -> ((Sequence) one).items())
                    // a list of one may be written as the one alone
                    .orElseGet(() -> written.stream().toList());
            List<Node> items = new ArrayList<>();
            for (int i = 0; i < list.items().size(); i++) {
                items.add(node(
                        list.items().get(i),
                        i < before.size() ? Optional.of(before.get(i)) : Optional.empty(),
                        option));
            }
            return new Sequence(items, mark);
        }
        Optional<Mapping> before = written.filter(Mapping.class::isInstance).map(Mapping.class::cast);
        List<Entry> entries = new ArrayList<>();
        ((Mapping) edited).entries().forEach(entry -> entries.add(entry(entry, before, option)));
        return new Mapping(entries, mark);
    }
}
