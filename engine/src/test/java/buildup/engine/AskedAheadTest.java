package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.shared.document.Claims;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notices;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether one thread asks or two, the answers are the same. */
class AskedAheadTest {
    private static Document demo(String name) throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("../catalog/demo/reading-room-" + name + ".yaml"));
        return DocumentReader.read(name + ".yaml", bytes, new Notices()).orElseThrow();
    }

    private static Answer whole(Document document) {
        return Answer.whole(document, Catalog.builtIn(), new Claims(), new Notices(), Optional.empty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"cornice", "case", "door-head", "mantel", "wainscot-cap"})
    void every_sheet_and_notice_is_the_same(String name) throws IOException {
        Document document = demo(name);
        Answer alone = Answer.of(document, Catalog.builtIn());
        Answer ahead = whole(document);
        assertThat(Sheets.of(ahead.known().orElseThrow()))
                .isEqualTo(Sheets.of(alone.known().orElseThrow()));
        assertThat(ahead.notices()).isEqualTo(alone.notices());
    }

    @RepeatedTest(20)
    void it_does_not_matter_which_thread_comes_first() throws IOException {
        Answers known = whole(demo("mantel")).known().orElseThrow();
        // the other thread begins with these too
        assertThat(List.of(known.errors(), known.year(), known.order(), known.support(), known.proposals()))
                .doesNotContainNull();
        assertThat(known.notices())
                .isEqualTo(whole(demo("mantel")).known().orElseThrow().notices());
    }

    @Test
    void what_is_asked_twice_is_answered_once() throws Exception {
        int[] times = {0};
        LazyAnswer<Object> lazy = new LazyAnswer<>(notices -> {
            times[0]++;
            return new Object();
        });
        Thread other = new Thread(lazy::answer);
        other.start();
        Object here = lazy.answer();
        other.join();
        assertThat(lazy.answer()).isSameAs(here);
        assertThat(times[0]).isEqualTo(1);
    }
}
