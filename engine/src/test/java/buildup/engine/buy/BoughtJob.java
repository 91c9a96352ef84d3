package buildup.engine.buy;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.shared.document.DocumentReader;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Jobs of the tests of what is bought, by the built-in lists. */
final class BoughtJob {
    /** A frieze with a cap on it, on a solid wall; areas of their outlines 4.125 and 1.875 sq in. */
    static final String SHELF = """
            title: Study
            wood: yellow-poplar
            space: { floor: -84, ceiling: 12 }
            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }
              - { name: cap, profile: board 3/4 x 2-1/2, lay: flat, back: wall, bottom: frieze.top }
            """;

    /** The frieze alone. */
    static final String FRIEZE = """
            title: Study
            wood: yellow-poplar
            space: { floor: -84, ceiling: 12 }
            pieces:
              - { name: frieze, profile: board 3/4 x 5-1/2, back: wall, bottom: datum }
            """;

    private BoughtJob() {}

    static Answer answer(String yaml) {
        return Answer.of(
                DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn());
    }

    static Purchases purchases(String yaml) {
        Answer answer = answer(yaml);
        assertThat(said(answer, Level.REFUSAL)).isEmpty();
        return answer.known().map(Answers::purchases).orElseThrow();
    }

    /** What is said at a level, with the cure behind it. */
    static List<String> said(Answer answer, Level level) {
        NoticeWords words = NoticeWords.in(answer.unit());
        return answer.notices().stream()
                .filter(notice -> notice.level() == level)
                .map(notice -> (words.message(notice) + " " + words.cure(notice)).strip())
                .toList();
    }

    static Bought bought(Purchases purchases, String name) {
        FigurePrinter printer = new FigurePrinter(purchases.section().stack().unit());
        return purchases.bought().stream()
                .filter(one -> printer.print(one.called()).equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name + " in " + purchases.bought()));
    }

    /** One straight stretch, its ends as given. */
    static String wall(String ends, String length) {
        return "plan:\n  - { name: run, " + ends + ", stretches: [{ name: wall, length: " + length + " }] }\n";
    }
}
