package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Form;
import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Item;
import buildup.shared.document.edit.TextPart.Style;
import buildup.shared.document.edit.TextPart.Word;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Finds the parts of a YAML text. The parser gives where parts begin and roughly where they end; the rest is looked up. */
final class PartReader {

    /** Deeper than any document that its reader takes, and shallow enough to be walked by calls. */
    private static final int DEEPEST_NEST = 60;

    private static final LoadSettings SETTINGS =
            LoadSettings.builder().setCodePointLimit(Integer.MAX_VALUE).build();

    private final ParsedText lines;
    private final int[] offsets;
    private final Deque<Open> open = new ArrayDeque<>();
    private final List<TextPart> roots = new ArrayList<>();

    private PartReader(String text) {
        this.lines = new ParsedText(text, new Group(true, Form.BLOCK, List.of(), 0, 0, Optional.empty()));
        this.offsets = text.codePointCount(0, text.length()) == text.length() ? new int[0] : offsets(text);
    }

    /** The one part that the text holds; nothing if it is no YAML, is empty, holds several or a key that is no value. */
    static Optional<TextPart> read(String text) {
        PartReader reader = new PartReader(text);
        int documents = 0;
        try {
            for (Event event : new Parse(SETTINGS).parseString(text)) {
                documents += event instanceof DocumentStartEvent ? 1 : 0;
                reader.take(event);
            }
        } catch (YamlEngineException | IllegalStateException faulty) {
            return Optional.empty();
        }
        return documents == 1 && reader.roots.size() == 1 ? Optional.of(reader.roots.get(0)) : Optional.empty();
    }

    private static int[] offsets(String text) {
        int[] offsets = new int[text.codePointCount(0, text.length()) + 1];
        int at = 0;
        for (int i = 0; i < offsets.length - 1; i++) {
            offsets[i] = at;
            at += Character.charCount(text.codePointAt(at));
        }
        offsets[offsets.length - 1] = at;
        return offsets;
    }

    private int place(Optional<Mark> mark) {
        int index = mark.map(Mark::getIndex).orElse(0);
        return offsets.length == 0 ? index : offsets[index];
    }

    private void take(Event event) {
        int from = place(event.getStartMark());
        int end = place(event.getEndMark());
        if (event instanceof CollectionStartEvent start) {
            boolean marked = start.getAnchor().isPresent() || start.getTag().isPresent();
            int begin = marked ? behindMarks(from) : from;
            char first = lines.at(begin);
            boolean mapping = start instanceof MappingStartEvent;
            Form form = !start.isFlow() ? Form.BLOCK : first == (mapping ? '{' : '[') ? Form.FLOW : Form.BARE;
            if (open.size() == DEEPEST_NEST) {
                throw new IllegalStateException("nested too deep");
            }
            open.push(new Open(mapping, form, from, begin, anchor(start)));
        } else if (event instanceof CollectionEndEvent) {
            Open done = open.pop();
            add(done.group(end), done.from);
        } else if (event instanceof AliasEvent alias) {
            add(new TextPart.Repeat(alias.getAlias().getValue(), from, end), from);
        } else if (event instanceof ScalarEvent scalar) {
            add(word(scalar, from, end), from);
        }
    }

    private static Optional<String> anchor(NodeEvent event) {
        return event.getAnchor().map(org.snakeyaml.engine.v2.common.Anchor::getValue);
    }

    private Word word(ScalarEvent scalar, int from, int end) {
        boolean marked = scalar.getAnchor().isPresent() || scalar.getTag().isPresent();
        int start = marked ? Math.min(behindMarks(from), end) : from;
        Style style = switch (scalar.getScalarStyle()) {
            case SINGLE_QUOTED -> Style.SINGLE;
            case DOUBLE_QUOTED -> Style.DOUBLE;
            case LITERAL, FOLDED -> keeps(start) ? Style.KEPT_LINES : Style.LINES;
            default -> Style.PLAIN;
        };
        int last = switch (style) {
            case LINES -> endOfLines(start, end);
            case KEPT_LINES -> lines.beforeBreak(end);
            default -> end;
        };
        return new Word(scalar.getValue(), style, start, last, anchor(scalar));
    }

    /** Behind {@code &name} and {@code !!tag} and the space that follows. */
    private int behindMarks(int from) {
        int at = from;
        while (lines.at(at) == '&' || lines.at(at) == '!') {
            while (!ParsedText.isBlank(lines.at(at))
                    && !ParsedText.isBreak(lines.at(at))
                    && at < lines.text().length()) {
                at++;
            }
            at = lines.behindSpace(at);
        }
        return at;
    }

    /** Whether the head of lines has a plus sign. */
    private boolean keeps(int start) {
        return lines.text()
                        .substring(start, lines.lineEnd(start))
                        .split("#", 2)[0]
                        .indexOf('+')
                > 0;
    }

    /** The end of the last line that is not blank. */
    private int endOfLines(int start, int end) {
        int at = lines.beforeBreak(end);
        while (at > start && lines.text().substring(lines.lineStart(at), at).isBlank()) {
            at = lines.beforeBreak(lines.lineStart(at));
        }
        return at;
    }

    private void add(TextPart part, int from) {
        if (open.isEmpty()) {
            roots.add(part);
        } else {
            open.element().add(part, from);
        }
    }

    /** A list or a mapping that is still being read. */
    private final class Open {
        private final boolean mapping;
        private final Form form;
        private final int from;
        private final int start;
        private final Optional<String> anchor;
        private final List<Item> items = new ArrayList<>();
        private Optional<Word> key = Optional.empty();
        private int keyFrom;

        Open(boolean mapping, Form form, int from, int start, Optional<String> anchor) {
            this.mapping = mapping;
            this.form = form;
            this.from = from;
            this.start = start;
            this.anchor = anchor;
        }

        void add(TextPart part, int partFrom) {
            if (!mapping) {
                int dash = lines.behindSpace(items.isEmpty() ? start : end());
                items.add(new Item(Optional.empty(), part, form == Form.BLOCK ? dash : partFrom));
            } else if (key.isPresent()) {
                items.add(new Item(key, part, keyFrom));
                key = Optional.empty();
            } else if (part instanceof Word word) {
                key = Optional.of(word);
                keyFrom = partFrom;
            } else {
                throw new IllegalStateException("a key that is no single value");
            }
        }

        private int end() {
            return items.get(items.size() - 1).end();
        }

        Group group(int eventEnd) {
            return new Group(mapping, form, items, start, form == Form.FLOW ? eventEnd : end(), anchor);
        }
    }
}
