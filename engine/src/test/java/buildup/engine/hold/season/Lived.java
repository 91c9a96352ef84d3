package buildup.engine.hold.season;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.catalog.Catalog;
import buildup.engine.Answer;
import buildup.engine.Answers;
import buildup.engine.Question;
import buildup.shared.document.DocumentReader;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;

/** A stack document asked for its year. */
final class Lived {
    private final Answer answer;

    private Lived(Answer answer) {
        this.answer = answer;
    }

    /** On a solid wall, in poplar, from 7 % to the seasons given; pieces and what else the document holds, a line each. */
    static Lived of(String seasons, String... lines) {
        return read("wood: yellow-poplar\nspace: { floor: -84, ceiling: 24, wall: { solid: yes } }\nseasons:\n"
                + "  - { name: built, moisture: 7 % }\n  - " + seasons.replace("; ", "\n  - ") + "\n"
                + String.join("\n", lines) + "\n");
    }

    static Lived read(String text) {
        return new Lived(Answer.of(
                DocumentReader.read("stack.yaml", text.getBytes(StandardCharsets.UTF_8), new Notices())
                        .orElseThrow(),
                Catalog.builtIn()));
    }

    Answers known() {
        return answer.known().orElseThrow(() -> new AssertionError(answer.read().toString()));
    }

    Year year() {
        return known().year();
    }

    int body(String name) {
        for (int i = 0; i < known().section().bodies().size(); i++) {
            if (known().section().name(i).equals(name)) {
                return i;
            }
        }
        throw new AssertionError(name);
    }

    /** How much higher a piece is in a season. */
    double grown(String piece, String season) {
        return year().movements().stream()
                .filter(one -> one.body() == body(piece) && one.up() && named(one.season(), season))
                .findFirst()
                .orElseThrow()
                .amount();
    }

    private boolean named(int number, String season) {
        return year().seasons().get(number).name().equals(season);
    }

    Effect effect(String what, String season) {
        return year().effects().stream()
                .filter(one -> one.name().equals(what) && named(one.season(), season))
                .findFirst()
                .orElseThrow(() -> new AssertionError(year().effects().stream()
                        .map(Effect::name)
                        .distinct()
                        .toList()
                        .toString()));
    }

    Held.How how(String piece) {
        return year().held().stream()
                .filter(one -> one.body() == body(piece))
                .findFirst()
                .orElseThrow()
                .how();
    }

    /** Codes of what was said of the seasons, and in reading the document. */
    List<String> codes() {
        return notices().stream().map(Notice::code).toList();
    }

    List<Notice> notices() {
        return answer.notices(EnumSet.of(Question.SEASON));
    }

    /** The one notice of that code, in words. */
    String said(String code) {
        List<Notice> found =
                notices().stream().filter(notice -> notice.code().equals(code)).toList();
        assertThat(found).as(codes().toString()).isNotEmpty();
        Notice notice = found.get(0);
        NoticeWords words = NoticeWords.in(answer.unit());
        return words.message(notice) + " " + words.cure(notice);
    }
}
