package buildup.shared.document;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notices;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML 1.2 in UTF-8 into a {@link Document}. Whatever the bytes are, the answer is a document or refusals, in
 * time and memory proportional to the file, which may hold up to 1 MiB.
 */
public final class DocumentReader {

    /** A larger file is refused unread. */
    public static final int GREATEST_BYTES = 1 << 20;

    private static final LoadSettings SETTINGS =
            LoadSettings.builder().setCodePointLimit(GREATEST_BYTES + 1).build();

    private DocumentReader() {}

    /**
     * Reads a file. A key given twice and a decimal comma that split an entry are refused, yet the document is still
     * returned (first value; number put together again) so that the rest can be checked in the same run; any other
     * fault returns nothing.
     *
     * @param file the name for messages
     */
    public static Optional<Document> read(String file, byte[] bytes, Notices notices) {
        try {
            return Optional.of(new Document(file, root(file, text(file, bytes), notices)));
        } catch (DocumentRefused refused) {
            notices.add(refused.notice());
            return Optional.empty();
        }
    }

    private static Mapping root(String file, String text, Notices notices) throws DocumentRefused {
        TreeBuilder builder = new TreeBuilder(file, notices);
        try {
            for (var event : new Parse(SETTINGS).parseString(text)) {
                builder.take(event);
            }
        } catch (YamlEngineException fault) {
            throw new DocumentRefused(YamlFault.notice(file, text, fault));
        }
        return builder.root();
    }

    private static String text(String file, byte[] bytes) throws DocumentRefused {
        if (bytes.length > GREATEST_BYTES) {
            throw new DocumentRefused(DocumentNotices.TOO_LARGE
                    .with("file", file)
                    .with("size", mebibytes(bytes.length))
                    .with("most", mebibytes(GREATEST_BYTES))
                    .at(new Mark(file, 1, 1)));
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer from = ByteBuffer.wrap(bytes);
        CharBuffer to = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(from, to, true);
        String text = to.flip().toString();
        if (result.isError()) {
            throw binary(file, text, text.length());
        }
        for (int i = 0; i < text.length(); i++) {
            if (isBinary(text.charAt(i))) {
                throw binary(file, text, i);
            }
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static Figure mebibytes(int bytes) {
        boolean whole = bytes % (1 << 20) == 0;
        return Figure.of(Quantity.COUNT, (double) bytes / (1 << 20))
                .rounded(Rounding.decimals(whole ? 0 : 1).to(Rounding.Side.UP));
    }

    /** Control characters that no text editor writes, and code points that are no characters. */
    private static boolean isBinary(char c) {
        boolean ofLines = c == '\t' || c == '\n' || c == '\r' || c == '\u0085';
        return (Character.isISOControl(c) && !ofLines) || c >= '\uFFFE';
    }

    private static DocumentRefused binary(String file, String text, int at) {
        return new DocumentRefused(DocumentNotices.NO_TEXT.with("file", file).at(YamlFault.place(file, text, at)));
    }
}
