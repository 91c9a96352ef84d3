package buildup.shared.notice;

import buildup.shared.figure.Figure;
import buildup.shared.figure.Named;
import buildup.shared.figure.Quantity;
import buildup.shared.figure.Rounding;
import buildup.shared.sheet.Columns;
import buildup.shared.sheet.Sheet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a run has to say as a sheet. */
public final class NoticeSheet {
    private NoticeSheet() {}

    /**
     * A row for each notice, in their order; of very many, the first and a count of the rest.
     *
     * @param file what is named where a notice has no place of its own
     */
    public static Sheet of(List<Notice> notices, Optional<String> file) {
        return Sheet.of("notices", "NOTICES", FewNotices.of(notices))
                .name("level", "level", notice -> notice.level().name().toLowerCase(Locale.ROOT))
                .name("code", "code", Notice::code)
                .wordsIf("file", "file", notice -> notice.mark().map(Mark::file).or(() -> file))
                .alone()
                .measureIf("line", "line", Quantity.COUNT, Rounding.NEAREST, NoticeSheet::line)
                .alone()
                .nameIf("piece", "piece", Notice::piece)
                .nameIf("about", "about", notice -> Optional.of(String.join(", ", notice.about())))
                .json()
                .figureIf("amount", "amount", Notice::amount)
                .many("values", "figures of the sentence", values(), Notice::figures)
                .json()
                .alone()
                .saying("message", "what is the matter", Notice::sentence)
                .both()
                .alone()
                .sayingIf("cure", "what to do", Notice::cure)
                .both()
                .alone()
                .sheet();
    }

    private static OptionalDouble line(Notice notice) {
        return notice.mark()
                .filter(Mark::hasLine)
                .map(mark -> OptionalDouble.of(mark.line()))
                .orElse(OptionalDouble.empty());
    }

    private static Columns<Named> values() {
        return Columns.<Named>inner()
                .name("name", "name", Named::name)
                .words(
                        "kind",
                        "kind",
                        named -> named.value() instanceof Figure figure
                                ? figure.quantity().kind()
                                : "text")
                .value("value", "value", Named::value);
    }
}
