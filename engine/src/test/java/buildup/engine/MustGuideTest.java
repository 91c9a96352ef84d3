package buildup.engine;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.judge.must.Musts;
import buildup.engine.judge.must.Musts.Askable;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The page of the guide that lists what a line under {@code must:} may ask for. {@code -Dbuildup.update} writes it anew. */
class MustGuideTest {
    private static final Path PAGE = Path.of("../cli/guide/must.md");
    private static final Path DEMOS = Path.of("../catalog/demo");

    private static final String HEAD = """
            # What `must:` may ask for

            A line reads `figure [of piece[.member]] [over piece] [in light or season] [from eye] comparison value [within value]`, as
            `reveal of bead over frieze >= 1/4`. The comparison is one of `<=`, `>=`, `<`, `>`, `=`; `=` without `within` means within
            1/256 in (1 % for shares, which are given in percent; a bare number up to 1 is refused, since
            it may be either). Without a name that narrows it down, a line asks for the figure that meets it worst. Two words
            that are written the same are told apart by the names behind them, by the unit of the value, or by quotes around the first.

            Behind `of` may stand a piece, or a row by its own name, as `bite of apron nails`. Nails are those that are driven; one that
            the report only offers is asked for by the name of its row, as `bite of nail 1`.

            What the stack has none of is 0: a joint that is closed has no gap, a face in full light no shadow, and what stands does not
            fall. So a line that asks for at most so much is met, and one that asks for at least so much is not. What nothing bounds is
            more than any value: a block that no load brings down meets `load factor >= 2`. What the document does not ask for, and what
            is not known, meets no line.

            This list is drawn up from the sheets of the report.

            | figure | in the sheet | unit | may be narrowed by |
            |---|---|---|---|
            """;

    private static List<Askable> askable() throws IOException {
        Set<Askable> all = new LinkedHashSet<>();
        try (var files = Files.list(DEMOS)) {
            for (Path demo : files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList()) {
                DocumentReader.read(demo.toString(), Files.readAllBytes(demo), new Notices())
                        .map(document -> Answer.of(document, Catalog.builtIn()))
                        .flatMap(Answer::known)
                        .ifPresent(known -> all.addAll(Musts.askable(known.sheets())));
            }
        }
        return List.copyOf(all);
    }

    private static String page() throws IOException {
        Map<List<String>, Set<String>> rows = new LinkedHashMap<>();
        for (Askable one : askable()) {
            String sheet = one.sheet().split("[:;,(]| since")[0];
            String narrowed = String.join(", ", one.narrowed()).replace(" .", " .member");
            List<String> row = List.of(sheet, one.unit(), narrowed);
            rows.computeIfAbsent(row, key -> new TreeSet<>()).add("`" + one.word() + "`");
        }
        return HEAD
                + rows.entrySet().stream()
                        .map(row -> "| " + String.join(", ", row.getValue()) + " | " + String.join(" | ", row.getKey())
                                + " |\n")
                        .collect(Collectors.joining());
    }

    @Test
    void the_guide_lists_every_figure_of_the_sheets() throws IOException {
        String page = page();
        if (System.getProperty("buildup.update") != null) {
            Files.writeString(PAGE, page, UTF_8);
        }
        assertThat(Files.readString(PAGE, UTF_8))
                .as("%s; -Dbuildup.update writes it anew", PAGE)
                .isEqualTo(page);
    }

    @Test
    void what_people_ask_for_most_is_among_them() throws IOException {
        assertThat(askable().stream().map(Askable::word))
                .contains("height", "projection", "reveal", "bearing", "dark", "seen", "load factor");
    }
}
