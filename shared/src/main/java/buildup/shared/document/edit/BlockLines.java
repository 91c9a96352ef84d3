package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Item;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A list or a mapping that is written line by line: each entry is a run of whole lines, apart from a first one that
 * stands behind the dash of the list around it. A comment behind the last line of an entry belongs to it, and so do
 * comments straight above it that are indented as it is.
 */
final class BlockLines {

    private final ParsedText source;
    private final Group group;

    BlockLines(ParsedText source, Group group) {
        this.source = source;
        this.group = group;
    }

    private Item item(int index) {
        return group.items().get(index);
    }

    private int size() {
        return group.items().size();
    }

    /** The end of the last line of an entry, its comment included. */
    private int bodyEnd(int index) {
        return source.lineEnd(item(index).end());
    }

    /** The beginning of the comments of an entry, or of itself; the head of the file is no comment of its first key. */
    private int lead(int index) {
        int start = item(index).start();
        if (!source.beginsLine(start) || (index == 0 && group.equals(source.root()))) {
            return start;
        }
        int above = index == 0 ? 0 : bodyEnd(index - 1);
        int lead = start;
        int line = source.lineStart(start);
        while (line > above) {
            line = source.lineStart(source.beforeBreak(line));
            int text = source.behindBlanks(line);
            if (line < above || source.at(text) != '#' || source.column(text) != source.column(start)) {
                break;
            }
            lead = text;
        }
        return lead;
    }

    private String block(int index) {
        return source.text().substring(lead(index), bodyEnd(index));
    }

    /** What stands between an entry and the one before: line breaks, blank lines, stray comments, the indentation. */
    private String gap(int index) {
        return source.text().substring(gapStart(index), lead(index));
    }

    private int gapStart(int index) {
        if (index > 0) {
            return bodyEnd(index - 1);
        }
        int line = source.lineStart(lead(0));
        while (line > 0) {
            int above = source.lineStart(source.beforeBreak(line));
            int text = source.behindBlanks(above);
            if (source.at(text) != '#' && !ParsedText.isBreak(source.at(text))) {
                return source.beforeBreak(line);
            }
            line = above;
        }
        return 0;
    }

    /** What comes between two entries: as everywhere in the group where it is everywhere the same. */
    private String spacing() {
        List<String> gaps =
                IntStream.range(1, size()).mapToObj(this::gap).distinct().toList();
        return gaps.size() == 1 && gaps.get(0).indexOf('#') < 0
                ? gaps.get(0)
                : source.lineBreak() + " ".repeat(source.column(item(0).start()));
    }

    /** Puts an entry, its dash or key included, before the one that has the place now, or last. */
    List<TextSplice> insert(int index, String entry) {
        if (index > 0) {
            return List.of(TextSplice.insert(bodyEnd(index - 1), spacing() + entry));
        }
        return List.of(TextSplice.insert(lead(0), entry + spacing()));
    }

    /** Takes an entry out, with the blank lines that set it off; comments above it stay. */
    List<TextSplice> remove(int index) {
        int start = item(index).start();
        int end = bodyEnd(index);
        boolean commented = lead(index) != start;
        if (!commented && index > 0 && gap(index).indexOf('#') < 0) {
            return List.of(TextSplice.cut(bodyEnd(index - 1), end));
        }
        if (!commented && index == 0 && size() > 1 && gap(1).indexOf('#') < 0) {
            return List.of(TextSplice.cut(start, lead(1)));
        }
        if (!source.beginsLine(start)) {
            return List.of(TextSplice.cut(start, item(index).end()));
        }
        int line = source.lineStart(start);
        return List.of(
                line > 0 ? TextSplice.cut(source.beforeBreak(line), end) : TextSplice.cut(0, source.behindBreak(end)));
    }

    /**
     * Moves an entry. Blank lines stay where they are where all entries are set off alike; otherwise each entry keeps the
     * space above it, so that groups stay together. Moved back, all is as before.
     */
    List<TextSplice> move(int from, int to) {
        int low = Math.min(from, to);
        int high = Math.max(from, to);
        List<Integer> order =
                new ArrayList<>(IntStream.rangeClosed(low, high).boxed().toList());
        order.remove(Integer.valueOf(from));
        order.add(to - low, from);
        boolean apart = setOffAlike();
        StringBuilder moved = new StringBuilder();
        for (int i = low; i <= high; i++) {
            int entry = order.get(i - low);
            moved.append(apart ? i == low ? "" : gap(i) : gap(entry)).append(block(entry));
        }
        return List.of(new TextSplice(apart ? lead(low) : gapStart(low), bodyEnd(high), moved.toString()));
    }

    /** Whether all gaps are the same, but for one that may be shorter; whichever way entries move, that stays so. */
    private boolean setOffAlike() {
        if (!source.beginsLine(item(0).start()) || group.equals(source.root())) {
            return true;
        }
        List<String> gaps = IntStream.range(0, size()).mapToObj(this::gap).toList();
        List<String> kinds = gaps.stream()
                .distinct()
                .sorted(Comparator.comparingInt(String::length))
                .toList();
        return kinds.size() == 1
                || (kinds.size() == 2
                        && kinds.get(0).length() < kinds.get(1).length()
                        && Collections.frequency(gaps, kinds.get(0)) == 1);
    }
}
