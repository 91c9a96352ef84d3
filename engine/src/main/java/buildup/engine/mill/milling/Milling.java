package buildup.engine.mill.milling;

import buildup.catalog.Catalog;
import buildup.catalog.mill.Head;
import buildup.profiles.Profile;
import buildup.profiles.outline.Point;
import buildup.profiles.outline.Tolerance;
import buildup.shared.figure.Figure;
import buildup.shared.figure.Phrase;
import buildup.shared.figure.Rounding;
import buildup.shared.figure.Value;
import buildup.shared.notice.Kind;
import buildup.shared.notice.Notice;
import buildup.shared.notice.Notices;
import java.util.List;
import java.util.Optional;

/** Asked of a profile: can it be cut, from where, and with what. */
public final class Milling {
    /** Beyond so many members nobody sets up router bits one by one, and looking for them would take minutes. */
    private static final int MOST_MEMBERS = 400;

    /** What a round-edged cutter leaves in a corner when the shop lists no head, in; common practice, no source. */
    private static final double USUAL_CORNER = 1.0 / 16;

    private final Profile profile;
    private final Catalog catalog;
    private final Notices notices;
    private final MillStick stick;

    private Milling(Profile profile, Catalog catalog, Notices notices) {
        this.profile = profile;
        this.catalog = catalog;
        this.notices = notices;
        this.stick = MillStick.of(profile);
    }

    /**
     * The answer, everything wrong with the profile said in {@code notices}.
     *
     * @param tilts of heads in front that the shop can set besides its square ones, degrees, up when above 0
     */
    public static Milled of(Profile profile, Catalog catalog, List<Double> tilts, Notices notices) {
        return new Milling(profile, catalog, notices).asked(tilts);
    }

    private Milled asked(List<Double> tilts) {
        List<Reached> reached = Reached.of(stick, Side.with(tilts));
        List<Undercut> undercuts = Undercut.of(stick, reached);
        List<Groove> grooves = Groove.of(stick);
        boolean few = stick.count() <= MOST_MEMBERS;
        Optional<Passes> passes = few ? Optional.of(Passes.of(stick, catalog.cutters())) : Optional.empty();
        if (!few) {
            tell(MillingNotices.TOO_MANY_FOR_BITS
                    .with("members", Figure.count(stick.count()))
                    .with("most", Figure.count(MOST_MEMBERS)));
        }
        List<SharpCorner> corners = few
                ? SharpCorner.of(stick, radius()).stream()
                        .filter(corner -> passes.filter(found ->
                                        found.makesCorner(corner.before(), (corner.before() + 1) % stick.count()))
                                .isEmpty())
                        .toList()
                : List.of();
        undercuts.forEach(this::tell);
        grooves.forEach(this::tell);
        tell(corners);
        List<Hollow> hollows = few ? Hollow.of(stick) : List.of();
        Milled plain = new Milled(stick, reached, undercuts, corners, hollows, grooves, passes, Optional.empty());
        return plain.isPlain()
                ? plain
                : new Milled(stick, reached, undercuts, corners, hollows, grooves, passes, knife());
    }

    private double radius() {
        return catalog.heads().stream()
                .mapToDouble(head -> head.corner().toInches())
                .min()
                .orElse(USUAL_CORNER);
    }

    private void tell(Undercut undercut) {
        Notice notice = undercut.open()
                ? MillingNotices.NEEDS_PASSES.with("sides", sides(undercut))
                : MillingNotices.NOT_REACHED.notice();
        tell(notice.with("from", place(undercut.from())).with("to", place(undercut.to())));
    }

    private static Value sides(Undercut undercut) {
        return undercut.tilt().<Value>map(tilt -> tilt.words()).orElseGet(() -> Side.words(undercut.passes()));
    }

    private void tell(Groove groove) {
        if (groove.behind() <= Tolerance.TOUCHING) {
            tell(MillingNotices.NOTHING_BEHIND
                    .with("depth", Figure.length(groove.depth()))
                    .with("board", Figure.length(groove.depth() + groove.behind()))
                    .with("least", Figure.atLeast(Groove.LEAST_BEHIND)));
        } else if (groove.behind() < Groove.LEAST_BEHIND - Tolerance.SNAP) {
            tell(thin(MillingNotices.THIN_BEHIND, groove, groove.behind(), Groove.LEAST_BEHIND));
        }
        if (groove.beside() < Groove.LEAST_BESIDE - Tolerance.SNAP) {
            tell(thin(MillingNotices.THIN_OUTSIDE, groove, groove.beside(), Groove.LEAST_BESIDE));
        }
    }

    private static Notice thin(Kind kind, Groove groove, double left, double wanted) {
        return kind.with("left", Figure.length(left))
                .with("kerf", groove.member())
                .with("wanted", Figure.length(wanted))
                .with("by", Figure.atLeast(wanted - left))
                .amount(Figure.length(wanted - left));
    }

    private void tell(List<SharpCorner> corners) {
        if (corners.isEmpty()) {
            return;
        }
        SharpCorner first = corners.get(0);
        boolean square = corners.stream().allMatch(SharpCorner::square);
        double left = corners.stream().mapToDouble(SharpCorner::left).sum();
        tell((corners.size() == 1 ? MillingNotices.CORNER : MillingNotices.CORNERS)
                .with("corners", Figure.count(corners.size()))
                .with("place", place(first.at()))
                .with("shape", square ? "square" : "sharp")
                .with("radius", Figure.length(first.radius()))
                .with("drawn", Figure.atLeast(first.radius()))
                .with("left", Figure.area(left).rounded(Rounding.decimals(4)))
                .amount(Figure.length(first.radius())));
    }

    private Optional<Knife> knife() {
        double width = Knife.width(stick);
        List<Head> wide = catalog.heads().stream()
                .filter(head -> head.widest().toInches() >= width - Tolerance.SNAP)
                .toList();
        Optional<Head> widest =
                catalog.heads().stream().reduce((a, b) -> a.widest().compareTo(b.widest()) >= 0 ? a : b);
        if (wide.isEmpty()) {
            widest.ifPresent(head -> {
                double over = width - head.widest().toInches();
                tell(MillingNotices.KNIFE_TOO_WIDE
                        .with("width", Figure.length(width))
                        .with("head", head.name())
                        .with("widest", Figure.length(head.widest().toInches()))
                        .amount(Figure.length(over)));
            });
            return Optional.empty();
        }
        List<Knife> knives =
                wide.stream().flatMap(head -> Knife.of(stick, head).stream()).toList();
        Optional<Knife> fits = knives.stream()
                .filter(knife -> knife.woodDepth() <= knife.head().deepest().toInches() + Tolerance.SNAP)
                .findFirst();
        if (fits.isEmpty()) {
            double most = wide.stream()
                    .mapToDouble(head -> head.deepest().toInches())
                    .max()
                    .orElse(0);
            double asked = Knife.woodDepth(stick);
            tell(MillingNotices.KNIFE_TOO_DEEP
                    .with("depth", Figure.length(asked))
                    .with("deepest", Figure.length(most))
                    .amount(Figure.length(asked - most)));
        }
        return fits;
    }

    private void tell(Notice notice) {
        notices.add(notice.of(profile.name()));
    }

    private static Phrase place(Point p) {
        return MillingNotices.PLACE.with("x", Figure.fine(p.x())).with("y", Figure.fine(p.y()));
    }
}
