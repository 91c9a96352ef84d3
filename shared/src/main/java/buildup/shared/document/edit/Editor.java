package buildup.shared.document.edit;

import buildup.shared.document.DocumentReader;
import buildup.shared.document.edit.TextPart.Form;
import buildup.shared.document.edit.TextPart.Group;
import buildup.shared.document.edit.TextPart.Item;
import buildup.shared.document.edit.TextPart.Style;
import buildup.shared.document.edit.TextPart.Word;
import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.edit.Naming;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Carries out edits of a document. Each touches only the characters it must. */
public final class Editor {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final ParsedText source;

    private Editor(ParsedText source) {
        this.source = source;
    }

    /**
     * The text with edits done, one after the other. An edit that cannot be done is a refusal, and nothing is done then;
     * so is a document that cannot be read, before or after.
     *
     * @param file the name for messages
     * @param text as in the file, a byte order mark included
     */
    public static Optional<String> edit(String file, String text, List<Edit> edits, Notices notices) {
        if (!isReadable(file, text, notices)) {
            return Optional.empty();
        }
        String mark = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : "";
        String edited = text.substring(mark.length());
        try {
            for (Edit edit : edits) {
                edited = new Editor(source(edited)).edited(edit);
            }
        } catch (EditRefused unable) {
            notices.add(unable.notice());
            return Optional.empty();
        }
        return isReadable(file, mark + edited, notices) ? Optional.of(mark + edited) : Optional.empty();
    }

    /** What a person means who types this: a list in brackets, keys in braces or a quoted text, or else a text. */
    public static Content typed(String words) {
        boolean yaml = Scribe.single(words)
                .filter(part -> part instanceof Group || (part instanceof Word word && word.style() != Style.PLAIN))
                .isPresent();
        return yaml ? new Content.Yaml(words.strip()) : new Content.Text(words);
    }

    private static boolean isReadable(String file, String text, Notices notices) {
        Notices found = new Notices();
        DocumentReader.read(file, text.getBytes(StandardCharsets.UTF_8), found);
        notices.addAll(found.sorted());
        return !found.refused();
    }

    private static ParsedText source(String text) throws EditRefused {
        return ParsedText.of(text).orElseThrow(() -> new EditRefused(EditNotices.BROKEN.notice()));
    }

    private String edited(Edit edit) throws EditRefused {
        return TextSplice.all(source.text(), splices(edit));
    }

    private List<TextSplice> splices(Edit edit) throws EditRefused {
        if (edit instanceof Edit.Set set) {
            return set(set);
        }
        if (edit instanceof Edit.Add add) {
            return add(add);
        }
        if (edit instanceof Edit.Remove remove) {
            Target.Entry entry = DocumentPlaces.existing(source, remove.place());
            unshared(entry, remove.place(), entry.value());
            return remove(plain(entry.in(), remove.place()), entry.index());
        }
        if (edit instanceof Edit.Move move) {
            Target.Entry entry = DocumentPlaces.existing(source, move.place());
            unshared(entry, move.place());
            return move(plain(entry.in(), move.place()), entry.index(), move.position());
        }
        return Renaming.of(source, (Edit.Rename) edit);
    }

    private List<TextSplice> set(Edit.Set edit) throws EditRefused {
        Target target = DocumentPlaces.find(source, edit.place());
        unshared(target, edit.place());
        if (target instanceof Target.Missing missing) {
            return create(missing, edit);
        }
        Target.Entry entry = (Target.Entry) target;
        Optional<Naming> name = Renaming.kindOf(source, entry.value());
        if (name.isPresent() && entry.value() instanceof Word word) {
            return Renaming.of(source, new Edit.Rename(name.get(), word.text(), textOf(edit.value())));
        }
        unshared(target, edit.place(), entry.value());
        Style before = entry.value() instanceof Word word ? word.style() : Style.PLAIN;
        return replace(entry, written(edit.value(), entry.in().isFlow(), before));
    }

    private static String textOf(Content content) throws EditRefused {
        if (content instanceof Content.Yaml yaml) {
            return single(yaml) instanceof Word word ? word.text() : "";
        }
        return ((Content.Text) content).text();
    }

