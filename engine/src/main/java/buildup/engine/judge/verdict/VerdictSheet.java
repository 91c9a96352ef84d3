package buildup.engine.judge.verdict;

import buildup.shared.sheet.Sheet;
import java.util.Locale;

/** The verdict as a sheet for programs; people read it as a block on top. */
public final class VerdictSheet {
    private VerdictSheet() {}

    /** One row a question that applies, in the order in which a mistake hurts. */
    public static Sheet of(Verdict verdict) {
        return Sheet.of("verdict", "WILL IT BE RIGHT?", verdict.rulings())
                .name("question", "question", ruling -> ruling.topic().word())
                .words("answer", "answer", ruling -> ruling.answer().name().toLowerCase(Locale.ROOT))
                .figureIf("figure", "figure that decides", Ruling::figure)
                .saying("because", "because", Ruling::because)
                .both()
                .sayingIf("cure", "cure", Ruling::cure)
                .both()
                .silent()
                .sheet();
    }
}
