package buildup.shared.document.edit;

import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Item;
import buildup.shared.document.edit.TextPart.Word;
import buildup.shared.edit.Edit;
import buildup.shared.edit.Naming;
import buildup.shared.notice.Suggestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gives something another name, where it is named and wherever it is mentioned. */
final class Renaming {

    private final ParsedText source;
    private final Edit.Rename edit;
    private final Finder finder;
    private final List<TextSplice> splices = new ArrayList<>();

    private Renaming(ParsedText source, Edit.Rename edit, List<String> known) {
        this.source = source;
        this.edit = edit;
        this.finder = new Finder(edit.kind(), edit.from(), known);
    }

    /**
     * What is to be changed.
     *
     * @throws EditRefused when nothing goes by the old name, or the new one cannot be given
     */
    static List<TextSplice> of(ParsedText source, Edit.Rename edit) throws EditRefused {
        List<Word> names = names(source, edit.kind());
        List<String> known = names.stream().map(Word::text).toList();
        List<Word> named =
                names.stream().filter(word -> word.text().equals(edit.from())).toList();
        check(edit, known, named.size());
        Renaming renaming = new Renaming(source, edit, known);
        renaming.name(named.get(0));
        if (!edit.from().equals(edit.to())) {
            renaming.mentions(source.root(), "");
        }
        return renaming.splices;
    }

    private static void check(Edit.Rename edit, List<String> known, int called) throws EditRefused {
        String block = edit.kind().block();
        if (called == 0) {
            throw new EditRefused(EditNotices.NOTHING_CALLED
                    .with("where", "in '" + block + "'")
                    .with("asked", edit.from())
                    .with("nearest", known.isEmpty() ? "Look into the file." : Suggestion.cure(edit.from(), known)));
        }
        if (called > 1) {
            throw new EditRefused(
                    EditNotices.TWICE_NAMED.with("name", edit.from()).with("where", block));
        }
        if (edit.to().isBlank()) {
            throw new EditRefused(EditNotices.NAME_BLANK.with("name", edit.from()));
        }
        if (!edit.to().equals(edit.from()) && known.contains(edit.to())) {
            throw new EditRefused(
                    EditNotices.NAME_TAKEN.with("kind", edit.kind().word()).with("name", edit.to()));
        }
    }

    /** Where the document names what is of the kind: keys of the sizes, the name in each entry of the rest. */
    private static List<Word> names(ParsedText source, Naming kind) {
        Optional<Group> block = DocumentPlaces.block(source, kind.block());
        return block.stream()
                .flatMap(group -> group.items().stream())
                .flatMap(item -> kind == Naming.SIZE ? item.key().stream() : DocumentPlaces.nameOf(item).stream())
                .toList();
    }

    /** The kind of name that a part of the document is, if it is one of its own that others may mention. */
    static Optional<Naming> kindOf(ParsedText source, TextPart part) {
        for (Naming kind : Naming.values()) {
            List<Word> names = kind == Naming.SIZE ? List.of() : names(source, kind);
            if (names.contains(part)) {
                String name = ((Word) part).text();
                boolean own = !name.isBlank()
                        && names.stream()
                                        .filter(word -> word.text().equals(name))
                                        .count()
                                == 1;
                return own ? Optional.of(kind) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private void name(Word word) {
        boolean flow = DocumentPlaces.block(source, edit.kind().block())
                .map(group -> isInFlow(group, word, group.isFlow()))
                .orElse(false);
        String written = edit.kind() == Naming.SIZE
                ? Scribe.key(edit.to(), flow, word.style())
                : Scribe.value(edit.to(), flow, word.style());
        splices.add(new TextSplice(word.start(), word.end(), written));
    }

    private static boolean isInFlow(Group group, Word word, boolean flow) {
        return flow
                || group.items().stream()
                        .map(Item::value)
                        .filter(Group.class::isInstance)
                        .map(Group.class::cast)
                        .anyMatch(inner -> inner.isFlow() && inner.start() < word.start() && word.end() < inner.end());
    }

    private void mentions(Group group, String path) {
        for (Item item : group.items()) {
            String below = item.key()
                    .map(key -> path.isEmpty() ? key.text() : path + "." + key.text())
                    .orElse(path);
            if (item.value() instanceof Group inner) {
                mentions(inner, below);
            } else if (item.value() instanceof Word word) {
                mention(word, below, group.isFlow());
            }
        }
    }

    private void mention(Word word, String path, boolean flow) {
        Optional<Mentions.Form> form = Mentions.at(path, edit.kind());
        String said =
                form.map(how -> finder.replaced(word.text(), how, edit.to())).orElse(word.text());
        if (!said.equals(word.text())) {
            splices.add(new TextSplice(word.start(), word.end(), Scribe.value(said, flow, word.style())));
        }
    }
}
