package buildup.engine.hold.framing;

import buildup.catalog.fastener.Fastener;
import buildup.engine.hold.fixing.RowEdits;
import buildup.engine.hold.nail.Fixed;
import buildup.engine.room.plan.FramingRow;
import buildup.engine.section.compose.Section;
import buildup.profiles.outline.Outline;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Listing;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Value;
import buildup.shared.notice.Change;
import buildup.shared.notice.Cure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.Stream;

/** Ways out for rows that miss studs or joists. */
public final class LandingCures {
    /** So far inside the edge of what a joist takes, in, a nail is put there: a step of the rule. */
    private static final double WITHIN = 1.0 / 16;

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

    /**
     * For a row beside joists that run along the wall: over to the nearest of them, as far as its own piece goes there, else
     * blocking; into the wall only where the piece lies on it.
     */
    static Cure beside(Section section, Fixed fixed, FramingRow row) {
        double entry = Landings.entry(section, fixed, "ceiling").orElseThrow().x();
        double reach = Landings.reach(row);
        Outline wood = section.body(fixed.piece()).outline();
        Stream<Cure> over = row.upTo(wood.box().face() + row.every() + row.width()).stream()
                .sorted(Comparator.comparingDouble(joist -> Math.abs(joist - entry)))
                .flatMap(joist -> reach > WITHIN
                        ? Stream.of(joist, joist - reach + WITHIN, joist + reach - WITHIN)
                        : Stream.of(joist))
                .map(at -> at - entry)
                .filter(shift -> holds(wood, fixed, shift))
                .limit(2)
                .map(shift -> moved(fixed, shift));
        Cure blocking =
                Cure.of(onTheWall(section, fixed) ? FramingNotices.BLOCK_JOISTS_OR_WALL : FramingNotices.BLOCK_JOISTS);
        return Cure.firstOf(Stream.concat(over, Stream.of(blocking))).orElse(blocking);
    }

    /**
     * For a row that goes too little into a joist: the next length sold with which it goes in far enough; into the wall only
     * where the piece lies on it.
     *
     * @param enough whether it would be far enough were it so much longer, in
     */
    static Phrase deeper(Section section, Fixed fixed, DoublePredicate enough) {
        double now = fixed.drive().length();
        Optional<Fastener.Cut> longer = fixed.fastening().use().fastener().cuts().stream()
                .filter(cut -> cut.length().toInches() > now)
                .filter(cut -> enough.test(cut.length().toInches() - now))
                .min(Comparator.comparingDouble(cut -> cut.length().toInches()));
        boolean wall = onTheWall(section, fixed);
        return longer.map(
                        cut -> (wall ? FramingNotices.LONGER_OR_WALL : FramingNotices.LONGER).with("use", cut.phrase()))
                .orElse(wall ? FramingNotices.INTO_THE_WALL : FramingNotices.OTHERWISE);
    }

    private static boolean onTheWall(Section section, Fixed fixed) {
        return section.contacts().stream()
                .filter(contact -> contact.of(fixed.piece()) && contact.length() > 0)
                .map(contact -> contact.other(fixed.piece()))
                .anyMatch(other ->
                        !section.body(other).piece() && section.name(other).equals("wall"));
    }

    /** Whether a row moved out by so much, in, still goes into its own piece, with wood on either side. */
    private static boolean holds(Outline wood, Fixed fixed, double shift) {
        Point within = fixed.head().plus(fixed.way().times(2 * Tolerance.TOUCHING));
        return Stream.of(-Landings.FROM_EDGE, Landings.FROM_EDGE)
                .allMatch(aside -> wood.holds(within.plus(new Point(shift + aside, 0))));
    }

    private static Cure moved(Fixed fixed, double shift) {
        double to = fixed.head().x() + shift;
        return new Cure(
                (shift > 0 ? FramingNotices.FARTHER_OUT : FramingNotices.NEARER_TO_THE_WALL)
                        .with("by", Figure.length(Math.abs(shift)))
                        .with("to", Figure.length(to)),
                new RowEdits(fixed.fastening()).movedTo(to, false));
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
