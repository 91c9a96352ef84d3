package buildup.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.document.Mapping;
import buildup.shared.document.Scalar;
import buildup.shared.document.Sequence;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChaptersTest {
    @ParameterizedTest
    @ValueSource(strings = {"profiles.yaml", "boards.yaml", "woods.yaml", "fasteners.yaml", "cutters.yaml"})
    void every_entry_of_a_built_in_list_is_found_and_reads_as_it_does_in_the_whole(String file) throws IOException {
        byte[] bytes;
        try (InputStream in = Catalog.class.getResourceAsStream(file)) {
            bytes = in.readAllBytes();
        }
        Chapters chapters = Chapters.of(file, new String(bytes, StandardCharsets.UTF_8));
        Document whole = DocumentReader.read(file, bytes, new Notices()).orElseThrow();
        whole.root().entries().forEach(key -> {
            List<Mapping> entries = ((Sequence) key.value())
                    .items().stream().map(Mapping.class::cast).toList();
            assertThat(chapters.under(key.key().text()).keySet())
                    .containsExactlyElementsOf(entries.stream()
                            .map(entry -> ((Scalar) entry.get("name").orElseThrow()).text())
                            .toList());
            entries.forEach(entry -> assertThat(keys(chapters.under(key.key().text())
                            .get(((Scalar) entry.get("name").orElseThrow()).text())
                            .get()
                            .root()))
                    .isEqualTo(keys(entry)));
        });
    }

    private static List<String> keys(Mapping mapping) {
        return mapping.entries().stream().map(entry -> entry.key().text()).toList();
    }
}
