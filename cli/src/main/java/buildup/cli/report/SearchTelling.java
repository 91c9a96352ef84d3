package buildup.cli.report;

import buildup.cli.tell.FileSchema;
import buildup.cli.tell.Schema;
import buildup.cli.tell.Telling;
import buildup.engine.Searched;
import buildup.engine.judge.along.WhyNot;
import buildup.engine.judge.search.SearchSheets;
import buildup.engine.judge.search.SearchWords;
import buildup.shared.figure.Phrase;
import buildup.shared.notice.NoticeSheet;
import buildup.shared.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a search has found, ready to be written. */
public final class SearchTelling {
    /** Of what programs are told; asked for by its name. */
    public static final Schema SCHEMA = new Schema(
            "search",
            () -> FileSchema.of(
                    "search",
                    "What a search through the free sizes of a stack has found",
                    FileSchema.content(
                            sheets(Optional.empty(), Map.of(), 0), NoticeSheet.of(List.of(), Optional.empty()))));

    private SearchTelling() {}

    /**
     * The answer in words, and what stands behind it.
     *
     * @param files by the choices of an answer, the file into which it was written
     * @param seconds that the search took
     */
    public static Telling of(Searched searched, Map<List<Integer>, String> files, double seconds) {
        String title = searched.answer().title();
        if (searched.result().isEmpty() && searched.why().isEmpty()) {
            return Telling.refused(title, searched.unit());
        }
        List<Phrase> first = searched.result()
                .map(SearchWords::said)
                .orElseGet(() -> WhyNot.said(searched.why().orElseThrow()));
        return new Telling(
                title,
                searched.unit(),
                first,
                sheets(Optional.of(searched), files, seconds),
                List.of(),
                Optional.empty());
    }

    private static List<Sheet> sheets(Optional<Searched> searched, Map<List<Integer>, String> files, double seconds) {
        List<Sheet> sheets = new ArrayList<>();
        if (searched.isEmpty() || searched.get().result().isPresent()) {
            sheets.addAll(SearchSheets.of(
                    searched.flatMap(Searched::result),
                    searched.map(Searched::sizes).orElse(List.of()),
                    files,
                    seconds));
        }
        if (searched.isEmpty() || searched.get().why().isPresent()) {
            sheets.add(WhyNot.sheet(searched.flatMap(Searched::why)));
        }
        return List.copyOf(sheets);
    }
}
