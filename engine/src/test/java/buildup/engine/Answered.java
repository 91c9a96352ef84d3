package buildup.engine;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.engine.judge.verdict.Ruling;
import buildup.engine.judge.verdict.Topic;
import buildup.shared.document.DocumentReader;
import buildup.shared.figure.FigurePrinter;
import buildup.shared.notice.Level;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Answers about documents of a test, read with the check catalog. */
public final class Answered {
    private Answered() {}

    /** What is known of a document. */
    public static Answer of(String yaml) {
        return Answer.of(
                DocumentReader.read("stack.yaml", yaml.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Bench.checkCatalog());
    }

    /** Every answer about a document that is not refused. */
    public static Answers sound(String yaml) {
        Answer answer = of(yaml);
        assertThat(messages(answer, Level.REFUSAL)).isEmpty();
        return answer.known().orElseThrow();
    }

    /** The row of the verdict about a question; there has to be one. */
    public static Ruling row(String yaml, Topic topic) {
        return sound(yaml).verdict().rulings().stream()
                .filter(ruling -> ruling.topic() == topic)
                .findFirst()
                .orElseThrow();
    }

    /** What decides that row, in words. */
    public static String because(String yaml, Topic topic) {
        return new FigurePrinter(of(yaml).unit()).print(row(yaml, topic).because());
    }

    /** Its cure in words; empty where it has none. */
    public static String cure(String yaml, Topic topic) {
        return row(yaml, topic)
                .cure()
                .map(new FigurePrinter(of(yaml).unit())::print)
                .orElse("");
    }

    /** What is said at a level, in whole sentences with the cure behind. */
    public static List<String> messages(Answer answer, Level level) {
        NoticeWords words = NoticeWords.in(answer.unit());
        return answer.notices().stream()
                .filter(notice -> notice.level() == level)
                .map(notice -> said(words, notice))
                .toList();
    }

    private static String said(NoticeWords words, Notice notice) {
        return (words.message(notice) + " " + words.cure(notice)).strip();
    }
}
