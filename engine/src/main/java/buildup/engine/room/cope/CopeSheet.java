package buildup.engine.room.cope;

import buildup.shared.figure.Quantity;
import buildup.shared.sheet.Sheet;
import java.util.List;

/** Copes, as a sheet. */
public final class CopeSheet {
    private CopeSheet() {}

    /** One row for each coped end. */
    public static Sheet of(List<Cope> copes) {
        return Sheet.of("copes", "COPES: which stick is cut over which, and how sharp its edge becomes", copes)
                .name("run", "run", Cope::run)
                .name("stretch", "stretch", Cope::stretch)
                .name("piece", "piece", cope -> cope.fit().course().name())
                .words("end", "coped end", cope -> cope.right() ? "right" : "left")
                .words("over", "over the one on", Cope::over)
                .words("why", "since", cope -> cope.side().why().words())
                .measure("corner", "inside corner", Quantity.ANGLE, Cope::corner)
                .measure("edge", "coped edge", Quantity.ANGLE, Cope::edge)
                .words("at", "sharpest at", Cope::at)
                .flag("thin", "too thin", Cope::thin)
                .table(
                        "COPES: which stick is cut over which; coped edge: degrees of wood at its sharpest",
                        "stretch",
                        "piece",
                        "end",
                        "over",
                        "why",
                        "corner",
                        "edge",
                        "at")
                .sheet()
                .askedIf(!copes.isEmpty());
    }
}
