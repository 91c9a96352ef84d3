package buildup.shared.document.edit;

import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.edit.TextPart.Form;
import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Item;
import buildup.shared.document.edit.Token.Sort;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lays a document out: two blanks for each step of indentation, one blank inside braces and none inside brackets, one
 * behind commas, colons and dashes, at most one blank line, none at the ends of the file and no blanks at the ends of
 * lines. Lines stay lines, words and comments stay as they are. A comment that was set off from its line keeps its column
 * where there is room. Laid out again, nothing changes.
 */
public final class Tidying {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final ParsedText source;
    private final List<Token> tokens;
    private final List<Optional<Nest>> nests;
    private final Set<Integer> begins;
    private final StringBuilder out = new StringBuilder();
    private Optional<Nest> before = Optional.empty();
    private int lineBegin;
    private int brackets;

    private Tidying(ParsedText source) {
        this.source = source;
        this.tokens = Token.of(source);
        this.nests = Nest.round(tokens, source);
        this.begins = source.root()
                .all()
                .filter(part -> part instanceof Group group && group.form() == Form.BLOCK)
                .flatMap(part -> ((Group) part).items().stream())
                .map(Item::start)
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * The text laid out anew; it says what it said before. A document that cannot be read, or not be laid out so, is a
     * refusal.
     *
     * @param file the name for messages
     * @param text as in the file, a byte order mark included
     */
    public static Optional<String> layOut(String file, String text, Notices notices) {
        Notices found = new Notices();
        Optional<Document> before = read(file, text, found);
        notices.addAll(found.sorted());
        if (before.isEmpty() || found.refused()) {
            return Optional.empty();
        }
        String mark = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : "";
        Optional<String> tidy =
                ParsedText.of(text.substring(mark.length())).map(source -> mark + new Tidying(source).tidy());
        Optional<Document> after = tidy.flatMap(done -> read(file, done, new Notices()));
        if (after.filter(before.get()::says).isEmpty()) {
            notices.add(EditNotices.WOULD_CHANGE.notice());
            return Optional.empty();
        }
        return tidy;
    }

    private static Optional<Document> read(String file, String text, Notices notices) {
        return DocumentReader.read(file, text.getBytes(StandardCharsets.UTF_8), notices);
    }

    private String tidy() {
        int end = 0;
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            brackets -= token.sort() == Sort.CLOSE ? 1 : 0;
            if (i == 0) {
                out.append(" ".repeat(column(i)));
            } else if (ParsedText.isBreak(source.at(source.behindBlanks(end)))) {
                newLine(source.behindBlanks(end), i);
            } else {
                out.append(spacing(tokens.get(i - 1), token));
            }
            write(i);
            before = token.sort() == Sort.COMMENT ? before : nests.get(i);
            brackets += token.sort() == Sort.OPEN ? 1 : 0;
            end = token.to();
        }
        int last = source.lineEnd(end);
        String finish = source.text().substring(last, source.behindBreak(last));
        boolean closed = !finish.isEmpty() || tokens.get(tokens.size() - 1).sort() == Sort.LINES;
        return out.append(closed ? finish : source.lineBreak()).toString();
    }

    /** The line breaks from the end of a line, so that at most one line is blank, and the indentation of the next token. */
    private void newLine(int line, int next) {
        int second = source.behindBreak(line);
        out.append(source.text(), line, second);
        int blank = source.behindBlanks(second);
        if (blank < tokens.get(next).from() && ParsedText.isBreak(source.at(blank))) {
            out.append(source.text(), blank, source.behindBreak(blank));
        }
        lineBegin = out.length();
        out.append(" ".repeat(column(next)));
    }

    /** The column of a token that begins a line. */
    private int column(int index) {
        Token token = tokens.get(index);
        if (token.sort() == Sort.COMMENT && brackets == 0) {
            return commentColumn(index);
        }
        if (nests.get(index).isEmpty() || token.sort() == Sort.DIRECTIVE) {
            return 0;
        }
        Nest nest = nests.get(index).get();
        if (brackets > 0 || token.sort() == Sort.CLOSE) {
            return nest.contentColumn() + 2 * brackets;
        }
        boolean first = token.sort() == Sort.DASH || token.sort() == Sort.COLON || begins.contains(token.from());
        return nest.tidyColumn() + (first ? 0 : 2);
    }

    /**
     * A comment in a line of its own stands as the entry after it, or one round that or the entry before: as the one that
     * it stood level with, or the nearest less far in.
     */
    private int commentColumn(int index) {
        int column = source.column(tokens.get(index).from());
        Stream<Nest> after = nests.get(index).stream().flatMap(Nest::outward);
        return Stream.concat(after, before.stream().flatMap(Nest::outward))
                .filter(nest -> nest.column() <= column)
                .reduce((best, nest) -> nest.column() > best.column() ? nest : best)
                .map(Nest::tidyColumn)
                .orElse(0);
    }

    /** What stands between two tokens of a line. */
    private String spacing(Token left, Token right) {
        if (right.sort() == Sort.COMMENT) {
            boolean setOff = right.from() - left.to() > 1;
            int room = source.column(right.from()) - (out.length() - lineBegin);
            return " ".repeat(setOff ? Math.max(1, room) : 1);
        }
        if (right.sort() == Sort.COMMA || (right.sort() == Sort.COLON && left.sort() == Sort.WORD)) {
            return "";
        }
        if (left.sort() == Sort.OPEN && right.sort() == Sort.CLOSE) {
            return "";
        }
        boolean atOpen = left.sort() == Sort.OPEN && source.at(left.from()) == '[';
        boolean atClose = right.sort() == Sort.CLOSE && source.at(right.from()) == ']';
        return atOpen || atClose ? "" : " ";
    }

    private void write(int index) {
        Token token = tokens.get(index);
        Optional<Nest> nest = nests.get(index);
        List<String> lines =
                source.text().substring(token.from(), token.to()).lines().toList();
        if (lines.size() < 2 || nest.isEmpty()) {
            out.append(source.text(), token.from(), token.to());
            return;
        }
        boolean kept = token.sort() == Sort.LINES;
        int shift = nest.get().tidyColumn() - nest.get().column();
        int indent = brackets > 0
                ? nest.get().contentColumn() + 2 * brackets
                : nest.get().tidyColumn() + 2;
        int at = token.from();
        for (int line = source.lineEnd(at); line < token.to(); line = source.lineEnd(at)) {
            out.append(source.text(), at, source.behindBreak(line));
            at = source.behindBreak(line);
            lineBegin = out.length();
            int text = source.behindBlanks(at);
            boolean empty = ParsedText.isBreak(source.at(kept ? at : text));
            int blanks = kept ? text - at + shift : indent;
            out.append(" ".repeat(empty ? 0 : Math.max(0, blanks)));
            at = text;
        }
        out.append(source.text(), at, token.to());
    }
}
