package buildup.engine.hold.order;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.section.compose.Section;
import buildup.shared.document.Document;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A stack asked for its order. */
record Ordered(Section section, PuttingUp order, List<Notice> notices) {
    /** Pieces, one a line, in a space. */
    static Ordered in(String space, String... pieces) {
        return with(space, "", pieces);
    }

    /** The same with more blocks of the document. */
    static Ordered with(String space, String blocks, String... pieces) {
        StringBuilder text =
                new StringBuilder("title: order\nwood: yellow-poplar\nspace: " + space + "\n" + blocks + "pieces:\n");
        for (String piece : pieces) {
            text.append("  - { ").append(piece).append(" }\n");
        }
        return of(text.toString());
    }

    static Ordered of(String yaml) {
        Answer answer = answer(yaml);
        assertThat(answer.known()).as(answer.notices().toString()).isPresent();
        return new Ordered(
                answer.known().orElseThrow().section(),
                answer.known().orElseThrow().order(),
                answer.notices());
    }

    static Answer answer(String yaml) {
        Notices notices = new Notices();
        Document document = DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), notices)
                .orElseThrow(() -> new AssertionError(notices.sorted().toString()));
        return Answer.of(document, Catalog.builtIn());
    }

    PutUp step(String piece) {
        return order.steps().stream()
                .filter(step -> step.unit().bodies().stream()
                        .anyMatch(body -> section.name(body).equals(piece)))
                .findFirst()
                .orElseThrow();
    }

    List<String> blockers(String piece) {
        return step(piece).blockedBy().stream().map(section::name).toList();
    }

    List<String> instead() {
        List<String> names = new ArrayList<>();
        order.instead().orElse(List.of()).forEach(unit -> names.add(section.name(unit.last())));
        return names;
    }

    List<String> join() {
        return order.join().stream().map(section::name).toList();
    }

    List<Notice> notices(String code) {
        return notices.stream().filter(notice -> notice.code().equals(code)).toList();
    }
}
