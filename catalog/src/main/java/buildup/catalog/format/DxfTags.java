package buildup.catalog.format;

import java.util.Optional;
import java.util.OptionalInt;

/** The pairs of a DXF file, one after another: a group code on one line, its value on the next. */
final class DxfTags {
    /** @param line of the value, from 1 */
    record Tag(int code, String value, int line) {
        boolean is(int other, String text) {
            return code == other && value.equals(text);
        }
    }

    private static final int REMARK = 999;

    private final Source source;
    private final String text;
    private int at;
    private int line;
    private Optional<Tag> next = Optional.empty();

    DxfTags(Source source) {
        this.source = source;
        this.text = source.text().indexOf('\n') < 0 ? source.text().replace('\r', '\n') : source.text();
    }

    /** The tag that {@link #take} will give; empty at the end of the file. */
    Optional<Tag> peek() throws FileRefused {
        while (next.isEmpty() && at < text.length()) {
            String code = readLine();
            if (code.isEmpty() && text.substring(at).isBlank()) {
                at = text.length();
                break;
            }
            OptionalInt number = Numerals.whole(code);
            if (number.isEmpty()) {
                throw source.refused(FormatNotices.NO_GROUP_CODE.with("text", Numerals.shown(code)), line);
            }
            if (at >= text.length()) {
                break;
            }
            Tag tag = new Tag(number.getAsInt(), readLine(), line);
            next = Optional.of(tag).filter(one -> one.code() != REMARK);
        }
        return next;
    }

    Optional<Tag> take() throws FileRefused {
        Optional<Tag> tag = peek();
        next = Optional.empty();
        return tag;
    }

    /** The line that was read last. */
    int line() {
        return Math.max(1, line);
    }

    private String readLine() {
        int end = text.indexOf('\n', at);
        int stop = end < 0 ? text.length() : end;
        String read = text.substring(at, stop).strip();
        at = stop + 1;
        line++;
        return read;
    }
}
