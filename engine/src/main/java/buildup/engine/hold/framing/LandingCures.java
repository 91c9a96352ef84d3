package buildup.engine.hold.framing;

import buildup.engine.hold.fixing.RowEdits;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Value;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import java.util.List;

/** Ways out for rows that miss studs or joists. */
public final class LandingCures {
    private LandingCures() {}

    /** For one row on one stick: set out so that all of it lands, else blocking. */
    static Cure of(Landing landing) {
        if (landing.best().misses() > 0) {
            return Cure.of(FramingNotices.BLOCK_BETWEEN);
        }
        Landing.Layout best = landing.best();
        RowEdits edits = new RowEdits(landing.fixed().fastening());
        boolean ownSpacing =
                Math.abs(best.spacing() - landing.fixed().fastening().spacing()) <= Tolerance.COINCIDENT;
        Phrase words = landing.set() && ownSpacing ? FramingNotices.LEAVE_OUT : FramingNotices.SET_OUT;
        Cure alone = new Cure(filled(words, best), edits.setOut(best.first(), best.spacing()));
        // a place to begin that suits one stretch may miss on the next
        Phrase each = landing.set() ? FramingNotices.FREE : FramingNotices.SPACE;
        return alone.or(List.of(new Cure(
                filled(each, best), landing.set() ? edits.setOut(0, best.spacing()) : edits.spaced(best.spacing()))));
    }

    /** For all rows that miss on one stretch. */
    public static Cure of(List<Landing> missing) {
        if (missing.size() == 1) {
            return of(missing.get(0));
        }
        if (missing.stream().anyMatch(landing -> landing.best().misses() > 0)) {
            return Cure.of(FramingNotices.BLOCK_BETWEEN);
        }
        return all(missing, false).or(List.of(all(missing, true)));
    }

    /** @param free whether each stretch begins them where they land */
    private static Cure all(List<Landing> missing, boolean free) {
        List<Value> rows = missing.stream()
                .<Value>map(landing -> FramingNotices.SET_OUT_ROW
                        .with("row", landing.fixed().fastening().name())
                        .with("first", Figure.length(free ? 0 : landing.best().first()))
                        .with("spacing", Figure.length(landing.best().spacing())))
                .toList();
        List<Change> changes = missing.stream()
                .flatMap(landing -> new RowEdits(landing.fixed().fastening())
                                .setOut(
                                        free ? 0 : landing.best().first(),
                                        landing.best().spacing())
                                .stream())
                .toList();
        return new Cure(
                (free ? FramingNotices.FREE_ROWS : FramingNotices.SET_OUT_ROWS).with("rows", Listing.and(rows)),
                changes);
    }

    private static Phrase filled(Phrase words, Landing.Layout best) {
        return words.with("first", Figure.length(best.first())).with("spacing", Figure.length(best.spacing()));
    }
}
