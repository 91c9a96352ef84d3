package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import buildup.catalog.Catalog;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The engine used as a library, as its package documentation says. */
class FrontDoorTest {
    private static final String CAP = "title: cap\nspace: { wall: { solid: no }, ceiling: 3-1/2 }\npieces:\n"
            + "  - { name: post, kind: framing, section: [out 4, up 3], back: wall, bottom: 0 }\n"
            + "  - { name: cap, profile: board 3/4 x 5-1/2, lay: flat, back: wall, bottom: post.top }\n";

    @Test
    void five_lines_lead_from_a_document_to_a_figure() {
        byte[] bytes = CAP.getBytes(StandardCharsets.UTF_8);
        Notices said = new Notices();
        Document document = DocumentReader.read("cornice.yaml", bytes, said).orElseThrow();
        Answer answer = Answer.of(document, Catalog.builtIn());
        double height = answer.known().orElseThrow().section().totals().height();
        List<Notice> notices = answer.notices();
        assertThat(height).isEqualTo(0.75, within(1e-12));
        assertThat(notices).extracting(Notice::code).contains("too-tall");
    }

    @Test
    void what_concerns_one_question_leaves_out_what_concerns_another() {
        Document document = DocumentReader.read("cap.yaml", CAP.getBytes(StandardCharsets.UTF_8), new Notices())
                .orElseThrow();
        Answer answer = Answer.of(document, Catalog.builtIn());
        assertThat(answer.notices(EnumSet.of(Question.LIGHT)))
                .extracting(Notice::code)
                .doesNotContain("too-tall");
    }
}
