package buildup.cli.fuzz;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** What must be true of every answer, whatever was asked. A fault is named so that two with one cause have one name. */
final class Oracle {
    /** Seconds of the processor, bytes allocated, bytes said: no honest answer comes near them. */
    private static final double MOST_SECONDS = 20;

    private static final long MOST_ALLOCATED = 16L << 30;
    private static final long MOST_SAID = 24L << 20;

    private static final Pattern TRACE = Pattern.compile("(?m)^\\s+at [\\w.$/]+\\([\\w.: ]+\\)");
    private static final Pattern INSIDE = Pattern.compile("(?i)something went wrong inside: ([^\\n<]*)");
    private static final Pattern PLACE = Pattern.compile("([\\w.$]+(?:Exception|Error))\\b.*? at (\\S+:\\d+)");
    private static final Pattern THROWN = Pattern.compile("[\\w.$]+(?:Exception|Error)\\b");

    private static final JsonMapper JSON = new JsonMapper();

    private Oracle() {}

    /** The first thing that is wrong with an answer; empty when nothing is. */
    static Optional<String> fault(Asked asked, Outcome outcome) {
        String said = outcome.err() + new String(outcome.out(), UTF_8);
        Matcher inside = INSIDE.matcher(said);
        if (inside.find()) {
            Matcher place = PLACE.matcher(inside.group(1));
            return Optional.of(
                    "inside: " + (place.find() ? place.group(1) + " at " + place.group(2) : inside.group(1)));
        }
        if (TRACE.matcher(said).find()) {
            Matcher thrown = THROWN.matcher(said);
            return Optional.of("trace: " + (thrown.find() ? thrown.group() : ""));
        }
        if (said.contains("too little memory")) {
            return Optional.of("memory, " + command(asked));
        }
        if (outcome.code() < 0 || outcome.code() > 3) {
            return Optional.of("exit code " + outcome.code() + ", " + command(asked));
        }
        return codeAndWords(asked, outcome).or(() -> bounds(asked, outcome)).or(() -> halves(asked, outcome));
    }

    /** What differs between two answers to one question. */
    static Optional<String> difference(Asked asked, Outcome one, Outcome two) {
        boolean same = one.code() == two.code()
                && one.err().equals(two.err())
                && Arrays.equals(one.out(), two.out())
                && one.files().keySet().equals(two.files().keySet())
                && one.files().entrySet().stream()
                        .allMatch(file ->
                                Arrays.equals(file.getValue(), two.files().get(file.getKey())));
        return same ? Optional.empty() : Optional.of("other bytes the second time, " + command(asked));
    }

    static String command(Asked asked) {
        return asked.words().isEmpty() ? "nothing" : asked.words().get(0);
    }

    private static Optional<String> codeAndWords(Asked asked, Outcome outcome) {
        List<String> lines = outcome.err().lines().toList();
        boolean refused = lines.stream().anyMatch(line -> line.startsWith("refusal  "));
        boolean problem = lines.stream().anyMatch(line -> line.startsWith("problem  "));
        if (outcome.code() == 0 && (refused || problem) || outcome.code() == 1 && refused) {
            return Optional.of("exit code " + outcome.code() + " beside what is said, " + command(asked));
        }
        // what is written holds what there is to say
        boolean written = !asked.files().keySet().containsAll(outcome.files().keySet());
        boolean asWished = outcome.code() == 1 && asked.words().contains("-q");
        boolean silent = outcome.err().isBlank() && outcome.out().length == 0 && !written && !asWished;
        return outcome.code() != 0 && silent
                ? Optional.of("exit code " + outcome.code() + " and not a word, " + command(asked))
                : Optional.empty();
    }

    private static Optional<String> bounds(Asked asked, Outcome outcome) {
        if (outcome.nanos() > MOST_SECONDS * 1e9) {
            return Optional.of("takes too long, " + command(asked));
        }
        if (outcome.allocated() > MOST_ALLOCATED) {
            return Optional.of("allocates too much, " + command(asked));
        }
        return outcome.size() > MOST_SAID ? Optional.of("says too much, " + command(asked)) : Optional.empty();
    }

    /** Nothing half written: no part is left, and what is there is whole. */
    private static Optional<String> halves(Asked asked, Outcome outcome) {
        for (Map.Entry<String, byte[]> file : outcome.files().entrySet()) {
            boolean given = Arrays.equals(file.getValue(), asked.files().get(file.getKey()));
            if (file.getKey().endsWith(".part")) {
                return Optional.of("a part left behind, " + command(asked));
            }
            if (!given && !whole(file.getKey(), file.getValue())) {
                return Optional.of("half of " + file.getKey().replaceAll(".*\\.", "") + ", " + command(asked));
            }
        }
        // behind -- stand names of files, whatever they look like
        int end = asked.words().indexOf("--");
        List<String> words = end < 0 ? asked.words() : asked.words().subList(0, end);
        int at = words.indexOf("json");
        boolean json = at > 0 && List.of("--format", "--to").contains(words.get(at - 1)) && !words.contains("-o");
        boolean help = new String(outcome.out(), UTF_8).startsWith("Usage: ");
        return json && !help && outcome.out().length > 0 && !whole("out.json", outcome.out())
                ? Optional.of("half of json, " + command(asked))
                : Optional.empty();
    }

    private static boolean whole(String name, byte[] bytes) {
        String text = new String(bytes, ISO_8859_1);
        return switch (name.replaceAll(".*\\.", "")) {
            case "svg" -> xml(bytes);
            case "html" -> text.stripTrailing().endsWith("</html>");
            case "pdf" -> text.startsWith("%PDF-") && text.stripTrailing().endsWith("%%EOF");
            case "png" -> text.startsWith("\u0089PNG") && text.contains("IEND");
            case "dxf" -> text.stripTrailing().endsWith("EOF");
            case "json" -> json(bytes);
            default -> true;
        };
    }

    private static boolean json(byte[] bytes) {
        try {
            JSON.readTree(bytes);
            return true;
        } catch (JacksonException broken) {
            return false;
        }
    }

    private static boolean xml(byte[] bytes) {
        try {
            var builder = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder();
            builder.setErrorHandler(new Strict());
            builder.parse(new InputSource(new ByteArrayInputStream(bytes)));
            return true;
        } catch (SAXException | IOException broken) {
            return false;
        } catch (ParserConfigurationException noParser) {
            throw new IllegalStateException(noParser);
        }
    }

    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException warned) {}

        @Override
        public void error(SAXParseException wrong) throws SAXException {
            throw wrong;
        }

        @Override
        public void fatalError(SAXParseException wrong) throws SAXException {
            throw wrong;
        }
    }
}