    private static TextPart single(Content.Yaml yaml) throws EditRefused {
        return Scribe.single(yaml.source())
                .orElseThrow(() -> new EditRefused(EditNotices.NO_VALUE.with("source", yaml.source())));
    }

    private static String written(Content content, boolean flow, Style before) throws EditRefused {
        if (content instanceof Content.Yaml yaml) {
            single(yaml);
            return yaml.source().strip();
        }
        return Scribe.value(((Content.Text) content).text(), flow, before);
    }

    /** Refuses what would show in other places too. */
    private void unshared(Target target, String place) throws EditRefused {
        if (target.shared().isPresent()) {
            throw showsElsewhere(place, target.shared().get());
        }
    }

    /** Refuses to take away what other places repeat. */
    private void unshared(Target target, String place, TextPart goes) throws EditRefused {
        unshared(target, place);
        Set<String> repeated = source.repeated();
        Optional<String> mark = goes.all()
                .flatMap(part -> part.anchor().stream())
                .filter(repeated::contains)
                .findFirst();
        if (mark.isPresent()) {
            throw showsElsewhere(place, mark.get());
        }
    }

    private static EditRefused showsElsewhere(String place, String mark) {
        return new EditRefused(EditNotices.SHOWS_ELSEWHERE.with("place", place).with("mark", mark));
    }

    /** The group, unless it is written in a way that only its author can change. */
    private Group plain(Group group, String place) throws EditRefused {
        boolean odd = group.form() == Form.BARE
                || group.items().stream().flatMap(item -> item.key().stream()).anyMatch(this::isExplicit)
                || group.items().stream().map(Item::value).anyMatch(this::hangsOnLinesBelow);
        if (odd) {
            throw new EditRefused(EditNotices.ODD_FORM.with("place", place));
        }
        return group;
    }

    private boolean isExplicit(Word key) {
        int before = source.beforeBlanks(key.start());
        return before > 0 && before < key.start() && source.at(before - 1) == '?';
    }

    /** Whether a value may say something else when lines come below it or go: lines that keep blank ones, or end a file. */
    private boolean hangsOnLinesBelow(TextPart value) {
        if (value instanceof Group group && !group.isFlow()) {
            return hangsOnLinesBelow(group.items().get(group.items().size() - 1).value());
        }
        return value instanceof Word word
                && (word.style() == Style.KEPT_LINES || (word.style() == Style.LINES && !endsWithBreak()));
    }

    private boolean endsWithBreak() {
        int length = source.text().length();
        return source.beforeBreak(length) < length;
    }

    private List<TextSplice> replace(Target.Entry entry, String written) {
        Item item = entry.item();
        TextPart value = item.value();
        if (value instanceof Word word && word.isAbsent()) {
            boolean colon = item.key().isEmpty() || behindColon(item) <= word.start();
            return List.of(TextSplice.insert(word.start(), (colon ? " " : ": ") + written));
        }
        boolean below = value instanceof Group group && !group.isFlow() && source.beginsLine(group.start());
        if (!below) {
            return List.of(new TextSplice(value.start(), value.end(), written));
        }
        int head = item.key().isPresent() ? behindColon(item) : item.start() + 1;
        int headEnd = source.lineEnd(head);
        boolean commentOrNothing = source.behindSpace(head) >= headEnd;
        return commentOrNothing
                ? List.of(TextSplice.insert(head, " " + written), TextSplice.cut(headEnd, source.lineEnd(value.end())))
                : List.of(new TextSplice(head, source.lineEnd(value.end()), " " + written));
    }

    /** Behind the colon of a key; beyond the value if there is none. */
    private int behindColon(Item item) {
        int at = source.behindSpace(item.key().map(Word::end).orElse(item.start()));
        return source.at(at) == ':' ? at + 1 : Integer.MAX_VALUE;
    }

