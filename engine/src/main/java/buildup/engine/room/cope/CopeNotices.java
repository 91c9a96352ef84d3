package buildup.engine.room.cope;

import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What copes give cause to say. */
final class CopeNotices {
    private static final Code THIN_CODE = Code.of(
            "cope-too-thin", "A coped edge becomes so thin that it breaks: the corner is open or the face flat.");
    static final Kind THIN = THIN_CODE.note(
            "'{piece}' on {stretches}, coped at {corner}: its edge is {amount} thick at the sharpest ({at}), under {least},"
                    + " and breaks.",
            "Miter it there: write 'cope: no' on {before}, to the left of the corner.");

    private CopeNotices() {}
}
