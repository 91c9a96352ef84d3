package buildup.catalog.words;

import buildup.profiles.member.Way;
import buildup.shared.document.Entry;
import buildup.shared.document.Mapping;
import buildup.shared.document.Node;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.figure.Figure;
import buildup.shared.length.Length;
import buildup.shared.length.LengthReader;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a list of words, or one text with commas between them; every fault is said, not only the first. */
final class WordParser {

    /** Nobody says one outline in more words; checking it takes time with the square of them. */
    private static final int MOST_WORDS = 1000;

    private static final String BACK = "back";
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    /** A comma that is no decimal comma. */
    private static final Pattern COMMA = Pattern.compile(",(?!\\d)|(?<!\\d),");

    private final LengthReader lengths;
    private final WordProblems speaker;
    private final List<Word> front = new ArrayList<>();
    private final List<Word> back = new ArrayList<>();
    private boolean shapesBack;
    private boolean faulty;
    private int count;

    /**
     * The words of one outline.
     *
     * @param back the words that shape the back; absent when it is plain
     */
    record Words(List<Word> front, Optional<List<Word>> back) {}

    private WordParser(LengthReader lengths, WordProblems speaker) {
        this.lengths = lengths;
        this.speaker = speaker;
    }

    static Optional<Words> read(Node words, LengthReader lengths, WordProblems speaker) {
        WordParser parser = new WordParser(lengths, speaker);
        parser.take(words);
        if (parser.faulty) {
            return Optional.empty();
        }
        if (parser.front.isEmpty()) {
            speaker.say(WordNotices.NO_WORDS.notice(), words.mark());
            return Optional.empty();
        }
        Optional<List<Word>> back = parser.shapesBack ? Optional.of(List.copyOf(parser.back)) : Optional.empty();
        return Optional.of(new Words(List.copyOf(parser.front), back));
    }

    private void take(Node node) {
        if (node instanceof Sequence list) {
            list.items().forEach(this::item);
        } else {
            item(node);
        }
        if (count > MOST_WORDS) {
            refuse(
                    WordNotices.MANY_WORDS.with("count", Figure.count(count)).with("most", Figure.count(MOST_WORDS)),
                    node.mark());
        }
    }

    private void item(Node node) {
        if (node instanceof Scalar scalar) {
            COMMA.splitAsStream(scalar.text())
                    .map(word -> BLANKS.matcher(word).replaceAll(" ").strip())
                    .forEach(word -> text(word, scalar.mark()));
        } else if (node instanceof Mapping mapping && mapping.entries().size() == 1) {
            entry(mapping.entries().get(0));
        } else {
            refuse(WordNotices.NO_TEXT.notice(), node.mark());
        }
    }

    private void entry(Entry entry) {
        if (!entry.key().text().equals(BACK)) {
            refuse(
                    WordNotices.NO_PROFILE_WORD.with("key", entry.key().text()),
                    entry.key().mark());
            return;
        }
        shapesBack = true;
        if (entry.value() instanceof Sequence || entry.value() instanceof Scalar) {
            take(entry.value());
        } else {
            refuse(WordNotices.NO_LIST.notice(), entry.value().mark());
        }
    }

    private void text(String text, Mark mark) {
        if (text.equals(BACK + ":")) {
            shapesBack = true;
        } else if (!text.isEmpty() && ++count <= MOST_WORDS) {
            List<Word> part = shapesBack ? back : front;
            word(text, mark).ifPresentOrElse(part::add, () -> faulty = true);
        }
    }

    private Optional<Word> word(String text, Mark mark) {
        int as = text.lastIndexOf(" as ");
        Optional<String> name =
                as < 0 ? Optional.empty() : Optional.of(text.substring(as + 4).strip());
        String rest = as < 0 ? text : text.substring(0, as).strip();
        Optional<Map.Entry<String, Verb>> spelled = spelled(rest);
        if (spelled.isEmpty()) {
            String asked = rest.split(" ", 2)[0];
            return none(
                    WordNotices.NO_SUCH_WORD
                            .with("word", asked)
                            .cure(Suggestion.phrase(asked, Verb.bySpelling().keySet())),
                    mark);
        }
        if (name.filter(WordParser::unusable).isPresent()) {
            return none(WordNotices.NO_MEMBER_NAME.with("name", name.orElse("")), mark);
        }
        String word = spelled.get().getKey();
        return sized(
                word, spelled.get().getValue(), rest.substring(word.length()).strip(), name, mark);
    }

    private static Optional<Map.Entry<String, Verb>> spelled(String text) {
        String low = text.toLowerCase(Locale.ROOT);
        return Verb.bySpelling().entrySet().stream()
                .filter(word -> low.equals(word.getKey()) || low.startsWith(word.getKey() + " "))
                .findFirst();
    }

    private static boolean unusable(String name) {
        return name.isEmpty() || name.contains(".") || name.contains(" + ") || name.contains(" - ");
    }

    private Optional<Word> sized(String spelled, Verb verb, String behind, Optional<String> name, Mark mark) {
        List<Way> ways = new ArrayList<>();
        if (verb == Verb.STRAIGHT) {
            way(spelled).ifPresent(ways::add);
        }
        String sizes = takeWays(verb, behind, ways);
        boolean to = verb == Verb.STRAIGHT && sizes.startsWith("to ");
        List<String> texts = SizeText.split(to ? sizes.substring(3) : sizes);
        if (texts.size() > verb.mostSizes()) {
            return none(
                    WordNotices.MANY_SIZES
                            .with("word", spelled)
                            .with("takes", verb.takes())
                            .with("count", Figure.count(texts.size()))
                            .with("more", String.join(" x ", texts.subList(verb.mostSizes(), texts.size()))),
                    mark);
        }
        List<Length> read = new ArrayList<>();
        texts.forEach(text -> speaker.length(text, lengths, mark).ifPresent(read::add));
        return read.size() == texts.size()
                ? Optional.of(new Word(count, verb, spelled, List.copyOf(ways), to, List.copyOf(read), name, mark))
                : Optional.empty();
    }

    /** Moves the directions at the front of {@code text} into {@code ways}; what is left are sizes. */
    private static String takeWays(Verb verb, String text, List<Way> ways) {
        int most = verb.ways() == Verb.Ways.BOX ? 2 : verb.ways() == Verb.Ways.ONE ? 1 : 0;
        String rest = text;
        for (int taken = 0; taken < most; taken++) {
            String[] parts = rest.split(" ", 2);
            Optional<Way> way =
                    way(parts[0]).filter(next -> ways.stream().noneMatch(other -> Word.sameAxis(other, next)));
            if (way.isEmpty()) {
                break;
            }
            ways.add(way.get());
            rest = parts.length > 1 ? parts[1] : "";
        }
        return rest;
    }

    private static Optional<Way> way(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "out" -> Optional.of(Way.OUT);
            case "in" -> Optional.of(Way.IN);
            case "up" -> Optional.of(Way.UP);
            case "down" -> Optional.of(Way.DOWN);
            default -> Optional.empty();
        };
    }

    private <T> Optional<T> none(Notice notice, Mark mark) {
        refuse(notice, mark);
        return Optional.empty();
    }

    private void refuse(Notice notice, Mark mark) {
        faulty = true;
        speaker.say(notice, mark);
    }
}