    private List<TextSplice> create(Target.Missing missing, Edit.Set edit) throws EditRefused {
        List<String> keys = missing.keys();
        boolean deep = keys.size() > 1;
        Optional<Target.Entry> holder = missing.holder();
        if (holder.isPresent() && !(holder.get().value() instanceof Group)) {
            return replace(holder.get(), inBraces(keys, edit.value()));
        }
        Group group = plain((Group) holder.map(Target.Entry::value).orElse(source.root()), edit.place());
        boolean flow = group.isFlow();
        String value =
                deep ? inBraces(keys.subList(1, keys.size()), edit.value()) : written(edit.value(), flow, Style.PLAIN);
        return insert(group, group.items().size(), key(keys.get(0), flow) + " " + value);
    }

    private static String key(String key, boolean flow) {
        return Scribe.key(key, flow, Style.PLAIN) + ":";
    }

    private static String inBraces(List<String> keys, Content content) throws EditRefused {
        String written = written(content, true, Style.PLAIN);
        for (int i = keys.size() - 1; i >= 0; i--) {
            written = "{ " + key(keys.get(i), true) + " " + written + " }";
        }
        return written;
    }

    private List<TextSplice> add(Edit.Add edit) throws EditRefused {
        Target target = DocumentPlaces.find(source, edit.list());
        unshared(target, edit.list());
        if (target instanceof Target.Missing missing) {
            return addTo(missing, edit);
        }
        Target.Entry entry = (Target.Entry) target;
        if (entry.value() instanceof Word word && word.text().isBlank()) {
            return addTo(entry, word, edit);
        }
        Optional<String> mark = entry.value() instanceof TextPart.Repeat repeat
                ? Optional.of(repeat.name())
                : entry.value().anchor().filter(source.repeated()::contains);
        if (mark.isPresent()) {
            throw showsElsewhere(edit.list(), mark.get());
        }
        if (!(entry.value() instanceof Group list) || list.mapping()) {
            throw new EditRefused(EditNotices.NO_LIST.with("place", edit.list()));
        }
        plain(list, edit.list());
        String written = written(edit.entry(), list.isFlow(), Style.PLAIN);
        int index = Math.max(0, Math.min(edit.position() - 1, list.items().size()));
        return insert(list, index, list.isFlow() ? written : "- " + written);
    }

    /** A list under a key that is not there yet. */
    private List<TextSplice> addTo(Target.Missing missing, Edit.Add edit) throws EditRefused {
        Optional<TextPart> holder = missing.holder().map(Target.Entry::value);
        if (missing.keys().size() > 1 || (holder.isPresent() && !(holder.get() instanceof Group))) {
            throw new EditRefused(EditNotices.NO_LIST.with("place", edit.list()));
        }
        Group group = plain((Group) holder.orElse(source.root()), edit.list());
        String key = key(missing.keys().get(0), group.isFlow());
        String list = group.isFlow()
                ? " [" + written(edit.entry(), true, Style.PLAIN) + "]"
                : below(group.items().get(0), written(edit.entry(), false, Style.PLAIN));
        return insert(group, group.items().size(), key + list);
    }

    /** A list where the value was left out. */
    private List<TextSplice> addTo(Target.Entry entry, Word nothing, Edit.Add edit) throws EditRefused {
        boolean asLines = !entry.in().isFlow() && entry.item().key().isPresent() && nothing.isAbsent();
        return asLines
                ? List.of(TextSplice.insert(
                        source.lineEnd(nothing.start()),
                        below(entry.item(), written(edit.entry(), false, Style.PLAIN))))
                : replace(entry, "[" + written(edit.entry(), true, Style.PLAIN) + "]");
    }

    private String below(Item item, String entry) {
        return source.lineBreak() + " ".repeat(source.column(item.start()) + 2) + "- " + entry;
    }

    private List<TextSplice> insert(Group group, int index, String entry) {
        return group.isFlow()
                ? new FlowLine(source, group).insert(index, entry)
                : new BlockLines(source, group).insert(index, entry);
    }

    private List<TextSplice> remove(Group group, int index) {
        return group.isFlow() ? new FlowLine(source, group).remove(index) : new BlockLines(source, group).remove(index);
    }

    private List<TextSplice> move(Group group, int from, int position) {
        int to = Math.max(0, Math.min(position - 1, group.items().size() - 1));
        if (to == from) {
            return new ArrayList<>();
        }
        return group.isFlow()
                ? new FlowLine(source, group).move(from, to)
                : new BlockLines(source, group).move(from, to);
    }
}
