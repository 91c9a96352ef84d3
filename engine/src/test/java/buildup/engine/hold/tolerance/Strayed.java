package buildup.engine.hold.tolerance;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Question;
import buildup.engine.section.compose.Section;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;

/** A stack document asked what its errors come to. */
final class Strayed {
    private final Answer answer;

    private Strayed(Answer answer) {
        this.answer = answer;
    }

    /** In poplar, without a wall; lines of the document, the pieces among them. */
    static Strayed of(String... lines) {
        return read("wood: yellow-poplar\nspace: { wall: { solid: no } }\n" + String.join("\n", lines) + "\n");
    }

    static Strayed read(String text) {
        return new Strayed(Answer.of(
                DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn()));
    }

    Answers known() {
        return answer.known().orElseThrow(() -> new AssertionError(answer.read().toString()));
    }

    Section section() {
        return known().section();
    }

    ErrorStudy study() {
        return known().errors();
    }

    ErrorFigure figure(String name) {
        return study().figures().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(study().figures().stream()
                        .map(ErrorFigure::name)
                        .toList()
                        .toString()));
    }

    /** Names of what matters to a figure, in order. */
    List<String> order(String name) {
        return study().order(figure(name)).stream()
                .map(source -> study().sources().get(source).name())
                .toList();
    }

    double spread(String source) {
        return study().sources().stream()
                .filter(one -> one.name().equals(source))
                .mapToDouble(ErrorSource::spread)
                .findFirst()
                .orElse(0);
    }

    List<String> codes() {
        return notices().stream().map(Notice::code).toList();
    }

    List<Notice> notices() {
        return answer.notices(EnumSet.of(Question.TOLERANCE));
    }

    String said(String code) {
        return notices().stream()
                .filter(notice -> notice.code().equals(code))
                .map(notice -> NoticeWords.in(answer.unit()).message(notice) + " "
                        + NoticeWords.in(answer.unit()).cure(notice))
                .findFirst()
                .orElseThrow(() -> new AssertionError(codes().toString()));
    }
}
