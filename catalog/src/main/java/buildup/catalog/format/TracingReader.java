package buildup.catalog.format;

import buildup.profiles.trace.ring.Trail;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.Notices;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads a traced or drawn profile out of the bytes of a file. */
public final class TracingReader {
    /** A larger file is refused unread. */
    public static final int GREATEST_BYTES = 16 << 20;

    /** What every binary drawing exchange file begins with, but for the name in front. */
    private static final String BINARY_DXF = "Binary DXF\r\n\u001a\u0000";

    private static final char END_MARK = '\u001a';

    private static final int SIGNATURE = 32;

    /** So many layers are listed. */
    private static final int MOST_LAYERS = 20;

    private TracingReader() {}

    /** All trails in a file, of whatever layer. */
    public static Optional<Drawn> read(byte[] content, String name, Notices notices) {
        return read(content, name, Optional.empty(), notices);
    }

    /**
     * The trails in a file: CSV, SVG or DXF, told apart by what it holds; where that leaves it open, by its name.
     *
     * @param name of the file, for messages
     * @param layer the layer or group that is to be read alone
     */
    public static Optional<Drawn> read(byte[] content, String name, Optional<String> layer, Notices notices) {
        Source source = new Source(name, "", notices);
        try {
            source = new Source(name, text(content, source), notices);
            Drawn all = drawn(source);
            return Optional.of(layer.isPresent() ? on(layer.get(), all, source) : all);
        } catch (FileRefused refused) {
            notices.add(refused.notice());
            return Optional.empty();
        } finally {
            source.close();
        }
    }

    private static Drawn on(String layer, Drawn all, Source source) throws FileRefused {
        List<Trail> trails = all.on(layer);
        if (trails.isEmpty()) {
            List<String> layers = all.layers().stream()
                    .limit(MOST_LAYERS)
                    .map(Numerals::shown)
                    .toList();
            Phrase cure = layers.isEmpty()
                    ? FormatNotices.NO_LAYERS
                    : (layers.size() == 1 ? FormatNotices.ONE_LAYER : FormatNotices.LAYERS)
                            .with("layers", Listing.names(layers));
            throw source.refused(
                    source.named(FormatNotices.NO_SUCH_LAYER)
                            .with("layer", Numerals.shown(layer))
                            .cure(cure),
                    1);
        }
        return new Drawn(trails, all.unit());
    }

    private static Drawn drawn(Source source) throws FileRefused {
        String start = source.text()
                .substring(0, Math.min(source.text().length(), 4096))
                .strip();
        String ending = source.name().toLowerCase(Locale.ROOT);
        if (start.startsWith("<") || ending.endsWith(".svg")) {
            return new SvgReader(source).drawn();
        }
        if (start.matches("(?s)(0\\s*?\\R\\s*SECTION\\s*\\R|999\\s*?\\R).*") || ending.endsWith(".dxf")) {
            return new DxfReader(source).drawn();
        }
        return new CsvReader(source).drawn();
    }

    private static String text(byte[] content, Source source) throws FileRefused {
        if (content.length > GREATEST_BYTES) {
            throw source.refused(
                    source.named(FormatNotices.TOO_LARGE).with("most", Figure.count(GREATEST_BYTES >> 20)), 1);
        }
        String head = new String(content, 0, Math.min(content.length, SIGNATURE), StandardCharsets.ISO_8859_1);
        if (head.contains(BINARY_DXF)) {
            throw source.refused(source.named(FormatNotices.BINARY), 1);
        }
        if (head.startsWith("\u001f\u008b")) {
            throw source.refused(source.named(FormatNotices.PACKED), 1);
        }
        String marked = decoded(content, head);
        String text = marked.substring(marked.startsWith("\uFEFF") ? 1 : 0, end(marked));
        for (int i = 0; i < text.length(); i++) {
            if (isBinary(text.charAt(i))) {
                throw source.refused(source.named(FormatNotices.NO_TEXT).with("byte", Figure.count(text.charAt(i))), 1);
            }
        }
        if (text.isBlank()) {
            throw source.refused(source.named(FormatNotices.EMPTY), 1);
        }
        return text;
    }

    /** Where the text ends: older systems put a mark there, and fill up the last block of the file. */
    private static int end(String text) {
        int end = text.length();
        while (end > 0 && (text.charAt(end - 1) == END_MARK || Character.isWhitespace(text.charAt(end - 1)))) {
            end--;
        }
        return end;
    }

    /** By its mark, else UTF-8, else one byte a letter: older programs write names so, and numbers are the same. */
    private static String decoded(byte[] content, String head) {
        if (head.startsWith("\u00ff\u00fe") || head.startsWith("\u00fe\u00ff")) {
            return new String(content, StandardCharsets.UTF_16);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
        } catch (CharacterCodingException older) {
            return new String(content, StandardCharsets.ISO_8859_1);
        }
    }

    private static boolean isBinary(char c) {
        return c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f';
    }
}
