package buildup.shared.document.edit;

import static org.assertj.core.api.Assertions.assertThat;

import buildup.shared.edit.Content;
import buildup.shared.edit.Edit;
import buildup.shared.notice.Mark;
import buildup.shared.notice.Notice;
import buildup.shared.notice.NoticeWords;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A text after edits, and what was said. */
record Edited(Optional<String> text, List<Notice> notices) {

    static Edited of(String text, Edit... edits) {
        Notices notices = new Notices();
        Optional<String> edited = Editor.edit("cornice.yaml", text, List.of(edits), notices);
        return new Edited(edited, notices.sorted());
    }

    static Edited set(String text, String place, String typed) {
        return of(text, new Edit.Set(place, Editor.typed(typed)));
    }

    static Edited add(String text, String list, int position, String typed) {
        return of(text, new Edit.Add(list, position, Editor.typed(typed)));
    }

    static Edited remove(String text, String place) {
        return of(text, new Edit.Remove(place));
    }

    static Edited move(String text, String place, int position) {
        return of(text, new Edit.Move(place, position));
    }

    static Content yaml(String source) {
        return new Content.Yaml(source);
    }

    void gives(String text) {
        assertThat(said()).isEmpty();
        assertThat(this.text).contains(text);
    }

    /** Nothing came of it, and this was said: level, code, place, sentence and cure. */
    void refuses(String words) {
        assertThat(text).isEmpty();
        assertThat(said()).isEqualTo(words);
    }

    String said() {
        return notices.stream()
                .map(notice -> notice.level() + " " + notice.code() + " "
                        + notice.mark().map(Mark::toString).orElse("-") + " " + NoticeWords.INCHES.message(notice)
                        + " " + NoticeWords.INCHES.cure(notice))
                .collect(Collectors.joining("\n"));
    }
}
