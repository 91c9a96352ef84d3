package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Item;
import buildup.shared.document.edit.TextPart.Word;
import buildup.shared.edit.Naming;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the place of a document that words name. Every way to understand the words is tried. */
final class DocumentPlaces {

    private static final Pattern NUMBER = Pattern.compile("(\\d{1,6})(?:\\.(.*))?", Pattern.DOTALL);

    /** What the words did not lead to, and how many characters of them were understood. */
    private record Miss(int understood, Notice notice) {}

    private final ParsedText source;
    private final Set<String> repeated;
    private final String place;
    private final List<Target.Entry> found = new ArrayList<>();
    private final List<Target.Missing> missing = new ArrayList<>();
    private final List<Miss> misses = new ArrayList<>();

    private DocumentPlaces(ParsedText source, String place) {
        this.source = source;
        this.repeated = source.repeated();
        this.place = place;
    }

    /**
     * What the words lead to: something that is there, else something that could be.
     *
     * @throws EditRefused when they lead nowhere or to several places
     */
    static Target find(ParsedText source, String place) throws EditRefused {
        return new DocumentPlaces(source, place.strip()).search().answer();
    }

    /**
     * What the words lead to.
     *
     * @throws EditRefused when it is not there, or may be this or that
     */
    static Target.Entry existing(ParsedText source, String place) throws EditRefused {
        DocumentPlaces places = new DocumentPlaces(source, place.strip()).search();
        places.missing.forEach(places::missed);
        places.missing.clear();
        return (Target.Entry) places.answer();
    }

    /** The key of a mapping and what it holds. */
    static Optional<Item> get(Group mapping, String key) {
        return mapping.items().stream()
                .filter(item -> keyOf(item).filter(key::equals).isPresent())
                .findFirst();
    }

    /** The list or mapping under a key at the top of the document. */
    static Optional<Group> block(ParsedText source, String key) {
        return get(source.root(), key)
                .map(Item::value)
                .filter(Group.class::isInstance)
                .map(Group.class::cast);
    }

    /** The name that an entry of a list gives itself. */
    static Optional<Word> nameOf(Item entry) {
        return entry.value() instanceof Group group && group.mapping()
                ? get(group, "name")
                        .map(Item::value)
                        .filter(Word.class::isInstance)
                        .map(Word.class::cast)
                : Optional.empty();
    }

    private static Optional<String> keyOf(Item item) {
        return item.key().map(Word::text);
    }

    private static Optional<String> textOfName(Item entry) {
        return nameOf(entry).map(Word::text);
    }

    private Target answer() throws EditRefused {
        List<? extends Target> fit = found.isEmpty() ? missing : found;
        if (fit.size() > 1) {
            throw new EditRefused(EditNotices.AMBIGUOUS.with("place", place).with("name", firstOf(place)));
        }
        if (fit.isEmpty()) {
            throw new EditRefused(misses.stream()
                    .max(Comparator.comparingInt(Miss::understood))
                    .map(Miss::notice)
                    .orElseGet(EditNotices.NO_PLACE::notice));
        }
        return fit.get(0);
    }

    private DocumentPlaces search() {
        if (place.isEmpty() || Stream.of(place.split("\\.", -1)).anyMatch(String::isBlank)) {
            return this;
        }
        Group root = source.root();
        boolean known = inMapping(root, place, Optional.empty());
        Optional<Group> pieces = block(source, Naming.PIECE.block()).filter(group -> !group.mapping());
        if (get(root, place).isEmpty() && pieces.isPresent()) {
            Optional<Item> entry = get(root, Naming.PIECE.block());
            known |= byName(pieces.get(), place, entry.flatMap(item -> mark(item.value())));
        }
        if (!known) {
            List<String> names = new ArrayList<>(names(root, DocumentPlaces::keyOf));
            pieces.ifPresent(list -> names.addAll(names(list, DocumentPlaces::textOfName)));
            nothingCalled(place, names);
            if (place.indexOf('.') < 0) {
                missing.add(new Target.Missing(Optional.empty(), List.of(place), Optional.empty()));
            }
        }
        return this;
    }

    /** Goes on below an entry. */
    private void below(Target.Entry entry, String rest) {
        if (rest.isEmpty()) {
            found.add(entry);
            return;
        }
        TextPart value = entry.value();
        Optional<String> shared = entry.shared().or(() -> mark(value));
        TextPart said = value instanceof TextPart.Repeat repeat ? marked(repeat) : value;
        if (said instanceof Group group && group.mapping()) {
            if (!inMapping(group, rest, shared)) {
                missing.add(new Target.Missing(Optional.of(entry), List.of(rest.split("\\.")), shared));
            }
        } else if (said instanceof Group list) {
            inList(list, rest, shared);
        } else if (said instanceof Word word && word.text().isBlank()) {
            missing.add(new Target.Missing(Optional.of(entry), List.of(rest.split("\\.")), shared));
        } else {
            miss(rest, EditNotices.NOTHING_BELOW.with("where", before(rest)).with("asked", rest));
        }
    }

