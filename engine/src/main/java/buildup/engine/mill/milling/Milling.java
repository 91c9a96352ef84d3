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
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Asked of a profile: can it be cut, from where, and with what. */
public final class Milling {
    /** Beyond so many members nobody sets up router bits one by one, and looking for them would take minutes. */
    private static final int MOST_MEMBERS = 400;

    /** What a round-edged cutter leaves in a corner when the shop lists no head, in; common practice, no source. */
    private static final double USUAL_CORNER = 1.0 / 16;

    private final Profile profile;
    private final Catalog catalog;
    private final Optional<Head> head;
    private final Notices notices;
    private final MillStick stick;
    private final List<Notice> obstacles = new ArrayList<>();

    private Milling(Profile profile, Catalog catalog, Optional<Head> head, Notices notices) {
        this.profile = profile;
        this.catalog = catalog;
        this.head = head;
        this.notices = notices;
        this.stick = MillStick.of(profile);
    }

    /**
     * The answer, everything wrong with the profile said in {@code notices}.
     *
     * @param head that is to run it, the same at every side of the stick; absent when the shop lists none
     * @param tilts of heads in front that the shop can set besides its square ones, degrees, up when above 0
     */
    public static Milled of(
            Profile profile, Catalog catalog, Optional<Head> head, List<Double> tilts, Notices notices) {
        return new Milling(profile, catalog, head, notices).asked(tilts);
    }

    private Milled asked(List<Double> tilts) {
        List<Side> sides = Side.with(tilts);
        List<Reached> reached = Reached.of(stick, sides);
        List<Undercut> undercuts = Undercut.of(stick, reached);
        List<Groove> grooves = Groove.of(stick);
        boolean few = stick.count() <= MOST_MEMBERS;
        List<Pass> ways = few ? CutterFitting.all(stick, catalog.cutters()) : List.of();
        Optional<Passes> passes = few ? Optional.of(Passes.of(stick, ways)) : Optional.empty();
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
        undercuts.forEach(undercut -> tell(undercut, grooves));
        grooves.forEach(this::tell);
        tell(corners);
        List<Hollow> hollows = few ? Hollow.of(stick) : List.of();
        List<HeadWork> heads = heads(sides, reached, undercuts, ways);
        heads.forEach(this::tell);
        return new Milled(
                stick, reached, undercuts, corners, hollows, grooves, passes, sides, heads, List.copyOf(obstacles));
    }

    /** The heads asked about and, where they leave something, tilted ones that reach it. */
    private List<HeadWork> heads(List<Side> sides, List<Reached> reached, List<Undercut> undercuts, List<Pass> ways) {
        List<Side> all = Stream.concat(sides.stream(), undercuts.stream().flatMap(undercut -> undercut.tilt().stream()))
                .distinct()
                .toList();
        List<Reached> parts = all.size() == sides.size() ? reached : Reached.of(stick, all);
        Map<Side, Optional<Knife>> knives = new HashMap<>();
        return HeadWork.fewest(HeadWork.Task.of(stick, parts, all), (side, share) -> {
            Optional<Pass> cutter = ways.stream()
                    .filter(pass -> pass.side().equals(side) && pass.isSquare() && pass.times() == 1)
                    .filter(pass -> share.stream().allMatch(pass::makes))
                    .findFirst();
            Optional<Knife> knife = cutter.isPresent()
                    ? Optional.empty()
                    : knives.computeIfAbsent(side, one -> head.map(holder -> Knife.of(stick, holder, one)));
            return new HeadWork(
                    side, share.stream().map(Reached::member).distinct().toList(), knife, cutter);
        });
    }

    private double radius() {
        return head.map(one -> one.corner().toInches()).orElse(USUAL_CORNER);
    }

    private void tell(Undercut undercut, List<Groove> grooves) {
        Optional<Groove> slot = grooves.stream().filter(undercut::holds).findFirst();
        Notice notice = slot.map(groove -> slot(undercut, groove)).orElseGet(() -> line(undercut));
        if (undercut.open()) {
            tell(notice.with("sides", sides(undercut)));
        } else {
            hinders(notice);
        }
    }

    private Notice line(Undercut undercut) {
        return (undercut.open() ? MillingNotices.NEEDS_PASSES : MillingNotices.NOT_REACHED)
                .with("from", place(undercut.from()))
                .with("to", place(undercut.to()));
    }

    private Notice slot(Undercut undercut, Groove groove) {
        return (undercut.open() ? MillingNotices.SLOT_NEEDS_PASSES : MillingNotices.SLOT_NOT_REACHED)
                .with("width", Figure.length(groove.width()))
                .with("depth", Figure.length(groove.depth()))
                .with("at", place(groove.middle(stick)));
    }

    private static Value sides(Undercut undercut) {
        return undercut.tilt().<Value>map(tilt -> tilt.words()).orElseGet(() -> Side.words(undercut.passes()));
    }

    private void tell(Groove groove) {
        if (groove.behind() <= Tolerance.TOUCHING) {
            hinders(MillingNotices.NOTHING_BEHIND
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

    private void tell(HeadWork work) {
        work.knife()
                .filter(knife -> !knife.isNarrowEnough())
                .ifPresent(knife -> hinders(MillingNotices.KNIFE_TOO_WIDE
                        .with("width", Figure.length(knife.width()))
                        .with("head", knife.head().name())
                        .with("widest", Figure.length(knife.head().widest().toInches()))
                        .amount(Figure.length(
                                knife.width() - knife.head().widest().toInches()))));
        work.knife()
                .filter(knife -> !knife.isShallowEnough())
                .ifPresent(knife -> hinders(MillingNotices.KNIFE_TOO_DEEP
                        .with("depth", Figure.length(knife.woodDepth()))
                        .with("deepest", Figure.length(knife.head().deepest().toInches()))
                        .amount(Figure.length(
                                knife.woodDepth() - knife.head().deepest().toInches()))));
    }

    /** Says what keeps it from being run as it is drawn. */
    private void hinders(Notice notice) {
        tell(notice);
        obstacles.add(notice.of(profile.name()));
    }

    private void tell(Notice notice) {
        notices.add(notice.of(profile.name()));
    }

    private static Phrase place(Point p) {
        return MillingNotices.PLACE.with("x", Figure.fine(p.x())).with("y", Figure.fine(p.y()));
    }
}
