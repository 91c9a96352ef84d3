package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A list in brackets or a mapping in braces, in one line or with its entries each in a line of its own. */
final class FlowLine {

    private final ParsedText source;
    private final Group group;

    FlowLine(ParsedText source, Group group) {
        this.source = source;
        this.group = group;
    }

    private Item item(int index) {
        return group.items().get(index);
    }

    private int size() {
        return group.items().size();
    }

    private boolean isLast(int index) {
        return index == size() - 1;
    }

    /** Where the comma stands behind an entry; -1 if there is none. */
    private int comma(int index) {
        int at = source.behindSpace(item(index).end());
        return source.at(at) == ',' ? at : -1;
    }

    /** The end of an entry and of the comma behind it. */
    private int endWithComma(int index) {
        int comma = comma(index);
        return comma < 0 ? item(index).end() : comma + 1;
    }

    /** Whether nothing but a comment stands behind the place in its line. */
    private boolean endsLine(int place) {
        char next = source.at(source.behindBlanks(place));
        return ParsedText.isBreak(next) || next == '#';
    }

    private boolean hasOwnLine(int index) {
        return source.beginsLine(item(index).start()) && endsLine(endWithComma(index));
    }

    private boolean lineByLine() {
        boolean allBegin = IntStream.range(1, size()).allMatch(i -> source.beginsLine(item(i).start()));
        return allBegin && (size() > 1 || source.beginsLine(item(0).start()));
    }

    /** The comma and what stands round it between an entry and the next. */
    private String between(int index) {
        return source.text().substring(item(index).end(), item(index + 1).start());
    }

    /** Puts an entry, its key included, before the one that has the place now, or last. */
    List<TextSplice> insert(int index, String entry) {
        if (size() == 0) {
            int inside = group.start() + 1;
            boolean blank = ParsedText.isBlank(source.at(inside));
            return List.of(TextSplice.insert(blank ? inside + 1 : inside, blank ? entry + " " : entry));
        }
        boolean ownLine = lineByLine();
        String newLine = ownLine
                ? source.lineBreak() + " ".repeat(source.column(item(size() - 1).start()))
                : " ";
        if (index == 0) {
            boolean first = ownLine && source.beginsLine(item(0).start());
            return List.of(TextSplice.insert(item(0).start(), entry + "," + (first ? newLine : " ")));
        }
        int end = item(index - 1).end();
        int behind = endWithComma(index - 1);
        if (!ownLine || !endsLine(behind)) {
            return List.of(TextSplice.insert(end, "," + newLine + entry));
        }
        int lineEnd = source.lineEnd(behind);
        return behind > end
                ? List.of(TextSplice.insert(lineEnd, newLine + entry + ","))
                : List.of(TextSplice.insert(end, ","), TextSplice.insert(lineEnd, newLine + entry));
    }

    /** Takes an entry out, with one comma. Comments stay, but for one behind an entry that has a line of its own. */
    List<TextSplice> remove(int index) {
        int start = item(index).start();
        int end = item(index).end();
        List<TextSplice> cuts = new ArrayList<>();
        if (hasOwnLine(index)) {
            int line = source.lineStart(start);
            cuts.add(TextSplice.cut(source.beforeBreak(line), source.lineEnd(endWithComma(index))));
            if (isLast(index) && index > 0 && comma(index) < 0) {
                cuts.add(TextSplice.cut(comma(index - 1), comma(index - 1) + 1));
            }
        } else if (size() == 1) {
            int behind = endWithComma(0);
            boolean blank = ParsedText.isBlank(source.at(start - 1));
            cuts.add(TextSplice.cut(start, blank ? source.behindBlanks(behind) : behind));
        } else if (!isLast(index) && (index == 0 || source.beginsLine(start)) && isPlain(between(index))) {
            cuts.add(TextSplice.cut(start, item(index + 1).start()));
        } else if (index > 0 && between(index - 1).indexOf('#') < 0) {
            cuts.add(TextSplice.cut(item(index - 1).end(), end));
        } else if (!isLast(index)) {
            cuts.add(TextSplice.cut(start, source.behindBlanks(endWithComma(index))));
        } else {
            cuts.add(TextSplice.cut(comma(index - 1), comma(index - 1) + 1));
            cuts.add(TextSplice.cut(start, end));
        }
        return cuts;
    }

    private static boolean isPlain(String between) {
        return between.indexOf('#') < 0 && between.indexOf('\n') < 0 && between.indexOf('\r') < 0;
    }

    /** Moves an entry; commas, line breaks and comments stay where they are. */
    List<TextSplice> move(int from, int to) {
        int low = Math.min(from, to);
        int high = Math.max(from, to);
        List<Integer> order =
                new ArrayList<>(IntStream.rangeClosed(low, high).boxed().toList());
        order.remove(Integer.valueOf(from));
        order.add(to - low, from);
        return IntStream.rangeClosed(low, high)
                .mapToObj(i -> new TextSplice(item(i).start(), item(i).end(), written(order.get(i - low))))
                .toList();
    }

    private String written(int index) {
        return source.text().substring(item(index).start(), item(index).end());
    }
}