    /** The mark under which a part is repeated, or that it repeats. */
    private Optional<String> mark(TextPart part) {
        return part instanceof TextPart.Repeat repeat
                ? Optional.of(repeat.name())
                : part.anchor().filter(repeated::contains);
    }

    private TextPart marked(TextPart.Repeat repeat) {
        return source.root()
                .all()
                .filter(part -> part.start() < repeat.start())
                .filter(part -> part.anchor().filter(repeat.name()::equals).isPresent())
                .reduce((first, later) -> later)
                .orElse(repeat);
    }

    private boolean inMapping(Group mapping, String rest, Optional<String> shared) {
        return fitting(mapping, rest, DocumentPlaces::keyOf, shared);
    }

    private void inList(Group list, String rest, Optional<String> shared) {
        Matcher number = NUMBER.matcher(rest);
        if (byName(list, rest, shared)) {
            return;
        }
        if (!number.matches()) {
            nothingCalled(rest, names(list, DocumentPlaces::textOfName));
            return;
        }
        int index = Integer.parseInt(number.group(1)) - 1;
        int size = list.items().size();
        if (index >= 0 && index < size) {
            below(
                    new Target.Entry(list, index, shared),
                    Optional.ofNullable(number.group(2)).orElse(""));
        } else {
            miss(
                    rest,
                    EditNotices.NO_ENTRY
                            .with("where", before(rest))
                            .with("count", size + (size == 1 ? " entry" : " entries"))
                            .with("asked", number.group(1)));
        }
    }

    private boolean byName(Group list, String rest, Optional<String> shared) {
        return fitting(list, rest, DocumentPlaces::textOfName, shared);
    }

    /**
     * Follows the words into each entry whose name they begin with, the longest names first, until one leads somewhere.
     *
     * @return whether they begin with any name
     */
    private boolean fitting(
            Group group, String rest, Function<Item, Optional<String>> naming, Optional<String> shared) {
        List<String> names = names(group, naming).stream()
                .filter(name -> rest.equals(name) || rest.startsWith(name + "."))
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
        int before = found.size();
        for (String name : names) {
            List<Integer> called = IntStream.range(0, group.items().size())
                    .filter(i -> naming.apply(group.items().get(i))
                            .filter(name::equals)
                            .isPresent())
                    .boxed()
                    .toList();
            if (called.size() > 1) {
                sameName(rest, name, called);
            } else if (found.size() == before) {
                String more = rest.length() > name.length() ? rest.substring(name.length() + 1) : "";
                below(new Target.Entry(group, called.get(0), shared), more);
            }
        }
        return !names.isEmpty();
    }

    private static Set<String> names(Group group, Function<Item, Optional<String>> naming) {
        Set<String> names = new TreeSet<>();
        group.items().stream()
                .flatMap(item -> naming.apply(item).stream())
                .filter(name -> !name.isBlank())
                .forEach(names::add);
        return names;
    }

    private void sameName(String rest, String name, List<Integer> called) {
        String where = before(rest).isEmpty() ? Naming.PIECE.block() : before(rest);
        miss(
                rest.substring(name.length()),
                EditNotices.SAME_NAME
                        .with("count", String.valueOf(called.size()))
                        .with("where", where)
                        .with("name", name)
                        .with("example", where + "." + (called.get(called.size() - 1) + 1)));
    }

    private void missed(Target.Missing gap) {
        String rest = String.join(".", gap.keys());
        Set<String> keys = gap.holder()
                .map(Target.Entry::value)
                .filter(Group.class::isInstance)
                .map(part -> names((Group) part, DocumentPlaces::keyOf))
                .orElse(Set.of());
        if (gap.holder().isPresent()) {
            nothingCalled(rest, keys);
        }
    }

    private void nothingCalled(String rest, Collection<String> known) {
        String where = before(rest).isEmpty() ? "in the document" : "in '" + before(rest) + "'";
        miss(
                rest,
                EditNotices.NOTHING_CALLED
                        .with("where", where)
                        .with("asked", firstOf(rest))
                        .with(
                                "nearest",
                                known.isEmpty() ? "Look into the file." : Suggestion.cure(firstOf(rest), known)));
    }

    private void miss(String rest, Notice notice) {
        misses.add(new Miss(place.length() - rest.length(), notice));
    }

    private static String firstOf(String rest) {
        return Stream.of(rest.split("\\.")).findFirst().orElse(rest);
    }

    /** The words before the rest. */
    private String before(String rest) {
        return place.substring(0, Math.max(0, place.length() - rest.length() - 1));
    }
}
