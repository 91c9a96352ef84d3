package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Style;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** The least stretch of a text that a layout leaves whole. */
record Token(Sort sort, int from, int to) {

    enum Sort {
        /** A single value or a key, or a place that repeats one. */
        WORD,
        /** The same in lines under {@code |} or {@code >}. */
        LINES,
        /** A bracket or a brace that opens. */
        OPEN,
        /** A bracket or a brace that closes. */
        CLOSE,
        COMMA,
        COLON,
        /** The dash or the question mark before an entry. */
        DASH,
        /** A mark before a value: {@code &name}, {@code !!tag}. */
        MARK,
        COMMENT,
        /** A line for the parser: {@code ---}, {@code %YAML 1.2}. */
        DIRECTIVE
    }

    /** The tokens of a text, in order; only blanks and line breaks lie between them. */
    static List<Token> of(ParsedText source) {
        List<Token> tokens = new ArrayList<>();
        Iterator<TextPart> words = source.root()
                .all()
                .filter(part -> !(part instanceof TextPart.Group) && part.end() > part.start())
                .iterator();
        int at = 0;
        while (words.hasNext()) {
            TextPart word = words.next();
            between(source, at, word.start(), tokens);
            boolean lines = word instanceof TextPart.Word written
                    && (written.style() == Style.LINES || written.style() == Style.KEPT_LINES);
            tokens.add(new Token(lines ? Sort.LINES : Sort.WORD, word.start(), word.end()));
            at = word.end();
        }
        between(source, at, source.text().length(), tokens);
        return tokens;
    }

    private static void between(ParsedText source, int from, int to, List<Token> tokens) {
        int at = from;
        while (at < to) {
            char c = source.at(at);
            if (ParsedText.isBlank(c) || ParsedText.isBreak(c)) {
                at++;
                continue;
            }
            Sort sort = sort(source, at);
            int end = switch (sort) {
                case COMMENT, DIRECTIVE -> source.lineEnd(at);
                case MARK -> endOfMark(source, at, to);
                default -> at + 1;
            };
            tokens.add(new Token(sort, at, Math.min(end, to)));
            at = end;
        }
    }

    private static Sort sort(ParsedText source, int at) {
        boolean first = at == 0 || ParsedText.isBreak(source.at(at - 1));
        return switch (source.at(at)) {
            case '#' -> Sort.COMMENT;
            case '{', '[' -> Sort.OPEN;
            case '}', ']' -> Sort.CLOSE;
            case ',' -> Sort.COMMA;
            case ':' -> Sort.COLON;
            case '-' -> first && source.text().startsWith("---", at) ? Sort.DIRECTIVE : Sort.DASH;
            case '.', '%' -> Sort.DIRECTIVE;
            case '?' -> Sort.DASH;
            default -> Sort.MARK;
        };
    }

    private static int endOfMark(ParsedText source, int from, int to) {
        int at = from;
        while (at < to && !ParsedText.isBlank(source.at(at)) && !ParsedText.isBreak(source.at(at))) {
            if (",[]{}".indexOf(source.at(at)) >= 0) {
                break;
            }
            at++;
        }
        return Math.max(at, from + 1);
    }
}
