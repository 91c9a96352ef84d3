package buildup.cli.command.search;

import buildup.cli.command.files.OutputFile;
import buildup.cli.page.SearchPage;
import buildup.cli.report.NoticeText;
import buildup.cli.tell.Telling;
import buildup.cli.write.ShippedFont;
import buildup.engine.Searched;
import buildup.engine.judge.search.Answered;
import buildup.engine.judge.search.SearchResult;
import buildup.engine.section.free.FreeSize;
import buildup.shared.document.edit.Editor;
import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The folder into which a search writes its answers: each a stack as its author wrote it, with the sizes found in the
 * place of the free ones.
 *
 * @param text of the document that was searched
 * @param name of it, for messages
 * @param catalogs that it names, by the names that it gives them
 */
record SearchFolder(Path folder, String text, String name, Map<String, byte[]> catalogs) {
    /**
     * Writes the answers, and beside them the catalogs that the document names, which they name too. The folder is there.
     *
     * @param inputs files that must not be overwritten
     * @return by the choices of an answer, the name of its file; none when something cannot be written
     */
    public Map<List<Integer>, String> write(Searched searched, List<Path> inputs, Notices notices) {
        Map<List<Integer>, String> files = new LinkedHashMap<>();
        SearchResult result = searched.result().orElseThrow();
        for (int i = 0; i < result.best().size(); i++) {
            put(files, "best-" + (i + 1) + ".yaml", result.best().get(i), searched.sizes(), inputs, notices);
        }
        result.smallest().ifPresent(one -> put(files, "smallest-change.yaml", one, searched.sizes(), inputs, notices));
        result.nearest().ifPresent(one -> put(files, "gives-up-least.yaml", one, searched.sizes(), inputs, notices));
        catalogs.forEach((file, bytes) -> putCatalog(folder.resolve(file), bytes, notices));
        return files;
    }

    /** One that lies there already, as where the answers lie beside the document, stays as it is. */
    private static void putCatalog(Path path, byte[] bytes, Notices notices) {
        Path beside = Optional.ofNullable(path.getParent()).orElse(Path.of(""));
        if (!OutputFile.holds(path, bytes) && OutputFile.folder(beside, notices)) {
            OutputFile.writeNew(path, bytes, notices);
        }
    }

    /**
     * Writes the page that shows the answers beside each other.
     *
     * @param files as {@link #write} has returned them
     */
    public void page(
            Searched searched, Telling telling, Map<List<Integer>, String> files, List<Path> inputs, Notices notices) {
        SearchResult result = searched.result().orElseThrow();
        List<SearchPage.Small> stacks = new ArrayList<>();
        stacks.add(small(searched, "today", "", result.today()));
        for (int i = 0; i < result.best().size(); i++) {
            stacks.add(small(
                    searched,
                    "best " + (i + 1),
                    file(files, result.best().get(i)),
                    result.best().get(i)));
        }
        result.smallest()
                .filter(one -> file(files, one).startsWith("smallest"))
                .ifPresent(one -> stacks.add(small(searched, "smallest change", file(files, one), one)));
        result.nearest().ifPresent(one -> stacks.add(small(searched, "gives up least", file(files, one), one)));
        List<NoticeText.Said> said = NoticeText.said(searched.notices(), name, searched.unit());
        String html = SearchPage.of(telling, name, said, stacks, ShippedFont.load());
        OutputFile.write(folder.resolve("index.html"), html.getBytes(StandardCharsets.UTF_8), inputs, notices);
    }

    private static String file(Map<List<Integer>, String> files, Answered answered) {
        return files.getOrDefault(answered.candidate().choices(), "");
    }

    private static SearchPage.Small small(Searched searched, String called, String file, Answered answered) {
        return new SearchPage.Small(
                called,
                file,
                answered.changes().stream()
                        .map(change -> change.key() + " " + change.to())
                        .collect(Collectors.joining(", ")),
                searched.stacks().apply(answered.candidate().texts()));
    }

    private void put(
            Map<List<Integer>, String> files,
            String file,
            Answered answered,
            List<FreeSize> sizes,
            List<Path> inputs,
            Notices notices) {
        List<Integer> choices = answered.candidate().choices();
        if (files.containsKey(choices)) {
            return;
        }
        List<Edit> edits = IntStream.range(0, sizes.size())
                .mapToObj(i -> (Edit) new Edit.Set(
                        sizes.get(i).place(),
                        new Content.Text(sizes.get(i).choices().get(choices.get(i)))))
                .toList();
        Optional<String> edited = Editor.edit(name, text, edits, notices);
        if (edited.isPresent()
                && OutputFile.write(
                        folder.resolve(file), edited.get().getBytes(StandardCharsets.UTF_8), inputs, notices)) {
            files.put(choices, file);
        }
    }
}
